/** A client's end of a connection: requests go out, replies and published messages come in. */
import { randomUUID } from "node:crypto";
import { Dealer, Subscriber } from "zeromq";
import { type Connection, socketAddress } from "./connection.js";
import { decodeMessage, encodeMessage, type Message, requestMessage } from "./message.js";

/** Takes what comes in. */
interface ClientHandlers {
  reply(message: Message): void;
  published(message: Message): void;
  /** The connection is of no use any more. */
  failed(error: Error): void;
}

/** The sockets of one client. */
export class ClientSockets {
  readonly #connection: Connection;
  readonly #session = randomUUID();
  readonly #shell: Dealer;
  readonly #control: Dealer;
  readonly #failed: (error: Error) => void;
  readonly #iopub = new Subscriber({ receiveHighWaterMark: 0, linger: 0 });

  /** Connects; the kernel may come up later. */
  constructor(connection: Connection, handlers: ClientHandlers) {
    this.#connection = connection;
    this.#failed = handlers.failed;
    const options = { routingId: this.#session, sendTimeout: 0, linger: 0 };
    this.#shell = new Dealer(options);
    this.#control = new Dealer(options);
    this.#iopub.subscribe();
    this.#shell.connect(socketAddress(connection, "shell"));
    this.#control.connect(socketAddress(connection, "control"));
    this.#iopub.connect(socketAddress(connection, "iopub"));
    void this.#receive(this.#shell, handlers.reply);
    void this.#receive(this.#control, handlers.reply);
    void this.#receive(this.#iopub, handlers.published);
  }

  /**
   * Sends a request.
   *
   * @param channel shutdown goes over "control", past cells that wait
   * @returns the id by which its answers are known
   */
  request(channel: "shell" | "control", type: string, content: Message["content"]): string {
    const message = requestMessage(type, this.#session, content);
    const socket = channel === "shell" ? this.#shell : this.#control;
    socket.send(encodeMessage(message, this.#connection.key)).catch(this.#failed);
    return message.header.msg_id;
  }

  /** Closes at once. */
  close(): void {
    for (const socket of [this.#shell, this.#control, this.#iopub]) socket.close();
  }

  async #receive(socket: Dealer | Subscriber, take: (message: Message) => void): Promise<void> {
    try {
      for await (const frames of socket) take(decodeMessage(frames, this.#connection.key));
    } catch (error) {
      if (!socket.closed) this.#failed(error as Error);
    }
  }
}

/** The five sockets of a kernel, and sending on them without losing a message. */
import { readFile } from "node:fs/promises";
import { Publisher, Reply, Router } from "zeromq";
import { type Connection, socketAddress } from "./connection.js";
import { answerMessage, decodeMessage, encodeMessage, HeardMessages, type Message } from "./message.js";

/** Where an answer goes. */
export type Asker = Router;

// A socket that may wait defers every 512th message and refuses the one after it. With no waiting and no
// limit on what is queued, each message is taken at once.
const neverWait = { sendTimeout: 0, sendHighWaterMark: 0 };

/** A kernel's end of a connection. */
export class KernelSockets {
  readonly #connection: Connection;
  readonly #shell = new Router(neverWait);
  readonly #control = new Router(neverWait);
  readonly #stdin = new Router(neverWait);
  readonly #iopub = new Publisher(neverWait);
  readonly #heartbeat = new Reply(neverWait);
  readonly #heard = new HeardMessages();

  private constructor(connection: Connection) {
    this.#connection = connection;
  }

  /** Opens the sockets that a connection file names. */
  static async open(connectionFile: string): Promise<KernelSockets> {
    const sockets = new KernelSockets(JSON.parse(await readFile(connectionFile, "utf8")) as Connection);
    await sockets.#bind();
    return sockets;
  }

  /** Hands every request to `answer`, and echoes heartbeats, until the sockets close. */
  async listen(answer: (request: Message, asker: Asker) => void): Promise<void> {
    await Promise.all([
      this.#receive(this.#shell, answer),
      this.#receive(this.#control, answer),
      this.#echoHeartbeat(),
    ]);
  }

  /** Tells all clients. */
  publish(request: Message, type: string, content: Message["content"]): void {
    this.#send(this.#iopub, answerMessage(request, type, content));
  }

  /** Tells the client that asked. */
  reply(asker: Asker, request: Message, content: Message["content"]): void {
    const type = request.header.msg_type.replace(/_request$/, "_reply");
    this.#send(asker, answerMessage(request, type, content));
  }

  /** Closes the sockets; what was sent still goes out. */
  close(): void {
    for (const socket of [this.#shell, this.#control, this.#stdin, this.#iopub, this.#heartbeat])
      socket.close();
  }

  async #bind(): Promise<void> {
    const at = (channel: Parameters<typeof socketAddress>[1]): string =>
      socketAddress(this.#connection, channel);
    await Promise.all([
      this.#shell.bind(at("shell")),
      this.#control.bind(at("control")),
      this.#stdin.bind(at("stdin")),
      this.#iopub.bind(at("iopub")),
      this.#heartbeat.bind(at("hb")),
    ]);
  }

  async #receive(socket: Router, answer: (request: Message, asker: Asker) => void): Promise<void> {
    for await (const frames of socket) {
      const request = this.#decode(frames);
      if (request) answer(request, socket);
    }
  }

  /** A message that is broken, forged or sent again is left alone, as if it had not come. */
  #decode(frames: readonly Buffer[]): Message | undefined {
    try {
      const message = decodeMessage(frames, this.#connection.key);
      this.#heard.hear(message);
      return message;
    } catch (error) {
      console.warn((error as Error).message);
      return undefined;
    }
  }

  async #echoHeartbeat(): Promise<void> {
    for await (const frames of this.#heartbeat) await this.#heartbeat.send(frames);
  }

  /** @throws Error when a message was lost */
  #send(socket: Router | Publisher, message: Message): void {
    socket.send(encodeMessage(message, this.#connection.key)).catch((error: unknown) => {
      // Printing would send another message that fails; a kernel that loses output is of no use.
      throw new Error(`kernel: a ${message.header.msg_type} message was lost`, { cause: error });
    });
  }
}

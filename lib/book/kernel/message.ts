/** The Jupyter wire protocol: one message, signed and split into frames, and back. Both ends use it. */
import { createHmac, randomUUID, timingSafeEqual } from "node:crypto";

/** Who sent what, and when. */
interface MessageHeader {
  /** Unique for each message. */
  readonly msg_id: string;
  /** What the message is for, such as "execute_request". */
  readonly msg_type: string;
  /** Names the client that opened the exchange. */
  readonly session: string;
  /** Who sent it. */
  readonly username: string;
  /** When, in ISO 8601. */
  readonly date: string;
  /** Version of the protocol. */
  readonly version: string;
}

/** One message with its parts decoded. */
export interface Message {
  /** Routing frames, echoed back in a reply so that it finds its asker. */
  readonly identity: readonly Buffer[];
  /** Its own header. */
  readonly header: MessageHeader;
  /** Header of the request this message belongs to; empty for a request. */
  readonly parent: Partial<MessageHeader>;
  /** Nothing of it is used here. */
  readonly metadata: Readonly<Record<string, unknown>>;
  /** What is asked or told; its type says which fields there are. */
  readonly content: Readonly<Record<string, unknown>>;
}

const protocolVersion = "5.3";
const delimiter = Buffer.from("<IDS|MSG>");

/** A message that starts an exchange. */
export function requestMessage(type: string, session: string, content: Message["content"]): Message {
  return { identity: [], header: newHeader(type, session, "casewright"), parent: {}, metadata: {}, content };
}

/** A message that answers another, or reports what its work prints. */
export function answerMessage(request: Message, type: string, content: Message["content"]): Message {
  const { identity, header } = request;
  return {
    identity,
    header: newHeader(type, header.session, header.username),
    parent: header,
    metadata: {},
    content,
  };
}

/** The frames to send, signed with the key both ends share. */
export function encodeMessage(message: Message, key: string): (Buffer | string)[] {
  const parts = [message.header, message.parent, message.metadata, message.content].map((part) =>
    JSON.stringify(part),
  );
  return [...message.identity, delimiter, sign(parts, key), ...parts];
}

/**
 * Reads the frames received.
 *
 * @throws Error when the frames are no message, when it was signed with another key, or when its parts are not
 * what the protocol says
 */
export function decodeMessage(frames: readonly Buffer[], key: string): Message {
  const start = frames.findIndex((frame) => frame.equals(delimiter));
  const [signature, ...parts] = frames.slice(start + 1, start + 6);
  if (start < 0 || !signature || parts.length < 4) throw new Error("kernel message: frames are missing");
  // Frames after the fourth part are signed as well.
  refuseForged(signature, sign([...parts, ...frames.slice(start + 6)], key));
  const [header, parent, metadata, content] = parts.map((part) => JSON.parse(part.toString()));
  if (!isHeader(header)) throw new Error("kernel message: the header lacks its id, its type or its session");
  if (![parent, metadata, content].every(isRecord)) throw new Error("kernel message: a part is no object");
  return { identity: frames.slice(0, start), header, parent, metadata, content };
}

function isRecord(part: unknown): part is Readonly<Record<string, unknown>> {
  return typeof part === "object" && part !== null && !Array.isArray(part);
}

function isHeader(part: unknown): boolean {
  return isRecord(part) && [part.msg_id, part.msg_type, part.session].every((one) => typeof one === "string");
}

/** Messages that came before, so that one which somebody sends again is not heard twice. */
export class HeardMessages {
  readonly #heard = new Set<string>();
  readonly #most: number;

  /** @param most how many are remembered; the oldest are forgotten first */
  constructor(most = 65_536) {
    this.#most = most;
  }

  /** @throws Error when a message with this id came before */
  hear({ header: { msg_id } }: Message): void {
    if (this.#heard.has(msg_id)) throw new Error("kernel message: it came before");
    this.#heard.add(msg_id);
    const [oldest] = this.#heard;
    if (this.#heard.size > this.#most && oldest !== undefined) this.#heard.delete(oldest);
  }
}

function newHeader(type: string, session: string, username: string): MessageHeader {
  return {
    msg_id: randomUUID(),
    msg_type: type,
    session,
    username,
    date: new Date().toISOString(),
    version: protocolVersion,
  };
}

function sign(parts: readonly (Buffer | string)[], key: string): string {
  // An empty key means that neither end signs, as the protocol has it.
  if (key === "") return "";
  const hash = createHmac("sha256", key);
  for (const part of parts) hash.update(part);
  return hash.digest("hex");
}

/** @throws Error when the signature does not match */
function refuseForged(signature: Buffer, wanted: string): void {
  const expected = Buffer.from(wanted);
  if (signature.length !== expected.length || !timingSafeEqual(signature, expected)) {
    throw new Error("kernel message: the signature does not match");
  }
}

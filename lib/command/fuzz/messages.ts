/** Odd messages to the kernel, signed and not: each is read whole, or refused as what is no message. */
import { createHmac } from "node:crypto";
import { decodeMessage, encodeMessage, requestMessage } from "../../book/kernel/message.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { errorWords, type Fuzzer } from "./fuzzer.js";
import { oddTexts } from "./odd-values.js";

const key = "a key of this try";

/** A request with its frames cut, swapped, replaced or signed as they are. */
export const messages: Fuzzer = {
  attack: (seed) => {
    const draws = drawsOf(seed, "mm");
    const frames = framesOf(draws);
    const words = faultOfFrames(frames);
    return words === undefined
      ? undefined
      : { words, input: JSON.stringify(frames.map((one) => one.toString("latin1"))) };
  },
};

const parts: readonly string[] = [
  "null",
  "[]",
  "1",
  '""',
  "{}",
  '{"msg_id":1,"msg_type":"x","session":"y"}',
  '{"msg_id":"a","msg_type":"__proto__","session":"y"}',
  '{"__proto__":{"msg_type":"shutdown_request"}}',
  "{",
  "[".repeat(20_000),
  '{"a":'.repeat(2000),
  "\ud800",
];

function framesOf(draws: Draws): readonly Buffer[] {
  const request = requestMessage(
    draws.pick(["execute_request", "complete_request", "inspect_request", "__proto__", "toString", ""]),
    "session",
    { code: draws.pick(oddTexts), cursor_pos: draws.pick([0, -1, 1e9, Number.NaN, null]) },
  );
  const [delimiter, signature, ...given] = encodeMessage(request, key).map((one) => Buffer.from(one));
  const body = given.map((part) => (draws.often(3) ? Buffer.from(draws.pick(parts)) : part));
  const kept = draws.often(2) ? body.slice(0, draws.whole(0, 3)) : body;
  const more = draws.often(2) ? [...kept, Buffer.from("more")] : kept;
  const signed = draws.often(8) ? Buffer.from(signatureOf(more)) : (signature ?? Buffer.alloc(0));
  const frames = [delimiter ?? Buffer.alloc(0), signed, ...more];
  return draws.often(1) ? draws.shuffled(frames) : frames;
}

function signatureOf(frames: readonly Buffer[]): string {
  const hmac = createHmac("sha256", key);
  for (const frame of frames) hmac.update(frame);
  return hmac.digest("hex");
}

/** What is wrong with how frames are taken. */
function faultOfFrames(frames: readonly Buffer[]): string | undefined {
  try {
    const { header, parent, metadata, content } = decodeMessage(frames, key);
    const texts = [header.msg_id, header.msg_type, header.session];
    if (texts.some((one) => typeof one !== "string")) return "a header without its texts was taken";
    const blocks = [parent, metadata, content];
    return blocks.every(isBlock) ? undefined : "a part that is no object was taken";
  } catch (error) {
    const known = error instanceof SyntaxError || /^kernel message: /.test((error as Error).message);
    return known ? undefined : errorWords(error);
  }
}

function isBlock(part: unknown): boolean {
  return typeof part === "object" && part !== null && !Array.isArray(part);
}

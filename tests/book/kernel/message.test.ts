import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  answerMessage,
  decodeMessage,
  encodeMessage,
  HeardMessages,
  requestMessage,
} from "../../../lib/book/kernel/message.js";

const frames = (...parts: Parameters<typeof encodeMessage>): Buffer[] =>
  encodeMessage(...parts).map((frame) => Buffer.from(frame));
const request = requestMessage("execute_request", "session", { code: "mm(3)" });

describe("a message", () => {
  test("comes through as it was sent", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), fc.string(), (values, key) => {
        const content = JSON.parse(JSON.stringify(values));
        const message = requestMessage("execute_request", "session", content);
        expect(decodeMessage(frames(message, key), key)).toEqual(message);
      }),
    );
  });

  test("keeps the routing frames of its asker, so that the answer finds back", () => {
    const routed = { ...request, identity: [Buffer.from("asker"), Buffer.from([0, 255])] };
    const answer = answerMessage(decodeMessage(frames(routed, "key"), "key"), "execute_reply", {
      status: "ok",
    });
    expect(answer.identity).toEqual(routed.identity);
    expect(answer.parent).toEqual(request.header);
    expect(answer.header).toMatchObject({ msg_type: "execute_reply", session: "session", version: "5.3" });
  });

  test("is refused when it was signed with another key", () => {
    expect(() => decodeMessage(frames(request, "key"), "other")).toThrow(
      "kernel message: the signature does not match",
    );
  });

  test("is refused when one character was changed", () => {
    const changed = frames(request, "key").map((frame) =>
      Buffer.from(frame.toString().replace("mm(3)", "mm(4)")),
    );
    expect(() => decodeMessage(changed, "key")).toThrow("kernel message: the signature does not match");
  });

  test("is refused when it was not signed at all", () => {
    expect(() => decodeMessage(frames(request, ""), "key")).toThrow(
      "kernel message: the signature does not match",
    );
  });

  test.each([[0], [1], [5]])("is refused when only %i frames came", (count) => {
    expect(() => decodeMessage(frames(request, "key").slice(0, count), "key")).toThrow(
      "kernel message: frames are missing",
    );
  });
});

describe("a signed message", () => {
  const odd = (changed: object): Buffer[] => frames({ ...request, ...changed } as typeof request, "key");

  test.each([
    ["no header", { header: null }],
    ["a list for a header", { header: [] }],
    ["a header without an id", { header: { msg_type: "execute_request", session: "s" } }],
    ["a number for a type", { header: { msg_id: "1", msg_type: 3, session: "s" } }],
  ])("is refused with %s", (_, changed) => {
    expect(() => decodeMessage(odd(changed), "key")).toThrow(
      "kernel message: the header lacks its id, its type or its session",
    );
  });

  test.each([
    ["content", { content: null }],
    ["parent", { parent: "none" }],
    ["metadata", { metadata: [] }],
  ])("is refused when its %s is no object", (_, changed) => {
    expect(() => decodeMessage(odd(changed), "key")).toThrow("kernel message: a part is no object");
  });

  test("is heard once", () => {
    const heard = new HeardMessages();
    heard.hear(request);
    expect(() => heard.hear(request)).toThrow("kernel message: it came before");
  });

  test("is forgotten only when many came after it", () => {
    const heard = new HeardMessages(2);
    const [first, second, third] = ["1", "2", "3"].map((id) => ({
      ...request,
      header: { ...request.header, msg_id: id },
    })) as [typeof request, typeof request, typeof request];
    for (const one of [first, second, third]) heard.hear(one);
    expect(() => heard.hear(third)).toThrow("kernel message: it came before");
    heard.hear(first);
  });
});

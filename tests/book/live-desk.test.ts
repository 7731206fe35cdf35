/** Who may read and save the files of a job through the server: the live page that it served, and nobody else. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { type BookServer, serveBook } from "../../lib/book/index.js";

let folder = "";
let server: BookServer;
let token = "";
const given = "name: a\n";
const wanted = "name: b\n";

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  writeFileSync(join(folder, "case.yaml"), given);
  const job = { name: "small", folder, title: "Small" };
  server = await serveBook(folder, { live: { built: 1 }, job });
  token = /"token":"([\w-]+)"/.exec((await ask({ path: "/live" })).body)?.[1] ?? "";
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});
beforeEach(() => writeFileSync(join(folder, "case.yaml"), given));

interface Asking {
  readonly path?: string;
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

function ask({
  path = "/live/files",
  method = "GET",
  headers = {},
  body,
}: Asking): Promise<{ status: number; body: string }> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, method, headers }, (answer) => {
      const parts: Buffer[] = [];
      answer.on("data", (part: Buffer) => parts.push(part));
      answer.on("end", () =>
        resolve({ status: answer.statusCode ?? 0, body: Buffer.concat(parts).toString() }),
      );
    });
    asked.on("error", reject).end(body);
  });
}

const origin = (): string => server.url.slice(0, -1);
const own = (): Record<string, string> => ({
  origin: origin(),
  "x-casewright-token": token,
  "content-type": "application/json",
});
const saving = JSON.stringify({ known: { "case.yaml": given }, texts: { "case.yaml": wanted } });
const stands = (): string => readFileSync(join(folder, "case.yaml"), "utf8");

test.each(["/live", "/live.html"])(
  "%s is the page with the files as they are now, and its leave to save",
  async (path) => {
    const { status, body } = await ask({ path });
    expect([status, token.length]).toEqual([200, 36]);
    expect(body).toContain("connect-src 'self'".replaceAll("'", "&#39;"));
    expect(body).toContain('"case.yaml":"name: a\\n"');
  },
);

test("its own page reads and saves", async () => {
  const read = await ask({ headers: own() });
  expect([read.status, JSON.parse(read.body)]).toEqual([200, { texts: { "case.yaml": given } }]);
  const saved = await ask({ method: "POST", headers: own(), body: saving });
  expect([saved.status, JSON.parse(saved.body)]).toEqual([200, { kind: "saved", left: [] }]);
  expect(stands()).toBe(wanted);
});

test("a file that changed meanwhile stays as it is", async () => {
  writeFileSync(join(folder, "case.yaml"), "name: c\n");
  const { status, body } = await ask({ method: "POST", headers: own(), body: saving });
  expect([status, JSON.parse(body)]).toEqual([409, { kind: "changed", texts: { "case.yaml": "name: c\n" } }]);
  expect(stands()).toBe("name: c\n");
});

const without = (name: string) => (): Record<string, string> =>
  Object.fromEntries(Object.entries(own()).filter(([key]) => key !== name));

test.each<[string, () => Record<string, string>, number]>([
  ["without a token", without("x-casewright-token"), 403],
  ["with another token", () => ({ ...own(), "x-casewright-token": token.replace(/.$/, "x") }), 403],
  ["with a longer token", () => ({ ...own(), "x-casewright-token": `${token}0` }), 403],
  ["without an origin", without("origin"), 403],
  ["from another origin", () => ({ ...own(), origin: "http://example.invalid" }), 403],
  ["from a file on disk", () => ({ ...own(), origin: "null" }), 403],
  ["from another port", () => ({ ...own(), origin: "http://127.0.0.1:1" }), 403],
  ["from another site, as the browser says", () => ({ ...own(), "sec-fetch-site": "cross-site" }), 403],
  ["under another host's name", () => ({ ...own(), host: "example.invalid" }), 403],
  ["as a form could send it", () => ({ ...own(), "content-type": "text/plain" }), 415],
])("%s nothing is saved", async (_, headers, status) => {
  expect((await ask({ method: "POST", headers: headers(), body: saving })).status).toBe(status);
  expect(stands()).toBe(given);
});

test.each<[string, () => Record<string, string>]>([
  ["without a token", without("x-casewright-token")],
  ["from another origin", () => ({ ...own(), origin: "http://example.invalid" })],
])("%s nothing is read", async (_, headers) => {
  expect((await ask({ headers: headers() })).status).toBe(403);
});

test.each([
  ["no JSON", "{"],
  ["null", "null"],
  ["no texts", '{"known":{}}'],
  ["a number for a text", '{"known":{},"texts":{"case.yaml":1}}'],
  ["a list", '{"known":[],"texts":["x"]}'],
])("%s is refused", async (_, body) => {
  expect((await ask({ method: "POST", headers: own(), body })).status).toBe(400);
  expect(stands()).toBe(given);
});

test("a strange file is refused in words, and more than 32 MB unread", async () => {
  const strange = JSON.stringify({ known: {}, texts: { "../x.yaml": "x" } });
  const refused = await ask({ method: "POST", headers: own(), body: strange });
  expect([refused.status, refused.body]).toEqual([422, expect.stringContaining('no file \\"../x.yaml\\"')]);
  const large = "x".repeat(32_000_001);
  expect((await ask({ method: "POST", headers: own(), body: large })).status).toBe(413);
});

test.each(["PUT", "DELETE", "PATCH", "OPTIONS"])("%s is not allowed", async (method) => {
  expect((await ask({ method, headers: own() })).status).toBe(405);
  expect((await ask({ path: "/live", method: "POST", headers: own() })).status).toBe(405);
});

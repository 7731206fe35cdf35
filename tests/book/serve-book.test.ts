import { existsSync, readdirSync, readlinkSync } from "node:fs";
import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { type IncomingHttpHeaders, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type BookServer, serveBook } from "../../lib/book/serve-book.js";

let folder = "";
let server: BookServer;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  const book = join(folder, "book");
  await mkdir(join(book, "assets"), { recursive: true });
  await mkdir(join(folder, "book-secret"));
  await writeFile(join(folder, "secret.html"), "secret");
  await writeFile(join(folder, "book-secret", "a.html"), "secret");
  await writeFile(join(book, "index.html"), "first page");
  await writeFile(join(book, "ä b.html"), "umlaut");
  await writeFile(join(book, ".hidden.html"), "hidden");
  await writeFile(join(book, "key.pem"), "key");
  await writeFile(join(book, "assets", "book.js"), "1");
  await writeFile(join(book, "assets", "book.css"), "2");
  await symlink(join(folder, "secret.html"), join(book, "link.html"));
  await symlink(folder, join(book, "up"));
  server = await serveBook(book);
});
afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true });
});

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Sends a path as it stands, which a browser or fetch would tidy first. */
function ask(
  path: string,
  { method = "GET", host, range }: { method?: string; host?: string; range?: string } = {},
): Promise<Answer> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    const asked = request({
      hostname,
      port,
      path,
      method,
      headers: { ...(host === undefined ? {} : { host }), ...(range === undefined ? {} : { range }) },
    });
    asked.on("error", reject).on("response", (answer) => {
      const parts: Buffer[] = [];
      answer.on("data", (part: Buffer) => parts.push(part));
      answer.on("end", () =>
        resolve({
          status: answer.statusCode,
          headers: answer.headers,
          body: Buffer.concat(parts).toString(),
        }),
      );
    });
    asked.end();
  });
}

test("it listens on this machine only", () => {
  expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
});

test.each([
  ["/", "first page", "text/html; charset=utf-8"],
  ["/?a=1", "first page", "text/html; charset=utf-8"],
  ["/index.html", "first page", "text/html; charset=utf-8"],
  ["/%C3%A4%20b.html", "umlaut", "text/html; charset=utf-8"],
  ["/assets/book.js", "1", "text/javascript; charset=utf-8"],
  ["/assets/book.css", "2", "text/css; charset=utf-8"],
])("%s is sent as what it is", async (path, body, type) => {
  const answer = await ask(path);
  expect([answer.status, answer.body, answer.headers["content-type"]]).toEqual([200, body, type]);
  expect(answer.headers["x-content-type-options"]).toBe("nosniff");
  expect(answer.headers["content-length"]).toBe(String(body.length));
});

test.each([
  ["bytes=0-4", 206, "first", "bytes 0-4/10"],
  ["bytes=6-", 206, "page", "bytes 6-9/10"],
  ["bytes=-4", 206, "page", "bytes 6-9/10"],
  ["bytes=6-99", 206, "page", "bytes 6-9/10"],
  ["bytes=-99", 206, "first page", "bytes 0-9/10"],
  ["bytes=10-", 416, "no such bytes\n", "bytes */10"],
  ["bytes=-0", 416, "no such bytes\n", "bytes */10"],
  ["bytes=4-2", 200, "first page", undefined],
  ["bytes=0-1,3-4", 200, "first page", undefined],
  ["lines=1-2", 200, "first page", undefined],
  ["bytes=-", 200, "first page", undefined],
])("of the first page, %s gives %i", async (range, status, body, which) => {
  const answer = await ask("/", { range });
  expect([answer.status, answer.body, answer.headers["content-range"]]).toEqual([status, body, which]);
});

/** Whether the system tells which files a process holds open. */
const openFiles = "/proc/self/fd";

test.skipIf(!existsSync(openFiles))("a reader who leaves half way holds no file open", async () => {
  const big = join(folder, "book", "big.csv");
  await writeFile(big, Buffer.alloc(30_000_000, "1"));
  const leave = (): Promise<void> =>
    new Promise((resolve) => {
      const asked = request(new URL("big.csv", server.url), (answer) => {
        answer.once("data", () => asked.destroy());
      });
      asked.on("error", () => undefined).on("close", () => resolve());
      asked.end();
    });
  for (let i = 0; i < 40; i++) await leave();
  const held = (): number =>
    readdirSync(openFiles).filter((fd) => {
      try {
        return readlinkSync(join(openFiles, fd)) === big;
      } catch {
        return false;
      }
    }).length;
  await expect.poll(held, { timeout: 10_000 }).toBe(0);
});

test.each([
  "/../secret.html",
  "/assets/../../secret.html",
  "/%2e%2e/secret.html",
  "/%2e%2e%2fsecret.html",
  "/..%2fsecret.html",
  "/..%5csecret.html",
  "/assets/..%2f..%2fsecret.html",
  "/%252e%252e/secret.html",
  "/../book-secret/a.html",
  "//secret.html/..",
  "/link.html",
  "/up/secret.html",
  "/up/book/index.html/../../secret.html",
  "/.hidden.html",
  "/key.pem",
  "/assets",
  "/assets/",
  "/index.html%00.js",
  "/%E0%A4%A",
  "/nothing.html",
  "http://127.0.0.1/../secret.html",
  "*",
])("%s is not there", async (path) => {
  const { status, body } = await ask(path);
  expect([status, body]).toEqual([404, "no such page\n"]);
});

test.each(["POST", "PUT", "DELETE", "OPTIONS", "PATCH"])("%s is refused", async (method) => {
  const { status, headers } = await ask("/", { method });
  expect([status, headers.allow]).toEqual([405, "GET, HEAD"]);
});

test("HEAD sends the size without the page", async () => {
  const { status, headers, body } = await ask("/", { method: "HEAD" });
  expect([status, headers["content-length"], body]).toEqual([200, "10", ""]);
});

test("only a request for this machine's own name is answered", async () => {
  const { port } = new URL(server.url);
  expect((await ask("/", { host: `localhost:${port}` })).status).toBe(200);
  for (const host of [
    "example.invalid",
    `example.invalid:${port}`,
    "127.0.0.1",
    "localhost:1",
    `[::1]:${port}`,
  ]) {
    expect([(await ask("/", { host })).status, host]).toEqual([403, host]);
  }
});

test("a taken port is an error", async () => {
  const { port } = new URL(server.url);
  await expect(serveBook(folder, { port: Number(port) })).rejects.toThrow("EADDRINUSE");
});

describe("a book that is followed", () => {
  let live: BookServer;
  beforeAll(async () => {
    await writeFile(
      join(folder, "book", "page.html"),
      '<meta content="default-src &#39;none&#39;; script-src &#39;self&#39;"><script defer src="assets/book.js"></script>',
    );
    live = await serveBook(join(folder, "book"), { live: { built: 4 } });
  });
  afterAll(() => live.close());

  test("has a script in its pages that may ask this server, with the number of the book", async () => {
    const page = await (await fetch(`${live.url}page.html`)).text();
    expect(page).toBe(
      '<meta content="default-src &#39;none&#39;; connect-src &#39;self&#39;; script-src &#39;self&#39;"><script defer src="assets/live.js" data-built="4"></script>\n<script defer src="assets/book.js"></script>',
    );
    const script = await fetch(`${live.url}assets/live.js`);
    expect(script.headers.get("content-type")).toBe("text/javascript; charset=utf-8");
    expect(await script.text()).toContain("EventSource");
    const head = await fetch(`${live.url}page.html`, { method: "HEAD" });
    expect(Number(head.headers.get("content-length"))).toBe(Buffer.byteLength(page));
  });

  test("tells how it stands at once, and then of every change", async () => {
    const events = await fetch(`${live.url}changes`);
    expect(events.headers.get("content-type")).toBe("text/event-stream");
    const reader = events.body?.getReader();
    let heard = "";
    const hear = async (words: string): Promise<void> => {
      while (!heard.includes(words)) heard += Buffer.from((await reader?.read())?.value ?? []).toString();
    };
    await hear('data: {"built":4}\n\n');
    live.tell({ built: 4, trouble: "two\nlines" });
    await hear('data: {"built":4,"trouble":"two\\nlines"}\n\n');
    await reader?.cancel();
  });

  test("tells nobody but pages of its own", async () => {
    const { port } = new URL(live.url);
    const status = await new Promise((resolve, reject) => {
      const asked = request({
        hostname: "127.0.0.1",
        port,
        path: "/changes",
        headers: { host: "example.invalid" },
      });
      asked.on("error", reject).on("response", (answer) => resolve(answer.statusCode));
      asked.end();
    });
    expect(status).toBe(403);
  });

  test("is not told of where nothing is followed", async () => {
    expect((await ask("/changes")).status).toBe(404);
    expect((await ask("/assets/live.js")).status).toBe(404);
    expect((await ask("/page.html")).body).not.toContain("live.js");
  });
});

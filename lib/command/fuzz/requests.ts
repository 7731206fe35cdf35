/** Odd requests to the book's server: it answers or closes, gives nothing that is not the book's, and lives on. */
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BookServer, serveBook } from "../../book/index.js";
import { type Draws, drawsOf } from "../reference/cases/draws.js";
import { errorWords, type Fuzzer } from "./fuzzer.js";

const page = "<!doctype html><title>the page of this try</title>";
const secret = "what nobody may read";

/** A raw request of odd lines. */
export const requests: Fuzzer = {
  attack: async (seed) => {
    const request = requestOf(drawsOf(seed, "mm"));
    try {
      const server = await running();
      const answer = await answerTo(server, request, patience);
      const after = await answerTo(
        server,
        `GET / HTTP/1.1\r\nHost: ${hostOf(server)}\r\nConnection: close\r\n\r\n`,
        longPatience,
      );
      const words = faultOf(answer, after);
      return words === undefined ? undefined : { words, input: JSON.stringify(request) };
    } catch (error) {
      return { words: errorWords(error), input: JSON.stringify(request) };
    }
  },
};

function faultOf(answer: string, after: string): string | undefined {
  if (answer.includes(secret)) return "it gave a file that is not the book's";
  if (answer !== "" && !answer.startsWith("HTTP/1.1 "))
    return `it answered ${JSON.stringify(answer.slice(0, 80))}`;
  if (/^HTTP\/1\.1 5\d\d/.test(answer)) return `it failed: ${answer.split("\r\n")[0]}`;
  return after.includes(page) ? undefined : "afterwards it no longer gave its first page";
}

let server: Promise<BookServer> | undefined;

/** One server for all tries, over a folder with a file beside it that nobody may read. */
function running(): Promise<BookServer> {
  server ??= started();
  return server;
}

async function started(): Promise<BookServer> {
  const folder = mkdtempSync(join(tmpdir(), "casewright-fuzz-"));
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  const book = mkdtempSync(join(folder, "book-"));
  writeFileSync(join(folder, "secret.html"), secret);
  writeFileSync(join(book, "index.html"), page);
  writeFileSync(join(book, ".hidden.html"), secret);
  symlinkSync(join(folder, "secret.html"), join(book, "link.html"));
  return serveBook(book);
}

function hostOf({ url }: BookServer): string {
  return new URL(url).host;
}

const paths: readonly string[] = [
  "/",
  "/index.html",
  "/../secret.html",
  "/..%2fsecret.html",
  "/%2e%2e/secret.html",
  "/.%00./secret.html",
  "/..\\secret.html",
  "/link.html",
  "/.hidden.html",
  "//secret.html",
  "/index.html/..",
  "/%",
  "/%ff%fe",
  "/index.html%00.png",
  "*",
  "",
  "http://elsewhere.example/index.html",
  "/?q=1#x",
  `/${"a".repeat(9000)}`,
  `/${"../".repeat(300)}`,
];

function requestOf(draws: Draws): string {
  const method = draws.pick(["GET", "GET", "GET", "HEAD", "POST", "OPTIONS", "TRACE", "get", "G\u0000T", ""]);
  const host = draws.often(8) ? "HOST" : draws.pick(["elsewhere.example", "", "127.0.0.1", "localhost:1"]);
  const ranges = [
    "bytes=0-",
    "bytes=-1",
    "bytes=5-2",
    "bytes=0-0,2-3",
    "bytes=9999999999999999999-",
    "lines=1",
    "bytes=",
  ];
  const lines = [
    `${method} ${draws.pick(paths)} ${draws.pick(["HTTP/1.1", "HTTP/1.1", "HTTP/1.0", "HTTP/9", ""])}`,
    `Host: ${host}`,
    ...(draws.often(5) ? [`Range: ${draws.pick(ranges)}`] : []),
    ...(draws.often(2) ? [`Content-Length: ${draws.pick(["0", "-1", "x", "99999999"])}`] : []),
    ...(draws.often(1) ? ["Transfer-Encoding: chunked"] : []),
    ...(draws.often(1) ? [`X: ${"y".repeat(20_000)}`] : []),
    ...(draws.often(1) ? ["Upgrade: websocket", "Connection: Upgrade"] : ["Connection: close"]),
  ];
  return `${lines.join("\r\n")}${draws.pick(["\r\n\r\n", "\r\n\r\n", "\n\n", "\r\n", ""])}`;
}

/** Milliseconds after which a half request is given up, as a reader who left would. */
const patience = 300;

/** Milliseconds for a whole request, which a busy machine may need. */
const longPatience = 30_000;

/** All that the server says to a raw request. */
function answerTo(server: BookServer, request: string, wait: number): Promise<string> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve) => {
    const socket = connect(Number(port), hostname);
    let answer = "";
    const leave = setTimeout(() => socket.destroy(), wait);
    socket.on("data", (data) => {
      answer += data.toString("latin1");
    });
    // A connection that is cut ends as one that is closed.
    socket.on("error", () => {});
    socket.on("close", () => {
      clearTimeout(leave);
      resolve(answer);
    });
    socket.write(request.replace("HOST", hostOf(server)));
  });
}

/** Serves the book's folder to this machine only, and tells its open pages of changes. */
import { createReadStream } from "node:fs";
import { readFile, realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, sep } from "node:path";
import { pipeline } from "node:stream/promises";
import { type DeskAnswer, LiveDesk } from "./live-desk.js";
import type { LiveJob } from "./live-file.js";
import { type LiveState, liveEvent, livePage, livePaths, liveScript, savedEvent } from "./live-page.js";

/** A running server. */
export interface BookServer {
  /** Address of the first page. */
  readonly url: string;
  /** Tells every page that is open now, or is opened later, how the book stands. */
  tell(state: LiveState): void;
  /** Tells them that a file was saved, before there is a book of it. */
  tellSaved(): void;
  /** Stops it and ends open connections. */
  close(): Promise<void>;
}

/** How to serve a book. */
interface ServeOptions {
  /** 0, the default, takes a free one. */
  readonly port?: number;
  /** How the book stands at the start, for pages that follow it; without it they stay as they are. */
  readonly live?: LiveState;
  /** The job whose files its live page may read and save; without it the live page is the file of the book. */
  readonly job?: LiveJob;
}

const address = "127.0.0.1";

/**
 * Serves a folder on 127.0.0.1. Only GET and HEAD, only files of that folder, only when asked for by this
 * machine's name, so that no page of a foreign site can read along. The live page alone may also save.
 *
 * @throws Error when the port is taken
 */
export async function serveBook(
  folder: string,
  { port = 0, live, job }: ServeOptions = {},
): Promise<BookServer> {
  const shelf = new Shelf(folder, live, job && new LiveDesk(job));
  const server = createServer((request, response) => {
    shelf
      .answer(ownPort(server), request, response)
      .catch(() => refuse(response, 500, "cannot read this file"));
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, address, resolve);
  });
  return {
    url: `http://${address}:${ownPort(server)}/`,
    tell: (state) => shelf.tell(state),
    tellSaved: () => shelf.tellSaved(),
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}

/** @throws Error when the server is not listening */
function ownPort(server: Server): number {
  const at = server.address();
  if (at === null || typeof at === "string") throw new Error(`book server: expected a port, got ${at}`);
  return at.port;
}

const headers = {
  "X-Content-Type-Options": "nosniff",
  "Cache-Control": "no-store",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Content-Security-Policy": "frame-ancestors 'none'",
} as const;

/** The folder, and who listens to it. */
class Shelf {
  readonly #folder: string;
  readonly #listeners = new Set<ServerResponse>();
  readonly #desk: LiveDesk | undefined;
  #live: LiveState | undefined;

  constructor(folder: string, live: LiveState | undefined, desk: LiveDesk | undefined) {
    this.#folder = folder;
    this.#live = live;
    this.#desk = desk;
  }

  tell(state: LiveState): void {
    this.#live = state;
    for (const listener of this.#listeners) listener.write(liveEvent(state));
  }

  tellSaved(): void {
    for (const listener of this.#listeners) listener.write(savedEvent);
  }

  async answer(port: number, request: IncomingMessage, response: ServerResponse): Promise<void> {
    const ownNames = [`${address}:${port}`, `localhost:${port}`];
    if (!ownNames.includes(request.headers.host ?? "")) return refuse(response, 403, "not for this host");
    const told = await this.#desk?.answer(
      request,
      ownNames.map((name) => `http://${name}`),
    );
    if (told) return sendAnswer(response, told);
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.setHeader("Allow", "GET, HEAD");
      return refuse(response, 405, "only GET and HEAD");
    }
    const withBody = request.method === "GET";
    if (this.#live && this.#answerLive(request.url, this.#live, response)) return;
    const file = await findFile(this.#folder, request.url ?? "/");
    if (!file) return refuse(response, 404, "no such page");
    if (this.#live && file.type === types[".html"]) {
      const page = livePage(await readFile(file.path, "utf8"), this.#live);
      return send(response, file.type, page, withBody);
    }
    await sendFile(response, file, request.headers.range, withBody);
  }

  /** Whether the request was for what pages need in order to follow. */
  #answerLive(path: string | undefined, live: LiveState, response: ServerResponse): boolean {
    if (path === livePaths.script) send(response, types[".js"], liveScript, true);
    else if (path === livePaths.events) this.#listen(response, live);
    else return false;
    return true;
  }

  #listen(response: ServerResponse, live: LiveState): void {
    response.writeHead(200, { ...headers, "Content-Type": "text/event-stream" });
    response.write(`retry: 500\n${liveEvent(live)}`);
    this.#listeners.add(response);
    response.on("close", () => this.#listeners.delete(response));
  }
}

function sendAnswer(response: ServerResponse, { status, body }: DeskAnswer): void {
  if ("words" in body) return void refuse(response, status, body.words);
  const [type, text] =
    "html" in body ? [types[".html"], body.html] : ["application/json", JSON.stringify(body.json)];
  send(response, type, text, true, status);
}

/** Sends a file, or the bytes of it that are asked for; the file is closed also when its reader leaves. */
async function sendFile(
  response: ServerResponse,
  { path, size, type }: FoundFile,
  range: string | undefined,
  withBody: boolean,
): Promise<void> {
  const wanted = range === undefined ? undefined : bytesOf(range, size);
  if (wanted === "none") {
    response.setHeader("Content-Range", `bytes */${size}`);
    return refuse(response, 416, "no such bytes");
  }
  const { start, end } = wanted ?? { start: 0, end: size - 1 };
  response.writeHead(wanted ? 206 : 200, {
    ...headers,
    "Accept-Ranges": "bytes",
    "Content-Type": type,
    "Content-Length": end - start + 1,
    ...(wanted ? { "Content-Range": `bytes ${start}-${end}/${size}` } : {}),
  });
  if (!withBody || size === 0) return void response.end();
  // A reader who leaves is no failure.
  await pipeline(createReadStream(path, { start, end }), response).catch(() => response.destroy());
}

/** Bytes of a file, both ends included. */
interface Bytes {
  /** The first. */
  readonly start: number;
  /** The last. */
  readonly end: number;
}

/**
 * The bytes that a Range header asks for (RFC 9110, section 14): "none" where the file has none of them, and
 * undefined, which means the whole file, for several ranges or what is no range of bytes.
 */
function bytesOf(range: string, size: number): Bytes | "none" | undefined {
  const [, from = "", to = ""] = /^bytes=(\d*)-(\d*)$/.exec(range) ?? [];
  if (from === "" && to === "") return undefined;
  const start = from === "" ? Math.max(0, size - Number(to)) : Number(from);
  const end = from === "" || to === "" ? size - 1 : Math.min(Number(to), size - 1);
  if (from !== "" && to !== "" && Number(to) < start) return undefined;
  return start < size && (from !== "" || Number(to) > 0) ? { start, end } : "none";
}

function send(response: ServerResponse, type: string, text: string, withBody: boolean, status = 200): void {
  response.writeHead(status, {
    ...headers,
    "Content-Type": type,
    "Content-Length": Buffer.byteLength(text),
  });
  response.end(withBody ? text : undefined);
}

function refuse(response: ServerResponse, status: number, words: string): void {
  if (response.headersSent) return void response.destroy();
  response.writeHead(status, { ...headers, "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${words}\n`);
}

/** A file that may be sent. */
interface FoundFile {
  /** Where it stands, links followed. */
  readonly path: string;
  /** In bytes. */
  readonly size: number;
  /** Content type. */
  readonly type: string;
}

const types = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".md": "text/markdown; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".pdf": "application/pdf",
} as const;

/**
 * The file in a folder that a request asks for; undefined unless it is a file of a known type within that
 * folder, also after every link has been followed.
 */
async function findFile(folder: string, requestUrl: string): Promise<FoundFile | undefined> {
  const names = pathNames(requestUrl);
  if (!names) return undefined;
  try {
    const root = await realpath(folder);
    const path = await realpath(join(root, ...(names.length === 0 ? ["index.html"] : names)));
    const type = typeOf(path);
    const entry = await stat(path);
    return type && entry.isFile() && path.startsWith(root + sep)
      ? { path, size: entry.size, type }
      : undefined;
  } catch {
    return undefined;
  }
}

function typeOf(path: string): string | undefined {
  const ending = extname(path).toLowerCase();
  return Object.entries(types).find(([known]) => known === ending)?.[1];
}

/** The names of a path, decoded once; undefined when one of them could lead elsewhere. */
function pathNames(requestUrl: string): string[] | undefined {
  const [path = ""] = requestUrl.split(/[?#]/);
  if (!path.startsWith("/")) return undefined;
  try {
    const names = path.split("/").filter(Boolean).map(decodeURIComponent);
    return names.every((name) => /^[^./\\:\0][^/\\:\0]*$/.test(name)) ? names : undefined;
  } catch {
    return undefined;
  }
}

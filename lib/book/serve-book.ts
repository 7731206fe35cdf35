/** Serves the book's folder to this machine only, and tells its open pages of changes. */
import { createReadStream } from "node:fs";
import { readFile, realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, sep } from "node:path";
import { type LiveState, liveEvent, livePage, livePaths, liveScript } from "./live-page.js";

/** A running server. */
export interface BookServer {
  /** Address of the first page. */
  readonly url: string;
  /** Tells every page that is open now, or is opened later, how the book stands. */
  tell(state: LiveState): void;
  /** Stops it and ends open connections. */
  close(): Promise<void>;
}

/** How to serve a book. */
interface ServeOptions {
  /** 0, the default, takes a free one. */
  readonly port?: number;
  /** How the book stands at the start, for pages that follow it; without it they stay as they are. */
  readonly live?: LiveState;
}

const address = "127.0.0.1";

/**
 * Serves a folder on 127.0.0.1. Only GET and HEAD, only files of that folder, only when asked for by this
 * machine's name, so that no page of a foreign site can read along.
 *
 * @throws Error when the port is taken
 */
export async function serveBook(folder: string, { port = 0, live }: ServeOptions = {}): Promise<BookServer> {
  const shelf = new Shelf(folder, live);
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
  #live: LiveState | undefined;

  constructor(folder: string, live: LiveState | undefined) {
    this.#folder = folder;
    this.#live = live;
  }

  tell(state: LiveState): void {
    this.#live = state;
    for (const listener of this.#listeners) listener.write(liveEvent(state));
  }

  async answer(port: number, request: IncomingMessage, response: ServerResponse): Promise<void> {
    const ownNames = [`${address}:${port}`, `localhost:${port}`];
    if (!ownNames.includes(request.headers.host ?? "")) return refuse(response, 403, "not for this host");
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
    response.writeHead(200, { ...headers, "Content-Type": file.type, "Content-Length": file.size });
    if (!withBody) return void response.end();
    createReadStream(file.path)
      .on("error", () => response.destroy())
      .pipe(response);
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

function send(response: ServerResponse, type: string, text: string, withBody: boolean): void {
  response.writeHead(200, {
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

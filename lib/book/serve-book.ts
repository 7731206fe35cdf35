/** Serves the book's folder to this machine only. */
import { createReadStream } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { findFile } from "./find-file.js";

/** A running server. */
export interface BookServer {
  /** Address of the first page. */
  readonly url: string;
  /** Stops it and ends open connections. */
  close(): Promise<void>;
}

const address = "127.0.0.1";

/**
 * Serves a folder on 127.0.0.1. Only GET and HEAD, only files of that folder, only when asked for by this
 * machine's name, so that no page of a foreign site can read along.
 *
 * @param port 0 takes a free one
 * @throws Error when the port is taken
 */
export async function serveBook(
  folder: string,
  { port = 0 }: { readonly port?: number } = {},
): Promise<BookServer> {
  const server = createServer((request, response) => {
    answer(folder, ownPort(server), request, response).catch(() =>
      refuse(response, 500, "cannot read this file"),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, address, resolve);
  });
  return {
    url: `http://${address}:${ownPort(server)}/`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}

function ownPort(server: Server): number {
  return (server.address() as AddressInfo).port;
}

const headers = {
  "X-Content-Type-Options": "nosniff",
  "Cache-Control": "no-store",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Content-Security-Policy": "frame-ancestors 'none'",
} as const;

async function answer(
  folder: string,
  port: number,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const ownNames = [`${address}:${port}`, `localhost:${port}`];
  if (!ownNames.includes(request.headers.host ?? "")) return refuse(response, 403, "not for this host");
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD");
    return refuse(response, 405, "only GET and HEAD");
  }
  const file = await findFile(folder, request.url ?? "/");
  if (!file) return refuse(response, 404, "no such page");
  response.writeHead(200, { ...headers, "Content-Type": file.type, "Content-Length": file.size });
  if (request.method === "HEAD") return void response.end();
  createReadStream(file.path)
    .on("error", () => response.destroy())
    .pipe(response);
}

function refuse(response: ServerResponse, status: number, words: string): void {
  if (response.headersSent) return void response.destroy();
  response.writeHead(status, { ...headers, "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${words}\n`);
}

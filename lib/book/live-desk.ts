/** The live page as it is served: it may read and save the files of its job, and no other page may. */
import { randomUUID, timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";
import type { Texts } from "../design/index.js";
import { JobFiles } from "./job-files.js";
import { type LiveJob, liveFile } from "./live-file.js";
import { livePaths } from "./live-page.js";

/** An answer of the desk. */
export interface DeskAnswer {
  /** Status of HTTP. */
  readonly status: number;
  /** The page, a piece of JSON, or a sentence. */
  readonly body: { readonly html: string } | { readonly json: unknown } | { readonly words: string };
}

/** Where the live page of a job comes from, and where it saves. */
export class LiveDesk {
  readonly #job: LiveJob;
  readonly #files: JobFiles;
  readonly #token: string = randomUUID();

  constructor(job: LiveJob) {
    this.#job = job;
    this.#files = new JobFiles(job.folder);
  }

  /**
   * Answers a request for the live page or its files; undefined for any other.
   *
   * @param origins how this server is called, such as "http://127.0.0.1:4000"
   */
  async answer(request: IncomingMessage, origins: readonly string[]): Promise<DeskAnswer | undefined> {
    const { method, url } = request;
    if (method === "GET" && (url === livePaths.page || url === livePaths.pageFile)) {
      return { status: 200, body: { html: this.#page() } };
    }
    if (url !== livePaths.files || (method !== "GET" && method !== "POST")) return undefined;
    if (!this.#mayAsk(request, origins)) {
      return { status: 403, body: { words: "only the live page of this server may ask for files" } };
    }
    if (method === "GET") return { status: 200, body: { json: { texts: this.#files.read() } } };
    return this.#save(request);
  }

  #page(): string {
    const { files, events } = livePaths;
    return liveFile(this.#job, { saves: { files, events, token: this.#token }, book: "./" });
  }

  /** A page of another site neither knows the token nor has this origin; a browser sends the origin with every POST. */
  #mayAsk({ method, headers }: IncomingMessage, origins: readonly string[]): boolean {
    const { origin } = headers;
    const own = origin === undefined ? method === "GET" : origins.includes(origin);
    const site = headers["sec-fetch-site"];
    return own && (site === undefined || site === "same-origin") && this.#knows(headers[tokenHeader]);
  }

  #knows(token: string | readonly string[] | undefined): boolean {
    const given = Buffer.from(String(token));
    const own = Buffer.from(this.#token);
    return given.length === own.length && timingSafeEqual(given, own);
  }

  async #save(request: IncomingMessage): Promise<DeskAnswer> {
    if (request.headers["content-type"] !== "application/json") {
      return { status: 415, body: { words: "expected application/json" } };
    }
    const text = await bodyOf(request);
    if (text === undefined) return { status: 413, body: { words: "these files are larger than 32 MB" } };
    const asked = savingOf(text);
    if (!asked) return { status: 400, body: { words: 'expected {"known", "texts"}: texts by file name' } };
    const saved = await this.#files.save(asked.known, asked.texts);
    const status = { saved: 200, changed: 409, refused: 422 }[saved.kind];
    return { status, body: { json: saved } };
  }
}

/** The page sends the token that it was given under this name. */
const tokenHeader = "x-casewright-token";

/** Most that a page may send, in bytes. */
const largestBody = 32_000_000;

/** The body as text; undefined for one that is too large. */
async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request) {
    size += (part as Buffer).length;
    if (size <= largestBody) parts.push(part as Buffer);
  }
  return size <= largestBody ? Buffer.concat(parts).toString("utf8") : undefined;
}

/** What a page asks to save; undefined for anything else. */
function savingOf(text: string): { readonly known: Texts; readonly texts: Texts } | undefined {
  try {
    const { known, texts }: { known?: unknown; texts?: unknown } = JSON.parse(text) ?? {};
    return isTexts(known) && isTexts(texts) ? { known, texts } : undefined;
  } catch {
    return undefined;
  }
}

function isTexts(value: unknown): value is Texts {
  const isRecord = typeof value === "object" && value !== null && !Array.isArray(value);
  return isRecord && Object.values(value).every((one) => typeof one === "string");
}

import { realpath, stat } from "node:fs/promises";
import { extname, join, sep } from "node:path";

/** A file that may be sent. */
export interface FoundFile {
  readonly path: string;
  readonly size: number;
  /** Content type. */
  readonly type: string;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".md": "text/markdown; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".pdf": "application/pdf",
};

/**
 * The file in a folder that a request asks for; undefined unless it is a file of a known type within that
 * folder, also after every link has been followed.
 */
export async function findFile(folder: string, requestUrl: string): Promise<FoundFile | undefined> {
  const names = pathNames(requestUrl);
  if (!names) return undefined;
  try {
    const root = await realpath(folder);
    const path = await realpath(join(root, ...(names.length === 0 ? ["index.html"] : names)));
    const type = types[extname(path).toLowerCase()];
    const entry = await stat(path);
    return type && entry.isFile() && path.startsWith(root + sep)
      ? { path, size: entry.size, type }
      : undefined;
  } catch {
    return undefined;
  }
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

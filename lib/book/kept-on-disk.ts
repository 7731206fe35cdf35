/** What follows from this build of the library and these packages alone, kept on disk from one process to the next. */
import { createHash, randomUUID } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { isInstalled, libraryFolder, projectFolder } from "./project-folders.js";

/** Keeps values that JSON can say. What cannot be kept or read is worked out again. */
export class KeptOnDisk {
  readonly #folder: string | undefined;

  /** @param folder where; undefined keeps nothing */
  constructor(folder: string | undefined) {
    this.#folder = folder;
  }

  /** A place for this build; undefined where it cannot be known whether the library is the same. Others' are removed. */
  static ofThisBuild(): KeptOnDisk {
    try {
      const hash = createHash("sha256").update(process.version);
      hash.update(readFileSync(join(libraryFolder(), ".tsbuildinfo")));
      hash.update(
        readFileSync(
          isInstalled()
            ? join(projectFolder(), "..", ".package-lock.json")
            : join(projectFolder(), "node_modules", ".package-lock.json"),
        ),
      );
      return new KeptOnDisk(onlyFolder(hash.digest("hex").slice(0, 32)));
    } catch {
      return new KeptOnDisk(undefined);
    }
  }

  /** What is kept under a key; undefined when nothing is, or when it was damaged. */
  read(key: unknown): unknown {
    if (this.#folder === undefined) return undefined;
    try {
      return JSON.parse(readFileSync(this.#file(this.#folder, key), "utf8"));
    } catch {
      return undefined;
    }
  }

  /** Keeps a value. It is written beside and moved into place, since two processes may keep the same. */
  write(key: unknown, value: unknown): void {
    if (this.#folder === undefined) return;
    const file = this.#file(this.#folder, key);
    const half = join(dirname(file), `${randomUUID()}.half`);
    try {
      writeFileSync(half, JSON.stringify(value));
      renameSync(half, file);
    } catch {
      rmSync(half, { force: true });
    }
  }

  #file(folder: string, key: unknown): string {
    return join(folder, `${createHash("sha256").update(JSON.stringify(key)).digest("hex")}.json`);
  }
}

/** The folder of one build, alone of its kind. */
function onlyFolder(name: string): string {
  const all = join(projectFolder(), "node_modules", ".cache", "casewright");
  mkdirSync(join(all, name), { recursive: true });
  for (const other of readdirSync(all)) {
    if (other !== name) rmSync(join(all, other), { recursive: true, force: true });
  }
  return join(all, name);
}

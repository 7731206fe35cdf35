/**
 * Compiled cells, kept on disk. A cell that passed the compiler after the same declarations, with the same
 * library and the same packages, would pass it again and give the same code; so the compiler is started only
 * when a cell comes that nobody has seen.
 */
import { createHash, randomUUID } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { libraryFolder, projectFolder } from "../project-folders.js";
import type { Converted, Converter } from "./tslab-internals.js";

/** An import of a file beside the notebook, whose text is not known here. */
const pathInQuotes = /["'`](\.{0,2}\/|[A-Za-z]:|file:)/;

/** A converter that asks the compiler only for cells not kept yet; made when it is first needed. */
export function keptConverter(create: () => Converter, folder: string | undefined): Converter {
  let made: Converter | undefined;
  const compiler = (): Converter => {
    made ??= create();
    return made;
  };
  return {
    convert: (declared, code) => {
      const kept = keptFile(folder, declared, code);
      const found = kept && readKept(kept);
      if (found) return found;
      const converted = compiler().convert(declared, code);
      if (kept && converted.diagnostics.length === 0 && !converted.sideOutputs) writeKept(kept, converted);
      return converted;
    },
    addModule: (...request) => compiler().addModule(...request),
    inspect: (...request) => compiler().inspect(...request),
    complete: (...request) => compiler().complete(...request),
    close: () => made?.close(),
  };
}

/**
 * Where cells are kept that were compiled against this build of the library and these packages; those of
 * other builds are removed. Undefined where it cannot be known whether the library is the same.
 */
export function keptFolder(): string | undefined {
  try {
    const hash = createHash("sha256").update(process.version);
    hash.update(readFileSync(join(libraryFolder(), ".tsbuildinfo")));
    hash.update(readFileSync(join(projectFolder(), "node_modules", ".package-lock.json")));
    const all = join(projectFolder(), "node_modules", ".cache", "casewright-cells");
    const own = hash.digest("hex").slice(0, 32);
    mkdirSync(join(all, own), { recursive: true });
    for (const name of readdirSync(all))
      if (name !== own) rmSync(join(all, name), { recursive: true, force: true });
    return join(all, own);
  } catch {
    return undefined;
  }
}

/** The file of one cell; undefined for a cell that may depend on files which are not looked at. */
function keptFile(folder: string | undefined, declared: string, code: string): string | undefined {
  if (folder === undefined || pathInQuotes.test(declared) || pathInQuotes.test(code)) return undefined;
  const key = createHash("sha256")
    .update(JSON.stringify([process.cwd(), declared, code]))
    .digest("hex");
  return join(folder, `${key}.json`);
}

function readKept(file: string): Converted | undefined {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return undefined;
  }
}

/** Written beside and moved into place, since two kernels may keep the same cell. What cannot be kept is compiled again. */
function writeKept(file: string, converted: Converted): void {
  const half = join(dirname(file), `${randomUUID()}.half`);
  try {
    writeFileSync(half, JSON.stringify(converted));
    renameSync(half, file);
  } catch {
    rmSync(half, { force: true });
  }
}

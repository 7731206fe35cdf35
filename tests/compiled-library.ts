/** Lets tests name the sources and run what was compiled from them, as the kernel does. */
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Plugin } from "vitest/config";

const project = resolve(import.meta.dirname, "..");
const library = join(project, "lib");
const build = join(library, "dist");
const stamp = join(build, ".tested");

function newestSource(): number {
  const files = readdirSync(library, { recursive: true, encoding: "utf8" });
  const sources = files.filter((file) => file.endsWith(".ts") && !/^(dist|node_modules)/.test(file));
  return Math.max(...sources.map((file) => statSync(join(library, file)).mtimeMs));
}

/**
 * Compiles the library where a source is newer than the last compilation for tests.
 * @throws Error where the compiler finds a mistake, after it has printed it.
 */
export function compileLibrary(): void {
  if (existsSync(stamp) && statSync(stamp).mtimeMs > newestSource()) return;
  const compiler = join(project, "node_modules/typescript/bin/tsc");
  execFileSync(process.execPath, [compiler, "-p", "lib"], { cwd: project, stdio: "inherit" });
  writeFileSync(stamp, "");
}

/**
 * Leads imports of a source to its compiled file. Node.js reads that by itself, which is several times quicker than
 * sources that the test runner has rewritten.
 */
export const compiledLibrary: Plugin = {
  name: "compiled library",
  enforce: "pre",
  resolveId(source, importer) {
    if (importer === undefined || !source.startsWith(".") || !source.endsWith(".js")) return null;
    const file = resolve(importer, "..", source);
    const inLibrary = file.startsWith(`${library}/`) && !file.startsWith(`${build}/`);
    return inLibrary ? `${build}${file.slice(library.length)}` : null;
  },
};

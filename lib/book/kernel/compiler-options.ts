/**
 * Compiler options of the cells. tslab checks them loosely and does not see the types of packages that
 * have only an "exports" field, so a slip in a cell would pass; here cells are checked like the library.
 */
import { loadTslabCompiler, replaceModule } from "./tslab-internals.js";

type CreateHost = (files: unknown, options: object, ...rest: unknown[]) => unknown;

/**
 * Makes tslab compile cells strictly. Must run before tslab itself is loaded.
 *
 * @throws Error when tslab's compiler has no watch host to hand the options to
 */
export function compileCellsStrictly(): void {
  const { path, compiler } = loadTslabCompiler();
  const { createWatchCompilerHost, ModuleResolutionKind } = compiler;
  const bundler = (ModuleResolutionKind as { Bundler?: unknown } | undefined)?.Bundler;
  if (typeof createWatchCompilerHost !== "function" || bundler === undefined) {
    throw new Error('tslab kernel: the compiler of tslab takes no options; run "npm ci" again');
  }
  const create = createWatchCompilerHost as CreateHost;
  const strict = { strict: true, moduleResolution: bundler, lib: ["lib.es2023.d.ts"] };
  const createStrictly: CreateHost = (files, options, ...rest) =>
    create(files, { ...options, ...strict }, ...rest);
  replaceModule(path, { ...compiler, createWatchCompilerHost: createStrictly });
}

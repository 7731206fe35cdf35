/**
 * The parts of tslab this kernel stands on. They are not its public face, so the version is pinned. tslab checks cells
 * loosely and does not see the types of packages that have only an "exports" field; here they are checked like the library.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type ts from "@tslab/typescript-for-tslab";
import { libraryFolder } from "../project-folders.js";
import { exportedNames, type ImportCompiler, withFoundImports } from "./cell-imports.js";
import { type CellCompiler, watchWithNames, withoutExports } from "./cell-names.js";
import { withNamedStars } from "./cell-stars.js";

const wantedVersion = "1.0.22";
const load = createRequire(import.meta.url);

/** A cell in JavaScript, or why there is none. */
export interface Converted {
  /** Complaints of the compiler; what follows is there only without any. */
  readonly diagnostics: readonly unknown[];
  /** What to run; absent for a cell that only declares types. */
  readonly output?: string;
  /** Declarations of the session so far, this cell included. */
  readonly declOutput?: string;
  /** Whether the cell awaits. */
  readonly hasToplevelAwait?: boolean;
  /** Name under which the value of the last expression is left. */
  readonly lastExpressionVar?: string;
  /** Files beside the notebook that the cell imports, compiled. */
  readonly sideOutputs?: readonly unknown[];
}

/** Turns TypeScript cells into JavaScript, with one program for the whole session. */
export interface Converter {
  /** Checks and compiles a cell after the declarations of those before it. */
  convert(declared: string, code: string): Converted;
  /** Adds a cell that other cells can import. */
  addModule(...request: unknown[]): unknown;
  /** What stands at a position. */
  inspect(declared: string, code: string, position: number): InspectedName | undefined;
  /** What fits at a position. */
  complete(declared: string, code: string, position: number): Completion;
  /** Lets the program go. */
  close(): void;
}

/** What stands at a position, as the compiler tells it. */
interface InspectedName {
  /** Span of the name. */
  readonly textSpan?: { readonly start: number; readonly length: number };
}

/** What completion found. */
export interface Completion {
  /** Span of the code that a candidate replaces. */
  readonly start: number;
  /** Where the span ends, in characters. */
  readonly end: number;
  /** Names that fit. */
  readonly candidates: readonly string[];
}

/** Runs cells one after another in this process. */
export interface Executor {
  /** Resolves to whether the cell ran through. */
  execute(code: string): Promise<boolean>;
  complete(code: string, position: number): Completion;
  /** Type and comment of the name at a position; undefined where there is none. */
  inspect(code: string, position: number): object | undefined;
  /** Ends the wait of a cell that awaits. */
  interrupt(): void;
  /** Forgets all that cells declared. */
  reset(): void;
  close(): void;
}

/** Where an executor reports: `log` the value of a last expression, `error` what went wrong. */
interface ExecutorReports {
  log(value: unknown): void;
  error(...report: unknown[]): void;
}

/** Shows a bundle under the running cell; with `update` it replaces one shown before. */
type WriteDisplay = (display: Readonly<Record<string, unknown>>, update?: boolean) => void;

/** Whether code is a whole statement, for a console. */
export interface Completeness {
  /** Whether nothing is missing. */
  readonly completed: boolean;
  /** White space for the next line, when something is missing. */
  readonly indent?: string;
}

/** The internals in use. */
export interface TslabInternals {
  createConverter(options: { isJS: boolean; isBrowser: boolean }): Converter;
  createExecutor(
    folder: string,
    converters: { node: Converter; browser: Converter; close(): void },
    reports: ExecutorReports,
  ): Executor;
  isCompleteCode(code: string): Completeness;
  printQuickInfo(info: object): string;
  /** tslab's `display` writes through this module's `lastWriteDisplayData`. */
  readonly displayHook: { lastWriteDisplayData: WriteDisplay | null };
}

/** Loads the compiler that tslab uses, before tslab does, so that it can be prepared. */
function loadTslabCompiler(): {
  readonly path: string;
  readonly compiler: Record<string, unknown> & CellCompiler & ImportCompiler;
} {
  refuseOtherVersion();
  const path = load.resolve("@tslab/typescript-for-tslab", { paths: [dirname(load.resolve("tslab"))] });
  return { path, compiler: load(path) };
}

/**
 * Puts another module in place of one that has been loaded.
 *
 * @throws Error when it was not loaded
 */
function replaceModule(path: string, exports: object): void {
  const cached = load.cache[path];
  if (!cached) throw new Error(`tslab kernel: ${path} was not loaded`);
  cached.exports = exports;
}

/**
 * Loads the internals.
 *
 * @throws Error when tslab is another version, or lacks one of them
 */
export function loadTslab(): TslabInternals {
  refuseOtherVersion();
  const found = {
    createConverter: load("tslab/dist/converter").createConverter,
    isCompleteCode: load("tslab/dist/converter").isCompleteCode,
    createExecutor: load("tslab/dist/executor").createExecutor,
    printQuickInfo: load("tslab/dist/inspect").printQuickInfo,
    displayHook: load("tslab/dist/jupyter"),
  };
  const { displayHook, ...functions } = found;
  const present = { ...functions, lastWriteDisplayData: "lastWriteDisplayData" in displayHook };
  const missing = Object.entries(present).filter(([, part]) => typeof part !== "function" && part !== true);
  if (missing.length > 0) {
    const names = missing.map(([name]) => name).join(", ");
    throw new Error(`tslab kernel: tslab ${wantedVersion} lacks ${names}; run "npm ci" again`);
  }
  return { ...found, createConverter: convertingExports(found.createConverter) };
}

type CreateConverter = TslabInternals["createConverter"];

/** What the compiler made last: of the cell that it was last asked of. */
let newestProgram: ts.Program | undefined;

/** Cells may say `export`, as the files that they are copied from do, and import what "casewright" gave once. */
function convertingExports(create: CreateConverter): CreateConverter {
  const { compiler } = loadTslabCompiler();
  const offered = exportedNames(compiler, readFileSync(join(libraryFolder(), "face.d.ts"), "utf8"));
  return (options) => {
    const converter = create(options);
    return {
      ...converter,
      convert: (declared, code) => {
        const found = withFoundImports(compiler, withoutExports(compiler, code), offered);
        const named = withNamedStars(compiler, found.code, () => {
          converter.inspect(declared, found.code, 0);
          return newestProgram;
        });
        return converter.convert(declared, named);
      },
      complete: (declared, code, position) => {
        const { code: found, there, back } = withFoundImports(compiler, code, offered, position);
        const completion = converter.complete(declared, found, there(position));
        return { ...completion, start: back(completion.start), end: back(completion.end) };
      },
      inspect: (declared, code, position) => {
        const { code: found, there, back } = withFoundImports(compiler, code, offered);
        const name = converter.inspect(declared, found, there(position));
        if (!name?.textSpan) return name;
        return { ...name, textSpan: { ...name.textSpan, start: back(name.textSpan.start) } };
      },
    };
  };
}

/** @throws Error when tslab is another version */
function refuseOtherVersion(): void {
  const { version } = load("tslab/package.json");
  if (version !== wantedVersion) {
    throw new Error(`tslab kernel: needs tslab ${wantedVersion}, found ${version}; run "npm ci" again`);
  }
}

/** The part of a watch host that waits. */
interface TimedHost {
  setTimeout?(callback: () => void, ms: number): unknown;
  clearTimeout?(timer: unknown): void;
}

/** What the compiler calls when a folder changes in which it once looked for a file in vain. */
const lookedInVain = "invalidateResolutionsOfFailedLookup";

/** tslab has one timer for the compiler, for the cell; a folder that changes beside it needs another, or the cell fails. */
function withTwoTimers(host: TimedHost): TimedHost {
  const forCell = { set: host.setTimeout, clear: host.clearTimeout };
  const others = new Set<unknown>();
  host.setTimeout = (callback, ms) => {
    if (callback.name !== lookedInVain) return forCell.set?.(callback, ms);
    const timer = setTimeout(() => {
      others.delete(timer);
      callback();
    }, ms).unref();
    others.add(timer);
    return timer;
  };
  host.clearTimeout = (timer) => {
    if (others.delete(timer)) clearTimeout(timer as NodeJS.Timeout);
    else forCell.clear?.(timer);
  };
  return host;
}

type CreateHost = (files: readonly string[], options: object, ...rest: unknown[]) => TimedHost;

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
  const file = (name: string): string[] => [join(libraryFolder(), name)];
  const library = { casewright: file("face.d.ts"), "casewright/all": file("all.d.ts") };
  const strict = {
    ...{ strict: true, moduleResolution: bundler, lib: ["lib.es2023.d.ts"] },
    paths: library,
  };
  // What a cell keeps has a type of the library, which must have a name that later cells can import.
  const createStrictly: CreateHost = (files, options, ...rest) =>
    withTwoTimers(create([...files, ...file("all.d.ts")], { ...options, ...strict }, ...rest));
  const createWatchProgram = watchWithNames(compiler, (program) => {
    newestProgram = program;
  });
  replaceModule(path, { ...compiler, createWatchCompilerHost: createStrictly, createWatchProgram });
}

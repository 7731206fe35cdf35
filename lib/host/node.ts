/** The library's host where it runs under Node.js: in the notebook kernel, in a command, in a test. */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { setImmediate } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { runInThisContext } from "node:vm";
import { parentPort, Worker } from "node:worker_threads";
import type {
  ChartLibrary,
  ChartRuntime,
  Display,
  Host,
  JobFolders,
  VegaModule,
  WorkerPool,
  WorkerThread,
  WriteDisplay,
} from "./contract.js";

const { resolve: resolveModule } = createRequire(import.meta.url);

const files: JobFolders = {
  named: () => process.env.CASEWRIGHT_JOB || undefined,
  home: () => join(projectAbove(dirname(fileURLToPath(import.meta.url))), "data"),
  inside: (folder, name) => join(folder, name),
  resolve: (path) => resolve(path),
  nameOf: (folder) => basename(folder),
  read: (folder, wanted) => {
    if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return undefined;
    const present = wanted.filter((file) => isFile(join(folder, file)));
    const texts = Object.fromEntries(present.map((file) => [file, readFileSync(join(folder, file), "utf8")]));
    return { names: readdirSync(folder), texts };
  },
};

/** The project's folder, found upwards from this file, compiled or not. */
function projectAbove(folder: string): string {
  if (existsSync(join(folder, "data")) && existsSync(join(folder, "package-lock.json"))) return folder;
  const parent = dirname(folder);
  if (parent === folder) throw new Error("jobs: no data folder above the library, run it inside its project");
  return projectAbove(parent);
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

const display: Display = {
  writer: () => {
    const kernel: { readonly lastWriteDisplayData: WriteDisplay | null } = createRequire(import.meta.url)(
      "tslab/dist/jupyter",
    );
    return kernel.lastWriteDisplayData;
  },
  inBook: () => process.env.CASEWRIGHT_BOOK === "1",
};

/** The compiled library: this file's own, or dist when the sources run themselves, as tests do. */
const compiled = new URL(import.meta.url.endsWith(".ts") ? "../dist/" : "../", import.meta.url);

const pool: WorkerPool = {
  spare: () => availableParallelism(),
  start: (module) => {
    const file = new URL(`${module}.js`, compiled);
    return existsSync(file) ? threadOf(new Worker(file, { execArgv: [] })) : undefined;
  },
  serve: (answer) => parentPort?.on("message", (task) => parentPort?.postMessage(answer(task))),
  pause: () => setImmediate(),
};

function threadOf(worker: Worker): WorkerThread {
  return {
    ask: (task) =>
      new Promise((settle, reject) => {
        const answered = (reply: unknown): void => {
          worker.off("error", reject);
          settle(reply);
        };
        worker.once("message", answered);
        worker.once("error", reject);
        worker.postMessage(task);
      }),
    end: async () => {
      await worker.terminate();
    },
  };
}

let library: ChartLibrary | undefined;

const charts: ChartRuntime = {
  files: () =>
    ["vega", "vega-lite", "vega-embed"].map((part) => {
      const name = `${part}.min.js`;
      return { name, path: join(dirname(resolveModule(part)), name) };
    }),
  texts: () => charts.files().map(({ path }) => readFileSync(path, "utf8")),
  library: () => {
    library ??= loadCharts();
    return library;
  },
};

/** Runs the chart library's browser files in this process, so that charts can be made without waiting. */
function loadCharts(): ChartLibrary {
  const [vegaText = "", vegaLiteText = ""] = charts.texts();
  const vega = evaluate<VegaModule>(vegaText, {});
  return { vega, vegaLite: evaluate<ChartLibrary["vegaLite"]>(vegaLiteText, { vega }) };
}

/** Evaluates one file that offers itself in the way of CommonJS. */
function evaluate<Exports>(text: string, needed: Readonly<Record<string, unknown>>): Exports {
  const module: { exports: unknown } = { exports: {} };
  const wrapped: (...parts: unknown[]) => void = runInThisContext(
    `(function (exports, module, require, define) {${text}\n})`,
  );
  wrapped(module.exports, module, (name: string) => needed[name], undefined);
  return module.exports as Exports;
}

/** Node.js. */
export const host: Host = { files, display, pool, charts };

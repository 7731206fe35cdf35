/** The library's host in a browser: jobs in memory, results to whoever listens on the page, no files at all. */
import type {
  ChartRuntime,
  Display,
  Host,
  JobFolders,
  WorkerPool,
  WorkerThread,
  WriteDisplay,
} from "./contract.js";

/** A worker of the browser. */
interface BrowserWorker {
  /** Told what the worker answers. */
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  /** Told what stopped the worker. */
  onerror: ((event: { readonly message: string }) => void) | null;
  postMessage(task: unknown): void;
  terminate(): void;
}

/** The parts of a browser used here; the library is compiled without a browser's types. */
interface Browser {
  /** Starts a worker from the address of a classic script. */
  readonly Worker: new (
    address: string,
  ) => BrowserWorker;
  /** How many threads the machine runs at once. */
  readonly navigator?: { readonly hardwareConcurrency?: number };
  addEventListener(type: "message", listener: (event: { readonly data: unknown }) => void): void;
  postMessage(reply: unknown): void;
}

const browser = globalThis as unknown as Browser;

/** What a page gives the library, since there is nothing to find it by. */
interface PageHost {
  /** Texts of each job's files, by job and file name. */
  readonly jobs: Map<string, Readonly<Record<string, string>>>;
  /** Takes what is shown; null where nobody looks. */
  writer: WriteDisplay | null;
  /** Addresses of classic scripts that run a module of the library as a worker, by module. */
  readonly workers: Map<string, string>;
}

/** The page that the library runs in. */
export const page: PageHost = { jobs: new Map(), writer: null, workers: new Map() };

const files: JobFolders = {
  named: () => page.jobs.keys().next().value,
  home: () => "",
  inside: (_folder, name) => name,
  resolve: (path) => path,
  nameOf: (folder) => folder,
  read: (folder, wanted) => {
    const job = page.jobs.get(folder);
    if (!job) return undefined;
    const texts = Object.fromEntries(Object.entries(job).filter(([file]) => wanted.includes(file)));
    return { names: Object.keys(job), texts, faults: {} };
  },
};

/** A page draws views itself, as the book does. */
const display: Display = {
  writer: () => page.writer,
  showLastValues: () => undefined,
  inBook: () => true,
};

const pool: WorkerPool = {
  spare: () => Math.max(1, (browser.navigator?.hardwareConcurrency ?? 2) - 1),
  start: (module) => {
    const address = page.workers.get(module);
    return address === undefined ? undefined : threadOf(new browser.Worker(address));
  },
  serve: (answer) => {
    browser.addEventListener("message", ({ data }) => browser.postMessage(answer(data)));
  },
  pause: () => new Promise((go) => setTimeout(go, 0)),
};

function threadOf(worker: BrowserWorker): WorkerThread {
  return {
    ask: (task) =>
      new Promise((settle, reject) => {
        worker.onmessage = ({ data }) => settle(data);
        worker.onerror = ({ message }) => reject(new Error(message));
        worker.postMessage(task);
      }),
    end: () => {
      worker.terminate();
      return Promise.resolve();
    },
  };
}

/** The page loads the chart library itself and draws every chart live. */
const charts: ChartRuntime = { files: () => [], texts: () => [], library: () => undefined };

/** A page. */
export const host: Host = { files, display, pool, charts };

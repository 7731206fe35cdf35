/**
 * The four things that the library takes from wherever it runs: files of a job, a display, threads, and what draws
 * charts. `#host` is this contract kept by Node.js or, for a bundler that builds for the browser, by a page.
 */

/** What a folder holds. */
export interface FolderContents {
  /** Names of everything in it. */
  readonly names: readonly string[];
  /** Texts of those files that were wanted and are there, by name. */
  readonly texts: Readonly<Record<string, string>>;
  /** Why those files that were wanted and are there cannot be read, by name: what should stand there. */
  readonly faults: Readonly<Record<string, string>>;
}

/** Folders of jobs. */
export interface JobFolders {
  /** The job that whoever started the program named, if any. */
  named(): string | undefined;
  /** The folder in which jobs live: the project's data, or where the library is installed the folder one stands in. */
  home(): string;
  /** A job's folder inside another; the one that the library carries where there is none. */
  inside(folder: string, name: string): string;
  /** A path as the builder wrote it, in full. */
  resolve(path: string): string;
  /** The last part of a path. */
  nameOf(folder: string): string;
  /** What a folder holds, texts of the wanted files included; undefined where there is no such folder. */
  read(folder: string, wanted: readonly string[]): FolderContents | undefined;
}

/** One output of many types, from which each reader takes the richest that it can show. */
interface DisplayMessage {
  /** By type, such as "text/html". */
  readonly data: Readonly<Record<string, unknown>>;
  /** About the data, by type. */
  readonly metadata: object;
  /** What lives no longer than the output: the id under which it can be replaced. */
  readonly transient: { readonly display_id?: string };
}

/** Sends a display message; an update takes the place of the one with the same id. */
export type WriteDisplay = (message: DisplayMessage, update: boolean) => void;

/** Makes a bundle of a value. */
export type LastValueBundle = (value: unknown) => Readonly<Record<string, unknown>> | undefined;

/** Where the kernel finds it, whichever copy of the library the cells imported. */
export const lastValueBundle: unique symbol = Symbol.for("casewright.last value") as never;

/** Where results are shown. */
export interface Display {
  /** The way to send a display message; null where nothing listens. */
  writer(): WriteDisplay | null;
  /** Takes what makes a bundle of the last value of a cell; undefined for a value that is printed as text. */
  showLastValues(bundleOf: LastValueBundle): void;
  /** Whether the book is being made, which keeps results and no way to them. */
  inBook(): boolean;
}

/** One thread, which answers one task after another. */
export interface WorkerThread {
  /**
   * Answers a task.
   *
   * @throws Error when the thread ends instead of answering
   */
  ask(task: unknown): Promise<unknown>;
  /** Ends the thread, whatever it is doing. */
  end(): Promise<void>;
}

/** Threads. */
export interface WorkerPool {
  /** How many can run at once. */
  spare(): number;
  /** Starts one that runs a module of the library ("notebook/sweep/panel-worker"); undefined where none can be had. */
  start(module: string): WorkerThread | undefined;
  /** In such a module: answers every task that comes. */
  serve(answer: (task: unknown) => unknown): void;
  /** Lets others run before this thread goes on. */
  pause(): Promise<void>;
}

/** A browser file of the chart library. */
interface RuntimeFile {
  /** File name, unique among them. */
  readonly name: string;
  /** Where it sits on this machine. */
  readonly path: string;
}

/** What draws charts. */
export interface ChartRuntime {
  /** Its browser files, in the order in which they load; none where the page has loaded them itself. */
  files(): readonly RuntimeFile[];
  /** The texts of those files. */
  texts(): readonly string[];
  /** The same library in this process; undefined where no still pictures are drawn. */
  library(): ChartLibrary | undefined;
}

/** The parts of the chart library that a still picture needs. */
export interface ChartLibrary {
  /** Lays a chart out and draws it. */
  readonly vega: VegaModule;
  /** Turns a chart's description into what is laid out. */
  readonly vegaLite: { compile(spec: object, options?: object): { readonly spec: object } };
}

/** The part of the drawing library used here. */
export interface VegaModule {
  parse(spec: object, config?: object, options?: object): object;
  /** Lays a chart out. */
  View: new (
    runtime: object,
    options: object,
  ) => VegaView;
  /** Writes a laid-out chart as SVG. */
  SVGStringRenderer: new (
    loader: object,
  ) => SvgRenderer;
  loader(): object;
}

/** A chart laid out. */
interface VegaView {
  run(): VegaView;
  background(): string | null;
  scenegraph(): { readonly root: { readonly bounds: Bounds } };
  finalize(): void;
}

/** The room that drawn marks take. */
export interface Bounds {
  /** Left side, px. */
  readonly x1: number;
  /** Upper side, px. */
  readonly y1: number;
  /** Right side, px. */
  readonly x2: number;
  /** Lower side, px. */
  readonly y2: number;
}

/** Writes a chart as SVG. */
interface SvgRenderer {
  initialize(element: null, width: number, height: number, origin: readonly [number, number]): SvgRenderer;
  background(colour: string | null): SvgRenderer;
  render(scene: object): SvgRenderer;
  svg(): string;
}

/** All that the library takes from wherever it runs. */
export interface Host {
  /** Folders of jobs. */
  readonly files: JobFolders;
  /** Where results are shown. */
  readonly display: Display;
  /** Threads. */
  readonly pool: WorkerPool;
  /** What draws charts. */
  readonly charts: ChartRuntime;
}

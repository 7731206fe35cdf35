/** npm run lab -- JOB: opens the notebooks in the user's own Jupyter, with the project's kernel. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { basename, delimiter, dirname, relative } from "node:path";
import { asTyped, isInstalled, kernelSpecFolder, modulesFolder } from "../book/index.js";
import { demoJob, jobFolder } from "../job/index.js";
import { openedNotebooks } from "./places.js";

/**
 * Starts Jupyter where the notebooks of a job are opened, and waits for its end.
 *
 * @param args name of the job (default: the demo job); options, which go to Jupyter
 * @returns exit code: Jupyter's own, or 1 when there is no Jupyter or no such job
 */
export async function lab(args: readonly string[]): Promise<number> {
  const options = args.filter((arg) => arg.startsWith("-"));
  const [name = demoJob] = args.filter((arg) => !arg.startsWith("-"));
  const folder = jobFolder(name);
  if (!existsSync(folder)) {
    console.error(`no job "${name}": ${folder} is missing; "${asTyped("new")} ${name}" makes one`);
    return 1;
  }
  const jupyter = await findJupyter(process.env);
  if (!jupyter) {
    console.error(noJupyterAdvice);
    return 1;
  }
  const opened = await openedNotebooks(folder);
  if (opened.copied !== undefined) console.log(copiesAdvice(opened.copied, opened.folder));
  return runJupyter(
    jupyter,
    options,
    opened.folder,
    labEnvironment(name === basename(name) && !isInstalled() ? name : folder, process.env),
  );
}

function copiesAdvice(copies: string, opened: string): string {
  const place = (path: string): string => relative(process.cwd(), path) || path;
  const told = `The notebooks stand as copies in ${place(copies)}, for you to change; the book is made from ours.`;
  if (opened === copies) return told;
  return `${told}\nA notebook that you save in ${place(opened)} becomes a chapter of its book.`;
}

/**
 * The environment in which Jupyter finds this project's kernel, and the notebooks find the job.
 *
 * @param job name of a job, or the whole path of its folder
 * @param before the environment to start from
 */
export function labEnvironment(job: string, before: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const list = (...folders: (string | undefined)[]): string => folders.filter(Boolean).join(delimiter);
  // Windows spells it "Path", and a second spelling would hide the first.
  const pathName = Object.keys(before).find((name) => name.toUpperCase() === "PATH") ?? "PATH";
  return {
    ...before,
    CASEWRIGHT_JOB: job,
    NODE_PATH: list(before.NODE_PATH, modulesFolder()),
    JUPYTER_PATH: list(kernelSpecFolder(), before.JUPYTER_PATH),
    // For the kernel, where Node is not in the path; last, since beside Node another Jupyter may stand.
    [pathName]: list(before[pathName], dirname(process.execPath)),
  };
}

function runJupyter(
  { program, args }: JupyterCommand,
  options: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv,
): Promise<number> {
  const jupyter = spawn(program, [...args, ...options], { cwd, env, stdio: "inherit" });
  // Ctrl+C reaches Jupyter too, which asks whether to stop; this waits for the answer.
  process.on("SIGINT", () => {});
  process.on("SIGTERM", () => jupyter.kill());
  return new Promise((resolve, reject) => {
    jupyter.once("error", reject);
    jupyter.once("close", (code) => resolve(code ?? 1));
  });
}

/** How to start a Jupyter. */
interface JupyterCommand {
  /** Name of the program. */
  readonly program: string;
  /** Arguments before those of the user. */
  readonly args: readonly string[];
}

/** The folder of the "jupyter" program is often not in PATH on Windows, but Python is. */
const ways: readonly JupyterCommand[] = [
  { program: "jupyter", args: [] },
  { program: "python3", args: ["-m", "jupyter"] },
  { program: "python", args: ["-m", "jupyter"] },
  { program: "py", args: ["-m", "jupyter"] },
];

/** JupyterLab where it is installed, else Jupyter Notebook; undefined without either. */
export async function findJupyter(env: NodeJS.ProcessEnv): Promise<JupyterCommand | undefined> {
  for (const { program, args } of ways) {
    for (const app of ["lab", "notebook"]) {
      const command = { program, args: [...args, app] };
      if (await answers(command, env)) return command;
    }
  }
  return undefined;
}

/** How to get one, on each system. */
const noJupyterAdvice: string = `No Jupyter was found on this machine. To get one:

  Debian, Ubuntu   sudo apt install jupyter-notebook
  macOS            brew install jupyterlab
  Windows          winget install Python.Python.3.12
                   py -m pip install jupyterlab

Then run "npm run lab" again. Without Jupyter, "npm start" runs the same notebooks and shows the result.`;

function answers({ program, args }: JupyterCommand, env: NodeJS.ProcessEnv): Promise<boolean> {
  return new Promise((resolve) => {
    const asked = spawn(program, [...args, "--version"], { env, stdio: "ignore" });
    asked.once("error", () => resolve(false));
    asked.once("close", (code) => resolve(code === 0));
  });
}

/** npm run lab -- JOB: opens the notebooks in the user's own Jupyter, with the project's kernel. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { kernelSpecFolder, projectFolder } from "../book/index.js";
import { findJupyter, type JupyterCommand, noJupyterAdvice } from "./find-jupyter.js";

/**
 * Starts Jupyter in the folder of the notebooks and waits for its end.
 *
 * @param args name of the job (default soil-lab); options, which go to Jupyter
 * @returns exit code: Jupyter's own, or 1 when there is no Jupyter or no such job
 */
export async function lab(args: readonly string[]): Promise<number> {
  const job = args[0]?.startsWith("-") === false ? args[0] : "soil-lab";
  const options = args.filter((arg) => arg !== job);
  if (!existsSync(join(projectFolder(), "data", job, "case.yaml"))) {
    console.error(`no job "${job}": data/${job}/case.yaml is missing; "npm run new -- ${job}" makes one`);
    return 1;
  }
  const jupyter = await findJupyter();
  if (!jupyter) {
    console.error(noJupyterAdvice);
    return 1;
  }
  return runJupyter(jupyter, options, labEnvironment(job, process.env));
}

/** The environment in which Jupyter finds this project's kernel, and the notebooks find the job. */
export function labEnvironment(job: string, before: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const list = (...folders: (string | undefined)[]): string => folders.filter(Boolean).join(delimiter);
  // Windows spells it "Path", and a second spelling would hide the first.
  const pathName = Object.keys(before).find((name) => name.toUpperCase() === "PATH") ?? "PATH";
  return {
    ...before,
    CASEWRIGHT_JOB: job,
    JUPYTER_PATH: list(kernelSpecFolder(), before.JUPYTER_PATH),
    // The kernel runs on the Node that runs this.
    [pathName]: list(dirname(process.execPath), before[pathName]),
  };
}

function runJupyter(
  { program, args }: JupyterCommand,
  options: readonly string[],
  env: NodeJS.ProcessEnv,
): Promise<number> {
  const cwd = join(projectFolder(), "notebooks");
  const jupyter = spawn(program, [...args, ...options], { cwd, env, stdio: "inherit" });
  // Ctrl+C reaches Jupyter too, which asks whether to stop; this waits for the answer.
  process.on("SIGINT", () => {});
  process.on("SIGTERM", () => jupyter.kill());
  return new Promise((resolve, reject) => {
    jupyter.once("error", reject);
    jupyter.once("close", (code) => resolve(code ?? 1));
  });
}

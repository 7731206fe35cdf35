/** Finds the Jupyter that is installed on this machine. */
import { spawn } from "node:child_process";

/** How to start a Jupyter. */
export interface JupyterCommand {
  readonly program: string;
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
export const noJupyterAdvice: string = `No Jupyter was found on this machine. To get one:

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

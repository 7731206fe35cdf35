import { spawn } from "node:child_process";

/** The program that opens an address, with its arguments. */
interface Opener {
  /** Name of the program. */
  readonly program: string;
  /** Its arguments. */
  readonly args: readonly string[];
}

/**
 * How this system opens an address; undefined where nobody is there to look at it: on a build machine,
 * without a display, or when CASEWRIGHT_NO_BROWSER is 1.
 */
export function browserOpener(
  url: string,
  platform: NodeJS.Platform = process.platform,
  env: NodeJS.ProcessEnv = process.env,
): Opener | undefined {
  if (env.CI || env.CASEWRIGHT_NO_BROWSER === "1") return undefined;
  if (platform === "darwin") return { program: "open", args: [url] };
  if (platform === "win32") return { program: "rundll32", args: ["url.dll,FileProtocolHandler", url] };
  return env.DISPLAY || env.WAYLAND_DISPLAY ? { program: "xdg-open", args: [url] } : undefined;
}

/** Opens an address in the user's browser where that is possible; a failure is no matter. */
export function openBrowser(url: string): void {
  const opener = browserOpener(url);
  if (!opener) return;
  const started = spawn(opener.program, opener.args, { detached: true, stdio: "ignore" });
  started.on("error", () => undefined);
  started.unref();
}

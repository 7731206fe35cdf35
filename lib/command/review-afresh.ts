/** A case reviewed again from its files by a process of its own, which knows nothing of the one that wrote them. */
import { execFile } from "node:child_process";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

/** What a process of its own says of a case; nothing where nothing of safety or strength fails. */
export async function reviewedAfresh(folder: string, handling: boolean): Promise<string | undefined> {
  const main = fileURLToPath(new URL("main.js", import.meta.url));
  const args = [main, "improve", folder, "--verify", ...(handling ? ["--handling"] : [])];
  try {
    await promisify(execFile)(process.execPath, args);
    return undefined;
  } catch (error) {
    const { stdout = "", stderr = "" } = error as { readonly stdout?: string; readonly stderr?: string };
    return `${stdout}${stderr}`.trim() || String(error);
  }
}

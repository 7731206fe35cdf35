/** Small jobs unlike the demo, each a case file of `tests/jobs/` with the tables that they share. */
import { copyFile, cp, mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

const folder = join(import.meta.dirname, "jobs");

/** Writes one of them into a folder of its own, which is named after it. */
export async function otherJob(name: "bare-box" | "tower-of-six"): Promise<string> {
  const job = join(await mkdtemp(join(tmpdir(), "casewright-test-")), name);
  await cp(join(folder, "tables"), job, { recursive: true });
  await copyFile(join(folder, `${name}.yaml`), join(job, "case.yaml"));
  return job;
}

/** npm pack -w casewright: carries what stands beside lib into the package ("in"), and away again ("out"). */
import { cpSync, rmSync } from "node:fs";
import { join } from "node:path";

const lib = import.meta.dirname;
const carried = ["notebooks", "starts", "data", "tests/reference", "README.md", "LICENSE"];

for (const path of carried) {
  const here = join(lib, path);
  rmSync(join(lib, path.split("/")[0] ?? path), { recursive: true, force: true });
  if (process.argv[2] === "in") cpSync(join(lib, "..", path), here, { recursive: true });
}

/** Jupyter kernel for TypeScript: `node entry.js CONNECTION_FILE`, as the kernel spec says. */
import { fileURLToPath } from "node:url";
import { captureProcessOutput } from "./cell-output.js";
import { CellRunner } from "./cell-runner.js";
import { KernelSockets } from "./kernel-sockets.js";
import { watchLibrary } from "./library-watch.js";
import { endWithParent } from "./lifetime.js";
import { KernelServer } from "./server.js";
import { compileCellsStrictly, loadTslab } from "./tslab-internals.js";

/** @throws Error when the connection file is missing */
async function main(connectionFile: string | undefined): Promise<void> {
  if (!connectionFile) throw new Error("kernel: the connection file is missing");
  endWithParent();
  compileCellsStrictly();
  const libraryChanged = watchLibrary(fileURLToPath(new URL("../..", import.meta.url)));
  const cells = new CellRunner(loadTslab(), process.cwd(), (error) => server.reportLate(error));
  const server = new KernelServer(await KernelSockets.open(connectionFile), cells, () => {
    if (libraryChanged())
      console.warn("The library was built again: restart the kernel to run its new code.");
  });
  captureProcessOutput(() => server.output);
  process.on("SIGINT", () => cells.interrupt());
  process.on("exit", () => server.output?.flush());
  await server.serve();
}

main(process.argv[2]).catch((error: unknown) => {
  // Cells may let errors pass; the kernel itself may not.
  console.error(error);
  process.exit(1);
});

/** Jupyter kernel for TypeScript: `node entry.js CONNECTION_FILE`, as the kernel spec says. */
import { fileURLToPath } from "node:url";
import { captureProcessOutput } from "./cell-output.js";
import { CellRunner } from "./cell-runner.js";
import { compileCellsStrictly } from "./compiler-options.js";
import { KernelSockets } from "./kernel-sockets.js";
import { watchLibrary } from "./library-watch.js";
import { endWithParent } from "./lifetime.js";
import { KernelServer } from "./server.js";
import { loadTslab } from "./tslab-internals.js";

const [connectionFile] = process.argv.slice(2);
if (!connectionFile) throw new Error("kernel: the connection file is missing");

endWithParent();
compileCellsStrictly();
const library = watchLibrary(fileURLToPath(new URL("../..", import.meta.url)));
const cells = new CellRunner(loadTslab(), process.cwd(), (error) => server.reportLate(error));
const sockets = await KernelSockets.open(connectionFile);
const server = new KernelServer(sockets, cells, () => {
  if (library()) console.warn("The library was built again after this kernel started: restart the kernel.");
});
captureProcessOutput(() => server.output);
process.on("SIGINT", () => cells.interrupt());
process.on("exit", () => server.output?.flush());
await server.serve();

/** A process of its own: reads one case, solves it, prints the displacement in mm. Arguments: file, loading, mesh. */
import { readFileSync } from "node:fs";
import type { BoxCase } from "../../reference/fe/box-file.js";
import type { PanelCase } from "../../reference/fe/case-file.js";

const [file = "", loading = "", mesh = "1"] = process.argv.slice(2);
// The case was checked by the process that wrote it, so no schema is loaded here.
const found: unknown = JSON.parse(readFileSync(file, "utf8"));

/** The largest deflection of a panel; mesh multiplies the usual element target. */
async function panel(): Promise<number> {
  const [{ panelProblem }, fem] = await Promise.all([
    import("../../reference/fe/panel-outcomes.js"),
    import("../../../fem/panel/index.js"),
  ]);
  const problem = panelProblem(found as PanelCase);
  const solved = fem.bent(fem.factoredPanel(problem, Number(mesh) * fem.usualElementTarget));
  return 1e3 * fem.largestDeflection(solved).value;
}

/** How far the forces on a box move; mesh multiplies the usual size of its elements. */
async function box(): Promise<number> {
  const [{ boxProblem, cornerPatches }, loads, fem] = await Promise.all([
    import("../../reference/fe/box-outcomes.js"),
    import("../../reference/fe/box-outcomes.js"),
    import("../../../fem/box/index.js"),
  ]);
  const problem = boxProblem(found as BoxCase);
  const size = Number(mesh) * fem.usualBoxSize(problem);
  const structure = fem.boxStructure(problem, size, cornerPatches(found as BoxCase));
  const run = loading === "twist" ? loads.twisted : loads.racked;
  return loads.workWay(run(found as BoxCase, structure));
}

(loading === "panel" ? panel() : box()).then(console.log);

/** Every expected value of a panel case beside ours. */
import {
  bent,
  bucklingFactor,
  type DeflectedPanel,
  deflectionAt,
  factoredPanel,
  largestDeflection,
  largestMoment,
  momentsOf,
  naturalFrequencies,
  type Spot,
  strainsAtHeight,
  strainsNear,
} from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import type { PanelCase } from "./case-file.js";
import { compared } from "./compared.js";
import { metres, panelProblem } from "./panel-case.js";

/** Runs one panel at the usual mesh. */
export function panelOutcomes(found: PanelCase): readonly ReferenceOutcome[] {
  const panel = bent(factoredPanel(panelProblem(found)));
  const ours = valuesOf(found, panel);
  return compared(found.id, found.expected.mindlin, ours);
}

/** Ours by the names of the file, worked out only when asked for. */
function valuesOf(found: PanelCase, panel: DeflectedPanel): (name: string) => number | undefined {
  const frequencies = naturalFrequencies(panel, 2);
  const apart = leftOut(found);
  const probe = (name: string): Spot | undefined => {
    const place = found.probes[name.slice(name.indexOf("@") + 1)];
    return place && metres(place);
  };
  const at = (name: string): number | undefined => {
    const place = probe(name);
    if (!place) return undefined;
    if (name.startsWith("w@")) return 1e3 * deflectionAt(panel, place);
    const { strains, sheet } = strainsNear(panel, place);
    const [mx, my, mxy] = momentsOf(sheet, strains);
    const [ex, ey] = strainsAtHeight(strains, sheet.faces[0]);
    return { Mx: mx, My: my, Mxy: mxy, ex_top: ex, ey_top: ey }[name.slice(0, name.indexOf("@"))];
  };
  return (name) => {
    if (name === "wmax") return 1e3 * largestDeflection(panel).value;
    if (name === "max_abs_Mx") return largestMoment(panel, 0, apart).value;
    if (name === "max_abs_My") return largestMoment(panel, 1, apart).value;
    if (name === "f1_Hz") return frequencies[0];
    if (name === "f2_Hz") return frequencies[1];
    if (name === "Ncr_N_per_mm") return critical(found, panel);
    return at(name);
  };
}

/** Places too near to a corner where moments have no limit. */
function leftOut({ singular_points, r_exclude }: PanelCase): (place: Spot) => boolean {
  const points = singular_points.map(metres);
  return ([x, y]) => points.some(([px, py]) => Math.hypot(x - px, y - py) <= r_exclude * 1e-3);
}

/** N/mm */
function critical({ buckling }: PanelCase, panel: DeflectedPanel): number | undefined {
  const pushes = buckling?.edge_loads.map(([[from, to], x, y]) => ({
    from: metres(from),
    to: metres(to),
    x: x * 1e3,
    y: y * 1e3,
  }));
  return pushes && bucklingFactor(panel, pushes);
}

/** Every expected value of a panel case beside ours. */
import {
  bent,
  bucklingFactor,
  coarsePanel,
  type DeflectedPanel,
  deflectionAt,
  factoredPanel,
  largestDeflection,
  largestMoment,
  momentsOf,
  naturalFrequencies,
  type PanelProblem,
  type Spot,
  sharpCorners,
  strainsAtHeight,
  strainsNear,
  swayFrequencies,
  usualElementTarget,
} from "../../../fem/index.js";
import type { ReferenceOutcome } from "../outcome.js";
import type { PanelCase } from "./case-file.js";
import { compared, type ValueNamed } from "./compared.js";
import { metres, panelProblem } from "./panel-case.js";

/** Runs one panel at the usual mesh, and at a coarser one for the mesh error. */
export function panelOutcomes(found: PanelCase): readonly ReferenceOutcome[] {
  const problem = panelProblem(found);
  const ours = valuesOf(found, bent(factoredPanel(problem)));
  const coarse = valuesOf(found, bent(coarsePanel(problem, usualElementTarget)));
  return compared(found.id, found.expected.mindlin, ours, coarse);
}

/** Ours by the names of the file, worked out only when asked for. */
function valuesOf(found: PanelCase, panel: DeflectedPanel): ValueNamed {
  const frequencies = [...naturalFrequencies(panel, 2), ...swayFrequencies(panel, 2)].sort((a, b) => a - b);
  const apart = leftOut(found, panel.structure.problem);
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

/** Places too near to a corner where moments have no limit, and those of strips and battens with their borders. */
function leftOut({ singular_points, r_exclude }: PanelCase, { outline, regions }: PanelProblem): LeaveOut {
  const points = [...singular_points.map(metres), ...sharpCorners({ ...outline, cutouts: [] }, regions)];
  const near = 1e-6 * (outline.length + outline.width);
  return ([x, y]) =>
    points.some(([px, py]) => Math.hypot(x - px, y - py) <= r_exclude * 1e-3) ||
    regions.some(
      ({ left, bottom, width, height }) =>
        Math.min(x - left, left + width - x, y - bottom, bottom + height - y) > -near,
    );
}

type LeaveOut = (place: Spot) => boolean;

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

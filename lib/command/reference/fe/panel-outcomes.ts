/** Every expected value of a panel case beside ours, and the panel it describes. */

import { type Sheet, type SheetLayer, sheetOfLayers } from "../../../fem/element/index.js";
import {
  bent,
  bucklingFactor,
  type Cutout,
  coarsePanel,
  cutCircle,
  cutRectangle,
  type DeflectedPanel,
  deflectionAt,
  factoredPanel,
  type HeldLine,
  largestDeflection,
  largestMoment,
  type MeshBox,
  momentsOf,
  naturalFrequencies,
  type PanelLoad,
  type PanelProblem,
  type SheetRegion,
  sharpCorners,
  strainsAtHeight,
  strainsNear,
  swayFrequencies,
  usualElementTarget,
} from "../../../fem/index.js";
import { Angle, Density, Length, Pressure, Ratio } from "../../../quantity/index.js";
import type { Point2 } from "../../../shape/index.js";
import { compared, type ReferenceOutcome, type ValueNamed } from "../outcome.js";
import type { CaseBox, CaseCutout, CaseMaterial, CasePlace, CaseRegion, PanelCase } from "./case-file.js";

const mm = 1e-3;
const mega = 1e6;
/** t/mm3 in kg/m3. */
const densityUnit = 1e12;

/** The problem that a case describes. */
export function panelProblem(found: PanelCase): PanelProblem {
  const { geometry, regions, edges, probes, id } = found;
  return {
    name: `panel ${id}`,
    outline: {
      length: geometry.length * mm,
      width: geometry.width * mm,
      cutouts: geometry.cutouts.map(cutoutOf),
    },
    sheet: sheetOfLayers([layerOf(found.material, found.thickness, found.grain_deg)]),
    regions: regions.flatMap((region) => regionOf(region, found)),
    heldLines: edges.map(
      ({ segment: [from, to], type }): HeldLine => ({
        from: metres(from),
        to: metres(to),
        hold: { kind: type === "ss" ? "hinged" : "clamped" },
      }),
    ),
    heldPoints: [],
    loads: [loadOf(found)],
    masses: [],
    places: Object.values(probes).map(metres),
  };
}

/** A place in m. */
export function metres([x, y]: CasePlace): Point2 {
  return { x: x * mm, y: y * mm };
}

/** A layer of a case's material. */
export function layerOf(material: CaseMaterial, thickness: number, grainDegrees: number): SheetLayer {
  const { E1, E2, nu12, G12, kG, rho } = material;
  return {
    thickness: Length.si(thickness * mm),
    grain: Angle.of(grainDegrees, "deg"),
    modulusAlong: Pressure.si(E1 * mega),
    modulusAcross: Pressure.si(E2 * mega),
    shearModulus: Pressure.si(G12 * mega),
    poissonRatio: Ratio.si(nu12),
    throughAlong: Pressure.si(kG * mega),
    throughAcross: Pressure.si(kG * mega),
    density: Density.si(rho * densityUnit),
  };
}

/** A cutout in m. */
export function cutoutOf(cutout: CaseCutout, index: number): Cutout {
  if (cutout.type === "circle")
    return cutCircle(`circle ${index + 1}`, { x: cutout.cx * mm, y: cutout.cy * mm }, cutout.r * mm);
  const radius = Math.min(cutout.r ?? 0, cutout.w / 2, cutout.h / 2) * mm;
  return cutRectangle(`rectangle ${index + 1}`, { ...boxOf(cutout), radius });
}

function boxOf({ x, y, w, h }: CaseBox): MeshBox {
  return { left: x * mm, bottom: y * mm, width: w * mm, height: h * mm };
}

/** @throws RangeError when a patch load has no region */
function loadOf({ load, regions, id }: PanelCase): PanelLoad {
  if (load.type === "pressure") return { kind: "pressure", pressure: load.q * mega };
  const patch = regions.find((region) => kindOf(region) === "patch");
  if (!patch) throw new RangeError(`${id}: a patch load needs a region of that kind`);
  return { kind: "patch", over: boxOf(patch.region), force: load.F };
}

function kindOf({ kind, name }: CaseRegion): string {
  return kind ?? name;
}

/** A strip of another thickness about the same middle, or a batten on the +z side; a patch is neither. */
function regionOf(region: CaseRegion, found: PanelCase): SheetRegion[] {
  const kind = kindOf(region);
  if (kind === "patch") return [];
  return [{ ...boxOf(region.region), sheet: regionSheet(region, kind, found) }];
}

/** @throws RangeError when the region has no thickness */
function regionSheet(
  region: CaseRegion,
  kind: string,
  { thickness, material, grain_deg, id }: PanelCase,
): Sheet {
  const own = region.thickness ?? region.t ?? region.height ?? region.t_extra;
  if (own === undefined) throw new RangeError(`${id}: region ${region.name} has no thickness`);
  const grain = region.grain_deg ?? grain_deg;
  const layer = layerOf(withOwn(material, region.material ?? {}), own, grain);
  if (kind === "thickness") return sheetOfLayers([layer]);
  return sheetOfLayers([layerOf(material, thickness, grain_deg), layer], (thickness / 2) * mm);
}

/** The panel's material but for what a region says of its own. */
function withOwn(material: CaseMaterial, own: NonNullable<CaseRegion["material"]>): CaseMaterial {
  const { E1, E2, nu12, G12, kG, rho } = own;
  return {
    E1: E1 ?? material.E1,
    E2: E2 ?? material.E2,
    nu12: nu12 ?? material.nu12,
    G12: G12 ?? material.G12,
    kG: kG ?? material.kG,
    rho: rho ?? material.rho,
  };
}

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
  const probe = (name: string): Point2 | undefined => {
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
  return ({ x, y }) =>
    points.some(({ x: px, y: py }) => Math.hypot(x - px, y - py) <= r_exclude * 1e-3) ||
    regions.some(
      ({ left, bottom, width, height }) =>
        Math.min(x - left, left + width - x, y - bottom, bottom + height - y) > -near,
    );
}

type LeaveOut = (place: Point2) => boolean;

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

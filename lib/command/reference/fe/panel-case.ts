/** A panel case as a problem for our solver, in SI. */
import { type Sheet, type SheetLayer, sheetOfLayers } from "../../../fem/element/index.js";
import type {
  Cutout,
  HeldLine,
  MeshBox,
  PanelLoad,
  PanelProblem,
  SheetRegion,
  Spot,
} from "../../../fem/index.js";
import { Angle, Density, Length, Pressure, Ratio } from "../../../quantity/index.js";
import type { CaseBox, CaseCutout, CaseMaterial, CaseRegion, PanelCase } from "./case-file.js";

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
export function metres([x, y]: Spot): Spot {
  return [x * mm, y * mm];
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
    return {
      kind: "circle",
      name: `circle ${index + 1}`,
      x: cutout.cx * mm,
      y: cutout.cy * mm,
      radius: cutout.r * mm,
    };
  const radius = Math.min(cutout.r ?? 0, cutout.w / 2, cutout.h / 2) * mm;
  return { kind: "rectangle", name: `rectangle ${index + 1}`, ...boxOf(cutout), radius };
}

function boxOf({ x, y, w, h }: CaseBox): MeshBox {
  return { left: x * mm, bottom: y * mm, width: w * mm, height: h * mm };
}

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

/** What could make a panel stiffer, and what each thing buys: thicker sheet, a batten, an opening left out. */
import type { PanelPart, PlacedOpening } from "../../design/index.js";
import {
  type PanelProblem,
  type SheetRegion,
  type TrustedDeflection,
  trustedDeflection,
  withBatten,
} from "../../fem/index.js";
import { Area, Length, Mass, Ratio } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import type { ReviewInput } from "../review-input.js";
import { hingedProblem, panelNamed } from "./bent-panel.js";
import { sheetModuli } from "./sheet-moduli.js";

/** One thing that could be done. */
export interface Remedy {
  readonly what: string;
  /** Sag alone on the bench. */
  readonly sag: Length;
  /** How far the mesh may have the sag wrong, as a share. */
  readonly meshError: Ratio;
  /** Sag over the sag as drawn. */
  readonly share: Ratio;
  /** Mass it adds; negative when it takes away. */
  readonly mass: Mass;
  /** Price of the sheet it takes, in the sheet's currency; undefined when it takes none. */
  readonly cost?: number;
}

/** A batten cut from the panel's own sheet, laid flat in two layers: 40 mm wide, 20 mm high. */
const battenSize = { width: 0.04, height: 0.02 };
/** How much thicker a sheet is tried. */
const thicker = 0.003;
/** Elements for each try: within 1 or 2 %. */
const remedyFineness = 30;

/**
 * Everything that could be done for a panel, the stiffest first.
 *
 * @param input the case with its measurements
 * @param id of the panel, such as "upper.front"
 * @throws RangeError when there is no such panel
 */
export function panelRemedies(input: ReviewInput, id: string): readonly Remedy[] {
  const panel = panelNamed(input, id);
  const drawn = hingedProblem(panel, input);
  const before = bentAt(drawn);
  const remedy = (what: string, problem: PanelProblem, mass: number, sheetArea: number): Remedy => {
    const { value: sag, meshError } = problem === drawn ? before : bentAt(problem);
    return {
      what,
      sag: Length.si(sag),
      meshError: Ratio.si(meshError),
      share: Ratio.si(sag / before.value),
      mass: Mass.si(mass),
      ...(sheetArea > 0 ? { cost: sheetArea * pricePerArea(panel) } : {}),
    };
  };
  const list = [
    remedy("as drawn", drawn, 0, 0),
    thickerSheet(panel, input, remedy),
    ...panel.openings.map((opening) => {
      const closed = hingedProblem(withoutOpening(panel, opening), input);
      return remedy(`without ${opening.name}`, closed, opening.area * massPerArea(panel), 0);
    }),
    ...(["x", "y"] as const).flatMap((along) =>
      battenNearWorst(panel, drawn, before.at, along, input, remedy),
    ),
  ];
  return list.sort((a, b) => a.sag - b.sag);
}

type MakeRemedy = (what: string, problem: PanelProblem, mass: number, sheetArea: number) => Remedy;

function bentAt(problem: PanelProblem): TrustedDeflection {
  const found = trustedDeflection(problem, remedyFineness);
  return { ...found, value: Math.abs(found.value) };
}

function thickerSheet(panel: PanelPart, input: ReviewInput, remedy: MakeRemedy): Remedy {
  const { sheet } = panel;
  const thick = { ...panel, sheet: { ...sheet, thickness: Length.si(sheet.thickness + thicker) } };
  const mass = panel.netArea * thicker * sheet.density;
  const more = Area.si((panel.grossArea * thicker) / sheet.thickness);
  return remedy(`sheet ${Math.round(thicker * 1000)} mm thicker`, hingedProblem(thick, input), mass, more);
}

/** Closed, the opening bears its own share of the pressure. */
function withoutOpening(panel: PanelPart, { name, area }: PlacedOpening): PanelPart {
  const openings = panel.openings.filter((opening) => opening.name !== name);
  return { ...panel, openings, netArea: Area.si(panel.netArea + area) };
}

/** A batten from edge to edge, clear of openings, in the strip nearest to where the panel sags most. */
function battenNearWorst(
  panel: PanelPart,
  drawn: PanelProblem,
  sagsMostAt: readonly [x: number, y: number],
  along: "x" | "y",
  input: ReviewInput,
  remedy: MakeRemedy,
): readonly Remedy[] {
  const { length, width } = drawn.outline;
  const [run, across] = along === "x" ? [length, width] : [width, length];
  const worst = sagsMostAt[along === "x" ? 1 : 0];
  const [nearest] = stripMiddles(drawn, along, across)
    .map((middle) => ({ middle, strip: battenStrip(panel, drawn, along, middle, input) }))
    .filter(({ strip }) => isClear(strip, drawn))
    .sort((a, b) => Math.abs(a.middle - worst) - Math.abs(b.middle - worst));
  if (!nearest) return [];
  const from = Length.show(Length.si(nearest.middle), styleOf(input.case));
  const where = `${from} from the ${along === "x" ? "lower" : "left"} end of its clear span`;
  const what = `batten ${along === "x" ? "across" : "upright"}, ${where}`;
  const area = battenSize.width * run;
  const layers = battenSize.height / panel.sheet.thickness;
  const problem = { ...drawn, regions: [nearest.strip] };
  return [remedy(what, problem, area * battenSize.height * panel.sheet.density, area * layers)];
}

/** Middles of the strips between the sides of openings, where a batten may have room. */
function stripMiddles({ outline }: PanelProblem, along: "x" | "y", across: number): readonly number[] {
  const sides = outline.cutouts.flatMap((cutout) => {
    if (cutout.kind !== "rectangle") return [];
    const { left, bottom, width, height } = cutout;
    return along === "x" ? [bottom, bottom + height] : [left, left + width];
  });
  const lines = [0, ...sides, across].sort((a, b) => a - b);
  return lines.slice(1).map((line, i) => (line + lines[i]!) / 2);
}

function battenStrip(
  panel: PanelPart,
  drawn: PanelProblem,
  along: "x" | "y",
  middle: number,
  input: ReviewInput,
): SheetRegion {
  const { length, width } = drawn.outline;
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const from = middle - battenSize.width / 2;
  const place =
    along === "x"
      ? { left: 0, bottom: from, width: length, height: battenSize.width }
      : { left: from, bottom: 0, width: battenSize.width, height: width };
  const sheet = withBatten(drawn.sheet, {
    along,
    height: battenSize.height,
    modulus: moduli.along.modulus,
    shearModulus: moduli.shear.modulus,
    density: panel.sheet.density,
  });
  return { ...place, sheet };
}

/** Room between a batten and an opening, m. */
const clearance = 0.003;

function isClear({ left, bottom, width, height }: SheetRegion, { outline }: PanelProblem): boolean {
  return outline.cutouts.every((cutout) => {
    if (cutout.kind !== "rectangle") return false;
    const beside = cutout.left > left + width + clearance || cutout.left + cutout.width < left - clearance;
    const above =
      cutout.bottom > bottom + height + clearance || cutout.bottom + cutout.height < bottom - clearance;
    return beside || above;
  });
}

function pricePerArea({ sheet }: PanelPart): number {
  return sheet.price.amount / (sheet.length * sheet.width);
}

function massPerArea({ sheet }: PanelPart): number {
  return sheet.thickness * sheet.density;
}

/** What could make a panel stiffer, and what each thing buys: thicker sheet, a batten, an opening left out. */

import type { PanelPart, PlacedOpening } from "../../design/index.js";
import { type PanelProblem, type TrustedDeflection, trustedDeflection } from "../../fem/index.js";
import {
  battenSize,
  clearBattens,
  hingedProblem,
  panelNamed,
  type ReviewInput,
  stripMiddles,
} from "../../model/index.js";
import { Area, Length, Mass, Ratio } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import { amount, fineAmount, styleOf } from "../amount.js";
import type { Remedy } from "../finding.js";

/** One thing that was tried on a panel. */
export interface PanelRemedy extends Remedy {
  /** Sag alone on the bench. */
  readonly sag: Length;
  /** The estimated mesh error, as a share. */
  readonly meshError: Ratio;
  /** Sag over the sag as drawn. */
  readonly share: Ratio;
  /** Mass it adds; negative when it takes away. */
  readonly mass: Mass;
  /** Price of the sheet it takes, in the sheet's currency; undefined when it takes none. */
  readonly cost?: number;
}

/** How much thicker a sheet is tried. */
const thicker = 0.003;
/** Elements for each try: within 1 or 2 %. */
const remedyElementTarget = 30;

/**
 * Everything that could be done for a panel, the stiffest first.
 *
 * @param input the case with its measurements
 * @param id of the panel, such as "upper.front"
 * @throws RangeError when there is no such panel
 */
export function panelRemedies(input: ReviewInput, id: string): readonly PanelRemedy[] {
  const panel = panelNamed(input, id);
  const drawn = hingedProblem(panel, input);
  const before = bentAt(drawn);
  const remedy = (what: string, problem: PanelProblem, mass: number, sheetArea: number): PanelRemedy => {
    const { value: sag, meshError } = problem === drawn ? before : bentAt(problem);
    return {
      words: what,
      gives: [
        fineAmount("sag, edges free to turn", Length.si(sag)),
        amount(Mass, "mass it adds", Mass.si(mass)),
      ],
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

type MakeRemedy = (what: string, problem: PanelProblem, mass: number, sheetArea: number) => PanelRemedy;

function bentAt(problem: PanelProblem): TrustedDeflection {
  const found = trustedDeflection(problem, remedyElementTarget);
  return { ...found, value: Math.abs(found.value) };
}

function thickerSheet(panel: PanelPart, input: ReviewInput, remedy: MakeRemedy): PanelRemedy {
  const { sheet } = panel;
  const thick = { ...panel, sheet: { ...sheet, thickness: Length.si(sheet.thickness + thicker) } };
  const mass = panel.netArea * thicker * sheet.density;
  const more = Area.si((panel.grossArea * thicker) / sheet.thickness);
  return remedy(
    `sheet ${Length.show(Length.si(thicker), styleOf(input.case))} thicker`,
    hingedProblem(thick, input),
    mass,
    more,
  );
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
  sagsMostAt: Point2,
  along: "x" | "y",
  input: ReviewInput,
  remedy: MakeRemedy,
): readonly PanelRemedy[] {
  const run = along === "x" ? drawn.outline.length : drawn.outline.width;
  const worst = sagsMostAt[along === "x" ? "y" : "x"];
  const [nearest] = clearBattens(panel, drawn, along, stripMiddles(drawn, along), input).sort(
    (a, b) => Math.abs(a.middle - worst) - Math.abs(b.middle - worst),
  );
  if (!nearest) return [];
  const from = Length.show(Length.si(nearest.middle), styleOf(input.case));
  const where = `${from} from the ${along === "x" ? "lower" : "left"} end of its clear span`;
  const what = `batten ${along === "x" ? "across" : "upright"}, ${where}`;
  const area = battenSize.width * run;
  const layers = battenSize.height / panel.sheet.thickness;
  const problem = { ...drawn, regions: [...drawn.regions, nearest.strip] };
  return [remedy(what, problem, area * battenSize.height * panel.sheet.density, area * layers)];
}

function pricePerArea({ sheet }: PanelPart): number {
  return sheet.price.amount / (sheet.length * sheet.width);
}

function massPerArea({ sheet }: PanelPart): number {
  return sheet.thickness * sheet.density;
}

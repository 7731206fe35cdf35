import type { Shelf, ShelfPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type CreepCase, creepFactor } from "../../material/index.js";
import { edgePlateUniform, longTermSag, type PlateEdges } from "../../mechanics/index.js";
import { Length, Pressure, ratio, standardGravity } from "../../quantity/index.js";
import { shelfMass } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { allowedSag } from "./allowed-sag.js";
import { panelStiffness } from "./panel-stiffness.js";
import { sheetModuli } from "./sheet-moduli.js";

/** Sag of a shelf when what it carries is put on it, with the worked lines. */
export function firstSag(
  part: ShelfPart,
  input: ReviewInput,
): { readonly sag: Length; readonly because: readonly WorkedLine[] } {
  const { panel, shelf } = part;
  const { stiffness, because } = panelStiffness(panel, sheetModuli(panel.sheet, input.measurements));
  const plate = edgePlateUniform.worked({
    length: panel.width,
    width: panel.height,
    stiffness,
    ...shelfEdges(shelf.support),
    pressure: shelfPressure(part),
  });
  return { sag: plate.value.largestDeflection, because: [because, plate] };
}

/** How far a shelf sags, new and in the end, and what is allowed. */
export interface ShelfSag {
  /** When what it carries is put on it. */
  readonly first: Length;
  /** After years under it. */
  readonly later: Length;
  /** The allowed share of its span. */
  readonly allowed: Length;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/**
 * Sag of a shelf under what it carries, after years.
 *
 * @throws Refusal where a formula refuses its inputs
 */
export function shelfSag(part: ShelfPart, input: ReviewInput): ShelfSag {
  const { panel, shelf } = part;
  const { demands } = input.case;
  const { sag: first, because } = firstSag(part, input);
  const creep = creepCases[demands.climate].map((material) => creepFactor.worked({ material }));
  const most = ratio(Math.max(...creep.map(({ value }) => value)));
  const later = longTermSag.worked({ lasting: first, passing: Length.si(0), creepFactor: most });
  const span = shelf.support === "back only" ? panel.height : panel.width;
  const allowed = allowedSag(input, span);
  return { first, later: later.value, allowed, because: [...because, ...creep, later] };
}

/** Everything on the shelf spread over it, and its own weight. */
export function shelfPressure(part: ShelfPart): Pressure {
  return Pressure.si((shelfMass(part) * standardGravity) / part.panel.grossArea);
}

/** Rails and cleats let an edge turn; the back of a bracket shelf is held stiffly. The front is free. */
export function shelfEdges(support: Shelf["support"]): PlateEdges {
  if (support === "back only") return { left: "free", right: "free", bottom: "free", top: "clamped" };
  return { left: "hinged", right: "hinged", bottom: "free", top: support === "two ends" ? "free" : "hinged" };
}

/** The cases of both codes; the larger factor counts. */
const creepCases: Readonly<Record<"dry" | "damp", readonly CreepCase[]>> = {
  dry: ["plywood, dry", "plywood, class 1"],
  damp: ["plywood, class 2"],
};

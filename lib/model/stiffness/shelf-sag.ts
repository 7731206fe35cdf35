import type { Shelf, ShelfPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type CreepCase, creepFactor } from "../../material/index.js";
import { edgePlateUniform, longTermSag, type PlateEdges } from "../../mechanics/index.js";
import { Length, Pressure, type Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { shelfMass } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { allowedSag } from "./allowed-sag.js";
import { stiffenedSag } from "./panel-sag.js";
import { panelStiffness } from "./panel-stiffness.js";
import { sheetModuli } from "./sheet-moduli.js";

/** How far a shelf sags when what it carries is put on it. */
export interface FirstSag {
  /** At its lowest place. */
  readonly sag: Length;
  /** The estimated mesh error, as a share, where it has stiffeners; by itself a formula answers. */
  readonly meshError?: Ratio;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Sag of a shelf when what it carries is put on it, with the worked lines. */
export function firstSag(part: ShelfPart, input: ReviewInput): FirstSag {
  const { panel, shelf } = part;
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const { stiffness, because } = panelStiffness(panel, moduli);
  const edges = shelfEdges(shelf.support);
  const pressure = shelfPressure(part);
  const plate = edgePlateUniform.worked({
    length: panel.width,
    width: panel.height,
    stiffness,
    ...edges,
    pressure,
  });
  const stiffer = stiffenedSag({ panel, moduli, pressure, edges: "hinged" }, edges, input);
  return {
    sag: stiffer?.largestDeflection ?? plate.value.largestDeflection,
    ...(stiffer ? { meshError: stiffer.meshError } : {}),
    because: [because, plate],
  };
}

/** How far a shelf sags, new and in the end, and what is allowed. */
export interface ShelfSag {
  /** When what it carries is put on it. */
  readonly first: Length;
  /** The estimated mesh error, as a share, where it has stiffeners. */
  readonly meshError?: Ratio;
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
  const { sag: first, because, meshError } = firstSag(part, input);
  const creep = creepOf(input);
  const later = longTermSag.worked({ lasting: first, passing: Length.si(0), creepFactor: creep.factor });
  const span = shelf.support === "back only" ? panel.height : panel.width;
  const allowed = allowedSag(input, span);
  return {
    ...{ first, later: later.value, allowed, because: [...because, ...creep.because, later] },
    ...(meshError === undefined ? {} : { meshError }),
  };
}

/** How much sag grows under a load that stays. */
export interface Creep {
  /** The larger factor of both codes. */
  readonly factor: Ratio;
  /** The worked lines of both. */
  readonly because: readonly WorkedLine[];
}

/** How much plywood creeps in the case's climate. */
export function creepOf({ case: { demands } }: ReviewInput): Creep {
  const because = creepCases[demands.climate].map((material) => creepFactor.worked({ material }));
  return { factor: ratio(Math.max(...because.map(({ value }) => value))), because };
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

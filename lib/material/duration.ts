/** How long a load stays: wood carries less for long than for a moment, and goes on sagging. */
import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** How long a load lasts, as NDS table 2.3.2 has it. */
export type LoadDuration = "permanent" | "ten years" | "two months" | "seven days" | "ten minutes" | "impact";

/** Recalled from NDS 2018 table 2.3.2. */
const durationFactors: Readonly<Record<LoadDuration, number>> = {
  permanent: 0.9,
  "ten years": 1,
  "two months": 1.15,
  "seven days": 1.25,
  "ten minutes": 1.6,
  impact: 2,
};

const LoadDuration: Kind<LoadDuration> = choice("load duration", [
  "permanent",
  "ten years",
  "two months",
  "seven days",
  "ten minutes",
  "impact",
]);

/** A load by how long it stays. */
export interface LastingLoad {
  readonly duration: LoadDuration;
}

/**
 * How much more a brief load may be than one of ten years.
 *
 * @example durationFactor(durationFactor.read({ duration: "impact" })) // 2
 */
export const durationFactor: Formula<LastingLoad, Ratio> = formula<LastingLoad, Ratio>({
  id: "wood.duration.factor",
  title: "Load duration factor of wood",
  equation: String.raw`F' = C_D\,F`,
  inputs: { duration: { symbol: "d", kind: LoadDuration, meaning: "how long the load stays in all" } },
  result: { symbol: "C_D", kind: Ratio, meaning: "factor on an allowable stress" },
  source: [cite("nds", "table 2.3.2")],
  validity:
    "On allowable stresses of wood and its fasteners, never on stiffness. Recalled, not read; check the standard where someone could be hurt.",
  compute: ({ duration }) => durationFactors[duration],
});

/** Material and climate: the rule of NDS 3.5.2, or a service class of EN 1995-1-1 table 3.2. */
export type CreepCase =
  | "solid wood, dry"
  | "solid wood, wet"
  | "plywood, dry"
  | "plywood, class 1"
  | "plywood, class 2"
  | "plywood, class 3";

/** Recalled; the first three are K_cr of NDS 3.5.2, the others 1 + k_def of EN 1995-1-1 table 3.2. */
const creepFactors: Readonly<Record<CreepCase, number>> = {
  "solid wood, dry": 1.5,
  "solid wood, wet": 2,
  "plywood, dry": 2,
  "plywood, class 1": 1.8,
  "plywood, class 2": 2,
  "plywood, class 3": 3.5,
};

const CreepCase: Kind<CreepCase> = choice("creep case", [
  "solid wood, dry",
  "solid wood, wet",
  "plywood, dry",
  "plywood, class 1",
  "plywood, class 2",
  "plywood, class 3",
]);

/** A part that stays loaded. */
export interface CreepingPart {
  /** Class 1 is a heated room, class 2 under a roof, class 3 in the weather. */
  readonly material: CreepCase;
}

/**
 * How much the sag from a lasting load grows.
 *
 * @example creepFactor(creepFactor.read({ material: "plywood, dry" })) // 2
 */
export const creepFactor: Formula<CreepingPart, Ratio> = formula<CreepingPart, Ratio>({
  id: "wood.creep.factor",
  title: "Creep factor of wood and plywood",
  equation: String.raw`K_{cr}\ \text{or}\ 1+k_{def}`,
  inputs: { material: { symbol: "c", kind: CreepCase, meaning: "material and climate" } },
  result: { symbol: "K_{cr}", kind: Ratio, meaning: "long-term over first sag" },
  source: [cite("nds", "3.5.2"), cite("en-1995", "table 3.2")],
  validity: "For loads that stay for years at no more than the allowable stress. Recalled, not read.",
  compute: ({ material }) => creepFactors[material],
});

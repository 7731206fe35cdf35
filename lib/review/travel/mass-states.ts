/** Mass, balance and inertia of each section as it is lifted, carried and stacked, with what the weighings leave open. */
import type { WorkedLine } from "../../formula.js";
import { measuredMean, sheetDensity, studentFactor } from "../../measure/index.js";
import { bodyInertia, centreOfMass, type Inertias } from "../../moving/index.js";
import { Length, Mass, ratio } from "../../quantity/index.js";
import { type MassItem, massItems } from "../masses.js";
import type { ReviewInput } from "../review-input.js";
import type { BalanceLine } from "./balance.js";

/** How a section or the stack is met. */
export type MassState = "loaded" | "empty" | "loaded, doors off";
/** All of them. */
export const massStates: readonly MassState[] = ["loaded", "empty", "loaded, doors off"];

/** One section, or the stack, in one state. */
export interface StateOfMass {
  /** Section, or "stacked". */
  readonly what: string;
  readonly state: MassState;
  readonly balance: BalanceLine;
  readonly inertia: WorkedLine & { readonly value: Inertias };
  /** Half of the 95 % interval that the weighings leave; absent where nothing was weighed twice. */
  readonly halfWidth?: Mass;
}

/** Every section and the stack in every state. */
export function statesOfMass(input: ReviewInput): readonly StateOfMass[] {
  const items = massItems(input);
  const leaves = new Set(input.parts.panels.filter(({ role }) => role === "leaf").map(({ id }) => id));
  const bodies = [...input.parts.sections.map(({ name }) => name), "stacked"];
  return bodies.flatMap((what) =>
    massStates.map((state) => {
      const mine = items.filter(
        (item) => (what === "stacked" || item.section === what) && counts(item, state, leaves),
      );
      return { what, state, ...bodyOf(mine), ...intervalOf(input, mine) };
    }),
  );
}

function counts({ group, name }: MassItem, state: MassState, leaves: ReadonlySet<string>): boolean {
  if (state === "empty") return group !== "contents";
  return state === "loaded" || ![...leaves].some((leaf) => name === leaf || name.endsWith(` of ${leaf}`));
}

function bodyOf(items: readonly MassItem[]): Pick<StateOfMass, "balance" | "inertia"> {
  const none = Length.si(0);
  const masses = items.map(({ name, mass, centre }) => ({ name, mass, ...centre }));
  const boxes = items.map(({ name, mass, centre, size }) => ({
    name,
    mass,
    ...centre,
    width: size?.x ?? none,
    depth: size?.y ?? none,
    height: size?.z ?? none,
  }));
  return {
    balance: centreOfMass.worked({ masses, origin: { x: none, y: none, z: none } }),
    inertia: bodyInertia.worked({ boxes }),
  };
}

/** The density of each weighed material is a mean with a standard error; materials err independently. */
function intervalOf(input: ReviewInput, items: readonly MassItem[]): Pick<StateOfMass, "halfWidth"> {
  const spreads = [...new Set(items.flatMap(({ material }) => material ?? []))].flatMap((material) => {
    const relative = relativeHalfWidth(input, material);
    if (relative === undefined) return [];
    const mass = items.reduce((sum, item) => sum + (item.material === material ? item.mass : 0), 0);
    return [mass * relative];
  });
  return spreads.length === 0 ? {} : { halfWidth: Mass.si(Math.hypot(...spreads)) };
}

function relativeHalfWidth({ measurements }: ReviewInput, material: string): number | undefined {
  const densities = measurements.weights
    .filter((row) => row.material === material)
    .map((row) => sheetDensity(row).density);
  if (densities.length < 2) return undefined;
  const { mean, standardUncertainty, degreesOfFreedom } = measuredMean(densities);
  return (studentFactor({ confidence: ratio(0.95), degreesOfFreedom }) * standardUncertainty) / mean;
}

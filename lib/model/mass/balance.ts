/** Mass, balance and inertia of each section as it is lifted, carried and stacked, with what the weighings leave open. */
import type { Point, SectionPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type Balance, bodyInertia, centreOfMass, type Inertias, type Place } from "../../moving/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { type MassItem, massItems } from "./masses.js";
import { weighedSpreads } from "./weighings.js";

/** A mass with its centre, and the worked line. */
export type BalanceLine = WorkedLine & { readonly value: Balance };

const caseOrigin = { x: Length.si(0), y: Length.si(0), z: Length.si(0) };

/** Where the centre of a thing is, its drawer pulled out or its door open. */
export type PlacedAt = (item: MassItem) => Point;

/**
 * The whole stacked case, loaded, from the outside lower left front corner of its lowest section.
 *
 * @param placed where each thing is; in its place unless said
 */
export function stackedBalance(input: ReviewInput, placed?: PlacedAt): BalanceLine {
  return balanceOf(input, () => true, placed);
}

/** One section with what is in it. */
export function sectionBalance(input: ReviewInput, section: string): BalanceLine {
  return balanceOf(input, (name) => name === section);
}

/** How high the casters hold the case above the floor. */
export function standingHeight({ parts }: ReviewInput): Length {
  return Length.si(Math.max(0, ...parts.hardware.map(({ stock }) => stock.standing)));
}

/**
 * The section that stands on the floor.
 *
 * @throws Refusal for a case without sections
 */
export function lowestSection({ parts }: ReviewInput): SectionPart {
  const [lowest] = [...parts.sections].sort((a, b) => a.outside.low.z - b.outside.low.z);
  if (!lowest) throw new Refusal("balance: a case needs at least one section");
  return lowest;
}

function balanceOf(
  input: ReviewInput,
  belongs: (section: string) => boolean,
  placed: PlacedAt = ({ centre }) => centre,
): BalanceLine {
  const masses = massItems(input)
    .filter(({ section }) => belongs(section))
    .map((item) => ({ name: item.name, mass: item.mass, ...placed(item) }));
  return centreOfMass.worked({ masses, origin: caseOrigin });
}

/** How a section or the stack is met. */
export type MassState = "loaded" | "empty" | "loaded, lids and doors off";
/** All of them. */
const massStates: readonly MassState[] = ["loaded", "empty", "loaded, lids and doors off"];

/** One section, or the stack, in one state. */
export interface StateOfMass {
  /** Section, or "stacked". */
  readonly what: string;
  /** How it is met. */
  readonly state: MassState;
  /** Mass and centre of gravity, worked out. */
  readonly balance: BalanceLine;
  /** Moments of inertia about its centre of gravity, worked out. */
  readonly inertia: WorkedLine & { readonly value: Inertias };
  /** Half of the 95 % interval that the weighings leave; absent where nothing was weighed twice. */
  readonly halfWidth?: Mass;
  /** The same of the place of its centre of gravity. */
  readonly centreHalf?: Place;
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
      const body = bodyOf(mine);
      return { what, state, ...body, ...intervalOf(input, mine, body.balance.value) };
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
function intervalOf(
  input: ReviewInput,
  items: readonly MassItem[],
  { mass, ...centre }: Balance,
): Pick<StateOfMass, "halfWidth" | "centreHalf"> {
  const errors = weighedSpreads(input).flatMap(({ material, relative }) => {
    const mine = items.filter((item) => item.material === material);
    const own = relative * mine.reduce((sum, item) => sum + item.mass, 0);
    if (own === 0) return [];
    const off = (axis: "x" | "y" | "z"): number =>
      mine.reduce((sum, item) => sum + relative * item.mass * (item.centre[axis] - centre[axis]), 0) / mass;
    return [{ mass: own, x: off("x"), y: off("y"), z: off("z") }];
  });
  if (errors.length === 0) return {};
  const half = (of: "mass" | "x" | "y" | "z"): number => Math.hypot(...errors.map((error) => error[of]));
  return {
    halfWidth: Mass.si(half("mass")),
    centreHalf: { x: Length.si(half("x")), y: Length.si(half("y")), z: Length.si(half("z")) },
  };
}

/** How a factored box moved under the loads that were asked for last: an edit leaves most of them as they were. */
import { at } from "../../algebra/lists.js";
import { displacementsUnder, displacementsUnderMany, type Factors } from "../solve/index.js";

/** What was asked for last of one box. */
interface KeptMovements {
  /** Of single loads, the last asked for first. */
  readonly single: KeptMovement[];
  /** Of the pulls of all springs at it. */
  pulls?: {
    /** The pulls, in the order of the springs. */
    readonly loads: readonly Float64Array[];
    /** How the box moves under each. */
    readonly moved: readonly Float64Array[];
  };
}

/** A load and what it does. */
interface KeptMovement {
  /** Forces on the degrees of freedom of the box. */
  readonly load: Float64Array;
  /** Its degrees of freedom under them. */
  readonly moved: Float64Array;
}

const keptMovements = new WeakMap<Factors, KeptMovements>();

/** Loads kept for a box: those of all load cases, and a pressure on each of its faces. */
const mostLoads = 24;

function keptOf(factors: Factors): KeptMovements {
  const kept = keptMovements.get(factors) ?? { single: [] };
  keptMovements.set(factors, kept);
  return kept;
}

/** Movement under one load. Nobody may change what it returns. */
export function movedOnce(factors: Factors, load: Float64Array): Float64Array {
  const { single } = keptOf(factors);
  const place = single.findIndex((one) => sameLoad(one.load, load));
  const [known] = place < 0 ? [] : single.splice(place, 1);
  const found = known ?? { load: load.slice(), moved: displacementsUnder(factors, load) };
  single.unshift(found);
  single.splice(mostLoads);
  return found.moved;
}

/** Works out movements under several loads together, which takes less time, and keeps them for `movedOnce`. */
export function keepMoved(factors: Factors, loads: readonly Float64Array[]): void {
  const { single } = keptOf(factors);
  const fresh = loads.filter((load) => !single.some((one) => sameLoad(one.load, load)));
  displacementsUnderMany(factors, fresh).forEach((moved, i) => {
    single.unshift({ load: at(fresh, i).slice(), moved });
  });
  single.splice(mostLoads);
}

/** Movements under the pulls of all springs at a box. Nobody may change what it returns. */
export function movedByPulls(factors: Factors, loads: readonly Float64Array[]): readonly Float64Array[] {
  const kept = keptOf(factors);
  const known = kept.pulls?.loads;
  const same = known?.length === loads.length && loads.every((load, i) => sameLoad(at(known, i), load));
  if (!kept.pulls || !same) kept.pulls = { loads, moved: displacementsUnderMany(factors, loads) };
  return kept.pulls.moved;
}

function sameLoad(one: Float64Array, other: Float64Array): boolean {
  if (one === other) return true;
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

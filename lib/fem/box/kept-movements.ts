/** Loads on a factored box, half solved, that were asked for last: an edit leaves most of them as they were. */
import { at } from "../../algebra/lists.js";
import { type Factors, type HalfMoved, halvesUnder } from "../solve/index.js";
import { addPull, type Pull } from "./fitting.js";

/** What was asked for last of one box. */
interface KeptHalves {
  /** Of whole loads, the last asked for first. */
  readonly loads: { readonly load: Float64Array; readonly half: HalfMoved }[];
  /** Of pulls at fittings, under what they push and where, the last asked for last. */
  readonly pulls: Map<string, HalfMoved>;
}

const keptHalves = new WeakMap<Factors, KeptHalves>();

/** Loads kept for a box: those of all load cases, and a pressure on each of its faces. */
const mostLoads = 24;
/** Pulls kept for a box: those of all its springs, and of some that stood elsewhere before. */
const mostPulls = 600;

function keptOf(factors: Factors): KeptHalves {
  const kept = keptHalves.get(factors) ?? { loads: [], pulls: new Map() };
  keptHalves.set(factors, kept);
  return kept;
}

/** One load, half solved. */
export function halfOnce(factors: Factors, load: Float64Array): HalfMoved {
  const { loads } = keptOf(factors);
  const place = loads.findIndex((one) => sameLoad(one.load, load));
  const [known] = place < 0 ? [] : loads.splice(place, 1);
  const found = known ?? { load: load.slice(), half: at(halvesUnder(factors, [load]), 0) };
  loads.unshift(found);
  loads.splice(mostLoads);
  return found.half;
}

/** Half solves several loads together, which takes less time, and keeps them for `halfOnce`. */
export function keepHalves(factors: Factors, loads: readonly Float64Array[]): void {
  const kept = keptOf(factors).loads;
  const fresh = loads.filter((load) => !kept.some((one) => sameLoad(one.load, load)));
  halvesUnder(factors, fresh).forEach((half, i) => {
    kept.unshift({ load: at(fresh, i).slice(), half });
  });
  kept.splice(mostLoads);
}

/** Pulls at a box, half solved: those that are new are worked out together. */
export function halvesOfPulls(factors: Factors, pulls: readonly Pull[]): readonly HalfMoved[] {
  const kept = keptOf(factors).pulls;
  const keys = pulls.map(({ dofs, forces }) => `${dofs};${forces}`);
  const fresh = new Map(pulls.flatMap((pull, i) => (kept.has(at(keys, i)) ? [] : [[at(keys, i), pull]])));
  const halves = halvesUnder(
    factors,
    [...fresh.values()].map((pull) => loadOf(pull, factors.held.length)),
  );
  [...fresh.keys()].forEach((key, i) => {
    kept.set(key, at(halves, i));
  });
  const found = keys.map((key) => {
    const half = kept.get(key);
    if (!half) throw new Error("pulls at a box: one was not worked out");
    kept.delete(key);
    kept.set(key, half);
    return half;
  });
  for (const key of kept.keys()) {
    if (kept.size <= Math.max(mostPulls, keys.length)) break;
    kept.delete(key);
  }
  return found;
}

function loadOf(pull: Pull, size: number): Float64Array {
  const load = new Float64Array(size);
  addPull(load, pull);
  return load;
}

function sameLoad(one: Float64Array, other: Float64Array): boolean {
  if (one === other) return true;
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

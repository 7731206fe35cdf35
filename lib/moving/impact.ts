/** What stops a thing that moves: a panel that something is thrown at, a corner or a caster that a case falls on. */
import { type Formula, formula } from "../formula.js";
import { Count, Force, Length, Mass, Ratio, SpringRate, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** A thing that slides freely until something springy stops it. */
export interface ThrownThing {
  /** Mass of the thing. */
  readonly mass: Mass;
  /** What pushes it all the while, over its weight: 0.8 for hard braking. */
  readonly share: Ratio;
  /** Free way before it strikes. */
  readonly way: Length;
  /** Stiffness of what it strikes, where it strikes. */
  readonly stiffness: SpringRate;
}

/** How hard it is stopped. */
export type ThrownForce = {
  /** Largest force between the two. */
  readonly force: Force;
  /** How far what it strikes gives. */
  readonly gives: Length;
};

/**
 * Largest force of a thing that is pushed over a free way and stopped by a spring: F = c m g (1 + sqrt(1 + 2 s k / (c m g))).
 *
 * @example thrownForce(thrownForce.read({ mass: "20 kg", share: 1, way: "0 mm", stiffness: "200 N/mm" })) // force 392.3 N, gives 1.961 mm
 */
export const thrownForce: Formula<ThrownThing, ThrownForce> = formula<ThrownThing, ThrownForce>({
  id: "thrown.force",
  title: "Force of a thing that is thrown at a panel",
  equation: String.raw`F=c\,m\,g\left(1+\sqrt{1+\frac{2\,s\,k}{c\,m\,g}}\right),\quad w=\frac{F}{k}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "thing", above: 0 },
    share: { symbol: "c", kind: Ratio, meaning: "push over its weight", above: 0 },
    way: { symbol: "s", kind: Length, meaning: "free way before it strikes", min: 0 },
    stiffness: { symbol: "k", kind: SpringRate, meaning: "stiffness of what stops it", above: 0 },
  },
  result: {
    force: { symbol: "F", kind: Force, meaning: "largest force" },
    gives: { symbol: "w", kind: Length, meaning: "how far it gives" },
  },
  source: [
    cite("dynamics", "work of a steady push, stored by a spring"),
    cite("stress-strain", "ch. 16, load applied suddenly and after a fall"),
  ],
  validity:
    "The thing itself is hard and nothing is lost to friction, so the force is an upper one; the panel is light beside it.",
  compute: ({ mass, share, way, stiffness }) => {
    const push = share * mass * standardGravity;
    const force = push * (1 + Math.sqrt(1 + (2 * way * stiffness) / push));
    return { force, gives: force / stiffness };
  },
});

/** A case that falls and is stopped. */
export interface StoppedFall {
  /** Mass of what falls. */
  readonly mass: Mass;
  /** Height that it falls from. */
  readonly height: Length;
  /** How far it still moves while it is stopped: corner, floor and what is inside give. */
  readonly stop: Length;
}

/** How hard it is stopped. */
export type StoppingForce = {
  /** Mean deceleration over the weight, the weight itself included. */
  readonly gravities: Ratio;
  /** Mean force while it is stopped. */
  readonly force: Force;
};

/**
 * Mean force that stops a fall within a distance: F = m g (1 + h / s).
 *
 * @example stoppingForce(stoppingForce.read({ mass: "20 kg", height: "200 mm", stop: "25 mm" })) // gravities 9, force 1.765 kN
 */
export const stoppingForce: Formula<StoppedFall, StoppingForce> = formula<StoppedFall, StoppingForce>({
  id: "drop.stopping.force",
  title: "Force that stops a fall",
  equation: String.raw`F=m\,g\left(1+\frac{h}{s}\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "what falls", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the fall", min: 0 },
    stop: { symbol: "s", kind: Length, meaning: "way in which it is stopped", above: 0 },
  },
  result: {
    gravities: { symbol: "G", kind: Ratio, meaning: "force over its weight" },
    force: { symbol: "F", kind: Force, meaning: "mean force" },
  },
  source: [cite("dynamics", "work of the weight over fall and stop")],
  validity:
    "The mean over the stop; stopped by a spring, the peak is twice as much. The stopping way decides, and is hardly ever known.",
  compute: ({ mass, height, stop }) => {
    const gravities = 1 + height / stop;
    return { gravities, force: mass * standardGravity * gravities };
  },
});

/** A case that falls on its casters. */
export interface FallOnCasters {
  /** Mass of what falls. */
  readonly mass: Mass;
  /** Height that it falls from. */
  readonly height: Length;
  /** Casters that touch first. */
  readonly casters: number;
}

/** Height from which the impact test of casters drops their rated load on a wheel. */
const testedDrop = 0.05;

/**
 * Rating that casters need to stop a fall as their impact test has it, the rated load from 50 mm: R = m g h / (n 50 mm).
 *
 * @example casterDropRating(casterDropRating.read({ mass: "40 kg", height: "100 mm", casters: 2 })) // 392.3 N
 */
export const casterDropRating: Formula<FallOnCasters, Force> = formula<FallOnCasters, Force>({
  id: "caster.drop.rating",
  title: "Rating that casters need to be dropped on",
  equation: String.raw`R=\frac{m\,g\,h}{n\cdot 50\,\mathrm{mm}}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "what falls", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the fall", min: 0 },
    casters: { symbol: "n", kind: Count, meaning: "casters that touch first", min: 1 },
  },
  result: { symbol: "R", kind: Force, meaning: "rating needed of each" },
  source: [cite("icwm", "6.11, impact: the rated load dropped 50 mm on the wheel")],
  validity:
    "By energy, for casters whose maker tests them so; it says that the caster survives, not that it rolls as before.",
  compute: ({ mass, height, casters }) => (mass * standardGravity * height) / casters / testedDrop,
});

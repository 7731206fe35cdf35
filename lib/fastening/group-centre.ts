/** A group of fasteners at its strength: it turns about a point until its forces balance the load. */

import { type Formula, formula } from "../formula.js";
import { Count, Force, type Kind, Length, listOf, Ratio, recordOf } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";
import { groupShape, PlaneForce, Position } from "./group.js";

/** How the force on one fastener grows with its slip: R = R_u (1 - exp(-s / s_0))^m up to the slip at failure. */
export interface SlipLaw {
  /** Slip at which the curve bends over. */
  readonly bend: Length;
  /** The power of the curve, m in the equation above. */
  readonly power: Ratio;
  /** The slip at which the most slipped fastener gives way. */
  readonly largest: Length;
}

/** The slip law of steel bolts in steel: R = R_u (1 - exp(-10 s))^0.55, s in inches, 0.34 in at failure. */
export const steelBoltSlip: SlipLaw = {
  bend: Length.of(0.1, "in"),
  power: Ratio.si(0.55),
  largest: Length.of(0.34, "in"),
};

/** A slip law as text. */
export const SlipLaw: Kind<SlipLaw> = recordOf<SlipLaw>("slip law", {
  bend: Length,
  power: Ratio,
  largest: Length,
});

/** A group and the line of its load. */
export interface TurnedGroup {
  /** The places of the fasteners. */
  readonly positions: readonly Position[];
  /** Direction of the load. */
  readonly direction: PlaneForce;
  /** A point on its line. */
  readonly at: Position;
  /** How force grows with slip. */
  readonly law: SlipLaw;
}

/** Two parts of a force or of a distance. */
export interface Vector {
  /** The part along x, in the unit of the whole. */
  readonly x: number;
  /** The part along y, in the unit of the whole. */
  readonly y: number;
}

/** Sum of the squared arms about the middle. */
function polarOf(positions: readonly Position[]): number {
  return groupShape(positions).arms.reduce((sum, { x, y }) => sum + x ** 2 + y ** 2, 0);
}

/** The load's direction as a unit vector, and its lever about the middle of the group. */
function lineOfLoad({ positions, direction, at }: TurnedGroup): {
  readonly unit: Vector;
  readonly point: Vector;
  readonly lever: number;
} {
  const size = Math.hypot(direction.x, direction.y);
  const unit = { x: direction.x / size, y: direction.y / size };
  const { middle } = groupShape(positions);
  const point = { x: at.x - middle.x, y: at.y - middle.y };
  return { unit, point, lever: cross(point, unit) };
}

function cross(a: Vector, b: Vector): number {
  return a.x * b.y - a.y * b.x;
}

/** Load in fasteners' worth when the part turns about a point, and what then misses from balance. */
function turnedAbout(centre: Vector, inputs: TurnedGroup): { readonly worth: number; readonly miss: Vector } {
  const { unit, point } = lineOfLoad(inputs);
  const arms = groupShape(inputs.positions).arms.map(({ x, y }) => ({ x: x - centre.x, y: y - centre.y }));
  const reaches = arms.map(({ x, y }) => Math.hypot(x, y));
  const { bend, power, largest } = inputs.law;
  const furthest = Math.max(...reaches);
  const forces = reaches.map((reach) => (1 - Math.exp(-(largest * reach) / furthest / bend)) ** power);
  const lever = cross({ x: point.x - centre.x, y: point.y - centre.y }, unit);
  const worth = forces.reduce((sum, force, i) => sum + force * (reaches[i] ?? 0), 0) / Math.abs(lever);
  const sense = Math.sign(lever);
  const along = (pick: (arm: Vector) => number): number =>
    arms.reduce((sum, arm, i) => sum + (sense * (forces[i] ?? 0) * pick(arm)) / (reaches[i] || 1), 0);
  return {
    worth,
    miss: { x: along(({ y }) => -y) - worth * unit.x, y: along(({ x }) => x) - worth * unit.y },
  };
}

/** Newton's method from where the elastic part turns: its centre lies across the load, polar / (n e) from the middle. */
export function balanced(inputs: TurnedGroup): { readonly centre: Vector; readonly worth: number } {
  const { unit, lever } = lineOfLoad(inputs);
  const away = polarOf(inputs.positions) / inputs.positions.length / lever;
  for (const share of [1, 0.7, 1.4, 0.4, 2]) {
    let centre: Vector = { x: -away * share * unit.y, y: away * share * unit.x };
    for (let step = 0; step < 60; step++) {
      const { miss, worth } = turnedAbout(centre, inputs);
      if (Math.hypot(miss.x, miss.y) < 1e-11 * inputs.positions.length) return { centre, worth };
      centre = improved(centre, miss, inputs, Math.abs(away));
    }
  }
  throw new Refusal("group.centre: no point found that the group turns about");
}

function improved(centre: Vector, miss: Vector, inputs: TurnedGroup, scale: number): Vector {
  const h = 1e-6 * scale;
  const right = turnedAbout({ x: centre.x + h, y: centre.y }, inputs).miss;
  const left = turnedAbout({ x: centre.x - h, y: centre.y }, inputs).miss;
  const above = turnedAbout({ x: centre.x, y: centre.y + h }, inputs).miss;
  const below = turnedAbout({ x: centre.x, y: centre.y - h }, inputs).miss;
  const [a, c] = [(right.x - left.x) / (2 * h), (right.y - left.y) / (2 * h)];
  const [b, d] = [(above.x - below.x) / (2 * h), (above.y - below.y) / (2 * h)];
  const determinant = a * d - b * c;
  if (determinant === 0) return { x: centre.x + h, y: centre.y + h };
  const move = { x: (b * miss.y - d * miss.x) / determinant, y: (c * miss.x - a * miss.y) / determinant };
  // A long step would jump to the far side of the load's line.
  const limit = Math.min(1, scale / (Math.hypot(move.x, move.y) || 1));
  return { x: centre.x + limit * move.x, y: centre.y + limit * move.y };
}

/** A group loaded off its middle until it gives way. */
export interface GroupCentreInputs {
  /** The places of the fasteners. */
  readonly positions: readonly Position[];
  /** Direction of the load; its size does not matter. */
  readonly direction: PlaneForce;
  /** Any point on the load's line. */
  readonly at: Position;
  /** Strength of one fastener. */
  readonly each: Force;
  /** How force grows with slip. */
  readonly law: SlipLaw;
}

/** What the whole group holds. */
export type GroupCentre = {
  /** The load the group holds. */
  readonly strength: Force;
  /** Strength of the group over that of one: how many fasteners it is worth. */
  readonly worth: Ratio;
  /** The point that the part turns about. */
  readonly centre: Position;
};

/**
 * Ultimate load of a group off its middle, by the instantaneous centre: the part turns about a point, every
 * fastener slips in proportion to its arm from it and pushes back across that arm; the point is moved until the
 * forces balance the load. It gives more than the elastic method, since near fasteners help out far ones.
 *
 * @throws Refusal for fewer than two places, a load through the middle, or a load without direction
 * @example groupCentre(groupCentre.read({ positions: [{ x: "0 in", y: "0 in" }, { x: "0 in", y: "3 in" }],
 *   direction: { x: "0 N", y: "-1 N" }, at: { x: "2 in", y: "1.5 in" }, each: "10 kN", law: { bend: "0.1 in",
 *   power: 0.55, largest: "0.34 in" } })) // strength 11.78 kN, worth 1.178, centre x -28.57 mm, y 38.1 mm
 */
export const groupCentre: Formula<GroupCentreInputs, GroupCentre> = formula<GroupCentreInputs, GroupCentre>({
  id: "group.centre",
  title: "Fastener group off its middle, ultimate load",
  equation: String.raw`R_i = R_u\left(1 - e^{-s_i/s_0}\right)^{m},\quad s_i = s_{max}\frac{r_i}{r_{max}},\quad
    \sum \vec R_i = \vec P,\quad \sum R_i r_i = P\,\ell`,
  inputs: {
    positions: { symbol: String.raw`\vec r_i`, kind: listOf(Position), meaning: "places of the fasteners" },
    direction: { symbol: String.raw`\vec P/P`, kind: PlaneForce, meaning: "direction of the load" },
    at: { symbol: String.raw`\vec r_P`, kind: Position, meaning: "a point on the load's line" },
    each: { symbol: "R_u", kind: Force, meaning: "strength of one", above: 0 },
    law: { symbol: "s_0, m, s_{max}", kind: SlipLaw, meaning: "how force grows with slip" },
  },
  result: {
    strength: { symbol: "P", kind: Force, meaning: "load the group holds" },
    worth: { symbol: "C", kind: Ratio, meaning: "worth in fasteners" },
    centre: { symbol: String.raw`\vec r_0`, kind: Position, meaning: "point it turns about" },
  },
  source: [
    cite("steel-manual", "part 7, eccentrically loaded bolt groups, instantaneous centre of rotation"),
  ],
  validity:
    "Like fasteners that slip before they break, stiff parts; brittle ply is on the safe side only elastic.",
  refuse: (inputs) => {
    const { law, direction, positions } = inputs;
    if (!(law.bend > 0 && law.power > 0 && law.largest > 0))
      return ["every part of the law must be positive"];
    if (Math.hypot(direction.x, direction.y) === 0) return ["direction must point somewhere"];
    const polar = polarOf(positions);
    if (polar === 0) return ["at least two fasteners apart from each other"];
    const { lever } = lineOfLoad(inputs);
    return Math.abs(lever) < 1e-9 * Math.sqrt(polar)
      ? ["the load goes through the middle: each fastener carries its equal share"]
      : [];
  },
  compute: (inputs) => {
    const { middle } = groupShape(inputs.positions);
    const { centre, worth } = balanced(inputs);
    return {
      strength: worth * inputs.each,
      worth,
      centre: { x: middle.x + centre.x, y: middle.y + centre.y },
    };
  },
});

/** Like fasteners that share a straight pull or a straight shear. */
export interface GroupStrengthInputs {
  /** Strength of one. */
  readonly each: Force;
  /** How many fasteners there are. */
  readonly count: number;
  /** Wanted strength over load. */
  readonly safetyFactor: Ratio;
}

/**
 * Load that a group may carry through its middle: n F / S.
 *
 * @throws Refusal for no fasteners or a safety factor below 1
 * @example groupStrength(groupStrength.read({ each: "500 N", count: 10, safetyFactor: 3 })) // 1.667 kN
 */
export const groupStrength: Formula<GroupStrengthInputs, Force> = formula({
  id: "group.strength",
  title: "Load a fastener group may carry",
  equation: String.raw`F_{allow} = \frac{n\,F}{S}`,
  inputs: {
    each: { symbol: "F", kind: Force, meaning: "strength of one", above: 0 },
    count: { symbol: "n", kind: Count, meaning: "fasteners", min: 1 },
    safetyFactor: { symbol: "S", kind: Ratio, meaning: "safety factor", min: 1 },
  },
  result: { symbol: "F_{allow}", kind: Force, meaning: "allowed load" },
  source: [cite("statics", "equal shares of a load through the middle")],
  validity: "Like fasteners, load through their middle; overhead loads keep a second hold.",
  compute: ({ each, count, safetyFactor }) => (count * each) / safetyFactor,
});

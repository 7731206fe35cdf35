/** A group of fasteners that turns about a point until its forces balance the load. */

import { groupShape, type PlaneForce, type Position } from "./position.js";
import type { SlipLaw } from "./slip-law.js";

/** A group and the line of its load. */
export interface TurnedGroup {
  readonly positions: readonly Position[];
  /** Direction of the load. */
  readonly direction: PlaneForce;
  /** A point on its line. */
  readonly at: Position;
  readonly law: SlipLaw;
}

interface Vector {
  readonly x: number;
  readonly y: number;
}

/** Sum of the squared arms about the middle. */
export function polarOf(positions: readonly Position[]): number {
  return groupShape(positions).arms.reduce((sum, { x, y }) => sum + x ** 2 + y ** 2, 0);
}

/** The load's direction as a unit vector, and its lever about the middle of the group. */
export function seen({ positions, direction, at }: TurnedGroup): {
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
  const { unit, point } = seen(inputs);
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
  const { unit, lever } = seen(inputs);
  const away = polarOf(inputs.positions) / inputs.positions.length / lever;
  for (const share of [1, 0.7, 1.4, 0.4, 2]) {
    let centre: Vector = { x: -away * share * unit.y, y: away * share * unit.x };
    for (let step = 0; step < 60; step++) {
      const { miss, worth } = turnedAbout(centre, inputs);
      if (Math.hypot(miss.x, miss.y) < 1e-11 * inputs.positions.length) return { centre, worth };
      centre = improved(centre, miss, inputs, Math.abs(away));
    }
  }
  throw new RangeError("group.centre: no point found that the group turns about");
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

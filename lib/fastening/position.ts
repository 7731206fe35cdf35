import { Force, type Kind, Length, recordOf } from "../quantity/index.js";

/** A place in the plane of a joint, from any fixed point. */
export interface Position {
  readonly x: Length;
  readonly y: Length;
}

/** A force in the plane of a joint. */
export interface PlaneForce {
  readonly x: Force;
  readonly y: Force;
}

/** Positions as a kind, for formulas. */
export const Position: Kind<Position> = recordOf<Position>("position", { x: Length, y: Length });

/** Plane forces as a kind, for formulas. */
export const PlaneForce: Kind<PlaneForce> = recordOf<PlaneForce>("force", { x: Force, y: Force });

/** The middle of a group of fasteners and where each stands from it, in metres. */
export interface GroupShape {
  readonly middle: { readonly x: number; readonly y: number };
  readonly arms: readonly { readonly x: number; readonly y: number }[];
}

/** Takes a group apart into its centroid and arms. */
export function groupShape(positions: readonly Position[]): GroupShape {
  const mean = (pick: (at: Position) => number): number =>
    positions.reduce((sum, at) => sum + pick(at), 0) / positions.length;
  const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y) };
  return { middle, arms: positions.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y })) };
}

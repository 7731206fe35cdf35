import { type Formula, formula } from "../formula.js";
import { Force, listOf, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { groupShape, PlaneForce, Position } from "./position.js";
import { SlipLaw } from "./slip-law.js";
import { balanced, polarOf, seen } from "./turned-group.js";

/** A group loaded off its middle until it gives way. */
export interface GroupCentreInputs {
  readonly positions: readonly Position[];
  /** Direction of the load; its size does not matter. */
  readonly direction: PlaneForce;
  /** Any point on the load's line. */
  readonly at: Position;
  /** Strength of one fastener. */
  readonly each: Force;
  readonly law: SlipLaw;
}

/** What the whole group holds. */
export type GroupCentre = {
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
 * @throws RangeError for fewer than two places, a load through the middle, or a load without direction
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
    const { lever } = seen(inputs);
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

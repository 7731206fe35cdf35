import { type Formula, formula } from "../formula.js";
import { Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** Hole for one rivet. */
export type RivetHole = {
  /** Drill to take. */
  readonly drill: Length;
  /** A hole larger than this is spoilt. */
  readonly largest: Length;
};

/**
 * Hole for a blind rivet: body + 0.1 mm, at most body + 0.2 mm. A larger hole lets the body bulge
 * before it clamps.
 *
 * @throws RangeError for a body outside 2 mm to 7 mm, for which the rule is not given
 * @example rivetHole(rivetHole.read({ body: "3.2 mm" })) // drill 3.3 mm, largest 3.4 mm
 */
export const rivetHole: Formula<{ readonly body: Length }, RivetHole> = formula<
  { readonly body: Length },
  RivetHole
>({
  id: "rivet.hole",
  title: "Hole for a blind rivet",
  equation: String.raw`d_h = d + 0.1\,\mathrm{mm} \ldots d + 0.2\,\mathrm{mm}`,
  inputs: { body: { symbol: "d", kind: Length, meaning: "diameter of the body", min: 0.002, max: 0.007 } },
  result: {
    drill: { symbol: "d_h", kind: Length, meaning: "drill" },
    largest: { symbol: "d_{h,max}", kind: Length, meaning: "largest hole" },
  },
  source: [cite("iso-15977", "hole diameters"), cite("common-practice", "body + 0.1 mm")],
  validity: "Through metal and ply alike, drilled square, burrs taken off.",
  compute: ({ body }) => ({ drill: body + 0.0001, largest: body + 0.0002 }),
});

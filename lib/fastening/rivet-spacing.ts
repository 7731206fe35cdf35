import { type Formula, formula } from "../formula.js";
import { choice, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** A rivet among its neighbours. */
export interface RivetSpacingInputs {
  readonly diameter: Length;
  /** From the hole's centre to the nearest edge. */
  readonly edgeDistance: Length;
  readonly pitch: Length;
}

/** What the distances come to. */
export type RivetSpacing = {
  readonly edge: "good" | "tight" | "too near";
  readonly spacing: "close" | "usual" | "open";
  /** Edge distance to aim at: two diameters. */
  readonly wantedEdge: Length;
  /** Never nearer than one and a half diameters. */
  readonly leastEdge: Length;
  /** Pitch to aim at: four diameters or more. */
  readonly wantedPitch: Length;
};

/**
 * Edge distance and pitch of a rivet against the rules of the trade: edge 2 d, never below 1.5 d; pitch
 * about 4 d, and up to 8 d where thin laps must not gape.
 *
 * @example rivetSpacing(rivetSpacing.read({ diameter: "3.2 mm", edgeDistance: "5 mm", pitch: "10 mm" })) // edge tight, spacing close, wantedEdge 6.4 mm, leastEdge 4.8 mm, wantedPitch 12.8 mm
 */
export const rivetSpacing: Formula<RivetSpacingInputs, RivetSpacing> = formula<
  RivetSpacingInputs,
  RivetSpacing
>({
  id: "rivet.spacing",
  title: "Edge distance and pitch of a rivet",
  equation: String.raw`e \ge 2d\ (1.5d \text{ at least}),\quad p \approx 4d \ldots 8d`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the rivet", above: 0 },
    edgeDistance: { symbol: "e", kind: Length, meaning: "centre of the hole to the edge", above: 0 },
    pitch: { symbol: "p", kind: Length, meaning: "centre to centre", above: 0 },
  },
  result: {
    edge: {
      symbol: String.raw`\text{edge}`,
      kind: choice("edge", ["good", "tight", "too near"]),
      meaning: "verdict on the edge distance",
    },
    spacing: {
      symbol: String.raw`\text{pitch}`,
      kind: choice("spacing", ["close", "usual", "open"]),
      meaning: "verdict on the pitch",
    },
    wantedEdge: { symbol: "2d", kind: Length, meaning: "edge distance to aim at" },
    leastEdge: { symbol: "1.5d", kind: Length, meaning: "least edge distance" },
    wantedPitch: { symbol: "4d", kind: Length, meaning: "pitch to aim at" },
  },
  source: [cite("common-practice", "edge 2 d, least 1.5 d; pitch about 4 d, up to 8 d in clamped laps")],
  validity: "Thin sheet. A stiff extrusion holds a lap shut over a far wider pitch.",
  warn: (_inputs, { edge, spacing }) => [
    ...(edge === "good" ? [] : [`edge distance is ${edge}: the sheet may tear out to the edge`]),
    ...(spacing === "open" ? ["open pitch: the lap may gape unless a stiff bar clamps it"] : []),
    ...(spacing === "close" ? ["close pitch: the holes weaken the sheet"] : []),
  ],
  compute: ({ diameter, edgeDistance, pitch }) => {
    const edges = (edgeDistance / diameter) * (1 + 1e-9);
    const pitches = pitch / diameter;
    return {
      edge: edges >= 2 ? "good" : edges >= 1.5 ? "tight" : "too near",
      spacing: pitches * (1 + 1e-9) < 4 ? "close" : pitches * (1 - 1e-9) > 8 ? "open" : "usual",
      wantedEdge: 2 * diameter,
      leastEdge: 1.5 * diameter,
      wantedPitch: 4 * diameter,
    };
  },
});

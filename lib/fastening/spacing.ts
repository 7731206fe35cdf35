/** How close fasteners may stand to each other and to an edge, and a row of them along one. */
import { type Formula, formula } from "../formula.js";
import { Angle, Count, choice, Length, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";

/** Nails driven without drilling. */
export interface NailSpacingInputs {
  /** The diameter of the nail. */
  readonly diameter: Length;
  /** The angle between load and grain. */
  readonly angle: Angle;
}

/** How near each other and to ends and edges nails may be. */
export type NailSpacing = {
  /** The distance from nail to nail along the grain. */
  readonly along: Length;
  /** The distance from nail to nail across the grain. */
  readonly across: Length;
  /** The distance to a loaded end. */
  readonly loadedEnd: Length;
  /** The distance to a free end. */
  readonly freeEnd: Length;
  /** The distance to a loaded edge. */
  readonly loadedEdge: Length;
  /** The distance to a free edge. */
  readonly freeEdge: Length;
};

/**
 * Least distances of nails below 5 mm in wood up to 420 kg/m3, not drilled: along the grain (5 + 5 cos a) d, across
 * 5 d, loaded end (10 + 5 cos a) d, free end 10 d, loaded edge (5 + 2 sin a) d, free edge 5 d.
 *
 * @example nailSpacing(nailSpacing.read({ diameter: "3 mm", angle: "0 deg" })) // along 30 mm, across 15 mm, loadedEnd 45 mm, freeEnd 30 mm, loadedEdge 15 mm, freeEdge 15 mm
 */
export const nailSpacing: Formula<NailSpacingInputs, NailSpacing> = formula<NailSpacingInputs, NailSpacing>({
  id: "nail.spacing",
  title: "Least distances of driven nails",
  equation: String.raw`a_1 = (5 + 5\cos\alpha)d,\ a_2 = 5d,\ a_{3t} = (10 + 5\cos\alpha)d,\ a_{4t} = (5 + 2\sin\alpha)d`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the nail", above: 0, below: 0.005 },
    angle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "load to the grain",
      min: 0,
      max: Math.PI / 2,
    },
  },
  result: {
    along: { symbol: "a_1", kind: Length, meaning: "apart, along the grain" },
    across: { symbol: "a_2", kind: Length, meaning: "apart, across the grain" },
    loadedEnd: { symbol: "a_{3t}", kind: Length, meaning: "to a loaded end" },
    freeEnd: { symbol: "a_{3c}", kind: Length, meaning: "to a free end" },
    loadedEdge: { symbol: "a_{4t}", kind: Length, meaning: "to a loaded edge" },
    freeEdge: { symbol: "a_{4c}", kind: Length, meaning: "to a free edge" },
  },
  source: [cite("en-1995", "8.3.1.2, table 8.2")],
  validity:
    "Solid wood up to 420 kg/m3; for panels on wood 0.85 of the distances apart. Drill, and they may be nearer.",
  compute: ({ diameter: d, angle }) => ({
    along: (5 + 5 * Math.cos(angle)) * d,
    across: 5 * d,
    loadedEnd: (10 + 5 * Math.cos(angle)) * d,
    freeEnd: 10 * d,
    loadedEdge: (5 + 2 * Math.sin(angle)) * d,
    freeEdge: 5 * d,
  }),
});

/**
 * Least and wanted distance from a hole's centre to an edge, in diameters of the fastener.
 *
 * @source common practice for rivets in thin sheet
 */
export const edgeDiameters = { least: 1.5, wanted: 2 };

/** A rivet among its neighbours. */
export interface RivetSpacingInputs {
  /** The diameter of the rivet. */
  readonly diameter: Length;
  /** The distance from the hole's centre to the nearest edge. */
  readonly edgeDistance: Length;
  /** The distance from one rivet to the next. */
  readonly pitch: Length;
}

/** What the distances come to. */
export type RivetSpacing = {
  /** The verdict on the edge distance. */
  readonly edge: "good" | "tight" | "too near";
  /** The verdict on the pitch. */
  readonly spacing: "close" | "usual" | "open";
  /** Edge distance to aim at. */
  readonly wantedEdge: Length;
  /** Edge distance that no hole may fall below. */
  readonly leastEdge: Length;
  /** Pitch to aim at: four diameters or more. */
  readonly wantedPitch: Length;
};

/**
 * Edge distance and pitch of a rivet against the rules of the trade: edge 2 d, never below 1.5 d (`edgeDiameters`); pitch
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
  equation: String.raw`e \ge ${edgeDiameters.wanted}d\ (${edgeDiameters.least}d \text{ at least}),\quad p \approx 4d \ldots 8d`,
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
    wantedEdge: { symbol: `${edgeDiameters.wanted}d`, kind: Length, meaning: "edge distance to aim at" },
    leastEdge: { symbol: `${edgeDiameters.least}d`, kind: Length, meaning: "least edge distance" },
    wantedPitch: { symbol: "4d", kind: Length, meaning: "pitch to aim at" },
  },
  source: [
    cite(
      "common-practice",
      `edge ${edgeDiameters.wanted} d, least ${edgeDiameters.least} d; pitch about 4 d, up to 8 d in clamped laps`,
    ),
  ],
  validity: "Thin sheet. A stiff extrusion holds a lap shut over a far wider pitch.",
  warn: (_inputs, { edge, spacing }) => [
    ...(edge === "good" ? [] : [`edge distance is ${edge}: the sheet may tear out to the edge`]),
    ...(spacing === "open" ? ["open pitch: the lap may gape unless a stiff bar clamps it"] : []),
    ...(spacing === "close" ? ["close pitch: the holes weaken the sheet"] : []),
  ],
  compute: ({ diameter, edgeDistance, pitch }) => {
    const edges = (edgeDistance / diameter) * (1 + 1e-9);
    const { least, wanted } = edgeDiameters;
    const pitches = pitch / diameter;
    return {
      edge: edges >= wanted ? "good" : edges >= least ? "tight" : "too near",
      spacing: pitches * (1 + 1e-9) < 4 ? "close" : pitches * (1 - 1e-9) > 8 ? "open" : "usual",
      wantedEdge: wanted * diameter,
      leastEdge: least * diameter,
      wantedPitch: 4 * diameter,
    };
  },
});

/** A straight row of rivets along an edge. */
export interface RivetRowInputs {
  /** The length of the bar or edge. */
  readonly length: Length;
  /** The distance from each end to the first rivet. */
  readonly endDistance: Length;
  /** Rivets stand no further apart than this. */
  readonly largestPitch: Length;
}

/** The row as it is drilled. */
export type RivetRow = {
  /** How many rivets the row has. */
  readonly count: number;
  /** Equal all along. */
  readonly pitch: Length;
};

/**
 * Rivets along an edge: the fewest equal spaces that keep the pitch, n = ceil((L - 2 e) / p_max) + 1,
 * p = (L - 2 e) / (n - 1). At least two rivets.
 *
 * @throws Refusal when the end distances leave no length between them
 * @example rivetRow(rivetRow.read({ length: "24 in", endDistance: "1 in", largestPitch: "2 in" })) // count 12, pitch 50.8 mm
 */
export const rivetRow: Formula<RivetRowInputs, RivetRow> = formula<RivetRowInputs, RivetRow>({
  id: "rivet.row",
  title: "Rivets along an edge",
  equation: String.raw`n = \left\lceil \frac{L - 2e}{p_{max}} \right\rceil + 1,\quad p = \frac{L - 2e}{n - 1}`,
  inputs: {
    length: { symbol: "L", kind: Length, meaning: "length of the edge", above: 0 },
    endDistance: { symbol: "e", kind: Length, meaning: "end to first rivet", min: 0 },
    largestPitch: { symbol: "p_{max}", kind: Length, meaning: "largest pitch", above: 0 },
  },
  result: {
    count: { symbol: "n", kind: Count, meaning: "rivets" },
    pitch: { symbol: "p", kind: Length, meaning: "pitch" },
  },
  source: [cite("geometry", "equal spaces along a line")],
  validity: "A straight edge without gaps; check the pitch against the rivet's diameter apart from this.",
  refuse: ({ length, endDistance }) =>
    length > 2 * endDistance
      ? []
      : [
          `length must exceed twice the end distance, got ${Length.show(length)} and ${Length.show(endDistance)}`,
        ],
  compute: ({ length, endDistance, largestPitch }) => {
    const between = length - 2 * endDistance;
    const spaces = wholeUp(between / largestPitch);
    return { count: spaces + 1, pitch: between / spaces };
  },
});

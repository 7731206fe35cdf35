/** The work of gluing: rounds, open time, porous edges, oversize. */
import { type Formula, formula } from "../formula.js";
import { Area, Count, Length, Ratio, Time } from "../quantity/index.js";
import { cite } from "../source.js";
import type { AdhesiveKind } from "./adhesive.js";

/** Area to glue, and the clock of the adhesive. */
export interface WorkPlanInputs {
  /** Of the bond: counted once. */ readonly area: Area;
  /** That get glue. */ readonly faces: number;
  /** Of one face, spread in one minute. */ readonly spreadInMinute: Area;
  /** How long the adhesive can wait before it is pressed. */ readonly openTime: Time;
  /** In the press or under weights, each round; zero for contact glue. */ readonly pressTime: Time;
  /** From pressing to being fit for work. */ readonly cureTime: Time;
  /** Share of the open time that spreading may take; the rest is for laying down. */
  readonly share: Ratio;
}

/** Rounds and hours. */
export type WorkPlan = {
  /** Largest area for one round. */ readonly roundArea: Area;
  /** How many times adhesive is spread and pressed. */ readonly rounds: number;
  /** Brush, roller or gun in hand. */ readonly spreading: Time;
  /** Until the last piece is out of the press. */ readonly pressed: Time;
  /** Until it may be trimmed and drilled. */ readonly ready: Time;
};

/**
 * Rounds that keep within the open time, and when the work is ready: A_1 = s t_o v / m, n = ceil(A / A_1),
 * t = A m / v + n t_p, then the cure.
 *
 * @throws RangeError for an area, a speed or an open time that is not positive
 * @example workPlan(workPlan.read({ area: "6 m2", faces: 2, spreadInMinute: "0.5 m2", openTime: "20 min",
 *   pressTime: "0 min", cureTime: "1440 min", share: 0.5 })) // roundArea 2.5 m2, rounds 3, spreading 24 min, pressed 24 min, ready 24.4 h
 */
export const workPlan: Formula<WorkPlanInputs, WorkPlan> = formula<WorkPlanInputs, WorkPlan>({
  id: "bonding.plan",
  title: "Gluing in rounds that keep within the open time",
  equation: String.raw`A_1 = \frac{s\,t_o\,v}{m},\quad n = \left\lceil \frac{A}{A_1} \right\rceil,\quad t = \frac{A\,m}{v} + n\,t_p,\quad t_r = t + t_c`,
  inputs: {
    area: { symbol: "A", kind: Area, meaning: "area of the bond", above: 0 },
    faces: { symbol: "m", kind: Count, meaning: "faces that get glue", min: 1, max: 2 },
    spreadInMinute: { symbol: "v", kind: Area, meaning: "spread in a minute", above: 0 },
    openTime: { symbol: "t_o", kind: Time, meaning: "open time", above: 0 },
    pressTime: { symbol: "t_p", kind: Time, meaning: "press time of a round", min: 0 },
    cureTime: { symbol: "t_c", kind: Time, meaning: "cure time", min: 0 },
    share: { symbol: "s", kind: Ratio, meaning: "share of the open time for spreading", above: 0, max: 1 },
  },
  result: {
    roundArea: { symbol: "A_1", kind: Area, meaning: "largest area of a round" },
    rounds: { symbol: "n", kind: Count, meaning: "rounds" },
    spreading: { symbol: "t_s", kind: Time, meaning: "time spent spreading" },
    pressed: { symbol: "t", kind: Time, meaning: "until all is pressed" },
    ready: { symbol: "t_r", kind: Time, meaning: "until it may be worked on" },
  },
  source: [cite("common-practice", "spread within half the open time of the label")],
  validity: "Open time at 20 °C; heat and wind shorten it by half. Two people spread twice as fast.",
  compute: ({ area, faces, spreadInMinute, openTime, pressTime, cureTime, share }) => {
    const speed = spreadInMinute / 60;
    const roundArea = (share * openTime * speed) / faces;
    const rounds = Math.ceil(area / roundArea - 1e-9);
    const spreading = (area * faces) / speed;
    const pressed = spreading + rounds * pressTime;
    return { roundArea, rounds, spreading, pressed, ready: pressed + cureTime };
  },
});

/** One face spread in a minute by one person; common practice, no source: time your own. */
export const spreadingSpeed: Readonly<Record<AdhesiveKind, Area>> = {
  contact: Area.si(0.35),
  "spray contact": Area.si(0.8),
  "wood glue": Area.si(0.4),
  epoxy: Area.si(0.25),
  construction: Area.si(0.2),
};

/** Edges of a sheet that soak glue up. */
export interface PorousEdgeInputs {
  /** Length of all edges times thickness. */ readonly edgeArea: Area;
  /** Share of a face's rate that end grain takes: 2 to 3. */ readonly soaking: Ratio;
  /** Of the faces. */ readonly faceArea: Area;
}

/**
 * Share of glue that porous edges add to that of the faces: w = f A_e / A.
 *
 * @example porousEdgeShare(porousEdgeShare.read({ edgeArea: "1 ft2", soaking: 2, faceArea: "40 ft2" })) // 0.05
 */
export const porousEdgeShare: Formula<PorousEdgeInputs, Ratio> = formula({
  id: "adhesive.edges",
  title: "Glue that porous edges take",
  equation: String.raw`w = \frac{f\,A_e}{A}`,
  inputs: {
    edgeArea: { symbol: "A_e", kind: Area, meaning: "area of the edges", min: 0 },
    soaking: { symbol: "f", kind: Ratio, meaning: "rate of an edge over that of a face", min: 1, max: 5 },
    faceArea: { symbol: "A", kind: Area, meaning: "area of the faces", above: 0 },
  },
  result: { symbol: "w", kind: Ratio, meaning: "added to the glue of the faces" },
  source: [cite("geometry", "areas"), cite("common-practice", "end grain takes two to three coats")],
  validity: "Raw edges that are glued or sealed; openings count with their edges.",
  compute: ({ edgeArea, soaking, faceArea }) => (soaking * edgeArea) / faceArea,
});

/** A piece of facing cut larger than its panel. */
export interface OversizeInputs {
  /** Of the panel. */ readonly width: Length;
  /** Finished height of the piece. */ readonly height: Length;
  /** Added to each dimension, trimmed off after gluing. */ readonly oversize: Length;
}

/**
 * Share of a facing piece that is trimmed off: w = 1 - b h / ((b + o) (h + o)).
 *
 * @example oversizeWaste(oversizeWaste.read({ width: "4 in", height: "4 in", oversize: "4 in" })) // 0.75
 */
export const oversizeWaste: Formula<OversizeInputs, Ratio> = formula({
  id: "facing.oversize.waste",
  title: "Facing trimmed off after gluing",
  equation: String.raw`w = 1 - \frac{b\,h}{(b + o)(h + o)}`,
  inputs: {
    width: { symbol: "b", kind: Length, meaning: "width of the panel", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the panel", above: 0 },
    oversize: { symbol: "o", kind: Length, meaning: "added to each dimension", min: 0 },
  },
  result: { symbol: "w", kind: Ratio, meaning: "share trimmed off" },
  source: [cite("geometry", "areas of rectangles")],
  validity: "What cutting the pieces out of a sheet wastes comes on top.",
  compute: ({ width, height, oversize }) => 1 - (width * height) / ((width + oversize) * (height + oversize)),
});

/** Trials that need a board, a scale, a saw or a clock. */
import { type Formula, formula } from "../formula.js";
import { Area, AreaDensity, Count, Density, Length, Mass, Ratio, Time } from "../quantity/index.js";
import { cite } from "../source.js";

/** A board tilted until what lies on it slides. */
export interface TiltInputs {
  /** How much higher the raised end is. */ readonly rise: Length;
  /** Along the floor, below the board. */ readonly run: Length;
}

/**
 * Friction from the slope at which a thing starts to slide: mu = tan(theta) = rise / run.
 *
 * @example tiltFriction(tiltFriction.read({ rise: "1 m", run: "1 m" })) // 1
 */
export const tiltFriction: Formula<TiltInputs, Ratio> = formula({
  id: "friction.tilt",
  title: "Friction from a tilted board",
  equation: String.raw`\mu = \tan\theta = \frac{h}{l}`,
  inputs: {
    rise: { symbol: "h", kind: Length, meaning: "height of the raised end", min: 0 },
    run: { symbol: "l", kind: Length, meaning: "length along the floor", above: 0 },
  },
  result: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction at rest" },
  source: [cite("statics", "body on a slope at the point of sliding")],
  validity: "Raised slowly, without knocks, on the very surfaces, dry; a ride shakes things loose earlier.",
  compute: ({ rise, run }) => rise / run,
});

/** A piece of work done several times against the clock. */
export interface PieceTimeInputs {
  /** Time of all pieces together. */ readonly time: Time;
  /** How many were made. */ readonly pieces: number;
}

/**
 * Time of one piece: all of it over the pieces.
 *
 * @example timePerPiece(timePerPiece.read({ time: "14 min", pieces: 40 })) // 21 s
 */
export const timePerPiece: Formula<PieceTimeInputs, Time> = formula({
  id: "time.per.piece",
  title: "Time of one piece",
  equation: String.raw`t_1 = \frac{t}{n}`,
  inputs: {
    time: { symbol: "t", kind: Time, meaning: "time of all pieces", above: 0 },
    pieces: { symbol: "n", kind: Count, meaning: "pieces", min: 1 },
  },
  result: { symbol: "t_1", kind: Time, meaning: "time of one" },
  source: [cite("geometry", "a quotient")],
  validity: "Pieces alike, tools at hand; a first piece takes longer.",
  warn: ({ pieces }) => (pieces < 3 ? [`only ${pieces} timed: time more for a fair mean`] : []),
  compute: ({ time, pieces }) => time / pieces,
});

/** A rectangular offcut on the scale. */
export interface OffcutInputs {
  /** Length of the offcut. */ readonly length: Length;
  /** Width of the offcut. */ readonly width: Length;
  /** Thickness of the offcut. */ readonly thickness: Length;
  /** Mass of the offcut. */ readonly mass: Mass;
}

/** What a sheet weighs. */
export type SheetWeight = {
  /** Mass over volume. */ readonly density: Density;
  /** Of the whole thickness. */ readonly massPerArea: AreaDensity;
};

/**
 * Density and mass per area of a sheet from a rectangular offcut: rho = m / (l b t), m / A = m / (l b).
 * Larger offcuts give truer figures: an edge cut 1 mm wrong on 100 mm is 1 %.
 *
 * @throws Refusal unless every input is positive
 * @example sheetDensity(sheetDensity.read({ length: "12 in", width: "12 in", thickness: "3/4 in",
 *   mass: "2.25 lb" })) // density 576.7 kg/m3, massPerArea 10.99 kg/m2
 */
export const sheetDensity: Formula<OffcutInputs, SheetWeight> = formula<OffcutInputs, SheetWeight>({
  id: "sheet.density",
  title: "Density of a sheet from an offcut",
  equation: String.raw`\rho = \frac{m}{l\,b\,t},\quad \frac{m}{A} = \frac{m}{l\,b}`,
  inputs: {
    length: { symbol: "l", kind: Length, meaning: "length of the offcut", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the offcut", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the offcut", above: 0 },
    mass: { symbol: "m", kind: Mass, meaning: "mass of the offcut", above: 0 },
  },
  result: {
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density" },
    massPerArea: { symbol: "m/A", kind: AreaDensity, meaning: "mass per area" },
  },
  source: [cite("geometry", "mass over volume of a box")],
  validity: "A full rectangular offcut without holes, at the moisture it will have in use.",
  compute: ({ length, width, thickness, mass }) => ({
    density: mass / (length * width * thickness),
    massPerArea: mass / (length * width),
  }),
});

/** One board cut several times with one blade. */
export interface KerfInputs {
  /** Length of the board before the first cut. */ readonly before: Length;
  /** Length of what is left of the board after the last cut. */ readonly after: Length;
  /** Lengths of all pieces cut off, added up. */ readonly offcuts: Length;
  /** How many cuts were made. */ readonly cuts: number;
}

/**
 * Width of a blade's cut from the length that cuts turn to dust: k = (before - after - offcuts) / n. Ten
 * cuts bring a rule's error of 1 mm down to 0.1 mm.
 *
 * @throws Refusal when no length was lost
 * @example kerfFromCuts(kerfFromCuts.read({ before: "1000 mm", after: "468 mm", offcuts: "500 mm", cuts: 10 })) // 3.2 mm
 */
export const kerfFromCuts: Formula<KerfInputs, Length> = formula({
  id: "kerf.from.cuts",
  title: "Kerf of a blade from several cuts",
  equation: String.raw`k = \frac{l_0 - l_1 - \sum l_i}{n}`,
  inputs: {
    before: { symbol: "l_0", kind: Length, meaning: "board before", above: 0 },
    after: { symbol: "l_1", kind: Length, meaning: "board after", min: 0 },
    offcuts: { symbol: String.raw`\sum l_i`, kind: Length, meaning: "offcuts added up", min: 0 },
    cuts: { symbol: "n", kind: Count, meaning: "number of cuts", min: 1 },
  },
  result: { symbol: "k", kind: Length, meaning: "kerf" },
  source: [cite("geometry", "lengths before = lengths after + cuts")],
  validity: "All cuts square, with the same blade.",
  refuse: ({ before, after, offcuts }) =>
    before - after - offcuts > 0
      ? []
      : ["board after and offcuts must be shorter than the board before: measure them again"],
  warn: ({ cuts }) => (cuts < 10 ? [`only ${cuts} cuts: ten or more make the rule's error small`] : []),
  compute: ({ before, after, offcuts, cuts }) => (before - after - offcuts) / cuts,
});

/** Glue spread on a trial panel, weighed by what left the container. */
export interface SpreadTrialInputs {
  /** Container with its glue, and the brush or roller, before. */ readonly before: Mass;
  /** The same after. */ readonly after: Mass;
  /** One face of the trial panel. */ readonly area: Area;
  /** Faces of that area that were covered. */ readonly faces: number;
}

/**
 * Wet spread rate on one face from a trial: r = (before - after) / (A n). What stays in the roller counts
 * as waste only if the roller is not weighed.
 *
 * @throws Refusal when nothing was used
 * @example spreadTrialRate(spreadTrialRate.read({ before: "2 lb", after: "1.9375 lb", area: "2 ft2", faces: 2 })) // 76.29 g/m2
 */
export const spreadTrialRate: Formula<SpreadTrialInputs, AreaDensity> = formula({
  id: "adhesive.trial.rate",
  title: "Spread rate of an adhesive from a trial panel",
  equation: String.raw`r = \frac{m_0 - m_1}{A\,n}`,
  inputs: {
    before: { symbol: "m_0", kind: Mass, meaning: "container before", above: 0 },
    after: { symbol: "m_1", kind: Mass, meaning: "container after", min: 0 },
    area: { symbol: "A", kind: Area, meaning: "area of one face", above: 0 },
    faces: { symbol: "n", kind: Count, meaning: "faces covered", min: 1 },
  },
  result: { symbol: "r", kind: AreaDensity, meaning: "wet spread rate on one face" },
  source: [cite("geometry", "mass over area")],
  validity: "Solvent that leaves between the two weighings counts as spread: weigh at once.",
  refuse: ({ before, after }) =>
    after < before
      ? []
      : [`container after must be lighter than before (${Mass.show(before)}), got ${Mass.show(after)}`],
  compute: ({ before, after, area, faces }) => (before - after) / (area * faces),
});

/** A trial whose panel was weighed too. */
export interface OversprayInputs {
  /** Container with its glue before, and after. */ readonly before: Mass;
  /** The same after. */ readonly after: Mass;
  /** What the panel gained, weighed at once. */ readonly gained: Mass;
}

/**
 * Share of glue that ended beside the panel: w = 1 - g / (before - after).
 *
 * @throws Refusal when the panel gained more than the container lost
 * @example oversprayShare(oversprayShare.read({ before: "2 lb", after: "1 lb", gained: "12 oz" })) // 0.25
 */
export const oversprayShare: Formula<OversprayInputs, Ratio> = formula({
  id: "adhesive.trial.overspray",
  title: "Glue that ended beside the trial panel",
  equation: String.raw`w = 1 - \frac{g}{m_0 - m_1}`,
  inputs: {
    before: { symbol: "m_0", kind: Mass, meaning: "container before", above: 0 },
    after: { symbol: "m_1", kind: Mass, meaning: "container after", min: 0 },
    gained: { symbol: "g", kind: Mass, meaning: "gained by the panel", above: 0 },
  },
  result: { symbol: "w", kind: Ratio, meaning: "share wasted" },
  source: [cite("geometry", "a mass balance")],
  validity: "Weighed within a minute: solvent that has left counts as overspray.",
  refuse: ({ before, after, gained }) =>
    gained <= before - after
      ? []
      : [
          `gained must be at most what the container lost (${Mass.show(Mass.si(before - after))}), got ${Mass.show(gained)}`,
        ],
  compute: ({ before, after, gained }) => 1 - gained / (before - after),
});

/** Trials that need a board or a clock. */
import { type Formula, formula } from "../formula.js";
import { Count, Length, Ratio, Time } from "../quantity/index.js";
import { cite } from "../source.js";

/** A board tilted until what lies on it slides. */
export interface TiltInputs {
  /** How much higher the raised end is. */
  readonly rise: Length;
  /** Along the floor, below the board. */
  readonly run: Length;
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
  readonly time: Time;
  readonly pieces: number;
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

/** Shelves and bars with the same load on every bit of their length. */
import { type Formula, formula } from "../../formula.js";
import { BeamStiffness, Length, LineLoad, Moment } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A uniformly loaded beam. */
export interface UniformBeam {
  /** Load for each unit of length, own weight included. */
  readonly load: LineLoad;
  /** Between supports, or from the wall to the tip. */
  readonly span: Length;
  /** EI */
  readonly stiffness: BeamStiffness;
}

/** How a beam answers its load. */
export type BeamAnswer = {
  /** Largest sag. */
  readonly sag: Length;
  /** Largest bending moment, by size. */
  readonly moment: Moment;
};

/** What tells one end condition from another. */
interface UniformCase {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  /** Sag over w L4/EI. */
  readonly sag: number;
  /** Moment over w L2. */
  readonly moment: number;
  readonly row: string;
  readonly validity: string;
}

function uniformBeam({ sag, moment, row, ...words }: UniformCase): Formula<UniformBeam, BeamAnswer> {
  return formula<UniformBeam, BeamAnswer>({
    ...words,
    inputs: {
      load: { symbol: "w", kind: LineLoad, meaning: "load per length", min: 0 },
      span: { symbol: "L", kind: Length, meaning: "span", above: 0 },
      stiffness: { symbol: "EI", kind: BeamStiffness, meaning: "bending stiffness", above: 0 },
    },
    result: {
      sag: { symbol: String.raw`\delta`, kind: Length, meaning: "largest sag" },
      moment: { symbol: "M", kind: Moment, meaning: "largest bending moment" },
    },
    source: [
      cite("strength-of-materials", "deflection of beams"),
      cite("stress-strain", `table 8.1, ${row}`),
    ],
    compute: ({ load, span, stiffness }) => ({
      sag: (sag * load * span ** 4) / stiffness,
      moment: moment * load * span ** 2,
    }),
  });
}

/** Where every beam formula holds. */
export const slender = "Sag small beside the span; sag from shear is added by beam.shear.sag.";

/**
 * Loose on two supports.
 *
 * @example simpleUniform(simpleUniform.read({ load: "1000 N/m", span: "1 m", stiffness: "1000 N·m2" })) // sag 13.02 mm, moment 125 N·m
 */
export const simpleUniform: Formula<UniformBeam, BeamAnswer> = uniformBeam({
  id: "beam.simple.uniform",
  title: "Shelf loose on two supports, uniform load",
  equation: String.raw`\delta=\frac{5wL^4}{384EI},\quad M=\frac{wL^2}{8}`,
  sag: 5 / 384,
  moment: 1 / 8,
  row: "case 2e",
  validity: slender,
});

/**
 * Both ends held rigidly.
 *
 * @example fixedUniform(fixedUniform.read({ load: "1000 N/m", span: "1 m", stiffness: "1000 N·m2" })) // sag 2.604 mm, moment 83.33 N·m
 */
export const fixedUniform: Formula<UniformBeam, BeamAnswer> = uniformBeam({
  id: "beam.fixed.uniform",
  title: "Shelf fixed rigidly at both ends, uniform load",
  equation: String.raw`\delta=\frac{wL^4}{384EI},\quad M=\frac{wL^2}{12}`,
  sag: 1 / 384,
  moment: 1 / 12,
  row: "case 2d",
  validity: `${slender} Glued or screwed ends of thin plywood give; the truth lies between this and loose ends.`,
});

/** The root of 8 s2 - 15 s + 6, counted from the fixed end, where the sag is largest. */
const proppedPlace = (15 - Math.sqrt(33)) / 16;
const proppedSag = (proppedPlace ** 2 * (1 - proppedPlace) * (3 - 2 * proppedPlace)) / 48;

/**
 * One end held rigidly, the other loose.
 *
 * @example proppedUniform(proppedUniform.read({ load: "1000 N/m", span: "1 m", stiffness: "1000 N·m2" })) // sag 5.416 mm, moment 125 N·m
 */
export const proppedUniform: Formula<UniformBeam, BeamAnswer> = uniformBeam({
  id: "beam.propped.uniform",
  title: "Shelf fixed at one end, loose at the other, uniform load",
  equation: String.raw`\delta=\frac{wL^4}{184.6\,EI},\quad M=\frac{wL^2}{8}`,
  sag: proppedSag,
  moment: 1 / 8,
  row: "case 2c",
  validity: slender,
});

/**
 * Two equal spans in one piece: by symmetry each is fixed over the middle support.
 *
 * @example twoSpanUniform(twoSpanUniform.read({ load: "1000 N/m", span: "1 m", stiffness: "1000 N·m2" })) // sag 5.416 mm, moment 125 N·m
 */
export const twoSpanUniform: Formula<UniformBeam, BeamAnswer> = uniformBeam({
  id: "beam.twospan.uniform",
  title: "Shelf in one piece over two equal spans, uniform load",
  equation: String.raw`\delta=\frac{wL^4}{184.6\,EI},\quad M=\frac{wL^2}{8}`,
  sag: proppedSag,
  moment: 1 / 8,
  row: "case 2c, by symmetry",
  validity: `${slender} Both spans loaded; the span is one of the two.`,
});

/**
 * One end in the wall, the other in the air.
 *
 * @example cantileverUniform(cantileverUniform.read({ load: "1000 N/m", span: "1 m", stiffness: "1000 N·m2" })) // sag 125 mm, moment 500 N·m
 */
export const cantileverUniform: Formula<UniformBeam, BeamAnswer> = uniformBeam({
  id: "beam.cantilever.uniform",
  title: "Shelf held at one end only, uniform load",
  equation: String.raw`\delta=\frac{wL^4}{8EI},\quad M=\frac{wL^2}{2}`,
  sag: 1 / 8,
  moment: 1 / 2,
  row: "case 2a",
  validity: slender,
});

/** Shelves and bars: with the same load on every bit of their length, or with a load at one place. */
import { type Formula, formula } from "../../formula.js";
import { BeamStiffness, Force, Length, LineLoad, Moment } from "../../quantity/index.js";
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
  /** Id of the formula. */
  readonly id: string;
  /** What it answers. */
  readonly title: string;
  /** The formula as TeX. */
  readonly equation: string;
  /** Sag over w L4/EI. */
  readonly sag: number;
  /** Moment over w L2. */
  readonly moment: number;
  /** The case in the cited table. */
  readonly row: string;
  /** Where it holds. */
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

/** A beam with a force in its middle, or at its tip. */
export interface PointBeam {
  /** In the middle, or at the tip. */
  readonly force: Force;
  /** Between supports, or from the wall to the tip. */
  readonly span: Length;
  /** EI */
  readonly stiffness: BeamStiffness;
}

/** What tells one end condition from another. */
interface PointCase {
  /** Id of the formula. */
  readonly id: string;
  /** What it answers. */
  readonly title: string;
  /** The formula as TeX. */
  readonly equation: string;
  /** Sag over P L3/EI. */
  readonly sag: number;
  /** Moment over P L. */
  readonly moment: number;
  /** The case in the cited table. */
  readonly row: string;
}

const inputs = {
  force: { symbol: "P", kind: Force, meaning: "force", min: 0 },
  span: { symbol: "L", kind: Length, meaning: "span", above: 0 },
  stiffness: { symbol: "EI", kind: BeamStiffness, meaning: "bending stiffness", above: 0 },
} as const;

function pointBeam({ sag, moment, row, ...words }: PointCase): Formula<PointBeam, BeamAnswer> {
  return formula<PointBeam, BeamAnswer>({
    ...words,
    inputs,
    result: simpleUniform.declaration.result,
    source: [
      cite("strength-of-materials", "deflection of beams"),
      cite("stress-strain", `table 8.1, ${row}`),
    ],
    validity: slender,
    compute: ({ force, span, stiffness }) => ({
      sag: (sag * force * span ** 3) / stiffness,
      moment: moment * force * span,
    }),
  });
}

/**
 * Loose on two supports, force in the middle.
 *
 * @example simpleCentre(simpleCentre.read({ force: "1000 N", span: "1 m", stiffness: "1000 N·m2" })) // sag 20.83 mm, moment 250 N·m
 */
export const simpleCentre: Formula<PointBeam, BeamAnswer> = pointBeam({
  id: "beam.simple.centre",
  title: "Shelf loose on two supports, force in the middle",
  equation: String.raw`\delta=\frac{PL^3}{48EI},\quad M=\frac{PL}{4}`,
  sag: 1 / 48,
  moment: 1 / 4,
  row: "case 1e",
});

/**
 * Both ends held rigidly, force in the middle.
 *
 * @example fixedCentre(fixedCentre.read({ force: "1000 N", span: "1 m", stiffness: "1000 N·m2" })) // sag 5.208 mm, moment 125 N·m
 */
export const fixedCentre: Formula<PointBeam, BeamAnswer> = pointBeam({
  id: "beam.fixed.centre",
  title: "Shelf fixed rigidly at both ends, force in the middle",
  equation: String.raw`\delta=\frac{PL^3}{192EI},\quad M=\frac{PL}{8}`,
  sag: 1 / 192,
  moment: 1 / 8,
  row: "case 1d",
});

/**
 * One end in the wall, force at the tip.
 *
 * @example cantileverTip(cantileverTip.read({ force: "1000 N", span: "1 m", stiffness: "1000 N·m2" })) // sag 333.3 mm, moment 1 kN·m
 */
export const cantileverTip: Formula<PointBeam, BeamAnswer> = pointBeam({
  id: "beam.cantilever.tip",
  title: "Bar held at one end, force at its tip",
  equation: String.raw`\delta=\frac{PL^3}{3EI},\quad M=PL`,
  sag: 1 / 3,
  moment: 1,
  row: "case 1a",
});

/** A beam on two supports with a force anywhere. */
export interface SimplePointBeam extends PointBeam {
  /** From the left support to the force. */
  readonly place: Length;
}

/** Sag under the force and the largest, which lies on the longer side. */
export type SimplePointAnswer = BeamAnswer & {
  /** Under the force. */
  readonly sagUnderForce: Length;
  /** Of the largest sag, from the left support. */
  readonly sagPlace: Length;
};

/**
 * Loose on two supports, force anywhere.
 *
 * @example simplePoint(simplePoint.read({ force: "1000 N", span: "1 m", stiffness: "1000 N·m2",
 *   place: "0.5 m" })) // sag 20.83 mm, moment 250 N·m, sagUnderForce 20.83 mm, sagPlace 500 mm
 */
export const simplePoint: Formula<SimplePointBeam, SimplePointAnswer> = formula<
  SimplePointBeam,
  SimplePointAnswer
>({
  id: "beam.simple.point",
  title: "Shelf loose on two supports, force anywhere",
  equation: String.raw`\delta_P=\frac{Pa^2b^2}{3EIL},\quad \delta=\frac{Pc\,(L^2-c^2)^{3/2}}{9\sqrt3\,EIL},\quad c=\min(a,b),\quad M=\frac{Pab}{L}`,
  inputs: {
    ...inputs,
    place: { symbol: "a", kind: Length, meaning: "from the left support to the force", min: 0 },
  },
  result: {
    ...simpleCentre.declaration.result,
    sagUnderForce: { symbol: String.raw`\delta_P`, kind: Length, meaning: "sag under the force" },
    sagPlace: { symbol: String.raw`x_\delta`, kind: Length, meaning: "place of the largest sag" },
  },
  source: [cite("strength-of-materials", "deflection of beams"), cite("stress-strain", "table 8.1, case 1e")],
  validity: slender,
  refuse: ({ place, span }) =>
    place <= span ? [] : [`place must be at most the span, got ${Length.show(place)}`],
  compute: ({ force, span, stiffness, place }) => {
    const rest = span - place;
    const near = Math.min(place, rest);
    const reach = Math.sqrt((span ** 2 - near ** 2) / 3);
    return {
      sag: (force * near * reach ** 3) / (3 * stiffness * span),
      moment: (force * place * rest) / span,
      sagUnderForce: (force * place ** 2 * rest ** 2) / (3 * stiffness * span),
      sagPlace: place < rest ? span - reach : reach,
    };
  },
});

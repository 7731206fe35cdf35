/** Shelves and bars with a load at one place. */
import { type Formula, formula } from "../../formula.js";
import { BeamStiffness, Force, Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { type BeamAnswer, simpleUniform, slender } from "./uniform-beam.js";

/** A beam with a force in its middle, or at its tip. */
export interface PointBeam {
  readonly force: Force;
  /** Between supports, or from the wall to the tip. */
  readonly span: Length;
  /** EI */
  readonly stiffness: BeamStiffness;
}

/** What tells one end condition from another. */
interface PointCase {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  /** Sag over P L3/EI. */
  readonly sag: number;
  /** Moment over P L. */
  readonly moment: number;
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

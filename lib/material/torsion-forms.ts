/** Torsion constants of single shapes in closed form. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, type SecondMoment } from "../quantity/index.js";
import { cite } from "../source.js";
import { torsion } from "./section-walls.js";

/** A closed tube of one wall. */
export interface TubeInputs {
  /** Enclosed by the middle line of the wall. */
  readonly enclosed: Area;
  /** Length of the middle line. */
  readonly round: Length;
  readonly thickness: Length;
}

/**
 * Torsion constant of a closed thin tube: J = 4 A^2 t / s.
 *
 * @example tubeTorsion(tubeTorsion.read({ enclosed: "2109 mm2", round: "188 mm", thickness: "3 mm" })) // 28.39 cm4
 */
export const tubeTorsion: Formula<TubeInputs, SecondMoment> = formula({
  id: "section.torsion.tube",
  title: "Torsion constant of a closed tube",
  equation: String.raw`J = \frac{4\,A_m^2\,t}{s}`,
  inputs: {
    enclosed: { symbol: "A_m", kind: Area, meaning: "enclosed by the middle line", above: 0 },
    round: { symbol: "s", kind: Length, meaning: "length of the middle line", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "wall", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "ch. 10, closed thin tubes (Bredt)")],
  validity: "One closed wall of even thickness, at most a tenth of the tube's width.",
  refuse: ({ enclosed, round }) =>
    4 * Math.PI * enclosed <= round ** 2 * (1 + 1e-9) ? [] : ["no line of that length encloses so much"],
  compute: ({ enclosed, round, thickness }) => (4 * enclosed ** 2 * thickness) / round,
});

/** A solid bar. */
export interface SolidBar {
  readonly width: Length;
  readonly height: Length;
}

/** Terms of the series; they fall with the fifth power. */
const terms = 150;

/**
 * Torsion constant of a rectangle: J = a b^3 (1/3 - (64 b / pi^5 a) sum tanh(n pi a / 2 b) / n^5), n odd, a >= b.
 *
 * @example rectangleTorsion(rectangleTorsion.read({ width: "10 mm", height: "10 mm" })) // 1406 mm4
 */
export const rectangleTorsion: Formula<SolidBar, SecondMoment> = formula({
  id: "section.torsion.rectangle",
  title: "Torsion constant of a rectangular bar",
  equation: String.raw`J = a b^3\left(\frac13 - \frac{64\,b}{\pi^5 a}\sum_{n=1,3,\ldots}\frac{\tanh(n\pi a/2b)}{n^5}\right)`,
  inputs: {
    width: { symbol: "a", kind: Length, meaning: "one side", above: 0 },
    height: { symbol: "b", kind: Length, meaning: "the other", above: 0 },
  },
  result: torsion,
  source: [cite("stress-strain", "table 10.1, rectangle (Saint-Venant)")],
  validity: "Any solid rectangle.",
  compute: ({ width, height }) => {
    const [a, b] = [Math.max(width, height), Math.min(width, height)];
    let sum = 0;
    for (let n = 1; n < 2 * terms; n += 2) sum += Math.tanh((n * Math.PI * a) / (2 * b)) / n ** 5;
    return a * b ** 3 * (1 / 3 - ((64 * b) / (Math.PI ** 5 * a)) * sum);
  },
});

/** A panel pressed along lines in its plane: straps that come down over its edge. */
import { symmetricEigen } from "../../algebra/eigenvalues.js";
import { type Formula, formula } from "../../formula.js";
import { Force, Length, listOf } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { type PlateShape, shapeFaults, shapeSymbols } from "./plate-inputs.js";

/** A hinged panel with like forces on its lower and upper edge, in pairs. */
export interface LinePressedPlate extends PlateShape {
  /** Where the pairs press, from the left edge. */
  readonly places: readonly Length[];
}

/** Half waves along the height that are tried. */
const mostWaves = 4;
/** Half waves across, for each pair and for each height that the panel is long; what is left falls with the third power. */
const acrossWaves = 60;

/** So many times as long as wide: beyond, the half waves along it are too many to try. */
const longest = 1000;

/**
 * The force of each pair at which a panel on four hinged edges buckles.
 *
 * @example linePressedBuckling(linePressedBuckling.read({ length: "1 m", width: "1 m", places: ["0.5 m"],
 *   stiffness: { alongX: "1000 N·m", alongY: "1000 N·m", coupling: "300 N·m", twist: "350 N·m" } })) // 18.82 kN
 */
export const linePressedBuckling: Formula<LinePressedPlate, Force> = formula<LinePressedPlate, Force>({
  id: "plate.line.buckling",
  title: "Force at which a panel buckles under pairs of forces on its edges",
  equation: String.raw`\frac1{P}=\max_n\ \lambda_{max}\left[\frac{2k^2}{a}\sum_m\frac{\sin\frac{m\pi x_i}{a}\,\sin\frac{m\pi x_j}{a}}{D_x\frac{m^4\pi^4}{a^4}+2(D_1+2D_{xy})\frac{m^2\pi^2}{a^2}k^2+D_yk^4}\right],\quad k=\frac{n\pi}{b}`,
  inputs: {
    ...shapeSymbols,
    places: { symbol: "x_i", kind: listOf(Length), meaning: "where the pairs press, from the left edge" },
  },
  result: { symbol: "P", kind: Force, meaning: "force of each pair at which it buckles" },
  source: [cite("elastic-stability", "art. 9.10, plate pressed by two opposite forces")],
  validity:
    "Thin and flat, its four edges held and free to turn. The force is taken to stay in its line from edge to edge, as the book takes it.",
  refuse: (inputs) => [
    ...shapeFaults(inputs),
    ...(inputs.length <= longest * inputs.width ? [] : [`length may be ${longest} times the width at most`]),
    ...(inputs.places.length > 0 && inputs.places.every((one) => one > 0 && one < inputs.length)
      ? []
      : [`places must be one or more within the panel, got ${inputs.places.length}`]),
  ],
  compute: (inputs) => {
    const waves = Array.from({ length: mostWaves }, (_, n) => ((n + 1) * Math.PI) / inputs.width);
    return 1 / Math.max(...waves.map((k) => softest(inputs, k)));
  },
});

/** Largest give of the lines for one number of half waves along the height. */
function softest({ length, width, stiffness, places }: LinePressedPlate, k: number): number {
  const { alongX, alongY, coupling, twist } = stiffness;
  const count = acrossWaves * Math.max(places.length, Math.ceil(length / width));
  const waves = Array.from({ length: count }, (_, m) => {
    const across = ((m + 1) * Math.PI) / length;
    const holds = alongX * across ** 4 + 2 * (coupling + 2 * twist) * across ** 2 * k ** 2 + alongY * k ** 4;
    return { gives: (2 * k ** 2) / length / holds, at: places.map((x) => Math.sin(across * x)) };
  });
  const size = places.length;
  const matrix = Float64Array.from({ length: size * size }, (_, place) => {
    const [i, j] = [Math.floor(place / size), place % size];
    return waves.reduce((sum, { gives, at }) => sum + gives * (at[i] ?? 0) * (at[j] ?? 0), 0);
  });
  return Math.max(...symmetricEigen(matrix, size).values);
}

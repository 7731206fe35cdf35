/** A ruler printed with a drawing, to be measured before anything is marked from it. */
import type { Case } from "../design/index.js";
import type { Point2 } from "../shape/index.js";
import { openPath, type PlotMark, words } from "./plot.js";

/** Height of the band that the ruler takes with its words, mm. */
export const rulerHeight = 12;

/** The ruler, its left end on the line below at the place given: 100 mm, or 4 in where the case is in inches. */
export function rulerMarks(units: Case["units"], { x, y }: Point2): readonly PlotMark[] {
  const { step, count, long, said } =
    units === "inch"
      ? { step: 25.4 / 4, count: 16, long: 4, said: "4 in" }
      : { step: 5, count: 20, long: 2, said: "100 mm" };
  const whole = step * count;
  const ticks = Array.from({ length: count + 1 }, (_, i) => {
    const at = x + i * step;
    return openPath(
      [
        { x: at, y },
        { x: at, y: y + (i % long === 0 ? 5 : 3) },
      ],
      "NOTES",
    );
  });
  return [
    openPath(
      [
        { x, y },
        { x: x + whole, y },
      ],
      "NOTES",
    ),
    ...ticks,
    words(
      `This ruler measures ${said} on paper. If not: print at 100 %, never "fit to page".`,
      { x, y: y + 6.5 },
      3.3,
    ),
  ];
}

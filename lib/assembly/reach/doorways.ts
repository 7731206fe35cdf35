/** Where an arm may go through an opening. */
import { boundsOf, circleOf, distanceTo, type Point2, type Shape } from "../../shape/index.js";

/** Places in an opening stand no further apart than this, m. */
const spacing = 0.08;

/**
 * Places at which a round arm may go through an opening, spread over it; none where it is too thick.
 *
 * @param diameter of the arm, m
 */
export function doorwaysIn(opening: Shape, diameter: number): readonly Point2[] {
  const radius = diameter / 2;
  const round = circleOf(opening);
  if (round && round.radius < radius) return [];
  const { left, bottom, width, height } = boundsOf(opening);
  const spread = (from: number, size: number): readonly number[] => {
    const room = size - diameter;
    if (room < -1e-9) return [];
    // An even count, so that the middle is one of them: it fits if any place does.
    const count = 2 * Math.ceil(Math.max(0, room) / (2 * spacing));
    return Array.from(
      { length: count + 1 },
      (_, i) => from + radius + (count === 0 ? room / 2 : (room * i) / count),
    );
  };
  return spread(left, width)
    .flatMap((x) => spread(bottom, height).map((y) => ({ x, y })))
    .filter((point) => distanceTo(opening, point) <= 1e-6 - radius);
}

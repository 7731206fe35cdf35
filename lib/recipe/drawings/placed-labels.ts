/** Words put beside what they name, so that no two lie over each other. */
import type { DrawingMark, TextMark } from "../../page/index.js";
import type { Box2, Point2 } from "../../shape/index.js";

/** Mean width of a letter as a share of its height; a little more than a common sans serif takes. */
const letterWidth = 0.6;

/** Words that look for a place. */
export interface WantedLabel {
  /** What is written. */
  readonly text: string;
  /** Where its middle would best be, mm. */
  readonly at: Point2;
}

/** The room that a text of a drawing takes, mm. */
export function textBox({ at, text, anchor = "start", turn }: TextMark, letter: number): Box2 {
  const long = text.length * letterWidth * letter;
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  return turn === 90
    ? { left: at.x - 0.85 * letter, bottom: at.y - back, width: 1.1 * letter, height: long }
    : { left: at.x - back, bottom: at.y - 0.25 * letter, width: long, height: 1.1 * letter };
}

/** Whether two boxes share room. */
export function boxesMeet(one: Box2, other: Box2): boolean {
  return (
    one.left < other.left + other.width &&
    other.left < one.left + one.width &&
    one.bottom < other.bottom + other.height &&
    other.bottom < one.bottom + one.height
  );
}

/** How many rings of places are tried round the best one. */
const rings = 60;

/**
 * Marks of the labels, each at the free place nearest to the one it wants, with a thin line back where that is far.
 *
 * @param taken room that no label may take, mm
 */
export function placedLabels(
  wanted: readonly WantedLabel[],
  taken: readonly Box2[],
  letter: number,
): readonly DrawingMark[] {
  const boxes = [...taken];
  return wanted.flatMap(({ text, at }): DrawingMark[] => {
    const marked = (place: Point2): TextMark => ({
      mark: "text",
      at: { x: place.x, y: place.y - 0.35 * letter },
      text,
      anchor: "middle",
    });
    const free = placesRound(at, letter).find((place) => {
      const box = textBox(marked(place), letter);
      return boxes.every((other) => !boxesMeet(box, other));
    });
    const place = free ?? at;
    boxes.push(textBox(marked(place), letter));
    const far = Math.hypot(place.x - at.x, place.y - at.y) > 1.6 * letter;
    return [...(far ? [{ mark: "line", role: "thin", points: [at, place] } as const] : []), marked(place)];
  });
}

/** The place itself, then eight places on each ring round it. */
function placesRound({ x, y }: Point2, letter: number): readonly Point2[] {
  const round = Array.from({ length: rings }, (_, ring) =>
    Array.from({ length: 8 }, (__, i) => {
      const [angle, radius] = [(Math.PI / 4) * i, 0.6 * letter * (ring + 1)];
      return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
    }),
  );
  return [{ x, y }, ...round.flat()];
}

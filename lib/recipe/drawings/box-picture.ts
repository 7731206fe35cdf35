/** A small picture of the stacked boxes with one face shaded, seen from a side from which that face is seen. */
import type { Face, SectionPart } from "../../design/index.js";
import type { DrawingMark } from "../../page/index.js";
import type { Box2, Point2 } from "../../shape/index.js";

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** From which side one looks, so that the face is seen. */
interface Look {
  /** 1 where the right side is seen, -1 where the left is. */
  readonly right: 1 | -1;
  /** 1 where the front is seen, -1 where the back is. */
  readonly front: 1 | -1;
  /** 1 where the top is seen, -1 where the bottom is. */
  readonly top: 1 | -1;
}

function lookAt(face: Face): Look {
  return {
    right: face === "left" ? -1 : 1,
    front: face === "back" ? -1 : 1,
    top: face === "bottom" ? -1 : 1,
  };
}

/** Where one stands to see it so. */
export function lookWords(face: Face): string {
  const { front, right, top } = lookAt(face);
  return `${front > 0 ? "front" : "back"} ${right > 0 ? "right" : "left"}${top > 0 ? "" : ", from below"}`;
}

/** A point of the case on paper: turned by 45 degrees and seen from 30 degrees above, or below. */
function onPaper({ x, y, z }: Corner, { right, front, top }: Look): Point2 {
  const across = front * x + right * y;
  const away = (front * y - right * x) * top;
  return { x: Math.SQRT1_2 * across, y: 0.354 * away + 0.866 * z };
}

/** The marks of the picture, as large as fits into a frame. A top or a bottom is shown on its own box: another may hide it. */
export function boxPicture(
  sections: readonly SectionPart[],
  shaded: { readonly section: string; readonly face: Face },
  frame: Box2,
): readonly DrawingMark[] {
  const look = lookAt(shaded.face);
  const level = shaded.face === "top" || shaded.face === "bottom";
  const order = level ? sections.filter(({ name }) => name === shaded.section) : sections;
  const quads = order.flatMap(({ name, outside, open }) =>
    seenFaces(look).flatMap((face) => {
      const isShaded = name === shaded.section && face === shaded.face;
      if (open.includes(face) && !isShaded) return [];
      return [{ isShaded, points: cornersOn(face, outside).map((corner) => onPaper(corner, look)) }];
    }),
  );
  const all = quads.flatMap(({ points }) => points);
  const [left, right] = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ x }) => x))];
  const [low, high] = [Math.min(...all.map(({ y }) => y)), Math.max(...all.map(({ y }) => y))];
  const scale = Math.min(frame.width / (right - left), frame.height / (high - low));
  const shifted = ({ x, y }: Point2): Point2 => ({
    x: frame.left + frame.width / 2 + scale * (x - (left + right) / 2),
    y: frame.bottom + frame.height / 2 + scale * (y - (low + high) / 2),
  });
  return quads.map(({ isShaded, points }) => ({
    mark: "polygon",
    role: isShaded ? "datum" : "opening",
    points: points.map(shifted),
  }));
}

function seenFaces({ front, right, top }: Look): readonly Face[] {
  return [front > 0 ? "front" : "back", right > 0 ? "right" : "left", top > 0 ? "top" : "bottom"];
}

/** The four corners of a face of a box, in order round it. */
function cornersOn(face: Face, { low, size }: SectionPart["outside"]): readonly Corner[] {
  const at = (x: 0 | 1, y: 0 | 1, z: 0 | 1): Corner => ({
    x: low.x + x * size.x,
    y: low.y + y * size.y,
    z: low.z + z * size.z,
  });
  const round = (put: (a: 0 | 1, b: 0 | 1) => Corner): readonly Corner[] => [
    put(0, 0),
    put(1, 0),
    put(1, 1),
    put(0, 1),
  ];
  switch (face) {
    case "front":
    case "back":
      return round((a, b) => at(a, face === "front" ? 0 : 1, b));
    case "left":
    case "right":
      return round((a, b) => at(face === "left" ? 0 : 1, a, b));
    case "bottom":
    case "top":
      return round((a, b) => at(a, b, face === "bottom" ? 0 : 1));
  }
}

/** An outline as text: a rectangle, its corners sharp or round, or corners joined by straight sides. */
import { type Kind, Length, listOf, type Part, recordOf, type ShowStyle } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { polygon, rectangle } from "./makers.js";
import type { Point2 } from "./point.js";
import { cornersOf, roundedBoxOf } from "./seen.js";
import { type Box2, boundsOf, type Shape } from "./shape.js";

type Lengths<Fields> = { readonly [Field in keyof Fields]: Length };

const box = recordOf<Lengths<Box2>>("opening", {
  left: Length,
  bottom: Length,
  width: Length,
  height: Length,
});
const roundedBox = recordOf<Lengths<Box2 & { readonly cornerRadius: number }>>("opening", {
  left: Length,
  bottom: Length,
  width: Length,
  height: Length,
  cornerRadius: Length,
});
const corner = recordOf<Point2<Length>>("corner", { x: Length, y: Length });
const drawn = recordOf<{ readonly corners: readonly Point2<Length>[] }>("opening", {
  corners: listOf(corner),
});

/** An outline in a table of checks or a worked line: a round one has a corner radius of half its width and height. */
export const outlineKind: Kind<Shape> = {
  name: "opening",
  expected: `${roundedBox.expected}; or with corners, each x, y`,
  fault: (value) => (isOutline(value) ? undefined : "an outline of finite size"),
  read: (value) => {
    if (typeof value === "object" && value !== null && "corners" in value)
      return polygon(drawn.read(value).corners);
    const { cornerRadius, ...sides } = roundedBox.read(value);
    refuseUnlessCut(sides, cornerRadius);
    return rectangle(sides, cornerRadius);
  },
  show: (shape, style) => written(shape).show(style),
  fields: (shape) => written(shape).parts(),
};

function isOutline(value: unknown): boolean {
  if (typeof value !== "object" || value === null || !("sides" in value) || !Array.isArray(value.sides)) {
    return false;
  }
  const numbersIn = (part: unknown): boolean =>
    typeof part === "object" && part !== null
      ? Object.values(part).every(numbersIn)
      : typeof part === "string" || Number.isFinite(part);
  return value.sides.length > 0 && value.sides.every((side) => typeof side === "object" && numbersIn(side));
}

/** A rectangle without extent, or with corners too round for it, is told with the lengths that were read. */
function refuseUnlessCut({ width, height }: Lengths<Box2>, cornerRadius: Length): void {
  for (const [side, size] of Object.entries({ width, height }))
    if (!(size > 0)) throw new Refusal(`${side} must be positive, got ${Length.show(size)}`);
  const most = Length.si(Math.min(width, height) / 2);
  if (!(cornerRadius >= 0 && cornerRadius <= most * (1 + 1e-9)))
    throw new Refusal(
      `corner radius must be from 0 to ${Length.show(most)}, half its shorter side, got ${Length.show(cornerRadius)}`,
    );
}

/** A shape's own words and numbers: those of its rectangle, of its corners, or of the rectangle around it. */
function written(shape: Shape): {
  readonly show: (style?: ShowStyle) => string;
  readonly parts: () => readonly Part[];
} {
  const round = roundedBoxOf(shape);
  if (round) return as(roundedBox, { ...lengths(round), cornerRadius: Length.si(round.radius) });
  const corners = cornersOf(shape)?.map(({ x, y }) => ({ x: Length.si(x), y: Length.si(y) }));
  if (corners)
    return {
      show: (style) => drawn.show({ corners }, style),
      parts: () => corners.flatMap((at) => corner.fields?.(at) ?? []),
    };
  const around = as(box, lengths(boundsOf(shape)));
  return { ...around, show: (style) => `curved outline within ${around.show(style)}` };
}

function as<T>(
  kind: Kind<T>,
  value: T,
): { readonly show: (style?: ShowStyle) => string; readonly parts: () => readonly Part[] } {
  return { show: (style) => kind.show(value, style), parts: () => kind.fields?.(value) ?? [] };
}

function lengths({ left, bottom, width, height }: Box2): Lengths<Box2> {
  return {
    left: Length.si(left),
    bottom: Length.si(bottom),
    width: Length.si(width),
    height: Length.si(height),
  };
}

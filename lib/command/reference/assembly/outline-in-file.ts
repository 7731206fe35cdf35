/** Outlines and numbers as files of assembly cases have them, in mm. */
import type { Vector3 } from "../../../algebra/matrix3.js";
import {
  circle,
  ellipse,
  mirrored,
  type Point2,
  polygon,
  rectangle,
  type Shape,
  slot,
} from "../../../shape/index.js";
import { type FileCase, nameOf, numberOf } from "../cutting-cases.js";

const mm = 1e-3;

/**
 * A list of a case.
 *
 * @throws TypeError naming case and field when it is none
 */
export function listOf(one: FileCase, field: string): readonly unknown[] {
  const value = one[field];
  if (!Array.isArray(value))
    throw new TypeError(`${nameOf(one)}: expected a list in "${field}", got ${JSON.stringify(value)}`);
  return value;
}

/**
 * What the case expects.
 *
 * @throws TypeError naming case and field when it is no record
 */
export function expectedOf(one: FileCase): FileCase {
  const { expect } = one;
  if (typeof expect !== "object" || expect === null)
    throw new TypeError(`${nameOf(one)}: expected a record in "expect", got ${JSON.stringify(expect)}`);
  return { name: nameOf(one), ...expect };
}

/**
 * Numbers of a list, in mm, as m.
 *
 * @throws TypeError naming what they are of when they are not so many numbers
 */
export function metresOf(value: unknown, count: number, what: string): readonly number[] {
  const list: readonly unknown[] = Array.isArray(value) ? value : [];
  if (list.length !== count || !list.every((one) => typeof one === "number" && Number.isFinite(one)))
    throw new TypeError(`${what}: expected ${count} numbers in mm, got ${JSON.stringify(value)}`);
  return list.map((one) => Number(one) * mm);
}

/** Three of them. */
export function vectorOf(value: unknown, what: string): Vector3 {
  const [x = 0, y = 0, z = 0] = metresOf(value, 3, what);
  return [x, y, z];
}

const makers: Readonly<Record<string, (kind: FileCase) => Shape>> = {
  rectangle: (kind) => rectangle(boxOf(kind), numberOf(kind, "radius", 0) * mm),
  slot: (kind) => slot(boxOf(kind)),
  ellipse: (kind) => ellipse(boxOf(kind)),
  circle: (kind) =>
    circle(
      { x: numberOf(kind, "x", 0) * mm, y: numberOf(kind, "y", 0) * mm },
      (numberOf(kind, "diameter") * mm) / 2,
    ),
  polygon: (kind) => polygon(cornersIn(kind)),
};

/**
 * The outline of a record: { "rectangle": { "width", "height" } }, a slot, an ellipse, a circle or a polygon.
 *
 * @throws TypeError naming what it is of when it is none of these
 */
export function outlineOf(value: unknown, what: string): Shape {
  const [entry] = Object.entries((value ?? {}) as Readonly<Record<string, unknown>>);
  const maker = entry && makers[entry[0]];
  if (!maker || typeof entry[1] !== "object")
    throw new TypeError(
      `${what}: expected an outline among ${Object.keys(makers).join(", ")}, got ${JSON.stringify(value)}`,
    );
  return maker({ name: what, ...entry[1] });
}

function boxOf(kind: FileCase) {
  const [width, height] = [numberOf(kind, "width") * mm, numberOf(kind, "height") * mm];
  return { left: numberOf(kind, "x", 0) * mm, bottom: numberOf(kind, "y", 0) * mm, width, height };
}

function cornersIn(kind: FileCase): readonly Point2[] {
  return listOf(kind, "corners").map((corner) => {
    const [x = 0, y = 0] = metresOf(corner, 2, nameOf(kind));
    return { x, y };
  });
}

/** The outline seen from the other side. */
export function seenFromBehind(shape: Shape): Shape {
  return mirrored(shape, 0);
}

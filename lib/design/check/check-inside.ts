/** Shelves and contents: inside their section, none in another's place, each standing where it is held. */
import type { CaseBody, Content, Section, Shelf } from "../case.js";
import { layoutNamed } from "../derive/hardware-spots.js";
import type { LaidStiffener } from "../derive/laid-stiffeners.js";
import type { CasePlan } from "../derive/plan.js";
import { laidBox } from "../derive/stiffeners.js";
import type { Point } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Ruler } from "../ruler.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import type { Fault } from "./fault.js";

/** A box by the section's inside. */
interface Body {
  /** What it is called. */
  readonly name: string;
  /** Where the case file says it. */
  readonly path: CasePath;
  /** The section it is in. */
  readonly section: string;
  /** Its lower left front corner, in metres. */
  readonly low: Readonly<Record<Axis, number>>;
  /** Its size along each axis, in metres. */
  readonly size: Readonly<Record<Axis, number>>;
}

type Axis = keyof Point;
const axes: readonly Axis[] = ["x", "y", "z"];

/** Measured places are rounded: this much counts as touching. */
const rounding = 0.003;

/** The faults of shelves. */
export function checkShelves(
  { shelves, sections }: CaseBody,
  { layouts, stiffeners }: CasePlan,
  stock: Stock,
  ruler: Ruler,
): Fault[] {
  const bodies = shelves.map((shelf) => shelfBody(shelf, stock));
  const ofBodies = bodies.flatMap((body, i) => [
    ...checkWithin(body, sections, ruler),
    ...checkClear(body, bodies.slice(0, i)),
  ]);
  const ledges = shelves.flatMap((shelf) => {
    const from = layoutNamed(layouts, shelf.section).insideLow;
    const own = stiffeners.filter(
      ({ stiffener: { name, section } }) => section === shelf.section && shelf.restsOn?.includes(name),
    );
    return own.flatMap((ledge) => checkLedge(shelf, ledge, from, ruler));
  });
  return [...ofBodies, ...ledges];
}

/** A ledge bears a shelf where it ends right under it. */
function checkLedge(shelf: Shelf, ledge: LaidStiffener, from: Point, ruler: Ruler): Fault[] {
  const path = ["shelves", shelf.name, "rests on"];
  const { name } = ledge.stiffener;
  const { low, size } = laidBox(ledge);
  const top = low.z + size.z - from.z;
  if (Math.abs(top - shelf.at.z) > rounding)
    return [
      {
        path,
        value: ruler(top),
        expected: `the top of "${name}" at ${ruler(shelf.at.z)}, the underside of the shelf`,
      },
    ];
  const covers = (axis: "x" | "y", length: number): boolean =>
    low[axis] - from[axis] < shelf.at[axis] + length - rounding &&
    low[axis] - from[axis] + size[axis] > shelf.at[axis] + rounding;
  return covers("x", shelf.width) && covers("y", shelf.depth)
    ? []
    : [{ path, expected: `"${name}" under the shelf, not beside it` }];
}

/** The faults of contents. */
export function checkContents(description: CaseBody, stock: Stock, ruler: Ruler): Fault[] {
  const { contents, shelves, sections } = description;
  const shelfBodies = shelves.map((shelf) => shelfBody(shelf, stock));
  const bodies = contents.map(contentBody);
  return contents.flatMap((content, i) => {
    const body = contentBody(content);
    return [
      ...checkWithin(body, sections, ruler),
      ...checkClear(body, [...shelfBodies, ...bodies.slice(0, i)]),
      ...checkStands(content, shelfBodies, ruler),
      ...checkHangs(content, sections, ruler),
    ];
  });
}

function shelfBody({ name, section, sheet, at, width, depth }: Shelf, stock: Stock): Body {
  const { thickness } = stockNamed(stock, "sheets", sheet);
  return { name, path: ["shelves", name], section, low: at, size: { x: width, y: depth, z: thickness } };
}

function contentBody({ name, section, at, size }: Content): Body {
  return { name, path: ["contents", name], section, low: at, size };
}

function checkWithin(
  { path, section, low, size }: Body,
  sections: readonly Section[],
  ruler: Ruler,
): Fault[] {
  const inside = sections.find(({ name }) => name === section)?.inside;
  if (!inside) return [];
  const room = { x: inside.width, y: inside.depth, z: inside.height };
  const past = { x: "right", y: "back", z: "top" };
  return axes
    .filter((axis) => low[axis] + size[axis] > room[axis] + rounding)
    .map((axis) => ({
      path: [...path, "at"],
      value: ruler(low[axis] + size[axis]),
      expected: `its ${past[axis]} at most ${ruler(room[axis])}, the inside of section ${section}`,
    }));
}

function checkClear(body: Body, others: readonly Body[]): Fault[] {
  return others
    .filter((other) => other.section === body.section && overlap(body, other))
    .map(({ name }) => ({ path: [...body.path, "at"], expected: `a place that "${name}" does not take up` }));
}

function overlap(one: Body, other: Body): boolean {
  return axes.every(
    (axis) =>
      one.low[axis] + one.size[axis] > other.low[axis] + rounding &&
      other.low[axis] + other.size[axis] > one.low[axis] + rounding,
  );
}

/** What is held by a shelf or the floor stands on it, with its middle over it. */
function checkStands({ name, at, size, held }: Content, shelves: readonly Body[], ruler: Ruler): Fault[] {
  const path = ["contents", name, "at"];
  if (held.by === "floor" || (held.by === "cradle" && held.shelf === undefined)) {
    return at.z <= rounding ? [] : [{ path, value: ruler(at.z), expected: "up 0, since the floor holds it" }];
  }
  if (held.by !== "shelf" && held.by !== "cradle") return [];
  const shelf = shelves.find((body) => body.name === held.shelf);
  if (!shelf) return [];
  const top = shelf.low.z + shelf.size.z;
  const onIt = (["x", "y"] as const).every((axis) => {
    const middle = at[axis] + size[axis] / 2 - shelf.low[axis];
    return middle >= 0 && middle <= shelf.size[axis];
  });
  return [
    ...(Math.abs(at.z - top) <= rounding
      ? []
      : [{ path, value: ruler(at.z), expected: `up ${ruler(top)}, the top of "${held.shelf}"` }]),
    ...(onIt ? [] : [{ path, expected: `a place over "${held.shelf}", which holds it` }]),
  ];
}

/** What hangs does so from the top: its size counts chain or bracket in. */
function checkHangs(
  { name, section, at, size, held }: Content,
  sections: readonly Section[],
  ruler: Ruler,
): Fault[] {
  const height = sections.find((one) => one.name === section)?.inside.height;
  if (held.by !== "hung" || height === undefined) return [];
  const top = at.z + size.z;
  if (Math.abs(top - height) <= rounding) return [];
  const expected = `its top at ${ruler(height)}, where it hangs: count chain or bracket into its size`;
  return [{ path: ["contents", name, "at"], value: ruler(top), expected }];
}

/** The surfaces of a prism that face the eye, on the page: areas to fill and lines to draw. */
import { scalarProduct, type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { Solid } from "../../assembly/index.js";
import type { Point2 } from "../../shape/index.js";
import { type Camera, projected } from "./camera.js";
import type { Coat } from "./order.js";
import { type Prism, placeOf, type Ring } from "./prism.js";

/** One surface on the page, y up, in metres. */
export interface Surface {
  /** Closed paths; what lies in an even number of them is not filled. */
  readonly areas: readonly (readonly Point2[])[];
  /** Lines to draw; undefined where they are the paths themselves. */
  readonly lines: readonly (readonly Point2[])[] | undefined;
  /** How bright, from 0 to 1. */
  readonly light: number;
}

/** A corner that turns less than this is a place on an arc: no edge is drawn along the normal there. */
const smooth = Math.cos(Math.PI / 6);

/** The surfaces of a coat in the order in which they are painted. */
export function surfacesOf<S extends Solid>({ prism, part }: Coat<S>, camera: Camera): readonly Surface[] {
  const [outline, ...holes] = prism.rings;
  if (!outline) return [];
  const facing = scalarProduct(prism.box.axes[2], camera.toEye);
  const inner =
    part === "outside" || Math.abs(facing) < 1e-9
      ? []
      : holes.flatMap((hole) => wallsOf(prism, hole, -1, camera));
  if (part === "holes") return inner;
  return [...inner, ...wallsOf(prism, outline, 1, camera), ...capOf(prism, facing, camera)];
}

function capOf(prism: Prism, facing: number, camera: Camera): readonly Surface[] {
  const [atStart, atEnd] = prism.ends;
  if (Math.abs(facing) < 1e-9 || !(facing > 0 ? atEnd : atStart)) return [];
  const out = facing > 0 ? prism.to : prism.from;
  const areas = prism.rings.map(({ points }) =>
    points.map((point) => projected(camera, placeOf(prism, point, out))),
  );
  const whole = prism.rings.every(({ real }) => real.every(Boolean));
  const lines = areas.flatMap((points, i) => realLines(points, prism.rings[i]?.real ?? []));
  const normal = vector3((i) => Math.sign(facing) * prism.box.axes[2][i]);
  return [{ areas, lines: whole ? undefined : lines, light: lightOn(normal, camera) }];
}

/** The sides of a path that are lines of the solid, joined where they follow each other. */
function realLines(points: readonly Point2[], real: readonly boolean[]): readonly (readonly Point2[])[] {
  const lines: Point2[][] = [];
  for (const [i, from] of points.entries()) {
    if (!real[i]) continue;
    const to = points[(i + 1) % points.length] ?? from;
    if (i > 0 && real[i - 1]) lines.at(-1)?.push(to);
    else lines.push([from, to]);
  }
  return lines;
}

/** Every edge of a prism on the page, hidden or not: its rims at both ends, and its edges along the normal. */
export function edgesOf(prism: Prism, camera: Camera): readonly (readonly Point2[])[] {
  return prism.rings.flatMap((ring) => {
    const rims = [prism.from, prism.to].map((out) =>
      ring.points.map((point) => projected(camera, placeOf(prism, point, out))),
    );
    const [near = [], far = []] = rims;
    const sharp = near.length <= 8 ? near.map((point, i) => [point, far[i] ?? point]) : [];
    return [...rims.map((points) => [...points, ...points.slice(0, 1)]), ...sharp];
  });
}

/** A wall of a prism: one side of its outline along its depth. */
interface Wall {
  /** Its four corners on the page: the side at the start, then back along the end. */
  readonly corners: readonly [Point2, Point2, Point2, Point2];
  /** Its unit normal, away from the solid. */
  readonly normal: Vector3;
  /** Whether it faces the eye and is a surface of the solid. */
  readonly shown: boolean;
}

/** The walls along a ring that face the eye, those of an arc as one surface. */
function wallsOf(prism: Prism, ring: Ring, outwards: 1 | -1, camera: Camera): readonly Surface[] {
  const walls = ring.points.map((_, i) => wallOf(prism, ring, i, outwards, camera));
  const surfaces: Surface[] = [];
  const count = walls.length;
  const hard = (i: number): boolean => {
    const [before, here] = [walls[(i + count - 1) % count], walls[i % count]];
    return !before?.shown || !here?.shown || scalarProduct(before.normal, here.normal) < smooth;
  };
  const start = Math.max(
    0,
    walls.findIndex((_, i) => hard(i)),
  );
  for (let n = 0; n < count; ) {
    const run: Wall[] = [];
    do {
      run.push(walls[(start + n) % count] as Wall);
      n += 1;
    } while (n < count && !hard(start + n));
    if (run[0]?.shown) surfaces.push(...surfacesOfRun(run, prism.ends, camera));
  }
  return surfaces;
}

function surfacesOfRun(run: readonly Wall[], ends: Prism["ends"], camera: Camera): readonly Surface[] {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) return [];
  const light = lightOn(run[Math.floor(run.length / 2)]?.normal ?? first.normal, camera);
  if (run.length === 1 && ends[0] && ends[1]) return [{ areas: [first.corners], lines: undefined, light }];
  const near = [...run.map(({ corners }) => corners[0]), last.corners[1]];
  const far = [...run.map(({ corners }) => corners[3]), last.corners[2]];
  const lines = [
    ...(ends[0] ? [near] : []),
    ...(ends[1] ? [far] : []),
    [first.corners[0], first.corners[3]],
    [last.corners[1], last.corners[2]],
  ];
  return [{ areas: [[...near, ...far.reverse()]], lines, light }];
}

function wallOf(prism: Prism, { points, real }: Ring, i: number, outwards: 1 | -1, camera: Camera): Wall {
  const [from, to] = [points[i], points[(i + 1) % points.length]] as [Point2, Point2];
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const sign = (outwards * windingOf(points)) / length;
  const [x, y] = [sign * (to.y - from.y), -sign * (to.x - from.x)];
  const [first, second] = prism.box.axes;
  const normal = vector3((axis) => x * first[axis] + y * second[axis]);
  const at = (point: Point2, out: number): Point2 => projected(camera, placeOf(prism, point, out));
  return {
    corners: [at(from, prism.from), at(to, prism.from), at(to, prism.to), at(from, prism.to)],
    normal,
    shown: (real[i] ?? true) && scalarProduct(normal, camera.toEye) > 1e-9,
  };
}

/** 1 where a path runs counterclockwise, else -1. */
function windingOf(points: readonly Point2[]): 1 | -1 {
  let twice = 0;
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length] ?? a;
    twice += a.x * b.y - b.x * a.y;
  }
  return twice < 0 ? -1 : 1;
}

/** Light falls from above, from behind the eye's left shoulder. */
function lightOn(normal: Vector3, { right, up, toEye }: Camera): number {
  const from = vector3((i) => 0.35 * toEye[i] - 0.5 * right[i] + 0.8 * up[i]);
  return Math.min(1, Math.max(0, 0.5 + scalarProduct(normal, from) / 2));
}

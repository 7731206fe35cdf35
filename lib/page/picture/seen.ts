/** What is left to see of surfaces painted over each other, on a grid of points as fine as a small screen. */
import type { Point2 } from "../../shape/index.js";

/** What is seen of a part is a sliver while no point of it is farther from its edge than this, in points of the grid. */
const sliver = 5;

/** Surfaces painted on a grid, numbered from 0 in their order. */
export class SeenGrid {
  /** Points along x. */
  readonly width: number;
  readonly #height: number;
  /** The last surface painted at each point, plus 1; 0 where there is none. */
  readonly #owner: Int32Array;

  constructor(width: number, height: number) {
    this.width = Math.ceil(width);
    this.#height = Math.ceil(height);
    this.#owner = new Int32Array(this.width * this.#height);
  }

  /** Paints a surface: what lies in an odd number of its paths. */
  paint(surface: number, areas: readonly (readonly Point2[])[]): void {
    const rows = rowsOf(areas, this.#height);
    const sides = sidesOf(areas);
    const cuts = new Float64Array(sides.length / 4);
    for (let row = rows.from; row < rows.to; row++) {
      const count = crossingsAt(sides, row + 0.5, cuts);
      for (let i = 0; i + 1 < count; i += 2) {
        const from = Math.max(0, Math.ceil((cuts[i] ?? 0) - 0.5));
        const to = Math.min(this.width, Math.ceil((cuts[i + 1] ?? 0) - 0.5));
        if (to > from) this.#owner.fill(surface + 1, row * this.width + from, row * this.width + to);
      }
    }
  }

  /** The surfaces that are seen, each with how many points. */
  seen(): ReadonlyMap<number, number> {
    const seen = new Map<number, number>();
    const owner = this.#owner;
    // Run by run: neighbours mostly have one owner.
    for (let from = 0, to = 0; from < owner.length; from = to) {
      const one = owner[from] as number;
      while (to < owner.length && owner[to] === one) to++;
      if (one > 0) seen.set(one - 1, (seen.get(one - 1) ?? 0) + to - from);
    }
    return seen;
  }

  /** Whether every corner and every middle of a side of some paths lies under a later surface. */
  covered(surface: number, areas: readonly (readonly Point2[])[]): boolean {
    return areas.every((points) =>
      points.every((a, i) => {
        const b = points[(i + 1) % points.length] ?? a;
        return (
          this.#ownerAt(a) > surface + 1 &&
          this.#ownerAt({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }) > surface + 1
        );
      }),
    );
  }

  #ownerAt({ x, y }: Point2): number {
    const [column, row] = [Math.floor(x), Math.floor(y)];
    if (column < 0 || row < 0 || column >= this.width || row >= this.#height) return 0;
    return this.#owner[row * this.width + column] ?? 0;
  }

  /**
   * The roomiest point of what is seen of some surfaces, off some places: the one farthest from any edge; undefined where
   * no more than slivers are seen.
   *
   * @param off places to stay clear of, by this distance
   */
  roomiest(of: ReadonlySet<number>, off: readonly Point2[], clear: number): Point2 | undefined {
    const [width, height] = [this.width, this.#height];
    const room = new Float32Array(width * height);
    for (let i = 0; i < room.length; i++) room[i] = of.has((this.#owner[i] ?? 0) - 1) ? 1e6 : 0;
    for (const { x, y } of off) emptyDisc(room, width, height, { x, y }, clear);
    spreadDistance(room, width, height);
    let best = 0;
    for (let i = 1; i < room.length; i++) if ((room[i] ?? 0) > (room[best] ?? 0)) best = i;
    return (room[best] ?? 0) > sliver
      ? { x: (best % width) + 0.5, y: Math.floor(best / width) + 0.5 }
      : undefined;
  }
}

function rowsOf(areas: readonly (readonly Point2[])[], height: number) {
  let [low, high] = [Infinity, -Infinity];
  for (const points of areas)
    for (const { y } of points) {
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
  return { from: Math.max(0, Math.floor(low)), to: Math.min(height, Math.ceil(high)) };
}

/** The sides of some paths, one after another: x and y of both ends. */
function sidesOf(areas: readonly (readonly Point2[])[]): Float64Array {
  const sides = new Float64Array(4 * areas.reduce((sum, points) => sum + points.length, 0));
  let at = 0;
  for (const points of areas) {
    let before = points.at(-1);
    for (const point of points) {
      const { x, y } = before ?? point;
      sides[at++] = x;
      sides[at++] = y;
      sides[at++] = point.x;
      sides[at++] = point.y;
      before = point;
    }
  }
  return sides;
}

/** Where sides cross a level, into a list from left to right; returns how many do. */
function crossingsAt(sides: Float64Array, level: number, cuts: Float64Array): number {
  let count = 0;
  for (let i = 0; i < sides.length; i += 4) {
    const [ay, by] = [sides[i + 1] as number, sides[i + 3] as number];
    if (ay > level === by > level) continue;
    const [ax, bx] = [sides[i] as number, sides[i + 2] as number];
    const cut = ax + ((bx - ax) * (level - ay)) / (by - ay);
    let place = count++;
    for (; place > 0 && (cuts[place - 1] as number) > cut; place--) cuts[place] = cuts[place - 1] as number;
    cuts[place] = cut;
  }
  return count;
}

function emptyDisc(
  room: Float32Array,
  width: number,
  height: number,
  { x, y }: Point2,
  radius: number,
): void {
  for (let row = Math.max(0, Math.floor(y - radius)); row < Math.min(height, y + radius); row++)
    for (let column = Math.max(0, Math.floor(x - radius)); column < Math.min(width, x + radius); column++)
      if (Math.hypot(column - x, row - y) < radius) room[row * width + column] = 0;
}

/** The distance of every point from the nearest empty one or the rim, by two sweeps over neighbours. */
function spreadDistance(room: Float32Array, width: number, height: number): void {
  const at = (column: number, row: number): number =>
    column < 0 || row < 0 || column >= width || row >= height ? 0 : (room[row * width + column] ?? 0);
  const settle = (column: number, row: number, way: 1 | -1): void => {
    const i = row * width + column;
    if (room[i] === 0) return;
    const nearest = Math.min(
      at(column - way, row) + 1,
      at(column, row - way) + 1,
      at(column - way, row - way) + Math.SQRT2,
      at(column + way, row - way) + Math.SQRT2,
    );
    room[i] = Math.min(room[i] ?? 0, nearest);
  };
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++) settle(column, row, 1);
  for (let row = height - 1; row >= 0; row--)
    for (let column = width - 1; column >= 0; column--) settle(column, row, -1);
}

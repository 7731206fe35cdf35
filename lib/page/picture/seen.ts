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
    for (let row = rows.from; row < rows.to; row++) {
      const cuts = crossingsAt(areas, row + 0.5);
      for (let i = 0; i + 1 < cuts.length; i += 2) {
        const from = Math.max(0, Math.ceil((cuts[i] ?? 0) - 0.5));
        const to = Math.min(this.width, Math.ceil((cuts[i + 1] ?? 0) - 0.5));
        if (to > from) this.#owner.fill(surface + 1, row * this.width + from, row * this.width + to);
      }
    }
  }

  /** The surfaces that are seen, each with how many points. */
  seen(): ReadonlyMap<number, number> {
    const seen = new Map<number, number>();
    for (const owner of this.#owner) if (owner > 0) seen.set(owner - 1, (seen.get(owner - 1) ?? 0) + 1);
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

function crossingsAt(areas: readonly (readonly Point2[])[], y: number): readonly number[] {
  const cuts: number[] = [];
  for (const points of areas)
    for (const [i, a] of points.entries()) {
      const b = points[(i + 1) % points.length] ?? a;
      if (a.y > y !== b.y > y) cuts.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    }
  return cuts.sort((a, b) => a - b);
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

/** The most valuable pieces from one sheet when cuts may have any shape: exact depth-first search. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import { type BestValue, densestFirst, density, type LimitedSize, limitsOf } from "./limited-value.js";

/**
 * Goes through the cells of the sheet row by row. The first free cell is either the near corner of a piece or
 * waste; what is left can add no more than the pieces left are worth on the cells left.
 *
 * @param start a choice that is possible, to be beaten
 */
export function freeValue(
  sizes: readonly LimitedSize[],
  length: number,
  width: number,
  start: BestValue,
  patience: Patience,
): BestValue {
  return new CellSearch(sizes, length, width, start).run(patience);
}

/** Steps between two questions of whether to go on, and what one takes, in microseconds. */
const stepsAtOnce = 4096;
const workOfStep = 0.2;

class CellSearch {
  private readonly filled: Uint8Array;
  private readonly left: number[];
  private readonly dense: readonly LimitedSize[];
  private readonly order: readonly LimitedSize[];
  private readonly laid: { size: LimitedSize; x: number; y: number }[] = [];
  private best: BestValue;
  private stopped = false;
  private steps = 0;

  constructor(
    sizes: readonly LimitedSize[],
    private readonly length: number,
    private readonly width: number,
    start: BestValue,
  ) {
    this.filled = new Uint8Array(length * width);
    this.left = limitsOf(sizes);
    this.dense = densestFirst(sizes);
    this.order = [...sizes].sort((a, b) => density(b) - density(a));
    this.best = start;
  }

  run(patience: Patience): BestValue {
    const most = this.hope(this.length * this.width);
    this.search(0, 0, this.length * this.width, patience);
    return { ...this.best, bound: this.stopped ? Math.max(this.best.value, most) : this.best.value };
  }

  private search(from: number, value: number, cells: number, patience: Patience): void {
    if (this.stopped || this.isOver(patience)) {
      this.stopped = true;
      return;
    }
    if (value > this.best.value + 1e-9) this.keep(value);
    if (value + this.hope(cells) <= this.best.value + 1e-9) return;
    let cell = from;
    while (cell < this.filled.length && this.filled[cell] === 1) cell++;
    if (cell >= this.filled.length) return;
    const [x, y] = [cell % this.length, Math.floor(cell / this.length)];
    for (const size of this.order) this.layAt(size, x, y, value, cells, patience);
    this.filled[cell] = 1;
    this.search(cell + 1, value, cells - 1, patience);
    this.filled[cell] = 0;
  }

  private layAt(
    size: LimitedSize,
    x: number,
    y: number,
    value: number,
    cells: number,
    patience: Patience,
  ): void {
    const { piece } = size;
    if (at(this.left, piece) === 0 || !this.isFree(size, x, y)) return;
    this.left[piece] = at(this.left, piece) - 1;
    this.mark(size, x, y, 1);
    this.laid.push({ size, x, y });
    this.search(
      y * this.length + x + size.length,
      value + size.value,
      cells - size.length * size.width,
      patience,
    );
    this.laid.pop();
    this.mark(size, x, y, 0);
    this.left[piece] = at(this.left, piece) + 1;
  }

  private isOver(patience: Patience): boolean {
    if (++this.steps % stepsAtOnce !== 0) return false;
    patience.spend(stepsAtOnce * workOfStep);
    return patience.isOver;
  }

  /** Rows further down are free wherever the first is, since cells are filled row by row. */
  private isFree({ length, width }: LimitedSize, x: number, y: number): boolean {
    if (x + length > this.length || y + width > this.width) return false;
    for (let at = x; at < x + length; at++) if (this.filled[y * this.length + at] === 1) return false;
    return true;
  }

  private mark({ length, width }: LimitedSize, x: number, y: number, full: 0 | 1): void {
    for (let row = y; row < y + width; row++)
      this.filled.fill(full, row * this.length + x, row * this.length + x + length);
  }

  private hope(cells: number): number {
    let room = cells;
    let value = 0;
    for (const size of this.dense) {
      const used = Math.min(at(this.left, size.piece) * size.length * size.width, room);
      value += used * density(size);
      room -= used;
      if (room <= 0) break;
    }
    return value;
  }

  private keep(value: number): void {
    this.best = { value, bound: value, pieces: this.laid.map(({ size, x, y }) => ({ ...size, x, y })) };
  }
}

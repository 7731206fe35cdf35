/** Straight grids of eight-node shell elements for the general solver, in mm. */
import type { BoxPlace } from "../../reference/fe/box-file.js";

/** Nodes and elements; everything numbered from 0. */
export interface ShellGrid {
  /** Places of the nodes, in the unit of the file (mm). */
  readonly nodes: readonly BoxPlace[];
  /** Four corners counterclockwise, then the middles of the sides after them. */
  readonly elements: readonly (readonly number[])[];
}

/** A grid that grows face by face; nodes at the same place are one. */
export class GridBuilder implements ShellGrid {
  readonly nodes: BoxPlace[] = [];
  readonly elements: number[][] = [];
  readonly #numbers = new Map<string, number>();

  /**
   * Adds a face.
   *
   * @param columns lines across its first axis
   * @param rows lines across its second axis
   * @param place of a spot of the face
   * @param isMaterial whether a spot belongs to it
   * @returns the numbers of the elements added
   */
  addFace(
    columns: readonly number[],
    rows: readonly number[],
    place: (u: number, v: number) => BoxPlace,
    isMaterial: (u: number, v: number) => boolean,
  ): readonly number[] {
    const added: number[] = [];
    for (let row = 0; row + 1 < rows.length; row++) {
      for (let column = 0; column + 1 < columns.length; column++) {
        const [left, right] = [columns[column]!, columns[column + 1]!];
        const [bottom, top] = [rows[row]!, rows[row + 1]!];
        const [u, v] = [(left + right) / 2, (bottom + top) / 2];
        if (!isMaterial(u, v)) continue;
        const spots: readonly (readonly [number, number])[] = [
          [left, bottom],
          [right, bottom],
          [right, top],
          [left, top],
          [u, bottom],
          [right, v],
          [u, top],
          [left, v],
        ];
        added.push(this.elements.push(spots.map((spot) => this.#nodeAt(place(...spot)))) - 1);
      }
    }
    return added;
  }

  #nodeAt(place: BoxPlace): number {
    const key = place.map((at) => Math.round(at * 1e6)).join(" ");
    const known = this.#numbers.get(key) ?? this.nodes.push(place) - 1;
    this.#numbers.set(key, known);
    return known;
  }
}

/**
 * Lines across an axis: where they must be, and evenly between.
 *
 * @param extent of the axis
 * @param musts places of lines; those outside are passed over
 * @param size about how far apart
 */
export function gridLines(extent: number, musts: readonly number[], size: number): readonly number[] {
  const fixed = [...new Set([0, extent, ...musts.filter((at) => at > 0 && at < extent)])].sort(
    (a, b) => a - b,
  );
  return fixed.flatMap((at, i) => {
    const next = fixed[i + 1];
    if (next === undefined) return [at];
    const parts = Math.max(1, Math.round((next - at) / size));
    return Array.from({ length: parts }, (_, part) => at + ((next - at) * part) / parts);
  });
}

/** How a force of 1 spread evenly over an element goes to its eight nodes: a twelfth up at corners, a third at middles. */
const evenShares = [-1, -1, -1, -1, 4, 4, 4, 4].map((part) => part / 12);

/**
 * How a force of 1 spread evenly over elements goes to their nodes.
 *
 * @param grid with the elements, all rectangles
 * @param elements under the force
 */
export function patchShares(grid: ShellGrid, elements: readonly number[]): ReadonlyMap<number, number> {
  const areas = elements.map((element) => areaOf(grid, element));
  const whole = areas.reduce((sum, area) => sum + area, 0);
  return summed(
    elements.flatMap((element, i) =>
      grid.elements[element]!.map((node, k) => [node, (evenShares[k]! * areas[i]!) / whole] as const),
    ),
  );
}

/** The same along element sides on a straight line: a sixth at the ends, two thirds in the middle. */
export function lineShares(grid: ShellGrid, isOn: (place: BoxPlace) => boolean): ReadonlyMap<number, number> {
  const sides = new Map<number, readonly [number, number, number]>();
  for (const element of grid.elements) {
    for (let k = 0; k < 4; k++) {
      const side = [element[k]!, element[4 + k]!, element[(k + 1) % 4]!] as const;
      // Two elements share a side; its middle node tells that it is the same.
      if (side.every((node) => isOn(grid.nodes[node]!))) sides.set(side[1], side);
    }
  }
  const lengths = [...sides.values()].map(([a, , b]) => apart(grid.nodes[a]!, grid.nodes[b]!));
  const whole = lengths.reduce((sum, length) => sum + length, 0);
  return summed(
    [...sides.values()].flatMap((side, i) =>
      side.map((node, k) => [node, ((k === 1 ? 4 : 1) / 6) * (lengths[i]! / whole)] as const),
    ),
  );
}

function areaOf({ nodes, elements }: ShellGrid, element: number): number {
  const [a, b, , d] = elements[element]!.map((node) => nodes[node]!);
  return apart(a!, b!) * apart(a!, d!);
}

function apart(a: BoxPlace, b: BoxPlace): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function summed(shares: readonly (readonly [number, number])[]): ReadonlyMap<number, number> {
  const sums = new Map<number, number>();
  for (const [node, share] of shares) sums.set(node, (sums.get(node) ?? 0) + share);
  return sums;
}

/** The general solver's input: straight grids of eight-node shell elements (S8R), in mm, N, MPa. */
import type { BoxPlace } from "../../reference/fe/box-file.js";
import type { CaseMaterial } from "../../reference/fe/case-file.js";

/** Nodes and elements; everything numbered from 0. */
interface ShellGrid {
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

/** Elements of one sheet. */
interface DeckSheet {
  /** Numbers of its elements. */
  readonly elements: readonly number[];
  /** Directions in the sheet's plane: along the grain, and square to it. */
  readonly axes: readonly [along: BoxPlace, across: BoxPlace];
}

/** What a deck says. */
export interface Deck {
  /** Nodes and elements. */
  readonly grid: ShellGrid;
  /** Sheets, each with its elements. */
  readonly sheets: readonly DeckSheet[];
  /** Of all sheets. */
  readonly material: CaseMaterial;
  /** Of the sheets, mm. */
  readonly thickness: number;
  /** Nodes that stand still from one degree of freedom to another: 1 to 3 along x, y, z, 4 to 6 turns. */
  readonly held: readonly (readonly [node: number, first: number, last: number])[];
  /** Forces on nodes along x, y, z: 1 to 3. */
  readonly forces: readonly (readonly [node: number, way: number, force: number])[];
  /** Pressure on all elements along their normal. */
  readonly pressure: number;
}

/** The deck as text. It asks for the displacement of every node. */
export function deckText(deck: Deck): string {
  return [
    "*NODE, NSET=ALL",
    ...deck.grid.nodes.map((place, node) => `${node + 1}, ${place.map(shown).join(", ")}`),
    "*ELEMENT, TYPE=S8R, ELSET=ALL",
    ...deck.grid.elements.map((nodes, i) => `${i + 1}, ${nodes.map((node) => node + 1).join(", ")}`),
    ...materialLines(deck.material),
    ...deck.sheets.flatMap((sheet, i) => sheetLines(sheet, i, deck.thickness)),
    "*BOUNDARY",
    ...deck.held.map(([node, first, last]) => `${node + 1}, ${first}, ${last}`),
    "*STEP",
    "*STATIC",
    ...(deck.forces.length > 0 ? ["*CLOAD"] : []),
    ...deck.forces.map(([node, way, force]) => `${node + 1}, ${way}, ${shown(force)}`),
    ...(deck.pressure === 0 ? [] : ["*DLOAD", `ALL, P, ${shown(deck.pressure)}`]),
    "*NODE PRINT, NSET=ALL",
    "U",
    "*END STEP",
    "",
  ].join("\n");
}

/** Nothing contracts through the thickness, so that the solid the solver makes of the shell follows the shell's law. */
function materialLines({ E1, E2, nu12, G12, kG }: CaseMaterial): readonly string[] {
  return [
    "*MATERIAL, NAME=SHEET",
    "*ELASTIC, TYPE=ENGINEERING CONSTANTS",
    `${E1}, ${E2}, ${E2}, ${nu12}, 0, 0, ${G12}, ${kG},`,
    String(kG),
  ];
}

/** Numbers on one line of a set. */
const perLine = 12;

function sheetLines({ elements, axes }: DeckSheet, number: number, thickness: number): readonly string[] {
  const set = `SHEET${number}`;
  const lines = Array.from({ length: Math.ceil(elements.length / perLine) }, (_, line) =>
    elements.slice(perLine * line, perLine * (line + 1)).map((element) => element + 1),
  );
  return [
    `*ELSET, ELSET=${set}`,
    ...lines.map((line) => line.join(", ")),
    `*ORIENTATION, NAME=GRAIN${number}`,
    axes.flat().join(", "),
    `*SHELL SECTION, ELSET=${set}, MATERIAL=SHEET, ORIENTATION=GRAIN${number}`,
    shown(thickness),
  ];
}

function shown(value: number): string {
  return String(Number(value.toPrecision(10)));
}

/**
 * Displacements along x, y, z of every node, from the solver's printed answer.
 *
 * @throws RangeError when it holds none
 */
export function printedDisplacements(text: string): readonly BoxPlace[] {
  const places: BoxPlace[] = [];
  for (const line of text.split("\n")) {
    const [node, ...way] = line.trim().split(/\s+/).map(Number);
    if (node !== undefined && way.length === 3 && Number.isInteger(node) && way.every(Number.isFinite))
      places[node - 1] = way as BoxPlace;
  }
  if (places.length === 0) throw new RangeError("the general solver printed no displacements");
  return places;
}

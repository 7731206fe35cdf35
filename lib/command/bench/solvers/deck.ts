/** The general solver's input: a shell of eight-node elements with reduced integration (S8R), in mm, N, MPa. */
import type { BoxPlace } from "../../reference/fe/box-file.js";
import type { CaseMaterial } from "../../reference/fe/case-file.js";
import type { ShellGrid } from "./shell-grid.js";

/** Elements of one sheet. */
export interface DeckSheet {
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

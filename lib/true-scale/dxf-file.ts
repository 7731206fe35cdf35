/**
 * A plot as a DXF file of release 12, which every program reads: closed polylines with bulges for arcs, circles, lines and
 * words, on named layers. The file says millimetres ($INSUNITS 4).
 */
import type { Point2, Side } from "../shape/index.js";
import { looks } from "./looks.js";
import {
  layers,
  type PathMark,
  type Plot,
  type PlotMark,
  type RoundMark,
  roomOf,
  type WordsMark,
} from "./plot.js";

/** A group code and its value, a line each in the file. */
type Pair = readonly [code: number, value: string | number];

/** The whole file. */
export function dxfFile({ marks }: Plot): string {
  const pairs: readonly Pair[] = [
    ...section("HEADER", header(marks)),
    ...section("TABLES", [...lineTypes(), ...layerTable()]),
    ...section("ENTITIES", marks.flatMap(entity)),
    [0, "EOF"],
  ];
  return `${pairs.map(([code, value]) => `${code}\n${typeof value === "number" ? exact(value) : value}`).join("\n")}\n`;
}

function section(name: string, inside: readonly Pair[]): readonly Pair[] {
  return [[0, "SECTION"], [2, name], ...inside, [0, "ENDSEC"]];
}

function header(marks: readonly PlotMark[]): readonly Pair[] {
  const { left, bottom, width, height } = roomOf(marks);
  return [
    [9, "$ACADVER"],
    [1, "AC1009"],
    [9, "$INSUNITS"],
    [70, "4"],
    [9, "$EXTMIN"],
    ...at({ x: left, y: bottom }),
    [9, "$EXTMAX"],
    ...at({ x: left + width, y: bottom + height }),
  ];
}

function lineTypes(): readonly Pair[] {
  return [
    [0, "TABLE"],
    [2, "LTYPE"],
    [70, "2"],
    ...lineType("CONTINUOUS", "", []),
    ...lineType("DASHED", "__ __ __", [4, -2.5]),
    [0, "ENDTAB"],
  ];
}

function lineType(name: string, shown: string, dashes: readonly number[]): readonly Pair[] {
  return [
    [0, "LTYPE"],
    [2, name],
    [70, "0"],
    [3, shown],
    [72, "65"],
    [73, String(dashes.length)],
    [40, dashes.reduce((sum, dash) => sum + Math.abs(dash), 0)],
    ...dashes.map((dash): Pair => [49, dash]),
  ];
}

function layerTable(): readonly Pair[] {
  return [
    [0, "TABLE"],
    [2, "LAYER"],
    [70, String(layers.length)],
    ...layers.flatMap((layer): Pair[] => [
      [0, "LAYER"],
      [2, layer],
      [70, "0"],
      [62, String(looks[layer].colour)],
      [6, looks[layer].dash ? "DASHED" : "CONTINUOUS"],
    ]),
    [0, "ENDTAB"],
  ];
}

function entity(mark: PlotMark): readonly Pair[] {
  if (mark.kind === "words") return text(mark);
  return mark.kind === "circle" ? circle(mark) : path(mark);
}

function circle({ layer, centre, radius }: RoundMark): readonly Pair[] {
  return [[0, "CIRCLE"], [8, layer], ...at(centre), [40, radius]];
}

function path({ layer, sides, closed }: PathMark): readonly Pair[] {
  const last = sides.at(-1);
  if (!last) return [];
  const ends: readonly Pair[] = closed ? [] : [[0, "VERTEX"], [8, layer], ...at(last.to)];
  return [
    [0, "POLYLINE"],
    [8, layer],
    [66, "1"],
    ...at({ x: 0, y: 0 }),
    [70, closed ? "1" : "0"],
    ...sides.flatMap((side): readonly Pair[] => [
      [0, "VERTEX"],
      [8, layer],
      ...at(side.from),
      ...(side.kind === "arc" ? ([[42, bulge(side)]] as const) : []),
    ]),
    ...ends,
    [0, "SEQEND"],
    [8, layer],
  ];
}

/** How far an arc stands out from its chord: tan(sweep / 4), negative where it turns to the right. */
function bulge({ sweep }: Extract<Side, { readonly kind: "arc" }>): number {
  return Math.tan(sweep / 4);
}

/** Level alignment of words: from their start, about their middle, to their end. */
const alignment: Readonly<Record<WordsMark["anchor"], string>> = { start: "0", middle: "1", end: "2" };

function text(mark: WordsMark): readonly Pair[] {
  const { at: place, size, text: words, anchor, turn } = mark;
  return [
    [0, "TEXT"],
    [8, "NOTES"],
    ...at(place),
    [40, 0.72 * size],
    [1, plainLetters(words)],
    [50, turn],
    [72, alignment[anchor]],
    [11, place.x],
    [21, place.y],
    [31, 0],
  ];
}

/** Letters of release 12: what it has no letter for is told by its number. */
function plainLetters(words: string): string {
  return words
    .replaceAll("\u00a0", " ")
    .replaceAll("\u2011", "-")
    .replaceAll("×", "x")
    .replaceAll("±", "%%p")
    .replaceAll("°", "%%d")
    .replace(
      /[^ -~]/g,
      (letter) => `\\U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`,
    );
}

function at({ x, y }: Point2): readonly Pair[] {
  return [
    [10, x],
    [20, y],
    [30, 0],
  ];
}

/** To a millionth of a millimetre, always with a point, never with an exponent or a negative zero. */
function exact(value: number): string {
  return (Math.round(value * 1e6) / 1e6 + 0).toFixed(6).replace(/0{1,5}$/, "");
}

/** One sheet with the pieces that are sawn out of it. */
import type { CutSheet, SheetArea } from "../../cutting/index.js";
import { type DrawingMark, type DrawingView, drawing, type Point } from "../../page/index.js";
import { type CodedPiece, codeOf, type NumberedStock } from "../pieces.js";
import type { Rule } from "../rule.js";
import { millimetres, wordsFit } from "./marks.js";

/** Letters along the drawing's longer side. */
const lettersAcross = 56;

/** Draws a sheet as it lies before the saw, its length from left to right. */
export function sheetCutsDrawing(
  { label, cut }: NumberedStock<CutSheet>,
  pieces: readonly CodedPiece<unknown>[],
  grained: boolean,
  rule: Rule,
): DrawingView {
  const { length, width, offcuts } = cut;
  const [along, across] = [millimetres(length), millimetres(width)];
  const letter = Math.max(along, across) / lettersAcross;
  const corner = { x: 0, y: 0 };
  const marks: DrawingMark[] = [
    { mark: "rectangle", role: "hidden", at: corner, width: along, height: across },
    ...offcuts.map((offcut): DrawingMark => ({ ...areaMark(offcut), role: "waste" })),
    ...cut.pieces.map((piece): DrawingMark => ({ ...areaMark(piece), role: "panel" })),
    ...cut.pieces.flatMap((piece) => pieceWords(piece, codeOf(pieces, piece.name), rule, letter)),
    {
      mark: "dimension",
      from: { x: 0, y: across },
      to: { x: along, y: across },
      offset: 1.6 * letter,
      text: rule.drawn(length),
    },
    {
      mark: "dimension",
      from: corner,
      to: { x: 0, y: across },
      offset: 1.6 * letter,
      text: rule.drawn(width),
    },
    ...(grained ? [grainArrow(along, letter)] : []),
  ];
  const used = cut.pieces.length === 1 ? "1 piece" : `${cut.pieces.length} pieces`;
  return drawing(`${label}: ${cut.stock}`, `${used}; grey with a broken line is offcut.`, marks, letter);
}

function areaMark(area: SheetArea) {
  return {
    mark: "rectangle" as const,
    at: { x: millimetres(area.x), y: millimetres(area.y) },
    width: millimetres(area.length),
    height: millimetres(area.width),
  };
}

/** The piece's code, with its name and size where they fit. */
function pieceWords(
  piece: SheetArea & { readonly name: string },
  code: string,
  rule: Rule,
  letter: number,
): DrawingMark[] {
  const { at, width, height } = areaMark(piece);
  const size = rule.drawn(piece.length, piece.width);
  const candidates = [`${code}  ${piece.name}`, size];
  const lines = height < 3 * letter ? [] : candidates.filter((text) => wordsFit(text, width, letter));
  const words = lines.includes(candidates[0] as string) ? lines : [code, ...lines];
  return words.map((text, i) => ({
    mark: "text",
    at: linePlace(at, width, height, words.length, i, letter),
    text,
    anchor: "middle",
  }));
}

function linePlace(
  at: Point,
  width: number,
  height: number,
  lines: number,
  line: number,
  letter: number,
): Point {
  const down = (line - (lines - 1) / 2) * 1.25 * letter;
  return { x: at.x + width / 2, y: at.y + height / 2 - down - 0.35 * letter };
}

function grainArrow(along: number, letter: number): DrawingMark {
  return {
    mark: "arrow",
    from: { x: along / 2 - 6 * letter, y: -1.4 * letter },
    to: { x: along / 2 + 6 * letter, y: -1.4 * letter },
    text: "face grain",
  };
}

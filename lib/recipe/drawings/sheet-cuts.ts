/** One sheet with the pieces that are sawn out of it, each with as many words as it has room for. */
import type { CutSheet, SheetArea, ThroughCut } from "../../cutting/index.js";
import { boxesMeet, type DrawingMark, type DrawingView, drawing, textBox } from "../../page/index.js";
import type { Box2, Point2 } from "../../shape/index.js";
import { type CodedPiece, codeOf, type GoodFace, type NumberedStock } from "../pieces.js";
import type { Rule } from "../rule.js";
import { millimetres, moved, wordsFit } from "./marks.js";

/** Letters along the drawing's longer side. */
const lettersAcross = 56;

/** Height of letters on paper, mm; 9 points are 3.18 mm. */
const paperLetter = 3.3;

/** Room beside the sheet for its width and white, in letters. */
const besideIt = 6;

/** Widths on paper, mm: beside a table, over one, or as wide as the paper. */
export const paperWidths = { beside: 86, middle: 128, whole: 185 } as const;

/** What stands on the pieces of one drawing. */
interface Lettering {
  /** How lengths are written. */
  readonly rule: Rule;
  /** Height of the letters. */
  readonly letter: number;
  /** Where the good face of a piece goes; absent for stock without grain or a better face. */
  readonly faceOf: ((name: string) => GoodFace | undefined) | undefined;
}

/**
 * Draws a sheet as it lies before the saw, its length from left to right, cuts numbered in their order.
 *
 * @param faceOf where the good face of a piece goes, for stock whose grain runs with its length
 * @param printedWidth how wide it is printed, mm, with letters of 9 points; as a screen has room where absent
 */
export function sheetCutsDrawing(
  { label, cut }: NumberedStock<CutSheet>,
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
  faceOf?: (name: string) => GoodFace | undefined,
  printedWidth?: number,
): DrawingView {
  const { length, width, offcuts } = cut;
  const [along, across] = [millimetres(length), millimetres(width)];
  const letter =
    printedWidth === undefined ? Math.max(along, across) / lettersAcross : letterAt(along, printedWidth);
  const corner = { x: 0, y: 0 };
  const lettering: Lettering = { rule, letter, faceOf };
  const written = cut.pieces.flatMap((piece) => pieceMarks(piece, codeOf(pieces, piece.name), lettering));
  const marks: DrawingMark[] = [
    { mark: "rectangle", role: "hidden", at: corner, width: along, height: across },
    ...offcuts.map((offcut): DrawingMark => ({ ...areaMark(offcut), role: "waste" })),
    ...cut.pieces.map((piece): DrawingMark => ({ ...areaMark(piece), role: "panel" })),
    ...written,
    ...cutNumbers(cut.cuts, takenBoxes(written, letter), { along, across }, letter),
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
  ];
  const said = printedWidth === undefined ? described(cut, faceOf !== undefined) : "";
  const view = drawing(`${label}: ${cut.stock}`, said, marks, letter);
  return printedWidth === undefined ? view : { ...view, printedWidth };
}

/** The letters of a drawing that is printed so wide, mm of the sheet. */
function letterAt(along: number, printedWidth: number): number {
  return (paperLetter * along) / (printedWidth - besideIt * paperLetter);
}

/** Whether every piece has room for its code where the sheet is printed so wide. */
export function codesFit(
  { length, pieces: cut }: CutSheet,
  pieces: readonly CodedPiece<unknown>[],
  printedWidth: number,
): boolean {
  const letter = letterAt(millimetres(length), printedWidth);
  return cut.every(
    (piece) =>
      wordsFit(codeOf(pieces, piece.name), millimetres(piece.length), letter) &&
      millimetres(piece.width) > 1.5 * letter,
  );
}

function described({ pieces, cuts }: CutSheet, grained: boolean): string {
  const count = pieces.length === 1 ? "1 piece" : `${pieces.length} pieces`;
  return `${count}. ${legendWords(cuts.length > 0, grained)}`;
}

/** What the marks on sheets mean. */
export function legendWords(withCuts: boolean, grained: boolean): string {
  const marks = grained
    ? " The arrow is the face grain. The triangle is the good face, and where it goes."
    : "";
  const numbers = withCuts ? " Rings number the cuts in their order." : "";
  return `What is inside broken lines is an offcut.${numbers}${marks}`;
}

function areaMark(area: SheetArea) {
  return {
    mark: "rectangle" as const,
    at: { x: millimetres(area.x), y: millimetres(area.y) },
    width: millimetres(area.length),
    height: millimetres(area.width),
  };
}

/** The piece's words in its middle, and below them its arrow and its face mark; in a narrow strip beside each other. */
function pieceMarks(
  piece: SheetArea & { readonly name: string },
  code: string,
  { rule, letter, faceOf }: Lettering,
): DrawingMark[] {
  const area = areaMark(piece);
  const { at, width, height } = area;
  const face = faceOf?.(piece.name);
  if (face !== undefined && height < (footHeight + headHeight + lineHeight) * letter)
    return stripMarks(area, code, letter);
  const foot = face === undefined ? 0 : footHeight * letter;
  const words = { code, name: piece.name, size: rule.drawn(piece.length, piece.width) };
  const room = height - foot - headHeight * letter;
  const lines = pieceLines(words, width - letter, room, letter);
  const middle = { x: at.x + width / 2, y: at.y + foot + room / 2 };
  return [
    ...lines.map(
      (text, i): DrawingMark => ({
        mark: "text",
        at: linePlace(middle, lines.length, i, letter),
        text,
        anchor: "middle",
      }),
    ),
    ...(face === undefined ? [] : footMarks(at, width, face, letter)),
  ];
}

function linePlace({ x, y }: Point2, lines: number, line: number, letter: number): Point2 {
  const down = (line - (lines - 1) / 2) * lineHeight * letter;
  return { x, y: y - down - 0.35 * letter };
}

/** Room at the foot of a piece for its marks, in letters. */
const footHeight = 2.4;

/** Room at the head of a piece for the number of a cut, in letters. */
const headHeight = 0.6;

/** The triangle on the good face of a piece, with sides so long. */
function faceTriangle(at: Point2, side: number): DrawingMark {
  return {
    mark: "polygon",
    role: "attention",
    points: [at, moved(at, { x: side, y: 0 }), moved(at, { x: 0, y: side })],
  };
}

/** Length of the arrow of the grain where there is room, in letters. */
const longArrow = 6;

/** Height of an arrow and of a code over it, in letters, where a strip has no more. */
const [arrowHeight, strippedHeight] = [0.6, 1.4];

/**
 * On a strip without room for its words above all its marks: its code, and below it a small triangle with the arrow beside
 * it. What the strip has more of height is parted among foot, middle and head.
 */
function stripMarks(
  { at, width, height }: ReturnType<typeof areaMark>,
  code: string,
  letter: number,
): DrawingMark[] {
  const apart = Math.max(0, height - strippedHeight * letter) / 3;
  const foot = moved(at, { x: 0.25 * letter, y: apart });
  const tail = moved(foot, { x: 0.85 * letter, y: (arrowHeight / 2) * letter });
  const long = Math.min(at.x + width - 0.3 * letter - tail.x, longArrow * letter);
  return [
    faceTriangle(foot, arrowHeight * letter),
    {
      mark: "text",
      at: { x: at.x + width / 2, y: foot.y + apart + (arrowHeight + 0.05) * letter },
      text: code,
      anchor: "middle",
    },
    { mark: "arrow", from: tail, to: moved(tail, { x: long, y: 0 }) },
  ];
}

/** At the foot of a piece: a triangle on its good face with where that goes, and above it the grain. */
function footMarks(corner: Point2, width: number, face: GoodFace, letter: number): DrawingMark[] {
  const at = moved(corner, { x: 0.5 * letter, y: 0.5 * letter });
  const tail = moved(at, { x: 0, y: 1.7 * letter });
  return [
    faceTriangle(at, 0.9 * letter),
    ...(wordsFit(faceMarkWords[face], width - 2 * letter, letter)
      ? [
          {
            mark: "text",
            at: moved(at, { x: 1.3 * letter, y: 0.05 * letter }),
            text: faceMarkWords[face],
          } as const,
        ]
      : []),
    { mark: "arrow", from: tail, to: moved(tail, { x: Math.min(0.4 * width, longArrow * letter), y: 0 }) },
  ];
}

/** Where words and arrows lie. */
function takenBoxes(
  marks: readonly DrawingMark[],
  letter: number,
): { readonly words: readonly Box2[]; readonly arrows: readonly Box2[] } {
  const half = (arrowHeight / 2) * letter;
  const arrows = marks.flatMap((mark) => (mark.mark === "arrow" ? [mark] : []));
  return {
    words: marks.flatMap((mark) => (mark.mark === "text" ? [textBox(mark, letter)] : [])),
    arrows: arrows.map(({ from, to }) => ({
      left: from.x,
      bottom: from.y - half,
      width: to.x - from.x,
      height: 2 * half,
    })),
  };
}

/** Places beside the middle of a cut's line that its number is tried at, as shares of the line: the nearest first. */
const besideMiddle: readonly number[] = Array.from(
  { length: 40 },
  (_, i) => 0.5 + (i % 2 ? -1 : 1) * Math.ceil((i + 1) / 2) * 0.025,
);

/** Radius of the ring of a cut's number, in letters. */
const ringRadius = 0.8;

/** Ways off a line that a number is tried at, and how far, in radii: what is nearer first. */
const offLine: readonly Point2[] = Array.from({ length: 14 }, (_, i) => 2.2 + 1.2 * i).flatMap((far) =>
  Array.from({ length: 8 }, (_, i) => {
    const angle = (i * Math.PI) / 4;
    return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
  }),
);

/**
 * The numbers of cuts in rings on their lines, as near to the middle as no words and no other ring are; where the pieces
 * leave no such place, beside the line, with a thin line to it.
 */
function cutNumbers(
  cuts: readonly ThroughCut[],
  { words, arrows }: ReturnType<typeof takenBoxes>,
  sheet: { readonly along: number; readonly across: number },
  letter: number,
): readonly DrawingMark[] {
  const taken = [...words];
  const radius = ringRadius * letter;
  const ring = ({ x, y }: Point2): Box2 => ({
    left: x - radius,
    bottom: y - radius,
    width: 2 * radius,
    height: 2 * radius,
  });
  const isFreeOf =
    (boxes: readonly Box2[]) =>
    (one: Point2): boolean =>
      boxes.every((box) => !boxesMeet(box, ring(one)));
  const isOnSheet = ({ x, y }: Point2): boolean =>
    x > radius && y > radius && x < sheet.along - radius && y < sheet.across - radius;
  return cuts.flatMap((cut, i): readonly DrawingMark[] => {
    const middle = onCut(cut, 0.5);
    const places = [middle, ...besideMiddle.map((share) => onCut(cut, share))];
    const beside = offLine
      .map(({ x, y }) => moved(middle, { x: radius * x, y: radius * y }))
      .filter(isOnSheet);
    // Where a sheet is so full that no place is free, a number may lie on an arrow, but on no words.
    const found = [[...taken, ...arrows], taken].flatMap(
      (boxes) => [...places, ...beside].find(isFreeOf(boxes)) ?? [],
    );
    const at = found[0] ?? middle;
    taken.push(ring(at));
    const leader: readonly DrawingMark[] = places.includes(at)
      ? []
      : [{ mark: "line", role: "thin", points: [middle, at] }];
    return [...leader, { mark: "circle", role: "opening", at, radius, label: String(i + 1) }];
  });
}

function onCut({ part, direction, at }: ThroughCut, share: number): Point2 {
  const { at: corner, width, height } = areaMark(part);
  const line = millimetres(at);
  return direction === "along"
    ? { x: corner.x + share * width, y: line }
    : { x: line, y: corner.y + share * height };
}

/** What there is to write on a piece. */
export interface PieceWords {
  /** The short code of the piece. */
  readonly code: string;
  /** Which panel it is. */
  readonly name: string;
  /** Length and width of the piece in words. */
  readonly size: string;
}

/** The lines that fit on a piece, its code always first: then its panel, then its size. */
export function pieceLines(
  { code, name, size }: PieceWords,
  width: number,
  height: number,
  letter: number,
): string[] {
  const room = Math.floor(height / (lineHeight * letter));
  const named = wordsFit(`${code}  ${name}`, width, letter)
    ? [`${code}  ${name}`]
    : [code, ...wrapped(name, width, letter)];
  const whole = [...named, ...(wordsFit(size, width, letter) ? [size] : [])];
  return [whole, named, [code]].find((lines) => lines.length <= room) ?? [code];
}

/** Height of a line over that of its letters. */
const lineHeight = 1.25;

/** A name in lines that fit, broken after a dot or at a space; nothing where a word is too long by itself. */
function wrapped(name: string, width: number, letter: number): string[] {
  const lines: string[] = [];
  for (const word of name.split(/(?<=\.)|(?<= )/)) {
    const longer = `${lines.at(-1) ?? ""}${word}`;
    if (lines.length > 0 && wordsFit(longer.trim(), width, letter)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  const trimmed = lines.map((line) => line.trim());
  return trimmed.every((line) => wordsFit(line, width, letter)) ? trimmed : [];
}

/** What stands beside the face mark: where the face that is up on the drawing goes. */
const faceMarkWords: Readonly<Record<GoodFace, string>> = {
  out: "face out",
  in: "face in",
  up: "face up",
  either: "either face",
};

/** What is written on a piece of a cut drawing, as far as there is room. */
import type { GoodFace } from "../good-face.js";
import { wordsFit } from "./marks.js";

/** What there is to write on a piece. */
export interface PieceWords {
  readonly code: string;
  /** Which panel it is. */
  readonly name: string;
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
export const lineHeight = 1.25;

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
export const faceMarkWords: Readonly<Record<GoodFace, string>> = {
  out: "face out",
  in: "face in",
  up: "face up",
  either: "either face",
};

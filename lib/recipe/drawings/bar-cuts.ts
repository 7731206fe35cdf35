/** All bars of one extrusion with the pieces that are sawn out of them: lengths to scale, widths not. */
import type { CutBar } from "../../cutting/index.js";
import { type DrawingMark, type DrawingView, drawing } from "../../page/index.js";
import { type CodedPiece, codeOf, type NumberedStock } from "../pieces.js";
import type { Rule } from "../rule.js";
import { millimetres, wordsFit } from "./marks.js";

/** Letters along the drawing's longer side. */
const lettersAcross = 54;

/** How wide it is printed, mm: its letters are 9 points high then. */
const printedWidth = 185;

/** Draws the bars of one extrusion one under the other. */
export function barCutsDrawing(
  name: string,
  bars: readonly NumberedStock<CutBar>[],
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): DrawingView {
  const longest = Math.max(...bars.map(({ cut }) => millimetres(cut.length)));
  const letter = longest / lettersAcross;
  const marks = bars.flatMap((bar, row) =>
    barMarks(bar, 3.6 * letter * (bars.length - row), pieces, rule, letter),
  );
  const view = drawing(name, "Lengths to scale, widths not. The left end is trimmed first.", marks, letter);
  return { ...view, printedWidth };
}

/** The bar's number and length; the name of one from the rack. */
function barTitle(label: string, { from, stock, length }: CutBar, rule: Rule): string {
  return `${label}: ${rule.drawn(length)}${from === "rack" ? `, from the rack: ${stock}` : ""}`;
}

function barMarks(
  { label, cut }: NumberedStock<CutBar>,
  y: number,
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
  letter: number,
): DrawingMark[] {
  const height = 1.7 * letter;
  const whole = millimetres(cut.length);
  return [
    { mark: "text", at: { x: 0, y: y + height + 0.4 * letter }, text: barTitle(label, cut, rule) },
    { mark: "rectangle", role: "waste", at: { x: 0, y }, width: whole, height },
    ...cut.pieces.flatMap(({ name, start, length }): DrawingMark[] => {
      const [x, width] = [millimetres(start), millimetres(length)];
      const code = codeOf(pieces, name);
      const words = [`${code}  ${rule.drawn(length)}`, code].find((text) => wordsFit(text, width, letter));
      return [
        { mark: "rectangle", role: "metal", at: { x, y }, width, height, ...(words ? { label: words } : {}) },
      ];
    }),
  ];
}

/** Pages of plots as a PDF file at true scale. */
import PDFDocument from "pdfkit";
import type { Box2, Point2 } from "../shape/index.js";
import { looks } from "./looks.js";
import type { PathMark, PlotMark, RoundMark, WordsMark } from "./plot.js";

/** Marks on a page. */
export interface Laid {
  /** What is drawn. */
  readonly marks: readonly PlotMark[];
  /** Where the origin of the marks lies on the page, mm from its bottom left corner. */
  readonly origin: Point2;
  /** What of the page they may cover, mm; the whole of it where absent. */
  readonly clip?: Box2;
}

/** One sheet of paper. */
export interface PaperPage {
  /** Its width, mm. */
  readonly width: number;
  /** Its height, mm. */
  readonly height: number;
  /** What is on it, in order. */
  readonly laid: readonly Laid[];
}

/** A millimetre in the points of PDF, 1/72 in. */
const points = 72 / 25.4;

type Document = InstanceType<typeof PDFDocument>;

/** The file's bytes. */
export function pdfFile(title: string, pages: readonly PaperPage[]): Promise<Uint8Array> {
  const document = new PDFDocument({ autoFirstPage: false, info: { Title: title, Creator: "Casewright" } });
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    document.on("error", reject);
    document.on("end", () => resolve(joined(chunks)));
    for (const page of pages) drawPage(document, page);
    document.end();
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function drawPage(document: Document, { width, height, laid }: PaperPage): void {
  document.addPage({ size: [points * width, points * height], margin: 0 });
  for (const { marks, origin, clip } of laid) {
    document.save();
    document.transform(points, 0, 0, -points, 0, points * height);
    if (clip) document.rect(clip.left, clip.bottom, clip.width, clip.height).clip();
    document.translate(origin.x, origin.y);
    for (const mark of marks) {
      if (mark.kind === "words") drawWords(document, mark);
      else drawLines(document, mark);
    }
    document.restore();
  }
}

function drawLines(document: Document, mark: PathMark | RoundMark): void {
  const { width, dash } = looks[mark.layer];
  document.lineWidth(width).lineJoin("round").strokeColor("#000");
  if (dash) document.dash(dash[0], { space: dash[1] });
  else document.undash();
  if (mark.kind === "circle") circlePath(document, mark);
  else sidesPath(document, mark);
  if (mark.kind === "path" && mark.filled) document.fillAndStroke("#000", "#000");
  else document.stroke();
}

function sidesPath(document: Document, { sides, closed }: PathMark): void {
  const [first] = sides;
  if (!first) return;
  document.moveTo(first.from.x, first.from.y);
  for (const side of sides) {
    if (side.kind === "line") document.lineTo(side.to.x, side.to.y);
    else curves(document, side.centre, side.radius, side.start, side.sweep);
  }
  if (closed) document.closePath();
}

function circlePath(document: Document, { centre, radius }: RoundMark): void {
  document.moveTo(centre.x + radius, centre.y);
  curves(document, centre, radius, 0, 2 * Math.PI);
  document.closePath();
}

/** The most that one curve turns: an eighth turn is off a circle by 4 parts in a million of its radius. */
const mostTurn = Math.PI / 4;

/** An arc as cubic curves, whose handles are 4/3 tan(turn / 4) of the radius long. */
function curves(document: Document, centre: Point2, radius: number, start: number, sweep: number): void {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / mostTurn - 1e-9));
  const turn = sweep / count;
  const handle = (4 / 3) * Math.tan(turn / 4);
  for (let i = 0; i < count; i++) {
    const [from, to] = [start + i * turn, start + (i + 1) * turn];
    const put = (angle: number, along: number): readonly [number, number] => [
      centre.x + radius * (Math.cos(angle) - along * Math.sin(angle)),
      centre.y + radius * (Math.sin(angle) + along * Math.cos(angle)),
    ];
    document.bezierCurveTo(...put(from, handle), ...put(to, -handle), ...put(to, 0));
  }
}

/** Words with a white edge, so that lines behind them do not disturb. */
function drawWords(document: Document, { text, at, size, anchor, turn }: WordsMark): void {
  const shown = text.replaceAll("\u2011", "-");
  document.font("Helvetica").fontSize(size).undash();
  const long = document.widthOfString(shown);
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  document.save();
  document.translate(at.x, at.y).rotate(turn).scale(1, -1);
  const put = (how: { readonly fill: boolean; readonly stroke: boolean }): void => {
    document.text(shown, -back, 0, { lineBreak: false, baseline: "alphabetic", ...how });
  };
  document.lineWidth(size / 6).strokeColor("#fff");
  put({ fill: false, stroke: true });
  document.fillColor("#000");
  put({ fill: true, stroke: false });
  document.restore();
}

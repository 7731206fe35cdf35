/** The files of all drawings, and the page that lists them. */
import { html } from "../page/index.js";
import type { Workpieces } from "../recipe/index.js";
import { dxfFile } from "./dxf-file.js";
import { spread } from "./looks.js";
import { type PaperPage, pdfFile } from "./pdf-file.js";
import { roomOf } from "./plot.js";
import { rulerHeight, rulerMarks } from "./ruler.js";
import { svgFile } from "./svg-file.js";
import { type Paper, tilePages } from "./tiles.js";
import { type TrueDrawing, trueDrawings } from "./true-drawings.js";

/** A file of a folder. */
export interface DrawingFile {
  /** Its name. */
  readonly file: string;
  /** What is in it. */
  readonly content: string | Uint8Array;
}

/** All files: for each drawing SVG, DXF and PDF, tiles to print at home where it has any, and a page that lists them. */
export async function drawingFiles(
  workshop: Workpieces,
  paper: Paper = workshop.case.units === "inch" ? "letter" : "a4",
): Promise<readonly DrawingFile[]> {
  const drawings = trueDrawings(workshop);
  const { units } = workshop.case;
  const files = drawings.map(async (one) => ({ one, files: await filesOf(one, paper, units) }));
  const made = await Promise.all(files);
  return [
    { file: "index.html", content: listPage(workshop, made, paper) },
    ...made.flatMap(({ files: own }) => own),
  ];
}

async function filesOf(
  { name, plot, window }: TrueDrawing,
  paper: Paper,
  units: Workpieces["case"]["units"],
): Promise<readonly DrawingFile[]> {
  const whole = pdfFile(plot.title, [wholePage(plot, units)]);
  const tiles = window && pdfFile(`${plot.title}, in sheets`, tilePages(plot, window, paper, units));
  return [
    { file: `${name}.svg`, content: svgFile(plot) },
    { file: `${name}.dxf`, content: dxfFile(plot) },
    { file: `${name}.pdf`, content: await whole },
    ...(tiles ? [{ file: `${name}-${paper}.pdf`, content: await tiles }] : []),
  ];
}

/** One sheet as large as the drawing, with a ruler below. */
function wholePage(plot: TrueDrawing["plot"], units: Workpieces["case"]["units"]): PaperPage {
  const { left, bottom, width, height } = spread(roomOf(plot.marks));
  const foot = rulerHeight + 4;
  return {
    width: wholePoints(Math.max(width, 130)),
    height: wholePoints(height + foot),
    laid: [
      { marks: plot.marks, origin: { x: -left, y: foot - bottom } },
      { marks: rulerMarks(units, { x: 10, y: 6 }), origin: { x: 0, y: 0 } },
    ],
  };
}

/** Rounded up to whole points of 1/72 in: some programs round the size of a page, and scale what is on it to fit. */
function wholePoints(millimetres: number): number {
  return (Math.ceil((millimetres * 72) / 25.4) * 25.4) / 72;
}

const kinds: readonly (readonly [TrueDrawing["kind"], string])[] = [
  ["panel", "Panels, outside face up"],
  ["sheet", "Sheets, as they lie before the saw"],
  ["template", "Templates of hardware and shaped openings"],
];

function listPage(
  { case: { name, invented } }: Workpieces,
  made: readonly { readonly one: TrueDrawing; readonly files: readonly DrawingFile[] }[],
  paper: Paper,
): string {
  const tables = kinds.map(([kind, heading]) => {
    const rows = made.filter(({ one }) => one.kind === kind);
    if (rows.length === 0) return undefined;
    return html`<h2>${heading}</h2><ul>${rows.map(
      ({ one, files }) =>
        html`<li>${one.plot.title}: ${files.map(({ file }) => html`<a href="${file}">${endingWords(file, paper)}</a> `)}</li>
`,
    )}</ul>`;
  });
  return String(html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}: drawings</title>
<style>body { font: 1rem/1.5 system-ui, sans-serif; margin: 1.5rem auto; max-width: 46rem; padding: 0 1rem; } li { margin: .3rem 0; } a { margin-right: .6rem; }</style></head>
<body><h1>${name}: drawings at true scale</h1>
<p>${invented && "An invented example. "}Millimetres in SVG and DXF are those of the thing. Print PDF files at 100 %, then measure the ruler on the paper.
A print shop prints a panel whole. The sheets for a small printer share a strip: lay the broken lines on each other.</p>
<p>Layers: OUTLINE is sawn, CUT is cut out, DRILL is drilled, LATER is what will lie there, NOTES are only read.</p>
${tables}</body></html>
`);
}

function endingWords(file: string, paper: Paper): string {
  if (file.endsWith(`-${paper}.pdf`)) return `PDF on ${paper === "a4" ? "A4" : "Letter"}`;
  return file.slice(file.lastIndexOf(".") + 1).toUpperCase();
}

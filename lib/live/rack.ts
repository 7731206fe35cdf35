/** What lies on the rack, as the tables say it, and how the sheets of the case are cut out of it. */
import { type Design, type Texts, tableFiles } from "../design/index.js";
import type { Review } from "../findings/index.js";
import { readCsv } from "../measure/index.js";
import { type Html, html, plainViewHtml } from "../page/index.js";
import { goodFaces, sheetCutsDrawing, workpiecesOf } from "../recipe/index.js";
import { Refusal } from "../refusal.js";

/** A row of what can be bought. */
export interface RackRow {
  /** Its name, which is in its first cell. */
  readonly name: string;
  /** What stands under each column. */
  readonly cells: readonly string[];
}

/** A table of sheets as it is written. */
export interface RackTable {
  /** The file. */
  readonly file: string;
  /** Headers of sizes and prices. */
  readonly columns: readonly string[];
  /** Every row. */
  readonly rows: readonly RackRow[];
}

/** What somebody with other sheets changes, and what comes of it. */
export interface RackView {
  /** Sheets of ply, then those of laminate. */
  readonly tables: readonly RackTable[];
  /** The sheets with their cuts, as markup of this library; or why there are none. */
  readonly plan: string;
}

/** The page's policy allows its own style sheet alone. */
const ownStyle = / style="[^"]*"/g;

/** The rack of a case. */
export function rackOf(texts: Texts, design: Design, review: Review): RackView {
  const tables = [tableFiles.sheets, tableFiles.facings].flatMap((file) => {
    const text = texts[file];
    return text === undefined ? [] : [rackTable(text, file)];
  });
  return { tables, plan: String(planOf(design, review)).replaceAll(ownStyle, "") };
}

/** Columns that somebody with other sheets changes. */
const sizesAndPrices = /^(length|width|thickness|price)\b/i;

function rackTable(text: string, file: string): RackTable {
  const [header, ...rows] = readCsv(text, file).lines;
  const headers = header?.cells ?? [];
  const shown = headers.flatMap((one, i) => (sizesAndPrices.test(one) ? [i] : []));
  return {
    file,
    columns: shown.map((i) => headers[i] ?? ""),
    rows: rows.map(({ cells }) => ({ name: cells[0] ?? "", cells: shown.map((i) => cells[i] ?? "") })),
  };
}

function planOf({ case: build, parts }: Design, review: Review): Html {
  try {
    const { sheets, pieces, rule } = workpiecesOf({ case: build, parts, purchases: review.purchases });
    const faces = goodFaces(pieces.panels);
    return html`${sheets.map((sheet) => plainViewHtml(sheetCutsDrawing(sheet, pieces.panels, rule, faces)))}`;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return html`<p>There is no cutting plan: ${error.message}.</p>`;
  }
}

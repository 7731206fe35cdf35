/** Tables of measurements as they are written, each with what comes of it. */
import { type Design, measuredTables, type Stock, type Texts, tableFiles } from "../../design/index.js";
import { readCsv } from "../../measure/index.js";
import { wordsExpected } from "../case-form.js";
import { type Reading, readingsOf } from "./readings.js";
import type { MeasuringColumn, MeasuringName, MeasuringTable, MeasuringView } from "./view.js";

/** What each table is called, and which of its columns are new in every row. */
const shown = {
  bends: { title: "Bend tests", fresh: ["load", "sag", "rests"] },
  weights: { title: "Offcuts weighed", fresh: ["sample", "length", "width", "thickness", "mass"] },
  spreads: { title: "Spread trials", fresh: ["trial", "before", "after", "gained"] },
  pulls: { title: "Pull tests", fresh: ["test", "load"] },
  kerfs: { title: "Kerfs of blades", fresh: ["before", "after", "offcuts", "cuts"] },
} as const satisfies Readonly<
  Record<MeasuringName, { readonly title: string; readonly fresh: readonly string[] }>
>;

/** A column as its table declares it. */
interface Declared {
  readonly header: string;
  readonly example: string;
  readonly doc: string;
  readonly required: boolean;
  readonly namesIn?: readonly (keyof Stock)[];
  readUnit(unit: string | undefined): { readonly expected: string };
}

/**
 * The tables with what comes of them.
 *
 * @param texts of the job's files
 * @param design what they say; undefined where they do not fit together, and then nothing comes of them
 * @param stock names to choose from
 */
export function measuringView(texts: Texts, design: Design | undefined, stock: Stock): MeasuringView {
  const names = Object.keys(shown) as MeasuringName[];
  return { tables: names.map((name) => tableOf(name, texts, design, stock)) };
}

function tableOf(
  name: MeasuringName,
  texts: Texts,
  design: Design | undefined,
  stock: Stock,
): MeasuringTable {
  const { title, fresh } = shown[name];
  const file = tableFiles[name];
  const declared: readonly Declared[] = Object.values(measuredTables[name].declared);
  const begun = `${declared.map(({ example }) => example).join(",")}\n`;
  const text = texts[file];
  const [header, ...lines] = readCsv(text ?? begun, file).lines;
  const headers = header?.cells ?? [];
  const places = declared.map((one) => headers.findIndex((cell) => bare(cell) === one.header));
  const columns = declared.flatMap((one, i): MeasuringColumn[] => {
    const written = headers[places[i] ?? -1];
    if (written === undefined) return [];
    const names = one.namesIn?.flatMap((table) => stock[table].map((row) => row.name));
    const choices =
      names ?? (one.example === one.header ? wordsExpected(one.readUnit(undefined).expected) : undefined);
    return [
      {
        name: one.header,
        header: written,
        doc: one.doc,
        ...(choices ? { choices } : {}),
        optional: !one.required,
        again: !(fresh as readonly string[]).includes(one.header),
      },
    ];
  });
  const { readings, told } = design ? readingsOf(name, design) : { readings: [], told: [] };
  const isWhole = readings.length === lines.length;
  return {
    file,
    title,
    columns,
    rows: lines.map(({ line, cells }, i) => {
      const { off, odd }: Reading = (isWhole ? readings[i] : undefined) ?? { off: "", odd: false };
      return { line, cells: places.filter((at) => at >= 0).map((at) => cells[at] ?? ""), off, odd };
    }),
    told,
    ...(text === undefined ? { begun } : {}),
  };
}

function bare(header: string): string {
  return header
    .replace(/\([^()]*\)\s*$/, "")
    .trim()
    .toLowerCase();
}

/** What was measured at the bench as changes of as-built.csv: what stands there stays, comments too. */
import { asBuiltMeasures, type Case, type Change, tableFiles } from "../../design/index.js";
import { readCsv } from "../../measure/index.js";
import { asBuiltHead } from "../../recipe/index.js";
import { valueName } from "./notes.js";
import type { BenchValue } from "./view.js";

/** The table that the bench fills in. */
export const asBuiltFile: string = tableFiles.asBuilt;

/**
 * Changes that put figures into the table: into the row of what was measured where it has one, else as a new row. A figure
 * that was taken back leaves its cell blank.
 *
 * @param text of as-built.csv; undefined where there is none yet
 */
export function asBuiltChanges(
  text: string | undefined,
  values: readonly BenchValue[],
  build: Pick<Case, "units" | "currency">,
): readonly Change[] {
  const file = asBuiltFile;
  const lines = text === undefined ? new Map<string, number>() : linesOf(text);
  const begun: Change[] =
    text === undefined
      ? [
          {
            kind: "edits",
            edits: [{ file, at: 0, old: "", now: `# Measured at the bench.\n${asBuiltHead(build)}\n` }],
          },
        ]
      : [];
  return [
    ...begun,
    ...values.flatMap(({ key, text: typed, unit }): Change[] => {
      const column = asBuiltMeasures[key.what];
      const to = withUnit(typed.trim(), unit);
      const row = lines.get(valueName(key));
      if (row !== undefined) return [{ kind: "set", at: { file, row, column }, to }];
      if (to === "") return [];
      const { what, of, at = "", pieces } = key;
      const counted = pieces === undefined ? {} : { pieces: String(pieces) };
      return [{ kind: "add", at: { file }, what: { what, of, at, ...counted, [column]: to } }];
    }),
  ];
}

/** A bare number gets its unit, so that it means the same under a header of another one. */
function withUnit(text: string, unit: string): string {
  return /^[\d.,/ -]+$/.test(text) && unit !== "" ? `${text} ${unit}` : text;
}

/** The line of every figure of a table. */
function linesOf(text: string): ReadonlyMap<string, number> {
  const [header, ...rows] = readCsv(text, asBuiltFile).lines;
  const names = (header?.cells ?? []).map((cell) => cell.toLowerCase());
  const [what, of, at] = ["what", "of", "at"].map((name) => names.indexOf(name));
  const cell = (cells: readonly string[], column = -1): string => cells[column] ?? "";
  return new Map(
    rows.map(({ cells, line }) => [[cell(cells, what), cell(cells, of), cell(cells, at)].join("\n"), line]),
  );
}

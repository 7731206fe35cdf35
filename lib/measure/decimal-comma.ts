/** Decimal commas of spreadsheets that write them: read where a whole table has them and nothing else. */
import type { Problem } from "../problem.js";
import type { CsvLine, Delimiter } from "./csv.js";

const comma = /^[+-]?(?:\d+|\d{1,3}(?:\.\d{3})+),\d+$/;
const point = /^[+-]?\d*\.\d+$/;
/** As likely thousands as decimals. */
const unclear = /^[+-]?\d{1,3},\d{3}$/;

/** A number of a cell, of which there may be several joined by "+". */
interface Part extends Pick<CsvLine, "line"> {
  /** As written. */
  readonly text: string;
  /** What it stands under. */
  readonly heading: string | undefined;
}

/**
 * Lines with decimal points in place of commas, where all numbers of a table with a fraction have a comma. Between
 * commas, thousands and decimals are not told apart, and such cells stay as they are.
 *
 * @param headings of the columns, for the place of a problem
 * @returns the lines, and one problem for a table that has both
 */
export function withPoints(
  lines: readonly CsvLine[],
  headings: readonly string[],
  delimiter: Delimiter,
  file: string,
): { readonly lines: readonly CsvLine[]; readonly problems: readonly Problem[] } {
  const parts = lines.flatMap(({ line, cells }) =>
    cells.flatMap((cell, i) => partsOf(cell).map((text): Part => ({ line, text, heading: headings[i] }))),
  );
  const commas = parts.filter(({ text }) => comma.test(text));
  const points = parts.filter(({ text }) => point.test(text));
  const between = delimiter === ",";
  const none = { lines, problems: [] };
  if (
    commas.length === 0 ||
    (between && (points.length > 0 || commas.every(({ text }) => unclear.test(text))))
  ) {
    return none;
  }
  const [first] = points;
  const [other] = commas;
  return {
    lines: lines.map(({ line, cells }) => ({ line, cells: cells.map(pointed) })),
    problems:
      first && other
        ? [
            {
              file,
              row: first.line,
              ...(first.heading === undefined ? {} : { column: first.heading }),
              value: first.text,
              expected: `decimal commas as in row ${other.line} ("${other.text}") or decimal points, one of them in the whole table`,
            },
          ]
        : [],
  };
}

function partsOf(cell: string): string[] {
  return cell.split("+").map((part) => part.trim());
}

function pointed(cell: string): string {
  const parts = partsOf(cell);
  if (!parts.some((part) => comma.test(part))) return cell;
  return parts
    .map((part) => (comma.test(part) ? part.replaceAll(".", "").replace(",", ".") : part))
    .join("+");
}

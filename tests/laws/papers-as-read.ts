/** The printed papers as somebody reads them who has only the text: headings, tables, lists and sentences. */

/** A table, and where it stands. */
export interface ReadTable {
  /** Its headings, the outermost first: section, group. */
  readonly under: readonly string[];
  /** The bold line above it; empty where there is none. */
  readonly caption: string;
  /** The heading row. */
  readonly head: readonly string[];
  /** A text a cell. */
  readonly rows: readonly (readonly string[])[];
}

/** A step, a thing to tick off or a paragraph. */
export interface ReadLine {
  /** Its headings, the outermost first. */
  readonly under: readonly string[];
  /** The bold line above its list; empty where there is none. */
  readonly caption: string;
  /** Whether it is a numbered step, a point of a list, a line of warning, or a paragraph. */
  readonly kind: "step" | "point" | "warning" | "paragraph";
  /** What stands there. */
  readonly text: string;
}

/** The papers, read. */
export interface ReadPapers {
  /** In their order. */
  readonly tables: readonly ReadTable[];
  /** In their order. */
  readonly lines: readonly ReadLine[];
}

const plain = (text: string): string =>
  text.replace(/\\(.)/g, "$1").replaceAll("\u00a0", " ").replaceAll("\u2011", "-").trim();

const cellsOf = (line: string): readonly string[] =>
  line
    .replace(/^\|/, "")
    .replace(/\|$/, "")
    .split(/(?<!\\)\|/)
    .map(plain);

/** Reads papers that are written as Markdown. */
export function readPapers(markdown: string): ReadPapers {
  const tables: ReadTable[] = [];
  const lines: ReadLine[] = [];
  let under: readonly string[] = [];
  let caption = "";
  for (const block of markdown.split(/\n\n+/)) {
    const heading = /^(#{2,5}) (.*)$/.exec(block);
    const bold = /^\*\*(.*)\*\*$/.exec(block.trim());
    if (heading) {
      under = [...under.slice(0, (heading[1] ?? "").length - 2), plain(heading[2] ?? "")];
      caption = "";
    } else if (bold) caption = plain(bold[1] ?? "");
    else if (block.startsWith("|")) {
      const [head = "", , ...rows] = block.trim().split("\n");
      tables.push({ under, caption, head: cellsOf(head), rows: rows.map(cellsOf) });
      caption = "";
    } else {
      lines.push(...linesOf(block).map((line) => ({ under, caption, ...line })));
      if (!/^\*(Picture|Drawing)/.test(block)) caption = "";
    }
  }
  return { tables, lines };
}

function linesOf(block: string): readonly Pick<ReadLine, "kind" | "text">[] {
  return block.split("\n").flatMap((line): Pick<ReadLine, "kind" | "text">[] => {
    const [, step] = /^\d+\. (.*)$/.exec(line) ?? [];
    const [, point] = /^- (.*)$/.exec(line) ?? [];
    const [, warning] = /^> \*\*[^*]*\*\* (.*)$/.exec(line) ?? [];
    if (step !== undefined) return [{ kind: "step", text: plain(step) }];
    if (point !== undefined) return [{ kind: "point", text: plain(point.replace(/^☐ /, "")) }];
    if (warning !== undefined) return [{ kind: "warning", text: plain(warning) }];
    if (/^(>|#|\*(Picture|Drawing))/.test(line) || line.trim() === "") return [];
    return [{ kind: "paragraph", text: plain(line) }];
  });
}

/** The first length in a text, in the unit that stands there: "30-25/32 in" is 30.78125. */
export function lengthIn(text: string): number {
  return lengthsIn(text)[0] ?? Number.NaN;
}

/** Every length of a text that has one unit at its end: "11-7/8, 21-3/8 in". */
export function lengthsIn(text: string): readonly number[] {
  return [...text.matchAll(/(\d+)-(\d+)\/(\d+)|(\d+)\/(\d+)|\d+(?:\.\d+)?/g)].map(
    ([all, whole, over, under, top, bottom]) => {
      if (whole !== undefined) return Number(whole) + Number(over) / Number(under);
      if (top !== undefined) return Number(top) / Number(bottom);
      return Number(all);
    },
  );
}

/** A figure such as "1 424.53 USD". */
export function figureIn(text: string): number {
  return Number(/-?[\d ]*\d(?:\.\d+)?/.exec(text)?.[0].replaceAll(" ", "") ?? Number.NaN);
}

/** The cell of a row under a heading. */
export function cellOf(table: ReadTable, row: readonly string[], heading: string): string {
  return row[table.head.indexOf(heading)] ?? "";
}

/** Every table that has all of these headings. */
export function tablesWith({ tables }: ReadPapers, ...headings: readonly string[]): readonly ReadTable[] {
  return tables.filter(({ head }) => headings.every((heading) => head.includes(heading)));
}

/** Sum of figures. */
export const sum = (figures: readonly number[]): number => figures.reduce((all, one) => all + one, 0);

/** Where something stands in a builder's files. */
export interface ProblemPlace {
  /** Name of the file. */
  readonly file: string;
  /** Line of the file, counted from 1. */
  readonly row?: number;
  /** Column header of a CSV, or path inside a case file ("sections.upper.inside.width"). */
  readonly column?: string;
}

/** One thing wrong with a builder's files, with all that is needed to mend it. */
export interface Problem extends ProblemPlace {
  /** What stands there. */
  readonly value?: string;
  /** What should stand there. */
  readonly expected: string;
  /** Where else the same cause shows; absent for nowhere. */
  readonly also?: readonly ProblemPlace[];
}

/** A problem before those of one cause are told as one. */
export interface RawProblem extends Problem {
  /** What it has in common with others of the same cause; by its file, column and words where left out. */
  readonly cause?: string;
}

/** Thrown with every problem found, never only the first. */
export class ProblemsError extends Error {
  override readonly name = "ProblemsError";
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(
      `${problems.length} ${problems.length === 1 ? "problem" : "problems"} found\n${problems.map(showProblem).join("\n")}`,
    );
    this.problems = problems;
  }
}

/** One line: file, row, column, what was found, what was expected, and where else. */
export function showProblem(problem: Problem): string {
  const { file, row, column, value, expected } = problem;
  const place = [file, row === undefined ? "" : `row ${row}`, column ?? ""].filter(Boolean).join(", ");
  const found = value === undefined ? "" : `found "${value}", `;
  const also = alsoInWords(problem);
  return `${place}: ${found}expected ${expected}${also && ` (also in ${also})`}`;
}

/** Where else the cause of a problem shows: "rows 4 and 6, weights.csv rows 2 to 9"; empty for nowhere. */
export function alsoInWords({ file, also = [] }: Problem): string {
  const files = [...new Set(also.map((place) => place.file))];
  return files
    .map((one) => {
      const rows = also.flatMap((place) =>
        place.file === one && place.row !== undefined ? [place.row] : [],
      );
      return [one === file ? "" : one, rowsInWords(rows)].filter(Boolean).join(" ");
    })
    .join(", ");
}

function rowsInWords(rows: readonly number[]): string {
  const sorted = [...new Set(rows)].sort((a, b) => a - b);
  const starts = sorted.filter((row, i) => sorted[i - 1] !== row - 1);
  const ends = sorted.filter((row, i) => sorted[i + 1] !== row + 1);
  const words = starts.map((from, i) => {
    const to = ends[i] ?? from;
    return from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from} to ${to}`;
  });
  return sorted.length === 0 ? "" : `${sorted.length === 1 ? "row" : "rows"} ${words.join(", ")}`;
}

/** Problems of one cause told as one, at the place of the first, with all other places that it touches. */
export function grouped(problems: readonly RawProblem[]): Problem[] {
  const groups = new Map<string, RawProblem[]>();
  for (const problem of problems) {
    const key = causeOf(problem);
    groups.set(key, [...(groups.get(key) ?? []), problem]);
  }
  return [...groups.values()].flatMap(([first, ...others]) => (first ? [withPlaces(first, others)] : []));
}

function withPlaces({ cause: _, ...first }: RawProblem, others: readonly RawProblem[]): Problem {
  const text = (place: ProblemPlace): string => JSON.stringify([place.file, place.row, place.column]);
  const places = [first, ...others].flatMap(({ file, row, column, also = [] }): ProblemPlace[] => [
    { file, ...(row === undefined ? {} : { row }), ...(column === undefined ? {} : { column }) },
    ...also,
  ]);
  const [, ...also] = new Map(places.map((place) => [text(place), place])).values();
  return also.length > 0 ? { ...first, also } : first;
}

/** Unless it says so itself: what is wrong in the same way in one column, or under one word of the case file. */
function causeOf({ cause, file, column = "", expected }: RawProblem): string {
  const word = column
    .split(".")
    .filter((part) => !/^\d+$/.test(part))
    .at(-1);
  return cause ?? JSON.stringify([file, word, expected]);
}

/** What was most likely meant by a word, for the end of a sentence: `; did you mean "climate"?`, or nothing. */
export function didYouMean(word: string, known: readonly string[]): string {
  const meant = nearestWord(word, known) ?? onlyOneWith(word, known);
  return meant === undefined ? "" : `; did you mean "${meant}"?`;
}

/** The one known name that a shorter one is part of: "birch ply 9" for "ply 9". */
function onlyOneWith(word: string, known: readonly string[]): string | undefined {
  const parted = (text: string): string => ` ${text.toLowerCase().replace(/[\s_-]+/g, " ")} `;
  const [one, ...others] = known.filter((name) => parted(name).includes(parted(word)));
  return word.length < 3 || others.length > 0 ? undefined : one;
}

/** The known word that another is a slip of, if any. Figures and first letters are never slips. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, " ");
  const figures = (text: string): string => text.replace(/\D/g, " ").trim().replace(/ +/g, " ");
  const near = known
    .filter((one) => figures(one) === figures(word) && plain(one)[0] === plain(word)[0])
    .map((one) => ({ one, slips: slipsBetween(plain(word), plain(one)) }))
    .filter(({ one, slips }) => slips <= slipsLikely(Math.max(word.length, one.length)))
    .sort((a, b) => a.slips - b.slips);
  return near[0]?.one;
}

/** Two slips make another word of a short one: "hole" is no slip of "hour". */
function slipsLikely(letters: number): number {
  return letters < 5 ? 1 : Math.max(2, letters / 3);
}

/** Letters to add, leave out or change to make one word of another. */
function slipsBetween(one: string, other: string): number {
  const first = Array.from({ length: other.length + 1 }, (_, i) => i);
  const last = [...one].reduce<number[]>((above, letter, i) => {
    const row = [i + 1];
    for (const [j, wanted] of [...other].entries()) {
      const change = (above[j] ?? 0) + (letter === wanted ? 0 : 1);
      row.push(Math.min(change, (above[j + 1] ?? 0) + 1, (row[j] ?? 0) + 1));
    }
    return row;
  }, first);
  return last.at(-1) ?? 0;
}

/** One thing wrong with a builder's file, with all that is needed to mend it. */
export interface Problem {
  /** Name of the file. */
  readonly file: string;
  /** Line of the file, counted from 1. */
  readonly row?: number;
  /** Column header of a CSV, or path inside a case file ("sections.upper.inside.width"). */
  readonly column?: string;
  /** What stands there. */
  readonly value?: string;
  /** What should stand there. */
  readonly expected: string;
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

/** One line: file, row, column, what was found, what was expected. */
export function showProblem({ file, row, column, value, expected }: Problem): string {
  const place = [file, row === undefined ? "" : `row ${row}`, column ?? ""].filter(Boolean).join(", ");
  return value === undefined
    ? `${place}: expected ${expected}`
    : `${place}: found "${value}", expected ${expected}`;
}

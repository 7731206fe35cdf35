/** One published value beside ours, and how the two are compared. */

/** What every kind of reference file comes to: values compared, one a row. */

/** One value compared. */
export interface ReferenceOutcome {
  /** What was run: a formula, a case, an instance. */
  readonly item: string;
  /** Which of its results. */
  readonly result: string;
  /** The published value, with its unit. */
  readonly expected: string;
  /** Our value, with its unit. */
  readonly ours: string;
  /** As the kind measures it: relative, digits, sheets. */
  readonly error: string;
  /** How far apart they may be. */
  readonly tolerance: string;
  /** The estimated mesh error, in the same measure as the error; only where there is a mesh. */
  readonly meshError?: string;
  /** Whether they are no further apart. */
  readonly holds: boolean;
  /** How the expected value is known. */
  readonly known: string;
}

/** Runs the contents of a file of one kind. Throws with a message that names the row or case. */
export type ReferenceRunner = (content: unknown) => readonly ReferenceOutcome[];

/** A value of the file with its band. */
interface Banded {
  /** The value of the file. */
  readonly value: number;
  /** How unsure it is, in the same unit. */
  readonly tol: number;
}

/** A value by its name in the file; undefined for a name that is not known. */
export type ValueNamed = (name: string) => number | undefined;

/**
 * Rows for every banded value, in the file's order.
 *
 * @param item the case
 * @param expected values by name; plain notes among them are passed over
 * @param ours ours by the same name
 * @param coarse ours on a coarser mesh
 */
export function compared(
  item: string,
  expected: Readonly<Record<string, unknown>>,
  ours: ValueNamed,
  coarse: ValueNamed,
): readonly ReferenceOutcome[] {
  return Object.entries(expected).flatMap(([result, wanted]) =>
    isBanded(wanted) ? [outcome(item, result, wanted, ours(result), coarse(result))] : [],
  );
}

function isBanded(value: unknown): value is Banded {
  const { value: number, tol } = (value ?? {}) as { readonly value?: unknown; readonly tol?: unknown };
  return typeof number === "number" && typeof tol === "number";
}

function outcome(
  item: string,
  result: string,
  { value, tol }: Banded,
  ours: number | undefined,
  coarse: number | undefined,
): ReferenceOutcome {
  const off = ours === undefined ? Infinity : ours - value;
  return {
    item,
    result,
    expected: shown(value),
    ours: ours === undefined ? "none" : shown(ours),
    error: errorShown(off, value, tol),
    ...(ours === undefined || coarse === undefined
      ? {}
      : { meshError: errorShown(Math.abs(ours - coarse), Math.abs(value), tol) }),
    tolerance: `+-${shown(tol)}`,
    holds: Math.abs(off) <= tol,
    known: "derived",
  };
}

/** In percent of the value; of the band where the value is next to nothing. */
function errorShown(off: number, value: number, tol: number): string {
  return Math.abs(value) > tol ? `${((100 * off) / value).toFixed(2)} %` : `${(off / tol).toFixed(3)} band`;
}

function shown(value: number): string {
  return String(Number(value.toPrecision(6)));
}

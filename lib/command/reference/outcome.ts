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

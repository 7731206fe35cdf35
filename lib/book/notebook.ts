/** A notebook in memory, as nbformat 4.5 describes it, with every text in one piece. */

/** What a mime bundle holds: text, or the parsed value for the JSON kinds. */
export type MimeBundle = Readonly<Record<string, unknown>>;

/** Text that a cell printed. */
interface StreamOutput {
  /** Marks text that was printed. */
  readonly output_type: "stream";
  /** Which of the two streams. */
  readonly name: "stdout" | "stderr";
  /** In one piece. */
  readonly text: string;
}

/** Something a cell shows. */
export interface DisplayOutput {
  /** Marks a thing shown. */
  readonly output_type: "display_data";
  /** The thing in each of its kinds. */
  readonly data: MimeBundle;
  /** About the data, by kind. */
  readonly metadata: Readonly<Record<string, unknown>>;
}

/** The value of a cell's last expression, from kernels that send it as such. */
interface ResultOutput {
  /** Marks the value of an expression. */
  readonly output_type: "execute_result";
  /** The cell's number in the session. */
  readonly execution_count: number | null;
  /** The value in each of its kinds. */
  readonly data: MimeBundle;
  /** About the data, by kind. */
  readonly metadata: Readonly<Record<string, unknown>>;
}

/** Why a cell failed. */
export interface ErrorOutput {
  /** Marks an error. */
  readonly output_type: "error";
  /** Name of the error's class. */
  readonly ename: string;
  /** Its message. */
  readonly evalue: string;
  /** Where it was thrown, line by line. */
  readonly traceback: readonly string[];
}

/** Anything that stands under a cell. */
export type Output = StreamOutput | DisplayOutput | ResultOutput | ErrorOutput;

interface AnyCell {
  /** Unique within the notebook. */
  readonly id: string;
  /** Tags, and what editors leave there. */
  readonly metadata: Readonly<Record<string, unknown>>;
  /** The text in one piece. */
  readonly source: string;
}

/** Code, with what it gave when it was last run. */
export interface CodeCell extends AnyCell {
  /** Marks code. */
  readonly cell_type: "code";
  /** Its number in the session; null when it was not run. */
  readonly execution_count: number | null;
  /** What stands under it, in order. */
  readonly outputs: readonly Output[];
}

/** Text to read, or text for a converter. */
interface TextCell extends AnyCell {
  /** Text to read, or text for a converter. */
  readonly cell_type: "markdown" | "raw";
  /** Pictures pasted into the text, by name. */
  readonly attachments?: Readonly<Record<string, MimeBundle>> | undefined;
}

/** One cell. */
export type Cell = CodeCell | TextCell;

/** One notebook. */
export interface Notebook {
  /** Major version of the format. */
  readonly nbformat: 4;
  /** Minor version of the format. */
  readonly nbformat_minor: 5;
  /** Kernel and language. */
  readonly metadata: Readonly<Record<string, unknown>>;
  /** In order. */
  readonly cells: readonly Cell[];
}

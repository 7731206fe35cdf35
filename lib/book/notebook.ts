/** A notebook in memory, as nbformat 4.5 describes it, with every text in one piece. */

/** What a mime bundle holds: text, or the parsed value for the JSON kinds. */
export type MimeBundle = Readonly<Record<string, unknown>>;

/** Text that a cell printed. */
export interface StreamOutput {
  readonly output_type: "stream";
  readonly name: "stdout" | "stderr";
  readonly text: string;
}

/** Something a cell shows. */
export interface DisplayOutput {
  readonly output_type: "display_data";
  readonly data: MimeBundle;
  readonly metadata: Readonly<Record<string, unknown>>;
}

/** The value of a cell's last expression, from kernels that send it as such. */
export interface ResultOutput {
  readonly output_type: "execute_result";
  readonly execution_count: number | null;
  readonly data: MimeBundle;
  readonly metadata: Readonly<Record<string, unknown>>;
}

/** Why a cell failed. */
export interface ErrorOutput {
  readonly output_type: "error";
  readonly ename: string;
  readonly evalue: string;
  readonly traceback: readonly string[];
}

/** Anything that stands under a cell. */
export type Output = StreamOutput | DisplayOutput | ResultOutput | ErrorOutput;

interface AnyCell {
  /** Unique within the notebook. */
  readonly id: string;
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly source: string;
}

/** Code, with what it gave when it was last run. */
export interface CodeCell extends AnyCell {
  readonly cell_type: "code";
  /** Its number in the session; null when it was not run. */
  readonly execution_count: number | null;
  readonly outputs: readonly Output[];
}

/** Text to read, or text for a converter. */
export interface TextCell extends AnyCell {
  readonly cell_type: "markdown" | "raw";
  /** Pictures pasted into the text, by name. */
  readonly attachments?: Readonly<Record<string, MimeBundle>> | undefined;
}

/** One cell. */
export type Cell = CodeCell | TextCell;

/** One notebook. */
export interface Notebook {
  readonly nbformat: 4;
  readonly nbformat_minor: 5;
  readonly metadata: Readonly<Record<string, unknown>>;
  readonly cells: readonly Cell[];
}

/** Notebook files, nbformat 4.5: reading with every mistake named, and printing as Jupyter prints. */
import { z } from "zod";
import { ProblemsError } from "../problem.js";

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

const multiline = z
  .union([z.string(), z.array(z.string())])
  .transform((text) => (typeof text === "string" ? text : text.join("")));
const metadata = z.record(z.string(), z.unknown());
const mimeBundle = z.record(z.string(), z.unknown()).transform(joinTexts);
const count = z.int().min(0).nullable();

const output = z.discriminatedUnion("output_type", [
  z.strictObject({ output_type: z.literal("stream"), name: z.enum(["stdout", "stderr"]), text: multiline }),
  z.strictObject({ output_type: z.literal("display_data"), data: mimeBundle, metadata }),
  z.strictObject({
    output_type: z.literal("execute_result"),
    execution_count: count,
    data: mimeBundle,
    metadata,
  }),
  z.strictObject({
    output_type: z.literal("error"),
    ename: z.string(),
    evalue: z.string(),
    traceback: z.array(z.string()),
  }),
]);

const anyCell = {
  id: z.string().regex(/^[a-zA-Z0-9-_]{1,64}$/, "expected 1 to 64 letters, digits, - or _"),
  metadata,
  source: multiline,
};
const attachments = z.record(z.string(), mimeBundle).optional();

const cell = z.discriminatedUnion("cell_type", [
  z.strictObject({
    cell_type: z.literal("code"),
    ...anyCell,
    execution_count: count,
    outputs: z.array(output),
  }),
  z.strictObject({ cell_type: z.literal("markdown"), ...anyCell, attachments }),
  z.strictObject({ cell_type: z.literal("raw"), ...anyCell, attachments }),
]);

const notebook: z.ZodType<Notebook> = z.strictObject({
  nbformat: z.literal(4),
  nbformat_minor: z.literal(5),
  metadata,
  cells: z.array(cell).superRefine((cells, context) => {
    const ids = cells.map(({ id }) => id);
    ids.forEach((id, i) => {
      if (ids.indexOf(id) < i) {
        context.addIssue({
          code: "custom",
          path: [i, "id"],
          message: `expected an id of its own, "${id}" is taken`,
        });
      }
    });
  }),
});

/**
 * Reads the text of a notebook file.
 *
 * @param file its name, for the messages
 * @throws ProblemsError naming every place that is not as nbformat 4.5 has it
 */
export function parseNotebook(text: string, file: string): Notebook {
  const { data, error } = notebook.safeParse(parseJson(text, file));
  if (data) return data;
  throw new ProblemsError(
    error.issues.map(({ path, message }) => ({
      file,
      column: path.join("."),
      expected: withoutLead(message),
    })),
  );
}

/** Prints a notebook byte for byte as Jupyter does: keys sorted, one space of indent, text as lines. */
export function printNotebook({ cells, ...rest }: Notebook): string {
  const stored = { ...rest, cells: cells.map(storedCell) };
  return `${JSON.stringify(sortKeys(stored), null, 1)}\n`;
}

function parseJson(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new ProblemsError([{ file, expected: `a notebook in JSON (${(error as Error).message})` }]);
  }
}

function withoutLead(message: string): string {
  return message.replace(/^(Invalid input: )?expected /, "");
}

function joinTexts(bundle: Record<string, unknown>): MimeBundle {
  return mapBundle(bundle, (value) => (Array.isArray(value) ? value.join("") : value));
}

function storedCell(cell: Cell): object {
  const source = splitLines(cell.source);
  if (cell.cell_type !== "code") return { ...cell, source };
  return { ...cell, source, outputs: cell.outputs.map(storedOutput) };
}

function storedOutput(output: Output): object {
  if (output.output_type === "error") return output;
  if (output.output_type === "stream") return { ...output, text: splitLines(output.text) };
  const stored = (value: unknown): unknown => (typeof value === "string" ? splitLines(value) : value);
  return { ...output, data: mapBundle(output.data, stored) };
}

/** JSON kinds hold a value of any shape, so only the other kinds are text. */
function mapBundle(bundle: MimeBundle, map: (value: unknown) => unknown): MimeBundle {
  const isJson = (kind: string): boolean => kind === "application/json" || kind.endsWith("+json");
  return Object.fromEntries(
    Object.entries(bundle).map(([kind, value]) => [kind, isJson(kind) ? value : map(value)]),
  );
}

function splitLines(text: string): string[] {
  return text === "" ? [] : text.split(/(?<=\n)/);
}

function sortKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortKeys);
  if (typeof value !== "object" || value === null) return value;
  const sorted = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(sorted.map(([key, part]) => [key, sortKeys(part)]));
}

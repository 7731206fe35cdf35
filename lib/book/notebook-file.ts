/** Notebook files, nbformat 4.5: reading with every mistake named, and printing as Jupyter prints. */

import { z } from "zod";
import { ProblemsError } from "../problem.js";
import type { Cell, MimeBundle, Notebook, Output } from "./notebook.js";

/**
 * Reads the text of a notebook file.
 *
 * @param file its name, for the messages
 * @throws ProblemsError naming every place that is not as nbformat 4.5 has it
 */
export function parseNotebook(text: string, file: string): Notebook {
  const { data, error } = notebookSchema.safeParse(parseJson(text, file));
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

/** @throws ProblemsError when it is no JSON */
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

function storedCell(cell: Cell): object {
  const source = splitLines(cell.source);
  if (cell.cell_type !== "code") return { ...cell, source };
  return { ...cell, source, outputs: cell.outputs.map(storedOutput) };
}

function storedOutput(output: Output): object {
  if (output.output_type === "error") return output;
  if (output.output_type === "stream") return { ...output, text: splitLines(output.text) };
  return { ...output, data: splitTexts(output.data) };
}

function sortKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortKeys);
  if (typeof value !== "object" || value === null) return value;
  const sorted = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(sorted.map(([key, part]) => [key, sortKeys(part)]));
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

/** A notebook file of nbformat 4.5, its texts joined. */
const notebookSchema: z.ZodType<Notebook> = z.strictObject({
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

/** A bundle with its texts in one piece. */
function joinTexts(bundle: MimeBundle): MimeBundle {
  return mapTexts(bundle, (value) => (Array.isArray(value) ? value.join("") : value));
}

/** A bundle with its texts in lines. */
function splitTexts(bundle: MimeBundle): MimeBundle {
  return mapTexts(bundle, (value) => (typeof value === "string" ? splitLines(value) : value));
}

/** Lines of a text, each with its end. */
function splitLines(text: string): string[] {
  return text === "" ? [] : text.split(/(?<=\n)/);
}

/** JSON kinds hold a value of any shape, so only the other kinds are text. */
function mapTexts(bundle: MimeBundle, map: (value: unknown) => unknown): MimeBundle {
  const isJson = (kind: string): boolean => kind === "application/json" || kind.endsWith("+json");
  return Object.fromEntries(
    Object.entries(bundle).map(([kind, value]) => [kind, isJson(kind) ? value : map(value)]),
  );
}

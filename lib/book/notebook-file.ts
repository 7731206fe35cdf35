/** Notebook files, nbformat 4.5: reading with every mistake named, and printing as Jupyter prints. */
import { ProblemsError } from "../problem.js";
import { splitLines, splitTexts } from "./mime-bundle.js";
import type { Cell, Notebook, Output } from "./notebook.js";
import { notebookSchema } from "./notebook-schema.js";

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

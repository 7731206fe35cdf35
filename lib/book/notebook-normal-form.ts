/** The form in which notebooks are kept: no outputs, no traces of an editor, the same bytes for the same text. */
import { createHash } from "node:crypto";
import type { Cell, Notebook } from "./notebook.js";

/** Metadata of every notebook here: which kernel runs it, and its language. */
const metadata: Notebook["metadata"] = {
  kernelspec: { display_name: "TypeScript (Casewright)", language: "typescript", name: "casewright" },
  language_info: { file_extension: ".ts", mimetype: "text/typescript", name: "typescript" },
};

/** Ids that an editor drew at random: 8 hex digits, or a UUID. */
const randomId = /^[0-9a-f]{8}(-[0-9a-f]{4}){0,3}(-[0-9a-f]{12})?$/;

/** A notebook in the form in which it is kept. Ids written by hand stay; random ones come from the text. */
export function cleanNotebook(notebook: Notebook): Notebook {
  const kept = notebook.cells.filter((cell, i) => i < notebook.cells.length - 1 || cell.source.trim() !== "");
  const taken = new Set(kept.map(({ id }) => id).filter((id) => !randomId.test(id)));
  const cells = kept.map((cell) => cleanCell(cell, randomId.test(cell.id) ? newId(cell, taken) : cell.id));
  return { nbformat: 4, nbformat_minor: 5, metadata, cells };
}

function cleanCell(cell: Cell, id: string): Cell {
  const { tags } = cell.metadata;
  const clean = { ...cell, id, metadata: tags === undefined ? {} : { tags } };
  return clean.cell_type === "code" ? { ...clean, execution_count: null, outputs: [] } : clean;
}

/** An id from the text of the cell, so that it stays when cells are moved. */
function newId({ source }: Cell, taken: Set<string>): string {
  const id = `c-${createHash("sha256").update(source).digest("hex").slice(0, 8)}`;
  let free = id;
  for (let copy = 2; taken.has(free); copy += 1) free = `${id}-${copy}`;
  taken.add(free);
  return free;
}

/**
 * A change of a job's files as a value: where and what, in the builder's words. It is applied by range, so that
 * comments, order and layout of the files stay, and it comes back with the change that undoes it.
 */

import { type CaseChange, type CasePlace, caseEdit, type TextEdit } from "./change-case.js";
import { type CellPlace, type NewRow, type RowPlace, type TableChange, tableEdit } from "./change-table.js";
import { type ChangeValue, caseText, type PutAt, textOf } from "./change-value.js";
import { caseFile } from "./read-design.js";

/** One piece of the text of a file in place of another. */
export interface Edit extends TextEdit {
  /** The file, such as "case.yaml". */
  readonly file: string;
}

/** A change of a job's files. */
export type Change = CaseChange | TableChange | { readonly kind: "edits"; readonly edits: readonly Edit[] };

/**
 * Puts a value in place of another, or where none stood. A cell of a table takes any text: what its column does not
 * measure is told when the files are read.
 *
 * @param to text as in the file, or a quantity, a number, yes or no, or a list of words
 * @throws RangeError for a quantity that a place of the case does not measure, or a bare number where a unit is needed
 * @example set("upper.front.display window.width", mm(400))
 */
export function set<const At extends CasePlace | CellPlace, const To extends ChangeValue>(
  at: At,
  to: PutAt<At, To>,
): Change;
export function set(at: CasePlace | CellPlace, to: ChangeValue): Change {
  return typeof at === "string"
    ? { kind: "set", at, to: caseText(at, to) }
    : { kind: "set", at, to: textOf(`set ${at.file}`, to) };
}

/** Adds a block, an item of a list (its place is the length of the list) or, given a file, a row of a table. */
export function add(at: CasePlace, what: string): Change;
export function add(at: { readonly file: string }, what: NewRow): Change;
export function add(at: CasePlace | { readonly file: string }, what: string | NewRow): Change {
  return { kind: "add", at, what } as Change;
}

/** Takes a value, a block, an item of a list or a row of a table away. */
export function remove(at: CasePlace | RowPlace): Change {
  return typeof at === "string" ? { kind: "remove", at } : { kind: "remove", at };
}

/** Gives a block or a row another name. What refers to it keeps the old one. */
export function rename(at: CasePlace | RowPlace, to: string): Change {
  return typeof at === "string" ? { kind: "rename", at, to } : { kind: "rename", at, to };
}

/** The texts of a job's files, by file name. */
export type Texts = Readonly<Record<string, string>>;

/** Texts after a change. */
export interface Changed {
  /** The texts of all files, by file name. */
  readonly texts: Texts;
  /** The change that gives the texts before again, byte for byte. */
  readonly undo: Change;
}

/**
 * Applies changes one after another. Texts are not checked as a job: read them to see whether they still are one.
 *
 * @throws RangeError for a place that is not there or not only one, or a change that no edit of the text can make
 */
export function applyChange(texts: Texts, ...changes: readonly Change[]): Changed {
  let now: Texts = texts;
  const done: Edit[] = [];
  for (const change of changes) {
    for (const edit of change.kind === "edits" ? change.edits : [editOf(now, change)]) {
      now = edited(now, edit);
      done.push(edit);
    }
  }
  const back = done.reverse().map(({ old, now: put, ...where }): Edit => ({ ...where, old: put, now: old }));
  return { texts: now, undo: { kind: "edits", edits: back } };
}

/** @throws RangeError for a file that the job does not have */
function editOf(texts: Texts, change: CaseChange | TableChange): Edit {
  const file = isOfCase(change) ? caseFile : change.at.file;
  const text = texts[file];
  if (text === undefined) throw new RangeError(`${file}: no such file in the job`);
  const edit = isOfCase(change) ? caseEdit(text, file, change) : tableEdit(text, change);
  return { file, ...edit };
}

function isOfCase(change: CaseChange | TableChange): change is CaseChange {
  return typeof change.at === "string";
}

/** @throws RangeError when the text to replace does not stand there */
function edited(texts: Texts, { file, at, old, now }: Edit): Texts {
  const text = texts[file] ?? "";
  if (text.slice(at, at + old.length) !== old) {
    throw new RangeError(`${file}: expected "${old}" at character ${at}, the file has changed since`);
  }
  return { ...texts, [file]: text.slice(0, at) + now + text.slice(at + old.length) };
}

/** Every field of a case file as a form shows it, from the declarations that the file is read by. */
import { parse } from "yaml";
import { caseForm, type Field, type Form, type Stock, tableFiles } from "../design/index.js";

/** One line of the form: a field with its value, or a block that holds further lines. */
export interface FormEntry {
  /** Its full place in case.yaml: "sections.upper.inside.width". */
  readonly place: string;
  /** Its word in the file, or its name. */
  readonly word: string;
  /** What it is, in a sentence; empty where nobody declared it. */
  readonly doc: string;
  /** What may stand there, in words. */
  readonly expected?: string;
  /** Words to choose from. */
  readonly choices?: readonly string[];
  /** What stands there; absent for a block, and for what is left out. */
  readonly value?: string;
  /** Whether it must be written. */
  readonly needed: boolean;
  /** What a block, a list or names hold. */
  readonly inner?: readonly FormEntry[];
}

/** What is known of a place before its value is looked at. */
interface Known {
  /** Its full place. */
  readonly place: string;
  /** Its word or name. */
  readonly word: string;
  /** What it is. */
  readonly doc: string;
  /** Whether it must be written. */
  readonly needed: boolean;
  /** What may stand there, where somebody declared it. */
  readonly form?: Form<unknown>;
}

/**
 * The form of a case file. Values that nobody declared by field, such as those of an opening, are shown as they stand.
 *
 * @param text a case file that can be read
 * @param stock what can be bought, for the names to choose from
 */
export function formOf(text: string, stock: Stock): readonly FormEntry[] {
  const content: unknown = parse(text);
  const whole: Known = { place: "", word: "", doc: "", needed: true, form: caseForm };
  return entryOf(whole, content, namesByFile(stock)).inner ?? [];
}

type Names = ReadonlyMap<string, readonly string[]>;

function namesByFile(stock: Stock): Names {
  const tables = Object.entries(stock) as [keyof Stock, Stock[keyof Stock]][];
  return new Map(tables.map(([table, rows]) => [tableFiles[table], rows.map(({ name }) => name)]));
}

function entryOf(known: Known, value: unknown, names: Names): FormEntry {
  const { form, ...told } = known;
  const expected = form?.expected;
  const choices = choicesOf(known.doc, expected, names);
  const line = { ...told, ...(expected === undefined ? {} : { expected }), ...(choices ? { choices } : {}) };
  if (Array.isArray(value) && value.some(isBlock)) {
    const items = value.map((item, i) => innerOf(known, String(i), item, names));
    return { ...line, inner: items };
  }
  if (isBlock(value) && !Array.isArray(value)) return { ...line, inner: blockOf(known, value, names) };
  if (value === undefined) return line;
  return { ...line, value: Array.isArray(value) ? `[${value.join(", ")}]` : String(value) };
}

/** The fields of a block, those left out last; or the names in a block of names. */
function blockOf(known: Known, value: object, names: Names): readonly FormEntry[] {
  const { form } = known;
  const written = Object.entries(value).map(([word, one]) => innerOf(known, word, one, names));
  const absent = Object.values(form?.fields ?? {})
    .filter(({ key }) => !(key in value))
    .map((field) => entryOf(knownOf(known.place, field), undefined, names));
  return [...written, ...absent];
}

function innerOf(known: Known, word: string, value: unknown, names: Names): FormEntry {
  const field = Object.values(known.form?.fields ?? {}).find(({ key }) => key === word);
  if (field) return entryOf(knownOf(known.place, field), value, names);
  const place = under(known.place, word);
  const item = known.form?.item;
  return entryOf({ place, word, doc: "", needed: false, ...(item ? { form: item } : {}) }, value, names);
}

function knownOf(block: string, { key, doc, needed, form }: Field<unknown>): Known {
  return { place: under(block, key), word: key, doc, needed, form };
}

function under(place: string, word: string): string {
  return place === "" ? word : `${place}.${word}`;
}

function choicesOf(doc: string, expected: string | undefined, names: Names): readonly string[] | undefined {
  const words = wordsExpected(expected);
  if (words !== undefined) return words;
  const [file] = /[\w-]+\.csv/.exec(doc) ?? [];
  return file === undefined ? undefined : names.get(file);
}

/** The words to choose from that an expectation tells; undefined where it tells none. */
export function wordsExpected(expected = ""): readonly string[] | undefined {
  return /^one of (.*)$/.exec(expected)?.[1]?.split(", ");
}

function isBlock(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}

/** A change of case.yaml as one piece of its text in place of another. */
import {
  type Document,
  isCollection,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  stringify,
} from "yaml";
import { keptByContent } from "../kept/index.js";
import { didYouMean } from "../problem.js";
import { faces } from "./place.js";
import { contentOf, faultsBefore } from "./read/yaml-words.js";

/**
 * A place in case.yaml, its words joined by dots: "sections.upper.panels.front.openings.stage.rectangle.width". Words
 * between may be left out while one place alone is meant: "upper.front.stage.width".
 */
export type CasePlace = string;

/** One piece of a text in place of another. */
export interface TextEdit {
  /** Where it begins, in characters from the start of the file. */
  readonly at: number;
  /** What stands there before. */
  readonly old: string;
  /** What stands there after. */
  readonly now: string;
}

/** A change of case.yaml. Values are written as in the file: "14-1/2", "600 mm", "{ by: floor }". */
export type CaseChange =
  | { readonly kind: "set"; readonly at: CasePlace; readonly to: string }
  | { readonly kind: "add"; readonly at: CasePlace; readonly what: string }
  | { readonly kind: "remove"; readonly at: CasePlace }
  | { readonly kind: "rename"; readonly at: CasePlace; readonly to: string };

type Path = readonly string[];

/** A value of the file with what it stands in. */
interface Spot {
  /** Its words from the top of the file. */
  readonly path: Path;
  /** The block or the list that holds it. */
  readonly parent: Node;
  /** Its name; absent for an item of a list. */
  readonly key?: Node;
  /** What stands there. */
  readonly value: Node | null;
  /** Its position among its siblings, counted from 0. */
  readonly index: number;
}

/**
 * The edit that makes a change.
 *
 * @throws RangeError for a place that is not there or not only one, or a change that no edit of the text can make
 */
export function caseEdit(text: string, file: string, change: CaseChange): TextEdit {
  const before = readCase(text);
  if (!before) throw new RangeError(`${file}: not readable as YAML, so nothing can be changed`);
  const { document, content } = before;
  const root: Spot = { path: [], parent: document.contents as Node, value: document.contents, index: 0 };
  const { path, wanted, edits } = planned(text, root, change);
  const expected = JSON.stringify(contentWith(content, path, change.kind, wanted));
  const edit = edits.find(({ at, old, now }) => {
    const after = readCase(text.slice(0, at) + now + text.slice(at + old.length));
    return after !== undefined && JSON.stringify(after.content) === expected;
  });
  if (!edit)
    throw new RangeError(`${file}, ${change.at}: expected a change that an edit of the text can make`);
  return edit;
}

/** What was read of a text. */
interface ReadText {
  /** The document. */
  readonly document: Document;
  /** Its plain content. */
  readonly content: unknown;
}

/** A case file or a value of one; undefined where it cannot be read, or repeats what nothing marks. */
function readText(text: string, uniqueKeys = false): ReadText | undefined {
  if (faultsBefore(text).length > 0) return undefined;
  const document = parseDocument(text, { uniqueKeys });
  if (document.errors.length > 0) return undefined;
  const plain = contentOf(document, text);
  return "at" in plain ? undefined : { document, content: plain.content };
}

/** What was read of the last texts: the text after a change is the text before the next one. */
const readCase = keptByContent(8, (text: string) => readText(text));

/** Every place of a case file that some words of it may mean, with what stands there; none for a file that is no YAML. */
export function placesOf(
  text: string,
  at: CasePlace,
): readonly { readonly path: readonly string[]; readonly value: unknown }[] {
  const read = readCase(text);
  if (!read) return [];
  const { document } = read;
  const root: Spot = { path: [], parent: document.contents as Node, value: document.contents, index: 0 };
  return matches(root, at).map(({ path, value }) => ({ path, value: value?.toJS(document) }));
}

/** What a change comes to: the full path, the new value or name, and edits that may make it, best first. */
interface Plan {
  /** Its words from the top of the file. */
  readonly path: Path;
  /** The new value or name. */
  readonly wanted: unknown;
  /** Edits that may make it, best first. */
  readonly edits: readonly TextEdit[];
}

/** @throws RangeError for a place that is not there, not only one, or there already */
function planned(text: string, root: Spot, change: CaseChange): Plan {
  const found = matches(root, change.at);
  const [spot] = found;
  if (found.length > 1) {
    const places = found.map(({ path }) => path.join(".")).join(", ");
    throw new RangeError(`case.yaml, ${change.at}: expected one place, it may be ${places}`);
  }
  switch (change.kind) {
    case "set":
      return spot ? settingPlan(text, spot, change.to) : addingPlan(text, root, change.at, change.to);
    case "add":
      if (spot?.path.join(".") === change.at)
        throw new RangeError(`case.yaml, ${change.at}: it is there already`);
      return addingPlan(text, root, change.at, change.what);
    case "remove":
      return {
        path: existing(spot, change.at).path,
        wanted: undefined,
        edits: removals(text, existing(spot, change.at)),
      };
    case "rename": {
      const { path, key, parent } = existing(spot, change.at);
      if (!key) throw new RangeError(`case.yaml, ${change.at}: an item of a list has no name`);
      if (children([], parent).some(({ path: [name] }) => name === change.to)) {
        throw new RangeError(`case.yaml, ${change.at}: there is a "${change.to}" beside it already`);
      }
      return { path, wanted: change.to, edits: writings(change.to).map((now) => replacing(text, key, now)) };
    }
  }
}

/** @throws RangeError for a place that is not there */
function existing(spot: Spot | undefined, at: string): Spot {
  if (!spot) throw new RangeError(`case.yaml, ${at}: no such place`);
  return spot;
}

// Places

/** The place of a full path, or else every place whose path has these words in this order and ends with the last. */
function matches(root: Spot, at: string): readonly Spot[] {
  const words = at.split(".");
  const all = [...spotsUnder(root)];
  const whole = all.find(({ path }) => path.join(".") === at);
  return whole ? [whole] : all.filter(({ path }) => path.at(-1) === words.at(-1) && isWithin(words, path));
}

function isWithin(words: Path, path: Path): boolean {
  let next = 0;
  for (const step of path) if (step === words[next]) next++;
  return next === words.length;
}

function* spotsUnder({ path, value }: Spot): Iterable<Spot> {
  for (const spot of children(path, value)) {
    yield spot;
    yield* spotsUnder(spot);
  }
}

function children(path: Path, parent: Node | null): Spot[] {
  if (!isCollection(parent)) return [];
  return parent.items.map((item, index): Spot => {
    if (!isPair(item)) return { path: [...path, String(index)], parent, value: item as Node, index };
    const { key, value } = item as Pair<Node, Node | null>;
    return { path: [...path, String(isScalar(key) ? key.value : key)], parent, key, value, index };
  });
}

// Contents

/** What the file must say after a change. */
function contentWith(
  content: unknown,
  [step, ...rest]: Path,
  kind: CaseChange["kind"],
  wanted: unknown,
): unknown {
  if (step === undefined) return wanted;
  const deeper = (inner: unknown): unknown => contentWith(inner, rest, kind, wanted);
  const isLast = rest.length === 0;
  if (Array.isArray(content)) {
    const items: readonly unknown[] = content;
    if (isLast && kind === "remove") return items.filter((_, i) => String(i) !== step);
    return Number(step) === items.length
      ? [...items, deeper(undefined)]
      : items.map((item, i) => (String(i) === step ? deeper(item) : item));
  }
  const entries = Object.entries((content ?? {}) as object);
  if (isLast && kind === "remove") return Object.fromEntries(entries.filter(([name]) => name !== step));
  if (isLast && kind === "rename") {
    return Object.fromEntries(entries.map(([name, value]) => [name === step ? wanted : name, value]));
  }
  const isNew = !entries.some(([name]) => name === step);
  return Object.fromEntries([
    ...entries.map(([name, value]) => [name, name === step ? deeper(value) : value]),
    ...(isNew ? [[step, deeper(undefined)]] : []),
  ]);
}

/** What a text means where it stands alone: a value of YAML, or the text itself where it is none. */
function meaning(written: string): unknown {
  const read = readText(written, true);
  return read && !hasComment(read.document) ? read.content : written;
}

function hasComment({ contents, comment, commentBefore }: Document): boolean {
  return Boolean(comment ?? commentBefore ?? contents?.comment ?? contents?.commentBefore);
}

/** Ways to write a text, the plainest first. */
function writings(written: string): readonly string[] {
  const value = meaning(written);
  return typeof value === "string" ? [written, JSON.stringify(value)] : [written, flow(value)];
}

function flow(value: unknown): string {
  return stringify(value, { collectionStyle: "flow", lineWidth: 0 }).trim();
}

// Edits

/** @throws RangeError for a node that has no place in the text */
function rangeOf(node: Node | null | undefined): readonly [number, number] {
  if (!node?.range) throw new RangeError("case.yaml: a value without a place in the text");
  return [node.range[0], node.range[1]];
}

/** Where the text of a node ends, without the comments and blank lines behind it. */
function endOf(node: Node, text: string): number {
  if (isCollection(node) && !node.flow) {
    const last = node.items.at(-1);
    const inner = isPair(last) ? ((last.value ?? last.key) as Node | null) : (last as Node | undefined);
    if (inner) return endOf(inner, text);
  }
  const [start, end] = rangeOf(node);
  return start + text.slice(start, end).trimEnd().length;
}

function replacing(text: string, node: Node, now: string): TextEdit {
  const [at] = rangeOf(node);
  const old = text.slice(at, endOf(node, text));
  const needsSpace = old === "" && text[at - 1] === ":";
  return { at, old, now: needsSpace ? ` ${now}` : now };
}

/** @throws RangeError for a place that has no value */
function settingPlan(text: string, { path, value }: Spot, to: string): Plan {
  if (!value) throw new RangeError(`case.yaml, ${path.join(".")}: it has no value to set`);
  return { path, wanted: meaning(to), edits: writings(to).map((now) => replacing(text, value, now)) };
}

function addingPlan(text: string, root: Spot, at: string, what: string): Plan {
  const words = at.split(".");
  const { parent, rest } = deepest(root, words);
  const [name = "", ...inner] = rest;
  if (isSeq(parent.value) && !/^\d+$/.test(name)) throw noItem(parent, at, name);
  const value = inner.reduceRight<unknown>((held, word) => ({ [word]: held }), meaning(what));
  const path = [...parent.path, ...rest];
  const written = inner.length === 0 ? writings(what) : [flow(value)];
  const edits = [...written, flow(value)].flatMap((one) => additions(text, parent, name, one));
  return { path, wanted: meaning(what), edits };
}

/** An item of a list is asked for by its number. */
function noItem({ value }: Spot, at: string, name: string): RangeError {
  const list = at.slice(0, -name.length - 1);
  const count = isSeq(value) ? value.items.length : 0;
  const written = Array.from({ length: Math.min(count, 3) }, (_, i) => `"${list}.${i}"`).join(", ");
  return new RangeError(
    `case.yaml, ${at}: "${list}" is a list, whose items have numbers from 0; write ${written || `"${list}.0"`}`,
  );
}

/**
 * The deepest block that stands on the way to a place, and the words of the way beyond it.
 *
 * @throws RangeError for a place that is not there or not only one
 */
function deepest(root: Spot, words: Path): { readonly parent: Spot; readonly rest: Path } {
  const [first] = words;
  const start = children([], root.value).find(({ path }) => path[0] === first);
  if (words.length === 1) return { parent: root, rest: words };
  if (start) {
    let parent = root;
    let rest: Path = words;
    for (;;) {
      const next = children(parent.path, parent.value).find(({ path }) => path.at(-1) === rest[0]);
      if (!next || rest.length === 1) return { parent, rest };
      parent = next;
      rest = rest.slice(1);
    }
  }
  const [parent, ...more] = matches(root, words.slice(0, -1).join("."));
  const unnamed = parent ? undefined : panelPath(root, words);
  if (unnamed) return deepest(root, unnamed);
  if (!parent || more.length > 0)
    throw new RangeError(
      `case.yaml, ${words.join(".")}: no such place, or not only one${meantWord(root, words)}`,
    );
  return { parent, rest: words.slice(-1) };
}

/** The whole path to a place of a panel that its section does not name, as "upper.top.sheet"; nothing for other places. */
function panelPath(root: Spot, [section, face, ...rest]: Path): Path | undefined {
  const sections = children(root.path, root.value).find(({ path }) => path[0] === "sections");
  const isSection = children(["sections"], sections?.value ?? null).some(
    ({ path }) => path.at(-1) === section,
  );
  const isFace = faces.some((one) => one === face);
  if (!section || !face || !isSection || !isFace) return undefined;
  const isNamed = matches(root, `sections.${section}.panels.${face}`).length > 0;
  return isNamed ? undefined : ["sections", section, "panels", face, ...rest];
}

/** The word of a place that the file does not have, where it is a slip of one that it has. */
function meantWord(root: Spot, words: Path): string {
  const known = [...new Set([...spotsUnder(root)].flatMap(({ path }) => path.slice(-1)))];
  const slip = words.slice(0, -1).find((word) => !known.includes(word));
  return slip === undefined ? "" : `; it has no "${slip}"${didYouMean(slip, known)}`;
}

/**
 * Ways to write a new value behind the others of its block or list.
 *
 * @throws RangeError where nothing can be added
 */
function additions(text: string, { value: parent, path }: Spot, name: string, written: string): TextEdit[] {
  const item = (isList: boolean): string => (isList ? written : `${keyText(name)}: ${written}`);
  if (isCollection(parent) && parent.items.length > 0) {
    const at = endOf(parent.flow ? lastOf(parent) : parent, text);
    if (parent.flow) return [{ at, old: "", now: `, ${item(isSeq(parent))}` }];
    const indent = " ".repeat(columnOf(text, rangeOf(parent)[0]));
    const lineEnd = /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
    const behind = at + (/^[^\r\n]*/.exec(text.slice(at))?.[0].length ?? 0);
    const lines = written.split(/\r\n|\n|\r/);
    const isBlock = lines.length > 1;
    const block = [`${keyText(name)}:`, ...lines.map((line) => (line.trim() ? `  ${line}` : line))];
    const shown = isSeq(parent)
      ? [`- ${lines[0]}`, ...lines.slice(1).map((line) => `  ${line}`)]
      : isBlock
        ? block
        : [item(false)];
    const now = shown.map((line) => `${lineEnd}${line.trim() ? indent : ""}${line}`).join("");
    return [{ at: behind, old: "", now }];
  }
  if (!parent) throw new RangeError(`case.yaml, ${path.join(".")}: nothing can be added here`);
  const isList = isSeq(parent);
  return [replacing(text, parent, isList ? `[${item(true)}]` : `{ ${item(false)} }`)];
}

function lastOf(parent: Node): Node {
  const last = isCollection(parent) ? parent.items.at(-1) : undefined;
  return (isPair(last) ? (last.value ?? last.key) : last) as Node;
}

function keyText(name: string): string {
  return meaning(name) === name && !/[:,#[\]{}]/.test(name) ? name : JSON.stringify(name);
}

/** Characters between the start of its line and a place. */
function columnOf(text: string, at: number): number {
  const before = text.slice(0, at).replace(/^\ufeff/, "");
  return before.length - Math.max(before.lastIndexOf("\n"), before.lastIndexOf("\r")) - 1;
}

/** Ways to take a value away: its lines, or its text up to the next, or from the one before, or all there is. */
function removals(text: string, spot: Spot): TextEdit[] {
  const { parent, index } = spot;
  const siblings = children([], parent);
  const startOf = ({ key, value }: Spot): number => rangeOf(key ?? value)[0];
  const start = startOf(spot);
  const end = endOf(spot.value ?? spot.key ?? parent, text);
  const cut = (from: number, to: number, now = ""): TextEdit => ({
    at: from,
    old: text.slice(from, to),
    now,
  });
  const only =
    isCollection(parent) && parent.flow
      ? cut(start, end)
      : cut(rangeOf(parent)[0], end, isMap(parent) ? "{}" : "[]");
  const next = siblings[index + 1];
  const before = siblings[index - 1];
  const toNext = next ? [cut(start, startOf(next))] : [];
  const fromBefore = before ? [cut(endOf(before.value ?? before.key ?? parent, text), end)] : [];
  if (isCollection(parent) && parent.flow) return [...toNext, ...fromBefore, only];
  return [...wholeLines(text, start, end).map(([from, to]) => cut(from, to)), ...toNext, only];
}

/** The lines of a block, with the end of the last; none where something else begins on its first line. */
function wholeLines(text: string, start: number, end: number): (readonly [number, number])[] {
  const lead = /(?:^\ufeff?|[\r\n])([ \t]*(?:- )?)$/.exec(text.slice(0, start))?.[1];
  if (lead === undefined) return [];
  const tail = /^[^\r\n]*(\r\n|\n|\r)?/.exec(text.slice(end))?.[0] ?? "";
  const from = start - lead.length;
  const lines = [from, end + tail.length] as const;
  if (/[\r\n]$/.test(tail)) return [lines];
  const lineEnd = /(\r\n|\n|\r)$/.exec(text.slice(0, from))?.[0] ?? "";
  return [[from - lineEnd.length, end + tail.length]];
}

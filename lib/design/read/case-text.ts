/** The text of a case file, parsed, with the line that each of its paths stands on. */
import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from "yaml";
import type { Problem, RawProblem } from "../../problem.js";
import { contentOf, faultsBefore, faultsOfParsing } from "./yaml-words.js";

/** A path inside the file: names of blocks and positions in lists. */
export type CasePath = readonly (string | number)[];

/** What was parsed. */
export interface CaseText {
  /** The name of the file. */
  readonly file: string;
  /** Plain records, lists and values. */
  readonly content: unknown;
  /** Faults of the text itself: broken indentation, a name twice in a block. */
  readonly problems: readonly RawProblem[];
  /** A problem at a path, with its row, and with what stands there unless another value is given. */
  problemAt(path: CasePath, expected: string, value?: string): Problem;
  /** Does anything stand at this path? */
  has(path: CasePath): boolean;
}

/** Parses a case file. Never throws on what a builder wrote. */
export function readCaseText(text: string, file: string): CaseText {
  const before = faultsBefore(text);
  const lines = new LineCounter();
  const document = parseDocument(before.length > 0 ? "" : text, {
    lineCounter: lines,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
  });
  const parsed = [...before, ...faultsOfParsing(document, text)];
  if (parsed.length === 0) joinDecimals(document.contents, text);
  const plain = parsed.length > 0 ? undefined : contentOf(document, text);
  const faults = plain && "at" in plain ? [plain] : parsed;
  const rowAt = (at: number): number => text.slice(0, at).split("\n").length;
  const broken = faults.map(({ at, ...fault }): RawProblem => ({ file, row: rowAt(at), ...fault }));
  const rowOf = (node: Node | null | undefined): number | undefined =>
    node?.range ? lines.linePos(node.range[0]).line : undefined;
  const steps = (path: CasePath): Step[] =>
    walk(document.contents, path, (node) => resolveAlias(node, document));
  const problemAt = (path: CasePath, expected: string, value?: string): Problem => {
    const reached = steps(path);
    const last = reached.at(-1);
    const found = value ?? (reached.length === path.length ? textOf(last?.value) : undefined);
    const row = rowOf(last?.key ?? last?.value) ?? 1;
    return { file, row, column: path.join("."), ...(found === undefined ? {} : { value: found }), expected };
  };
  const doubled = broken.length > 0 ? [] : doubledNames(document.contents, [], rowOf);
  return {
    file,
    content: plain && "content" in plain ? plain.content : undefined,
    problems: [...broken, ...doubled.map((problem) => ({ file, ...problem }))],
    problemAt,
    has: (path) => steps(path).length === path.length,
  };
}

/**
 * Puts together what a decimal comma took apart in a block on one line: `{ mass: 18,5 kg }` has a mass of 18 and a word
 * "5 kg" without a value. It becomes the text "18,5 kg", which no number is, so that one problem tells it.
 */
function joinDecimals(node: Node | null, text: string): void {
  if (isSeq(node)) for (const item of node.items) joinDecimals(item as Node, text);
  if (!isMap(node)) return;
  const pairs = node.items as Pair<Node, Node | null>[];
  for (const { value } of pairs) joinDecimals(value, text);
  for (let i = pairs.length - 1; i > 0; i--) {
    const [before, { key, value }] = [pairs[i - 1]?.value, pairs[i] as Pair<Node, Node | null>];
    const apart = isScalar(before) && before.range && key.range ? [before.range[1], key.range[0]] : undefined;
    if (!apart || text.slice(...apart) !== "," || (isScalar(value) && value.source)) continue;
    const whole = `${textOf(before)},${keyText(key)}`;
    if (!decimalComma.test(whole)) continue;
    Object.assign(before as object, { value: whole, source: whole });
    node.items.splice(i, 1);
  }
}

const decimalComma = /^-?\d+,\d+(\s.*)?$/;

interface Step {
  /** Absent in a list. */
  readonly key?: Node;
  /** What stands there. */
  readonly value: Node | null;
}

/** The nodes along a path, as far as it exists. */
function walk(start: Node | null, path: CasePath, resolve: (node: Node | null) => Node | null): Step[] {
  const steps: Step[] = [];
  let node = resolve(start);
  for (const name of path) {
    const step = stepInto(node, name);
    if (!step) break;
    steps.push(step);
    node = resolve(step.value);
  }
  return steps;
}

function stepInto(node: Node | null, name: string | number): Step | undefined {
  if (isSeq(node)) {
    const value = node.items[Number(name)] as Node | undefined;
    return value && { value };
  }
  if (!isMap(node)) return undefined;
  const pair = (node.items as Pair<Node, Node | null>[]).find(({ key }) => keyText(key) === String(name));
  return pair && { key: pair.key, value: pair.value };
}

function resolveAlias(node: Node | null, document: ReturnType<typeof parseDocument>): Node | null {
  return isAlias(node) ? (node.resolve(document) ?? null) : node;
}

function keyText(key: unknown): string {
  return isScalar(key) ? String(key.value) : String(key);
}

function textOf(node: Node | null | undefined): string | undefined {
  return isScalar(node) ? String(node.source ?? node.value ?? "") : undefined;
}

function doubledNames(
  node: Node | null,
  path: CasePath,
  rowOf: (node: Node) => number | undefined,
): Omit<Problem, "file">[] {
  if (isSeq(node)) {
    return node.items.flatMap((item, i) => doubledNames(item as Node, [...path, i], rowOf));
  }
  if (!isMap(node)) return [];
  const first = new Map<string, number | undefined>();
  return (node.items as Pair<Node, Node | null>[]).flatMap(({ key, value }) => {
    const name = keyText(key);
    const row = rowOf(key);
    const earlier = first.get(name);
    if (!first.has(name)) first.set(name, row);
    const inner = doubledNames(value, [...path, name], rowOf);
    if (earlier === undefined || row === undefined) return inner;
    const expected = `each name only once in a block, row ${earlier} has it too`;
    return [{ row, column: [...path, name].join("."), value: name, expected }, ...inner];
  });
}

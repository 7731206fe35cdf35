/** Puts numbers into an equation, as a textbook does on its second line. */
import { shownNumber, texOfValue } from "./shown-value.js";
import { type ArithmeticItem, evaluate } from "./tex-arithmetic.js";
import { groupEnd, joinTex, texClauses, texTokens } from "./tex-token.js";

const accents = ["\\bar", "\\hat", "\\tilde", "\\dot", "\\ddot", "\\vec", "\\overline", "\\mathbf"];
/** Values are shown to four figures, and powers magnify what that cuts off. */
const agreement = 0.01;

/** What goes into an equation in the place of a symbol. */
export interface PutIn {
  /** TeX. */
  readonly symbol: string;
  /** As it is printed. */
  readonly value: string;
  /** What the equation reckons with; the printed value in SI unless given. */
  readonly number?: number;
  /** Numbers of a record, each with its own symbol. */
  readonly fields?: readonly PutIn[];
  /** The numbers of each item of a list, over which a sum may run. */
  readonly items?: readonly (readonly PutIn[])[];
}

/** A symbol with the value to put in its place, or none where the value is no single number. */
interface Known {
  /** The symbol as a row of tokens. */
  readonly tokens: readonly string[];
  /** The value as TeX; undefined where it is no single number. */
  readonly tex: string | undefined;
  /** The value that the equation reckons with, in SI or in the equation's own unit. */
  readonly number: number | undefined;
  /** The symbols of each item of a list. */
  readonly items?: readonly (readonly Known[])[];
}

/** A longer sum is left as it is. */
const longestSum = 6;

/**
 * The equation's lines with every input's symbol replaced by its value and unit, each ending in its result:
 * `w = 5 (120 N/m) (1200 mm)^4 / ... = 3.2 mm`. A line is given only where the numbers, reckoned over in
 * SI or in the units that a rule of thumb has of its own, come to the printed result within a hundredth; so
 * none for a series, or for a symbol that stands for a list or a word.
 *
 * @returns TeX
 */
export function substitute(equation: string, inputs: readonly PutIn[], results: readonly PutIn[]): string[] {
  const known = results.map(knownSymbol);
  const others = inputs.flatMap((input) => [input, ...(input.fields ?? [])]).map(knownSymbol);
  return texClauses(equation).flatMap((clause) => {
    const equals = clause.indexOf("=");
    const left = joinTex(clause.slice(0, Math.max(0, equals)));
    const result = known.find(({ tokens }) => joinTex(tokens) === left);
    return result?.tex === undefined
      ? []
      : (numbersIn(left, clause.slice(equals + 1), result, [...others, ...known]) ?? []);
  });
}

function knownSymbol({ symbol, value, number = shownNumber(value), items }: PutIn): Known {
  return {
    tokens: texTokens(symbol),
    tex: texOfValue(value),
    number,
    ...(items ? { items: items.map((item) => item.map(knownSymbol)) } : {}),
  };
}

function numbersIn(
  left: string,
  right: readonly string[],
  result: Known,
  known: readonly Known[],
): string | undefined {
  const others = known.filter((one) => one !== result).sort((a, b) => b.tokens.length - a.tokens.length);
  const { tex, items, replaced } = replaceSymbols(right, others);
  const value = evaluate(items);
  const { number = Number.NaN } = result;
  const agrees = value !== undefined && Math.abs(value - number) <= agreement * Math.abs(number);
  return replaced && agrees ? `${left} = ${joinTex(tex)} = ${result.tex}` : undefined;
}

/** The right-hand side to print and to evaluate, with values in place of symbols. */
function replaceSymbols(
  tokens: readonly string[],
  known: readonly Known[],
): { readonly tex: string[]; readonly items: ArithmeticItem[]; readonly replaced: boolean } {
  const tex: string[] = [];
  const items: ArithmeticItem[] = [];
  let replaced = false;
  for (let i = 0; i < tokens.length; ) {
    const sum = tokens[i] === "\\sum" ? sumAt(tokens, i, known) : undefined;
    if (sum) {
      tex.push(...sum.tex);
      items.push(...sum.items);
      replaced = true;
      i = sum.end;
      continue;
    }
    const end = tokens[i] === "_" ? groupEnd(tokens, i + 1) : i;
    const found = end > i ? undefined : known.find((one) => standsAt(tokens, i, one.tokens));
    const next = found ? i + found.tokens.length : end + 1;
    const asWritten = tokens.slice(i, next);
    const fits = found?.tex !== undefined && found.number !== undefined;
    tex.push(...(fits ? [placed(found.tex ?? "", tokens, i, next)] : asWritten));
    items.push(...(fits ? [found.number ?? 0] : asWritten));
    replaced ||= fits;
    i = next;
  }
  return { tex, items, replaced };
}

/** A sum over a short list, written out: `\sum P_i d_i` as its terms with plus signs between, in brackets to evaluate. */
function sumAt(
  tokens: readonly string[],
  start: number,
  known: readonly Known[],
): { readonly tex: string[]; readonly items: ArithmeticItem[]; readonly end: number } | undefined {
  const from = tokens[start + 1] === "_" ? groupEnd(tokens, start + 2) + 1 : start + 1;
  const end = termEnd(tokens, from);
  const term = tokens.slice(from, end);
  const list = known.find(({ items = [] }) =>
    items[0]?.some(({ tokens: symbol }) => term.some((_, i) => standsAt(term, i, symbol))),
  );
  if (!list?.items || list.items.length > longestSum) return undefined;
  const terms = list.items.map((item) => replaceSymbols(term, [...item, ...known]));
  const written = terms.flatMap(({ tex }, i) => (i === 0 ? tex : ["+", ...tex]));
  const plain = terms.length === 1 || sumStandsAlone(tokens, start, end);
  return {
    tex: plain ? written : ["\\left(", ...written, "\\right)"],
    items: ["(", ...terms.flatMap(({ items }, i) => (i === 0 ? items : ["+", ...items])), ")"],
    end,
  };
}

/** A term ends at a sign or at the end of its group. */
function termEnd(tokens: readonly string[], from: number): number {
  let depth = 0;
  for (let i = from; i < tokens.length; i++) {
    const token = tokens[i] ?? "";
    if (["{", "(", "["].includes(token)) depth += 1;
    if (["}", ")", "]"].includes(token)) depth -= 1;
    if (depth < 0 || (depth === 0 && ["+", "-", ","].includes(token))) return i;
  }
  return tokens.length;
}

/** A symbol stands here unless a further subscript, a prime or an accent makes it another one. */
function standsAt(tokens: readonly string[], i: number, symbol: readonly string[]): boolean {
  if (symbol.length === 0 || !symbol.every((part, k) => tokens[i + k] === part)) return false;
  const next = tokens[i + symbol.length] ?? "";
  const before = tokens[i - 1] === "{" ? tokens[i - 2] : tokens[i - 1];
  return next !== "_" && next !== "'" && !accents.includes(before ?? "");
}

const sumBefore = ["{", "(", "[", "=", "+", "\\lceil", ","];
const sumAfter = ["}", ")", "]", "=", "+", "-", "\\rceil", "\\right", ","];
const looseBefore = [...sumBefore, "-", "\\cdot", "\\times", "/"];
const looseAfter = [...sumAfter, "\\cdot", "\\times", "/"];

/** A value from start to end, in brackets where it is negative, side by side with another factor, or under a power. */
function placed(value: string, tokens: readonly string[], start: number, end: number): string {
  const loose = isBetween(tokens, start, end, looseBefore, looseAfter) && !value.startsWith("-");
  return loose ? `{${value}}` : `{\\left(${value}\\right)}`;
}

/** Whether nothing is done to a sum from start to end but adding to it. */
function sumStandsAlone(tokens: readonly string[], start: number, end: number): boolean {
  return isBetween(tokens, start, end, sumBefore, sumAfter);
}

function isBetween(
  tokens: readonly string[],
  start: number,
  end: number,
  befores: readonly string[],
  afters: readonly string[],
): boolean {
  const after = tokens[end] ?? "}";
  const powerOfGroup = after === "}" && tokens[end + 1] === "^";
  return befores.includes(tokens[start - 1] ?? "{") && afters.includes(after) && !powerOfGroup;
}

/** Puts numbers into an equation, as a textbook does on its second line. */
import { shownNumber } from "./shown-number.js";
import { type ArithmeticItem, reckon } from "./tex-arithmetic.js";
import { groupEnd, joinTex, texClauses, texTokens } from "./tex-token.js";
import { texOfValue } from "./tex-value.js";

const accents = ["\\bar", "\\hat", "\\tilde", "\\dot", "\\ddot", "\\vec", "\\overline", "\\mathbf"];
const looseBefore = ["{", "(", "[", "=", "+", "-", "\\cdot", "\\times", "/", "\\lceil", ","];
const looseAfter = ["}", ")", "]", "=", "+", "-", "\\cdot", "\\times", "/", "\\rceil", "\\right", ","];

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
}

/** A symbol with the value to put in its place, or none where the value is no single number. */
interface Known {
  readonly tokens: readonly string[];
  readonly tex: string | undefined;
  readonly number: number | undefined;
}

/**
 * The equation's lines with every input's symbol replaced by its value and unit, each ending in its result:
 * `w = 5 (120 N/m) (1200 mm)^4 / ... = 3.2 mm`. A line is given only where the numbers, reckoned over in
 * SI or in the units that a rule of thumb has of its own, come to the printed result within a hundredth; so
 * none for a series, or for a symbol that stands for a list or a word.
 *
 * @returns TeX
 */
export function substitute(equation: string, inputs: readonly PutIn[], results: readonly PutIn[]): string[] {
  const known = [...inputs, ...results].map(knownSymbol);
  return texClauses(equation).flatMap((clause) => {
    const equals = clause.indexOf("=");
    const left = joinTex(clause.slice(0, Math.max(0, equals)));
    const result = known.slice(inputs.length).find(({ tokens }) => joinTex(tokens) === left);
    return result?.tex === undefined ? [] : (numbersIn(left, clause.slice(equals + 1), result, known) ?? []);
  });
}

function knownSymbol({ symbol, value, number = shownNumber(value) }: PutIn): Known {
  return { tokens: texTokens(symbol), tex: texOfValue(value), number };
}

function numbersIn(
  left: string,
  right: readonly string[],
  result: Known,
  known: readonly Known[],
): string | undefined {
  const others = known.filter((one) => one !== result).sort((a, b) => b.tokens.length - a.tokens.length);
  const { tex, items, replaced } = replaceSymbols(right, others);
  const value = reckon(items);
  const { number = Number.NaN } = result;
  const agrees = value !== undefined && Math.abs(value - number) <= agreement * Math.abs(number);
  return replaced && agrees ? `${left} = ${joinTex(tex)} = ${result.tex}` : undefined;
}

/** The right-hand side to print and to reckon over, with values in place of symbols. */
function replaceSymbols(
  tokens: readonly string[],
  known: readonly Known[],
): { readonly tex: string[]; readonly items: ArithmeticItem[]; readonly replaced: boolean } {
  const tex: string[] = [];
  const items: ArithmeticItem[] = [];
  let replaced = false;
  for (let i = 0; i < tokens.length; ) {
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

/** A symbol stands here unless a further subscript, a prime or an accent makes it another one. */
function standsAt(tokens: readonly string[], i: number, symbol: readonly string[]): boolean {
  if (symbol.length === 0 || !symbol.every((part, k) => tokens[i + k] === part)) return false;
  const next = tokens[i + symbol.length] ?? "";
  const before = tokens[i - 1] === "{" ? tokens[i - 2] : tokens[i - 1];
  return next !== "_" && next !== "'" && !accents.includes(before ?? "");
}

/** Side by side with another factor, or under a power, a value needs brackets. */
function placed(value: string, tokens: readonly string[], start: number, end: number): string {
  const before = tokens[start - 1] ?? "{";
  const after = tokens[end] ?? "}";
  const powerOfGroup = after === "}" && tokens[end + 1] === "^";
  const loose =
    looseBefore.includes(before) && looseAfter.includes(after) && !powerOfGroup && !value.startsWith("-");
  return loose ? `{${value}}` : `{\\left(${value}\\right)}`;
}

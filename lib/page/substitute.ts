/** Puts numbers into an equation, as a textbook does on its second line. */
import { joinTex, texTokens } from "./tex-token.js";
import { texOfValue } from "./tex-value.js";
import type { SymbolView } from "./view.js";

/** Bound variables and lines of many rows take no numbers. */
const beyondNumbers =
  /\\(?:sum|prod|int|iint|partial|nabla|begin|min|max|lim|dots|ldots|cdots|forall|quad|qquad)(?![A-Za-z])|\\\\|;/;
const accents = ["\\bar", "\\hat", "\\tilde", "\\dot", "\\ddot", "\\vec", "\\overline", "\\mathbf"];
const looseBefore = ["{", "(", "[", "=", "+", "-", "\\cdot", "\\times", "/", "\\left", ","];
const looseAfter = ["}", ")", "]", "=", "+", "-", "\\cdot", "\\times", "/", "\\right", ","];

interface Replacement {
  readonly tokens: readonly string[];
  readonly value: string | undefined;
}

/**
 * The right-hand side of an equation with each input's symbol replaced by its value and unit.
 *
 * @returns TeX; undefined where numbers do not fit: no equals sign, a sum or integral, no input on the
 * right-hand side, or an input there whose value is a list or a word
 */
export function substitute(equation: string, inputs: readonly SymbolView[]): string | undefined {
  if (beyondNumbers.test(equation)) return undefined;
  const tokens = texTokens(equation);
  const equals = tokens.indexOf("=");
  if (equals < 0) return undefined;
  const replacements = inputs
    .map(({ symbol, value }): Replacement => ({ tokens: texTokens(symbol), value: texOfValue(value) }))
    .sort((a, b) => b.tokens.length - a.tokens.length);
  return replaceAll(tokens.slice(equals + 1), replacements);
}

/** What stands left of the first equals sign, as tokens joined again. */
export function leftSide(equation: string): string {
  const tokens = texTokens(equation);
  return joinTex(tokens.slice(0, Math.max(0, tokens.indexOf("="))));
}

function replaceAll(tokens: readonly string[], replacements: readonly Replacement[]): string | undefined {
  const out: string[] = [];
  let replaced = false;
  for (let i = 0; i < tokens.length; ) {
    const end = tokens[i] === "_" ? groupEnd(tokens, i + 1) : i;
    const found = end > i ? undefined : replacements.find((one) => standsAt(tokens, i, one.tokens));
    if (found) {
      if (found.value === undefined) return undefined;
      out.push(placed(found.value, tokens, i, i + found.tokens.length));
      replaced = true;
      i += found.tokens.length;
    } else {
      out.push(...tokens.slice(i, end + 1));
      i = end + 1;
    }
  }
  return replaced ? joinTex(out) : undefined;
}

/** Index of the brace that closes the group opening at `start`. */
function groupEnd(tokens: readonly string[], start: number): number {
  let depth = 0;
  for (let i = start; i < tokens.length; i++) {
    if (tokens[i] === "{") depth++;
    if (tokens[i] === "}" && --depth === 0) return i;
  }
  return tokens.length - 1;
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

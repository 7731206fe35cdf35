/**
 * TeX as a row of tokens, enough to find a symbol in an equation and to redo plain arithmetic: a command,
 * a number, one character, or a whole `\text{...}`-like group. Scripts are always braced, so that `x_c` and
 * `x_{c}` read the same.
 */

const token =
  /\\(?:text|textrm|mathrm|operatorname)\s*\{[^{}]*\}|\\[A-Za-z]+|\\.|\d+(?:\\,\d{3})*(?:\.\d+)?|\S/g;

/** The tokens of an equation or a symbol. */
export function texTokens(tex: string): string[] {
  return braceScripts(tex.match(token) ?? []);
}

/** Tokens as TeX again. */
export function joinTex(tokens: readonly string[]): string {
  return tokens.join(" ");
}

/** Index of the bracket that closes the group opening at `start`. */
export function groupEnd(tokens: readonly string[], start: number): number {
  let depth = 0;
  for (let i = start; i < tokens.length; i++) {
    depth += depthChange(tokens[i]);
    if (depth === 0) return i;
  }
  return tokens.length - 1;
}

/** The equations of a line that holds several: the parts between commas outside every bracket. */
export function texClauses(tex: string): string[][] {
  const clauses: string[][] = [[]];
  let depth = 0;
  for (const current of texTokens(tex)) {
    depth += depthChange(current);
    if (depth === 0 && (current === "," || current === ";")) clauses.push([]);
    else if (clauses.at(-1)?.length || !isSpace(current)) clauses.at(-1)?.push(current);
  }
  return clauses;
}

/** Whether a token only sets things apart, sizes a bracket. */
export function isSpace(token: string): boolean {
  return /^\\(?:[,;:! ]|quad|qquad|left|right|[bB]igg?[lr]?)$/.test(token);
}

/** Whether a token is words beside the equation. */
export function isWords(token: string): boolean {
  return /^\\text\s*\{/.test(token);
}

function depthChange(token = ""): number {
  if (["{", "(", "["].includes(token)) return 1;
  return ["}", ")", "]"].includes(token) ? -1 : 0;
}

function braceScripts(tokens: readonly string[]): string[] {
  return tokens.flatMap((current, i) => {
    const script = i > 0 && (tokens[i - 1] === "_" || tokens[i - 1] === "^");
    return script && current !== "{" ? ["{", current, "}"] : [current];
  });
}

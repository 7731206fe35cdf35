/**
 * TeX as a row of tokens, enough to find a symbol in an equation: a command, a number, one character, or
 * a whole `\text{...}`-like group. Scripts are always braced, so that `x_c` and `x_{c}` read the same.
 */

const token = /\\(?:text|textrm|mathrm|operatorname)\s*\{[^{}]*\}|\\[A-Za-z]+|\\.|\d+(?:\.\d+)?|\S/g;

/** The tokens of an equation or a symbol. */
export function texTokens(tex: string): string[] {
  return braceScripts(tex.match(token) ?? []);
}

/** Tokens as TeX again. */
export function joinTex(tokens: readonly string[]): string {
  return tokens.join(" ");
}

function braceScripts(tokens: readonly string[]): string[] {
  return tokens.flatMap((current, i) => {
    const script = i > 0 && (tokens[i - 1] === "_" || tokens[i - 1] === "^");
    return script && current !== "{" ? ["{", current, "}"] : [current];
  });
}

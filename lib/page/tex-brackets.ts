/** Where a number, or a sum, that takes the place of a symbol needs brackets. */

const sumBefore = ["{", "(", "[", "=", "+", "\\lceil", ","];
const sumAfter = ["}", ")", "]", "=", "+", "-", "\\rceil", "\\right", ","];
const looseBefore = [...sumBefore, "-", "\\cdot", "\\times", "/"];
const looseAfter = [...sumAfter, "\\cdot", "\\times", "/"];

/** A value from start to end, in brackets where it is negative, side by side with another factor, or under a power. */
export function placed(value: string, tokens: readonly string[], start: number, end: number): string {
  const loose = stands(tokens, start, end, looseBefore, looseAfter) && !value.startsWith("-");
  return loose ? `{${value}}` : `{\\left(${value}\\right)}`;
}

/** Whether nothing is done to a sum from start to end but adding to it. */
export function sumStandsAlone(tokens: readonly string[], start: number, end: number): boolean {
  return stands(tokens, start, end, sumBefore, sumAfter);
}

function stands(
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

/** Values that somebody types by mistake, or on purpose. */
import type { Draws } from "../reference/cases/draws.js";

/** Texts that fit nowhere, or hardly anywhere. */
export const oddTexts: readonly string[] = [
  "",
  " ",
  "0",
  "-0",
  "-1",
  "1e-9",
  "1e9",
  "1e400",
  ".inf",
  "-.inf",
  ".nan",
  "1/0",
  "1/2000",
  "1 1/2",
  "5,5",
  "1.234,5",
  "0x10",
  "1e",
  "true",
  "no",
  "null",
  "~",
  "[]",
  "{}",
  "[1, [2, [3]]]",
  "{ a: { b: { c: 1 } } }",
  "*nobody",
  "&anchor 5",
  "!tag 5",
  "<<: *x",
  "__proto__",
  "constructor",
  "toString",
  "../../etc/passwd",
  "<b>bold</b>",
  "=1+1",
  "naïve ½ ″",
  "\u0000",
  "\u202e",
  "9".repeat(320),
  "x".repeat(5000),
  "12 mm",
  "12 stone",
  "12 kg",
  "5 %",
  '"',
  "'",
  "|",
  "- - -",
  "? a",
];

/** One number in a text multiplied, turned or replaced; the text as it is where it has none. */
export function oddNumber(text: string, draws: Draws): string {
  const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)];
  if (numbers.length === 0) return text;
  const { 0: digits, index } = draws.pick(numbers);
  const value = Number(digits);
  const put = draws.pick([
    String(value * 10 ** draws.whole(-6, 6)),
    String(-value),
    String(value + 1),
    String(value * 1e12),
    String(value * 2),
    String(value / 3),
    "0",
  ]);
  return text.slice(0, index) + put + text.slice(index + digits.length);
}

/** Reckons over the right-hand side of an equation: sums, products, fractions, powers, roots, a few functions. */
import { standardGravity } from "../quantity/index.js";
import { unitSize } from "./shown-value.js";
import { isSpace, isWords } from "./tex-token.js";

/** A token of TeX, or a number that stands in the place of a symbol. */
export type ArithmeticItem = string | number;

const functions: Readonly<Record<string, (value: number) => number>> = {
  "\\sqrt": Math.sqrt,
  "\\sin": Math.sin,
  "\\cos": Math.cos,
  "\\tan": Math.tan,
  "\\arcsin": Math.asin,
  "\\arctan": Math.atan,
  "\\ln": Math.log,
};

const constants: Readonly<Record<string, number>> = { "\\pi": Math.PI, g: standardGravity, e: Math.E };

const closing: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}", "\\lceil": "\\rceil" };

/** Two bars look alike, so the sign before a size without its sign is written. */
const bar = "|";

const signs = ["+", "-", "*", "/", "^", "=", ",", ")", "]", "}", "\\cdot", "\\times", "\\rceil", bar];

/** The value of an expression; undefined where it holds anything but plain arithmetic on known numbers. */
export function evaluate(items: readonly ArithmeticItem[]): number | undefined {
  try {
    const value = new Reader(
      items.filter((item) => typeof item === "number" || !(isSpace(item) || isWords(item))),
    ).whole();
    return Number.isFinite(value) ? value : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

class Reader {
  readonly #items: ArithmeticItem[];

  constructor(items: ArithmeticItem[]) {
    this.#items = [...items];
  }

  /**
   * The value of all items together.
   *
   * @throws SyntaxError where they are no single expression
   */
  whole(): number {
    const value = this.#sum();
    if (this.#items.length > 0) throw new SyntaxError("more than an expression");
    return value;
  }

  #sum(): number {
    let value = this.#take("-") ? -this.#product() : this.#product();
    for (;;) {
      if (this.#take("+")) value += this.#product();
      else if (this.#take("-")) value -= this.#product();
      else return value;
    }
  }

  /** Factors stand side by side or with a sign between them. */
  #product(): number {
    let value = this.#power();
    for (;;) {
      if (this.#take("/")) value /= this.#power();
      else if (this.#take("\\cdot") || this.#take("\\times") || this.#startsFactor()) value *= this.#power();
      else return value;
    }
  }

  #power(): number {
    const base = this.#atom();
    return this.#take("^") ? base ** this.#argument() : base;
  }

  /**
   * One number, bracket, fraction or function.
   *
   * @throws SyntaxError where the expression ends early
   */
  #atom(): number {
    const item = this.#items.shift();
    if (typeof item === "number") return item;
    if (item === undefined) throw new SyntaxError("an expression ends early");
    if (item in closing) return this.#bracketed(item);
    if (item === bar) return this.#barred();
    if (item === "\\frac" || item === "\\tfrac") return this.#argument() / this.#argument();
    if (item === "\\min" || item === "\\max") return this.#extreme(item);
    return this.#function(item) ?? constants[item] ?? literal(item);
  }

  #function(item: string): number | undefined {
    const apply = functions[item];
    if (item === "\\sqrt") return apply?.(this.#argument());
    const power = apply && this.#take("^") ? this.#argument() : 1;
    return apply && apply(this.#power()) ** power;
  }

  #bracketed(open: string): number {
    const value = this.#sum();
    this.#expect(closing[open] ?? "");
    return open === "\\lceil" ? Math.ceil(value) : value;
  }

  #barred(): number {
    const value = Math.abs(this.#sum());
    this.#expect(bar);
    return value;
  }

  #extreme(which: string): number {
    this.#expect("(");
    const values = [this.#sum()];
    while (this.#take(",")) values.push(this.#sum());
    this.#expect(")");
    return which === "\\min" ? Math.min(...values) : Math.max(...values);
  }

  /** One group, one symbol or one digit: \tfrac13 is a third. */
  #argument(): number {
    const next = this.#items[0];
    if (typeof next === "string" && /^\d\d+$/.test(next)) {
      this.#items[0] = next.slice(1);
      return Number(next[0]);
    }
    return this.#atom();
  }

  #take(sign: string): boolean {
    if (this.#items[0] !== sign) return false;
    this.#items.shift();
    return true;
  }

  /** @throws SyntaxError where another sign stands next */
  #expect(sign: string): void {
    if (!this.#take(sign)) throw new SyntaxError(`no ${sign}`);
  }

  #startsFactor(): boolean {
    const next = this.#items[0];
    return next !== undefined && !(typeof next === "string" && signs.includes(next));
  }
}

/**
 * A number as written, or a unit.
 *
 * @throws SyntaxError for anything else
 */
function literal(item: string): number {
  if (/^\d/.test(item)) return Number(item.replaceAll("\\,", ""));
  const size = unitSize(/^\\mathrm\s*\{(.*)\}$/.exec(item)?.[1] ?? "no unit");
  if (size === undefined) throw new SyntaxError(`${item} has no number`);
  return size;
}

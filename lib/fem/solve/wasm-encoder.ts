/**
 * The few words of WebAssembly that the solver's kernel is written in, as bytes (WebAssembly Core Specification 2.0,
 * ch. 5). They give two numbers at a time to the processor, which plain JavaScript cannot.
 */

/** A piece of a program. */
export type Code = readonly number[];

/** A whole number of no sign, seven bits a byte, the low ones first. */
function unsigned(value: number): Code {
  return value < 128 ? [value] : [(value % 128) + 128, ...unsigned(Math.floor(value / 128))];
}

/** A list with its length before it. */
export function listed(items: readonly Code[]): Code {
  return [...unsigned(items.length), ...items.flat()];
}

/** A part of a module: its kind, its length, what it holds. */
export function section(kind: number, content: Code): Code {
  return [kind, ...unsigned(content.length), ...content];
}

/** A name. */
export function named(text: string): Code {
  return listed(Array.from(text, (letter) => [letter.charCodeAt(0)]));
}

/** The body of a function: how many local whole numbers and pairs it has besides its arguments, and its program. */
export function body(wholes: number, pairs: number, program: Code): Code {
  const locals = listed([
    [...unsigned(wholes), 0x7f],
    [...unsigned(pairs), 0x7b],
  ]);
  const all = [...locals, ...program, 0x0b];
  return [...unsigned(all.length), ...all];
}

/** The value of a local. */
export const get = (local: number): Code => [0x20, ...unsigned(local)];
/** Puts a value into a local. */
export const put = (local: number, value: Code): Code => [...value, 0x21, ...unsigned(local)];
/** A whole number from 0 to 63. */
export const whole = (value: number): Code => [0x41, value];
/** The sum of two whole numbers. */
export const plus = (a: Code, b: Code): Code => [...a, ...b, 0x6a];
/** Their product. */
export const times = (a: Code, b: Code): Code => [...a, ...b, 0x6c];
/** Whether the first whole number is below the second. */
export const isBelow = (a: Code, b: Code): Code => [...a, ...b, 0x48];
/** Does a program if a condition holds. */
export const when = (condition: Code, then: Code): Code => [...condition, 0x04, 0x40, ...then, 0x0b];
/** Does a program, and again as long as the condition holds. */
export const repeat = (program: Code, condition: Code): Code => [
  0x03,
  0x40,
  ...program,
  ...condition,
  0x0d,
  0,
  0x0b,
];

/** The pair of numbers at an address, so many bytes on. */
export const pairAt = (address: Code, on: number): Code => [...address, 0xfd, 0, 3, on];
/** Two zeros. */
export const noPair: Code = [0xfd, 12, ...Array<number>(16).fill(0)];
/** The sums of two pairs. */
export const plusPair = (a: Code, b: Code): Code => [...a, ...b, 0xfd, ...unsigned(0xf0)];
/** The products of two pairs. */
export const timesPair = (a: Code, b: Code): Code => [...a, ...b, 0xfd, ...unsigned(0xf2)];
/** Both numbers of a pair added up. */
export const sumOfPair = (pair: Code): Code => [...pair, 0xfd, 0x21, 0, ...pair, 0xfd, 0x21, 1, 0xa0];
/** Takes a number from the one at an address, so many bytes on. */
export const takeFrom = (address: Code, on: number, number: Code): Code => [
  ...address,
  ...address,
  0x2b,
  3,
  on,
  ...number,
  0xa1,
  0x39,
  3,
  on,
];

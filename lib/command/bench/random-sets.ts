/** Random cutting cases of the classical kinds, as published cases are written. The same seed gives the same case. */
import type { FileCase } from "../reference/cutting-cases.js";

/** Uniform whole numbers from one to another, both included. */
export type Draw = (from: number, to: number) => number;

/** A list of random numbers that is the same on every run. */
export function drawing(seed: number): Draw {
  // A linear congruential generator (Numerical Recipes, 2nd ed., section 7.1), its upper bits used.
  let state = seed >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  for (let i = 0; i < 8; i++) next();
  return (from, to) => from + Math.floor(next() * (to - from + 1));
}

type Size = readonly [number, number];

/** The six classes of Berkey and Wang 1987: largest side of a piece, side of the sheet. */
const uniform: readonly Size[] = [
  [10, 10],
  [10, 30],
  [35, 40],
  [35, 100],
  [100, 100],
  [100, 300],
];

/** The four types of pieces of Martello and Vigo 1998 on a sheet of 100: long, tall, large and small ones. */
const shapes: readonly ((draw: Draw) => Size)[] = [
  (draw) => [draw(67, 100), draw(1, 50)],
  (draw) => [draw(1, 50), draw(67, 100)],
  (draw) => [draw(50, 100), draw(50, 100)],
  (draw) => [draw(1, 50), draw(1, 50)],
];

/**
 * A case of fewest sheets by straight cuts. Classes 1 to 6 draw both sides from one range; classes 7 to 10 draw 70 of
 * 100 pieces from one type and the others from the other three.
 */
export function randomSheetCase(kind: number, pieces: number, seed: number): FileCase {
  const draw = drawing(1000 * seed + kind);
  const [most, side] = uniform[kind - 1] ?? [0, 100];
  const usual = kind - 7;
  const others = [0, 1, 2, 3].filter((shape) => shape !== usual);
  const one = (): Size => {
    if (most > 0) return [draw(1, most), draw(1, most)];
    const shape = draw(1, 10) <= 7 ? usual : (others[draw(0, 2)] as number);
    return (shapes[shape] as (draw: Draw) => Size)(draw);
  };
  const sizes = Array.from({ length: pieces }, one);
  return {
    name: `class ${kind}, ${pieces} pieces, seed ${seed}`,
    task: "fewest-sheets",
    cuts: "guillotine",
    rotate: false,
    sheet: [side, side],
    pieces: counted(sizes, (size) => ({ size })),
    expect: { atLeast: Math.ceil(sizes.reduce((sum, [a, b]) => sum + a * b, 0) / side ** 2) },
  };
}

/** A case of fewest bars: lengths drawn from a range, bars of one length (Falkenauer 1996; Scholl and others 1997). */
export function randomBarCase(
  name: string,
  range: Size,
  bar: number,
  pieces: number,
  seed: number,
): FileCase {
  const draw = drawing(seed);
  const lengths = Array.from({ length: pieces }, () => draw(...range));
  return {
    name: `${name}_${seed}`,
    stock: [{ length: bar, price: 1 }],
    kerf: 0,
    trim: 0,
    pieces: counted(lengths, (length) => ({ length })),
  };
}

/** Each value once, with how often it occurs. */
function counted<Value>(
  values: readonly Value[],
  write: (value: Value) => FileCase,
): (FileCase & { readonly count: number })[] {
  const found = new Map<string, { readonly value: Value; count: number }>();
  for (const value of values) {
    const before = found.get(String(value));
    if (before) before.count++;
    else found.set(String(value), { value, count: 1 });
  }
  return [...found.values()].map(({ value, count }) => ({ ...write(value), count }));
}

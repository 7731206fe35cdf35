/**
 * Random numbers that come out the same for the same seed on every machine: xoshiro128** of D. Blackman and
 * S. Vigna, Scrambled linear pseudorandom number generators (2021), public domain; its state is filled from the
 * seed by a 32-bit mixer of the splitmix family.
 */
import { at } from "./lists.js";

/** A stream of random numbers. */
export interface RandomStream {
  /** The next 32 bits, as a whole number from 0. */
  bits(): number;
  /** Evenly spread over 0 to 1, neither end reached. */
  uniform(): number;
  /** Normal, mean 0, deviation 1. */
  normal(): number;
  /** Chi-square with so many degrees of freedom. */
  chiSquare(degreesOfFreedom: number): number;
}

/** A stream from a seed. */
export function seededRandom(seed: number): RandomStream {
  let state = seed >>> 0;
  const mixed = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let word = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return (word ^ (word >>> 16)) >>> 0;
  };
  return randomFrom([mixed(), mixed(), mixed(), mixed()]);
}

/** A stream from its four words of state, of which at least one is not zero. */
export function randomFrom(words: readonly [number, number, number, number]): RandomStream {
  const state = Uint32Array.from(words);
  const bits = (): number => nextBits(state);
  const uniform = (): number => {
    const high = bits() >>> 5;
    return (high * 2 ** 26 + (bits() >>> 6) + 0.5) / 2 ** 53;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { bits, uniform, normal, chiSquare: (freedom) => 2 * gamma(freedom / 2, uniform, normal) };
}

/** A whole number from 0 to below a limit, from numbers that are evenly spread over 0 to 1. */
export function pick(uniform: () => number, below: number): number {
  return Math.floor(uniform() * below);
}

function rotated(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

function nextBits(state: Uint32Array): number {
  const [a, b, c, d] = [at(state, 0), at(state, 1), at(state, 2), at(state, 3)];
  const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
  const third = c ^ a;
  const fourth = d ^ b;
  state[1] = b ^ third;
  state[0] = a ^ fourth;
  state[2] = third ^ (b << 9);
  state[3] = rotated(fourth, 11);
  return result;
}

/** G. Marsaglia, W. W. Tsang, A simple method for generating gamma variables (2000). */
function gamma(shape: number, uniform: () => number, normal: () => number): number {
  if (shape < 1) return gamma(shape + 1, uniform, normal) * uniform() ** (1 / shape);
  const d = shape - 1 / 3;
  for (;;) {
    const x = normal();
    const cube = (1 + x / Math.sqrt(9 * d)) ** 3;
    if (cube > 0 && Math.log(uniform()) < x ** 2 / 2 + d - d * cube + d * Math.log(cube)) return d * cube;
  }
}

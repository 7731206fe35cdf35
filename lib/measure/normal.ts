/** The normal distribution, to the last digits of a double. */

/**
 * Share of a normal scatter below z. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11
 * (series) and 26.2.14 (continued fraction).
 */
export function normalShare(z: number): number {
  const height = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (Math.abs(z) < 3) return 0.5 + height * series(z);
  const tail = Math.abs(z) > 38 ? 0 : height / fraction(Math.abs(z));
  return z > 0 ? 1 - tail : tail;
}

function series(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return sum;
}

function fraction(z: number): number {
  let value = z;
  for (let k = 120; k >= 1; k--) value = z + k / value;
  return value;
}

/** The z below which the share of a normal scatter lies, by bisection. */
export function normalPoint(share: number): number {
  return crossing((z) => normalShare(z) - share, -40, 40);
}

/** Where a rising function crosses zero, to the last digits: false position, and halving every other step. */
export function crossing(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [under, over] = [rising(low), rising(high)];
  for (let step = 0; step < 200 && to - from > 1e-14 * Math.max(1, Math.abs(to)); step++) {
    const share = step % 2 === 0 ? under / (under - over) : 0.5;
    const at = from + (to - from) * share;
    const value = rising(at);
    if (value === 0) return at;
    if (value < 0) [from, under] = [at, value];
    else [to, over] = [at, value];
  }
  return (from + to) / 2;
}

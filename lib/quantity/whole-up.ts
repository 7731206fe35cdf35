/**
 * The next whole number from 0 up, where a quotient that is whole but for its rounding stays where it is:
 * 3 packs of 100 hold 300.0000000001 screws.
 */
export function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - 1e-9 * Math.max(1, Math.abs(value))));
}

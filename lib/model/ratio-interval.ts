/** The range that the builder's measured scatter gives a ratio, at 95 %. */
export interface RatioInterval {
  /** Its lower end, of the ratio itself. */
  readonly low: number;
  /** Its upper end, of the ratio itself. */
  readonly high: number;
  /** Share of each measured input in the scatter, largest first; they sum to 1. */
  readonly shares: readonly { readonly input: string; readonly share: number }[];
}

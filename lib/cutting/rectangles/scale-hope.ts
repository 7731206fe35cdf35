/** What pieces can still add to a sheet by one scale: the most valuable for their weight first, the last in part. */
export class ScaleHope {
  private used = 0;
  /** Places by falling worth for a weight. */
  private readonly dense: Int32Array;

  /**
   * @param weights by place
   * @param values by place
   * @param left pieces left by place; changed by the search
   * @param room what a sheet holds
   */
  constructor(
    private readonly weights: Float64Array,
    private readonly values: Float64Array,
    private readonly left: Int32Array,
    private readonly room: number,
  ) {
    const density = (place: number): number =>
      (values[place] as number) / Math.max(1e-12, weights[place] as number);
    this.dense = Int32Array.from(weights.keys()).sort((a, b) => density(b) - density(a));
  }

  /** Whether one more piece goes on. */
  holds(place: number): boolean {
    return this.used + (this.weights[place] as number) <= this.room;
  }

  /** Puts pieces on, or takes them off. */
  take(place: number, times: number): void {
    this.used += times * (this.weights[place] as number);
  }

  /** The most that pieces from a place on can add. */
  most(from: number): number {
    let room = this.room - this.used;
    let worth = 0;
    for (let i = 0; i < this.dense.length; i++) {
      const place = this.dense[i] as number;
      if (place < from) continue;
      const count = this.left[place] as number;
      const weight = count * (this.weights[place] as number);
      const value = count * (this.values[place] as number);
      if (weight >= room) return weight > 0 ? worth + value * (room / weight) : worth;
      worth += value;
      room -= weight;
    }
    return worth;
  }
}

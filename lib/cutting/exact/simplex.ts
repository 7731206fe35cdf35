/** A revised simplex for covering programs: minimise cost, cover every demand, exceed no supply. */

/** One column: what it costs and what it puts into which rows. */
export interface LpColumn {
  /** Of one. */
  readonly cost: number;
  /** Rows with a coefficient. */
  readonly rows: readonly number[];
  /** The coefficients, in the order of the rows. */
  readonly factors: readonly number[];
}

const tiny = 1e-9;

/**
 * Holds a basis, its inverse and the values of its columns. Rows from 0 on are demands to be met
 * (at least), then supplies not to be exceeded (at most). It starts with every demand met by an artificial
 * column at a cost no plan would pay.
 */
export class CoveringProgram {
  private readonly basis: LpColumn[];
  private readonly inverse: Float64Array[];
  private readonly values: number[];
  private readonly rowPrices: Float64Array;

  /**
   * @param demands right-hand sides of the rows to be met
   * @param supplies right-hand sides of the rows not to be exceeded
   * @param artificialCost of meeting one unit of demand by nothing
   */
  constructor(demands: readonly number[], supplies: readonly number[], artificialCost: number) {
    const sides = [...demands, ...supplies];
    this.values = sides;
    this.basis = sides.map((_, row) => ({
      cost: row < demands.length ? artificialCost : 0,
      rows: [row],
      factors: [1],
    }));
    this.inverse = sides.map((_, row) => {
      const line = new Float64Array(sides.length);
      line[row] = 1;
      return line;
    });
    this.rowPrices = Float64Array.from(this.basis, ({ cost }) => cost);
  }

  /** What one more unit of each row would cost. */
  prices(): Float64Array {
    return this.rowPrices;
  }

  /** The columns in use with how much of each. */
  solution(): { readonly column: LpColumn; readonly amount: number }[] {
    return this.basis.map((column, i) => ({ column, amount: this.values[i] as number }));
  }

  /** What the columns in use cost. */
  cost(): number {
    return this.basis.reduce((sum, { cost }, i) => sum + cost * (this.values[i] as number), 0);
  }

  /** What a column costs beyond what its rows are worth. */
  reducedCost({ cost, rows, factors }: LpColumn): number {
    let worth = 0;
    for (let k = 0; k < rows.length; k++) {
      worth += (factors[k] as number) * (this.rowPrices[rows[k] as number] as number);
    }
    return cost - worth;
  }

  /** Takes a column into the basis. Returns false where it would have to be used without end. */
  enter(column: LpColumn): boolean {
    const direction = this.basis.map((_, i) => this.along(i, column));
    const leaving = this.leaving(direction);
    if (leaving < 0) return false;
    const reduced = this.reducedCost(column);
    this.scale(leaving, direction[leaving] as number);
    for (const [i, factor] of direction.entries()) {
      if (i !== leaving && factor !== 0) this.subtract(i, leaving, factor);
    }
    const line = this.inverse[leaving] as Float64Array;
    for (let row = 0; row < line.length; row++) {
      this.rowPrices[row] = (this.rowPrices[row] as number) + reduced * (line[row] as number);
    }
    this.basis[leaving] = column;
    return true;
  }

  private scale(i: number, pivot: number): void {
    const line = this.inverse[i] as Float64Array;
    for (let row = 0; row < line.length; row++) line[row] = (line[row] as number) / pivot;
    this.values[i] = (this.values[i] as number) / pivot;
  }

  private along(i: number, { rows, factors }: LpColumn): number {
    const line = this.inverse[i] as Float64Array;
    let sum = 0;
    for (let k = 0; k < rows.length; k++) sum += (line[rows[k] as number] as number) * (factors[k] as number);
    return sum;
  }

  /** The basic column that reaches zero first; of equals the one with the largest pivot. */
  private leaving(direction: readonly number[]): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const [i, factor] of direction.entries()) {
      if (factor <= tiny) continue;
      const ratio = Math.max(0, this.values[i] as number) / factor;
      const better = ratio < least - tiny || (ratio <= least + tiny && factor > (direction[best] as number));
      if (!better) continue;
      best = i;
      least = Math.min(least, ratio);
    }
    return best;
  }

  private subtract(i: number, from: number, factor: number): void {
    const target = this.inverse[i] as Float64Array;
    const source = this.inverse[from] as Float64Array;
    for (let row = 0; row < target.length; row++)
      target[row] = (target[row] as number) - factor * (source[row] as number);
    this.values[i] = (this.values[i] as number) - factor * (this.values[from] as number);
  }
}

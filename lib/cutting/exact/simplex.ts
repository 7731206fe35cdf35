/** A revised simplex for covering programs: minimise cost, cover every demand, exceed no supply. */

/** One column: what it costs and what it puts into which rows. */
export interface LpColumn {
  /** Of one. */ readonly cost: number;
  /** Its coefficients that are not zero. */ readonly entries: readonly LpEntry[];
}

/** One coefficient of a column. */
export interface LpEntry {
  /** The row it stands in. */ readonly row: number;
  /** Its value. */ readonly factor: number;
}

const tiny = 1e-9;

/** An entry of a list that this file made long enough: the innermost loops have no time for a check. */
function read(list: Float64Array, index: number): number {
  return list[index] as number;
}

/** One row of a basis. */
export interface BasisRow {
  /** The column in use. */ column: LpColumn;
  /** Its row of the inverse of the basis. */ readonly inverse: Float64Array;
  /** How much of the column is used. */ amount: number;
}

/**
 * Holds a basis, its inverse and the amounts of its columns. Rows from 0 on are demands to be met
 * (at least), then supplies not to be exceeded (at most). It starts with every demand met by an artificial
 * column at a cost no plan would pay.
 */
export class CoveringProgram {
  private readonly basis: readonly BasisRow[];
  private readonly rowPrices: Float64Array;

  /**
   * @param demands right-hand sides of the rows to be met
   * @param supplies right-hand sides of the rows not to be exceeded
   * @param artificialCost of meeting one unit of demand by nothing
   */
  constructor(demands: readonly number[], supplies: readonly number[], artificialCost: number) {
    const sides = [...demands, ...supplies];
    this.basis = sides.map((amount, row) => {
      const inverse = new Float64Array(sides.length);
      inverse[row] = 1;
      const cost = row < demands.length ? artificialCost : 0;
      return { column: { cost, entries: [{ row, factor: 1 }] }, inverse, amount };
    });
    this.rowPrices = Float64Array.from(this.basis, ({ column }) => column.cost);
  }

  /** What one more unit of each row would cost. */
  prices(): Float64Array {
    return this.rowPrices;
  }

  /** The columns in use with how much of each. */
  solution(): readonly { readonly column: LpColumn; readonly amount: number }[] {
    return this.basis;
  }

  /** What the columns in use cost. */
  cost(): number {
    return this.basis.reduce((sum, { column, amount }) => sum + column.cost * amount, 0);
  }

  /** What a column costs beyond what its rows are worth. */
  reducedCost({ cost, entries }: LpColumn): number {
    let worth = 0;
    for (const { row, factor } of entries) worth += factor * read(this.rowPrices, row);
    return cost - worth;
  }

  /** Takes a column into the basis. Returns false where it would have to be used without end. */
  enter(column: LpColumn): boolean {
    const direction = this.basis.map(({ inverse }) => along(inverse, column));
    const leaving = leavingRow(this.basis, direction);
    if (!leaving) return false;
    const reduced = this.reducedCost(column);
    scale(leaving.row, leaving.pivot);
    for (const [i, factor] of direction.entries()) {
      const row = this.basis[i];
      if (row && row !== leaving.row && factor !== 0) subtract(row, leaving.row, factor);
    }
    for (const [i, entry] of leaving.row.inverse.entries()) {
      this.rowPrices[i] = read(this.rowPrices, i) + reduced * entry;
    }
    leaving.row.column = column;
    return true;
  }
}

function along(inverse: Float64Array, { entries }: LpColumn): number {
  let sum = 0;
  for (const { row, factor } of entries) sum += read(inverse, row) * factor;
  return sum;
}

/** The basic column that reaches zero first; of equals the one with the largest pivot. */
function leavingRow(
  basis: readonly BasisRow[],
  direction: readonly number[],
): { readonly row: BasisRow; readonly pivot: number } | undefined {
  let best: { readonly row: BasisRow; readonly pivot: number } | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [i, pivot] of direction.entries()) {
    const row = basis[i];
    if (!row || pivot <= tiny) continue;
    const ratio = Math.max(0, row.amount) / pivot;
    const better = ratio < least - tiny || (ratio <= least + tiny && pivot > (best?.pivot ?? 0));
    if (!better) continue;
    best = { row, pivot };
    least = Math.min(least, ratio);
  }
  return best;
}

function scale(row: BasisRow, pivot: number): void {
  const { inverse } = row;
  for (let i = 0; i < inverse.length; i++) inverse[i] = read(inverse, i) / pivot;
  row.amount /= pivot;
}

function subtract(row: BasisRow, from: BasisRow, factor: number): void {
  const { inverse } = row;
  for (let i = 0; i < inverse.length; i++) inverse[i] = read(inverse, i) - factor * read(from.inverse, i);
  row.amount -= factor * from.amount;
}

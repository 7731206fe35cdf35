/** A value at a place from values around it: a parabola through them, the near ones counting most. */

/** A value at a distance from the place. */
export interface Sample {
  /** From the place, m. */
  readonly dx: number;
  readonly dy: number;
  readonly values: readonly number[];
}

/**
 * Values at the place itself, by weighted least squares (O. C. Zienkiewicz, J. Z. Zhu, The superconvergent patch
 * recovery, Int. J. Numer. Methods Eng. 33, 1992, with weights that fade with the distance).
 *
 * @param samples around the place, more than six
 * @param reach distance at which a sample counts little, m
 * @returns one value for each of the samples' values
 */
export function fittedHere(samples: readonly Sample[], reach: number): readonly number[] {
  const terms = ({ dx, dy }: Sample): readonly number[] => {
    const [x, y] = [dx / reach, dy / reach];
    return [1, x, y, x * x, x * y, y * y];
  };
  const count = samples[0]!.values.length;
  const rows = Array.from({ length: 6 }, () => new Array<number>(6 + count).fill(0));
  for (const sample of samples) {
    const basis = terms(sample);
    const weight = Math.exp(-(basis[3]! + basis[5]!));
    const all = [...basis, ...sample.values];
    basis.forEach((a, i) => {
      all.forEach((b, j) => {
        rows[i]![j]! += weight * a * b;
      });
    });
  }
  return solved(rows).slice(0, count);
}

/** The first unknown for each right-hand side, by elimination with the largest pivot. */
function solved(rows: number[][]): readonly number[] {
  const size = rows.length;
  for (let column = size - 1; column >= 0; column--) {
    const largest = rows
      .slice(0, column + 1)
      .reduce((best, row, i) => (Math.abs(row[column]!) > Math.abs(rows[best]![column]!) ? i : best), 0);
    [rows[column], rows[largest]] = [rows[largest]!, rows[column]!];
    const pivot = rows[column]!;
    for (let row = 0; row < column; row++) {
      const share = rows[row]![column]! / pivot[column]!;
      pivot.forEach((value, j) => {
        rows[row]![j]! -= share * value;
      });
    }
  }
  return rows[0]!.slice(size).map((value) => value / rows[0]![0]!);
}

/**
 * Bounds on sheets stronger than area: sizes are changed so that what fits still fits, but adds up to more.
 * Dual feasible functions of Fekete and Schepers 2004 (after Lueker 1983), applied to both directions.
 */

/** A piece, the sheet taken as 1 x 1. */
export interface UnitPiece {
  /** Share of the sheet's length. */
  readonly length: number;
  /** Share of the sheet's width. */
  readonly width: number;
  /** Whether the two may change places, and then as shares of the other side. */
  readonly turned?: { readonly length: number; readonly width: number };
  /** How many. */
  readonly count: number;
}

/** Maps a share of an extent so that whatever summed to no more than 1 still does. */
type Change = (share: number) => number;

const slack = 1e-9;

/** The fewest sheets any plan can do with, straight cuts or not. */
export function fewestSheets(pieces: readonly UnitPiece[]): number {
  const along = changes(pieces.flatMap(({ length, turned }) => [length, ...(turned ? [turned.length] : [])]));
  const across = changes(pieces.flatMap(({ width, turned }) => [width, ...(turned ? [turned.width] : [])]));
  let most = 0;
  for (const f of along) {
    for (const g of across) most = Math.max(most, total(pieces, f, g));
  }
  return Math.ceil(most - 1e-6);
}

function total(pieces: readonly UnitPiece[], f: Change, g: Change): number {
  return pieces.reduce((sum, { length, width, turned, count }) => {
    const lying = f(length) * g(width);
    return sum + count * (turned ? Math.min(lying, f(turned.length) * g(turned.width)) : lying);
  }, 0);
}

/** The changes worth trying for sizes: none, steps of 1/k, and leaving out what is smaller than some piece. */
function changes(shares: readonly number[]): Change[] {
  const limits = [...new Set(shares.flatMap((share) => [share, 1 - share]))].filter(
    (share) => share > slack && share <= 0.5 + slack,
  );
  return [
    (share) => share,
    ...[1, 2, 3, 4, 5].map((k) => steps(k)),
    ...limits.map((limit) => leavingOut(limit)),
    ...limits.map((limit) => inSteps(limit)),
  ];
}

/** Rounds to steps of 1/k: whole multiples of 1/(k+1) stay, others go down to a multiple of 1/k. */
function steps(k: number): Change {
  return (share) => {
    const parts = share * (k + 1);
    return Math.abs(parts - Math.round(parts)) < slack * (k + 1) ? share : Math.floor(parts) / k;
  };
}

/** Counts what is larger than 1 - limit as a whole, what is smaller than the limit as nothing. */
function leavingOut(limit: number): Change {
  return (share) => (share > 1 - limit + slack ? 1 : share < limit - slack ? 0 : share);
}

/** Counts in whole pieces of the limit: small ones round down, large ones as what they leave no room for. */
function inSteps(limit: number): Change {
  const most = Math.floor(1 / limit + slack);
  return (share) => {
    if (share > 0.5 + slack) return 1 - Math.floor((1 - share) / limit + slack) / most;
    return share < 0.5 - slack ? Math.floor(share / limit + slack) / most : 0.5;
  };
}

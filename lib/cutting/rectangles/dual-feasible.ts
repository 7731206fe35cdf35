/**
 * Bounds on sheets stronger than area: sizes are changed so that what fits still fits, but adds up to more.
 * Dual feasible functions of Fekete and Schepers 2004 (after Lueker 1983), applied to both directions.
 */

import { at } from "../../algebra/lists.js";
/** A piece, the sheet taken as 1 x 1. */
export interface UnitPiece {
  /** Share of the sheet's length. */ readonly length: number;
  /** Share of the sheet's width. */ readonly width: number;
  /** Whether the two may change places, and then as shares of the other side. */
  readonly turned?: { readonly length: number; readonly width: number };
  /** How many. */ readonly count: number;
}

/** Maps a share of an extent so that whatever summed to no more than 1 still does. */
type Change = (share: number) => number;

const slack = 1e-9;

/** The fewest sheets any plan can do with, straight cuts or not. */
export function fewestSheets(pieces: readonly UnitPiece[]): number {
  let most = 0;
  weighAll(pieces, (total) => {
    most = Math.max(most, total);
  });
  return Math.ceil(most - 1e-6);
}

/** One weight a piece: whatever lies on one sheet together weighs no more than 1. */
export type Scale = readonly number[];

/** The scales on which all pieces weigh most, the plain area first. */
export function heaviestScales(pieces: readonly UnitPiece[], most: number): Scale[] {
  const heaviest: { readonly total: number; readonly scale: () => Scale }[] = [];
  weighAll(pieces, (total, scale) => {
    if (heaviest.length >= most && total <= (heaviest.at(-1)?.total as number) + slack) return;
    if (heaviest.some((one) => Math.abs(one.total - total) <= slack)) return;
    heaviest.push({ total, scale });
    heaviest.sort((one, other) => other.total - one.total).splice(most);
  });
  return [pieces.map(({ length, width }) => length * width), ...heaviest.map(({ scale }) => scale())];
}

/** What one change makes of every piece as it lies, and of every piece turned. */
interface Changed {
  /** Of every piece as it lies. */ readonly straight: readonly number[];
  /** Of every piece turned. */ readonly turned: readonly number[];
}

/** Weighs all pieces on every scale: a change of lengths with a change of widths. */
function weighAll(pieces: readonly UnitPiece[], visit: (total: number, scale: () => Scale) => void): void {
  const along = changesOf(pieces, "length");
  const across = changesOf(pieces, "width");
  for (const f of along) {
    for (const g of across) {
      let total = 0;
      for (let i = 0; i < pieces.length; i++) total += at(pieces, i).count * weight(f, g, i);
      visit(total, () => pieces.map((_, i) => weight(f, g, i)));
    }
  }
}

/** A piece weighs what it weighs lying the lighter way. */
function weight(f: Changed, g: Changed, i: number): number {
  return Math.min(at(f.straight, i) * at(g.straight, i), at(f.turned, i) * at(g.turned, i));
}

function changesOf(pieces: readonly UnitPiece[], side: "length" | "width"): Changed[] {
  const straight = pieces.map((piece) => piece[side]);
  const turned = pieces.map((piece) => (piece.turned ?? piece)[side]);
  return changes([...straight, ...turned]).map((change) => ({
    straight: straight.map(change),
    turned: turned.map(change),
  }));
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

import { hair } from "../rounding.js";
import type { Laid } from "./item.js";

/** A rectangle on a sheet. */
export interface FreeArea {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** What a sheet has besides its pieces and their kerfs, as rectangles that do not overlap, as wide as they go. */
export function freeAreas(
  laid: readonly Laid[],
  sheet: { readonly length: number; readonly width: number },
): FreeArea[] {
  const areas: FreeArea[] = [];
  const lines = edges(
    laid.flatMap(({ x, length }) => [x, x + length]),
    sheet.length,
  );
  const ends = edges(
    laid.flatMap(({ y, width }) => [y, y + width]),
    sheet.width,
  );
  for (const [i, x] of lines.slice(0, -1).entries()) {
    const length = (lines[i + 1] as number) - x;
    for (const { y, width } of gaps(laid, x + length / 2, ends)) grow(areas, { x, y, length, width });
  }
  return areas;
}

/** Distinct edges on a sheet, its own included. */
function edges(all: readonly number[], end: number): number[] {
  const inside = all.filter((one) => one > hair && one < end - hair).sort((a, b) => a - b);
  return [0, ...inside.filter((one, i) => i === 0 || one - (inside[i - 1] as number) > hair), end];
}

/** Free lengths across the sheet at a place along it. */
function gaps(laid: readonly Laid[], at: number, ends: readonly number[]): { y: number; width: number }[] {
  const here = laid.filter(({ x, length }) => x < at && at < x + length);
  const found: { y: number; width: number }[] = [];
  for (const [i, y] of ends.slice(0, -1).entries()) {
    const width = (ends[i + 1] as number) - y;
    const middle = y + width / 2;
    if (here.some((piece) => piece.y < middle && middle < piece.y + piece.width)) continue;
    const before = found.at(-1);
    if (before && Math.abs(before.y + before.width - y) <= hair) before.width += width;
    else found.push({ y, width });
  }
  return found;
}

/** Lengthens the rectangle that ends where this one begins, or adds it. */
function grow(areas: FreeArea[], area: FreeArea): void {
  const at = areas.findIndex(
    ({ x, y, length, width }) =>
      Math.abs(x + length - area.x) <= hair &&
      Math.abs(y - area.y) <= hair &&
      Math.abs(width - area.width) <= hair,
  );
  if (at < 0) areas.push(area);
  else areas[at] = { ...(areas[at] as FreeArea), length: (areas[at] as FreeArea).length + area.length };
}

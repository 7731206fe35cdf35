/** A case with left and right changed, as its files would say it. */

import type { CaseContent } from "./case-content.js";
import type { Block } from "./draws.js";

/** The same case seen in a mirror; its names stay, so names of its own must hold neither "left" nor "right". */
export function mirroredCase({ content, tables }: CaseContent): CaseContent {
  const swapped = swappedSides(content) as Block;
  const widths = new Map(
    Object.entries(blockOf(content.sections)).map(([name, section]) => [
      name,
      Number(blockOf(blockOf(section).inside).width),
    ]),
  );
  const turned = { shelves: placesOf(swapped.shelves, widths), contents: placesOf(swapped.contents, widths) };
  return { content: { ...swapped, ...turned }, tables };
}

/** A number without the round-off of a difference, to a billionth of a millimetre or inch. */
function exact(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** A word with left and right changed; the pair of faces "left-right" is its own mirror image, and age has no side. */
export function otherSide(word: string): string {
  if (word === "left-right" || word === "age left") return word;
  return word.replace(/\b(left|right)\b/g, (side) => (side === "left" ? "right" : "left"));
}

function swappedSides(value: unknown): unknown {
  if (typeof value === "string") return otherSide(value);
  if (Array.isArray(value)) return value.map(swappedSides);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [otherSide(key), mirroredUnder(key, one)]),
  );
}

function mirroredUnder(key: string, value: unknown): unknown {
  if (key === "polygon") return mirroredCorners(value as readonly (readonly [number, number])[]);
  return key === "leaves" ? mirroredLeaves(blockOf(value)) : swappedSides(value);
}

/** Leaves that follow each other from the left, in the other order. */
function mirroredLeaves({ runs, each, ...rest }: Block): Block {
  const swapped = Object.entries(blockOf(swappedSides(each)));
  return { runs, ...rest, each: Object.fromEntries(runs === "across" ? swapped.reverse() : swapped) };
}

function mirroredCorners(corners: readonly (readonly [number, number])[]): unknown {
  const high = Math.max(...corners.map(([across]) => across));
  return corners.map(([across, up]) => [exact(high - across), up]).reverse();
}

/** Shelves or contents with their places counted from the other side of their section. */
function placesOf(things: unknown, widths: ReadonlyMap<string, number>): Block {
  return Object.fromEntries(
    Object.entries(blockOf(things)).map(([name, thing]) => {
      const { in: section, at, size, ...rest } = blockOf(thing);
      const [left, ...place] = at as readonly number[];
      const [width = 0] = size as readonly number[];
      const room = widths.get(String(section)) ?? 0;
      return [
        name,
        { in: section, size, at: [exact(Math.max(0, room - (left ?? 0) - width)), ...place], ...rest },
      ];
    }),
  );
}

function blockOf(value: unknown): Block {
  return (value ?? {}) as Block;
}

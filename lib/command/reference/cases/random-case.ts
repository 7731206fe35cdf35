/** A random case, valid by construction: its case file as plain data, and its tables. */
import { businessOf, demandsOf, journeyOf, servicesOf } from "./asked.js";
import type { CaseContent } from "./case-content.js";
import { type Block, drawsOf } from "./draws.js";
import { furtherOf } from "./further.js";
import { insideOf } from "./inside.js";
import { builtOf, roomsOf } from "./sections.js";
import { reshapedRooms, turnedCase } from "./shapes.js";
import { measuredTables, stockOf } from "./stock.js";

/** How large a random case may be. */
export interface CaseSize {
  /** The most sections, up to six: each count up to it as often as another. */
  readonly sections: number;
}

/** The case of a seed: the same one for the same seed and size. Without a size it is as large as builders mostly build. */
export function randomCase(seed: number, size?: CaseSize): CaseContent {
  const lengths = seed % 2 === 0 ? "mm" : "in";
  const draws = drawsOf(seed, lengths);
  const currency = draws.pick(["EUR", "USD", "GBP"]);
  const own = roomsOf(draws, size?.sections);
  const shapes = drawsOf(shapeSeed + seed, lengths);
  const rooms = seed % 5 === 1 ? reshapedRooms(shapes, own) : own;
  const { rolls, ...built } = builtOf(draws, rooms);
  const measured = measuredTables();
  const content = {
    case: "Random case",
    purpose: "a try of everything a case can have",
    units: draws.often(8) === (lengths === "mm") ? "metric" : "inch",
    lengths,
    currency,
    ...built,
    ...insideOf(draws, rooms),
    demands: demandsOf(draws),
    ...draws.some(7, {
      journey: journeyOf(draws, rolls),
      services: servicesOf(draws),
      business: businessOf(draws),
    }),
  };
  const kept = Object.entries(measured).filter(([file]) => draws.often(5) || needed(content, file));
  const drawn = { content, tables: { ...stockOf(currency), ...Object.fromEntries(kept) } };
  const further = seed % 3 === 0 ? drawn : furtherOf(drawsOf(furtherSeed + seed, lengths), drawn);
  return seed % 5 < 3 ? turnedCase(shapes, further) : further;
}

/** Far from the seeds of whole cases. */
const furtherSeed = 500_000_000;
const shapeSeed = 1_000_000_000;

/** Foam that a content names must be in the table of cushion curves. */
function needed(content: Block, file: string): boolean {
  return file === "cushion-curves.csv" && JSON.stringify(content).includes("soft foam");
}

/** A random case, valid by construction: its case file as plain data, and its tables. */
import { stringify } from "yaml";
import { businessOf, demandsOf, journeyOf, servicesOf } from "./asked.js";
import { type Block, drawsOf } from "./draws.js";
import { insideOf } from "./inside.js";
import { builtOf, roomsOf } from "./sections.js";
import { measuredTables, stockOf } from "./stock.js";

/** A case as its files say it, the case file as plain data. */
export interface CaseContent {
  /** Every block of case.yaml. */
  readonly content: Block;
  /** The tables by file name. */
  readonly tables: Readonly<Record<string, string>>;
}

/** How large a random case may be. */
export interface CaseSize {
  /** The most sections, up to six. */
  readonly sections: number;
}

/** The case of a seed: the same one for the same seed and size. */
export function randomCase(seed: number, { sections: most }: CaseSize = { sections: 6 }): CaseContent {
  const lengths = seed % 2 === 0 ? "mm" : "in";
  const draws = drawsOf(seed, lengths);
  const currency = draws.pick(["EUR", "USD", "GBP"]);
  const rooms = roomsOf(draws, most);
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
  return { content, tables: { ...stockOf(currency), ...Object.fromEntries(kept) } };
}

/** Foam that a content names must be in the table of cushion curves. */
function needed(content: Block, file: string): boolean {
  return file === "cushion-curves.csv" && JSON.stringify(content).includes("soft foam");
}

/** The texts of a case's files. */
export function textsOf({ content, tables }: CaseContent): Readonly<Record<string, string>> {
  return { "case.yaml": stringify(content, { aliasDuplicateObjects: false }), ...tables };
}

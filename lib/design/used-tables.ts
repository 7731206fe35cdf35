/** Which tables of the stock a case leads to. */
import type { CaseBody, Content } from "./case.js";
import type { Stock } from "./stock.js";

/** Words of a case file, and the tables that their names stand in. */
const tablesOfWords: Readonly<Record<string, readonly (keyof Stock)[]>> = {
  facing: ["facings", "adhesives"],
  edges: ["bars", "fasteners"],
  hardware: ["hardware", "fasteners"],
  slides: ["hardware", "fasteners"],
  fastener: ["fasteners"],
};

/** The tables that a case cannot do without. */
export function usedTables({
  sections,
  hardware,
  shelves,
  drawers,
  contents,
}: CaseBody): ReadonlySet<keyof Stock> {
  const words = {
    facing: sections.some(({ panels }) => Object.values(panels).some(({ facing }) => facing)),
    edges: sections.some(({ edges }) => Object.values(edges).some(({ extrusion }) => extrusion)),
    hardware: hardware.length + drawers.length > 0 || shelves.some(({ slides }) => slides !== undefined),
    fastener: shelves.length > 0 || contents.some(isFastened),
  };
  return tablesOf(Object.entries(words).flatMap(([word, used]) => (used ? [word] : [])));
}

function isFastened({ held }: Content): boolean {
  return "fastener" in held;
}

/** The tables of a case that could not be read whole, by the words in it that are not "none". */
export function mentionedTables(content: unknown): ReadonlySet<keyof Stock> {
  return tablesOf([...wordsIn(content)]);
}

function tablesOf(words: readonly string[]): ReadonlySet<keyof Stock> {
  return new Set(["sheets", ...words.flatMap((word) => tablesOfWords[word] ?? [])]);
}

function* wordsIn(content: unknown): Iterable<string> {
  if (typeof content !== "object" || content === null) return;
  for (const [word, value] of Object.entries(content)) {
    if (value === "none") continue;
    yield word;
    yield* wordsIn(value);
  }
}

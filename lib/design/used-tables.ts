/** Which tables of the stock a case leads to. */
import type { CaseBody, Content } from "./case.js";
import { leavesOf } from "./derive/leaves.js";
import type { Stock } from "./stock.js";

/** Words of a case file, and the tables that their names stand in. */
const tablesOfWords: ReadonlyMap<string, readonly (keyof Stock)[]> = new Map([
  ["facing", ["facings", "adhesives"]],
  ["bar", ["bars"]],
  ["rivet", ["fasteners"]],
  ["screw", ["fasteners"]],
  ["adhesive", ["adhesives"]],
  ["strip", ["strips"]],
  ["pane", ["panes"]],
  ["hardware", ["hardware", "fasteners"]],
  ["stay", ["hardware", "fasteners"]],
  ["slides", ["hardware", "fasteners"]],
  ["fastener", ["fasteners"]],
]);

/** The tables that a case cannot do without. */
export function usedTables(body: CaseBody): ReadonlySet<keyof Stock> {
  const { sections, hardware, shelves, drawers, stiffeners, contents } = body;
  const edges = sections.flatMap((section) => Object.values(section.edges));
  const openings = sections.flatMap(({ panels }) => Object.values(panels).flatMap((panel) => panel.openings));
  const wood = [...edges.flatMap(({ joint }) => joint ?? []), ...stiffeners];
  const words = {
    facing: sections.some(({ panels }) => Object.values(panels).some(({ facing }) => facing)),
    bar: edges.some(({ extrusion }) => extrusion),
    rivet: edges.some(({ extrusion }) => extrusion),
    adhesive: wood.some(({ adhesive }) => adhesive !== undefined),
    strip: wood.some(({ strip }) => strip !== undefined),
    pane: openings.some(({ pane }) => pane !== undefined),
    screw: edges.some(({ joint }) => joint?.screw !== undefined),
    stay: openings.some((opening) => leavesOf(opening).some(({ leaf }) => leaf.stay)),
    hardware: hardware.length + drawers.length > 0 || shelves.some(({ slides }) => slides !== undefined),
    fastener:
      shelves.length > 0 ||
      contents.some(isFastened) ||
      openings.some(({ pane }) => pane?.fastener !== undefined) ||
      stiffeners.some(({ fastener }) => fastener !== undefined),
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
  return new Set(["sheets", ...words.flatMap((word) => tablesOfWords.get(word) ?? [])]);
}

function* wordsIn(content: unknown): Iterable<string> {
  if (typeof content !== "object" || content === null) return;
  for (const [word, value] of Object.entries(content)) {
    if (value === "none") continue;
    yield word;
    yield* wordsIn(value);
  }
}

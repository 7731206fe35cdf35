/** Names in blocks that could not be read whole: looked up all the same, so that one round of the check tells of them. */
import { didYouMean } from "../../problem.js";
import type { CasePath } from "../read/case-text.js";
import type { Stock } from "../stock.js";
import { strangeUse, type Unsure } from "./check-names.js";
import type { Fault } from "./fault.js";

/** Words of a case file whose text is a name of a table. */
const tableOfWord: ReadonlyMap<string, keyof Stock> = new Map([
  ["item", "hardware"],
  ["slides", "hardware"],
  ["sheet", "sheets"],
  ["bar", "bars"],
  ["rivet", "fasteners"],
  ["screw", "fasteners"],
  ["fastener", "fasteners"],
  ["laminate", "facings"],
  ["adhesive", "adhesives"],
  ["strip", "strips"],
]);

/** Words whose text begins with the name of a section. */
const sectionWords: readonly string[] = ["in", "on", "corners of"];

/**
 * Names that lead nowhere in blocks without a reading.
 *
 * @param content of the case file, as parsed
 * @param unread paths of the blocks
 */
export function checkUnread(
  content: unknown,
  unread: readonly CasePath[],
  stock: Stock,
  unsure: Unsure,
): Fault[] {
  const sections = Object.keys(recordOf(recordOf(content).sections));
  return unread
    .flatMap((path) => [...textsIn(path.reduce(stepInto, content), path)])
    .flatMap(({ path, text }) => {
      const [parent, word] = path.slice(-2).map(String);
      const table = word === "sheet" && parent === "pane" ? "panes" : tableOfWord.get(word ?? "");
      if (table) return text === "none" ? [] : strangeUse({ path }, text, table, stock, unsure);
      return sectionWords.includes(word ?? "") && sections.length > 0 ? strayIn(path, text, sections) : [];
    });
}

function strayIn(path: CasePath, text: string, sections: readonly string[]): Fault[] {
  const [name = ""] = text.split(".");
  if (sections.includes(name)) return [];
  const expected = `a section (${sections.join(", ")})${didYouMean(name, sections)}`;
  return [{ path, cause: `section ${name}`, expected }];
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
}

function stepInto(content: unknown, step: string | number): unknown {
  return recordOf(content)[step];
}

/** Every text below a path. What a thing needs names nothing of the stock: the strip of its pane is a length. */
function* textsIn(
  content: unknown,
  path: CasePath,
): Iterable<{ readonly path: CasePath; readonly text: string }> {
  if (typeof content === "string") yield { path, text: content };
  for (const [word, value] of Object.entries(recordOf(typeof content === "string" ? undefined : content))) {
    if (word !== "needs") yield* textsIn(value, [...path, word]);
  }
}

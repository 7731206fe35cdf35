/** The papers as screens for the bench: each numbered step, each drawing, each row that is measured. */
import { asBuiltMeasures, type Case, type Design } from "../../design/index.js";
import { type ListView, type PlainView, plainViewHtml } from "../../page/index.js";
import { Time } from "../../quantity/index.js";
import {
  type AsBuiltKey,
  type AsBuiltUnits,
  asBuiltUnits,
  type BlanksBlock,
  type RecipeBlock,
  type RecipeSection,
} from "../../recipe/index.js";
import type { BenchClock, BenchMeasure, BenchStep, BenchView } from "./view.js";

/** What the screens of a case are made of. */
export interface BenchInput {
  /** The papers. */
  readonly sections: readonly RecipeSection[];
  /** The case. */
  readonly case: Pick<Case, "units" | "currency">;
  /** Its parts, for the adhesives that hold them. */
  readonly parts: Pick<Design["parts"], "facings" | "glues">;
}

/** The work at the bench, in the order of the papers. What is bought, decided and signed is left to the paper. */
export function benchView({ sections, case: build, parts }: BenchInput): BenchView {
  const clocks = clocksOf(parts);
  const writer = new BenchWriter(clocks, asBuiltUnits(build));
  for (const section of sections.filter(isWork)) writer.section(section);
  return { ...writer.view(), clocks };
}

function isWork({ blocks }: RecipeSection): boolean {
  return blocks.some(
    (block) =>
      block.kind === "cautions" ||
      block.kind === "drawing" ||
      isSteps(block) ||
      (block.kind === "blanks" && block.records !== undefined) ||
      (block.kind === "group" && isWork({ title: "", newPage: false, blocks: block.blocks })),
  );
}

function isSteps(block: RecipeBlock): block is ListView {
  return block.kind === "list" && block.ordered;
}

/** Open, press and cure time of every adhesive of the case; one that is zero has no clock. */
function clocksOf({ facings, glues }: BenchInput["parts"]): readonly BenchClock[] {
  const used = [...facings, ...glues].map(({ adhesive }) => adhesive);
  const byName = new Map(used.map((one) => [one.name, one]));
  return [...byName.values()].flatMap(({ name: adhesive, openTime, pressTime, cureTime }) =>
    (
      [
        ["open", openTime],
        ["press", pressTime],
        ["cure", cureTime],
      ] as const
    ).flatMap(([what, seconds]) =>
      seconds > 0 ? [{ adhesive, what, seconds, words: Time.show(seconds) }] : [],
    ),
  );
}

/** What a screen stands under. */
interface Place {
  readonly section: string;
  readonly heading: string;
  /** Number of the first step of the section, and of the outermost group. */
  readonly first: number;
  readonly sheets: readonly number[];
}

/** The page's policy allows its own style sheet alone. */
const ownStyle = / style="[^"]*"/g;

/** Sheets that belong to a step: what is drawn, and what is tabled. */
function isSheet(block: RecipeBlock): block is Exclude<PlainView, { kind: "sentence" }> {
  return sheetKinds.has(block.kind) || (block.kind === "list" && !block.ordered);
}

const sheetKinds: ReadonlySet<RecipeBlock["kind"]> = new Set(["drawing", "picture", "table", "cautions"]);

class BenchWriter {
  readonly #steps: BenchStep[] = [];
  readonly #sheets: string[] = [];
  readonly #clocks: readonly BenchClock[];
  readonly #units: AsBuiltUnits;
  #drawn: readonly number[] = [];

  constructor(clocks: readonly BenchClock[], units: AsBuiltUnits) {
    this.#clocks = clocks;
    this.#units = units;
  }

  view(): Pick<BenchView, "steps" | "sheets"> {
    return { steps: this.#steps, sheets: this.#sheets };
  }

  section({ title, blocks }: RecipeSection): void {
    this.#drawn = [];
    this.#blocks(blocks, { section: title, heading: title, first: this.#steps.length, sheets: [] });
  }

  /** What is done in its order, groups among it; what is measured of it comes last. */
  #blocks(blocks: readonly RecipeBlock[], above: Place): void {
    const own = this.#ownSheets(blocks);
    const place = { ...above, sheets: this.#sheetsOf(own, above) };
    const loose = blocks.flatMap((block, i) =>
      block.kind === "sentence" && blocks[i + 1]?.kind !== "blanks" ? [block.text.replace(/^☐ /, "")] : [],
    );
    const isDrawn = own.length > 0 && !blocks.some(isSteps) && above.heading !== above.section;
    if (loose.length > 0 || isDrawn)
      this.#add(place, { words: loose.length > 0 ? loose.join(" ") : "Work from what is drawn here." });
    const early = blocks.filter((block) => block.kind === "group" && block.afterStep !== undefined);
    for (const block of blocks) if (!early.includes(block)) this.#doing(block, place, early);
    blocks.forEach((block, i) => {
      if (block.kind !== "blanks") return;
      const before = blocks[i - 1];
      this.#measuring(block, before?.kind === "sentence" ? before.text : "", place);
    });
  }

  /** @param early groups that come in between the steps of a list */
  #doing(block: RecipeBlock, place: Place, early: readonly RecipeBlock[] = []): void {
    if (isSteps(block)) this.#list(block, place, early);
    else if (block.kind === "checklist") this.#add(place, { words: `${block.title}.`, ticks: block.items });
    else if (block.kind === "group") {
      const isInner = place.heading !== place.section;
      this.#blocks(block.blocks, {
        ...place,
        heading: block.title,
        first: isInner ? place.first : this.#steps.length,
      });
    }
  }

  #list({ items }: ListView, place: Place, early: readonly RecipeBlock[]): void {
    items.forEach((words, i) => {
      this.#add(place, { words });
      for (const block of early)
        if (block.kind === "group" && block.afterStep === i + 1) this.#doing(block, place);
    });
  }

  #measuring({ columns, rows, blanks, records }: BlanksBlock, rule: string, place: Place): void {
    rows.forEach((row, i) => {
      const keys = records?.[i] ?? [];
      const about = columns.flatMap(({ heading }, j): (readonly [string, string])[] =>
        heading === "No." || (row[j] ?? "") === "" ? [] : [[heading, row[j] ?? ""]],
      );
      const measures = keys.map((key, j) => this.#measure(key, blanks[j] ?? ""));
      if (measures.length === 0 && rule === "") return;
      this.#add(place, {
        words: rule || "Type in what it came to.",
        about,
        measures,
        madeAt: this.#madeAt(row, place),
      });
    });
  }

  #measure(key: AsBuiltKey, label: string): BenchMeasure {
    const column = asBuiltMeasures[key.what];
    // Money is typed without its currency.
    return { key, label, unit: column === "price" ? "" : this.#units[column] };
  }

  /** The step under a heading that names a cell of the row, such as "Sheet 2: ..."; else the first of its group. */
  #madeAt(cells: readonly string[], { first }: Place): number {
    const named = this.#steps.findIndex(({ heading }) =>
      cells.some(
        (cell) =>
          cell !== "" &&
          (heading.startsWith(`${cell}:`) || heading.startsWith(`${cell} `) || heading.endsWith(`: ${cell}`)),
      ),
    );
    return named >= 0 ? named : first;
  }

  /** Places of the sheets among blocks. */
  #ownSheets(blocks: readonly RecipeBlock[]): readonly number[] {
    return blocks.filter(isSheet).map((block) => {
      const markup = String(plainViewHtml(block)).replaceAll(ownStyle, "");
      const known = this.#sheets.indexOf(markup);
      return known >= 0 ? known : this.#sheets.push(markup) - 1;
    });
  }

  /** Those of the group above where there are none, and those of the last group on a stage that goes on. */
  #sheetsOf(own: readonly number[], above: Place): readonly number[] {
    if (above.heading === above.section) return own;
    if (own.length > 0) this.#drawn = own;
    if (own.length > 0) return own;
    return above.sheets.length > 0 ? above.sheets : this.#drawn;
  }

  #add(
    { section, heading, sheets }: Place,
    told: Pick<BenchStep, "words"> & Partial<Pick<BenchStep, "about" | "ticks" | "measures" | "madeAt">>,
  ): void {
    const { about = [], ticks = [], measures = [] } = told;
    const clocks = this.#clocks.flatMap(({ adhesive }, i) =>
      heading.includes(adhesive) || told.words.includes(adhesive) ? [i] : [],
    );
    const id = [section, heading, told.words, ...about.flat()].join("\n");
    this.#steps.push({ ...told, id, section, heading, about, ticks, measures, sheets, clocks });
  }
}

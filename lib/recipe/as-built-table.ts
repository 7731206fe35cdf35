/** The lines of the papers that take a figure, as the table as-built.csv that a builder fills in. */
import { asBuiltMeasures, type Case } from "../design/index.js";
import { csvCell } from "../measure/index.js";
import type { AsBuiltKey, RecipeBlock, RecipeSection } from "./recipe.js";

/** A line of the papers. */
interface Line extends AsBuiltKey {
  /** Its number, such as M12. */
  readonly number: string;
}

function linesIn(block: RecipeBlock): readonly Line[] {
  if (block.kind === "group") return block.blocks.flatMap(linesIn);
  if (block.kind !== "blanks") return [];
  return (block.records ?? []).flatMap((keys, i) =>
    keys.map((key) => ({ ...key, number: block.rows[i]?.at(-1) ?? "" })),
  );
}

/** Units of the table's columns, by their names; none for a count. */
export type AsBuiltUnits = Readonly<Record<"length" | "can" | "mass" | "time" | "pieces" | "price", string>>;

/** The units in which the table of a case begins, in the order of its columns. */
export function asBuiltUnits({ units, currency }: Pick<Case, "units" | "currency">): AsBuiltUnits {
  const [length, can, mass] = units === "inch" ? (["in", "oz", "lb"] as const) : (["mm", "g", "kg"] as const);
  return { length, can, mass, time: "min", pieces: "", price: currency };
}

/** The line of headings of the table. */
export function asBuiltHead(build: Pick<Case, "units" | "currency">): string {
  const heads = Object.entries(asBuiltUnits(build)).map(([name, unit]) =>
    unit ? `${name} (${unit})` : name,
  );
  return ["number", "what", "of", "at", ...heads].join(",");
}

/**
 * The table with a row a blank, its figures left empty: one with no figure is no problem when it is read.
 *
 * @param sections of papers whose blanks are numbered
 */
export function asBuiltTable(
  sections: readonly RecipeSection[],
  build: Pick<Case, "units" | "currency">,
): string {
  const figures = Object.keys(asBuiltUnits(build));
  const lines = sections.flatMap(({ blocks }) => blocks.flatMap(linesIn));
  const used = lines.map(({ number, what, of, at = "", pieces }) => {
    const counted = figures.map((name) => (name === "pieces" ? String(pieces ?? "") : ""));
    return [number, what, of, at, ...counted];
  });
  return [
    `# Fill in what you measured, each figure in the column of its kind: ${kindsOf()}. Save it as as-built.csv beside case.yaml.`,
    asBuiltHead(build),
    ...used.map((cells) => cells.map(csvCell).join(",")),
    "",
  ].join("\n");
}

function kindsOf(): string {
  return [...new Set(Object.values(asBuiltMeasures))].join("; ");
}

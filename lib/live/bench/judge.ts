/** A figure judged as soon as it is typed in, by the questions that the case is asked once it is built. */
import { applyChange, type Case, type ReadDesign, type Texts } from "../../design/index.js";
import { type Finding, reviewCase } from "../../findings/index.js";
import type { Problem } from "../../problem.js";
import { asBuiltChanges, asBuiltFile } from "./as-built-changes.js";
import type { BenchValue } from "./view.js";

/** What becomes of a figure: answers about it, or why it cannot be read. */
export type Judged = { readonly findings: readonly Finding[] } | { readonly trouble: string };

/**
 * What the case would answer if these figures alone had been measured.
 *
 * @param values the figure, and what it is read together with: the can before and after
 * @param read reads the job's files
 */
export function judged(
  texts: Texts,
  values: readonly BenchValue[],
  build: Pick<Case, "units" | "currency">,
  read: (texts: Texts) => ReadDesign,
): Judged {
  const { [asBuiltFile]: _, ...others } = texts;
  const changed = applyChange(others, ...asBuiltChanges(undefined, values, build)).texts;
  const seen = read(changed);
  if ("problems" in seen) return { trouble: troubleOf(seen.problems) };
  const { steps } = reviewCase(seen.design);
  return { findings: steps.filter(({ id }) => /\.as-built-/.test(id)).flatMap(({ ask }) => ask()) };
}

/** Where the figure stands in the table is no business of who typed it; what it does to the rest of the case is. */
function troubleOf(problems: readonly Problem[]): string {
  return problems
    .map(({ file, value, expected }) => {
      const found = value === undefined ? "" : `Found "${value}", `;
      const before = file === asBuiltFile ? "" : "With this figure the case no longer fits together. ";
      return `${before}${found}expected ${expected}.`;
    })
    .join(" ");
}

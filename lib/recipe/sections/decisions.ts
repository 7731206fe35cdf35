/** What is not answered with yes, on one page: what to settle before the first cut, by danger. */
import { byDanger, type Finding, keepsFromRelease } from "../../findings/index.js";
import { sentencesOf } from "../../page/index.js";
import { flowingSection, notes, type RecipeSection, sentence, when } from "../recipe.js";
import { counted } from "../words.js";
import type { Workshop } from "../workshop.js";

/** So many lines fit on the page. */
const mostLines = 22;

/** Findings that are not answered with yes, the gravest first. */
export function openFindings({ findings }: Pick<Workshop, "findings">): readonly Finding[] {
  return byDanger(findings).filter(({ verdict }) => verdict !== "holds" && verdict !== "close");
}

/** Whether it may be built, for the foot of every page. */
export function stampOf(workshop: Pick<Workshop, "findings">): string {
  if (workshop.findings.length === 0) return "NOT CHECKED: no review came with this recipe";
  const kept = openFindings(workshop).filter(keepsFromRelease).length;
  return kept === 0
    ? "RELEASED"
    : `NOT RELEASED: ${counted(kept, "question")} of safety or strength ${kept === 1 ? "is" : "are"} open`;
}

/** The section of decisions; there is none where every question holds. */
export function decisionsSection(workshop: Workshop): RecipeSection[] {
  const lines = linesOf(openFindings(workshop));
  if (lines.length === 0) return [];
  const over = lines.length - mostLines;
  return [
    flowingSection(
      "Decisions",
      sentence("Settle these before the first cut. What keeps the case from release stands first."),
      notes(
        lines.slice(0, mostLines),
        [
          { heading: "Weighs", cell: ({ finding: { tier } }) => tier },
          { heading: "Question", cell: ({ finding: { question }, about }) => `${question} (${about})` },
          { heading: "Answer", cell: ({ finding }) => shortAnswer(finding) },
        ],
        ["Done, date"],
      ),
      ...when(over > 0, () =>
        sentence(
          `${counted(over, "more question")} of less weight ${over === 1 ? "stands" : "stand"} in the book.`,
        ),
      ),
    ),
  ];
}

/** Like questions with like answers on one line. */
function linesOf(
  findings: readonly Finding[],
): readonly { readonly finding: Finding; readonly about: string }[] {
  const lines = new Map<string, { readonly finding: Finding; readonly about: string[] }>();
  for (const finding of findings) {
    const key = `${finding.tier}|${finding.question}|${shortAnswer(finding)}`;
    const line = lines.get(key) ?? { finding, about: [] };
    line.about.push(finding.subject);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ finding, about }) => ({
    finding,
    about:
      about.length > 3 ? `${about.slice(0, 2).join(", ")} and ${about.length - 2} more` : about.join(", "),
  }));
}

function shortAnswer({ missing, answer, verdict }: Finding): string {
  if (verdict === "unknown" && missing) return `Measure ${missing.measure}.`;
  return sentencesOf(answer)[0] ?? answer;
}

/** What the review does not yet say yes to. It stands in front of everything else. */
import type { Finding, Verdict } from "../../findings/index.js";
import { cautions, findingView, list, tableOf } from "../../page/index.js";
import { group, notes, type RecipeBlock, type RecipeSection, section, sentence, when } from "../recipe.js";
import type { Rule } from "../rule.js";
import { counted, distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on open questions; there is none where every question holds. */
export function beforeYouCut({ findings, rule }: Workshop): RecipeSection[] {
  const of = (verdict: Verdict): Finding[] => findings.filter((finding) => finding.verdict === verdict);
  const open = [...of("fails"), ...of("broken"), ...of("close"), ...of("unknown")];
  if (open.length === 0) return [];
  return [
    section(
      "Before you cut",
      opening(of),
      ...[...of("fails"), ...of("broken")].map((finding) => card(finding, rule)),
      ...when(of("close").length > 0, () => closeTable(of("close"))),
      ...when(of("unknown").length > 0, () => unknownTable(of("unknown"))),
      ...openCautions([...of("close"), ...of("unknown")]),
      decisions(open),
    ),
  ];
}

/** How many questions hold, in a sentence. */
export function verdictSummary(findings: readonly Finding[]): string {
  if (findings.length === 0)
    return "No review came with this recipe: nothing in it has been checked by calculation.";
  const words: readonly (readonly [Verdict, string, string])[] = [
    ["holds", "holds", "hold"],
    ["close", "is close to the limit", "are close to the limit"],
    ["fails", "does not hold", "do not hold"],
    ["unknown", "waits for a measurement", "wait for a measurement"],
    ["broken", "could not be computed", "could not be computed"],
  ];
  const parts = words.flatMap(([verdict, one, many]) => {
    const count = findings.filter((finding) => finding.verdict === verdict).length;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return `The review asked ${counted(findings.length, "question")} about this case: ${listed(parts)}.`;
}

function opening(of: (verdict: Verdict) => readonly Finding[]): RecipeBlock {
  const said: readonly (readonly [Verdict, string, string])[] = [
    ["fails", "Does not hold", "Change the case and run the review again, or do not build it."],
    ["broken", "Not computed", "Report it, and build nothing that rests on it."],
    ["close", "Close", "Measure more, or make it stronger."],
    ["unknown", "Not known yet", "Make the measurement first."],
  ];
  return list(
    said.flatMap(([verdict, words, advice]) => {
      const count = of(verdict).length;
      return count === 0 ? [] : [`${words}: ${counted(count, "question")}. ${advice}`];
    }),
  );
}

/** The finding without its working, which the book shows. */
function card(finding: Finding, rule: Rule): RecipeBlock {
  return findingView({ ...finding, because: [], source: [] }, rule.style);
}

function closeTable(findings: readonly Finding[]): RecipeBlock {
  return tableOf(
    findings,
    [
      { heading: "About", cell: ({ subject }) => subject },
      { heading: "Question", cell: ({ question }) => question },
      { heading: "Answer", cell: ({ answer }) => answer },
    ],
    "Close to the limit",
  );
}

function unknownTable(findings: readonly Finding[]): RecipeBlock {
  return tableOf(
    findings,
    [
      { heading: "About", cell: ({ subject }) => subject },
      { heading: "Question", cell: ({ question }) => question },
      { heading: "Measure", cell: ({ missing, answer }) => missing?.measure ?? answer },
      { heading: "How", cell: ({ missing }) => missing?.how ?? "" },
    ],
    "Not known yet",
  );
}

function openCautions(findings: readonly Finding[]): RecipeBlock[] {
  const said = distinct(findings.flatMap((finding) => finding.cautions));
  return said.length === 0 ? [] : [cautions(...said)];
}

function decisions(findings: readonly Finding[]): RecipeBlock {
  return group(
    "Your decision",
    sentence("Write down what you changed or measured before the first cut, so that the next builder knows."),
    notes(
      findings,
      [
        { heading: "About", cell: ({ subject }) => subject },
        { heading: "Question", cell: ({ question }) => question },
      ],
      ["What was done", "Date"],
    ),
  );
}

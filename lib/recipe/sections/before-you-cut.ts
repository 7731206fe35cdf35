/** What the review does not yet say yes to. It stands in front of everything else. */
import { byDanger, type Finding, keepsFromRelease, type Verdict } from "../../findings/index.js";
import { findingView, list, tableOf } from "../../page/index.js";
import { group, notes, type RecipeBlock, type RecipeSection, section, sentence, when } from "../recipe.js";
import type { Rule } from "../rule.js";
import { counted, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on open questions, by danger; there is none where every question holds. */
export function beforeYouCut({ findings: all, rule }: Workshop): RecipeSection[] {
  const findings = byDanger(all);
  const of = (...verdicts: readonly Verdict[]): Finding[] =>
    findings.filter(({ verdict }) => verdicts.includes(verdict));
  const open = of("fails", "broken", "close", "unknown");
  if (open.length === 0) return [];
  return [
    section(
      "Before you cut",
      sentence(releaseWords(open)),
      opening(open),
      ...of("fails", "broken").map((finding) => card(finding, rule)),
      ...when(of("close").length > 0, () => closeTable(of("close"))),
      ...when(of("unknown").length > 0, () => unknownTable(of("unknown"))),
      decisions(open),
    ),
  ];
}

/** Whether it may be built as it is. */
function releaseWords(open: readonly Finding[]): string {
  const kept = open.filter(keepsFromRelease).length;
  return kept === 0
    ? "Released for building: nothing of safety or strength fails or is unknown. What stands here is yours to weigh."
    : `Not released for building: ${counted(kept, "question")} of safety or strength ${kept === 1 ? "fails or is" : "fail or are"} not known. They stand first; settle them and run the review again.`;
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

/** How many are open, and what to do about each kind. */
function opening(open: readonly Finding[]): RecipeBlock {
  const kinds: readonly (readonly [string, (finding: Finding) => boolean, string])[] = [
    [
      "Does not hold, safety or strength",
      (one) => one.verdict === "fails" && keepsFromRelease(one),
      "Change the case and run the review again.",
    ],
    [
      "Does not hold, handling or feel",
      (one) => one.verdict === "fails" && !keepsFromRelease(one),
      "Change it, or live with it and say so to whoever handles it.",
    ],
    ["Not computed", ({ verdict }) => verdict === "broken", "Report it, and build nothing that rests on it."],
    ["Close", ({ verdict }) => verdict === "close", "Measure more, or make it stronger."],
    ["Not known yet", ({ verdict }) => verdict === "unknown", "Make the measurement first."],
  ];
  return list(
    kinds.flatMap(([words, belongs, advice]) => {
      const count = open.filter(belongs).length;
      return count === 0 ? [] : [`${words}: ${counted(count, "question")}. ${advice}`];
    }),
  );
}

/** The finding without its working, which the book shows, and its cautions, which are told once for all. */
function card(finding: Finding, rule: Rule): RecipeBlock {
  return findingView({ ...finding, because: [], source: [], cautions: [], assumes: [] }, rule.style);
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

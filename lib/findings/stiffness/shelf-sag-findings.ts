import type { ShelfPart } from "../../design/index.js";
import { type ReviewInput, shelfSag } from "../../model/index.js";
import { ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** Whether each shelf stays straight under what it carries, after years. */
export function shelfSagFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.shelves.map((part) =>
    guarded(
      {
        id: `stiffness.shelf.${part.shelf.name}`,
        topic: "stiffness",
        subject: part.shelf.name,
        question: `Will the ${part.shelf.name} stay straight under what it carries, after years?`,
      },
      () => shelfReply(part, input),
    ),
  );
}

function shelfReply(part: ShelfPart, input: ReviewInput): Reply {
  const { first, later, allowed, because } = shelfSag(part, input);
  const used = ratio(later / allowed);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `It sags ${showFine(first, style)} when loaded and ${showFine(later, style)} after years; ${showFine(allowed, style)} is allowed.`,
    demand: fineAmount("sag after years", later),
    capacity: fineAmount("allowed sag", allowed),
    ratio: used,
    because,
    cautions: [],
    source: [cite("common-practice", "allowed sag as a share of the span")],
  };
}

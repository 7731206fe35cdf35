/** What is worked out of a case, a step at a time, and what each step tells the page. */
import { caseFile, type Design, type Texts } from "../design/index.js";
import { panelSags, type Review, type ReviewStep } from "../findings/index.js";
import { answersToHandOver } from "../kept/index.js";
import { physicalInput } from "../model/index.js";
import { formOf } from "./case-form.js";
import { answerView, caseView, drawnSolids, totalsOf } from "./case-view.js";
import type { Share, Told } from "./messages.js";
import { rackOf } from "./rack.js";
import { shared } from "./shares.js";

/** A case as an edit left it. */
export interface EditedCase {
  /** The edit's number. */
  readonly edit: number;
  /** The files. */
  readonly texts: Texts;
  /** What they say. */
  readonly design: Design;
  /** What follows from it. */
  readonly review: Review;
}

/** A step of the work; it gives what is to be told. */
export type WorkStep = () => readonly Told[];

/** One worker's share of the work on a case, in order. */
export function workOf(share: Share, edited: EditedCase): readonly WorkStep[] {
  const { edit, review } = edited;
  const { quick, later, panels, boxes, spare } = shared(review.steps);
  const asking = (steps: readonly ReviewStep[]): readonly WorkStep[] =>
    steps.map((step) => () => [answersOf(step, edited)]);
  const ids = (steps: readonly ReviewStep[]): string[] => steps.map(({ id }) => id);
  const handed: WorkStep = () => [{ kind: "handed", share, answers: answersToHandOver() }];
  if (share === "deep") {
    // The joined boxes by themselves first: what the other has worked out meanwhile is taken before it is asked for.
    const bend = (): readonly Told[] => {
      review.box;
      return [];
    };
    return [bend, ...asking(boxes), handed, () => [{ kind: "done", edit, share, questions: ids(boxes) }]];
  }
  return [
    ...seenFirst(edited, ids(spare)),
    ...asking(quick),
    () => [firstSags(edited)],
    handed,
    ...asking(later),
    ...seenLater(edited),
    ...asking(panels),
    () => [{ kind: "done", edit, share, questions: ids([...quick, ...later, ...panels]) }],
  ];
}

/** The answers to one question. */
export function answersOf({ id, ask }: ReviewStep, { edit, design }: EditedCase): Told {
  const style = { system: design.case.units };
  return { kind: "answers", edit, question: id, answers: ask().map((one) => answerView(one, style)) };
}

function seenFirst({ edit, design, texts }: EditedCase, spare: readonly string[]): readonly WorkStep[] {
  return [
    () => [
      { kind: "case", edit, case: caseView(design, texts) },
      { kind: "spare", edit, questions: spare },
    ],
  ];
}

function seenLater(edited: EditedCase): readonly WorkStep[] {
  const { edit, design, texts, review } = edited;
  return [
    () => [{ kind: "solids", edit, solids: drawnSolids(review) }],
    () => [{ kind: "totals", edit, totals: totalsOf(design, review) }],
    () => [{ kind: "form", edit, form: formOf(texts[caseFile] ?? "", design.stock) }],
    () => [{ kind: "rack", edit, rack: rackOf(texts, design, review) }],
  ];
}

/** Panels alone on the bench, before anybody knows how the box holds them. */
function firstSags({ edit, design }: EditedCase): Told {
  const waiting = { refused: "the case as joined boxes is still being worked out" };
  const alone = panelSags({ ...physicalInput(design), box: () => waiting });
  const style = { system: design.case.units };
  return { kind: "first", edit, question: panelSags.id, answers: alone.map((one) => answerView(one, style)) };
}

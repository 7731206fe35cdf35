/** Whether each section balances between its handles, and which things to move where it does not. */
import { balancing, type ContentMove, liftedByEnds, sectionsWithHandles, sideOf } from "../../model/index.js";
import { Length, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { liftedFigure } from "../figures/carried-figures.js";
import { type Question, question } from "../question.js";
import { each } from "../subjects.js";

/** Common practice, no source: no end carries more than 55 % of a section. */
const allowedOffset = 0.05;

/** Whether each section balances between its handles, and what moves it there. */
export const balance: Question = question({
  id: "travel.balance",
  about: each(
    (input) => sectionsWithHandles(input).filter((section) => liftedByEnds(input, section)),
    (section) => section,
  ),
  ask: (section) => `Does ${section} balance between its handles, and what moves it there?`,
  tier: "handling",
  cautions: [
    "The person at the heavier end tires and lets go first. Mark the heavier end on the case, and lift on a word.",
  ],
  answer: (input, _, section) => {
    const { balance: line, axis, span, wanted, moves } = balancing(input, section);
    const style = styleOf(input.case);
    const off = Length.si(Math.abs(wanted));
    const words = moves.map((move) => moveWords(move, axis, style));
    const most = Length.si(allowedOffset * span);
    return {
      demand: amount(Length, "off the middle between the handles", off),
      capacity: amount(Length, "off the middle at most, a twentieth of the way between them", most),
      facts: offMiddle(Length.show(off, style), sideOf(axis, -wanted), Length.show(most, style)),
      remedies: [
        words.length === 0
          ? { words: "Nothing inside has room to move: turn the load round, or move the handles." }
          : {
              words: `To bring it towards the middle, move ${words.join(". Or move ")}.`,
              gives: moves.map(({ name, possible }) => amount(Length, `way of the ${name}`, possible)),
            },
      ],
      because: [line, ...moves.map((move) => move.line)],
      limit: cite("common-practice", "no end carries more than 55 %"),
      sources: [cite("statics", "first moments")],
    };
  },
  figure: liftedFigure,
});

function moveWords({ name, wanted, possible }: ContentMove, axis: "x" | "y", style: ShowStyle): string {
  const whole = Math.abs(possible) >= Math.abs(wanted) * (1 - 1e-9);
  const rest = whole ? "" : ", as far as the wall lets it";
  const way = Length.show(Length.si(Math.abs(possible)), style);
  return `the ${name} ${way} to the ${sideOf(axis, possible)}${rest}`;
}

function offMiddle(off: string, side: string, most: string): string {
  return /^0 /.test(off)
    ? "It balances in the middle between its handles."
    : `It balances ${off} to the ${side} of the middle between its handles; ${most} is allowed.`;
}

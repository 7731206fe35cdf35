import {
  type BalanceLine,
  endShares,
  liftAxis,
  type ReviewInput,
  sectionBalance,
} from "../../model/index.js";
import { balanceMove } from "../../moving/index.js";
import { Length, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** Common practice, no source: no end carries more than 55 % of a section. */
const allowedOffset = 0.05;

const liftingCaution =
  "The one at the heavier end tires and lets go first. Mark the heavier end on the case, and lift on a word.";

/** Whether each section balances between its handles, and which three things to move where it does not. */
export function balanceFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.map(({ name }) =>
    guarded(
      {
        id: `travel.balance.${name}`,
        topic: "travel",
        subject: name,
        question: `Does ${name} balance between its handles, and what moves it there?`,
      },
      () => balanceReply(input, name),
      [liftingCaution],
    ),
  );
}

function balanceReply(input: ReviewInput, section: string): Reply {
  const { balance, axis, span, wanted, moves } = balancing(input, section);
  const style = styleOf(input.case);
  const words = moves.map((move) => moveWords(move, axis, style));
  return compared({
    kind: Length,
    asked: ["off the middle between the handles", Length.si(Math.abs(wanted))],
    there: ["off the middle at most, a twentieth of the way between them", Length.si(allowedOffset * span)],
    facts: `It balances ${show(Math.abs(wanted), style)} to the ${sideOf(axis, -wanted)} of the middle between its handles.`,
    remedy:
      words.length === 0
        ? "Nothing inside has room to move: turn the load round, or move the handles."
        : `Any one of these brings it towards the middle: ${words.join("; ")}.`,
    because: [balance, ...moves.map(({ line }) => line)],
    cautions: [liftingCaution],
    source: [cite("common-practice", "no end carries more than 55 %"), cite("statics", "first moments")],
  });
}

/** Where a section balances between its handles, where it should, and what brings it there. */
export interface Balancing {
  readonly balance: BalanceLine;
  /** From one end to the other. */
  readonly axis: "x" | "y";
  /** Between the handles. */
  readonly span: Length;
  /** How far its centre should go, to the right or the back. */
  readonly wanted: Length;
  /** The three contents that bring it furthest, each by itself. */
  readonly moves: readonly ContentMove[];
}

/**
 * Three things to move so that a section balances in the middle between its handles.
 *
 * @throws RangeError where there is no handle at each end
 */
export function balancing(input: ReviewInput, section: string): Balancing {
  const balance = sectionBalance(input, section);
  const { span, toCentre } = endShares(input, section, balance, balance.value.mass);
  const wanted = Length.si(span / 2 - toCentre);
  const moves = movesFor(input, section, balance, wanted).slice(0, 3);
  return { balance, axis: liftAxis(input, section), span, wanted, moves };
}

/** One content, how far it should go and how far the walls let it. */
export interface ContentMove {
  readonly name: string;
  readonly wanted: Length;
  /** As far as there is room up to the wall; things in between must make way. */
  readonly possible: Length;
  readonly line: ReturnType<typeof balanceMove.worked>;
}

/** Contents of a section by how much of the wanted shift each can give, the most first. */
export function movesFor(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  wanted: Length,
): readonly ContentMove[] {
  const axis = liftAxis(input, section);
  const inside = input.case.sections.find(({ name }) => name === section)?.inside;
  const room = (axis === "x" ? inside?.width : inside?.depth) ?? Length.si(0);
  return input.case.contents
    .filter((content) => content.section === section)
    .map(({ name, mass, at, size }) => {
      const line = balanceMove.worked({ total: balance.value.mass, mass, wanted });
      const free = wanted < 0 ? -at[axis] : room - at[axis] - size[axis];
      const possible = Length.si(wanted < 0 ? Math.max(line.value, free) : Math.min(line.value, free));
      return { mass, move: { name, wanted: line.value, possible, line } };
    })
    .filter(({ move }) => Math.abs(move.possible) > 0.003)
    .sort((a, b) => Math.abs(b.move.possible * b.mass) - Math.abs(a.move.possible * a.mass))
    .map(({ move }) => move);
}

function moveWords({ name, wanted, possible }: ContentMove, axis: "x" | "y", style: ShowStyle): string {
  const whole = Math.abs(possible) >= Math.abs(wanted) * (1 - 1e-9);
  const rest = whole ? "" : ", as far as the wall lets it, which is part of the way";
  return `the ${name} ${show(Math.abs(possible), style)} to the ${sideOf(axis, possible)}${rest}`;
}

/** To which side a way along an axis goes. */
export function sideOf(axis: "x" | "y", way: number): string {
  if (axis === "x") return way > 0 ? "right" : "left";
  return way > 0 ? "back" : "front";
}

function show(length: number, style: ShowStyle): string {
  return Length.show(Length.si(length), style);
}

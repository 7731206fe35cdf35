/** Where a section balances between its handles, and which contents to move to bring it to the middle. */
import { balanceMove } from "../../moving/index.js";
import { Length } from "../../quantity/index.js";
import { type BalanceLine, sectionBalance } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";
import { endShares, liftAxis } from "./lifting.js";

/** Where a section balances between its handles, where it should, and what brings it there. */
export interface Balancing {
  /** The section with what is in it. */
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
 * @throws Refusal where there is no handle at each end
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
  /** The content's name. */
  readonly name: string;
  /** How far it should go, to the right or the back. */
  readonly wanted: Length;
  /** As far as there is room up to the wall; things in between must make way. */
  readonly possible: Length;
  /** How the wanted way was worked out. */
  readonly line: ReturnType<typeof balanceMove.worked>;
}

/** A move of less is not worth the trouble, in metres. */
const leastMove = 0.003;

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
    .filter(({ move }) => Math.abs(move.possible) > leastMove)
    .sort((a, b) => Math.abs(b.move.possible * b.mass) - Math.abs(a.move.possible * a.mass))
    .map(({ move }) => move);
}

/** To which side a way along an axis goes. */
export function sideOf(axis: "x" | "y", way: number): string {
  if (axis === "x") return way > 0 ? "right" : "left";
  return way > 0 ? "back" : "front";
}

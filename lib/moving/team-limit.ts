import { type Formula, formula } from "../formula.js";
import { Count, Mass } from "../quantity/index.js";
import { cite } from "../source.js";

/** How much of the sum of what each can lift alone a team can lift together; L23 gives it for two and three. */
const teamShare: readonly number[] = [1, 2 / 3, 1 / 2, 1 / 2];

/** People who lift together. */
export interface TeamOfLifters {
  /** What one of them may lift alone. */
  readonly each: Mass;
  /** At most four: more seldom works. */
  readonly people: number;
}

/**
 * What a team may lift: two people two thirds, three one half of what they could lift one by one. For four the guide
 * has no figure; one half is taken.
 *
 * @source HSE L23, team handling
 * @throws Refusal for nobody, or more than four people: larger teams are unlikely to work
 * @example teamLimit({ each: kg(20), people: 2 }) // 26.67 kg
 */
export const teamLimit: Formula<TeamOfLifters, Mass> = formula({
  id: "lift.team.limit",
  title: "What a team may lift",
  equation: String.raw`m_n=k\,n\,m_1,\quad k=1,\ \tfrac23,\ \tfrac12\ (n=1,2,3)`,
  inputs: {
    each: { symbol: "m_1", kind: Mass, meaning: "one person alone", above: 0 },
    people: { symbol: "n", kind: Count, meaning: "people", min: 1, max: 4 },
  },
  result: { symbol: "m_n", kind: Mass, meaning: "the team together" },
  source: [cite("hse-manual-handling", "team handling")],
  validity: "People of like height and strength, room to move, a handhold each; on slopes and steps less.",
  warn: ({ people }) =>
    people === 4 ? ["the guide has no figure for four people; that for three is taken"] : [],
  compute: ({ each, people }) => (teamShare[people - 1] ?? 0) * people * each,
});

/** What a person puts on a panel: how much, and on how small a place. */
import { type Formula, formula } from "../formula.js";
import { choice, Force, type Kind, Length, lbf, mm, newton, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";

/** What a person does on a case. */
export type PersonWay = "stands" | "kneels" | "sits" | "leans";

/** A person on a panel. */
export interface PersonOnPanel {
  /** What the person does. */
  readonly way: PersonWay;
}

/** A force on a square. */
export type PersonLoad = {
  /** The force. */
  readonly force: Force;
  /** Side of the square that it is spread over. */
  readonly side: Length;
};

/** The mass of user that seating standards are written for. */
const user = newton(110 * standardGravity);

const loads: Readonly<Record<PersonWay, PersonLoad>> = {
  stands: { force: lbf(300), side: Length.of(2, "in") },
  kneels: { force: user, side: mm(100) },
  sits: { force: user, side: mm(300) },
  leans: { force: lbf(50), side: Length.of(1, "ft") },
};

const ways: Kind<PersonWay> = choice("what a person does", ["stands", "kneels", "sits", "leans"]);

/**
 * The load of a person on a panel.
 *
 * @example personLoad(personLoad.read({ way: "leans" })) // force 222.4 N, side 304.8 mm
 */
export const personLoad: Formula<PersonOnPanel, PersonLoad> = formula<PersonOnPanel, PersonLoad>({
  id: "person.load",
  title: "Load of a person on a panel",
  equation: String.raw`F,\quad A=s^2`,
  inputs: { way: { symbol: "w", kind: ways, meaning: "what the person does" } },
  result: {
    force: { symbol: "F", kind: Force, meaning: "force" },
    side: { symbol: "s", kind: Length, meaning: "side of the square it is spread over" },
  },
  source: [
    cite(
      "asce-7",
      "table 4-1, stair treads 300 lbf on 2 by 2 in; 4.5, infill of guards 50 lbf on a square foot",
    ),
    cite("en-1022", "scope, user of 110 kg"),
    cite("common-practice", "one knee on 100 mm, a seat of 300 mm"),
  ],
  validity: "Without jumping: a jump puts several times the weight on a panel, and nothing here allows it.",
  compute: ({ way }) => loads[way],
});

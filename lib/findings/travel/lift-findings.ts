/** Whether the people of the journey can lift each section. */

import {
  type BalanceLine,
  enoughPeople,
  liftOf,
  limitOf,
  type ReviewInput,
  sectionBalance,
  teamLoad,
} from "../../model/index.js";
import { judgeLift, judgeTeamLift, type LiftVerdict, liftCaution, teamCaution } from "../../moving/index.js";
import { Mass, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";
import { contentsOf, lighter } from "./lift-advice.js";

/** Whether the people of the journey can lift each section by its handles. */
export function liftFindings(input: ReviewInput): readonly Finding[] {
  const { people } = input.case.journey;
  return input.parts.sections.map(({ name }) =>
    guarded(
      {
        id: `travel.lift.${name}`,
        topic: "travel",
        subject: name,
        question: `Can ${people} ${people === 1 ? "person" : "people"} lift ${name}, loaded?`,
      },
      () => liftReply(input, name),
      [people === 1 ? liftCaution : teamCaution],
    ),
  );
}

function liftReply(input: ReviewInput, section: string): Reply {
  const balance = sectionBalance(input, section);
  return input.case.journey.people === 1
    ? loneReply(input, section, balance)
    : teamReply(input, section, balance);
}

function loneReply(input: ReviewInput, section: string, balance: BalanceLine): Reply {
  const { mass } = balance.value;
  const judged = judgeLift(mass, liftOf(input));
  return replyOf(input, section, { balance, share: mass, judged, who: "one person", because: [], stand: "" });
}

/** Everyone's share from the real centre of gravity and the places of the hands. */
function teamReply(input: ReviewInput, section: string, balance: BalanceLine): Reply {
  const load = teamLoad(input, section, balance, input.case.journey.people);
  const { shares, who, worst } = judgeTeamLift(load, liftOf(input));
  const places = load.people.map(({ name }) => name).join("; ");
  return replyOf(input, section, {
    balance,
    share: shares.value.greatest,
    judged: worst,
    who: `the one at the ${who}`,
    because: [shares],
    stand: load.people.length > 2 ? ` They stand at the ${places}.` : "",
  });
}

/** The most loaded person, and how the load came to be shared. */
interface MostLoaded {
  readonly balance: BalanceLine;
  readonly share: Mass;
  readonly judged: LiftVerdict;
  readonly who: string;
  readonly because: Reply["because"];
  readonly stand: string;
}

function replyOf(
  input: ReviewInput,
  section: string,
  { balance, share, judged, who, because, stand }: MostLoaded,
): Reply {
  const { atStart, atEnd, index, caution } = judged;
  const limit = limitOf(judged);
  const style = styleOf(input.case);
  const comparison = index.value <= 1 ? "within" : "above";
  const excess = Mass.si(balance.value.mass * (1 - limit / share));
  return compared({
    kind: Mass,
    asked: [`carried by ${who}`, share],
    there: ["recommended weight limit", limit],
    facts: `${Mass.show(share, style)} for ${who}, ${comparison} the recommended ${Mass.show(limit, style)}: lifting index ${Ratio.show(index.value, { digits: 2 })}.${stand}`,
    remedy: lighter(contentsOf(input, section), excess, enoughPeople(input, section, balance, limit), style),
    because: [balance, ...because, atStart, atEnd, index],
    cautions: [because.length > 0 ? teamCaution : caution],
    source: [cite("niosh-lifting", "recommended weight limit and lifting index")],
  });
}

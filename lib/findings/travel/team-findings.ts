/** Whether a team of the journey is good for each section as a team, beside each share by itself. */

import { judgeShare, limitOf, type ReviewInput, sectionBalance } from "../../model/index.js";
import { teamCaution, teamLimit } from "../../moving/index.js";
import { Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { contentsOf, lighter } from "./lift-advice.js";

/** The guide says of larger teams only that they are unlikely to work. */
const largestTeam = 4;

/** Whether each section is within what a guide allows a team; nothing to ask of one person. */
export function teamFindings(input: ReviewInput): readonly Finding[] {
  const { people } = input.case.journey;
  if (people < 2) return [];
  return input.parts.sections.map(({ name }) => {
    const question: Question = {
      id: `travel.team.${name}`,
      topic: "travel",
      subject: name,
      question: `Is ${name} within what ${people} people lift as a team?`,
    };
    if (people <= largestTeam) return guarded(question, () => teamReply(input, name), [teamCaution]);
    const missing = {
      measure: `a way to lift it with ${largestTeam} people at most`,
      how: "larger teams seldom lift together: take the load out, or use a ramp, a lift gate or a hoist",
    };
    return unknown(question, missing, [teamCaution]);
  });
}

function teamReply(input: ReviewInput, section: string): Reply {
  const { people } = input.case.journey;
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const each = limitOf(judgeShare(input, mass));
  const together = teamLimit.worked({ each, people });
  const style = styleOf(input.case);
  const hands = [2, 3, 4].find((more) => teamLimit({ each, people: more }) >= mass);
  return compared({
    kind: Mass,
    asked: [`mass of ${section}`, mass],
    there: [`what ${people} people lift as a team`, together.value],
    facts: `Each may lift ${Mass.show(each, style)} alone, ${people} together ${Mass.show(together.value, style)}, since nobody lifts at quite the same moment; it weighs ${Mass.show(mass, style)}.`,
    remedy: lighter(contentsOf(input, section), Mass.si(mass - together.value), hands, style),
    because: [balance, together],
    cautions: [teamCaution],
    source: [cite("hse-manual-handling", "team handling"), cite("niosh-lifting", "recommended weight limit")],
  });
}

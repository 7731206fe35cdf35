/** Whether each section can be carried on the stairs of the journey. */

import { endShares, judgeShare, limitOf, type ReviewInput, sectionBalance } from "../../model/index.js";
import { type LoadBetweenTwo, pairShares } from "../../moving/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

const stairCaution =
  "On stairs the one below cannot let go, and carries more where the case balances above its handles. Go down backwards one step at a time, a third person free to steady, nobody in the line of fall; use a stair climber or a lift where there is one.";

/** Whether each section can be carried up and down the stairs. */
export function stairsFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.map(({ name }) => stairsFinding(input, name));
}

function stairsFinding(input: ReviewInput, section: string): Finding {
  const { stairs, people } = input.case.journey;
  const question: Question = {
    id: `travel.stairs.${section}`,
    topic: "travel",
    subject: section,
    question: `Can ${people} people carry ${section} on the stairs?`,
  };
  if (stairs === undefined) {
    const how = 'measure rise and run of a step, and write the slope into the journey as "stairs: 32 deg"';
    return unknown(question, { measure: "the slope of the stairs", how }, [stairCaution]);
  }
  if (people < 2) {
    const how = "find a second person: nobody carries a case on stairs alone";
    return unknown(question, { measure: "who carries the other end", how }, [stairCaution]);
  }
  return guarded(question, () => stairsReply(input, section), [stairCaution]);
}

/** The larger half of the people walks below; whichever end leads, the way round that is worse for somebody. */
function stairsReply(input: ReviewInput, section: string): Reply {
  const { stairs, people } = input.case.journey;
  const balance = sectionBalance(input, section);
  const load = endShares(input, section, balance, balance.value.mass);
  const leaning = { ...load, incline: stairs ?? load.incline };
  const turned = { ...leaning, toCentre: Length.si(load.span - load.toCentre) };
  const ways = [leaning, turned].map((way) => sharedOnStairs(way, people));
  const [worst] = ways.sort((a, b) => b.share - a.share);
  if (!worst) throw new RangeError("stairs: no way round was found");
  const { line, share, who } = worst;
  const judged = judgeShare(input, share);
  const limit = limitOf(judged);
  const style = styleOf(input.case);
  return compared({
    kind: Mass,
    asked: [`carried by ${who}`, share],
    there: ["recommended weight limit", limit],
    facts: `On the stairs the lower end takes ${Mass.show(line.value.first, style)}, the upper ${Mass.show(line.value.second, style)}: ${Mass.show(share, style)} for ${who}.`,
    remedy: "Carry it empty, take the heaviest things out first, or find a way without stairs.",
    because: [balance, line, judged.atStart, judged.atEnd],
    cautions: [stairCaution],
    source: [cite("niosh-lifting", "recommended weight limit, used for a share of a team's load")],
  });
}

interface SharedOnStairs {
  readonly line: ReturnType<typeof pairShares.worked>;
  /** Of the most loaded person. */
  readonly share: Mass;
  readonly who: string;
}

function sharedOnStairs(load: LoadBetweenTwo, people: number): SharedOnStairs {
  const line = pairShares.worked(load);
  const [below, above] = [Math.ceil(people / 2), Math.floor(people / 2)];
  const each = { below: line.value.first / below, above: line.value.second / above };
  const worse = each.below >= each.above ? "below" : "above";
  const many = { below, above }[worse];
  const who = many === 1 ? `the one ${worse}` : `each of ${many} ${worse}`;
  return { line, share: Mass.si(each[worse]), who };
}

import { pairShares } from "../../moving/index.js";
import { Length, Mass, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { endShares, judgeShare, liftHandles } from "./lift-findings.js";

const stairCaution =
  "On stairs the one below carries more and cannot let go. Go down backwards one step at a time, a third person free to steady, nobody in the line of fall; use a stair climber or a lift where there is one.";

const gripCaution =
  "A hand that does not fit closes on the knuckles. Gloves need half as much room again; no finger between handle and door frame.";

/** Whether each section can be carried up stairs, and whether hands fit its handles. */
export function carryFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) => [stairFinding(input, name), ...gripFinding(input, name)]);
}

function stairFinding(input: ReviewInput, section: string): Finding {
  const { stairs, people } = input.case.journey;
  const question = {
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
  return guarded(question, () => stairReply(input, section), [stairCaution]);
}

function stairReply(input: ReviewInput, section: string): Reply {
  const { stairs, people } = input.case.journey;
  const balance = sectionBalance(input, section);
  const load = endShares(input, section, balance, Mass.si((2 * balance.value.mass) / people));
  const lower = lowerEndHeavier({ ...load, incline: stairs ?? load.incline });
  const share = Mass.si(Math.max(lower.value.first, lower.value.second));
  const judged = judgeShare(input, share);
  const limit = Mass.si(Math.min(judged.atStart.value.limit, judged.atEnd.value.limit));
  const style = styleOf(input.case);
  return compared({
    kind: Mass,
    asked: ["carried by each at the lower end", share],
    there: ["recommended weight limit", limit],
    facts: `On the stairs the lower end carries ${Mass.show(share, style)} for each person there.`,
    remedy: "Carry it empty, take the heaviest things out first, or find a way without stairs.",
    because: [balance, lower, judged.atStart, judged.atEnd],
    cautions: [stairCaution],
    source: [cite("niosh-lifting", "recommended weight limit, used for a share of a team's load")],
  });
}

/** Whichever end leads: the worse way round. */
function lowerEndHeavier(
  load: Parameters<typeof pairShares.worked>[0],
): ReturnType<typeof pairShares.worked> {
  const one = pairShares.worked(load);
  const turned = pairShares.worked({ ...load, toCentre: Length.si(load.span - load.toCentre) });
  const worst = (line: typeof one): number => Math.max(line.value.first, line.value.second);
  return worst(one) >= worst(turned) ? one : turned;
}

/** Room that a hand needs. NIOSH 94-110, 1.3.7: a handle at least 4.5 in long with 2 in of clearance. */
const handLength = Length.of(4.5, "in");
const handClearance = Length.of(2, "in");

function gripFinding(input: ReviewInput, section: string): Finding[] {
  const [handle] = liftHandles(input, section);
  if (!handle) return [];
  const { cutWidth, cutHeight, name } = handle.stock;
  const question = {
    id: `travel.grip.${section}`,
    topic: "travel",
    subject: `handles of ${section}`,
    question: `Does a hand fit the handles of ${section}?`,
  };
  if (!(cutWidth > 0 && cutHeight > 0)) {
    const how = "measure length and clearance with the hand that will use it, gloves on";
    return [unknown(question, { measure: `the grip of ${name}, which has no cut-out`, how }, [gripCaution])];
  }
  const style = styleOf(input.case);
  const used = Math.max(handLength / cutWidth, handClearance / cutHeight);
  return [
    guarded(question, () =>
      compared({
        kind: Ratio,
        asked: ["room a hand needs, over the room there is", Ratio.si(used)],
        there: ["at most", Ratio.si(1)],
        facts: `The cut-out is ${Length.show(cutWidth, style)} by ${Length.show(cutHeight, style)}; a hand needs ${Length.show(handLength, style)} by ${Length.show(handClearance, style)}.`,
        remedy: "Take a larger handle, or count the grip as poor in the journey.",
        because: [],
        cautions: [gripCaution],
        source: [cite("niosh-lifting", "1.3.7, optimal handles")],
      }),
    ),
  ];
}

import {
  casterRating,
  casterStands,
  pushLimits,
  steadinessPush,
  steadyTilt,
  tipWays,
} from "../../moving/index.js";
import { Angle, Force, Length, Mass, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { criterionWords, marginWords } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { verdictOf } from "../verdict.js";
import { standingHeight } from "./balance.js";
import { castersOf, leastHalf, standOf } from "./stand.js";

/** Said wherever a case may tip. */
export const tippingCaution: string =
  "A case that tips can crush a foot or a child. Brake or block the casters in public, keep doors and drawers shut when it stands alone, and try the real case by lifting one side with a helper ready.";

/** Whether the stacked case stands: leaning, pushed, and on three casters. */
export function standingFindings(input: ReviewInput): readonly Finding[] {
  const about = (id: string, subject: string, question: string) => ({
    id: `travel.${id}`,
    topic: "travel",
    subject,
    question,
  });
  return [
    guarded(
      about("tip", "stacked case", "How far does the stacked case lean before it tips?"),
      () => tipReply(input),
      [tippingCaution],
    ),
    guarded(
      about("push", "stacked case", "Does a push at the top tip the stacked case?"),
      () => pushReply(input),
      [tippingCaution],
    ),
    casterFinding(input),
  ];
}

function tipReply(input: ReviewInput): Reply {
  const { balance, ...stand } = standOf(input);
  const [worst] = tipWays(stand);
  if (!worst) throw new RangeError("tip angle: no way to fall was found");
  const { way, worked } = worst;
  const asked = ratio(steadyTilt.angle / worked.value);
  return {
    verdict: verdictOf(asked),
    answer: `It tips to the ${way} at ${Angle.show(worked.value, { digits: 2 })}; ${Angle.show(steadyTilt.angle)} is asked for. ${marginWords(asked)} ${criterionWords(steadyTilt.source)}`,
    demand: amount(Angle, "lean to be borne", steadyTilt.angle),
    capacity: amount(Angle, `lean at which it tips to the ${way}`, worked.value),
    ratio: asked,
    because: [balance, worked],
    cautions: [tippingCaution],
    source: [steadyTilt.source],
  };
}

const steadinessSource = cite("iec-62368", "8.6");

function pushReply(input: ReviewInput): Reply {
  const { balance, ...stand } = standOf(input);
  const { mass } = balance.value;
  const top = Math.max(...input.parts.sections.map(({ outside }) => outside.low.z + outside.size.z));
  const height = Length.si(Math.min(1.5, top + standingHeight(input)));
  const half = leastHalf(stand);
  const asked = steadinessPush.worked({ mass });
  const demand = Force.si(Math.max(asked.value, input.case.demands.push));
  const limits = pushLimits.worked({ mass, halfBase: half, pushHeight: height, friction: blockedCasters });
  const used = ratio(demand / limits.value.tips);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `A level push of ${Force.show(limits.value.tips, style)} at ${Length.show(height, style)} begins to tip it; it should stand ${Force.show(demand, style)}. ${marginWords(used)} ${criterionWords(steadinessSource)}`,
    demand: amount(Force, "push to be borne", demand),
    capacity: amount(Force, "push that tips it", limits.value.tips),
    ratio: used,
    because: [balance, asked, limits],
    cautions: [tippingCaution],
    source: [steadinessSource, cite("statics", "moments about the tipping edge")],
  };
}

/** Common practice, no source: rubber casters, braked, on a hard floor. */
const blockedCasters: Ratio = ratio(0.5);

/** Common practice, no source: thresholds, yards and ramps of a fairground. */
const roughGround = ratio(1.5);
const evenGround = ratio(1);

const overloadCaution =
  "A caster that breaks drops a corner without warning: keep hands and feet from under the case, and look at wheels and bolts before every trip.";

function casterFinding(input: ReviewInput): Finding {
  const question = {
    id: "travel.casters",
    topic: "travel",
    subject: "casters",
    question: "Does one caster stand what three must carry?",
  };
  const [caster] = castersOf(input);
  if (!caster)
    return unknown(question, { measure: "casters in the case file", how: "place four with duty roll" });
  const { rated } = caster.stock;
  if (rated === undefined) {
    return unknown(question, {
      measure: `the load rating of ${caster.stock.name}`,
      how: 'read it off the caster or its data sheet and put it in hardware.csv, column "rated"',
    });
  }
  return guarded(question, () => casterReply(input, rated));
}

const casterSource = cite("common-practice", "a third of the load a caster, with a service factor");

function casterReply(input: ReviewInput, rated: Force): Reply {
  const { balance, baseWidth, baseDepth, fromLeft, fromFront } = standOf(input);
  const { mass } = balance.value;
  const [worst] = casterStands({ mass, across: baseWidth, deep: baseDepth, fromLeft, fromFront });
  if (!worst) throw new RangeError("casters: no way to stand was found");
  const rule = casterRating.worked({
    mass,
    serviceFactor: input.case.journey.floor === "even" ? evenGround : roughGround,
  });
  const demand = Force.si(Math.max(worst.greatest, rule.value * standardGravity));
  const used = ratio(demand / rated);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `The most loaded caster must take ${Force.show(demand, style)} of its rated ${Force.show(rated, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}), with ${Mass.show(mass, style)} on ${worst.on}. ${marginWords(used)} ${criterionWords(casterSource)}`,
    demand: amount(Force, "on one caster", demand),
    capacity: amount(Force, "rated", rated),
    ratio: used,
    because: [balance, worst.worked, rule],
    cautions: [overloadCaution],
    source: [casterSource, cite("statics", "three supports")],
  };
}

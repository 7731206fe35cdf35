import {
  footprint,
  leastTippingArm,
  type ReviewInput,
  standingHeight,
  weighedInterval,
} from "../../model/index.js";
import { halfBaseNeeded, pushLimits, steadinessPush, steadyTilt, tipWays } from "../../moving/index.js";
import { Angle, Force, Length, metre, type Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** Said wherever a case may tip. */
export const tippingCaution: string =
  "A case that tips can crush a foot or a child. Brake or block the casters in public, keep doors and drawers shut when it stands alone, and try the real case by lifting one side with a helper ready.";

/** Whether the stacked case stands, leaning and pushed. */
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
      about("push", "stacked case", "Does a push at shoulder height tip the stacked case?"),
      () => pushReply(input),
      [tippingCaution],
    ),
  ];
}

/** Lean asked over the lean at which it tips, the worst way. */
function tipUse(input: ReviewInput): number {
  const [worst] = tipWays(footprint(input));
  return worst ? steadyTilt.angle / worst.worked.value : Number.NaN;
}

function tipReply(input: ReviewInput): Reply {
  const { balance, ...stand } = footprint(input);
  const [worst] = tipWays(stand);
  if (!worst) throw new RangeError("tip angle: no way to fall was found");
  const { way, worked } = worst;
  const base = halfBaseNeeded.worked({ height: stand.height, angle: steadyTilt.angle });
  const style = styleOf(input.case);
  const half = Length.show(leastTippingArm(stand), style);
  const interval = weighedInterval(input, tipUse);
  return compared({
    kind: Angle,
    asked: ["lean to be borne", steadyTilt.angle],
    there: [`lean at which it tips to the ${way}`, worked.value],
    facts: `It tips to the ${way} at ${Angle.show(worked.value, { digits: 2 })}; ${Angle.show(steadyTilt.angle)} is asked for.`,
    remedy: `It needs ${Length.show(base.value, style)} from below its centre of gravity to that edge and has ${half}: set the casters further out, move heavy things down, or set out a foot on that side.`,
    because: [balance, worked, base],
    cautions: [tippingCaution],
    source: [steadyTilt.source],
    ...(interval ? { interval } : {}),
  });
}

/** At shoulder height, or at the top of a lower case; 13 % of the weight, or the push of the case file if it is more. */
function pushReply(input: ReviewInput): Reply {
  const { balance, ...stand } = footprint(input);
  const { mass } = balance.value;
  const top = Math.max(...input.parts.sections.map(({ outside }) => outside.low.z + outside.size.z));
  const height = Length.si(Math.min(shoulderHeight, top + standingHeight(input)));
  const asked = steadinessPush.worked({ mass });
  const demand = Force.si(Math.max(asked.value, input.case.demands.push));
  const limits = pushLimits.worked({
    mass,
    halfBase: leastTippingArm(stand),
    pushHeight: height,
    friction: blockedCasters,
  });
  const { tips, slides } = limits.value;
  const style = styleOf(input.case);
  const first = slides < tips ? ` Braked, it would slide at ${Force.show(slides, style)}.` : "";
  return compared({
    kind: Force,
    asked: ["push to be borne", demand],
    there: ["push that tips it", tips],
    facts: `A level push of ${Force.show(tips, style)} at ${Length.show(height, style)} begins to tip it; it should stand ${Force.show(demand, style)}.${first}`,
    remedy: "Set the casters further out, lay weight in the lowest section, or fix it to a wall or table.",
    because: [balance, asked, limits],
    cautions: [tippingCaution],
    source: [cite("iec-62368", "8.6"), cite("statics", "moments about the tipping edge")],
  });
}

/** The published test pushes at up to 1.5 m, about the shoulder of a tall adult. */
const shoulderHeight: Length = metre(1.5);

/** Common practice, no source: rubber casters, braked, on a hard floor. */
const blockedCasters: Ratio = ratio(0.5);

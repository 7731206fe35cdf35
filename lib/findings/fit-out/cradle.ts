/** Whether a cradle lined with foam holds a thing on the road: over its rim, into its foam, off its floor, out of it. */
import type { Content, Holding } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { cushionPoints, missingCurve, type ReviewInput } from "../../model/index.js";
import { blockingForce, cradlePressure, cradleRim, type RideWay, rideWays } from "../../moving/index.js";
import { Force, Length, Pressure, Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Answer } from "../question.js";
import { mostOf } from "../subjects.js";

/** Held in a cradle. */
export type Cradle = Extract<Holding, { by: "cradle" }>;

/** How a thing in a cradle is judged, or what is missing for it. */
export function cradled(
  input: ReviewInput,
  content: Content,
  cradle: Cradle,
): (() => Answer) | MissingMeasurement {
  const { rated, lining } = cradle;
  if (rated === undefined)
    return {
      measure: `the push that the cradle of the ${content.name} stands`,
      how: 'pull the empty cradle sideways with a scale until it gives, and write "rated" into its block held',
    };
  const points = cushionPoints(input, lining);
  if (points.length === 0) return missingCurve(input, lining);
  // The largest pressure that anybody measured on this foam; beyond it it may be solid.
  const foam = Pressure.si(Math.max(...points.map(({ stress }) => stress)));
  return () => judged(input, content, cradle, { rated, foam });
}

/** One thing that may give, as a share of what it stands. */
interface Weakness {
  /** In words: "the cradle coming off". */
  readonly what: string;
  /** The load over what it stands. */
  readonly used: number;
  /** How the load was worked out. */
  readonly line: WorkedLine;
}

/** What a cradle stands. */
interface CradleStrength {
  /** The push at which it comes off. */
  readonly rated: Force;
  /** The pressure at which its foam may be solid. */
  readonly foam: Pressure;
}

function judged(
  input: ReviewInput,
  content: Content,
  cradle: Cradle,
  { rated, foam }: CradleStrength,
): Answer {
  const push = blockingForce.worked({ mass: content.mass, friction: ratio(0), way: "forward" });
  const weaknesses: Weakness[] = [
    ...rideWays.flatMap((way) => wallWeaknesses(content, cradle, foam, way)),
    { what: "the cradle coming off", used: push.value / rated, line: push },
  ];
  const worst = mostOf(weaknesses, ({ used }) => used, "cradle: no way to give was found");
  const behind = [...weaknesses].sort((a, b) => b.used - a.used).slice(0, 2);
  const style = styleOf(input.case);
  const lid = cradle.lid
    ? "A strap or lid keeps it in."
    : "Nothing keeps it from jumping out: give it a strap or a lid that holds a fifth of its weight down.";
  return {
    ...(cradle.lid ? {} : { verdict: "fails" }),
    demand: amount(Ratio, `${worst.what}, over what it stands`, ratio(worst.used)),
    capacity: amount(Ratio, "at most", ratio(1)),
    facts: `What gives first is ${worst.what}, at ${Ratio.show(ratio(worst.used), { unit: "%", digits: 2 })} of what it stands. Braking pushes it with ${Force.show(push.value, style)} into walls ${Length.show(cradle.rim, style)} high. ${lid}`,
    remedies:
      worst.used > 1
        ? [{ words: "Give the cradle higher walls, more foam against them, or more screws under it." }]
        : [],
    because: [push, ...behind.flatMap(({ line }) => (line === push ? [] : [line]))],
    limit: cite("en-12195", "table 2, road accelerations"),
    sources: [cite("fmcsa-393", "393.102(b): a fifth of the weight held down")],
  };
}

/** Over the rim and into the foam, one way of the road. */
function wallWeaknesses(
  { mass, size }: Content,
  { rim }: Cradle,
  foam: Pressure,
  way: RideWay,
): readonly Weakness[] {
  const [base, width] = way === "sideways" ? [size.x, size.y] : [size.y, size.x];
  const over = cradleRim.worked({ height: Length.si(size.z / 2), base, way });
  const into = cradlePressure.worked({ mass, width, rim, way });
  return [
    { what: `tipping over the rim, ${way}`, used: over.value / rim, line: over },
    { what: `pressing its foam solid, ${way}`, used: into.value / foam, line: into },
  ];
}

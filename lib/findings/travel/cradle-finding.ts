/** Whether a cradle lined with foam holds a thing on the road: over its rim, into its foam, off its floor, out of it. */
import type { Content, Holding } from "../../design/index.js";
import { cushionPoints, type ReviewInput } from "../../model/index.js";
import { blockingForce, cradlePressure, cradleRim, type RideWay, rideWays } from "../../moving/index.js";
import { Force, Length, Pressure, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

type Cradle = Extract<Holding, { by: "cradle" }>;

/** Answers the question of a content in a cradle, or names what is missing for it. */
export function cradleFinding(
  input: ReviewInput,
  question: Question,
  { content, cradle, caution }: CradledContent,
): Finding {
  if (cradle.rated === undefined) {
    const how =
      'pull the empty cradle sideways with a scale until it gives, and write "rated" into its block held';
    return unknown(question, { measure: `the push that the cradle of the ${content.name} stands`, how }, [
      caution,
    ]);
  }
  const foam = stiffest(input, cradle);
  if (foam === undefined) {
    const how = "ask its maker for the cushion curve and put it into cushion-curves.csv";
    return unknown(question, { measure: `a cushion curve of ${cradle.lining.kind}`, how }, [caution]);
  }
  const { rated } = cradle;
  return guarded(question, () => cradleReply(input, { content, cradle, caution }, { rated, foam }), [
    caution,
  ]);
}

/** A content, its cradle, and what is said of anything that may tear loose. */
export interface CradledContent {
  readonly content: Content;
  readonly cradle: Cradle;
  readonly caution: string;
}

/** The largest pressure that anybody measured on this foam; beyond it it may be solid. */
function stiffest(input: ReviewInput, { lining }: Cradle): Pressure | undefined {
  const points = cushionPoints(input, lining);
  return points.length === 0 ? undefined : Pressure.si(Math.max(...points.map(({ stress }) => stress)));
}

interface CradleStrength {
  readonly rated: Force;
  readonly foam: Pressure;
}

/** One thing that may give, as a share of what it stands. */
interface Weakness {
  readonly what: string;
  readonly used: number;
  readonly line: Reply["because"][number];
}

function cradleReply(
  input: ReviewInput,
  { content, cradle, caution }: CradledContent,
  { rated, foam }: CradleStrength,
): Reply {
  const { mass } = content;
  const push = blockingForce.worked({ mass, friction: ratio(0), way: "forward" });
  const weaknesses: Weakness[] = [
    ...rideWays.flatMap((way) => wallWeaknesses(content, cradle, foam, way)),
    { what: "the cradle coming off", used: push.value / rated, line: push },
  ];
  const [worst] = weaknesses.sort((a, b) => b.used - a.used);
  if (!worst) throw new RangeError("cradle: no way to give was found");
  const style = styleOf(input.case);
  const lid = cradle.lid
    ? "A strap or lid keeps it in."
    : "Nothing keeps it from jumping out: give it a strap or a lid that holds a fifth of its weight down.";
  const reply = compared({
    kind: Ratio,
    asked: [`${worst.what}, over what it stands`, ratio(worst.used)],
    there: ["at most", ratio(1)],
    facts: `Braking pushes it with ${Force.show(push.value, style)} into walls ${Length.show(cradle.rim, style)} high; nearest to giving is ${worst.what}. ${lid}`,
    remedy: "Higher walls, more foam against them, or more screws under the cradle.",
    because: [push, ...weaknesses.slice(0, 2).flatMap(({ line }) => (line === push ? [] : [line]))],
    cautions: [caution],
    source: [
      cite("en-12195", "table 2, road accelerations"),
      cite("fmcsa-393", "393.102(b): a fifth of the weight held down"),
    ],
  });
  return cradle.lid ? reply : { ...reply, verdict: "fails" };
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

import { castersOf, footprint, type ReviewInput } from "../../model/index.js";
import { casterRating, casterStands } from "../../moving/index.js";
import { Force, Mass, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply, unknown } from "../guarded.js";

/** Common practice, no source: thresholds, yards and ramps of a fairground. */
const roughGround = ratio(1.5);
const evenGround = ratio(1);

const overloadCaution =
  "A caster that breaks drops a corner without warning: keep hands and feet from under the case, and look at wheels and bolts before every trip.";

/** Whether one caster stands what three must carry when the fourth hangs over a dip. */
export function casterFinding(input: ReviewInput): Finding {
  const question = {
    id: "travel.casters",
    topic: "travel",
    subject: "casters",
    question: "Does one caster stand what three must carry?",
  };
  const [caster] = castersOf(input);
  if (!caster)
    return unknown(question, { measure: "casters in the case file", how: "place four with duty roll" }, [
      overloadCaution,
    ]);
  const { rated } = caster.stock;
  if (rated === undefined) {
    const missing = {
      measure: `the load rating of ${caster.stock.name}`,
      how: 'read it off the caster or its data sheet and put it in hardware.csv, column "rated"',
    };
    return unknown(question, missing, [overloadCaution]);
  }
  return guarded(question, () => casterReply(input, rated), [overloadCaution]);
}

function casterReply(input: ReviewInput, rated: Force): Reply {
  const { balance, baseWidth, baseDepth, fromLeft, fromFront } = footprint(input);
  const { mass } = balance.value;
  const [worst] = casterStands({ mass, across: baseWidth, deep: baseDepth, fromLeft, fromFront });
  if (!worst) throw new RangeError("casters: no way to stand was found");
  const rule = casterRating.worked({
    mass,
    serviceFactor: input.case.journey.floor === "even" ? evenGround : roughGround,
  });
  const demand = Force.si(Math.max(worst.greatest, rule.value * standardGravity));
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["on one caster", demand],
    there: ["rated", rated],
    facts: `The most loaded caster must take ${Force.show(demand, style)} of its rated ${Force.show(rated, style)}, with ${Mass.show(mass, style)} on ${worst.on}.`,
    remedy: "Take casters with a higher rating, or move heavy things towards the middle.",
    because: [balance, worst.worked, rule],
    cautions: [overloadCaution],
    source: [
      cite("common-practice", "a third of the load a caster, with a service factor"),
      cite("statics", "three supports"),
    ],
  });
}

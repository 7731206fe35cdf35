/** Whether the stays of lids and flaps hold them open. */
import { type Lid, lidMass, lidsOf, type ReviewInput } from "../../model/index.js";
import { lidStay, windForce } from "../../moving/index.js";
import {
  Angle,
  Area,
  Density,
  Force,
  Length,
  Mass,
  newton,
  type Ratio,
  ratio,
} from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { each, known } from "../subjects.js";

/** What is told of every lid. */
export const lidCaution =
  "A lid that falls shut breaks fingers and hits heads, and its hinge side nips. Prop it before you reach in, and keep children's hands away. Look at hinges and stays before every show.";

const eachHeldLeaf: Subjects<Lid> = each(
  (input) => lidsOf(input).filter(({ isTop, leaf }) => isTop || leaf.stay !== undefined),
  ({ panel }) => panel.id,
);

/** A hand that leans on the free edge; common practice, no source. */
const leaningHand: Force = newton(50);
/** A flat plate square to the wind, and air near sea level; common practice, no source. */
const plateDrag: Ratio = ratio(1.2);
const seaAir: Density = Density.si(1.2);

/** Whether the stays of each lid or flap hold it open, with its weight and a hand or the wind on it. */
export const stays: Question = question({
  id: "joints.stay",
  about: eachHeldLeaf,
  ask: ({ panel }) => `Does something hold ${panel.id} open, with a hand or the wind on it?`,
  tier: "safety",
  cautions: [lidCaution],
  needs: { rated: known((input, lid: Lid) => ratedOf(input, lid)) },
  answer: (input, { rated }, lid) => (rated === "no stay" ? unheld(lid) : held(input, lid, rated)),
});

/** What one stay is made for; a lid without one is held by nothing. */
function ratedOf({ parts }: ReviewInput, { panel, leaf }: Lid): Force | "no stay" | MissingMeasurement {
  if (!leaf.stay) return "no stay";
  const stay = parts.hardware.find(({ id }) => id.endsWith(` of ${panel.id}`));
  return (
    stay?.stock.rated ?? {
      measure: `the force that one ${leaf.stay.item} holds`,
      how: 'read it off its sheet and put it in hardware.csv, column "rated"',
    }
  );
}

function unheld({ panel }: Lid): Answer {
  return {
    plainNo: true,
    facts: `Nothing holds ${panel.id} open: it falls shut on whoever reaches in.`,
    remedies: [{ words: 'Give its leaf a "stay": item, count, arm and how far it opens.' }],
    because: [],
    limit: cite("common-practice", "a lid that hands work under is held open"),
  };
}

function held(input: ReviewInput, lid: Lid, rated: Force): Answer {
  const { panel, leaf, width, level } = lid;
  const { gust } = input.case.journey;
  const air = { area: Area.si(panel.grossArea), dragFactor: plateDrag, airDensity: seaAir };
  const wind = gust === undefined ? undefined : windForce.worked({ speed: gust, ...air });
  // Wind presses at the middle of the leaf: half as much at its free edge turns it alike.
  const blown = wind ? wind.value.force / 2 : 0;
  const push = Force.si(Math.max(leaningHand, blown));
  const stay = leaf.stay ?? { arm: width, count: 1, pull: Angle.si(Math.PI / 2) };
  const line = lidStay.worked({
    mass: lidMass(input, lid),
    reach: Length.si(width / 2),
    angle: level,
    push,
    width,
    arm: stay.arm,
    pull: stay.pull,
    stays: stay.count,
  });
  const style = styleOf(input.case);
  const by = blown > leaningHand ? "the wind" : "a hand";
  return {
    demand: amount(Force, "in each stay", line.value),
    capacity: amount(Force, "one stay is made for", rated),
    facts: `${panel.id} weighs ${Mass.show(lidMass(input, lid), style)}; with ${by} pressing its free edge with ${Force.show(push, style)} each stay holds ${Force.show(line.value, style)}, and is made for ${Force.show(rated, style)}.`,
    remedies: [{ words: "Use stronger stays, add one, or fix them further from the hinges." }],
    because: [...(wind && blown > leaningHand ? [wind] : []), line],
    limit: cite("common-practice", "load that the maker of the stay states"),
    sources: [cite("statics", "moments about the hinges")],
  };
}

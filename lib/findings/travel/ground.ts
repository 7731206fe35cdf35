/** What the case does to the ground it stands on: brakes on a slope, prints on a floor, a caster with too much on it. */
import { castersOf, footprint, type ReviewInput } from "../../model/index.js";
import { brakedSlope, casterRating, casterStands, floorPressure, groundSlope } from "../../moving/index.js";
import { Angle, Force, Mass, Pressure, type Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, counted, styleOf } from "../amount.js";
import { casterCaution, rampCaution } from "../cautions.js";
import { slopeFigure, wheelLoadFigure } from "../figures/rolling-figures.js";
import type { Amount } from "../finding.js";
import { type Answer, type Need, type Question, question } from "../question.js";
import { mostOf, ofJourney, rolledCase, where, whole } from "../subjects.js";
import { onItsFeet } from "./standing.js";

/** Common practice, no source: a braked polyurethane tread on a dry floor. */
const brakedTread: Ratio = ratio(0.4);

/** Whether the brakes hold the case on sloping ground. */
export const brakes: Question = question({
  id: "travel.brakes",
  about: rolledCase,
  ask: "Do the brakes hold the case on sloping ground?",
  tier: "safety",
  cautions: [rampCaution],
  needs: { braked: ofJourney((journey) => journey.brakes, "how many casters have a brake", '"brakes: 2"') },
  answer: (input, { braked }) => {
    const { slope } = input.case.journey;
    const count = castersOf(input).length;
    const hold = brakedSlope.worked({ share: ratio(Math.min(1, braked / count)), friction: brakedTread });
    const wanted = Angle.si(Math.max(slope ?? 0, groundSlope.angle));
    const steepest =
      braked > 0 ? `hold it on ${Angle.show(hold.value, { digits: 2 })}` : "hold it on no slope at all";
    return {
      demand: amount(Angle, "slope to hold on", wanted),
      capacity: amount(Angle, "slope that the brakes hold", hold.value),
      facts: `${braked} of ${counted(count, "caster", "casters")} with brakes ${steepest}; ${Angle.show(wanted, { digits: 2 })} is asked for.`,
      remedies: [{ words: "Brake all casters, or chock the wheels." }],
      because: [hold],
      limit: groundSlope.source,
      sources: [cite("common-practice", "friction of a braked tread")],
    };
  },
  figure: (input, _, { demand }) => slopeFigure(input, onSlope("Braked on a slope", input, demand)),
});

/** The slope that is asked for, as a picture of it says it. */
function onSlope(title: string, { case: { journey } }: ReviewInput, asked: Amount | undefined) {
  const slope = Angle.si(Math.max(journey.slope ?? 0, groundSlope.angle));
  return { title, slope, words: asked?.show({ digits: 2 }) ?? Angle.show(slope, { digits: 2 }) };
}

/** The way of standing on three casters, or on four, that loads one of them most. */
function worstStand(input: ReviewInput) {
  const { balance, baseWidth, baseDepth, fromLeft, fromFront } = footprint(input);
  const base = { across: baseWidth, deep: baseDepth, fromLeft, fromFront };
  const stands = casterStands({ mass: balance.value.mass, ...base });
  return { balance, worst: mostOf(stands, ({ greatest }) => greatest, "casters: no way to stand was found") };
}

/** The highest static load that product standards of resilient flooring ask for: 250 psi by ASTM F970. */
const floorLimit: Pressure = Pressure.of(250, "psi");

/** Whether the casters mark a floor. */
export const floor: Question = question({
  id: "travel.floor",
  about: rolledCase,
  ask: "Do the casters mark the floor?",
  tier: "feel",
  cautions: ["Ask the owner of the floor; put boards under the casters of a case that stands for days."],
  needs: {
    contact: ofJourney(({ wheelPrint }) => wheelPrint, "the print of a wheel, rolled over carbon paper", {
      inch: '"wheel print: 0.35 in2"',
      metric: '"wheel print: 200 mm2"',
    }),
  },
  answer: (input, { contact }) => {
    const { worst } = worstStand(input);
    const line = floorPressure.worked({ load: worst.greatest, contact });
    const style = styleOf(input.case);
    return {
      demand: amount(Pressure, "under the most loaded caster", line.value),
      capacity: amount(Pressure, "resilient flooring stands", floorLimit),
      facts: `The most loaded caster presses ${Pressure.show(line.value, style)}; soft flooring stands about ${Pressure.show(floorLimit, style)}.`,
      remedies: [{ words: "Lay hardboard under the wheels, or use wider softer treads." }],
      because: [worst.worked, line],
      limit: cite("astm-f970", "static load limit, 250 psi at most in the product standards"),
    };
  },
});

/** Common practice, no source: thresholds, yards and ramps of a fairground. */
const roughGround: Ratio = ratio(1.5);
const evenGround: Ratio = ratio(1);

/** What one caster is made for, by its maker. */
export const ratedLoad: Need<unknown, Force> = {
  find: (input) => {
    const [caster] = castersOf(input);
    if (!caster) return { measure: "casters in the case file", how: "place four with duty roll" };
    const { rated, name } = caster.stock;
    const how = 'read it off the caster or its data sheet and put it in hardware.csv, column "rated"';
    return rated ?? { measure: `the load rating of ${name}`, how };
  },
};

/** Whether each caster carries what comes on it when the fourth hangs over a dip. */
export const casters: Question = question({
  id: "travel.casters",
  about: where((input) => castersOf(input).length > 0, whole("casters")),
  ask: "Can each caster carry the load when only three touch the floor?",
  tier: "safety",
  cautions: [casterCaution],
  needs: { rated: ratedLoad },
  answer: (input, { rated }) => onItsFeet(input, () => loaded(input, rated)),
  figure: (input, _, { demand }) => wheelLoadFigure(input, demand?.show(styleOf(input.case))),
});

function loaded(input: ReviewInput, rated: Force): Answer {
  const { balance, worst } = worstStand(input);
  const { mass } = balance.value;
  const serviceFactor = input.case.journey.floor === "even" ? evenGround : roughGround;
  const rule = casterRating.worked({ mass, serviceFactor });
  const demand = Force.si(Math.max(worst.greatest, rule.value * standardGravity));
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "on one caster", demand),
    capacity: amount(Force, "rated", rated),
    facts: `The most loaded caster must take ${Force.show(demand, style)} of its rated ${Force.show(rated, style)}, with ${Mass.show(mass, style)} on ${worst.on}.`,
    remedies: [{ words: "Use casters with a higher rating, or move heavy things towards the middle." }],
    because: [balance, worst.worked, rule],
    limit: cite("common-practice", "a third of the load a caster, with a service factor"),
    sources: [cite("statics", "three supports")],
  };
}

import {
  footprint,
  leastTippingArm,
  lowestSection,
  type ReviewInput,
  standingHeight,
  tippingArm,
} from "../../model/index.js";
import {
  allowedGust,
  ballastNeeded,
  groundSlope,
  halfBaseNeeded,
  outriggerReach,
  steadyTilt,
  tippingWind,
  tipWays,
  windForce,
} from "../../moving/index.js";
import { Angle, Area, Density, Force, Length, Mass, ratio, Speed } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { tippingCaution } from "./standing-findings.js";

/** Wind and sloping ground, and what would keep the case standing. */
export function tipFindings(input: ReviewInput): readonly Finding[] {
  return [windFinding(input), slopeFinding(input)];
}

/** Common practice for a box on the ground, no source; air near sea level. */
const boxDrag = ratio(1.3);
const seaAir = Density.si(1.2);

function windFinding(input: ReviewInput): Finding {
  const question: Question = {
    id: "travel.wind",
    topic: "travel",
    subject: "stacked case",
    question: "Does the wind tip the stacked case outdoors?",
  };
  const { gust } = input.case.journey;
  if (gust === undefined) {
    const how =
      'ask the weather service for the strongest gust and write it into the journey as "gust: 25 mph"';
    return unknown(question, { measure: "the strongest gust where it stands", how }, [
      windCaution,
      tippingCaution,
    ]);
  }
  return guarded(question, () => windReply(input, gust), [windCaution, tippingCaution]);
}

const windCaution =
  "Take the case down before the wind is that strong: a canopy, a banner or an open door multiplies it, and what falls outdoors falls on somebody.";

function windReply(input: ReviewInput, gust: Speed): Reply {
  const standing = footprint(input);
  const { size } = lowestSection(input).outside;
  const top = Math.max(...input.parts.sections.map(({ outside }) => outside.low.z + outside.size.z));
  const wide = { left: size.y, right: size.y, front: size.x, back: size.x };
  const lines = (["left", "right", "front", "back"] as const).map((side) => {
    const wind = { area: Area.si(wide[side] * top), dragFactor: boxDrag, airDensity: seaAir };
    const tips = tippingWind.worked({
      ...wind,
      mass: standing.balance.value.mass,
      halfBase: tippingArm(standing, side),
      middle: Length.si(standingHeight(input) + top / 2),
    });
    return { tips, push: windForce.worked({ ...wind, speed: gust }) };
  });
  const [worst] = [...lines].sort((a, b) => a.tips.value - b.tips.value);
  if (!worst) throw new RangeError("wind: no side was found");
  const allowed = allowedGust.worked({ tips: worst.tips.value });
  const style = styleOf(input.case);
  const speed = input.case.units === "inch" ? { unit: "mph", digits: 3 } : { unit: "km/h", digits: 3 };
  return compared({
    kind: Speed,
    asked: ["strongest gust", gust],
    there: ["gust up to which it may stand", allowed.value],
    facts: `A gust of ${Speed.show(gust, speed)} pushes its worst side with ${Force.show(worst.push.value.force, style)}; ${Speed.show(worst.tips.value, speed)} would tip it, and with the safety factors it may stand in ${Speed.show(allowed.value, speed)}.`,
    remedy: "Take it apart, lean it against a wall, or lay ballast in the lowest section.",
    because: [standing.balance, worst.push, worst.tips, allowed],
    cautions: [windCaution, tippingCaution],
    source: [
      cite("en-1990", "table A1.2(A), static equilibrium, 0.9 and 1.5"),
      cite("statics", "moments about the tipping edge"),
      cite("fluid-flow", "drag"),
    ],
  });
}

function slopeFinding(input: ReviewInput): Finding {
  const question: Question = {
    id: "travel.slope",
    topic: "travel",
    subject: "stacked case",
    question: "Does it stand on sloping ground, and what base, ballast or foot would be enough?",
  };
  if (input.case.journey.slope === undefined) {
    const how = 'lay a level and a rule on the ground and write it into the journey as "slope: 3 deg"';
    return unknown(question, { measure: "the slope of the ground", how }, [tippingCaution]);
  }
  return guarded(question, () => slopeReply(input), [tippingCaution]);
}

/** The slope of the ground takes from the lean that the published tilt asks for. */
function slopeReply(input: ReviewInput): Reply {
  const standing = footprint(input);
  const ground = Math.max(input.case.journey.slope ?? 0, groundSlope.angle);
  const wanted = Angle.si(ground + steadyTilt.angle);
  const [worst] = tipWays(standing);
  if (!worst) throw new RangeError("tip angle: no way to fall was found");
  const { height, balance } = standing;
  const half = leastTippingArm(standing);
  const base = halfBaseNeeded.worked({ height, angle: wanted });
  const foot = outriggerReach.worked({ halfBase: half, height, angle: wanted });
  const ballast = ballastNeeded.worked({
    mass: balance.value.mass,
    halfBase: half,
    height,
    angle: wanted,
    ballastFromEdge: half,
    ballastHeight: Length.si(standingHeight(input) + 0.05),
  });
  const style = styleOf(input.case);
  return compared({
    kind: Angle,
    asked: ["lean to be borne on that ground", wanted],
    there: [`lean at which it tips to the ${worst.way}`, worst.worked.value],
    facts: `On ground of ${Angle.show(Angle.si(ground), { digits: 2 })} it should bear ${Angle.show(wanted, { digits: 2 })}; it tips to the ${worst.way} at ${Angle.show(worst.worked.value, { digits: 2 })}.`,
    remedy: `It needs ${Length.show(base.value, style)} from below its centre of gravity to that edge and has ${Length.show(half, style)}: a foot ${Length.show(foot.value, style)} out on that side, or ${Mass.show(ballast.value, style)} laid on its floor, would be enough.`,
    because: [balance, worst.worked, base, foot, ballast],
    cautions: [tippingCaution],
    source: [steadyTilt.source, groundSlope.source],
  });
}

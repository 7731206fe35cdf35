import { castersOf, footprint, type ReviewInput } from "../../model/index.js";
import { brakedSlope, casterStands, floorPressure, groundSlope } from "../../moving/index.js";
import { Angle, Pressure, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import type { Reply } from "../guarded.js";
import { asked, need } from "./asked.js";

const brakeCaution = "Brakes hold a case on the level. Chock it on any slope, and never leave it on a ramp.";

const floorCaution =
  "Ask the owner of the floor; put boards under the casters of a case that stands for days.";

/** What the case does to the ground it stands on: brakes on a slope, prints on a floor. */
export function groundFindings(input: ReviewInput): readonly Finding[] {
  const { brakes, wheelPrint } = input.case.journey;
  return [
    asked(
      input,
      "brakes",
      "Do the brakes hold it on sloping ground?",
      [brakeCaution],
      [need(brakes, "how many casters have a brake", '"brakes: 2"')],
      brakeReply,
    ),
    asked(
      input,
      "floor",
      "Do the casters mark the floor?",
      [floorCaution],
      [need(wheelPrint, "the print of a wheel, rolled over carbon paper", '"wheel print: 0.35 in2"')],
      floorReply,
    ),
  ];
}

/** Common practice, no source: a braked polyurethane tread on a dry floor. */
const brakedTread = ratio(0.4);

function brakeReply(input: ReviewInput): Reply {
  const { slope, brakes } = input.case.journey;
  const count = castersOf(input).length;
  if (count === 0) throw new RangeError("brakes: the case has no casters");
  const hold = brakedSlope.worked({
    share: ratio(Math.min(1, (brakes ?? 0) / count)),
    friction: brakedTread,
  });
  const wanted =
    slope === undefined
      ? groundSlope
      : { angle: Angle.si(Math.max(slope, groundSlope.angle)), source: groundSlope.source };
  return compared({
    kind: Angle,
    asked: ["slope to hold on", wanted.angle],
    there: ["slope that the brakes hold", hold.value],
    facts: `${brakes ?? 0} of ${count} casters with brakes hold it on ${Angle.show(hold.value, { digits: 2 })}; ${Angle.show(wanted.angle, { digits: 2 })} is asked.`,
    remedy: "Brake all casters, or chock the wheels.",
    because: [hold],
    cautions: [brakeCaution],
    source: [wanted.source, cite("common-practice", "friction of a braked tread")],
  });
}

/** The highest static load that product standards of resilient flooring ask for: 250 psi by ASTM F970. */
const floorLimit = Pressure.of(250, "psi");

function floorReply(input: ReviewInput): Reply {
  const { balance, baseWidth, baseDepth, fromLeft, fromFront } = footprint(input);
  const [worst] = casterStands({
    mass: balance.value.mass,
    across: baseWidth,
    deep: baseDepth,
    fromLeft,
    fromFront,
  });
  if (!worst) throw new RangeError("casters: no way to stand was found");
  const { wheelPrint } = input.case.journey;
  if (wheelPrint === undefined) throw new RangeError("floor pressure: the print of a wheel is missing");
  const line = floorPressure.worked({ load: worst.greatest, contact: wheelPrint });
  const style = styleOf(input.case);
  return compared({
    kind: Pressure,
    asked: ["under the most loaded caster", line.value],
    there: ["resilient flooring stands", floorLimit],
    facts: `The most loaded caster presses ${Pressure.show(line.value, style)}; soft flooring stands about ${Pressure.show(floorLimit, style)}.`,
    remedy: "Lay hardboard under the wheels, or take wider softer treads.",
    because: [worst.worked, line],
    cautions: [floorCaution],
    source: [cite("astm-f970", "static load limit, 250 psi at most in the product standards")],
  });
}

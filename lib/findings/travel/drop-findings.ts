import type { Content, CushionPoint } from "../../design/index.js";
import { type CushionedDrop, cushionedDrop, dropOf, type ReviewInput } from "../../model/index.js";
import {
  creepAllowance,
  cushionFactor,
  cushionThickness,
  dropEnergy,
  impactSpeed,
  leastPad,
} from "../../moving/index.js";
import {
  Area,
  Energy,
  Length,
  type Mass,
  Ratio,
  ratio,
  Speed,
  standardGravity,
} from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";

/** Said of everything that may be dropped. */
export const dropCaution: string =
  "A dropped case breaks feet before it breaks instruments: test with sandbags, from a low height first, and nobody within its own height of it.";

/** Whether each fragile content survives a drop of its section on its foam, or is better carried by itself. */
export function dropFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents
    .filter(({ needs }) => needs.fragility !== undefined || needs.foam !== undefined)
    .map((content) => dropFinding(input, content));
}

function dropFinding(input: ReviewInput, content: Content): Finding {
  const { name, section } = content;
  const question: Question = {
    id: `travel.drop.${name}`,
    topic: "travel",
    subject: name,
    question: `Does the ${name} survive a drop of ${section}?`,
  };
  return guarded(question, () => dropReply(input, cushionedDrop(input, content)), [dropCaution]);
}

function dropReply(input: ReviewInput, landing: CushionedDrop): Reply {
  const { content, fragility, foam, drop, curve, stress, landed } = landing;
  const speed = impactSpeed.worked({ height: drop.value });
  const energy = dropEnergy.worked({ mass: content.mass, height: drop.value });
  const pad = leastPad.worked({ thickness: foam.thickness });
  const folds =
    pad.value > foam.padWidth * foam.padDepth ? " The pad is so small that it may fold sideways." : "";
  const bought = creepAllowance.worked({ needed: foam.thickness, creep: foamCreep, crush: foamCrush });
  const { factor, thickness } = thicknessBy(landing);
  const style = styleOf(input.case);
  return compared({
    kind: Ratio,
    asked: ["deceleration on its foam, in gravities", landed.value],
    there: ["deceleration it survives", fragility],
    facts: `From ${Length.show(drop.value, style)} it lands at ${Speed.show(speed.value, style)} with ${Energy.show(energy.value, { digits: 2 })} and is stopped with ${Ratio.show(landed.value, { digits: 2 })} g; it stands ${Ratio.show(fragility)} g.${folds} Foam bought ${Length.show(bought.value, style)} thick is still ${Length.show(foam.thickness, style)} when it has settled and been crushed. ${removedWords(input, landing)}`,
    remedy: `At its best pressure ${Length.show(thickness.value, style)} of this foam would do, on a pad of ${Area.show(bestPad(content.mass, curve), style)}; or carry it by itself.`,
    because: [drop, speed, energy, stress, landed, pad, factor, thickness, bought],
    cautions: [dropCaution],
    source: [dropSource(landing), cite("cushion-design", "cushion curves")],
  });
}

/** Which table the drop comes from. */
export function dropSource({ handling, drop }: CushionedDrop): Citation {
  if (handling === "parcel") return cite("ista-1a", "free fall by mass");
  const how =
    drop.id === "drop.height" ? "manual handling, from memory" : "mechanical handling, rotational drop";
  return cite("astm-d4169", `schedule A, ${how}`);
}

/** Foam under a load for a season, and after a few falls; common practice, no source. */
const foamCreep = ratio(0.1);
const foamCrush = ratio(0.05);

/** Thickness by the foam's cushion factor, from the lowest point of its curve. */
function thicknessBy({ curve, foam, drop, fragility }: CushionedDrop) {
  const best = lowest(curve);
  const factor = cushionFactor.worked({
    deceleration: best.deceleration,
    thickness: foam.thickness,
    drop: best.drop,
  });
  const thickness = cushionThickness.worked({
    drop: drop.value,
    fragility,
    cushionFactor: factor.value,
  });
  return { factor, thickness };
}

function lowest(curve: readonly CushionPoint[]): CushionPoint {
  return curve.reduce((best, point) => (point.deceleration < best.deceleration ? point : best));
}

/** The pad that works where the curve is lowest. */
function bestPad(mass: Mass, curve: readonly CushionPoint[]): Area {
  return Area.si((mass * standardGravity) / lowest(curve).stress);
}

/** By itself a light thing is dropped from higher: said, so that protected and removed can be compared. */
function removedWords(input: ReviewInput, { content, handling }: CushionedDrop): string {
  const alone = dropOf(content.mass, handling).value;
  return `Taken out and carried by itself it would be dropped from ${Length.show(alone, styleOf(input.case))}, so it needs its own padded box then.`;
}

/** Whether each fragile content survives a drop of its section on its foam: flat, and on an edge or a corner. */
import type { Content, CushionPoint } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type CushionedDrop, cushionedDrop, dropOf, type ReviewInput } from "../../model/index.js";
import {
  creepAllowance,
  cushionFactor,
  cushionRate,
  cushionThickness,
  dropEnergy,
  impactSpeed,
  leastPad,
  springLanding,
  tiltedCushion,
} from "../../moving/index.js";
import {
  Area,
  Energy,
  Length,
  type Mass,
  Ratio,
  ratio,
  Speed,
  SpringRate,
  standardGravity,
} from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { type Citation, cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { dropCaution } from "../cautions.js";
import type { Figure } from "../figures/figure.js";
import { fallingFigure } from "../figures/riding-figures.js";
import type { Remedy } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { eachContent, measured, mostOf, says, where } from "../subjects.js";

/** Whether each fragile content survives a flat drop, or is better carried by itself. */
export const drop: Question = question({
  id: "travel.drop",
  about: where(
    says("journey"),
    eachContent(({ needs }) => needs.fragility !== undefined || needs.foam !== undefined),
  ),
  ask: ({ name, section }) => `Will the ${name} survive a drop of ${section}?`,
  tier: "strength",
  cautions: [dropCaution],
  answer: (input, _, content) => landedFlat(input, cushionedDrop(input, content)),
  figure: (input, content) => fallenFigure(input, content, "flat"),
});

/** The picture of the section that the content falls with. */
function fallenFigure(input: ReviewInput, content: Content, landing: "flat" | "edge"): Figure {
  return fallingFigure(input, content.section, landing, cushionedDrop(input, content).drop.value, content);
}

/** Foam under a load for a season, and after a few falls; common practice, no source. */
const foamCreep: Ratio = ratio(0.1);
const foamCrush: Ratio = ratio(0.05);

function landedFlat(input: ReviewInput, landing: CushionedDrop): Answer {
  const { content, fragility, foam, drop: fall, curve, stress, landed } = landing;
  const speed = impactSpeed.worked({ height: fall.value });
  const energy = dropEnergy.worked({ mass: content.mass, height: fall.value });
  const pad = leastPad.worked({ thickness: foam.thickness });
  const small = pad.value > foam.padWidth * foam.padDepth;
  const folds = small ? " The pad is so small that it may fold sideways." : "";
  const bought = creepAllowance.worked({ needed: foam.thickness, creep: foamCreep, crush: foamCrush });
  const best = bestFoam(input, content.mass, landing, lowest(curve));
  const style = styleOf(input.case);
  return {
    demand: amount(Ratio, "deceleration on its foam, in gravities", landed.value),
    capacity: amount(Ratio, "deceleration it survives", fragility),
    facts: `From ${Length.show(fall.value, style)} it lands at ${Speed.show(speed.value, style)} with ${Energy.show(energy.value, { digits: 2 })} and is stopped with ${Ratio.show(landed.value, { digits: 2 })} g; it stands ${Ratio.show(fragility)} g.${folds} Foam bought ${Length.show(bought.value, style)} thick is still ${Length.show(foam.thickness, style)} when it has settled and been crushed. ${removedWords(input, landing)}`,
    remedies: [best.remedy],
    because: [fall, speed, energy, stress, landed, pad, ...best.because, bought],
    limit: dropSource(landing),
    sources: [cite("cushion-design", "cushion curves")],
  };
}

/** Which table the drop comes from. */
function dropSource({ handling, drop: { id } }: CushionedDrop): Citation {
  if (handling === "parcel") return cite("ista-1a", "free fall by mass");
  const how = id === "drop.height" ? "manual handling, from memory" : "mechanical handling, rotational drop";
  return cite("astm-d4169", `schedule A, ${how}`);
}

function lowest(curve: readonly CushionPoint[]): CushionPoint {
  return mostOf(curve, ({ deceleration }) => -deceleration, "cushion curve: there is no point");
}

/** Thickness and pad of this foam where it cushions best, by the lowest point of its curve. */
function bestFoam(
  input: ReviewInput,
  mass: Mass,
  { foam, drop: fall, fragility }: CushionedDrop,
  best: CushionPoint,
): { readonly remedy: Remedy; readonly because: readonly WorkedLine[] } {
  const { deceleration } = best;
  const factor = cushionFactor.worked({ deceleration, thickness: foam.thickness, drop: best.drop });
  const thickness = cushionThickness.worked({ drop: fall.value, fragility, cushionFactor: factor.value });
  const pad = Area.si((mass * standardGravity) / best.stress);
  const style = styleOf(input.case);
  return {
    remedy: {
      words: `At its best pressure ${Length.show(thickness.value, style)} of this foam would do, on a pad of ${Area.show(pad, style)}; or carry it by itself.`,
      gives: [amount(Length, "thickness that would do", thickness.value), amount(Area, "its pad", pad)],
    },
    because: [factor, thickness],
  };
}

/** By itself a light thing is dropped from higher: said, so that protected and removed can be compared. */
function removedWords(input: ReviewInput, { content, handling }: CushionedDrop): string {
  const alone = dropOf(content.mass, handling).value;
  return `Taken out and carried by itself it would be dropped from ${Length.show(alone, styleOf(input.case))}, so it needs its own padded box then.`;
}

const beside = "the foam beside it";
const besideHow =
  'measure the foam against its left and right, front and back, and write "sides" and "ends" into its foam';

/** Whether each fragile content survives its section falling on an edge or a corner, where three faces work at once. */
export const dropEdge: Question = question({
  id: "travel.drop-edge",
  about: where(
    says("journey"),
    eachContent(({ needs }) => needs.fragility !== undefined && needs.foam !== undefined),
  ),
  ask: ({ name, section }) => `Will the ${name} survive a drop of ${section} on an edge or a corner?`,
  tier: "strength",
  cautions: [dropCaution],
  needs: {
    sides: measured((_, { needs }: Content) => needs.foam?.sides, beside, besideHow),
    ends: measured((_, { needs }: Content) => needs.foam?.ends, beside, besideHow),
  },
  answer: (input, { sides, ends }, content) =>
    landedTilted(input, cushionedDrop(input, content), sides, ends),
  figure: (input, content) => fallenFigure(input, content, "edge"),
});

/** The same foam all round: its spring is that of the flat landing, in proportion to the area. */
function landedTilted(input: ReviewInput, dropped: CushionedDrop, sides: Area, ends: Area): Answer {
  const { content, fragility, foam, drop: fall, landed } = dropped;
  const { mass, section } = content;
  const flat = cushionRate.worked({ mass, deceleration: landed.value, drop: fall.value });
  const rateOf = (area: Area) => SpringRate.si((flat.value * area) / (foam.padWidth * foam.padDepth));
  const rates = { sides: rateOf(sides), ends: rateOf(ends), flats: flat.value };
  const landings = directionsOf(input, section).map(({ on, towards }) => {
    const tilted = tiltedCushion.worked({ ...rates, towards });
    return { on, tilted, line: springLanding.worked({ mass, stiffness: tilted.value, drop: fall.value }) };
  });
  const worst = mostOf(landings, ({ line }) => line.value.deceleration, "edge drop: no edge was found");
  const { deceleration } = worst.line.value;
  return {
    demand: amount(Ratio, `deceleration on ${worst.on}, in gravities`, deceleration),
    capacity: amount(Ratio, "deceleration it survives", fragility),
    facts: `The worst is ${worst.on}: about ${Ratio.show(deceleration, { digits: 2 })} g, where a flat landing gives ${Ratio.show(landed.value, { digits: 2 })} g; it stands ${Ratio.show(fragility)} g. Foam is taken as an even spring, in proportion to its area.`,
    remedies: [
      { words: "Use thicker foam or smaller pads on the faces that are too stiff, or carry it by itself." },
    ],
    because: [fall, landed, flat, worst.tilted, worst.line],
    limit: dropSource(dropped),
    sources: [cite("strength-of-materials", "springs at right angles")],
  };
}

/**
 * A section falls on an edge or a corner with its middle above it.
 *
 * @throws Refusal for a section that is not there
 */
function directionsOf({ parts }: ReviewInput, section: string) {
  const size = parts.sections.find(({ name }) => name === section)?.outside.size;
  if (!size) throw new Refusal(`edge drop: no section ${section}`);
  const none = ratio(0);
  const [x, y, z] = [ratio(size.x), ratio(size.y), ratio(size.z)];
  return [
    { on: "an edge to the left or right", towards: { sides: x, ends: none, flats: z } },
    { on: "an edge to the front or back", towards: { sides: none, ends: y, flats: z } },
    { on: "an upright edge", towards: { sides: x, ends: y, flats: none } },
    { on: "a corner", towards: { sides: x, ends: y, flats: z } },
  ] as const;
}

/** Whether the handles of a section stay on when arms slant: pulled outwards while they lift. */
import { combinedUse } from "../../fastening/index.js";
import {
  fastenerStrength,
  liftHandles,
  type ReviewInput,
  sectionBalance,
  sectionsWithHandles,
  strengthInterval,
} from "../../model/index.js";
import { handleForce, outwardPull } from "../../moving/index.js";
import { Angle, Force, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { handleCaution } from "../cautions.js";
import { heldStack } from "../figures/stack-figures.js";
import { type Question, question } from "../question.js";
import { countOf, each, groupsHolding, known } from "../subjects.js";
import { armSlant } from "./handles.js";

function fasteningsOfHandle(input: ReviewInput, section: string) {
  const [part] = liftHandles(input, section);
  return part ? groupsHolding(input, part.id) : [];
}

/** What one fastener of a section's handle holds one way. */
function strengthOfHandle(direction: "pull" | "shear") {
  return known((input, section: string) => {
    const [first] = fasteningsOfHandle(input, section);
    return first
      ? fastenerStrength(first, direction, input)
      : { measure: `the fasteners of the handles of ${section}`, how: "name them in hardware.csv" };
  });
}

/** Whether the fasteners of a handle bear its load along the panel and the outward pull of slanting arms together. */
export const outwardHandles: Question = question({
  id: "joints.handle-out",
  about: each(
    sectionsWithHandles,
    (section) => section,
    (section) => `handles of ${section}, pulled outwards`,
  ),
  ask: (section) => `Do the handles of ${section} stay on when slanting arms pull them outwards?`,
  tier: "safety",
  cautions: [handleCaution],
  assumes: ["Arms slant by 30 degrees, and the fasteners of a handle share the pull alike."],
  needs: { shear: strengthOfHandle("shear"), pull: strengthOfHandle("pull") },
  answer: (input, { shear, pull }, section) => {
    const { dynamicFactor, safetyFactor } = input.case.demands;
    const count = countOf(fasteningsOfHandle(input, section));
    const balance = sectionBalance(input, section);
    const handles = liftHandles(input, section).length;
    const along = handleForce.worked({ mass: balance.value.mass, handles, dynamicFactor });
    const out = outwardPull.worked({ along: along.value, slant: armSlant });
    const useOf = (now: Readonly<Record<"shear" | "pull", Force>>) => ({
      shear: Force.si(along.value / count),
      pull: Force.si(out.value / count),
      shearStrength: Force.si(now.shear / safetyFactor),
      pullStrength: Force.si(now.pull / safetyFactor),
      shank: "smooth" as const,
    });
    const line = combinedUse.worked(useOf({ shear: shear.strength, pull: pull.strength }));
    const style = styleOf(input.case);
    return {
      demand: amount(Ratio, "shear and pull together", line.value),
      capacity: amount(Ratio, "limit", ratio(1)),
      facts: `Arms that slant by ${Angle.show(armSlant)} and a jerk take ${Ratio.show(line.value, { unit: "%", digits: 2 })} of what the ${count} fasteners of a handle allow. It bears ${Force.show(along.value, style)} along its panel, and is pulled off with ${Force.show(out.value, style)}.`,
      remedies: [
        { words: "Put washers or a backing plate behind it, use more fasteners, or set the handles lower." },
      ],
      interval: strengthInterval({ shear, pull }, (now) => combinedUse(useOf(now))),
      because: [balance, along, out, ...shear.because, ...pull.because, line],
      limit: cite("common-practice", "arms that slant by 30 degrees"),
      sources: [cite("statics", "components of a force")],
    };
  },
  figure: (input, section) => heldStack(input, fasteningsOfHandle(input, section), "pull"),
});

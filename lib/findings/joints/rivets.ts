/** Whether rivets close the stacks they are meant for, and sit far enough from edges. */
import { bodyDiameter, type Fastening } from "../../design/index.js";
import { coversGrip, fastenerTraits, rivetChoice, rivetSpacing } from "../../fastening/index.js";
import { type GripCase, gripCases, type ReviewInput } from "../../model/index.js";
import { Count, Length, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { counted, fineAmount, showFine, styleOf } from "../amount.js";
import { type Question, question } from "../question.js";
import { countOf, each, mostOf, where, whole } from "../subjects.js";

/** Names a stack in a finding's id, in whatever units the case is shown. */
function stackId({ grip }: GripCase): string {
  return Length.show(grip.value, { unit: "mm", digits: 3 });
}

function stackOf({ grip }: GripCase, input: ReviewInput): string {
  return showFine(grip.value, styleOf(input.case));
}

/** Whether the rivets named in the case close the stacks they are meant for. */
export const rivetGrips: Question = question({
  id: "joints.grip",
  about: each(
    (input) => gripCases(input).filter(({ fastener }) => fastenerTraits[fastener.kind].chosenByGrip),
    (one) => `${one.fastener.name}.${stackId(one)}`,
    (one, input) => `${one.fastener.name}, stack of ${stackOf(one, input)}`,
  ),
  ask: (one, input) =>
    `Does ${one.fastener.name} close a stack of ${stackOf(one, input)}, in ${counted(countOf(one.groups), "place", "places")}?`,
  tier: "strength",
  cautions: [],
  answer: (input, _, { fastener, grip, better }) => {
    const { gripMin, gripMax } = fastener;
    const style = styleOf(input.case);
    const short = grip.value < gripMin;
    const fits = coversGrip(fastener, grip.value);
    const range = `${showFine(gripMin, style)} to ${showFine(gripMax, style)}`;
    const stack = fineAmount("stack, including its washer", grip.value);
    return {
      verdict: fits ? "holds" : "fails",
      demand: short ? fineAmount("shortest stack of the rivet", gripMin) : stack,
      capacity: short ? stack : fineAmount("longest stack of the rivet", gripMax),
      facts: `Its range is ${range}: it ${fits ? "closes the stack" : "does not close this stack"}.`,
      remedies: [
        {
          words: better
            ? `Use ${better}.`
            : "No rivet of fasteners.csv does: look for another length, or change the washer.",
        },
      ],
      because: [grip, ...(fits ? [rivetChoice.worked({ grip: grip.value, rivets: [fastener] })] : [])],
      limit: cite("common-practice", "grip ranges as the maker states them"),
    };
  },
});

/** A group of fasteners whose nearest edge is known. */
type Placed = Fastening & { readonly edgeDistance: Length };

function diametersToEdge({ edgeDistance, fastener }: Placed): number {
  return edgeDistance / bodyDiameter(fastener);
}

function placedHoles({ parts }: ReviewInput): readonly Placed[] {
  return parts.fastenings.filter((one): one is Placed => one.edgeDistance !== undefined);
}

/** The hole nearest to an edge or an opening, measured in diameters against the rule of the trade. */
export const edgeDistances: Question = question({
  id: "joints.edges",
  about: where((input) => placedHoles(input).length > 0, whole("rivet rows")),
  ask: "Is every hole far enough from the edge, and every row close enough?",
  tier: "strength",
  cautions: [],
  answer: (input) => {
    const holes = placedHoles(input);
    const nearest = mostOf(holes, (one) => -diametersToEdge(one), "there is no hole with a place");
    const pitches = holes.map(({ pitch = Length.si(0), fastener }) => Math.max(pitch, fastener.diameter));
    const pitch = Length.si(Math.max(...pitches));
    const { edgeDistance } = nearest;
    const line = rivetSpacing.worked({ diameter: bodyDiameter(nearest.fastener), edgeDistance, pitch });
    const style = styleOf(input.case);
    const diameters = Ratio.show(ratio(diametersToEdge(nearest)), { digits: 2 });
    return {
      demand: fineAmount("least edge distance", line.value.leastEdge),
      capacity: fineAmount("nearest hole to an edge", edgeDistance),
      facts: `Of ${Count.show(countOf(holes))} ${countOf(holes) === 1 ? "hole" : "holes"} the nearest to an edge is ${showFine(edgeDistance, style)} from it, ${diameters} diameters (${nearest.id}); 1.5 is the least, 2 is better. The widest pitch is ${Length.show(pitch, style)}.`,
      because: [line],
      limit: cite("common-practice", "edge distance and pitch of rivets"),
    };
  },
});

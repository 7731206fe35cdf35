import { bodyDiameter, type Fastening } from "../../design/index.js";
import {
  coversGrip,
  edgeDiameters,
  fastenerTraits,
  rivetChoice,
  rivetSpacing,
} from "../../fastening/index.js";
import { type GripCase, gripCases, type ReviewInput } from "../../model/index.js";
import { Count, Length, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** Whether the rivets named in the case close the stacks they are meant for. */
export function gripFindings(input: ReviewInput): readonly Finding[] {
  return gripCases(input)
    .filter(({ fastener }) => fastenerTraits[fastener.kind].chosenByGrip)
    .map((one) => gripFinding(one, input));
}

function gripFinding({ fastener, grip, groups, better }: GripCase, input: ReviewInput): Finding {
  const style = styleOf(input.case);
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const shown = Length.show(grip.value, { unit: "mm", digits: 3 });
  return guarded(
    {
      id: `joints.grip.${fastener.name}.${shown}`,
      topic: "joints",
      subject: `${fastener.name}, stack of ${shown}`,
      question: `Does ${fastener.name} close a stack of ${shown}, in ${count} places?`,
    },
    (): Reply => {
      const short = grip.value < fastener.gripMin;
      const used = ratio(short ? fastener.gripMin / grip.value : grip.value / fastener.gripMax);
      const fits = coversGrip(fastener, grip.value);
      const line = fits ? [rivetChoice.worked({ grip: grip.value, rivets: [fastener] })] : [];
      const range = `${showFine(fastener.gripMin, style)} to ${showFine(fastener.gripMax, style)}`;
      const stack = fineAmount("stack, washer counted", grip.value);
      return {
        verdict: fits ? "holds" : "fails",
        answer: fits
          ? `Its range is ${range}: it closes the stack.`
          : `Its range is ${range}: it does not close this stack. ${better ? `Take ${better}.` : "No rivet of fasteners.csv does: look for another length, or change the washer."}`,
        demand: short ? fineAmount("shortest stack of the rivet", fastener.gripMin) : stack,
        capacity: short ? stack : fineAmount("longest stack of the rivet", fastener.gripMax),
        ratio: used,
        because: [grip, ...line],
        cautions: [],
        source: [cite("common-practice", "grip ranges as the maker states them")],
      };
    },
  );
}

/** The hole nearest to an edge or an opening, measured in diameters against the rule of the trade. */
export function edgeDistanceFinding(input: ReviewInput): Finding {
  const holes = input.parts.fastenings.filter(({ edgeDistance }) => edgeDistance !== undefined);
  return guarded(
    {
      id: "joints.edges",
      topic: "joints",
      subject: "rivet rows",
      question: "Is every hole far enough from the edge, and every row close enough?",
    },
    () => {
      const [nearest] = [...holes].sort((a, b) => diametersToEdge(a) - diametersToEdge(b));
      if (!nearest) throw new RangeError("there is no hole with a place");
      const line = rivetSpacing.worked({
        diameter: bodyDiameter(nearest.fastener),
        edgeDistance: nearest.edgeDistance ?? Length.si(0),
        pitch: widestPitch(holes),
      });
      const used = ratio(line.value.leastEdge / (nearest.edgeDistance ?? Length.si(0)));
      const style = styleOf(input.case);
      const total = holes.reduce((sum, { count }) => sum + count, 0);
      return {
        verdict: verdictOf(used),
        answer: `Of ${Count.show(total)} holes the nearest to an edge is ${showFine(nearest.edgeDistance ?? Length.si(0), style)} from it, ${Ratio.show(ratio(diametersToEdge(nearest)), { digits: 2 })} diameters (${nearest.id}); ${edgeDiameters.least} is the least, ${edgeDiameters.wanted} is better. The widest pitch is ${Length.show(widestPitch(holes), style)}.`,
        demand: fineAmount("least edge distance", line.value.leastEdge),
        capacity: fineAmount("nearest hole to an edge", nearest.edgeDistance ?? Length.si(0)),
        ratio: used,
        because: [line],
        cautions: [],
        source: [cite("common-practice", "edge distance and pitch of rivets")],
      };
    },
  );
}

function diametersToEdge({ edgeDistance = Length.si(0), fastener }: Fastening): number {
  return edgeDistance / bodyDiameter(fastener);
}

function widestPitch(groups: readonly Fastening[]): Length {
  return Length.si(
    Math.max(...groups.map(({ pitch = Length.si(0), fastener }) => Math.max(pitch, fastener.diameter))),
  );
}

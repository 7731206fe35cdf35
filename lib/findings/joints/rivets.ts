/** Whether rivets close the stacks they are meant for, and sit far enough from edges. */
import { bodyDiameter, type Fastening } from "../../design/index.js";
import { coversGrip, fastenerTraits, rivetChoice, rivetSpacing } from "../../fastening/index.js";
import { type GripCase, gripCases, type ReviewInput } from "../../model/index.js";
import { Count, Length, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { counted, fineAmount, showFine, styleOf } from "../amount.js";
import { stackFigure } from "../figures/stack-figures.js";
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
      facts: `The stack is ${showFine(grip.value, style)} thick, and this rivet closes ${fits ? "" : "only "}${range}.`,
      remedies: [
        {
          words: better
            ? `Use ${better}.`
            : "No rivet in fasteners.csv fits: look for another length, or change the washer.",
        },
      ],
      rests: "the thicknesses of sheet, facing and washer in the tables",
      because: [grip, ...(fits ? [rivetChoice.worked({ grip: grip.value, rivets: [fastener] })] : [])],
      limit: cite("common-practice", "grip ranges as the maker states them"),
    };
  },
  figure: (input, { groups: [group] }) => stackFigure(input, group),
});

/** A group of fasteners whose nearest edge is known. */
type Placed = Fastening & { readonly edgeDistance: Length };

function diametersToEdge({ edgeDistance, fastener }: Placed): number {
  return edgeDistance / bodyDiameter(fastener);
}

/** Screws into the edge of a sheet have a rule of their own. */
function placedHoles({ parts }: ReviewInput): readonly Placed[] {
  const butted = new Set(parts.joints.flatMap(({ id, kind }) => (kind === "screwed" ? [id] : [])));
  return parts.fastenings.filter(
    (one): one is Placed => one.edgeDistance !== undefined && !butted.has(one.holds),
  );
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
      facts: `Of ${Count.show(countOf(holes))} ${countOf(holes) === 1 ? "hole" : "holes"} the nearest to an edge is ${showFine(edgeDistance, style)} from it: ${diameters} diameters, where 1.5 is the least. It is in ${nearest.id}; 2 is better. The widest pitch is ${Length.show(pitch, style)}.`,
      because: [line],
      limit: cite("common-practice", "edge distance and pitch of rivets"),
    };
  },
  figure: (input) =>
    stackFigure(
      input,
      mostOf(placedHoles(input), (one) => -diametersToEdge(one), "there is no hole with a place"),
    ),
});

/** A sheet whose edge is thinner than so many diameters splits, pilot holes or not; common practice. */
const edgeOverScrew = 2.5;

/** An edge that screws run into, with one of them. */
interface ScrewedEdge {
  /** Of the joint. */
  readonly id: string;
  /** Of the sheet whose edge takes them. */
  readonly thickness: Length;
  /** One of the screws. */
  readonly screw: Fastening["fastener"];
}

function screwedEdges({ parts }: ReviewInput): readonly ScrewedEdge[] {
  return parts.joints.flatMap(({ id, kind, widths: [thickness] }) => {
    const screw = parts.fastenings.find(({ holds }) => holds === id)?.fastener;
    return kind === "screwed" && thickness !== undefined && screw ? [{ id, thickness, screw }] : [];
  });
}

/** Whether the edge of a sheet is thick enough for the screws that run into it. */
export const screwedIntoEdges: Question = question({
  id: "joints.screwed-edge",
  about: each(screwedEdges, ({ id }) => id),
  ask: ({ id }) => `Is the sheet at ${id} thick enough for screws into its edge?`,
  tier: "strength",
  cautions: [
    "A screw splits the veneers of an edge and holds little: drill first, and look for a crack along the edge.",
  ],
  answer: (input, _, { id, thickness, screw }) => {
    const style = styleOf(input.case);
    const wanted = Length.si(edgeOverScrew * screw.diameter);
    return {
      demand: fineAmount("thickness wanted", wanted),
      capacity: fineAmount("thickness of the sheet", thickness),
      facts: `${screw.name} wants a sheet of ${showFine(wanted, style)} at ${id}, ${edgeOverScrew} of its diameters; the sheet has ${showFine(thickness, style)}.`,
      remedies: [
        { words: "Use thinner screws in drilled holes with glue, or put a cleat inside the corner." },
      ],
      rests: "the diameter of the screw, and the thickness of the sheet as measured",
      because: [],
      limit: cite("common-practice", "a sheet of 2.5 screw diameters"),
      sources: [cite("nds", "placement of wood screws: so that the wood does not split")],
    };
  },
});

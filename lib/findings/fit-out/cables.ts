/** Whether plugs and cables have room: at their sockets, and through the pass-throughs of each section. */
import type { ContentPart, HardwarePart, PlugRoom } from "../../design/index.js";
import { cableFill, cableRoom } from "../../inside/index.js";
import { type ReviewInput, roomAt } from "../../model/index.js";
import { Area, Length, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { cableFigure, holeFigure, type ThroughHole } from "../figures/cable-figures.js";
import type { Figure } from "../figures/figure.js";
import { type Question, question, type Subjects } from "../question.js";
import { each, eachContentPart, known, measured, sectionNames } from "../subjects.js";

const cableCaution =
  "A cable bent too tight or pinched by a panel heats and burns: brush or grommet at every hole, slack at every hinge.";

/** Whether the plug and cable of each thing that draws power, or has a plug, have room. */
export const cables: Question = question({
  id: "fit-out.cable",
  about: eachContentPart(({ power = 0, needs }) => needs.plug !== undefined || power > 0),
  ask: ({ content }) => `Is there room for the plug of the ${content.name} and the bend of its cable?`,
  tier: "safety",
  cautions: [cableCaution],
  needs: {
    plug: measured(
      (_, { content }: ContentPart) => content.needs.plug,
      ({ content }) => `plug and cable of the ${content.name}, and the side they are on`,
      'measure plug and cable with a rule. Take the least bend from its maker: 4 times the cable for data, 6 to 8 for power. Write the block "plug" into its needs',
    ),
  },
  answer: (input, { plug: { face, length, cable, bendFactor } }, { content, box }) => {
    const line = cableRoom.worked({ diameter: cable, factor: bendFactor, plug: length });
    const room = roomAt(input, { section: content.section, name: content.name, box }, face);
    const style = styleOf(input.case);
    return {
      demand: amount(Length, "plug and bent cable", line.value.room),
      capacity: amount(Length, "free in front of the socket", room),
      facts: `Plug and bend take ${Length.show(line.value.room, style)}; ${Length.show(room, style)} are free to the ${face}.`,
      remedies: [{ words: "Use an angled plug, or move it away from the wall." }],
      because: [line],
      limit: cite("common-practice", "inner radius of a bend as a multiple of the diameter"),
      sources: [cite("nec", "300.34")],
    };
  },
  figure: (input, { content: { section, name, needs }, box }) => {
    if (!needs.plug) throw new Refusal(`picture of a cable: nobody measured the plug of the ${name}`);
    const { face, length: plug, cable, bendFactor: factor } = needs.plug;
    const { radius, room: needed } = cableRoom({ diameter: cable, factor, plug });
    const room = roomAt(input, { section, name, box }, face);
    return cableFigure({ name, plug, cable, radius, needed, room }, styleOf(input.case));
  },
});

/** A section with holes for cables in its walls. */
interface PassedSection {
  /** The section's name. */
  readonly section: string;
  /** Its pass-throughs. */
  readonly holes: readonly HardwarePart[];
}

const eachPassedSection: Subjects<PassedSection> = each(
  (input): readonly PassedSection[] =>
    sectionNames(input)
      .map((name) => ({
        section: name,
        holes: input.parts.hardware.filter(
          ({ section, stock }) => section === name && stock.kind === "pass-through",
        ),
      }))
      .filter(({ holes }) => holes.length > 0),
  ({ section }) => section,
);

function plugsOf({ case: { contents } }: ReviewInput, where: string): readonly PlugRoom[] {
  return contents.flatMap(({ section, needs: { plug } }) => (section === where && plug ? [plug] : []));
}

/** The picture of the widest hole with what goes through it. */
function throughHole(
  input: ReviewInput,
  { section, holes }: PassedSection,
  what: ThroughHole["what"],
  across: readonly Length[],
): Figure {
  const narrow = ({ stock }: HardwarePart): number => Math.min(stock.cutWidth, stock.cutHeight);
  const [widest] = [...holes].sort((a, b) => narrow(b) - narrow(a));
  if (!widest || Math.max(0, ...across) === 0)
    throw new Refusal(`picture of a pass-through: nobody measured the ${what} of ${section}`);
  const { cutWidth: width, cutHeight: height } = widest.stock;
  return holeFigure(section, { hole: { width, height }, across, what }, styleOf(input.case));
}

/** Whether the cables of each section go through its pass-throughs with room to spare. */
export const cablesThrough: Question = question({
  id: "fit-out.pass",
  about: eachPassedSection,
  ask: ({ section }) => `Do the cables of ${section} go through its pass-through with room to spare?`,
  tier: "safety",
  cautions: [cableCaution],
  needs: {
    plugs: known((input, { section }: PassedSection) => {
      const plugs = plugsOf(input, section);
      if (plugs.length > 0) return plugs;
      return {
        measure: `the cables that leave ${section}`,
        how: 'measure the cables across and write the block "plug" into the needs of each thing they belong to',
      };
    }),
  },
  answer: (_, { plugs }, { holes }) => {
    const opening = Area.si(holes.reduce((sum, { stock }) => sum + stock.cutWidth * stock.cutHeight, 0));
    const line = cableFill.worked({ cables: plugs.map(({ cable }) => cable), opening });
    const percent = { unit: "%", digits: 2 };
    const count = plugs.length === 1 ? "One cable fills" : `${plugs.length} cables fill`;
    return {
      demand: amount(Ratio, "share of the hole taken up", line.value.fill),
      capacity: amount(Ratio, "share that may be", line.value.allowed),
      facts: `${count} ${Ratio.show(line.value.fill, percent)} of the hole; ${Ratio.show(line.value.allowed, percent)} may be filled.`,
      remedies: [{ words: "Add a second pass-through." }],
      because: [line],
      limit: cite("nec", "chapter 9, table 1"),
    };
  },
  figure: (input, passed) =>
    throughHole(
      input,
      passed,
      "cables",
      plugsOf(input, passed.section).map(({ cable }) => cable),
    ),
});

/** Whether the plugs of each section go through its pass-throughs; the narrow side of the widest hole decides. */
export const plugsThrough: Question = question({
  id: "fit-out.plug",
  about: eachPassedSection,
  ask: ({ section }) => `Do the plugs of ${section} go through its pass-through?`,
  tier: "feel",
  cautions: [cableCaution],
  needs: {
    widths: known((input, { section }: PassedSection) => {
      const plugs = plugsOf(input, section);
      const widths = plugs.flatMap(({ width }) => (width === undefined ? [] : [width]));
      if (plugs.length > 0 && widths.length === plugs.length) return widths;
      return {
        measure: `the plugs that leave ${section}`,
        how: 'measure each plug across its widest side and write "width" into its plug',
      };
    }),
  },
  answer: (input, { widths }, { holes }) => {
    const widest = Length.si(Math.max(...widths));
    const narrowSides = holes.map(({ stock }) => Math.min(stock.cutWidth, stock.cutHeight));
    const hole = Length.si(Math.max(...narrowSides));
    const style = styleOf(input.case);
    return {
      demand: amount(Length, "widest plug", widest),
      capacity: amount(Length, "narrow side of the hole", hole),
      facts: `The widest plug is ${Length.show(widest, style)} across; the hole is ${Length.show(hole, style)}.`,
      remedies: [{ words: "Cut a wider pass-through, or use a plug that can be taken off its cable." }],
      because: [],
      limit: cite("common-practice", "the plug goes through the hole, or the cable is cut"),
    };
  },
  figure: (input, passed) => {
    const widths = plugsOf(input, passed.section).flatMap(({ width = 0 }) => width);
    return throughHole(input, passed, "plugs", [Length.si(Math.max(0, ...widths))]);
  },
});

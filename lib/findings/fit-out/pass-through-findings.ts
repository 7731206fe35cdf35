import type { HardwarePart, PlugRoom } from "../../design/index.js";
import { cableFill } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Length, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { cableCaution } from "./cable-findings.js";

/** Whether the cables of each section go through its pass-throughs, and their plugs with them. */
export function passThroughFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) => {
    const holes = input.parts.hardware.filter(
      ({ section, stock }) => section === name && stock.kind === "pass-through",
    );
    return holes.length === 0 ? [] : sectionFindings(input, name, holes);
  });
}

function sectionFindings(
  input: ReviewInput,
  section: string,
  holes: readonly HardwarePart[],
): readonly Finding[] {
  const about = (what: string, question: string): Question => ({
    id: `fit-out.${what}.${section}`,
    topic: "fit-out",
    subject: section,
    question,
  });
  const fill = about("pass", `Do the cables of ${section} go through its pass-through with room to spare?`);
  const plug = about("plug", `Do the plugs of ${section} go through its pass-through?`);
  const plugs = plugsOf(input, section);
  const widths = plugs.flatMap(({ width }) => (width === undefined ? [] : [width]));
  return [
    plugs.length === 0
      ? unknown(fill, missing(section, "cables"), [cableCaution])
      : guarded(fill, () => fillReply(plugs, holes), [cableCaution]),
    plugs.length === 0 || widths.length < plugs.length
      ? unknown(plug, missing(section, "plugs"), [cableCaution])
      : guarded(plug, () => plugReply(input, widths, holes), [cableCaution]),
  ];
}

function plugsOf({ case: { contents } }: ReviewInput, where: string): readonly PlugRoom[] {
  return contents.flatMap(({ section, needs: { plug } }) => (section === where && plug ? [plug] : []));
}

function missing(section: string, what: "cables" | "plugs"): NonNullable<Finding["missing"]> {
  return {
    measure: `the ${what} that leave ${section}`,
    how:
      what === "cables"
        ? 'measure the cables across and write the block "plug" into the needs of each thing they belong to'
        : 'measure each plug across its widest side and write "width" into its plug',
  };
}

function fillReply(plugs: readonly PlugRoom[], holes: readonly HardwarePart[]): Reply {
  const opening = Area.si(holes.reduce((sum, { stock }) => sum + stock.cutWidth * stock.cutHeight, 0));
  const line = cableFill.worked({ cables: plugs.map(({ cable }) => cable), opening });
  const percent = { unit: "%", digits: 2 };
  return compared({
    kind: Ratio,
    asked: ["share of the hole taken up", line.value.fill],
    there: ["share that may be", line.value.allowed],
    facts: `${plugs.length === 1 ? "One cable fills" : `${plugs.length} cables fill`} ${Ratio.show(line.value.fill, percent)} of the hole; ${Ratio.show(line.value.allowed, percent)} may be filled.`,
    remedy: "A second pass-through.",
    because: [line],
    cautions: [cableCaution],
    source: [cite("nec", "chapter 9, table 1")],
  });
}

/** The narrow side of the widest hole decides. */
function plugReply(input: ReviewInput, widths: readonly Length[], holes: readonly HardwarePart[]): Reply {
  const widest = Length.si(Math.max(...widths));
  const hole = Length.si(Math.max(...holes.map(({ stock }) => Math.min(stock.cutWidth, stock.cutHeight))));
  const style = styleOf(input.case);
  return compared({
    kind: Length,
    asked: ["widest plug", widest],
    there: ["narrow side of the hole", hole],
    facts: `The widest plug is ${Length.show(widest, style)} across; the hole is ${Length.show(hole, style)}.`,
    remedy: "A wider pass-through, or a plug that can be taken off its cable.",
    because: [],
    cautions: [cableCaution],
    source: [cite("common-practice", "the plug goes through the hole, or the cable is cut")],
  });
}

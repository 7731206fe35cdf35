/** Do the riveted edges hold the box in shape when it is pushed sideways? */
import type { Fastening, PanelPart } from "../../design/index.js";
import { groupStrength, seamForce } from "../../fastening/index.js";
import {
  type CaseRun,
  type CaseRuns,
  fastenerStrength,
  type KnownStrength,
  type MeshedValue,
  onBothMeshes,
  type ReviewInput,
  sectionBalance,
  sectionNamed,
  useInterval,
} from "../../model/index.js";
import { Force, Length, LineLoad, Mass, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf, withinMesh } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { type BoxedInput, each, known, mostOf, sectionNames, theOne } from "../subjects.js";

/** A wall of a section with the widest spaced rivets of its edges. */
interface RivetedWall {
  /** The section's name. */
  readonly section: string;
  /** The wall. */
  readonly panel: PanelPart;
  /** Its most widely spaced row. */
  readonly seam: Fastening;
  /** From rivet to rivet of that row. */
  readonly pitch: Length;
}

/** The shortest wall of a section has the strongest shear flow. */
function weakestWall({ parts }: ReviewInput, section: string): readonly RivetedWall[] {
  const walls = parts.panels.filter(
    (panel) =>
      panel.section === section && panel.role === "face" && !["top", "bottom"].includes(panel.face ?? ""),
  );
  const riveted = walls.flatMap((panel): RivetedWall[] => {
    const rows = parts.fastenings.flatMap((seam) =>
      seam.why === "edge" && seam.panel === panel.id && seam.pitch ? [{ seam, pitch: seam.pitch }] : [],
    );
    return rows.length === 0 ? [] : [{ section, panel, ...mostOf(rows, ({ pitch }) => pitch, "row") }];
  });
  return riveted.length === 0 ? [] : [mostOf(riveted, ({ panel }) => -panel.width, "wall")];
}

/** Whether the riveted edges of each section keep it square, pushed sideways at its top by its own weight. */
export const seams: Question<BoxedInput> = question({
  id: "joints.seams",
  about: each(
    (input) => sectionNames(input).flatMap((section) => weakestWall(input, section)),
    ({ section }) => section,
    ({ section }) => `riveted edges of ${section}`,
  ),
  ask: ({ section }) =>
    `Do the riveted edges of ${section} keep it square when it is pushed sideways with its own weight?`,
  tier: "strength",
  cautions: ({ panel }) => [
    "A case that racks lets its door and its load go: set it down at the first loose rivet.",
    ...(panel.openings.length > 0
      ? [`${panel.id} has openings: what is left of it passes more shear to fewer rivets near them.`]
      : []),
  ],
  needs: { strength: known((input, { seam }: RivetedWall) => fastenerStrength(seam, "shear", input)) },
  answer: (input: BoxedInput, given, wall) => racked(input, wall, given.strength),
});

/** The joined boxes tell where the flow is uneven; it is shared evenly where there are none. */
function racked(input: BoxedInput, { section, panel, pitch }: RivetedWall, known: KnownStrength): Answer {
  const box = input.box();
  const balance = sectionBalance(input, section);
  const weight = balance.value.mass * standardGravity;
  // Two walls lie along the push; the push runs evenly along the top of each, and so along all of its edges.
  const even = LineLoad.si(weight / 2 / panel.width);
  const worked =
    "runs" in box && box.runs.fine.sections.some((one) => one.section === section && !("refused" in one));
  const uneven = worked ? boxFlow(box.runs, section, weight) : undefined;
  const flow = LineLoad.si(Math.max(even, uneven?.value ?? 0));
  const load = seamForce.worked({ flow, pitch, rows: ratio(1) });
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: known.strength, count: 1, safetyFactor });
  const used = ratio(load.value / allowed.value);
  const style = styleOf(input.case);
  const byBox = uneven
    ? `; by the joined boxes the seam ${uneven.name} carries most, ${LineLoad.show(LineLoad.si(uneven.value), style)} over a pitch (${withinMesh(uneven.meshError)} by the mesh) and ${LineLoad.show(LineLoad.si(uneven.mean), style)} on its mean`
    : "";
  return {
    demand: amount(Force, "on one rivet of the seam", load.value),
    capacity: amount(Force, "one rivet allows", allowed.value),
    facts: `${Mass.show(balance.value.mass, style)} sideways is ${LineLoad.show(even, style)} along the edges of ${panel.id} when it runs evenly${byBox}. At the larger of them a rivet every ${Length.show(pitch, style)} bears ${Force.show(load.value, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    interval: useInterval(load.value, known, 1 / safetyFactor),
    because: [balance, load, ...known.because, allowed],
    limit: cite("common-practice", "its own weight sideways"),
    sources: [
      cite("statics", "even shear flow round a wall"),
      ...(uneven ? [cite("mixed-interpolated-plates", "nine-node element, faces of the box")] : []),
    ],
  };
}

/** The most loaded seam of a section by the joined boxes. */
interface BoxFlow extends MeshedValue {
  /** The seam's name. */
  readonly name: string;
  /** The flow on its mean, in newtons a metre. */
  readonly mean: number;
}

/** What the joined boxes put on the most loaded seam of a section, in newtons a metre. */
function boxFlow(runs: CaseRuns, section: string, weight: number): BoxFlow {
  const seamsOf = (run: CaseRun) => sectionNamed(run.sections, section).seams;
  const worst = mostOf(seamsOf(runs.fine), ({ peak }) => peak, `box of ${section} without seams`);
  const peakIn = (run: CaseRun) => theOne(seamsOf(run), ({ name }) => name === worst.name, worst.name).peak;
  const flow = onBothMeshes(runs, (run) => weight * peakIn(run));
  return { ...flow, name: worst.name, mean: weight * worst.mean };
}

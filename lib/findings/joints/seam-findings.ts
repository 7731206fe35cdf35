/** Do the riveted edges hold the box in shape when it is pushed sideways? */
import type { Fastening, PanelPart } from "../../design/index.js";
import { groupStrength, seamForce } from "../../fastening/index.js";
import {
  type CaseBox,
  type CaseRun,
  type CaseRuns,
  fastenerStrength,
  isKnown,
  type KnownStrength,
  type MeshedValue,
  onBothMeshes,
  type ReviewInput,
  sectionBalance,
  useInterval,
} from "../../model/index.js";
import { Force, Length, LineLoad, Mass, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { amount, styleOf, withinMesh } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

/** A wall of a section with the widest spaced rivets of its edges. */
interface RivetedWall {
  readonly panel: PanelPart;
  readonly seam: Fastening;
  readonly pitch: Length;
}

/**
 * Each section held at its foot and pushed sideways at its top by its own weight.
 *
 * @param box the case as joined boxes, which tells where the flow is uneven; shared evenly where there is none
 */
export function seamFindings(input: ReviewInput, box: () => CaseBox): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) => {
    const wall = weakestWall(input, name);
    if (!wall) return [];
    const question: Question = {
      id: `joints.seams.${name}`,
      topic: "joints",
      subject: `riveted edges of ${name}`,
      question: `Do the riveted edges of ${name} keep it square when it is pushed sideways with its own weight?`,
    };
    const strength = fastenerStrength(wall.seam, "shear", input);
    if (!isKnown(strength)) return [unknown(question, strength, [racked])];
    return [guarded(question, () => seamReply(input, name, wall, strength, box()), [racked])];
  });
}

const racked = "A case that racks lets its door and its load go: set it down at the first loose rivet.";

/** The shortest wall has the strongest shear flow. */
function weakestWall({ parts }: ReviewInput, section: string): RivetedWall | undefined {
  const walls = parts.panels.filter(
    (panel) =>
      panel.section === section && panel.role === "face" && !["top", "bottom"].includes(panel.face ?? ""),
  );
  const riveted = walls.flatMap((panel) => {
    const seams = parts.fastenings.filter(
      ({ why, panel: id, pitch }) => why === "edge" && id === panel.id && pitch,
    );
    const [widest] = seams.sort((a, b) => (b.pitch ?? 0) - (a.pitch ?? 0));
    return widest?.pitch === undefined ? [] : [{ panel, seam: widest, pitch: widest.pitch }];
  });
  return riveted.sort((a, b) => a.panel.width - b.panel.width)[0];
}

function seamReply(
  input: ReviewInput,
  section: string,
  { panel, pitch }: RivetedWall,
  known: KnownStrength,
  box: CaseBox,
): Reply {
  const balance = sectionBalance(input, section);
  const weight = balance.value.mass * standardGravity;
  // Two walls lie along the push; the push runs evenly along the top of each, and so along all of its edges.
  const even = LineLoad.si(weight / 2 / panel.width);
  const uneven = "runs" in box ? boxFlow(box.runs, section, weight) : undefined;
  const flow = LineLoad.si(Math.max(even, uneven?.value ?? 0));
  const load = seamForce.worked({ flow, pitch, rows: ratio(1) });
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: known.strength, count: 1, safetyFactor });
  const interval = useInterval(load.value, known, 1 / safetyFactor);
  const used = ratio(load.value / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used, interval),
    answer: `${Mass.show(balance.value.mass, style)} sideways is ${LineLoad.show(even, style)} along the edges of ${panel.id} when it runs evenly${uneven ? `; by the joined boxes the seam ${uneven.name} carries most, ${LineLoad.show(LineLoad.si(uneven.value), style)} over a pitch (${withinMesh(uneven.meshError)} by the mesh) and ${LineLoad.show(LineLoad.si(uneven.mean), style)} on its mean` : ""}. At the larger of them a rivet every ${Length.show(pitch, style)} bears ${Force.show(load.value, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    demand: amount(Force, "on one rivet of the seam", load.value),
    capacity: amount(Force, "one rivet allows", allowed.value),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [balance, load, ...known.because, allowed],
    cautions: [
      racked,
      ...(panel.openings.length > 0
        ? [`${panel.id} has openings: what is left of it passes more shear to fewer rivets near them.`]
        : []),
    ],
    source: [
      cite("statics", "even shear flow round a wall"),
      ...(uneven
        ? [cite("mixed-interpolated-plates", "nine-node element, faces of the box") as Citation]
        : []),
      cite("common-practice", "its own weight sideways"),
    ],
  };
}

/** What the joined boxes put on the most loaded seam of a section, N/m. */
function boxFlow(
  runs: CaseRuns,
  section: string,
  weight: number,
): MeshedValue & { readonly name: string; readonly mean: number } {
  const seamsOf = (run: CaseRun) => run.sections.find((one) => one.section === section)!.seams;
  const worst = seamsOf(runs.fine).reduce((most, one) => (one.peak > most.peak ? one : most));
  const flow = onBothMeshes(
    runs,
    (run) => weight * seamsOf(run).find(({ name }) => name === worst.name)!.peak,
  );
  return { ...flow, name: worst.name, mean: weight * worst.mean };
}

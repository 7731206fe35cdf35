/** Do the riveted edges hold the box in shape when it is pushed sideways? */
import type { Fastening, PanelPart } from "../../design/index.js";
import { groupStrength, seamForce } from "../../fastening/index.js";
import { Force, Length, LineLoad, Mass, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "../travel/balance.js";
import { verdictOf } from "../verdict.js";
import { fastenerStrength } from "./fastener-strength.js";
import { isKnown, type KnownStrength } from "./known-strength.js";
import { useInterval } from "./use-interval.js";

/** A wall of a section with the widest spaced rivets of its edges. */
interface RivetedWall {
  readonly panel: PanelPart;
  readonly seam: Fastening;
  readonly pitch: Length;
}

/** Each section held at its foot and pushed sideways at its top by its own weight. */
export function seamFindings(input: ReviewInput): readonly Finding[] {
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
    return [guarded(question, () => seamReply(input, name, wall, strength), [racked])];
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
): Reply {
  const balance = sectionBalance(input, section);
  // Two walls lie along the push; the push runs evenly along the top of each, and so along all of its edges.
  const flow = LineLoad.si((balance.value.mass * standardGravity) / 2 / panel.width);
  const load = seamForce.worked({ flow, pitch, rows: ratio(1) });
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: known.strength, count: 1, safetyFactor });
  const interval = useInterval(load.value, known, 1 / safetyFactor);
  const used = ratio(load.value / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used, interval),
    answer: `${Mass.show(balance.value.mass, style)} sideways is ${LineLoad.show(flow, style)} along the edges of ${panel.id}; a rivet every ${Length.show(pitch, style)} bears ${Force.show(load.value, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
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
      cite("common-practice", "its own weight sideways"),
    ],
  };
}

/** Do the riveted, screwed and glued edges hold the box in shape when it is pushed sideways? */
import { glueFilms } from "../../bonding/index.js";
import type { Adhesive, Fastening, JointPart, PanelPart, Parts } from "../../design/index.js";
import { glueLineShear, groupStrength, seamForce } from "../../fastening/index.js";
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
import { amount, shownPair, styleOf, withinMesh } from "../amount.js";
import { heldStack } from "../figures/stack-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { type BoxedInput, each, known, mostOf, sectionNames, theOne } from "../subjects.js";

/** A row of fasteners along an edge of a wall of a section. */
interface RivetedWall {
  /** The section's name. */
  readonly section: string;
  /** The wall. */
  readonly panel: PanelPart;
  /** The row. */
  readonly seam: Fastening;
  /** From rivet to rivet of that row. */
  readonly pitch: Length;
}

function wallsOf({ panels }: Parts, section: string): readonly PanelPart[] {
  return panels.filter(
    (panel) =>
      panel.section === section && panel.role === "face" && !["top", "bottom"].includes(panel.face ?? ""),
  );
}

/** What edges are said to be that such fasteners hold. */
function heldWord({ fastener: { kind } }: Fastening): string {
  return kind === "rivet" ? "riveted" : kind === "screw" ? "screwed" : "bolted";
}

/** The row of a section that holds the smallest share of its load: shear flow is stronger along a short wall. */
function weakestWall(input: ReviewInput, section: string): readonly RivetedWall[] {
  const { parts } = input;
  const walls = wallsOf(parts, section);
  const glued = new Set(parts.joints.flatMap(({ id, adhesive }) => (adhesive ? [id] : [])));
  const riveted = walls.flatMap((panel) =>
    parts.fastenings.flatMap((seam): RivetedWall[] =>
      seam.why === "edge" && seam.panel === panel.id && seam.pitch && !glued.has(seam.holds)
        ? [{ section, panel, seam, pitch: seam.pitch }]
        : [],
    ),
  );
  return riveted.length === 0 ? [] : [mostOf(riveted, (row) => usedShare(input, row), "row")];
}

/** How much of its fasteners a row uses, as a share of what other rows do; the most where nobody knows their strength. */
function usedShare(input: ReviewInput, { panel, pitch, seam }: RivetedWall): number {
  const known = fastenerStrength(seam, "shear", input);
  return "strength" in known ? pitch / panel.width / known.strength : Infinity;
}

/** Whether the riveted or screwed edges of each section keep it square, pushed sideways at its top by its own weight. */
export const seams: Question<BoxedInput> = question({
  id: "joints.seams",
  about: each(
    (input) => sectionNames(input).flatMap((section) => weakestWall(input, section)),
    ({ section }) => section,
    ({ section, seam }) => `${heldWord(seam)} edges of ${section}`,
  ),
  ask: ({ section, seam }) =>
    `Do the ${heldWord(seam)} edges of ${section} keep it square when it is pushed sideways with its own weight?`,
  tier: "strength",
  cautions: ({ seam }) => [
    `A case that racks lets its door and its load go: set it down at the first loose ${seam.fastener.kind}.`,
  ],
  needs: { strength: known((input, { seam }: RivetedWall) => fastenerStrength(seam, "shear", input)) },
  answer: (input: BoxedInput, given, wall) => racked(input, wall, given.strength),
  figure: (input, { seam }, { demand }) => heldStack(input, [seam], "shear", demand),
});

/** A glued edge of a wall, the weakest over its length. */
interface GluedWall {
  /** The section's name. */
  readonly section: string;
  /** A wall that it is an edge of. */
  readonly panel: PanelPart;
  /** The glued edge. */
  readonly joint: JointPart & { readonly adhesive: Adhesive };
}

function gluedWall({ parts }: ReviewInput, section: string): readonly GluedWall[] {
  const joints = parts.joints.flatMap((joint) => {
    const { adhesive } = joint;
    return adhesive ? [{ ...joint, adhesive }] : [];
  });
  const walls = wallsOf(parts, section).flatMap((panel) =>
    joints
      .filter(({ panels }) => panels.includes(panel.id))
      .map((joint): GluedWall => ({ section, panel, joint })),
  );
  return walls.length === 0
    ? []
    : [mostOf(walls, ({ panel, joint }) => -panel.width * holdOf(joint).value, "edge")];
}

/** Shear that breaks the narrowest film of an edge, over a metre of it. */
function holdOf({ adhesive, widths, length, clear }: GluedWall["joint"]) {
  const { shearStrength, bonded } = glueFilms[adhesive.kind];
  return glueLineShear.worked({
    length: Length.si(Math.min(1, length / clear)),
    width: Length.si(Math.min(...widths)),
    shearStrength,
    bonded,
  });
}

/** Whether the glued edges of each section keep it square. */
export const gluedSeams: Question<BoxedInput> = question({
  id: "joints.glue",
  about: each(
    (input) => sectionNames(input).flatMap((section) => gluedWall(input, section)),
    ({ section }) => section,
    ({ section }) => `glued edges of ${section}`,
  ),
  ask: ({ section }) =>
    `Do the glued edges of ${section} keep it square when it is pushed sideways with its own weight?`,
  tier: "strength",
  cautions: [
    "A glued edge gives without a warning: knock along it, and take the case out of use where it sounds hollow or shows a crack.",
    "Glue holds in shear and lets go when it is peeled: let nothing pull a glued panel off its edge.",
  ],
  assumes: [
    "Half of a glued edge is wetted, as where screws alone press it; clamp it well and it holds more.",
  ],
  answer: (input: BoxedInput, _, { section, panel, joint }) => {
    const balance = sectionBalance(input, section);
    const weight = balance.value.mass * standardGravity;
    const box = input.box();
    const uneven = "runs" in box ? boxFlow(box.runs, section, weight) : undefined;
    const flow = LineLoad.si(Math.max(weight / 2 / panel.width, uneven?.value ?? 0));
    const hold = holdOf(joint);
    const { safetyFactor } = input.case.demands;
    const allowed = LineLoad.si(hold.value / safetyFactor);
    const style = styleOf(input.case);
    const [most, allows] = shownPair(LineLoad, flow, allowed, style);
    return {
      demand: amount(LineLoad, "shear along the edge", flow),
      capacity: amount(LineLoad, "the glue allows", allowed),
      facts: `${Mass.show(balance.value.mass, style)} sideways puts at most ${most} on an edge; ${joint.adhesive.name} at ${joint.id} allows ${allows}. It breaks at ${LineLoad.show(LineLoad.si(hold.value), style)}.${uneven ? ` What is put on it is ${withinMesh(uneven.meshError)} by the mesh.` : ""}`,
      remedies: [{ words: "Glue a wider cleat into the corner, or clamp the joint over its whole length." }],
      because: [balance, hold],
      limit: cite("common-practice", "its own weight sideways"),
      sources: [
        cite("statics", "even shear flow round a wall"),
        cite("common-practice", "shear strength of glue on wood, on the low side"),
      ],
    };
  },
});

/** The joined boxes tell where the flow is uneven; it is shared evenly where there are none. */
function racked(
  input: BoxedInput,
  { section, panel, pitch, seam }: RivetedWall,
  known: KnownStrength,
): Answer {
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
    ? ` By the joined boxes the seam ${uneven.name} carries most: ${LineLoad.show(LineLoad.si(uneven.value), style)} over a pitch (${withinMesh(uneven.meshError)} by the mesh). On average it carries ${LineLoad.show(LineLoad.si(uneven.mean), style)}.`
    : "";
  return {
    demand: amount(Force, `on one ${seam.fastener.kind} of the seam`, load.value),
    capacity: amount(Force, `one ${seam.fastener.kind} allows`, allowed.value),
    facts: `A ${seam.fastener.kind} every ${Length.show(pitch, style)} bears ${Force.show(load.value, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}). ${Mass.show(balance.value.mass, style)} sideways is ${LineLoad.show(even, style)} along the edges of ${panel.id} when it runs evenly.${byBox} The larger of them counts.`,
    interval: useInterval(load.value, known, 1 / safetyFactor),
    because: [balance, load, ...known.because, allowed],
    assumed:
      panel.openings.length > 0
        ? [
            `${panel.id} has openings: what is left of it passes more shear to fewer ${seam.fastener.kind}s near them.`,
          ]
        : [],
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

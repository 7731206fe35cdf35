/** Putting it together, section by section, each step with its reason. */
import {
  type BarPart,
  type EdgeName,
  edgeNames,
  type Face,
  faces,
  type HardwarePart,
  type Holding,
  type HungLeaf,
  type JointPart,
  type PanelPart,
  type Parts,
  type Section,
  type SectionPart,
} from "../../design/index.js";
import { steps } from "../../page/index.js";
import { Time } from "../../quantity/index.js";
import { accessOf, hardwareAt, lastPanel, openFaces, reachWords } from "../hardware-stage.js";
import { type CodedPiece, codeOf } from "../pieces.js";
import { type RecipeBlock, type RecipeSection, section, when } from "../recipe.js";
import type { Rule } from "../rule.js";
import { counted, distinct, grouped, listed } from "../words.js";
import type { Workshop } from "../workshop.js";
import { gapsBeside } from "./doors.js";

/** The section on assembly. */
export function assemblySection(workshop: Workshop): RecipeSection {
  const { parts } = workshop;
  return section(
    "Assembly",
    ...parts.sections.map((one) => steps(sectionSteps(one, workshop), `Section ${one.name}`)),
    ...finishing(workshop),
  );
}

function sectionSteps(one: SectionPart, workshop: Workshop): string[] {
  return [
    ...stiffenerSteps(one, workshop),
    ...benchSteps(one, workshop),
    ...paneSteps(one, workshop),
    ...boxSteps(one, workshop),
    ...closingSteps(one, workshop),
    ...doorSteps(one, workshop),
  ];
}

/** A step a stiffener, on the flat panel. */
function stiffenerSteps({ name }: SectionPart, { parts, pieces }: Workshop): string[] {
  const here = parts.stiffeners.filter(({ section }) => section === name);
  return here.map((stiffener) => {
    const { id, kind, panel, side, adhesive, piece } = stiffener;
    const strips = pieces.strips.filter(({ name: strip }) => strip === id || strip.startsWith(`${id} `));
    const codes = piece ? codeOf(pieces.panels, piece.id) : listed(strips.map(({ code }) => code));
    const row = parts.fastenings.find(({ why, holds }) => why === "stiffener" && holds === id);
    const ways = [
      ...(adhesive ? [`glue with ${adhesive.name}`] : []),
      ...(row ? [`${counted(row.count, "fastener")} (${row.fastener.name}) through the panel`] : []),
    ];
    return `Put the ${kind} ${codes} on the ${side} of ${panel} while it lies flat, where the marks are: ${listed(ways)}.`;
  });
}

function paneSteps({ name }: SectionPart, { pieces }: Workshop): string[] {
  const here = pieces.panes.filter(({ part }) => part.section === name);
  return here.map(({ code, part: { panel, pane } }) => {
    const row = pane.count === undefined ? "" : `, ${counted(pane.count, "fastener")} (${pane.fastener})`;
    return `Lay the pane ${code} over its opening on the ${pane.side} of ${panel}, with as much overlap all round, held by ${pane.held}${row}: snug, never forced.`;
  });
}

function benchSteps({ name }: SectionPart, { parts }: Workshop): string[] {
  const bench = hardwareAt("bench", parts, name);
  const wheels = hardwareAt("wheels", parts, name);
  return [
    ...when(
      bench.length > 0,
      () =>
        `Fit on the flat panels: ${hardwareWords(bench)}. The inside is open to your hands now and will not be later.`,
    ),
    ...when(
      wheels.length > 0,
      () => `Drill the holes of ${hardwareWords(wheels)} while the panel lies flat; they go on last of all.`,
    ),
  ];
}

/** "carry handle (4) on upper.left and upper.right" */
function hardwareWords(hardware: readonly HardwarePart[]): string {
  const items = grouped(hardware, ({ item }) => item.name).map(([name, some]) => {
    const panels = [...new Set(some.flatMap((part) => part.panels))];
    return `${name} (${some.length}) on ${listed(panels)}`;
  });
  return items.join("; ");
}

function boxSteps({ name }: SectionPart, workshop: Workshop): string[] {
  const described = workshop.case.sections.find((one) => one.name === name);
  const faces = workshop.pieces.panels.filter(({ part }) => part.section === name && part.role === "face");
  return [
    `Dry fit without glue or fasteners: stand ${listed(faces.map(({ code, part }) => `${code} ${part.face}`))} together with clamps and corner squares. Nothing is lost if a panel turns out wrong now.`,
    ...(described ? edgeRules(described) : []),
    "Compare the two diagonals of every face you can reach, and shift the clamps until they agree. A box fixed crooked stays crooked.",
  ];
}

function doorSteps({ name }: SectionPart, { parts, pieces, rule }: Workshop): string[] {
  const leaves = parts.panels.filter((panel) => panel.section === name && panel.role === "leaf");
  const metal = hardwareAt("doors", parts, name);
  const doors = leaves.map((leaf) => {
    const gap = leaf.leaf ? `, with a gap of ${gapWords(leaf.leaf, rule)} held by packing` : "";
    return `Set the door ${codeOf(pieces.panels, leaf.id)} ${leaf.id} in its opening, hinged at the ${hingeSide(leaf)}${gap}. Doors come after the corners, when the box has its final shape.`;
  });
  return [
    ...doors,
    ...when(
      metal.length > 0,
      () => `Fit the doors' hardware: ${hardwareWords(metal)}. Hinges first, then what closes them.`,
    ),
  ];
}

function gapWords(leaf: HungLeaf, rule: Rule): string {
  const beside = gapsBeside(leaf, rule);
  const own = rule.fine(leaf.clearance);
  return beside.length > 0
    ? `${own} to the panel and ${listed(beside)} to the next leaf`
    : `${own} all round`;
}

function hingeSide({ leaf }: PanelPart): string {
  return leaf?.hinge ?? "side";
}

function finishing(workshop: Workshop): RecipeBlock[] {
  const { parts } = workshop;
  const items = [...joinSteps(workshop), ...wheelSteps(workshop), ...contentSteps(workshop)];
  return parts.sections.length > 0 && items.length > 0 ? [steps(items, "The whole case")] : [];
}

function joinSteps({ parts }: Workshop): string[] {
  const joining = hardwareAt("joining", parts);
  if (joining.length === 0) return [];
  return [
    "Stack the sections on a flat floor, edges flush all round, and strap them together so that nothing shifts.",
    `Mark, drill and fit what joins them while they stand stacked: ${hardwareWords(joining)}. Only so do latch and keeper meet. Each latch should pull slightly when shut. ${reaches(joining, parts).join(" ")}`,
  ];
}

function wheelSteps({ parts }: Workshop): string[] {
  const wheels = hardwareAt("wheels", parts);
  if (wheels.length === 0) return [];
  const reach = reaches(wheels, parts).join(" ");
  return [
    `Last of all the casters: ${hardwareWords(wheels)}. Two people lay the empty section on its back on a blanket; a box on wheels runs away from every other job. ${reach}`,
  ];
}

/** How a hand gets into each of the sections that the hardware is on. */
function reaches(hardware: readonly HardwarePart[], parts: Parts): string[] {
  return distinct(hardware.map(({ section: name }) => name)).map((name) => reachWords(name, parts));
}

/** One sentence for all edges. */
function edgeRules({ edges }: Section): string[] {
  const runs = faces.flatMap((face) => {
    const past = edgeNames
      .filter((name) => edges[name]?.through === face)
      .map((name) => otherFace(name, face));
    return past.length > 0 ? [`the ${face} runs past the ${listed(past)}`] : [];
  });
  const bare = edgeNames.filter((name) => {
    const edge = edges[name];
    return edge !== undefined && edge.extrusion === undefined && edge.joint === undefined;
  });
  const neither = edgeNames.filter((name) => edges[name]?.through === "neither");
  return [
    ...(runs.length > 0
      ? [`Mind which panel runs past which: ${runs.join("; ")}. The sizes of the cut list count on it.`]
      : []),
    ...(neither.length > 0
      ? [
          `At ${listed(neither)} both panels stop in the seat of the bar: fit an offcut of the bar there while you clamp.`,
        ]
      : []),
    ...(bare.length > 0 ? [bareEdges(bare)] : []),
  ];
}

function bareEdges(bare: readonly EdgeName[]): string {
  const where = bare.length === edgeNames.length ? "any edge" : listed(bare);
  return `The case names no bar at ${where}: join those panels in your own way, for instance glued and screwed to battens inside, and write down how.`;
}

function otherFace(edge: EdgeName, face: Face): string {
  return edge.split("-").find((name) => name !== face) ?? "";
}

/** Edge bars, shelves, the last panel and the corners of one section, in the order that keeps it open longest. */
function closingSteps({ name }: SectionPart, workshop: Workshop): string[] {
  const access = accessOf(name, workshop.parts);
  const last = openFaces(name, workshop.parts).length > 0 ? undefined : lastPanel(name, access);
  const bars = workshop.pieces.bars.filter(({ part }) => part.section === name);
  const closing = bars.filter(({ part }) => last !== undefined && part.covers.includes(last));
  const first = bars.filter((bar) => !closing.includes(bar));
  return [
    ...(first.length > 0
      ? [
          `${last ? `Leave ${last} off. ` : ""}Clamp, drill through and rivet the bars ${codes(first)}. With one side open you reach every washer.`,
        ]
      : []),
    ...jointSteps(name, workshop),
    ...insideSteps(name, workshop),
    ...when(
      last !== undefined,
      () =>
        `Put on ${last} as the last panel.${closing.length > 0 ? ` Rivet the bars ${codes(closing)}. ${reachWords(name, workshop.parts)}` : ""}`,
    ),
    ...when(hardwareAt("corners", workshop.parts, name).length > 0, () =>
      cornerStep(hardwareAt("corners", workshop.parts, name)),
    ),
  ];
}

/** A step for each way in which edges are joined without a bar. */
function jointSteps(name: string, { parts, pieces }: Workshop): string[] {
  const joints = parts.joints.filter(({ section }) => section === name);
  const alike = ({ kind, adhesive, strip, id }: JointPart): string =>
    [kind, adhesive?.name, strip?.name, screwOf(id, parts)].join("|");
  return grouped(joints, alike).map(([, some]) => {
    const [{ kind, adhesive, id }] = some;
    const screw = screwOf(id, parts);
    const ways = [
      ...(adhesive ? [`glue with ${adhesive.name}`] : []),
      ...(screw ? [`screw with ${screw} through the holes that are drilled`] : []),
    ];
    const edges = listed(some.map(({ edge }) => edge));
    const strips = pieces.strips.filter(({ part }) => some.some((one) => part.id.startsWith(`${one.id} `)));
    const wait = adhesive
      ? ` Clamp it, wipe off what squeezes out, and leave it for ${Time.show(adhesive.cureTime)}.`
      : "";
    if (kind === "glued" || kind === "screwed") return `Join the panels at ${edges}: ${listed(ways)}.${wait}`;
    return `Set the ${kind}s ${listed(strips.map(({ code }) => code))} into the corners at ${edges}, on one panel first, then on the other: ${listed(ways)}.${wait}`;
  });
}

/** The screw of an edge. */
function screwOf(joint: string, { fastenings }: Parts): string | undefined {
  return fastenings.find(({ why, holds }) => why === "edge" && holds === joint)?.fastener.name;
}

function codes(bars: readonly CodedPiece<BarPart>[]): string {
  return listed(bars.map(({ code, part }) => `${code} ${part.edge}`));
}

function cornerStep(corners: readonly HardwarePart[]): string {
  const names = grouped(corners, ({ item }) => item.name).map(([name, some]) => `${name} (${some.length})`);
  return `Set the corners: ${listed(names)}. They cover the bar ends and so come after the bars.`;
}

/** What goes in while one side is still open. */
function insideSteps(name: string, { parts, pieces }: Workshop): string[] {
  const shelves = parts.shelves.filter(({ shelf }) => shelf.section === name);
  const drawers = parts.drawers.filter(({ drawer }) => drawer.section === name);
  const built = drawers.map(
    ({ drawer: { name: called, slides, joint }, panels }) =>
      `Build the drawer ${called} of ${listed(panels.map(({ id }) => codeOf(pieces.panels, id)))}: the bottom under the sides, inner front and back between them, ${counted(joint.count, "fastener")} (${joint.fastener}); measure both diagonals. Screw its slides (${slides}) to drawer and walls, level with each other, on packing where the opening is narrower than the inside; fix its front last, set even in the opening.`,
  );
  const borneShelves = shelves.map(({ shelf, panel }) => {
    const borne = {
      "two ends": "its two ends",
      "ends and back": "its ends and the back",
      "back only": "the back",
    }[shelf.support];
    const slides = shelf.sliding ? " It slides: try it loaded by hand before you go on." : "";
    return `Put in the shelf ${codeOf(pieces.panels, panel.id)} ${shelf.name}, borne at ${borne}, with ${counted(shelf.joint.count, "fastener")} (${shelf.joint.fastener}). It goes in before the last panel, since it may not pass the openings.${slides}`;
  });
  return [...borneShelves, ...built];
}

/** A step a content. */
function contentSteps({ parts }: Workshop): string[] {
  return parts.contents.map(({ content: { name, section, held } }) =>
    heldStep(`Put ${name} into ${section}`, held),
  );
}

function heldStep(place: string, held: Holding): string {
  switch (held.by) {
    case "shelf":
      return `${place} on "${held.shelf}", held so that it cannot slide off.`;
    case "floor":
      return `${place} on the floor, wedged or strapped so that it cannot slide.`;
    case "strap":
      return `${place} with ${counted(held.straps, "strap")}, pulled tight.`;
    case "cradle":
      return `${place} in its cradle ${held.shelf === undefined ? "on the floor" : `on "${held.shelf}"`}, lined with ${held.lining.kind}${held.lid ? ", and close its strap or lid" : "; give it a strap or lid first"}.`;
    case "hung":
      return `${place}, hung with ${counted(held.count, "fastener")} (${held.fastener})${held.secondHold ? ", and clip its second hold" : "; give it a second hold first"}.`;
    case "rivets":
      return `${place} with ${counted(held.count, "rivet")} (${held.fastener}) through the ${held.to}.`;
    case "screws":
      return held.foot === undefined
        ? `${place} with ${counted(held.count, "screw")} (${held.fastener}) through the ${held.to}.`
        : `${place} with ${counted(held.count, "screw")} into the inserts of the ${held.to} (${held.fastener}).`;
  }
}

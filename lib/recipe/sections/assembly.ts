/** Putting it together, section by section, each step with its reason. */
import type { HardwarePart, PanelPart, Parts, SectionPart } from "../../design/index.js";
import { steps } from "../../page/index.js";
import { reachWords } from "../access.js";
import { hardwareAt } from "../hardware-stage.js";
import { section, when } from "../make-block.js";
import { codeOf } from "../pieces.js";
import type { RecipeBlock, RecipeSection } from "../recipe.js";
import { distinct, grouped, listed } from "../words.js";
import type { Workshop } from "../workshop.js";
import { closingSteps } from "./closing-steps.js";
import { edgeRules } from "./edge-rules.js";
import { contentSteps } from "./fit-out.js";

/** The section. */
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
    ...benchSteps(one, workshop),
    ...boxSteps(one, workshop),
    ...closingSteps(one, workshop),
    ...doorSteps(one, workshop),
  ];
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
    const gap = leaf.leaf
      ? `, with a gap of ${rule.fine(leaf.leaf.clearance)} all round held by packing`
      : "";
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

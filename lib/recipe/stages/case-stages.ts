/** The stages of the whole case: its sections joined, what rides in it, wheels where they could not go on before. */
import type { HardwarePart, Parts } from "../../design/index.js";
import { hardwareAt, reachWords } from "../../plan/index.js";
import { when } from "../recipe.js";
import { needed, step, supplies, using } from "../supplies.js";
import { distinct } from "../words.js";
import type { Workshop } from "../workshop.js";
import { finishedChecks } from "./checks.js";
import { contentStep, lateContents, placesTable } from "./contents.js";
import { goesInOpen } from "./found-order.js";
import { hardwareWords, sectionStages, settersOf, wheelsEarly } from "./section-stages.js";
import type { Stage } from "./stage.js";

/** Every stage of the assembly, in the order of the work. */
export function allStages(workshop: Workshop): readonly Stage[] {
  return [
    ...workshop.parts.sections.flatMap((one) => sectionStages(one, workshop)),
    joinStage(workshop),
    contentStage(workshop),
    lastStage(workshop),
  ];
}

function joinStage(workshop: Workshop): Stage {
  const { parts } = workshop;
  const joining = hardwareAt("joining", parts).filter(
    ({ id, section }) => goesInOpen(id, section, workshop) !== true,
  );
  const ids = new Set(joining.map(({ id }) => id));
  return {
    title: "the sections joined",
    steps:
      joining.length === 0
        ? []
        : [
            using(
              step`Stack the sections on a flat floor, edges flush all round. Strap them together so that nothing shifts.`,
              needed("2 lashing straps", "holding the stack while it is marked", "2"),
            ),
            using(
              step`Mark, drill and fit while they stand stacked: ${hardwareWords(joining)}. ${reaches(joining, parts).join(" ")}`,
              supplies.drill,
              ...settersOf(joining, parts),
            ),
            step`Shut every latch: each should pull slightly. Latch and keeper meet only so.`,
          ],
    adds: ({ part }) => ids.has(part),
  };
}

function contentStage(workshop: Workshop): Stage {
  const { parts } = workshop;
  const late = lateContents(workshop);
  const names = new Set(late.map(({ content }) => content.name));
  const grilles = workshop.case.services.cooling.length;
  return {
    title: "what rides in it",
    steps: [
      ...when(grilles > 0, () =>
        using(
          step`Screw ${needed("vent grilles", "vents of the case", "1 for each vent")} over the vents, from outside.`,
          supplies.jScrew,
        ),
      ),
      ...late.map((part) => contentStep(part, workshop)),
    ],
    adds: ({ kind, part }) => kind === "content" && names.has(part),
    hides: ({ part, kind }) =>
      kind === "hardware" ||
      parts.sections.some(({ name }) => part.startsWith(`${name}.`) && /front|right|top$/.test(part)),
    ...(late.length > 0
      ? {
          places: [
            placesTable(
              late.map(({ content: { name, at } }) => ({ name, at })),
              workshop,
            ),
          ],
        }
      : {}),
  };
}

function lastStage(workshop: Workshop): Stage {
  const { parts } = workshop;
  const wheels = hardwareAt("wheels", parts).filter((part) => !wheelsEarly(part, parts));
  const ids = new Set(wheels.map(({ id }) => id));
  return {
    title: "finished",
    steps: [
      ...when(wheels.length > 0, () =>
        using(
          step`Lay the empty section on its back on a ${supplies.blanket}, two people. Fit ${hardwareWords(wheels)}. ${reaches(wheels, parts).join(" ")}`,
          ...settersOf(wheels, parts),
        ),
      ),
      using(
        step`Wipe everything clean. Weigh each section on the ${supplies.scale}, empty, then loaded.`,
        supplies.cloths,
      ),
    ],
    adds: ({ part }) => ids.has(part),
    checks: [finishedChecks(workshop)],
  };
}

/** How a hand gets into each of the sections that the hardware is on. */
function reaches(hardware: readonly HardwarePart[], parts: Parts): string[] {
  return distinct(hardware.map(({ section: name }) => name)).map((name) => reachWords(name, parts));
}

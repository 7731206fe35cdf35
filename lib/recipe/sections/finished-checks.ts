/** The last look: latches, casters, weight, and how willingly it tips. */
import { Length } from "../../quantity/index.js";
import { hardwareAt } from "../hardware-stage.js";
import { blanks, group, sentence, when } from "../make-block.js";
import type { GroupBlock } from "../recipe.js";
import { tolerance } from "../tolerances.js";
import type { Workshop } from "../workshop.js";
import { sectionMass } from "./what-you-build.js";

interface FinishedCheck {
  readonly what: string;
  readonly planned: string;
  readonly allowed: string;
}

/** Base to lift to for the tip check: IEC 62368-1, clause 8.6, tilts equipment by 10 degrees. */
const tilt = (10 * Math.PI) / 180;

/** The last group of checks. */
export function finishedChecks(workshop: Workshop): GroupBlock {
  return group(
    "The whole case, finished",
    sentence(
      "Tip check: two people, one on each side, the loose contents out, wheels braked if it has any, floor clear. Lift one long side slowly, only as far as the table says, and feel whether it wants to come back; never let go and never stand where it would fall. Leave it out if the review says it may tip.",
    ),
    blanks(
      [...latchChecks(workshop), ...wheelChecks(workshop), ...massChecks(workshop), tipCheck(workshop)],
      [
        { heading: "What", cell: ({ what }) => what },
        { heading: "Planned", cell: ({ planned }) => planned, align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["Measured"],
    ),
  );
}

function latchChecks({ parts, rule }: Workshop): FinishedCheck[] {
  return when(hardwareAt("joining", parts).length > 0, () => ({
    what: "Gap between stacked sections, latches shut",
    planned: "none",
    allowed: `up to ${rule.fine(Length.of(1, "mm"))}, even all round`,
  }));
}

function wheelChecks({ parts, rule }: Workshop): FinishedCheck[] {
  return when(hardwareAt("wheels", parts).length > 0, () => ({
    what: "Casters on a flat floor, rocked corner to corner",
    planned: "all touch",
    allowed: `up to ${rule.fine(Length.of(1, "mm"))} under one`,
  }));
}

function massChecks(workshop: Workshop): FinishedCheck[] {
  const { parts, rule } = workshop;
  return parts.sections.flatMap(({ name }) => {
    const mass = sectionMass(workshop, name);
    const within = mass ? `within ${100 * tolerance.mass} %` : "write it down";
    const rides = parts.contents.some(({ content }) => content.section === name);
    return (rides ? (["empty", "loaded"] as const) : (["empty"] as const)).map((which) => ({
      what: `Weight of ${name}, ${which}`,
      planned: mass ? rule.mass(mass[which]) : "not reckoned",
      allowed: within,
    }));
  });
}

function tipCheck({ parts, rule }: Workshop): FinishedCheck {
  const base = parts.sections[0]?.outside.size;
  const lift = base ? rule.length(Length.si(Math.min(base.x, base.y) * Math.sin(tilt))) : "10 degrees";
  return {
    what: "Tip check, one long side lifted 10 degrees",
    planned: `lift ${lift}, no further`,
    allowed: "wants to come back",
  };
}

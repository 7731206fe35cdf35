/** Fixing a section's edges and closing it. */
import type { BarPart, HardwarePart, SectionPart } from "../../design/index.js";
import { accessOf, lastPanel, reachWords } from "../access.js";
import { hardwareAt } from "../hardware-stage.js";
import { when } from "../make-block.js";
import { type CodedPiece, codeOf } from "../pieces.js";
import { counted, grouped, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** Edge bars, shelves, the last panel and the corners of one section, in the order that keeps it open longest. */
export function closingSteps({ name }: SectionPart, workshop: Workshop): string[] {
  const access = accessOf(name, workshop.parts);
  const last = lastPanel(name, access);
  const bars = workshop.pieces.bars.filter(({ part }) => part.section === name);
  const first = bars.filter(({ part }) => !part.covers.includes(last));
  const closing = bars.filter(({ part }) => part.covers.includes(last));
  return [
    ...(first.length > 0
      ? [
          `Leave ${last} off. Clamp, drill through and rivet the bars ${codes(first)}. With one side open you reach every washer.`,
        ]
      : []),
    ...insideSteps(name, workshop),
    `Put on ${last} as the last panel.${closing.length > 0 ? ` Rivet the bars ${codes(closing)}. ${reachWords(name, workshop.parts)}` : ""}`,
    ...when(hardwareAt("corners", workshop.parts, name).length > 0, () =>
      cornerStep(hardwareAt("corners", workshop.parts, name)),
    ),
  ];
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
  return shelves.map(({ shelf, panel }) => {
    const borne = {
      "two ends": "its two ends",
      "ends and back": "its ends and the back",
      "back only": "the back",
    }[shelf.support];
    const slides = shelf.sliding ? " It slides: try it loaded by hand before you go on." : "";
    return `Put in the shelf ${codeOf(pieces.panels, panel.id)} ${shelf.name}, borne at ${borne}, with ${counted(shelf.joint.count, "fastener")} (${shelf.joint.fastener}). It goes in before the last panel, since it may not pass the openings.${slides}`;
  });
}

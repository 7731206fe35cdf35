/** The cuts as tables to stand beside the saw: cuts of sheets by fence setting, cuts of bars by stop setting. */
import {
  type BenchPart,
  type CutBar,
  type CutSheet,
  type SawStep,
  type StopSetting,
  sawSteps,
  stopSettings,
} from "../cutting/index.js";
import { type TableView, tableOf } from "../page/index.js";
import { Angle, type Length } from "../quantity/index.js";
import { type CodedPiece, codeOf, type NumberedStock } from "./pieces.js";
import type { Rule } from "./rule.js";

/** The cuts of one sheet in order, its edges trimmed. Cuts with one fence setting stand together under one set-up. */
export function sawTable(
  { label, cut }: NumberedStock<CutSheet>,
  kerf: Length,
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): TableView {
  const onBench = (part: BenchPart): string => benchWords(part, pieces, rule);
  const steps = sawSteps(cut, kerf);
  return tableOf(
    steps.map((step, i) => ({ ...step, first: steps[i - 1]?.setting !== step.setting })),
    [
      { heading: "Set-up", cell: ({ setting }) => setting },
      { heading: "Set the fence to", cell: (step) => fenceWords(step, step.first, rule), align: "left" },
      { heading: "Cut", cell: ({ number }) => number },
      { heading: "Through", cell: ({ part }) => rule.drawn(part.length, part.width), align: "left" },
      { heading: "Stays at the fence", cell: ({ keeps }) => onBench(keeps), align: "left" },
      {
        heading: "Falls off",
        cell: ({ fallsOff }) => (fallsOff ? onBench(fallsOff) : "dust"),
        align: "left",
      },
    ],
    `${label}: ${cut.stock}`,
  );
}

/** The setting where it is made, and that it stays where it is not changed. */
function fenceWords({ direction, fence }: SawStep, first: boolean, rule: Rule): string {
  if (!first) return "the same";
  return `${rule.length(fence)}, ${direction === "along" ? "rip" : "crosscut"}`;
}

function benchWords(part: BenchPart, pieces: readonly CodedPiece<unknown>[], rule: Rule): string {
  if (part.piece !== undefined) return `${codeOf(pieces, part.piece)} ${part.piece}`;
  return `${part.is === "offcut" ? "offcut" : "part"} ${rule.drawn(part.length, part.width)}`;
}

/** The stop settings for the bars of one extrusion, the longest first; what each sets off comes off in this order. */
export function stopTable(
  stock: string,
  bars: readonly NumberedStock<CutBar>[],
  pieces: readonly CodedPiece<unknown>[],
  rule: Rule,
): TableView {
  const settings = stopSettings(bars.map(({ cut }) => cut));
  return tableOf(
    settings.map((setting, i) => ({ number: i + 1, ...setting })),
    [
      { heading: "Set-up", cell: ({ number }) => number },
      { heading: "Set the stop to", cell: ({ length }) => rule.length(length), align: "left" },
      { heading: "Ends", cell: endWords, align: "left" },
      {
        heading: "Falls off",
        cell: ({ cuts }) =>
          cuts
            .map(
              ({ bar, pieces: names }) =>
                `${bars[bar]?.label}: ${names.map((name) => codeOf(pieces, name)).join(", ")}`,
            )
            .join("; "),
        align: "left",
      },
    ],
    `${stock}: trim one end square, then one stop after the other`,
  );
}

/** "square", or the angles off square. */
function endWords({ mitre: { left, right } }: StopSetting): string {
  if (left === 0 && right === 0) return "square";
  const [one, other] = [left, right].map((angle) => `${Math.round(Angle.in(angle, "deg") * 10) / 10}\u00a0°`);
  return one === other ? `${one} off square, both` : `${one} left, ${other} right, off square`;
}

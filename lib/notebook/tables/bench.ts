/** The cuts one after the other, as rows of the chart that steps through them. */
import { type BenchPart, benchStates, type SheetArea, sawSteps } from "../../cutting/index.js";
import type { Job } from "../../job/index.js";
import type { ChartView } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { codeOf, codePieces, type GoodFace, goodFaces, ruleOf } from "../../recipe/index.js";
import { type BenchCut, type BenchRow, benchChart } from "../bench-chart.js";
import { plySheets } from "./buying.js";

/** Every cut of every sheet of ply in order, with what lies on the bench after it. */
export function cutSteps(job: Job): readonly ChartView[] {
  const states = plySheets(job).flatMap(({ label, cut }) =>
    benchStates(sawSteps(cut, job.review.purchases.kerfs.sheets.kerf)).map((state) => ({ label, ...state })),
  );
  if (states.length < 2) return [];
  const { panels } = codePieces(job.parts);
  const rule = ruleOf(job.case.units);
  const faceOf = goodFaces(panels);
  const row = (part: BenchPart, step: number): BenchRow => ({
    step,
    ...cornersOf(part),
    state: part.is,
    code: part.piece === undefined ? "" : codeOf(panels, part.piece),
    mark: part.piece === undefined ? "" : markOf(faceOf(part.piece)),
    name: part.piece ?? part.is,
    size: rule.drawn(part.length, part.width),
  });
  const cuts = states.map(({ label, step }, i): BenchCut => {
    const { keeps, part, direction, fence } = step;
    const [near, whole] = [cornersOf(keeps), cornersOf(part)];
    const along = direction === "along";
    const line = along ? { y: near.y2, y2: near.y2 } : { x: near.x2, x2: near.x2 };
    const words = `${label}, cut ${step.number}: ${along ? "rip" : "crosscut"} at ${rule.drawn(fence)}`;
    return { step: i + 1, ...whole, ...line, words };
  });
  return [
    benchChart({
      title: "The cuts, step by step",
      description:
        "What lies on the bench after each cut, to scale; the red line is the cut just made. Grain runs from left to right; beside the arrow stands where the good face goes.",
      rows: states.flatMap(({ parts }, i) => parts.map((part) => row(part, i + 1))),
      cuts,
      slider: "Cut, through all sheets",
      start: 1,
    }),
  ];
}

const markOf = (face: GoodFace | undefined): string => (face ? `→ ${face}` : "→");

function cornersOf({ x, y, length, width }: SheetArea) {
  const mm = (value: number): number => Length.in(Length.si(value), "mm");
  return { x: mm(x), y: mm(y), x2: mm(x + length), y2: mm(y + width) };
}

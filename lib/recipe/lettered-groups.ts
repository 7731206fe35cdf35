/** The groups of holes of a panel under the letters that its drawing and its table share. */
import type { Parts } from "../design/index.js";
import type { LetteredGroup } from "./drawings/panel-holes.js";
import { drillStageOf, drillStages } from "./drilling.js";

/** A, B ... Z, AA, AB ..., what is drilled first first. */
export function letteredGroups(panel: string, parts: Parts): readonly LetteredGroup[] {
  const here = parts.fastenings.filter((fastening) => fastening.panel === panel);
  return drillStages
    .flatMap((stage) => here.filter((fastening) => drillStageOf(fastening, parts) === stage))
    .map((fastening, i) => ({ letter: letterOf(i), fastening }));
}

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

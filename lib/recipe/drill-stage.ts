/** When in the work a group of holes is drilled. */
import type { Fastening, Parts } from "../design/index.js";
import { type HardwareStage, stageOf } from "./hardware-stage.js";

/**
 * In the order of the work. bench: on the flat panel. metal: through bar or corner and panel together. door:
 * with the leaf in its opening. stack: with the sections stacked. hand: where the thing turns out to sit.
 */
export const drillStages = ["bench", "metal", "door", "stack", "hand"] as const;
/** One of them. */
export type DrillStage = (typeof drillStages)[number];

const ofHardware: Readonly<Record<HardwareStage, DrillStage>> = {
  bench: "bench",
  wheels: "bench",
  corners: "metal",
  doors: "door",
  joining: "stack",
};

/** When a group is drilled: on the flat panel, or later with what decides where the hole must be. */
export function drillStageOf({ why, holds }: Fastening, parts: Parts): DrillStage {
  if (why === "edge") return "metal";
  const hardware = parts.hardware.find(({ id }) => id === holds);
  return why === "hardware" && hardware ? ofHardware[stageOf(hardware, parts)] : "hand";
}

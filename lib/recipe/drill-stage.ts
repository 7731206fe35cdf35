/** When in the work a group of holes is drilled. */
import type { Fastening, Parts } from "../design/index.js";
import { type HardwareStage, stageOf } from "./hardware-stage.js";

/** In the order of the work. */
export const drillStages = ["on the bench", "through the metal", "door hung", "stacked", "by hand"] as const;
/** One of them. */
export type DrillStage = (typeof drillStages)[number];

const ofHardware: Readonly<Record<HardwareStage, DrillStage>> = {
  bench: "on the bench",
  wheels: "on the bench",
  corners: "through the metal",
  doors: "door hung",
  joining: "stacked",
};

/** When a group is drilled: on the flat panel, or later with what decides where the hole must be. */
export function drillStageOf({ why, holds }: Fastening, parts: Parts): DrillStage {
  if (why === "edge") return "through the metal";
  const hardware = parts.hardware.find(({ id }) => id === holds);
  return why === "hardware" && hardware ? ofHardware[stageOf(hardware, parts)] : "by hand";
}

/** Every question about moving a case: lifted, carried, rolled, stood, driven, dropped. */
import type { Question } from "../question.js";
import { balance } from "./balance.js";
import { drop, dropEdge } from "./drops.js";
import { brakes, casters, floor } from "./ground.js";
import { handholds, handRoomFindings, hang } from "./hands.js";
import { openLid } from "./lids.js";
import { lift, stairs, team } from "./lifting.js";
import { shelfRoad } from "./road.js";
import { gap, rampDown, rampUp, roll, start, threshold } from "./rolling.js";
import { child, push, slope, tip, wind } from "./standing.js";
import { lashing, stackLashing, strapsOnCasters } from "./straps.js";

/** In the order in which they are told. */
export const travelQuestions: readonly Question[] = [
  ...[balance, lift, team, handRoomFindings, handholds, hang, stairs],
  ...[roll, start, threshold, gap, rampUp, rampDown, brakes, floor],
  ...[tip, push, casters, child, openLid, wind, slope],
  ...[lashing, stackLashing, strapsOnCasters, shelfRoad, drop, dropEdge],
];

/** Every question about what rides inside: held, quiet, cool, powered. */
import type { Question } from "../question.js";
import { bounces } from "./bounce.js";
import { cables, cablesThrough, plugsThrough } from "./cables.js";
import { air, clearance, shade, sun } from "./heat.js";
import { holds } from "./hold.js";
import {
  battery,
  batteryDrop,
  batteryFuse,
  circuit,
  inrush,
  sockets,
  stripRating,
  voltage,
} from "./power.js";
import { outdoorSockets, rain } from "./rain.js";
import { offPanel } from "./reach.js";
import { screenEdge, screenGrip } from "./screens.js";
import { mounts, rattle } from "./shaking.js";
import { jolts, platformGlue, platformScrews, slides } from "./shelves.js";

/** In the order in which they are told. */
export const fitOutQuestions: readonly Question[] = [
  ...[holds, offPanel, bounces, jolts, slides, platformScrews, platformGlue, rattle, mounts, clearance],
  ...[screenGrip, screenEdge, cables, cablesThrough, plugsThrough],
  ...[
    shade,
    sun,
    air,
    battery,
    batteryFuse,
    batteryDrop,
    circuit,
    voltage,
    stripRating,
    sockets,
    outdoorSockets,
    inrush,
  ],
  rain,
];

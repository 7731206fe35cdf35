/** Which options are offered for which question. */
import type { Finding } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import { merged, type Option } from "../option.js";
import {
  boards,
  fixedShelf,
  offFasteners,
  shiftedHardware,
  slidesAgainstWalls,
  standsOff,
  widerPattern,
} from "./assembly.js";
import { carryApart, holdAllLoose, holdIt, keepClear, openLess, plugWithRoom } from "./contents.js";
import { foamUnder } from "./foam.js";
import {
  castersFurtherOut,
  deeperCase,
  otherGrip,
  ratedPairs,
  strongerCasters,
  strongerCorners,
  strongerDoors,
  strongerHandles,
  strongerHinges,
  strongerInBox,
} from "./hardware.js";
import { allBrakes, easierRamp, handledCarefully, lessOnTop, morePeople, onBlocks } from "./journey.js";
import { mendingOf, type Offer } from "./offer.js";
import { roomForHands } from "./order.js";
import { shorterScrews } from "./screws.js";
import { batteryWires, coolerDays, largerBattery, moreAir, shade, trippingDevice } from "./services.js";
import {
  closerRivets,
  otherBatten,
  otherRivets,
  shelfFasteners,
  smallerOpening,
  staggered,
  stiffer,
  thickerSheetForAll,
  thickerShelf,
} from "./sheets.js";

/** What is offered for each question, by its id. */
const offers: Readonly<Record<string, readonly Offer[]>> = {
  "fit-out.hold": [holdIt],
  "fit-out.bounce": [holdIt],
  "joints.hung": [holdIt],
  "strength.latch": [holdAllLoose, strongerDoors],
  "strength.thrown": [holdAllLoose],
  "fit-out.clear": [keepClear],
  "fit-out.air": [moreAir, coolerDays],
  "fit-out.heat": [moreAir, shade, coolerDays],
  "fit-out.sun": [shade, moreAir, coolerDays],
  "fit-out.cable": [plugWithRoom],
  "fit-out.power.battery": [largerBattery],
  "fit-out.power.dc-fuse": [batteryWires],
  "fit-out.power.outdoors": [trippingDevice],
  "travel.ramp": [easierRamp, morePeople],
  "travel.ramp-down": [easierRamp],
  "travel.push": [castersFurtherOut, deeperCase],
  "travel.tip": [castersFurtherOut, deeperCase],
  "travel.wind": [castersFurtherOut, deeperCase],
  "travel.slope": [castersFurtherOut, deeperCase, allBrakes],
  "travel.child": [openLess, castersFurtherOut],
  "travel.strap-press": [onBlocks],
  "travel.roll": [morePeople],
  "travel.start": [morePeople],
  "travel.team": [morePeople, carryApart],
  "travel.lift": [morePeople, carryApart],
  "travel.stairs": [morePeople, carryApart],
  "travel.drop": [foamUnder, handledCarefully],
  "travel.drop-edge": [foamUnder, handledCarefully],
  "strength.person": [lessOnTop, stiffer],
  "strength.lean": [stiffer, smallerOpening],
  "strength.panel": [stiffer, smallerOpening],
  "strength.stored": [stiffer],
  "strength.stiffener": [otherBatten],
  "strength.shelf": [thickerShelf],
  "stiffness.shelf": [thickerShelf],
  stiffness: [stiffer, smallerOpening],
  "joints.handles": [strongerHandles],
  "joints.handle-sideways": [strongerHandles],
  "joints.handle-alone": [strongerHandles],
  "joints.handle-out": [strongerHandles],
  "joints.box": [strongerInBox],
  "joints.latches": [ratedPairs],
  "joints.hinges": [strongerHinges],
  "joints.casters": [strongerCasters],
  "joints.drop-casters": [strongerCasters, handledCarefully],
  "joints.drop-corner": [strongerCorners, handledCarefully],
  "joints.drop-edge": [strongerCorners, handledCarefully],
  "joints.drop-side": [strongerCorners, handledCarefully],
  "joints.corners": [strongerCorners],
  "joints.shelf": [shelfFasteners],
  "travel.shelf": [shelfFasteners],
  "fit-out.jolt": [thickerShelf, shelfFasteners],
  "joints.seams": [closerRivets, otherRivets, thickerSheetForAll],
  "joints.edges": [otherRivets, closerRivets],
  "joints.grip": [otherGrip, otherRivets],
  "assembly.inside": [staggered, shiftedHardware],
  "assembly.heads": [widerPattern, shiftedHardware],
  "assembly.under-contents": [offFasteners, boards],
  "assembly.stack": [standsOff],
  "assembly.way": [fixedShelf],
  "assembly.slides": [slidesAgainstWalls],
  "assembly.order": [roomForHands],
  "assembly.points": [shorterScrews],
};

/** The questions for which something is offered. */
export const mendable: readonly string[] = Object.keys(offers);

/** The question of a finding, among those for which something is offered: the longest id that begins its own. */
function questionOf({ id }: Finding): string | undefined {
  return mendable
    .filter((one) => id === one || id.startsWith(`${one}.`))
    .sort((one, other) => other.length - one.length)[0];
}

/** Options that may mend some findings of a job. */
export function optionsFor(job: Job, findings: readonly Finding[]): readonly Option[] {
  return merged(
    findings.flatMap((finding) => {
      const question = questionOf(finding);
      if (question === undefined) return [];
      const mending = mendingOf(job, finding, question);
      return (offers[question] ?? []).flatMap((offer) => offer(mending));
    }),
  );
}

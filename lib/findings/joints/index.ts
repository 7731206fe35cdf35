/** Every question about what is riveted, screwed, hinged and hung. */
import type { Question } from "../question.js";
import type { BoxedInput } from "../subjects.js";
import { boxForces } from "./box-forces.js";
import { droppedOnCasters, droppedOnCorners } from "./dropped.js";
import { outwardHandles } from "./handle-outward.js";
import { handles, latches, loneHandles, sidewaysHandles } from "./handles.js";
import { corners, hinges, kerbs } from "./hardware.js";
import { hung, inserts, secondHolds, shelfJoints } from "./held.js";
import { gluedLaminate } from "./laminate.js";
import { stays } from "./lids.js";
import { workingLoose } from "./loosening.js";
import { edgeDistances, rivetGrips, screwedIntoEdges } from "./rivets.js";
import { gluedSeams, seams } from "./seams.js";

/** In the order in which they are told. */
export const jointQuestions: readonly Question<BoxedInput>[] = [
  ...[
    rivetGrips,
    edgeDistances,
    screwedIntoEdges,
    handles,
    loneHandles,
    outwardHandles,
    sidewaysHandles,
    corners,
    kerbs,
    hinges,
    stays,
  ],
  ...droppedOnCorners,
  droppedOnCasters,
  ...[
    seams,
    gluedSeams,
    gluedLaminate,
    latches,
    inserts,
    shelfJoints,
    hung,
    secondHolds,
    boxForces,
    workingLoose,
  ],
];

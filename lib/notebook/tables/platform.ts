/** A platform on the wall, tried out: what a bracket under it does for its screws and its glue. */

import { glueAllows, styleOf } from "../../findings/index.js";
import { gluePull, platformPull } from "../../inside/index.js";
import type { Job } from "../../job/index.js";
import { Force, Length, Moment, Pressure } from "../../quantity/index.js";

/** A platform to try, sizes as text: "8 in". */
export interface TriedPlatform {
  /** Thing on it with a jolt. */
  readonly load: string;
  /** From the wall to the middle of the thing. */
  readonly reach: string;
  /** Along the wall. */
  readonly width: string;
  /** Screws at its upper edge. */
  readonly screws: number;
}

/** One height of bracket. */
export interface BracketRow {
  readonly height: number;
  /** On each screw. */
  readonly pull: number;
}

/** Pull on each screw for brackets up to twice as high as the reach. */
export function bracketRows(job: Job, platform: TriedPlatform): readonly BracketRow[] {
  const { load, reach, screws } = read(platform);
  const [small, force] = job.case.units === "inch" ? ["in", "lbf"] : ["mm", "N"];
  return Array.from({ length: 16 }, (_, i) => {
    const lever = Length.si((reach * (i + 1)) / 8);
    const pull = platformPull({ load, reach, lever, screws });
    return { height: Length.in(lever, small), pull: Force.in(pull, force) };
  });
}

/** Pull of the screws, and of the glue. */
export type PlatformLines = readonly [
  ReturnType<typeof platformPull.worked>,
  ReturnType<typeof gluePull.worked>,
];

/** The worked lines of screws and of glue with one height of bracket. */
export function platformLines(platform: TriedPlatform, bracket: string): PlatformLines {
  const { load, reach, width, screws } = read(platform);
  const lever = Length.read(bracket);
  return [
    platformPull.worked({ load, reach, lever, screws }),
    gluePull.worked({ moment: Moment.si(load * reach), length: width, depth: lever }),
  ];
}

/** What the glue line of that bracket comes to, in a sentence. */
export function glueSentence({ case: description }: Job, platform: TriedPlatform, bracket: string): string {
  const [, glue] = platformLines(platform, bracket);
  const style = styleOf(description);
  const holds = glue.value <= glueAllows;
  return `Glued alone it pulls the face veneer with ${Pressure.show(glue.value, style)}; plywood's face allows ${Pressure.show(glueAllows, style)}${holds ? "" : ": never glue alone"}.`;
}

function read({ load, reach, width, screws }: TriedPlatform): {
  readonly load: Force;
  readonly reach: Length;
  readonly width: Length;
  readonly screws: number;
} {
  return { load: Force.read(load), reach: Length.read(reach), width: Length.read(width), screws };
}

/** The case as joined boxes, worked out once for all who ask: on two meshes, and with other moduli. */
import { keptWhile } from "../kept.js";
import type { ReviewInput } from "../review-input.js";
import type { ModuliShares } from "../stiffness/panel-sheet.js";
import { type CaseOutcome, caseOutcome } from "./case-outcomes.js";
import {
  type CaseSystem,
  caseSystem,
  type JoinedBodies,
  joinedBodies,
  sectionSystem,
} from "./case-system.js";
import { type LoadedCase, loadedCases } from "./load-cases.js";
import { type SectionStiffness, sectionStiffness } from "./section-stiffness.js";
import { sectionNumbers } from "./standing-links.js";

/** The case on one mesh. */
export interface CaseRun {
  readonly system: CaseSystem;
  readonly cases: readonly LoadedCase[];
  /** In the order of the cases. */
  readonly outcomes: readonly CaseOutcome[];
  readonly sections: readonly SectionStiffness[];
}

/** The case on two meshes, and its sections on the rougher with each modulus a little larger. */
export interface CaseRuns {
  readonly fine: CaseRun;
  readonly rough: CaseRun;
  readonly stiffer: Readonly<Record<keyof ModuliShares, readonly SectionStiffness[]>>;
}

/** The case worked out, or why it cannot be. */
export type CaseBox = { readonly runs: CaseRuns } | { readonly refused: string };

/** Elements asked for: forces within a few %, movements within some 10 %, in a moment; each finding says its own. */
const meshes = { fine: 60, rough: 11 };

/** What a modulus is multiplied by to see how results follow it. */
export const larger = 1.1;

/** All of a case's boxes but what rides in them. */
interface CaseBodies {
  readonly fine: JoinedBodies;
  readonly rough: JoinedBodies;
  readonly stiffer: CaseRuns["stiffer"];
}

/** Works the case out, once for all reviews that differ in nothing it looks at; a refusal is kept too. */
export const caseBox: (input: ReviewInput) => CaseBox = keptWhile(
  ({ parts }) => parts,
  ({ case: { demands, journey }, measurements: { bends, twists, weights, spreads } }) => [
    demands.push,
    demands.jerk,
    journey.handling,
    bends,
    twists,
    weights,
    spreads,
  ],
  workedOut,
);

/** The bodies, once for all cases that carry other things in the same panels. */
const bodiesOf: (input: ReviewInput) => CaseBodies = keptWhile(
  ({ parts }) => parts.panels,
  ({ parts: { bars, hardware, fastenings, sections }, measurements: { bends, twists } }) => [
    bars,
    hardware,
    fastenings,
    sections,
    bends,
    twists,
  ],
  madeBodies,
);

function workedOut(input: ReviewInput): CaseBox {
  try {
    const { fine, rough, stiffer } = bodiesOf(input);
    return { runs: { fine: caseRun(input, fine), rough: caseRun(input, rough), stiffer } };
  } catch (error) {
    if (error instanceof RangeError) return { refused: error.message };
    throw error;
  }
}

function madeBodies(input: ReviewInput): CaseBodies {
  const stiffer = (way: keyof ModuliShares): readonly SectionStiffness[] =>
    sectionsOf(sectionSystem(input, meshes.rough, { along: 1, across: 1, [way]: larger }));
  return {
    fine: joinedBodies(input, meshes.fine),
    rough: joinedBodies(input, meshes.rough),
    stiffer: { along: stiffer("along"), across: stiffer("across") },
  };
}

/**
 * The runs of a case.
 *
 * @throws RangeError that says why there are none
 */
export function runsOf(box: CaseBox): CaseRuns {
  if ("refused" in box) throw new RangeError(box.refused);
  return box.runs;
}

function caseRun(input: ReviewInput, bodies: JoinedBodies): CaseRun {
  const system = caseSystem(input, bodies);
  const cases = loadedCases(system);
  return { system, cases, outcomes: cases.map(caseOutcome), sections: sectionsOf(system) };
}

function sectionsOf(system: JoinedBodies): readonly SectionStiffness[] {
  return sectionNumbers(system.model).map((number) => sectionStiffness(system, number));
}

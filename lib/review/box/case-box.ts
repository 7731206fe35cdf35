/** The case as joined boxes, worked out once for all who ask: on two meshes, and with other moduli. */
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

/** Bodies made before, by the panels they are made of, with all else that they look at. */
const kept = new WeakMap<
  ReviewInput["parts"]["panels"],
  { readonly seen: readonly unknown[]; readonly bodies: CaseBodies }
>();

/** Cases worked out before, by their parts, with all else that they look at. */
const known = new WeakMap<
  ReviewInput["parts"],
  { readonly seen: readonly unknown[]; readonly box: CaseBox }
>();

/** Works the case out, once for all reviews that differ in nothing it looks at; a refusal is kept too. */
export function caseBox(input: ReviewInput): CaseBox {
  const { demands, journey } = input.case;
  const { bends, twists, weights, spreads } = input.measurements;
  const seen = [demands.push, demands.jerk, journey.handling, bends, twists, weights, spreads];
  const before = known.get(input.parts);
  if (before && isSame(seen, before.seen)) return before.box;
  const box = workedOut(input);
  known.set(input.parts, { seen, box });
  return box;
}

function isSame(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.every((value, i) => value === other[i]);
}

function workedOut(input: ReviewInput): CaseBox {
  try {
    const { fine, rough, stiffer } = bodiesOf(input);
    return { runs: { fine: caseRun(input, fine), rough: caseRun(input, rough), stiffer } };
  } catch (error) {
    if (error instanceof RangeError) return { refused: error.message };
    throw error;
  }
}

function bodiesOf(input: ReviewInput): CaseBodies {
  const { panels, bars, hardware, fastenings, sections } = input.parts;
  const { bends, twists } = input.measurements;
  const seen = [bars, hardware, fastenings, sections, bends, twists];
  const before = kept.get(panels);
  if (before && isSame(seen, before.seen)) return before.bodies;
  const stiffer = (way: keyof ModuliShares): readonly SectionStiffness[] =>
    sectionsOf(sectionSystem(input, meshes.rough, { along: 1, across: 1, [way]: larger }));
  const bodies: CaseBodies = {
    fine: joinedBodies(input, meshes.fine),
    rough: joinedBodies(input, meshes.rough),
    stiffer: { along: stiffer("along"), across: stiffer("across") },
  };
  kept.set(panels, { seen, bodies });
  return bodies;
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

/** The case as joined boxes, worked out once for all who ask: on two meshes, and with other moduli. */
import { add, at } from "../../algebra/lists.js";
import type { PanelPart } from "../../design/index.js";
import {
  type BoxStructure,
  type FaceName,
  frames,
  meshChange,
  movedJoined,
  overPatch,
  prepareMoves,
  sagBetweenCorners,
  spaceDofs,
} from "../../fem/index.js";
import { memoize, memoizeLast } from "../../kept/index.js";
import { propagate, type Uncertainties } from "../../measure/index.js";
import { Length, type Pressure, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { RatioInterval } from "../ratio-interval.js";
import type { ReviewInput } from "../review-input.js";
import { cutFromSpan } from "../stiffness/panel-sag.js";
import type { ModuliShares } from "../stiffness/panel-stiffness.js";
import { sheetModuli } from "../stiffness/sheet-moduli.js";
import { type CaseOutcome, caseOutcome } from "./case-outcomes.js";
import {
  type CaseSystem,
  caseSystem,
  type JoinedBodies,
  joinedBodies,
  type Subsystem,
  subsystem,
} from "./case-system.js";
import { type LoadedCase, loadedCases, type UnansweredCase } from "./load-cases.js";
import { boxFaces } from "./places.js";
import {
  type RackingPowers,
  type SectionStiffness,
  sectionPowers,
  sectionStiffness,
} from "./section-stiffness.js";
import { sectionNumbers } from "./standing-links.js";

/** The case on one mesh. */
export interface CaseRun {
  /** Its bodies, springs and masses. */
  readonly system: CaseSystem;
  /** All load cases that its hardware allows and that can be answered, solved. */
  readonly cases: readonly LoadedCase[];
  /** In the order of the cases. */
  readonly outcomes: readonly CaseOutcome[];
  /** Load cases that cannot be answered on this mesh or the other. */
  readonly unanswered: readonly UnansweredCase[];
  /** Each section by itself. */
  readonly sections: readonly SectionAnswer[];
}

/** A section by itself, or why it cannot be worked out. */
export type SectionAnswer =
  | SectionStiffness
  | {
      /** The name of the section. */
      readonly section: string;
      /** Why there is no answer, in a builder's words. */
      readonly refused: string;
    };

/** The case on two meshes. */
export interface CaseRuns {
  /** On the finer mesh. */
  readonly fine: CaseRun;
  /** On the coarser mesh. */
  readonly coarse: CaseRun;
  /** How what a section racks follows the moduli of its sheets, on the coarser mesh. */
  readonly powers: (section: string) => RackingPowers;
}

/** The case worked out, or why it cannot be. */
export type CaseBox = { readonly runs: CaseRuns } | { readonly refused: string };

/** Elements asked for: forces within a few %, movements within some 10 %, in a moment; each finding says its own. */
const meshes = { fine: 60, coarse: 11 };

/** All of a case's boxes but what rides in them. */
interface CaseBodies {
  /** On the finer mesh. */
  readonly fine: MeshedBodies;
  /** On the coarser mesh. */
  readonly coarse: MeshedBodies;
  /** How each section follows the moduli of its sheets. */
  readonly powers: CaseRuns["powers"];
}

/** All of a case's boxes on one mesh, and each section by itself. */
interface MeshedBodies {
  /** Joined by every spring that a load case may use. */
  readonly bodies: JoinedBodies;
  /** Each section by itself. */
  readonly sections: readonly SectionAnswer[];
}

/** Works the case out, once for all reviews that differ in nothing it looks at; a refusal is kept too. */
export const caseBox: (input: ReviewInput) => CaseBox = memoizeLast(
  ({ parts }) => parts,
  ({ case: { demands, journey }, measurements: { bends, twists, weights, spreads } }) => [
    demands.push,
    demands.dynamicFactor,
    journey.handling,
    bends,
    twists,
    weights,
    spreads,
  ],
  workedOut,
);

/** The bodies, once for all cases that carry other things in the same panels. */
const bodiesOf: (input: ReviewInput) => CaseBodies = memoizeLast(
  ({ parts }) => parts.panels,
  ({
    parts: { bars, joints, stiffeners, hardware, fastenings, sections },
    measurements: { bends, twists },
  }) => [bars, joints, stiffeners, hardware, fastenings, sections, bends, twists],
  madeBodies,
);

function workedOut(input: ReviewInput): CaseBox {
  try {
    const { fine, coarse, powers } = bodiesOf(input);
    const [one, other] = [caseRun(input, fine), caseRun(input, coarse)];
    return { runs: { fine: answeredWith(one, other), coarse: answeredWith(other, one), powers } };
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.message };
    throw error;
  }
}

/** A run without the load cases that the other mesh does not answer. */
function answeredWith(run: CaseRun, { cases, unanswered }: CaseRun): CaseRun {
  const both = run.cases.map(({ id }) => cases.some((one) => one.id === id));
  const lost = run.cases.flatMap(({ id }, i) => (both[i] ? [] : unanswered.filter((one) => one.id === id)));
  return {
    ...run,
    cases: run.cases.filter((_, i) => both[i]),
    outcomes: run.outcomes.filter((_, i) => both[i]),
    unanswered: [...run.unanswered, ...lost],
  };
}

function madeBodies(input: ReviewInput): CaseBodies {
  const [fine, coarse] = [meshedBodies(input, meshes.fine), meshedBodies(input, meshes.coarse)];
  const kept = memoize((bodies: JoinedBodies, section: string) =>
    sectionPowers(
      bodies,
      bodies.model.bodies.findIndex(({ name }) => name === section),
    ),
  );
  return { fine, coarse, powers: (section) => kept(coarse.bodies, section) };
}

/**
 * The runs of a case.
 *
 * @throws Refusal that says why there are none
 */
export function runsOf(box: CaseBox): CaseRuns {
  if ("refused" in box) throw new Refusal(box.refused);
  return box.runs;
}

function meshedBodies(input: ReviewInput, elements: number): MeshedBodies {
  const bodies = joinedBodies(input, elements);
  return { bodies, sections: sectionsOf(bodies) };
}

function caseRun(input: ReviewInput, { bodies, sections }: MeshedBodies): CaseRun {
  const system = caseSystem(input, bodies);
  const { cases, unanswered } = loadedCases(system);
  const told = cases.map((loaded) => ({ loaded, ...outcomeOf(loaded) }));
  const answered = told.flatMap(({ loaded, outcome }) => (outcome ? [{ loaded, outcome }] : []));
  return {
    system,
    cases: answered.map(({ loaded }) => loaded),
    outcomes: answered.map(({ outcome }) => outcome),
    unanswered: [...unanswered, ...told.flatMap(({ refused }) => refused ?? [])],
    sections,
  };
}

function outcomeOf(
  loaded: LoadedCase,
):
  | { readonly outcome: CaseOutcome; readonly refused?: never }
  | { readonly outcome?: never; readonly refused: UnansweredCase } {
  try {
    return { outcome: caseOutcome(loaded) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { id, title } = loaded;
    return { refused: { id, title, why: error.message, givesWay: false } };
  }
}

function sectionsOf(system: JoinedBodies): readonly SectionAnswer[] {
  return sectionNumbers(system.model).map((number) => {
    try {
      return sectionStiffness(system, number);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return { section: at(system.model.bodies, number).name, refused: error.message };
    }
  });
}

/**
 * One section of several by itself.
 *
 * @throws Refusal that says why it has no answer
 */
export function sectionNamed(sections: readonly SectionAnswer[], name: string): SectionStiffness {
  const found = sections.find(({ section }) => section === name);
  if (!found) throw new Refusal(`box: no section "${name}"`);
  if ("refused" in found) throw new Refusal(found.refused);
  return found;
}

/** A value with its doubt. */
export interface MeshedValue {
  /** On the finer mesh, in its own SI unit. */
  readonly value: number;
  /** Change from the coarser mesh, as a share. */
  readonly meshError: Ratio;
}

/**
 * A value read from both meshes.
 *
 * @param of reads it from one run
 */
export function onBothMeshes({ fine, coarse }: CaseRuns, of: (run: CaseRun) => number): MeshedValue {
  const value = of(fine);
  return { value, meshError: meshChange(value, of(coarse)) };
}

/**
 * What the scatter of the builder's bend tests does to a ratio that goes with a value; undefined without tests.
 *
 * @param input the case
 * @param ratio demand over capacity
 * @param powers with which it follows the moduli
 */
export function moduliInterval(
  input: ReviewInput,
  ratio: number,
  powers: ModuliShares,
): RatioInterval | undefined {
  const uncertainties = moduliUncertainties(input);
  if (Object.keys(uncertainties).length === 0) return undefined;
  const of = ({ along, across }: Record<keyof ModuliShares, Ratio>): Ratio =>
    Ratio.si(ratio * along ** powers.along * across ** powers.across);
  const { interval, shares } = propagate(of, { along: Ratio.si(1), across: Ratio.si(1) }, uncertainties);
  return {
    ...interval,
    shares: shares.map(({ input: name, share }) => ({ input: `modulus ${name} the grain`, share })),
  };
}

/** Of the sheet that most of the case's faces are of, as shares of its moduli. */
function moduliUncertainties({
  parts,
  measurements,
}: ReviewInput): Uncertainties<Record<keyof ModuliShares, Ratio>> {
  const areas = new Map<string, number>();
  for (const { sheet, grossArea } of parts.panels)
    areas.set(sheet.name, (areas.get(sheet.name) ?? 0) + grossArea);
  const [most] = [...areas].sort((a, b) => b[1] - a[1]);
  const sheet = parts.panels.find((panel) => panel.sheet.name === most?.[0])?.sheet;
  if (!sheet) return {};
  const moduli = sheetModuli(sheet, measurements);
  return Object.fromEntries(
    (["along", "across"] as const).flatMap((way) => {
      const { modulus, uncertainty } = moduli[way];
      return uncertainty ? [[way, { ...uncertainty, standard: uncertainty.standard / modulus }]] : [];
    }),
  );
}

/** Sag of a panel that its neighbours hold. */
export interface LockedSag {
  /** On the finer mesh. */
  readonly sag: Length;
  /** Change from the coarser mesh, as a share. */
  readonly meshError: Ratio;
}

/**
 * Sag of a face under a pressure on its material, measured from its own corners, while its neighbours hold its edges
 * and its section stands on its four lower corners.
 *
 * @param runs of the case
 * @param panel one of its sections' faces
 * @param pressure on what is left of it
 * @throws RangeError for a panel that is no face
 */
export function lockedSag(runs: CaseRuns, panel: PanelPart, pressure: Pressure): LockedSag {
  if (!panel.face) throw new RangeError(`box: ${panel.id} is no face`);
  const [name] = boxFaces[panel.face];
  const { value, meshError } = onBothMeshes(runs, (run) => sagOn(run, panel, name, pressure));
  return { sag: Length.si(value), meshError };
}

const everywhere = { left: -1, bottom: -1, width: 1e3, height: 1e3 };

function sagOn({ system }: CaseRun, panel: PanelPart, name: FaceName, pressure: Pressure): number {
  const number = system.model.bodies.findIndex((body) => body.name === panel.section);
  const section = subsystem(system, [number], ({ kind }) => kind === "stand");
  const force = pressure * (panel.clearWidth * panel.clearHeight - cutFromSpan(panel));
  return force * sagOfOne(section, name);
}

/** Sag of a face of a section on its feet under 1 N spread over it: its feet push and pull, so all sags are in proportion. */
function sagOfOne(section: Subsystem, name: FaceName): number {
  const part = at(section.parts, 0);
  const known = unitSags.get(part.structure) ?? new Map<FaceName, number>();
  // The first face that is asked for is worked out together with all others.
  if (known.size === 0)
    prepareMoves(
      part,
      part.structure.faces.map((face) => unitPressure(part.structure, face.name)),
    );
  unitSags.set(part.structure, known);
  const found = known.get(name) ?? unitSag(section, part.structure, name);
  known.set(name, found);
  return found;
}

const unitSags = new WeakMap<BoxStructure, Map<FaceName, number>>();

function unitSag(section: Subsystem, structure: BoxStructure, name: FaceName): number {
  const displacement = at(movedJoined(section, [unitPressure(structure, name)]).displacements, 0);
  return sagBetweenCorners({ structure, displacement }, name);
}

/** 1 N spread over a face, across it. */
function unitPressure(structure: BoxStructure, name: FaceName): Float64Array {
  const load = new Float64Array(spaceDofs * structure.nodes.length);
  const { nodes, shares } = overPatch(structure, name, everywhere);
  nodes.forEach((node, i) => {
    add(load, spaceDofs * node + frames[name].axes[2], at(shares, i));
  });
  return load;
}

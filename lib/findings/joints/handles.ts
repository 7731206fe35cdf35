/** Whether handles and latches, and what fastens them, hold a load along their panel. */
import type { Fastening, HardwarePart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type BalanceLine,
  endShares,
  type FastenedHardware,
  fastenerStrength,
  fasteningsOf,
  hardwareStrength,
  liftedByEnds,
  liftHandles,
  type ReviewInput,
  sectionBalance,
  sectionsWithHandles,
  useAlongPanel,
} from "../../model/index.js";
import { handleForce, pairShares, sidewaysPull } from "../../moving/index.js";
import { type Angle, degree, Force, Mass, Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { type Citation, cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { handleCaution, joinedCaution } from "../cautions.js";
import type { Figure } from "../figures/figure.js";
import { heldStack } from "../figures/stack-figures.js";
import type { Amount } from "../finding.js";
import { type Answer, type Need, type Question, question } from "../question.js";
import { each, mostOf, theOne, where } from "../subjects.js";

/** What holds a load along the panel, piece by piece: itself, its fasteners, one of them in shear. */
function fastened<Subject>(partOf: (input: ReviewInput, subject: Subject) => HardwarePart) {
  const fasteningOf = (part: HardwarePart, input: ReviewInput): Fastening | MissingMeasurement =>
    fasteningsOf(part, input)[0] ?? {
      measure: `what fastens ${part.stock.name}`,
      how: "name its fastener in hardware.csv",
    };
  return {
    own: { find: (input, subject) => hardwareStrength(partOf(input, subject), input) },
    fastening: { find: (input, subject) => fasteningOf(partOf(input, subject), input) },
    each: {
      find: (input, subject) => {
        const fastening = fasteningOf(partOf(input, subject), input);
        return "measure" in fastening ? fastening : fastenerStrength(fastening, "shear", input);
      },
    },
  } satisfies Readonly<Record<string, Need<Subject, unknown>>>;
}

/** A load on a piece of hardware, and what is said of it. */
interface Loaded {
  /** On one piece. */
  readonly force: Force;
  /** How the force was worked out. */
  readonly because: readonly WorkedLine[];
  /** The force in words: "on one handle". */
  readonly on: string;
  /** The first half of the sentence. */
  readonly facts: string;
  /** The piece and its fasteners in words. */
  readonly names: readonly [itself: string, fasteners: string];
  /** What sets the limit, then what else it rests on. */
  readonly source: readonly [Citation, Citation];
}

function alongPanel(input: ReviewInput, hardware: FastenedHardware, loaded: Loaded): Answer {
  const { force, because, on, facts, names, source } = loaded;
  const { used, limit, interval, ...use } = useAlongPanel(hardware, force, input.case.demands.safetyFactor);
  const [itself, fasteners] = names;
  const one = limit === "itself";
  return {
    demand: amount(Force, on, force),
    capacity: amount(Force, `${one ? itself : fasteners} allow${one ? "s" : ""}`, Force.si(force / used)),
    facts: `${facts}; ${one ? `${itself} sets` : `${fasteners} set`} the limit at ${Ratio.show(used, { unit: "%", digits: 2 })}.`,
    interval,
    because: [...because, ...use.because],
    limit: source[0],
    sources: [source[1]],
  };
}

function handleOf(input: ReviewInput, section: string): HardwarePart {
  return theOne(liftHandles(input, section), () => true, `handle on ${section}`);
}

const handleNeeds = fastened(handleOf);

function handled(
  input: ReviewInput,
  section: string,
  given: Omit<FastenedHardware, "part">,
  { force, because }: Pick<Loaded, "force" | "because">,
): Answer {
  const part = handleOf(input, section);
  return alongPanel(
    input,
    { part, ...given },
    {
      force,
      because,
      on: "on one handle",
      facts: `A handle must take ${Force.show(force, styleOf(input.case))}`,
      names: ["the handle itself", "its rivets"],
      source: [
        cite("common-practice", "one handle carries all for a moment"),
        cite("machine-design", "8-12"),
      ],
    },
  );
}

/** Whether the handles of each section and their rivets hold a jerk, carried by both ends. */
export const handles: Question = question({
  id: "joints.handles",
  about: each(
    (input) => sectionsWithHandles(input).filter((section) => liftedByEnds(input, section)),
    (section) => section,
    (section) => `handles of ${section}`,
  ),
  ask: (section) => `Do the handles of ${section} and their rivets hold a jerk?`,
  tier: "safety",
  cautions: [handleCaution],
  needs: handleNeeds,
  answer: (input, given, section) => {
    const { force, because } = jerkOnOne(input, section);
    return handled(input, section, given, { force, because });
  },
  figure: (input, section, { demand }) => handleStack(input, section, demand),
});

/** The picture of a fastener of a section's handles. */
function handleStack(input: ReviewInput, section: string, demand: Amount | undefined): Figure {
  const held = liftHandles(input, section).flatMap((handle) => fasteningsOf(handle, input));
  return heldStack(input, held, "shear", demand);
}

/** What a jerk puts on one handle of the heavier end. */
function jerkOnOne(input: ReviewInput, section: string): Pick<Loaded, "force" | "because"> {
  const balance = sectionBalance(input, section);
  const shares = pairShares.worked(endShares(input, section, balance, balance.value.mass));
  const line = handleForce.worked({
    mass: Mass.si(Math.max(shares.value.first, shares.value.second)),
    // Handles are placed alike at both ends.
    handles: Math.max(1, Math.floor(liftHandles(input, section).length / 2)),
    dynamicFactor: input.case.demands.dynamicFactor,
  });
  return { force: line.value, because: [balance, shares, line] };
}

/** Arms of two people who walk beside a case slant by so much; common practice, no source. */
export const armSlant: Angle = degree(30);

/** Whether the handles bear a pull along their panel that is sideways too, as when one of two walks ahead. */
export const sidewaysHandles: Question = question({
  id: "joints.handle-sideways",
  about: each(
    (input) => sectionsWithHandles(input).filter((section) => liftedByEnds(input, section)),
    (section) => section,
    (section) => `handles of ${section}, pulled sideways`,
  ),
  ask: (section) => `Do the handles of ${section} stay on when one of two walks ahead and pulls sideways?`,
  tier: "safety",
  cautions: [handleCaution],
  assumes: ["Arms slant by 30 degrees along the panel and pull at the middle of the handle."],
  needs: handleNeeds,
  answer: (input, given, section) => {
    const jerk = jerkOnOne(input, section);
    const line = sidewaysPull.worked({ along: jerk.force, slant: armSlant });
    const loaded = { force: line.value, because: [...jerk.because, line] };
    return {
      ...handled(input, section, given, loaded),
      remedies: [{ words: "Use a handle with more fasteners, or one handle on each side of the end." }],
      limit: cite("common-practice", "arms that slant by 30 degrees"),
      sources: [cite("statics", "components of a force"), cite("machine-design", "8-12")],
    };
  },
  figure: (input, section, { demand }) => handleStack(input, section, demand),
});

/** Whether one handle alone holds its whole section for a moment, when the other hand slips. */
export const loneHandles: Question = question({
  id: "joints.handle-alone",
  about: each(
    sectionsWithHandles,
    (section) => section,
    (section) => `one handle of ${section} alone`,
  ),
  ask: (section) => `Does one handle hold all of ${section} for a moment, when another hand slips?`,
  tier: "safety",
  cautions: [handleCaution],
  needs: handleNeeds,
  answer: (input, given, section) => {
    const balance = sectionBalance(input, section);
    const line = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor: ratio(1) });
    return handled(input, section, given, { force: line.value, because: [balance, line] });
  },
  figure: (input, section, { demand }) => handleStack(input, section, demand),
});

/** How much of a handle a section uses at one jerk. */
export interface JerkRow {
  /** The section's name. */
  readonly section: string;
  /** Times the load at rest. */
  readonly jerk: Ratio;
  /** Load over what handle and rivets allow. */
  readonly use: Ratio;
}

/** What a rougher lift does to the handles of each section; sections whose handles are not known are left out. */
export function jerkSweep(input: ReviewInput, jerks: readonly Ratio[]): readonly JerkRow[] {
  return jerks.flatMap((jerk) => {
    const demands = { ...input.case.demands, dynamicFactor: jerk };
    const findings = handles({ ...input, case: { ...input.case, demands } });
    return findings.flatMap(({ subject, ratio: use }) =>
      use === undefined ? [] : [{ section: subject.replace(/^handles of /, ""), jerk, use: Ratio.si(use) }],
    );
  });
}

/** The latches of one sort over one joint, and what hangs on them; keepers are hardware of their own, opposite. */
interface LatchedJoint {
  /** The latches. */
  readonly latches: readonly [HardwarePart, ...HardwarePart[]];
  /** Every section below the joint, with what is in it. */
  readonly below: readonly BalanceLine[];
  /** All of them together. */
  readonly mass: Mass;
}

/**
 * The joint whose latches of one sort carry most, lifted by the handles above.
 *
 * @throws Refusal where there is none
 */
function latchedJoint(input: ReviewInput, name: string): LatchedJoint {
  const latches = joiningLatches(input).filter(({ stock }) => stock.name === name);
  const joints = input.parts.sections.flatMap(({ name: section, outside }): LatchedJoint[] => {
    const [first, ...rest] = latches.filter((latch) => latch.section === section);
    if (!first) return [];
    const { low, size } = outside;
    const joint = first.centre.z < low.z + size.z / 2 ? low.z : low.z + size.z;
    const below = input.parts.sections
      .filter((one) => one.outside.low.z + one.outside.size.z / 2 < joint)
      .map((one) => sectionBalance(input, one.name));
    const mass = Mass.si(below.reduce((sum, { value }) => sum + value.mass, 0));
    return [{ latches: [first, ...rest], below, mass }];
  });
  return mostOf(joints, ({ mass, latches: { length } }) => mass / length, `there is no ${name}`);
}

function joiningLatches({ parts }: ReviewInput): readonly HardwarePart[] {
  return parts.hardware.filter(({ item, stock }) => item.duty === "join-sections" && stock.kind === "latch");
}

function latchOf(input: ReviewInput, name: string): HardwarePart {
  return latchedJoint(input, name).latches[0];
}

/** Whether the latches that join the sections carry the lower one when the case is lifted by the upper. */
export const latches: Question = question({
  id: "joints.latches",
  about: where(
    ({ parts }) => parts.sections.length > 1,
    each(
      (input) => [...new Set(joiningLatches(input).map(({ stock }) => stock.name))],
      (name) => name,
    ),
  ),
  ask: (name) => `Does each ${name} hold when somebody lifts the joined case by its upper handles?`,
  tier: "safety",
  cautions: [joinedCaution],
  needs: fastened(latchOf),
  answer: (input, given, name) => {
    const { latches: joined, below, mass } = latchedJoint(input, name);
    const { length } = joined;
    const hung = handleForce.worked({
      mass,
      handles: length,
      dynamicFactor: input.case.demands.dynamicFactor,
    });
    const style = styleOf(input.case);
    return alongPanel(
      input,
      { part: latchOf(input, name), ...given },
      {
        force: hung.value,
        because: [...below, hung],
        on: "on one latch",
        facts: `Each of ${length} must take ${Force.show(hung.value, style)}, with ${Mass.show(mass, style)} hanging and a jerk`,
        names: ["the latch itself", "its fasteners"],
        source: [cite("statics", "weight shared by the latches"), cite("machine-design", "8-12")],
      },
    );
  },
  figure: (input, name, { demand }) =>
    heldStack(input, fasteningsOf(latchOf(input, name), input), "shear", demand),
});

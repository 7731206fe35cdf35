/** What braking throws at a panel or a door: whether the sheet stands it, and whether latch and hinges do. */
import type { Content, HardwarePart, PanelPart } from "../../design/index.js";
import {
  hardwareStrength,
  type KnownStrength,
  latchesOf,
  type ReviewInput,
  sheetStrength,
  strikeOf,
  type ThrownContent,
  type ThrownStrike,
  thrownAt,
} from "../../model/index.js";
import { Force, Length, LineLoad, PlateMoment } from "../../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Figure } from "../figures/figure.js";
import { thrownFigure } from "../figures/thrown-figures.js";
import { type Compared, type Question, question } from "../question.js";
import { each, known, mostOf, sectionNames, unratedStrap } from "../subjects.js";
import { sheetAnswer, sheetAssumptions, type TriedLoad, worstOf } from "./sheet-answer.js";

const thrownCaution =
  "A crash throws many times harder than braking: hold heavy things by themselves, and let no panel be what holds them.";

/** A panel with what may be thrown at it. */
interface ThrownTarget {
  /** The panel. */
  readonly panel: PanelPart;
  /** What strikes it hardest. */
  readonly thrown: ThrownContent;
}

function targetsOf(input: ReviewInput): readonly ThrownTarget[] {
  return input.parts.panels.flatMap((panel) =>
    thrownAt(panel, input).map((thrown): ThrownTarget => ({ panel, thrown })),
  );
}

/** A section with the sides that something may be thrown at. */
interface ThrownSection {
  /** Its name. */
  readonly section: string;
  /** Its sides and doors. */
  readonly targets: readonly ThrownTarget[];
}

/** Whether the sides and doors of a section hold what braking throws at them. */
export const thrownThings: Question = question({
  id: "strength.thrown",
  about: each(
    (input): readonly ThrownSection[] => {
      const targets = targetsOf(input);
      return sectionNames(input)
        .map((section) => ({ section, targets: targets.filter(({ panel }) => panel.section === section) }))
        .filter((one) => one.targets.length > 0);
    },
    ({ section }) => section,
  ),
  ask: ({ section }) => `Do the sides of ${section} stop what is not held when the van brakes?`,
  tier: "safety",
  cautions: [thrownCaution],
  assumes: [
    ...sheetAssumptions,
    "Nothing but the panel stops the thing: it slides freely, does not tilt, is hard, and strikes where the panel gives most. Beyond a sag of its own thickness a panel is stiffer than counted.",
  ],
  answer: (input, _, { targets }) => {
    const struck = targets.map((target) => struckBy(input, target));
    const loose = struck.filter(({ target }) => !target.thrown.mayStay);
    const worstLoose = loose.length > 0 ? worstStruck(loose) : undefined;
    if (worstLoose && useOf(worstLoose) > 1) return worstLoose.answer;
    const worst = worstStruck(struck);
    if (useOf(worst) > 1) throw needsHold(worst.target.thrown.part.content);
    return worst.answer;
  },
  figure: (input, { targets }) =>
    struckFigure(input, worstStruck(targets.map((one) => struckBy(input, one))).target),
});

function struckFigure(input: ReviewInput, { panel, thrown }: ThrownTarget): Figure {
  const { force } = strikeOf(panel, thrown, input).struck.value;
  return thrownFigure(input, panel, thrown, Force.show(force, styleOf(input.case)));
}

function useOf({ answer: { demand, capacity } }: StruckTarget): number {
  return demand.value / capacity.value;
}

function worstStruck(struck: readonly StruckTarget[]): StruckTarget {
  return mostOf(struck, useOf, "nothing to throw");
}

/** Whether it slides at all decides. */
function needsHold({ name, held }: Content): Refusal {
  if (held.by === "strap") {
    const missing = unratedStrap(name);
    return new Refusal(`${name}: ${missing.measure} is not known`, missing);
  }
  return new Refusal(`${name}: whether it slides is not known`, {
    measure: `what holds the ${name} against sliding, for no side would stop it`,
    how: 'pull it sideways with a luggage scale until it slides and write "slides at" into its needs, or strap it down',
  });
}

/** A side that is struck, with its answer. */
interface StruckTarget {
  /** The side and what strikes it. */
  readonly target: ThrownTarget;
  /** What it comes to. */
  readonly answer: Compared;
}

/** @throws Refusal where the strength of its sheet is not known */
function struckBy(input: ReviewInput, target: ThrownTarget): StruckTarget {
  const { panel, thrown } = target;
  const strength = sheetStrength(panel.sheet, input.measurements);
  if ("measure" in strength) throw new Refusal(`${panel.id}: ${strength.measure} is not known`, strength);
  const sheet = { panel, strength };
  const strike = strikeOf(panel, thrown, input);
  const answer = sheetAnswer(input, sheet, worstOf(input, sheet, [triedOf(strike)]));
  return {
    target,
    answer: {
      ...answer,
      facts: `${answer.facts} ${strikeWords(input, target, strike)}`,
      remedies: [
        { words: "Strap or screw it down, leave it less room to slide, or put a batten behind the panel." },
      ],
      sources: [...(answer.sources ?? []), cite("en-12195", "table 2, 0.8 forward")],
    },
  };
}

/** The moments of a force of 1 N, for the force that it is. */
function triedOf({ unit: { moments }, struck, because }: ThrownStrike): TriedLoad {
  const { force } = struck.value;
  const scaled = {
    ...moments,
    alongX: PlateMoment.si(force * moments.alongX),
    alongY: PlateMoment.si(force * moments.alongY),
    twist: PlateMoment.si(force * moments.twist),
    edgeShear: LineLoad.si(force * moments.edgeShear),
  };
  return { what: "where it gives most", moments: scaled, because, duration: "instantaneous" };
}

function strikeWords(
  input: ReviewInput,
  { panel, thrown: { part, way } }: ThrownTarget,
  { struck }: ThrownStrike,
): string {
  const { force, gives } = struck.value;
  const style = styleOf(input.case);
  return `The ${part.content.name} slides ${Length.show(way, style)} and strikes ${panel.id} with ${Force.show(force, style)}, which gives ${Length.show(gives, style)}.`;
}

/** What holds a leaf, one of each kind. */
interface LeafHold {
  /** What it is. */
  readonly part: HardwarePart;
  /** How many there are. */
  readonly count: number;
  /** What one stands. */
  readonly own: KnownStrength;
}

function holdsOf(input: ReviewInput, panel: PanelPart): readonly LeafHold[] | MissingMeasurement {
  const hinges = input.parts.hardware.filter(
    ({ item, panels }) => item.duty === "hinge" && panels.includes(panel.id),
  );
  const holds: LeafHold[] = [];
  for (const parts of [latchesOf(panel, input), hinges]) {
    const [part] = parts;
    if (!part)
      return { measure: `what holds ${panel.id} shut`, how: "place its hinges and a latch in the case file" };
    const own = hardwareStrength(part, input);
    if ("measure" in own) return own;
    holds.push({ part, count: parts.length, own });
  }
  return holds;
}

/** Whether latch and hinges of a door hold what is thrown at it. */
export const thrownAtLatch: Question = question({
  id: "strength.latch",
  about: each(
    (input) => {
      const doors = targetsOf(input).filter(({ panel }) => panel.role === "leaf");
      return doors.filter(({ panel }, i) => doors.findIndex((one) => one.panel === panel) === i);
    },
    ({ panel }) => panel.id,
  ),
  ask: ({ panel, thrown: { part } }) =>
    `Do latch and hinges keep ${panel.id} shut when the ${part.content.name} is thrown at it?`,
  tier: "safety",
  cautions: [thrownCaution],
  assumes: ["All of the blow comes on the latches, or else on the hinges, wherever it strikes."],
  needs: { holds: known((input, { panel }: ThrownTarget) => holdsOf(input, panel)) },
  answer: (input, { holds }, { panel, thrown }) => {
    const strike = strikeOf(panel, thrown, input);
    const { force } = strike.struck.value;
    const used = ({ count, own }: LeafHold): number => force / count / own.strength;
    const [latch, hinge] = holds;
    const weaker = latch && hinge && used(hinge) > used(latch) ? hinge : latch;
    if (!weaker) throw new TypeError(`${panel.id}: nothing holds it`);
    const share = Force.si(force / weaker.count);
    if (thrown.mayStay && share > weaker.own.strength) throw needsHold(thrown.part.content);
    return {
      demand: amount(Force, `on each ${weaker.part.stock.name}`, share),
      capacity: amount(Force, "it stands", weaker.own.strength),
      facts: `A ${weaker.part.stock.name} bears ${Force.show(share, styleOf(input.case))} of the blow, and stands ${Force.show(weaker.own.strength, styleOf(input.case))}. ${strikeWords(input, { panel, thrown }, strike)}`,
      remedies: [{ words: "Strap the thing down, or give the door a bolt or a second latch." }],
      because: [...strike.because, ...weaker.own.because],
      limit: cite("common-practice", "the maker's rating, or own tests over the safety factor"),
      sources: [cite("en-12195", "table 2, 0.8 forward")],
    };
  },
  figure: struckFigure,
});

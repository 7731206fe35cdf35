/** What questions are asked of, and how what they need is found. */
import type {
  Content,
  ContentPart,
  Fastening,
  Journey,
  Lashing,
  LeftOut,
  PanelPart,
  ShelfPart,
} from "../design/index.js";
import {
  type CaseBox,
  castersOf,
  type FastenerStrength,
  fastenerStrength,
  type ReviewInput,
} from "../model/index.js";
import type { Mass } from "../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../refusal.js";
import type { Need, Said, Subjects } from "./question.js";

/** A case and the joined boxes that it is, worked out once for all who ask. */
export interface BoxedInput extends ReviewInput {
  /** The case as joined boxes, or why it cannot be worked out. */
  readonly box: () => CaseBox;
}

/** What the joined boxes take for granted, said with every finding made from them. */
export const boxAssumptions: readonly string[] = [
  "In the joined boxes panels meet at their middle planes, and extrusions run from corner to corner. Rivets slip as the timber code EN 1995 has it for metal on wood, screws as for wood on wood. Edges for which the case names nothing are rigid. Panes, inner fittings and what cuts less than 5 % of a face away are left out. Sections bear on each other along their walls, and only latches hold them sideways and up.",
];

/**
 * The things of a case that a question is asked of.
 *
 * @param list those of a case
 * @param id ends the finding's id
 * @param words the thing in a builder's words; its id unless said
 */
export function each<Subject>(
  list: (input: ReviewInput) => readonly Subject[],
  id: (subject: Subject) => string,
  words: Subjects<Subject>["words"] = id,
): Subjects<Subject> {
  return { each: list, id, words };
}

/** One subject a case, under a name. */
export function whole(words: string): Subjects<undefined> {
  return { each: () => [undefined], id: () => undefined, words: () => words };
}

/** The same subjects where a rule holds; where it does not, the question makes no sense and is not asked. */
export function where<Subject>(
  rule: (input: ReviewInput) => boolean,
  about: Subjects<Subject>,
): Subjects<Subject> {
  return { ...about, each: (input) => (rule(input) ? about.each(input) : []) };
}

/** Whether the case file says something of a block that it can do without. */
export function says(block: LeftOut): (input: ReviewInput) => boolean {
  return ({ case: { leftOut } }) => !leftOut.includes(block);
}

/** The whole case: sections standing on each other, or the only one. */
export function caseWords({ parts }: ReviewInput): string {
  return parts.sections.length > 1 ? "stacked case" : "case";
}

/** The sections standing on each other, or the only one. */
export const stackedCase: Subjects<undefined> = {
  ...whole("stacked case"),
  words: (_, input) => caseWords(input),
};

/** The same where somebody moves it. */
export const movedCase: Subjects<undefined> = where(says("journey"), stackedCase);

/** The same where it rolls. */
export const rolledCase: Subjects<undefined> = where((input) => castersOf(input).length > 0, movedCase);

/** Every section, by name. */
export const eachSection: Subjects<string> = each(sectionNames, (section) => section);

/** Every shelf and platform. */
export const eachShelf: Subjects<ShelfPart> = each(
  ({ parts }) => parts.shelves,
  ({ shelf }) => shelf.name,
);

/** A top with what stands on it in storage. */
export interface StoredTop {
  /** The top. */
  readonly panel: PanelPart;
  /** What stands on it. */
  readonly mass: Mass;
}

/** Every top, where the case file says what stands on it in storage. */
export const storedTops: Subjects<StoredTop> = each(
  ({ parts, case: { demands } }): readonly StoredTop[] => {
    const { storedUnder: mass } = demands;
    if (!mass) return [];
    return parts.panels
      .filter(({ role, face }) => role === "face" && face === "top")
      .map((panel) => ({ panel, mass }));
  },
  ({ panel }) => panel.id,
);

/** Everything inside that a rule chooses, as the case file has it. */
export function eachContent(chosen: (content: Content) => boolean): Subjects<Content> {
  return each(
    (input) => input.case.contents.filter(chosen),
    ({ name }) => name,
  );
}

/** Everything inside that a rule chooses, in its place. */
export function eachContentPart(chosen: (content: Content) => boolean): Subjects<ContentPart> {
  return each(
    ({ parts }) => parts.contents.filter(({ content }) => chosen(content)),
    ({ content }) => content.name,
  );
}

/** The names of the sections. */
export function sectionNames({ parts }: ReviewInput): readonly string[] {
  return parts.sections.map(({ name }) => name);
}

/** What can be found out of a case, or else the measurement that would tell it. */
export function known<Subject, T>(
  find: (input: ReviewInput, subject: Subject) => T | MissingMeasurement,
): Need<Subject, T> {
  return { find };
}

/**
 * A value that somebody must have measured.
 *
 * @param get the value, where it was
 * @param measure what to measure
 * @param how to measure it, and where to write it
 */
export function measured<T, Subject = unknown>(
  get: (input: ReviewInput, subject: Subject) => T | undefined,
  measure: Said<Subject>,
  how: string,
): Need<Subject, T> {
  return {
    find: (input, subject) =>
      get(input, subject) ?? {
        measure: measure instanceof Function ? measure(subject, input) : measure,
        how,
      },
  };
}

/** How something is written in a file of each unit system. */
export interface Example {
  /** In a case shown in inches. */
  readonly inch: string;
  /** In a metric case. */
  readonly metric: string;
}

/** A value of the journey, and how it is written there: `"gust: 25 mph"`, or `"gust: 40 km/h"`. */
export function ofJourney<T>(
  get: (journey: Journey) => T | undefined,
  measure: string,
  example: string | Example,
): Need<unknown, T> {
  return {
    find: ({ case: { journey, units } }) =>
      get(journey) ?? {
        measure,
        how: `measure it and write it into the journey as ${typeof example === "string" ? example : example[units]}`,
      },
  };
}

/** The straps of the journey. */
export const strapsGiven: Need<unknown, Lashing> = measured(
  ({ case: { journey } }) => journey.lashing,
  "the straps, their angle and the friction on the vehicle's floor",
  "read STF (its standard tension) on the label of a strap, and count the straps. Pull the empty case with a scale for its friction, and write all of it into the journey as the block lashing",
);

/** What fastens a thing that nobody fastened. */
const noFasteners: MissingMeasurement = {
  measure: "its fasteners",
  how: "name them in the case file",
};

/** The fasteners that hold a shelf, a content, a piece of hardware or a second hold, by its name or id. */
export function groupsHolding({ parts }: ReviewInput, name: string): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === name);
}

/** How many fasteners there are in some groups. */
export function countOf(groups: readonly Fastening[]): number {
  return groups.reduce((sum, { count }) => sum + count, 0);
}

/** What one fastener that holds a thing stands, or what is missing to know it. */
export function strengthOf(
  input: ReviewInput,
  name: string,
  direction: "pull" | "shear",
): FastenerStrength | MissingMeasurement {
  const [first] = groupsHolding(input, name);
  return first ? fastenerStrength(first, direction, input) : noFasteners;
}

/**
 * The one of a list that has most of something; of equals the first.
 *
 * @throws Refusal for an empty list, with what there is none of
 */
export function mostOf<T>(list: readonly T[], of: (one: T) => number, none: string): T {
  const [first, ...rest] = list;
  if (first === undefined) throw new Refusal(none);
  return rest.reduce((most, one) => (of(one) > of(most) ? one : most), first);
}

/**
 * The one of a list that a rule chooses.
 *
 * @throws Refusal where there is none, with what it is
 */
export function theOne<T>(list: readonly T[], chosen: (one: T) => boolean, what: string): T {
  const found = list.find(chosen);
  if (found === undefined) throw new Refusal(`there is no ${what}`);
  return found;
}

/** What a strap needs before it counts: nobody said what it stands. */
export function unratedStrap(name: string): MissingMeasurement {
  return {
    measure: `what one strap of the ${name} and its anchors stand`,
    how: 'read the working load off the strap and its anchors, take the lower, and write "rated" into its block held',
  };
}

/** The order in which a case is built: found by search, or the needs that no order meets. */
import {
  brokenNeeds,
  findOrder,
  goesThrough,
  hasOrder,
  type OrderNeed,
  type WorkOrder,
  widened,
} from "../../assembly/index.js";
import { accessOf, type Fastening, lastPanel, type Parts } from "../../design/index.js";
import { memoizeLast } from "../../kept/index.js";
import type { FastenerReach, FastenerWay, ReviewInput, ThingPutIn, WayIn } from "../../model/index.js";
import { gluedOn, reachOf, sectionNeeds, sharedNeeds } from "./section-needs.js";
import {
  closers,
  groupStep,
  keyOf,
  partSteps,
  type SectionChoice,
  type StepOfPart,
  sectionSteps,
  shared,
  sharedSteps,
} from "./section-steps.js";
import type { WorkStep } from "./work-step.js";

/** The order of building a case, and what it rests on. */
export interface CaseOrder {
  /** The steps in their order, or the needs that no order meets. */
  readonly order: WorkOrder<WorkStep>;
  /** Every need. */
  readonly needs: readonly OrderNeed[];
  /** Needs that the order breaks: none, if it was found. */
  readonly broken: readonly OrderNeed[];
  /** How each section is put together. */
  readonly choices: ReadonlyMap<string, SectionChoice>;
  /** The step that puts a part in its place, seen from a section: parts of others are there once it is stacked. */
  readonly stepSeenFrom: (section: string) => StepOfPart;
}

/** Finds the order. The panel that closes a section is the usual one, or else the first with which an order is found. */
export const caseOrder: (input: ReviewInput) => CaseOrder = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  ({ case: build, measurements }) => [build.journey, build.leftOut, measurements.tools],
  newCaseOrder,
);

function newCaseOrder(input: ReviewInput): CaseOrder {
  const { parts } = input;
  const choices = new Map(parts.sections.map(({ name }) => [name, chosen(name, input)]));
  return orderWith(choices, input);
}

/**
 * The first way to put a section together with which there is an order, with all that is glued put on flat before any
 * other; the usual one where there is none.
 */
function chosen(section: string, input: ReviewInput): SectionChoice {
  const last = closers(section, lastPanel(section, accessOf(section, input.parts)), input.parts);
  const ways: readonly Omit<SectionChoice, "gluedFlat">[] =
    last.length === 0
      ? [{ onBench: false }]
      : last.flatMap((panel) => [
          { last: panel, onBench: false },
          { last: panel, onBench: true },
        ]);
  const tried = (gluedOn(section, input.parts).length > 0 ? [true, false] : [false]).flatMap((gluedFlat) =>
    ways.map((way) => ({ ...way, gluedFlat })),
  );
  const found = tried.find((choice) => {
    const { steps, needs } = workWith(new Map([[section, choice]]), input);
    return hasOrder(steps, needs);
  });
  return found ?? tried.at(-ways.length) ?? { onBench: false, gluedFlat: false };
}

/** The order of the sections that are chosen for. */
function orderWith(choices: ReadonlyMap<string, SectionChoice>, input: ReviewInput): CaseOrder {
  const { steps, needs, stepSeenFrom } = workWith(choices, input);
  const order = findOrder(steps, needs);
  const keys = order.kind === "found" ? order.steps.map(({ key }) => key) : undefined;
  return { order, needs, broken: keys ? brokenNeeds(keys, needs) : [], choices, stepSeenFrom };
}

/** Steps and needs of the sections that are chosen for. */
function workWith(choices: ReadonlyMap<string, SectionChoice>, input: ReviewInput) {
  const { parts } = input;
  const common = sharedSteps(parts);
  const steps = [...common, ...[...choices].flatMap(([name, choice]) => sectionSteps(name, choice, parts))];
  const keys = new Set(steps.map(({ key }) => key));
  const stepOf = stepFinder(choices, input);
  const own = partSections(input);
  const stepSeenFrom =
    (section: string): StepOfPart =>
    (part) =>
      (own.get(part) ?? section) === section ? stepOf(part) : shared.stack;
  const needs = [
    ...sharedNeeds(common.map(({ key }) => key)),
    ...[...choices].flatMap(([name, choice]) => sectionNeeds(name, choice, stepSeenFrom(name), input)),
  ].map((need) => onlySteps(need, keys));
  return { steps, needs, stepSeenFrom };
}

/** Steps of sections that are not looked at are left out of a need. */
function onlySteps(need: OrderNeed, keys: ReadonlySet<string>): OrderNeed {
  return { ...need, before: need.before.map((list) => list.filter((key) => keys.has(key))) };
}

function stepFinder(choices: ReadonlyMap<string, SectionChoice>, { parts }: ReviewInput): StepOfPart {
  const of = new Map([...choices].flatMap(([name, choice]) => [...partSteps(name, choice, parts)]));
  const groups = parts.fastenings.map((group) => {
    const section = parts.panels.find(({ id }) => id === group.panel)?.section;
    return { group, choice: section === undefined ? undefined : choices.get(section) };
  });
  const steps = new Map(
    groups.flatMap(({ group, choice }) =>
      choice ? [[group.id, standingStep(group, choice, parts)] as const] : [],
    ),
  );
  const known = new Map<string, string | undefined>();
  return (part) => {
    if (!known.has(part)) known.set(part, of.get(part) ?? steps.get(part.replace(/ \d+$/, "")));
    return known.get(part);
  };
}

/** The step with which fasteners stand in the section: those of a stiffener on the panel that closes it come with that. */
function standingStep(group: Fastening, choice: SectionChoice, parts: Parts): string {
  const { why, holds, panel } = group;
  const stiffener = why === "stiffener" ? parts.stiffeners.find(({ id }) => id === holds) : undefined;
  return stiffener && panel === choice.last
    ? keyOf.close(stiffener.section)
    : groupStep(group, choice, parts);
}

const partSections = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  () => [],
  ({ parts }) =>
    new Map([
      ...[
        ...parts.panels,
        ...parts.bars,
        ...parts.hardware,
        ...parts.panes,
        ...parts.stiffeners,
        ...parts.strips,
      ].map(({ id, section }) => [id, section] as const),
      ...parts.panels.flatMap(({ id, section }) => [
        [`outside laminate of ${id}`, section] as const,
        [`inside laminate of ${id}`, section] as const,
      ]),
      ...parts.shelves.map(({ shelf, panel }) => [panel.id, shelf.section] as const),
      ...parts.drawers.flatMap(({ drawer, panels }) => panels.map(({ id }) => [id, drawer.section] as const)),
      ...parts.contents.map(({ content }) => [content.name, content.section] as const),
      ...parts.fastenings.flatMap(({ id, panel, count }) => {
        const section = parts.panels.find((one) => one.id === panel)?.section;
        return section === undefined
          ? []
          : Array.from({ length: count }, (_, i) => [`${id} ${i + 1}`, section] as const);
      }),
    ]),
);

/** Whether steps are all later than another in an order. */
function isFree(
  step: string,
  later: readonly string[],
  section: string,
  { order, stepSeenFrom }: CaseOrder,
): boolean {
  const stepOf = stepSeenFrom(section);
  if (order.kind !== "found") return false;
  const at = (key: string): number => order.steps.findIndex((one) => one.key === key);
  return later.every((part) => {
    const key = stepOf(part);
    return key === undefined || key === step || at(step) < at(key);
  });
}

/** The way in that a thing takes in the order; undefined where there is no order, or no way. */
export function wayTaken({ id, section, ways }: ThingPutIn, found: CaseOrder): WayIn | undefined {
  const step = found.stepSeenFrom(section)(id);
  return step === undefined ? undefined : ways.find(({ later }) => isFree(step, later, section, found));
}

/** The way of the hand to a fastener in the order. */
export function handTaken(
  { group, section, ways }: FastenerReach,
  found: CaseOrder,
  { parts }: ReviewInput,
): FastenerWay | undefined {
  const choice = found.choices.get(section);
  const step = choice && groupStep(group, choice, parts);
  return step === undefined ? undefined : ways.find(({ later }) => isFree(step, later, section, found));
}

/** Fasteners that no hand reaches, whatever the order. */
export function outOfReach(section: string, input: ReviewInput): readonly FastenerReach[] {
  return reachOf(section, input).filter(({ handInside, ways }) => handInside && ways.length === 0);
}

/** The opening of its section that a thing would pass if it were the least wider, and by how much all round. */
export function leastOpening(
  { section, size }: ThingPutIn,
  { parts }: ReviewInput,
): { readonly panel: string; readonly name: string; readonly wider: number } | undefined {
  const openings = parts.panels
    .filter((panel) => panel.section === section && panel.role === "face")
    .flatMap(({ id, openings: own }) => own.filter(({ why }) => why === "case").map((one) => ({ id, one })));
  return openings.reduce<ReturnType<typeof leastOpening>>((least, { id, one }) => {
    // What is not enough of the best so far is not asked how much more it would take.
    if (least && !goesThrough(size, one.outline, least.wider)) return least;
    const wider = widened(size, one.outline);
    return !least || wider < least.wider ? { panel: id, name: one.name, wider } : least;
  }, undefined);
}

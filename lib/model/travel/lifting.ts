/** Lifting a section: its handles, the places of the people, and the limit of the journey's lift. */
import { at } from "../../algebra/lists.js";
import type { HardwarePart, Journey } from "../../design/index.js";
import {
  judgeLift,
  type Lift,
  type LiftDuration,
  type Lifter,
  LiftRate,
  type LiftVerdict,
  type LoadBetweenTwo,
  type TeamLoad,
  teamShares,
} from "../../moving/index.js";
import { degree, hour, Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { BalanceLine } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";

/** The handles a section is lifted by. */
export function liftHandles({ parts }: ReviewInput, section: string): readonly HardwarePart[] {
  return parts.hardware.filter((part) => part.section === section && part.item.duty === "lift");
}

/** The sections that have any. */
export function sectionsWithHandles(input: ReviewInput): readonly string[] {
  return input.parts.sections
    .map(({ name }) => name)
    .filter((section) => liftHandles(input, section).length > 0);
}

/** The two ends of a section that has handles at both. */
export interface HandleLine {
  /** The direction from one end to the other. */
  readonly axis: "x" | "y";
  /** Of the first end: left, or front. */
  readonly from: Length;
  /** From the first end to the second: right, or back. */
  readonly span: Length;
  /** Of the handles, on average. */
  readonly height: Length;
}

/**
 * From the handles at one end of a section to those at the other, left to right or front to back.
 *
 * @throws Refusal where there is no handle at each end
 */
export function handleLine(input: ReviewInput, section: string): HandleLine {
  const centres = liftHandles(input, section).map(({ centre }) => centre);
  const reach = (axis: "x" | "y"): number => {
    const places = centres.map((centre) => centre[axis]);
    return Math.max(...places) - Math.min(...places);
  };
  const axis = reach("x") >= reach("y") ? "x" : "y";
  const span = reach(axis);
  if (!(span > 0)) {
    throw new Refusal(`${section} needs a handle at each end to be lifted by more than one person`, {
      measure: `a handle at each end of ${section}`,
      how: 'place handles with "duty: lift" on two opposite sides of it in the block hardware',
    });
  }
  const height = centres.reduce((sum, { z }) => sum + z, 0) / centres.length;
  const from = Math.min(...centres.map((centre) => centre[axis]));
  return { axis, from: Length.si(from), span: Length.si(span), height: Length.si(height) };
}

/** Whether a section has handles at two ends. */
export function hasTwoEnds(input: ReviewInput, section: string): boolean {
  const centres = liftHandles(input, section).map(({ centre }) => centre);
  return centres.some(({ x, y }) => centres.some((other) => other.x !== x || other.y !== y));
}

/** Whether a section is lifted at two ends: by several people always, by one where it has a handle at each. */
export function liftedByEnds(input: ReviewInput, section: string): boolean {
  return input.case.journey.people > 1 || hasTwoEnds(input, section);
}

/** Which way the two ends of a section lie: left to right, or front to back. */
export function liftAxis(input: ReviewInput, section: string): "x" | "y" {
  return handleLine(input, section).axis;
}

/** A handle this near to the middle between two ends is at neither, m. */
const middling = 1e-6;

/** The handles at the first end of a section (left, or front) and at the second; one midway between them is at neither. */
export function handlesByEnd(
  input: ReviewInput,
  section: string,
): readonly [readonly HardwarePart[], readonly HardwarePart[]] {
  const { axis, from, span } = handleLine(input, section);
  const handles = liftHandles(input, section);
  const pastMiddle = ({ centre }: HardwarePart): number => centre[axis] - (from + span / 2);
  return [
    handles.filter((handle) => pastMiddle(handle) < -middling),
    handles.filter((handle) => pastMiddle(handle) > middling),
  ];
}

/** How a section's weight lies between its two ends. */
export function endShares(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  mass: Mass,
): LoadBetweenTwo {
  const line = handleLine(input, section);
  return {
    mass,
    span: line.span,
    toCentre: Length.si(balance.value[line.axis] - line.from),
    rise: Length.si(balance.value.z - line.height),
    incline: degree(0),
  };
}

/**
 * A section and its team: half of the people at each end, the odd one at the heavier end; on the handles where there
 * are enough of them, else spread over the width of the end with hands under its edge.
 *
 * @throws Refusal where there is no handle at each end
 */
export function teamLoad(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  people: number,
): TeamLoad {
  const { axis, from, span } = handleLine(input, section);
  const firstIsHeavier = balance.value[axis] - from < span / 2;
  const half = Math.floor(people / 2);
  const [first, second] = firstIsHeavier ? [people - half, half] : [half, people - half];
  return {
    mass: balance.value.mass,
    people: [...endTeam(input, section, 0, first), ...endTeam(input, section, 1, second)],
    x: balance.value.x,
    y: balance.value.y,
  };
}

const endNames = { x: ["left end", "right end"], y: ["front end", "back end"] } as const;
const acrossNames = { x: ["front", "back"], y: ["left", "right"] } as const;

function endTeam(input: ReviewInput, section: string, end: 0 | 1, people: number): Lifter[] {
  const { axis, from, span } = handleLine(input, section);
  const across = axis === "x" ? "y" : "x";
  const along = Length.si(end === 0 ? from : from + span);
  return placesAcross(input, section, handlesByEnd(input, section)[end], people, across).map((place, i) => ({
    name: nameOf(endNames[axis][end], acrossNames[axis], i, people),
    x: axis === "x" ? along : place,
    y: axis === "y" ? along : place,
  }));
}

/** The middlemost handle of each person's part of them, the middle of two where two are, or evenly over the end's width. */
function placesAcross(
  { parts }: ReviewInput,
  section: string,
  handles: readonly HardwarePart[],
  people: number,
  across: "x" | "y",
): Length[] {
  const places = handles.map(({ centre }) => centre[across]).sort((a, b) => a - b);
  const box = parts.sections.find(({ name }) => name === section)?.outside;
  return Array.from({ length: people }, (_, i) => {
    const part = (i + 0.5) / people;
    if (people > places.length) return Length.si((box?.low[across] ?? 0) + part * (box?.size[across] ?? 0));
    const middle = part * places.length - 0.5;
    const [low, high] = [Math.ceil(middle - 0.5 - 1e-9), Math.floor(middle + 0.5 + 1e-9)];
    return Length.si((at(places, low) + at(places, high)) / 2);
  });
}

function nameOf(end: string, [low, high]: readonly [string, string], i: number, people: number): string {
  if (people === 1) return end;
  if (i === 0) return `${end}, ${low}`;
  return i === people - 1 ? `${end}, ${high}` : `${end}, ${people === 3 ? "middle" : `place ${i + 1}`}`;
}

/** The fewest people, up to four, of whom none carries more than a limit; nothing where four are not enough. */
export function enoughPeople(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  limit: Mass,
): number | undefined {
  return [2, 3, 4].find((people) => {
    try {
      return teamShares(teamLoad(input, section, balance, people)).greatest <= limit;
    } catch (error) {
      if (error instanceof Refusal) return false;
      throw error;
    }
  });
}

/** How each person of the journey lifts. */
export function liftOf({
  case: {
    journey: { liftFrom, liftTo, reach, liftsPerMinute, liftingTime, grip },
  },
}: ReviewInput): Lift {
  const hands = (height: Length) => ({ reach, height, twist: degree(0) });
  return {
    start: hands(liftFrom),
    end: hands(liftTo),
    rate: LiftRate.of(liftsPerMinute, "lifts/min"),
    duration: durationOf(liftingTime),
    grip,
  };
}

function durationOf(time: Journey["liftingTime"]): LiftDuration {
  if (time <= hour(1)) return "up to 1 h";
  return time <= hour(2) ? "1 to 2 h" : "2 to 8 h";
}

/** One person's share of a load against the limit of the journey's lift. */
export function judgeShare(input: ReviewInput, share: Mass): LiftVerdict {
  return judgeLift(share, liftOf(input));
}

/** The lower of the limits at the two ends of a judged lift. */
export function limitOf({ atStart, atEnd }: Pick<LiftVerdict, "atStart" | "atEnd">): Mass {
  return Mass.si(Math.min(atStart.value.limit, atEnd.value.limit));
}

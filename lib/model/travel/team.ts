/** Where the people of a team put their hands on a section. */
import type { HardwarePart } from "../../design/index.js";
import { type Lifter, type TeamLoad, teamShares } from "../../moving/index.js";
import { Length, type Mass } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import type { BalanceLine } from "./balance.js";
import { handleLine, handlesByEnd } from "./handles.js";

/**
 * A section and its team: half of the people at each end, the odd one at the heavier end; on the handles where there
 * are enough of them, else spread over the width of the end with hands under its edge.
 *
 * @throws RangeError where there is no handle at each end
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

/** The middlemost handle of each person's part of them, or evenly over the end's width. */
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
    const handle = people <= places.length ? places[Math.floor(part * places.length)] : undefined;
    return handle ?? Length.si((box?.low[across] ?? 0) + part * (box?.size[across] ?? 0));
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
      if (error instanceof RangeError) return false;
      throw error;
    }
  });
}

/** Mass in every state, shares of a lift, and the lean in every direction: rows for the outside notebook. */

import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  footprint,
  judgeShare,
  limitOf,
  type StateOfMass,
  sectionBalance,
  standingHeight,
  statesOfMass,
  teamLoad,
} from "../../model/index.js";
import { Inertia, teamShares, toppleDirections } from "../../moving/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Angle, Length, Mass, showNumber } from "../../quantity/index.js";
import { massUnit } from "./moving.js";

/** Every section and the stack: loaded, empty and with its lids and doors off. */
export function massStatesTable(job: Job): TableView {
  const style = styleOf(job.case);
  const above = (height: Length): Length => Length.si(height + standingHeight(job));
  const place = ({ centreHalf }: StateOfMass, axis: "x" | "y" | "z", value: Length): string =>
    give(Length.show(value, style), centreHalf && shortLength(centreHalf[axis], job.case.units));
  return tableOf(
    statesOfMass(job),
    [
      ...whatAndState,
      { heading: "Mass", cell: (row) => massWords(row, job.case.units) },
      { heading: "From the left", cell: (row) => place(row, "x", row.balance.value.x) },
      { heading: "From the front", cell: (row) => place(row, "y", row.balance.value.y) },
      { heading: "Above the floor, stacked", cell: (row) => place(row, "z", above(row.balance.value.z)) },
    ],
    "Mass and centre of gravity; ± is half of the 95 % interval that the weighed offcuts leave",
  );
}

/** Moments of inertia of the same, about the centre of gravity. */
export function inertiaTable(job: Job): TableView {
  const style = styleOf(job.case);
  const inertia = (value: Inertia): string => Inertia.show(value, style);
  return tableOf(
    statesOfMass(job),
    [
      ...whatAndState,
      { heading: "Nodding, front to back", cell: (row) => inertia(row.inertia.value.x) },
      { heading: "Rocking, side to side", cell: (row) => inertia(row.inertia.value.y) },
      { heading: "Turning on the floor", cell: (row) => inertia(row.inertia.value.z) },
    ],
    "How hard it is to start turning: moments of inertia about the centre of gravity",
  );
}

const whatAndState: readonly { readonly heading: string; cell(row: StateOfMass): string }[] = [
  { heading: "What", cell: ({ what }) => what },
  { heading: "State", cell: ({ state }) => state },
];

/** Too short for a rule's fractions: decimals. */
function shortLength(length: Length, units: "inch" | "metric"): string {
  const unit = units === "inch" ? "in" : "mm";
  return `${showNumber(Length.in(length, unit), 1)} ${unit}`;
}

function massWords({ balance, halfWidth }: StateOfMass, units: "inch" | "metric"): string {
  const unit = massUnit(units);
  const show = (mass: Mass, digits: number): string => Mass.show(mass, { unit, digits });
  return give(show(balance.value.mass, 3), halfWidth && show(halfWidth, 2));
}

/** A value and what it may be off by; the sign of the latter stays with its number. */
function give(value: string, half: string | undefined): string {
  return half === undefined ? value : `${value} ±\u00a0${half}`;
}

/** What one person carries of a section, in the case's own unit. */
export interface ShareRow {
  readonly who: string;
  readonly share: number;
}

/** Everyone who lifts a section that has handles at both ends; empty where one lifts alone. */
export function shareRows(job: Job): readonly ShareRow[] {
  const { people } = job.case.journey;
  const unit = massUnit(job.case.units);
  if (people < 2) return [];
  const isKnown = (id: string): boolean =>
    job.review.travel.some((finding) => finding.id === id && finding.verdict !== "unknown");
  return job.parts.sections.flatMap(({ name }) => {
    if (!isKnown(`travel.lift.${name}`)) return [];
    const load = teamLoad(job, name, sectionBalance(job, name), people);
    return teamShares(load).shares.map((share, i) => ({
      who: `${name}, ${load.people[i]?.name ?? ""}`,
      share: Number(Mass.in(share, unit).toPrecision(3)),
    }));
  });
}

/** What the lifting equation recommends for one person on this journey, in the case's own unit. */
export function recommendedShare(job: Job): number {
  return Mass.in(limitOf(judgeShare(job, Mass.si(1))), massUnit(job.case.units));
}

/** The lean at which the stack tips, one direction. */
export interface LeanRow {
  readonly towards: string;
  readonly lean: number;
}

/** Directions clockwise from the back, seen from above, a multiple of four; empty where it cannot stand. */
export function leanRows(job: Job, steps: number): readonly LeanRow[] {
  const tip = job.review.travel.find(({ id }) => id === "travel.tip");
  if (tip?.verdict === "unknown") return [];
  const directions = toppleDirections(footprint(job), steps);
  const words = ["back", "right", "front", "left"];
  return directions.map((_, i) => {
    const heading = (((steps / 4 - i) % steps) + steps) % steps;
    const lean = directions[heading]?.lean ?? Angle.si(0);
    return {
      towards: (i * 4) % steps === 0 ? (words[(i * 4) / steps] ?? "") : "",
      lean: Angle.in(lean, "deg"),
    };
  });
}

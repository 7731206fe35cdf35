/** Lifting, rolling, tipping, carrying and dropping the case: tables, chart rows and drawings. */
import { liftSweep, styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  type Balancing,
  balancing,
  type ContentMove,
  dropOf,
  footprint,
  handlingsOf,
  judgeShare,
  type LashingWay,
  lashingWays,
  liftAxis,
  limitOf,
  type MassGroup,
  type StateOfMass,
  sectionBalance,
  sideOf,
  standingHeight,
  statesOfMass,
  teamLoad,
} from "../../model/index.js";
import {
  type Handling,
  heaviestTransitCase,
  Inertia,
  teamShares,
  toppleDirections,
  transitDrop,
} from "../../moving/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Angle, Force, Length, Mass, Ratio, showNumber, standardGravity } from "../../quantity/index.js";
import { lengthUnit } from "./chart-units.js";
import { mostWanting, tallySentence } from "./tally.js";

/** What a section is made up of, in plain numbers. */
export interface MassPart {
  /** Name of the section. */
  readonly section: string;
  /** What weighs so much. */
  readonly group: string;
  /** In the case's own unit: lb or kg. */
  readonly mass: number;
}

/** Glue counts with the facing it holds, fasteners with the hardware: a bar of few parts is read at a glance. */
const groupWords: Readonly<Record<MassGroup, string>> = {
  panels: "panels",
  facings: "facings and glue",
  glue: "facings and glue",
  edges: "edges",
  hardware: "hardware and fasteners",
  fasteners: "hardware and fasteners",
  contents: "contents",
};

/** Mass of each section by what it is made of. */
export function massParts({ review: { masses }, case: { units } }: Job): readonly MassPart[] {
  const keys = [...new Set(masses.map(({ section, group }) => `${section}|${groupWords[group]}`))];
  return keys.map((key) => {
    const [section = "", group = ""] = key.split("|");
    const mine = masses.filter((item) => item.section === section && groupWords[item.group] === group);
    const mass = Mass.si(mine.reduce((sum, item) => sum + item.mass, 0));
    return { section, group, mass: Mass.in(mass, massUnit(units)) };
  });
}

/** The unit a case's masses are charted in. */
export function massUnit(units: "inch" | "metric"): "lb" | "kg" {
  return units === "inch" ? "lb" : "kg";
}

/** One point of the lift chart, in plain numbers. */
export interface LiftPoint {
  /** In the case's own unit: in or mm. */
  readonly from: number;
  /** Lifting index. */
  readonly index: number;
}

/** The heaviest thing of a section, moved from one end to the other: the ends are where the handles are. */
export interface HeaviestMoved {
  /** Name of the thing. */
  readonly content: string;
  /** The wall at the first end. */
  readonly wall: "left" | "front";
  /** From one end to the other. */
  readonly points: readonly LiftPoint[];
}

/** What moving the heaviest thing does to the lift; nothing where nothing rides, or no lift can be judged. */
export function heaviestMoved(job: Job, section: string, steps: number): HeaviestMoved | undefined {
  const inside = job.case.contents.filter((content) => content.section === section);
  const [heaviest] = [...inside].sort((a, b) => b.mass - a.mass);
  const lift = job.review.travel.find(({ id }) => id === `travel.lift.${section}`);
  if (!heaviest || lift?.verdict === "unknown" || job.case.journey.people < 2) return undefined;
  const unit = lengthUnit(job);
  const points = liftSweep(job, heaviest.name, steps).map(({ from, index }) => ({
    from: Length.in(from, unit),
    index,
  }));
  if (points.length === 0) return undefined;
  return { content: heaviest.name, wall: liftAxis(job, section) === "x" ? "left" : "front", points };
}

/** What holds and what does not, in one sentence. */
export function movingAnswer({ review: { travel } }: Job): string {
  return mostWanting(travel)
    ? tallySentence(travel)
    : "It can be lifted, rolled and stood by the people of the journey.";
}

interface Move extends ContentMove {
  /** Name of the section. */
  readonly section: string;
  /** How the section balances as drawn. */
  readonly balancing: Balancing;
}

/** Up to three rows a section; none where it has no handle at each end, or balances to a few millimetres. */
export function movesTable(job: Job): TableView {
  const style = styleOf(job.case);
  const show = (length: number): string => Length.show(Length.si(Math.abs(length)), style);
  const rows = job.parts.sections.flatMap(({ name }) => {
    const finding = job.review.travel.find(({ id }) => id === `travel.balance.${name}`);
    if (finding === undefined || finding.verdict === "unknown") return [];
    const found = balancing(job, name);
    return found.moves.map((move): Move => ({ ...move, section: name, balancing: found }));
  });
  return tableOf(
    rows,
    [
      { heading: "Section", cell: ({ section }) => section },
      {
        heading: "It balances off the middle by",
        cell: ({ balancing: { wanted, axis } }) => `${show(wanted)}, to the ${sideOf(axis, -wanted)}`,
      },
      { heading: "Move", cell: ({ name }) => name },
      {
        heading: "By",
        cell: ({ possible, balancing: { axis } }) => `${show(possible)} to the ${sideOf(axis, possible)}`,
      },
      {
        heading: "That is",
        cell: ({ possible, wanted }) =>
          Math.abs(possible) >= Math.abs(wanted) * (1 - 1e-9)
            ? "enough"
            : "part of the way, as far as the wall",
      },
    ],
    "Any one of these, where things between make way",
  );
}

interface Ride extends LashingWay {
  /** Name of the section. */
  readonly section: string;
}

/** A row a section and way; nothing where the journey has no straps. */
export function ridesTable(job: Job): TableView | undefined {
  const { lashing } = job.case.journey;
  if (!lashing) return undefined;
  const style = styleOf(job.case);
  const rows = job.parts.sections.flatMap(({ name }) =>
    lashingWays(job, name, lashing).map((way): Ride => ({ section: name, ...way })),
  );
  return tableOf(
    rows,
    [
      { heading: "Section", cell: ({ section }) => section },
      { heading: "The road pushes it", cell: ({ way }) => way },
      {
        heading: "Tension against sliding",
        cell: ({ slide }) => (slide ? Force.show(slide.value, style) : "it rolls"),
      },
      { heading: "Against tipping", cell: ({ tilt }) => Force.show(tilt.value, style) },
      { heading: "Straps", cell: ({ straps }) => (straps ? String(straps.value) : "lock its wheels first") },
      {
        heading: "Loose, it tips at",
        cell: ({ loose }) => `${Ratio.show(Ratio.si(loose.value / standardGravity), { digits: 2 })} g`,
      },
    ],
    `Straps of ${Force.show(lashing.tension, style)} at ${Angle.show(lashing.angle, { digits: 2 })} over each section, friction ${Ratio.show(lashing.friction)} under what does not roll; one strap at least, whatever friction holds`,
  );
}

interface Dropped {
  /** The section, or the fragile thing. */
  readonly what: string;
  /** With what is in it. */
  readonly mass: Mass;
  /** Its longest side. */
  readonly longest: Length;
}

/** Each section with what is in it, and each fragile thing by itself. */
function droppedThings(job: Job): readonly Dropped[] {
  const longest = ({ x, y, z }: { readonly x: Length; readonly y: Length; readonly z: Length }): Length =>
    Length.si(Math.max(x, y, z));
  const sections = job.parts.sections.map(({ name, outside }) => ({
    what: name,
    mass: sectionBalance(job, name).value.mass,
    longest: longest(outside.size),
  }));
  const fragile = job.case.contents
    .filter(({ needs }) => needs.fragility !== undefined)
    .map(({ name, mass, size }) => ({ what: `${name}, by itself`, mass, longest: longest(size) }));
  return [...sections, ...fragile];
}

/** Drop heights by mass and way of handling: three levels of own hands, a parcel, and a military yardstick. */
export function dropHeightsTable(job: Job): TableView {
  const style = styleOf(job.case);
  const by = (handling: Handling) => ({
    heading: handling[0]?.toUpperCase() + handling.slice(1),
    cell: ({ mass }: Dropped): string =>
      handlingsOf(mass).includes(handling) ? Length.show(dropOf(mass, handling).value, style) : "too heavy",
  });
  return tableOf(
    droppedThings(job),
    [
      { heading: "What", cell: ({ what }) => what },
      { heading: "Mass", cell: ({ mass }) => Mass.show(mass, style) },
      by("careful"),
      by("usual"),
      by("rough"),
      by("parcel"),
      {
        heading: "Military transit case",
        cell: ({ mass, longest }) =>
          mass <= heaviestTransitCase ? Length.show(transitDrop({ mass, longest }), style) : "too heavy",
      },
    ],
    `Drop heights: own hands by ASTM D4169 (from memory; over ${Mass.show(Mass.of(200, "lb"), style)} one edge falls), a parcel by ISTA 1A, the last column a yardstick by MIL-STD-810`,
  );
}

/** One section is its own stack, and a case without leaves has none to take off. */
function statesToShow(job: Job): readonly StateOfMass[] {
  const { sections, panels } = job.parts;
  const hasLeaves = panels.some(({ role }) => role === "leaf");
  return statesOfMass(job).filter(
    ({ what, state }) =>
      (sections.length > 1 || what !== "stacked") && (hasLeaves || state !== "loaded, lids and doors off"),
  );
}

/** Every section and the stack: loaded, empty and with its lids and doors off. */
export function massStatesTable(job: Job): TableView {
  const style = styleOf(job.case);
  const above = (height: Length): Length => Length.si(height + standingHeight(job));
  const place = ({ centreHalf }: StateOfMass, axis: "x" | "y" | "z", value: Length): string =>
    give(Length.show(value, style), centreHalf && shortLength(centreHalf[axis], job.case.units));
  return tableOf(
    statesToShow(job),
    [
      ...whatAndState,
      { heading: "Mass", cell: (row) => massWords(row, job.case.units) },
      { heading: "From the left", cell: (row) => place(row, "x", row.balance.value.x) },
      { heading: "From the front", cell: (row) => place(row, "y", row.balance.value.y) },
      {
        heading: job.parts.sections.length > 1 ? "Above the floor, stacked" : "Above the floor",
        cell: (row) => place(row, "z", above(row.balance.value.z)),
      },
    ],
    "Mass and centre of gravity; ± is half of the 95 % interval that the weighed offcuts leave",
  );
}

/** Moments of inertia of the same, about the centre of gravity. */
export function inertiaTable(job: Job): TableView {
  const style = styleOf(job.case);
  const inertia = (value: Inertia): string => Inertia.show(value, style);
  return tableOf(
    statesToShow(job),
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
  /** Where the person stands. */
  readonly who: string;
  /** Of the section's mass, in the case's own unit: lb or kg. */
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
  /** The direction of the lean. */
  readonly towards: string;
  /** At which it tips, degrees. */
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

/** Who moves it and over what, as the case file has it. */
export function journeySentence({ case: { journey } }: Job): string {
  const { people, vehicle, floor, stairs, ramp, gust } = journey;
  const ways = [
    `over an ${floor} floor`,
    ...(stairs === undefined ? [] : ["on stairs"]),
    ...(ramp === undefined ? [] : ["on a ramp"]),
    ...(gust === undefined ? [] : ["outdoors in the wind"]),
  ];
  const who = people === 1 ? "One person moves" : `${people} people move`;
  return `${who} it ${ways.join(", ")}, and it rides in a ${vehicle}.`;
}

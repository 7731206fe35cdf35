/** A load carried by two or more: the share of each, the limit of the team, and the lift of the most loaded. */
import { type Formula, formula, type WorkedLine } from "../formula.js";
import { Angle, Count, degree, type Kind, Length, listOf, Mass, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { judgeLift, type Lift, type LiftVerdict, liftCaution } from "./lift.js";

/** A load on two handles, and where it balances between them. */
export interface LoadBetweenTwo {
  /** The whole load. */
  readonly mass: Mass;
  /** Handle to handle. */
  readonly span: Length;
  /** The distance from the first handle to the centre of gravity, along the line of the handles. */
  readonly toCentre: Length;
  /** Height of the centre of gravity over the line of the handles; negative where it hangs below. */
  readonly rise: Length;
  /** How far the load leans towards the first person, who walks lower; 0 on the flat. */
  readonly incline: Angle;
}

/** What each person carries. */
export type PairShares = {
  /** The mass carried by the first person, who walks lower on a slope. */
  readonly first: Mass;
  /** The mass carried by the second person. */
  readonly second: Mass;
};

function endShares({ mass, span, toCentre, rise, incline }: LoadBetweenTwo): {
  first: number;
  second: number;
} {
  const second = mass * (toCentre / span - (rise / span) * Math.tan(incline));
  return { first: mass - second, second };
}

/** Whether one of two people would have to hold the load down: it tips over between them. */
export function tipsOver(load: LoadBetweenTwo): boolean {
  return Object.values(endShares(load)).some((share) => share < 0);
}

/**
 * How two people share a load: by moments, the nearer one carries more; on stairs or a ramp the lower one
 * carries more still, the higher the load balances over the handles.
 *
 * @source statics, moments about one handle
 * @throws Refusal where one of the two would have to hold the load down
 * @example pairShares({ mass: kg(40), span: mm(1000), toCentre: mm(300), rise: mm(0), incline: degree(0) }) // first 28 kg, second 12 kg
 */
export const pairShares: Formula<LoadBetweenTwo, PairShares> = formula<LoadBetweenTwo, PairShares>({
  id: "lift.pair.shares",
  title: "How two people share a load",
  equation: String.raw`m_2 = m\left(\frac{c}{s} - \frac{e}{s}\tan\theta\right),\qquad m_1 = m - m_2`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "load", min: 0 },
    span: { symbol: "s", kind: Length, meaning: "handle to handle", above: 0 },
    toCentre: { symbol: "c", kind: Length, meaning: "first handle to the centre of gravity" },
    rise: { symbol: "e", kind: Length, meaning: "centre of gravity over the handles" },
    incline: {
      symbol: String.raw`\theta`,
      kind: Angle,
      meaning: "lean towards the first person",
      min: 0,
      max: degree(60),
    },
  },
  result: {
    first: { symbol: "m_1", kind: Mass, meaning: "carried by the first, lower person" },
    second: { symbol: "m_2", kind: Mass, meaning: "carried by the second person" },
  },
  source: [cite("statics", "moments about a handle")],
  validity: "A steady load held level across, pulled straight up at both handles.",
  refuse: (load) =>
    Object.entries(endShares(load))
      .filter(([, share]) => share < 0)
      .map(([who]) => `the load tips over: the ${who} person would have to hold it down`),
  compute: endShares,
});

/** One person with hands on the load, seen from above. */
export interface Lifter {
  /** Where the person stands, as a table names it. */
  readonly name: string;
  /** The distance to the hands, to the right. */
  readonly x: Length;
  /** The distance to the hands, to the back. */
  readonly y: Length;
}

/** A load, where it balances, and the hands under it. */
export interface TeamLoad {
  /** The whole load. */
  readonly mass: Mass;
  /** The people, at least one. */
  readonly people: readonly Lifter[];
  /** The distance from the same corner as the hands to the centre of gravity, to the right. */
  readonly x: Length;
  /** The distance from that corner to the centre of gravity, to the back. */
  readonly y: Length;
}

/** What each person of a team carries. */
export type TeamShares = {
  /** The mass carried by the one who carries most. */
  readonly greatest: Mass;
  /** The mass carried by the one who carries least. */
  readonly least: Mass;
  /** One a person, in the order of the people. */
  readonly shares: readonly Mass[];
};

const lifters: Kind<readonly Lifter[]> = listOf(
  recordOf<Lifter>("person", { name: Name, x: Length, y: Length }),
);

/** Every person takes the same, and as much more or less as the load leans towards or away from him. */
function sharesOf({ mass, people, x, y }: TeamLoad): number[] {
  const middle = (axis: "x" | "y"): number => people.reduce((sum, one) => sum + one[axis], 0) / people.length;
  const places = people.map((one) => ({ x: one.x - middle("x"), y: one.y - middle("y") }));
  const lean = leanOf(places, { x: x - middle("x"), y: y - middle("y") });
  return places.map((place) => mass * (1 / people.length + place.x * lean.x + place.y * lean.y));
}

interface Flat {
  /** The distance to the right, in metres. */
  readonly x: number;
  /** The distance to the back, in metres. */
  readonly y: number;
}

/** The lean with which equal springs bring the load to its place; people in a line feel only what lies along it. */
function leanOf(places: readonly Flat[], off: Flat): Flat {
  const sum = (of: (place: Flat) => number): number => places.reduce((total, place) => total + of(place), 0);
  const [xx, xy, yy] = [sum((at) => at.x ** 2), sum((at) => at.x * at.y), sum((at) => at.y ** 2)];
  const spread = xx + yy;
  if (spread === 0) return { x: 0, y: 0 };
  const area = xx * yy - xy ** 2;
  if (area > 1e-9 * spread ** 2) {
    return { x: (yy * off.x - xy * off.y) / area, y: (xx * off.y - xy * off.x) / area };
  }
  return { x: (xx * off.x + xy * off.y) / spread ** 2, y: (xy * off.x + yy * off.y) / spread ** 2 };
}

/** Who of a team would have to hold the load down: it tips over between them. */
export function holdingDown(load: TeamLoad): readonly Lifter[] {
  const shares = sharesOf(load);
  return load.people.filter((_, i) => (shares[i] ?? 0) < -1e-9 * load.mass);
}

/**
 * How a team shares a load m, hands at the places p_i round their middle: s_i = m (1/n + p_i . k), with k such that
 * the shares balance at the centre of gravity. Two and three people share by moments alone; from four on statics does
 * not settle it, and arms alike, as equal springs, are taken.
 *
 * @source statics, moments; stiff body on equal springs
 * @throws Refusal for nobody, a negative mass, or where somebody would have to hold the load down
 * @example teamShares({ mass: kg(60), people: [{ name: "left", x: mm(0), y: mm(0) }, { name: "right", x: mm(1000), y: mm(0) }], x: mm(400), y: mm(0) }) // greatest 36 kg, least 24 kg, shares 36 kg; 24 kg
 */
export const teamShares: Formula<TeamLoad, TeamShares> = formula<TeamLoad, TeamShares>({
  id: "lift.team.shares",
  title: "How a team shares a load",
  equation: String.raw`s_i=m\left(\tfrac1n+\mathbf{p}_i\cdot\mathbf{k}\right),\quad \sum_i s_i\,\mathbf{p}_i=m\,\mathbf{c}`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "load", min: 0 },
    people: { symbol: String.raw`\mathbf{p}_i`, kind: lifters, meaning: "people and where their hands are" },
    x: { symbol: "c_x", kind: Length, meaning: "centre of gravity, to the right" },
    y: { symbol: "c_y", kind: Length, meaning: "centre of gravity, to the back" },
  },
  result: {
    greatest: { symbol: "s_{max}", kind: Mass, meaning: "carried by the most loaded" },
    least: { symbol: "s_{min}", kind: Mass, meaning: "carried by the least loaded" },
    shares: { symbol: "s_i", kind: listOf(Mass), meaning: "carried by each" },
  },
  source: [cite("statics", "moments; from four people on a stiff body on equal springs")],
  validity:
    "A stiff load held level, everybody lifting straight up at the same moment; people differ, and so do their arms.",
  refuse: (load) => {
    if (load.people.length === 0) return ["nobody lifts: at least one person is needed"];
    return holdingDown(load).map(({ name }) => `the load tips over: ${name} would have to hold it down`);
  },
  warn: ({ people }) =>
    people.length > 3
      ? ["four people or more: statics alone does not settle who carries what; arms alike are taken"]
      : [],
  compute: (load) => {
    const shares = sharesOf(load);
    return { greatest: Math.max(...shares), least: Math.min(...shares), shares };
  },
});

/** How much of the sum of what each can lift alone a team can lift together; L23 gives it for two and three. */
const teamShare: readonly number[] = [1, 2 / 3, 1 / 2, 1 / 2];

/** People who lift together. */
export interface TeamOfLifters {
  /** What one of them may lift alone. */
  readonly each: Mass;
  /** How many lift, at most four: more seldom works. */
  readonly people: number;
}

/**
 * What a team may lift: two people two thirds, three one half of what they could lift one by one. For four the guide
 * has no figure; one half is taken.
 *
 * @source HSE L23, team handling
 * @throws Refusal for nobody, or more than four people: larger teams are unlikely to work
 * @example teamLimit({ each: kg(20), people: 2 }) // 26.67 kg
 */
export const teamLimit: Formula<TeamOfLifters, Mass> = formula({
  id: "lift.team.limit",
  title: "What a team may lift",
  equation: String.raw`m_n=k\,n\,m_1,\quad k=1,\ \tfrac23,\ \tfrac12\ (n=1,2,3)`,
  inputs: {
    each: { symbol: "m_1", kind: Mass, meaning: "one person alone", above: 0 },
    people: { symbol: "n", kind: Count, meaning: "people", min: 1, max: 4 },
  },
  result: { symbol: "m_n", kind: Mass, meaning: "the team together" },
  source: [cite("hse-manual-handling", "team handling")],
  validity: "People of like height and strength, room to move, a handhold each; on slopes and steps less.",
  warn: ({ people }) =>
    people === 4 ? ["the guide has no figure for four people; that for three is taken"] : [],
  compute: ({ each, people }) => (teamShare[people - 1] ?? 0) * people * each,
});

/** What each of a team carries, and what the equation says of the most loaded. */
export interface TeamVerdict {
  /** How the load is shared. */
  readonly shares: WorkedLine & { readonly value: TeamShares };
  /** Name of the most loaded person. */
  readonly who: string;
  /** The lift of that person. */
  readonly worst: LiftVerdict;
  /** The caution to be shown with any of these figures. */
  readonly caution: string;
}

/** Holds for every lift by more than one. */
export const teamCaution: string = `The lifting equation is made for one person; comparing each share with it is common practice for a team, not part of the equation. People rarely lift at the same moment: agree on a word, and let the strongest take the heaviest place. ${liftCaution}`;

/**
 * Shares a load among people and judges the largest share.
 *
 * @param lift how each of them lifts
 * @throws Refusal as `teamShares` and `judgeLift` do
 * @example
 * const hands = { reach: mm(350), height: mm(400), twist: degree(0) };
 * const often = { rate: LiftRate.of(0.2, "lifts/min"), duration: "up to 1 h", grip: "good" } as const;
 * const lift = { start: hands, end: { ...hands, height: mm(900) }, ...often };
 * const people = [-400, 400].map((x) => ({ name: x < 0 ? "left" : "right", x: mm(x), y: mm(0) }));
 * judgeTeamLift({ mass: kg(36), x: mm(0), y: mm(0), people }, lift).worst.index.value // 1.345
 */
export function judgeTeamLift(load: TeamLoad, lift: Lift): TeamVerdict {
  const shares = teamShares.worked(load);
  const { greatest, shares: each } = shares.value;
  const who = load.people[each.indexOf(greatest)]?.name ?? "";
  return { shares, who, worst: judgeLift(greatest, lift), caution: teamCaution };
}

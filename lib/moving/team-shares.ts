import { type Formula, formula } from "../formula.js";
import { type Kind, Length, listOf, Mass, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** One person with hands on the load, seen from above. */
export interface Lifter {
  /** Where the person stands, as a table names it. */
  readonly name: string;
  /** Of the hands, to the right. */
  readonly x: Length;
  /** Of the hands, to the back. */
  readonly y: Length;
}

/** A load, where it balances, and the hands under it. */
export interface TeamLoad {
  /** The whole load. */
  readonly mass: Mass;
  /** At least one. */
  readonly people: readonly Lifter[];
  /** From the same corner as the hands to the centre of gravity, to the right. */
  readonly x: Length;
  /** To the back. */
  readonly y: Length;
}

/** What each person of a team carries. */
export type TeamShares = {
  /** By the one who carries most. */
  readonly greatest: Mass;
  /** By the one who carries least. */
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
  readonly x: number;
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
    const shares = sharesOf(load);
    return load.people
      .filter((_, i) => (shares[i] ?? 0) < -1e-9 * load.mass)
      .map(({ name }) => `the load tips over: ${name} would have to hold it down`);
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

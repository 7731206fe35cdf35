/** What a case goes through: standing, on three casters, pushed, carried, lifted, dropped on a corner. */
import { add, at } from "../../algebra/lists.js";
import { crossProduct } from "../../algebra/matrix3.js";
import {
  alongLine,
  type BoxForce,
  type BoxSpot,
  GivesWay,
  isBalanced,
  type JoinedAnswer,
  movedJoined,
  placeOfEnd,
  prepareMoves,
  pullAt,
  shareBorne,
  spaceDofs,
} from "../../fem/index.js";
import { dropHeight } from "../../moving/index.js";
import { Force, Mass, standardGravity } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { heaviestByHand } from "../travel/drops.js";
import { stackTop } from "../travel/footprint.js";
import { type CaseMasses, caseMasses, massLoads } from "./case-loads.js";
import {
  type CaseSystem,
  everyHeld,
  linkOf,
  type Subsystem,
  sectionWithLeaves,
  subsystem,
  type Uses,
} from "./case-system.js";
import { type LinkKind, ofLeaf } from "./hardware-links.js";
import { type HingePull, hangOpen, openLeaves } from "./open-leaves.js";
import { atNode, minus, perAxis, plus, turnsAtNode } from "./places.js";
import { corners, footEnd, sectionNumbers } from "./standing-links.js";
import { swivelledUnder } from "./swivelled.js";

/** What one load case did to some bodies. */
export interface LoadedCase {
  /** Dotted path, unique in a case: "carried.upper". */
  readonly id: string;
  /** In the builder's words. */
  readonly title: string;
  /** The whole case. */
  readonly system: CaseSystem;
  /** The bodies that take part, with their springs. */
  readonly bodies: Subsystem;
  /** Their movements and the forces of their springs. */
  readonly answer: JoinedAnswer;
  /** Whether movements count from the standing case instead of the unloaded one. */
  readonly from?: JoinedAnswer;
  /** The push at which it begins to tip, where that is less than the push asked for: the case is then that push. */
  readonly tips?: Force;
  /** What hinges bear whose leaves stand open, and are no bodies of this case. */
  readonly hinges?: readonly HingePull[];
}

/** A load case that cannot be answered. */
export interface UnansweredCase extends Pick<LoadedCase, "id" | "title"> {
  /** Why, in a builder's words. */
  readonly why: string;
  /** Whether nothing is loose, but no forces balance the load: it falls over or open. */
  readonly givesWay: boolean;
}

/** The load cases of a case: none takes another with it. */
export interface LoadedCases {
  /** Those that are answered. */
  readonly cases: readonly LoadedCase[];
  /** Those that cannot be. */
  readonly unanswered: readonly UnansweredCase[];
}

/** What solving a load case gives. */
type Solved = Pick<LoadedCase, "bodies" | "answer" | "from" | "tips" | "hinges">;

/** A load case before it is solved. */
interface PlannedCase extends Pick<LoadedCase, "id" | "title"> {
  /** Undefined where it does not happen. */
  readonly solve: () => Solved | undefined;
}

/** Forces on every body. */
type Loads = readonly Float64Array[];

const inUse: readonly LinkKind[] = ["hinge", "door latch", "latch", "bearing", "rest"];
const standsOn: readonly LinkKind[] = ["caster", "floor"];

function uses(...kinds: readonly LinkKind[]): Uses {
  return ({ kind }) => inUse.includes(kind) || kinds.includes(kind);
}

/** Every load case that the case's hardware allows. */
export function loadedCases(system: CaseSystem): LoadedCases {
  const cases: LoadedCase[] = [];
  const unanswered: UnansweredCase[] = [...leavesWithout(system)];
  for (const { id, title, solve } of plannedCases(system))
    try {
      const solved = solve();
      if (solved) cases.push({ id, title: titleOf(title, solved), system, ...solved });
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      unanswered.push({ id, title, why: error.message, givesWay: error instanceof GivesWay });
    }
  return { cases, unanswered };
}

/** Leaves that nothing holds, and what should hold a leaf and is on none. */
function leavesWithout({ loose, refused, model }: CaseSystem): readonly UnansweredCase[] {
  const shut = (name: string, why: string): UnansweredCase => ({
    id: `shut.${name}`,
    title: `${name} shut`,
    why,
    givesWay: false,
  });
  return [
    ...loose.map(({ number, why }) => shut(at(model.bodies, number).name, why)),
    ...refused.flatMap(({ kind, name, from, why }) =>
      ofLeaf.includes(kind) && from.part < 0 ? [shut(name, why)] : [],
    ),
  ];
}

function titleOf(title: string, { tips }: Solved): string {
  return tips === undefined ? title : `${title} until it begins to tip`;
}

function plannedCases(system: CaseSystem): readonly PlannedCase[] {
  const { joined, refused } = system;
  const weight = weightOf(system.masses);
  const { dynamicFactor } = system.input.case.demands;
  const jerked = massLoads(system.masses, () => [0, 0, -standardGravity * dynamicFactor]);
  system.model.parts.forEach((part, i) => {
    prepareMoves(part, [at(weight, i), at(jerked, i)]);
  });
  let stands: Solved | undefined;
  const standing = (): Solved => {
    stands ??= stood(system, weight);
    return stands;
  };
  const latched = [...joined.links.map(linkOf), ...refused].some(({ kind }) => kind === "latch");
  return [
    {
      id: "stacked",
      title: sectionNumbers(system.model).length > 1 ? "standing, one section on the other" : "standing",
      solve: standing,
    },
    ...openCases(system, weight),
    ...holeCases(system, weight),
    ...pushedCases(system, weight, standing),
    ...carriedCases(system, jerked),
    ...(latched ? liftedCases(system, jerked) : []),
    ...droppedCases(system),
  ];
}

function weightOf(masses: CaseMasses): Loads {
  return massLoads(masses, () => [0, 0, -standardGravity]);
}

/** On its casters or the floor, the sections on each other. */
function stood(system: CaseSystem, weight: Loads): Solved {
  const bodies = subsystem(system, everyHeld(system), uses(...standsOn));
  return { bodies, answer: movedJoined(bodies, picked(weight, bodies.numbers)) };
}

/** Standing with a door or a lid open, the leaves that share its opening with it. */
function openCases(system: CaseSystem, weight: Loads): readonly PlannedCase[] {
  return openLeaves(system).map(({ leaves, name }): PlannedCase => {
    const solve = (): Solved => {
      const numbers = everyHeld(system).filter((number) => !leaves.includes(number));
      const bodies = subsystem(system, numbers, uses(...standsOn));
      const loose = system.loose.map(({ number }) => number);
      const shut = loose.filter((number) => !leaves.includes(number));
      const own =
        shut.length === loose.length ? weight : weightOf(caseMasses(system.input, system.model, shut));
      const loads = new Map(numbers.map((number) => [number, at(own, number).slice()]));
      const hinges = leaves.flatMap((leaf) => hangOpen(system, leaf, at(own, leaf), loads));
      return { bodies, answer: movedJoined(bodies, [...loads.values()]), hinges };
    };
    return { id: `open.${name}`, title: `standing with ${name} open`, solve };
  });
}

/** Casters of which one may be over a hole. */
const enoughCasters = 4;

/** One caster over a hole, each that leaves the rest in balance. */
function holeCases(system: CaseSystem, weight: Loads): readonly PlannedCase[] {
  const casters = new Set(
    system.joined.links.map(linkOf).flatMap(({ kind, name }) => (kind === "caster" ? [name] : [])),
  );
  if (casters.size < enoughCasters) return [];
  return [...casters].map((name): PlannedCase => {
    const solve = (): Solved | undefined => {
      const bodies = subsystem(
        system,
        everyHeld(system),
        (link) => uses("caster")(link) && !(link.kind === "caster" && link.name === name),
      );
      // Where the rest does not balance, the caster finds the bottom of the hole.
      const own = picked(weight, bodies.numbers);
      return isBalanced(bodies, own) ? { bodies, answer: movedJoined(bodies, own) } : undefined;
    };
    return { id: `hole.${name}`, title: `${name} in a hole`, solve };
  });
}

/** Centre of the masses of some sections. */
function centreOf({ masses }: CaseSystem, belongs: (section: string) => boolean): BoxSpot {
  const items = masses.items.filter(({ section }) => belongs(section));
  const whole = items.reduce((sum, { mass }) => sum + mass, 0);
  const mean = (axis: "x" | "y" | "z"): number =>
    items.reduce((sum, { mass, centre }) => sum + mass * centre[axis], 0) / whole;
  return [mean("x"), mean("y"), mean("z")];
}

/** Pushed sideways at its top edge while it stands, from each of its four sides. */
function pushedCases(system: CaseSystem, weight: Loads, standing: () => Solved): readonly PlannedCase[] {
  const top = topSection(system);
  const { length, width, height } = at(system.model.bodies, top).problem;
  const ways = [
    { id: "x", words: "from the left", from: [0, 0], to: [0, width], along: [1, 0, 0], side: "right" },
    {
      id: "right",
      words: "from the right",
      from: [length, 0],
      to: [length, width],
      along: [-1, 0, 0],
      side: "left",
    },
    { id: "y", words: "from the front", from: [0, 0], to: [length, 0], along: [0, 1, 0], side: "back" },
    {
      id: "back",
      words: "from the back",
      from: [0, width],
      to: [length, width],
      along: [0, -1, 0],
      side: "front",
    },
  ] as const;
  return ways.map(({ id, words, from: low, to, along, side }): PlannedCase => {
    const solve = (): Solved => {
      const upright = standing();
      const bodies = swivelledUnder(system, upright.bodies, side);
      const own = picked(weight, bodies.numbers);
      const from = bodies === upright.bodies ? upright.answer : movedJoined(bodies, own);
      const on = alongLine(at(system.model.parts, top).structure, [...low, height], [...to, height]);
      const { push } = system.input.case.demands;
      const pushes = own.map((load) => new Float64Array(load.length));
      const above = stackTop(system.input) - at(system.model.bodies, top).at[2] - height;
      addForce(at(pushes, top), { on, force: perAxis((axis) => push * along[axis]) }, above);
      const share = shareBorne(bodies, own, pushes);
      const loads = own.map((load, i) => load.map((still, dof) => still + share * at(at(pushes, i), dof)));
      const answer = movedJoined(bodies, loads);
      return { bodies, answer, from, ...(share < 1 ? { tips: Force.si(share * push) } : {}) };
    };
    return { id: `pushed.${id}`, title: `pushed at its top edge ${words}`, solve };
  });
}

/** The number of the highest section. */
function topSection({ model }: CaseSystem): number {
  return sectionNumbers(model).reduce((best, number) =>
    at(model.bodies, number).at[2] > at(model.bodies, best).at[2] ? number : best,
  );
}

/** A force on some nodes that acts so far above them: the middle planes of a box lie within its outside. */
function addForce(load: Float64Array, { on, force }: BoxForce, above: number): void {
  const turning = crossProduct([0, 0, above], force);
  on.nodes.forEach((node, i) => {
    [...force, ...turning].forEach((each, dof) => {
      add(load, spaceDofs * node + dof, at(on.shares, i) * each);
    });
  });
}

/** Each section carried by its own handles, with a jerk. */
function carriedCases(system: CaseSystem, jerked: Loads): readonly PlannedCase[] {
  return system.input.parts.sections.flatMap(({ name }): PlannedCase[] => {
    const numbers = sectionWithLeaves(system, name);
    if (handlesOn(system, numbers) < 2) return [];
    const solve = (): Solved => {
      const bodies = subsystem(system, numbers, uses("handle"));
      return { bodies, answer: movedJoined(bodies, picked(jerked, numbers)) };
    };
    return [{ id: `carried.${name}`, title: `${name} carried by its handles, with a jerk`, solve }];
  });
}

/** Handles of some bodies. */
function handlesOn({ joined, refused }: CaseSystem, numbers: readonly number[]): number {
  const handles = [...joined.links.map(linkOf), ...refused].filter(
    ({ kind, from }) => kind === "handle" && numbers.includes(from.part),
  );
  return new Set(handles.map(({ name }) => name)).size;
}

function picked(loads: Loads, numbers: readonly number[]): Loads {
  return numbers.map((number) => at(loads, number));
}

/** Joined, lifted by the handles of its highest section: the latches carry the rest. */
function liftedCases(system: CaseSystem, jerked: Loads): readonly PlannedCase[] {
  const top = topSection(system);
  if (handlesOn(system, [top]) < 2) return [];
  const title = `joined, lifted by the handles of ${at(system.model.bodies, top).name}, with a jerk`;
  const solve = (): Solved => {
    const whole = subsystem(
      system,
      everyHeld(system),
      (link) => uses()(link) || (link.kind === "handle" && link.from.part === top),
    );
    return { bodies: whole, answer: movedJoined(whole, picked(jerked, whole.numbers)) };
  };
  return [{ id: "lifted", title, solve }];
}

/** Corner, floor and what is inside give so much while a drop is stopped, m. Common practice, no source. */
const stoppingWay = 0.025;
/** Springs that only keep a section in place while its forces balance, N/m. */
const keepingStiffness = 1e3;

/** Deceleration of a section dropped from where hands let it fall, in gravities; undefined when nobody said how it is handled. */
function stoppedWith({ input }: CaseSystem, mass: number): number | undefined {
  const { handling } = input.case.journey;
  if (handling === undefined || mass > heaviestByHand) return undefined;
  return dropHeight({ mass: Mass.si(mass), handling }) / stoppingWay;
}

/** Each section dropped on its lower corner nearest to its centre of gravity: that corner stops it, and it turns. */
function droppedCases(system: CaseSystem): readonly PlannedCase[] {
  return system.input.parts.sections.flatMap(({ name }): PlannedCase[] => {
    const { items } = system.masses;
    const mass = items.reduce((sum, item) => sum + (item.section === name ? item.mass : 0), 0);
    const stopped = stoppedWith(system, mass);
    if (stopped === undefined) return [];
    const solve = (): Solved => dropped(system, name, stopped * standardGravity);
    return [{ id: `dropped.${name}`, title: `${name} dropped on a corner`, solve }];
  });
}

function dropped(system: CaseSystem, name: string, deceleration: number): Solved {
  const numbers = sectionWithLeaves(system, name);
  // The section comes before its leaves.
  const own = at(numbers, 0);
  const centre = centreOf(system, (section) => section === name);
  const feet = corners.map((corner) => {
    const foot = footEnd(system.model, own, corner);
    const place = placeOfEnd(system.model.parts, foot);
    return { foot, place, away: Math.hypot(place[0] - centre[0], place[1] - centre[1]) };
  });
  const struck = feet.reduce((best, one) => (one.away < best.away ? one : best));
  const bodies = kept(subsystem(system, numbers, uses("stand")));
  const { loads, total } = stoppedAt(system, numbers, deceleration, struck.place);
  const against = perAxis((axis) => -total.force[axis]);
  pullAt(at(loads, numbers.indexOf(own)), struck.foot.fitting, against, [0, 0, -total.moment[2]]);
  return { bodies, answer: movedJoined(bodies, loads) };
}

function kept(bodies: Subsystem): Subsystem {
  const links = bodies.links.map((link) =>
    linkOf(link).kind === "stand" ? { ...link, link: { ...link.link, stiffness: keepingStiffness } } : link,
  );
  return { ...bodies, links };
}

/** What forces come to about a place of the case. */
interface Wrench {
  /** Along x, y, z, N. */
  readonly force: BoxSpot;
  /** About x, y, z through the place, N m. */
  readonly moment: BoxSpot;
}

/** Forces on some bodies, and what they come to. */
interface WrenchedLoads {
  /** By body. */
  readonly loads: Loads;
  /** All of them about the corner that is struck. */
  readonly total: Wrench;
}

/**
 * What masses do while a corner is stopped: they go on turning about it, so that moments about the corner balance and
 * it bears only what is left.
 */
function stoppedAt(
  system: CaseSystem,
  numbers: readonly number[],
  deceleration: number,
  corner: BoxSpot,
): WrenchedLoads {
  const wrenched = (loads: Loads): WrenchedLoads => ({
    loads,
    total: wrenchAbout(system, numbers, loads, corner),
  });
  const of = (field: (place: BoxSpot) => BoxSpot): WrenchedLoads =>
    wrenched(picked(massLoads(system.masses, field), numbers));
  const straight = of(() => [0, 0, -deceleration]);
  // Turning by 1 rad/s2 about x and about y through the corner; masses pull against it.
  const aboutX = of(([, y, z]) => [0, z - corner[2], -(y - corner[1])]);
  const aboutY = of(([x, , z]) => [-(z - corner[2]), 0, x - corner[0]]);
  const [turnX, turnY] = balancingTurns(straight.total, aboutX.total, aboutY.total);
  return wrenched(
    straight.loads.map((load, i) => {
      const [x, y] = [at(aboutX.loads, i), at(aboutY.loads, i)];
      return load.map((value, k) => value + turnX * at(x, k) + turnY * at(y, k));
    }),
  );
}

/** How fast it must turn about x and about y, rad/s2, so that no moment is left about either. */
function balancingTurns(
  { moment: own }: Wrench,
  { moment: x }: Wrench,
  { moment: y }: Wrench,
): readonly [number, number] {
  const determinant = x[0] * y[1] - y[0] * x[1];
  return [(-own[0] * y[1] + own[1] * y[0]) / determinant, (-own[1] * x[0] + own[0] * x[1]) / determinant];
}

/** Force and moment of loads about a place of the case. */
function wrenchAbout(
  { model }: CaseSystem,
  numbers: readonly number[],
  loads: Loads,
  place: BoxSpot,
): Wrench {
  let [force, moment]: [BoxSpot, BoxSpot] = [
    [0, 0, 0],
    [0, 0, 0],
  ];
  numbers.forEach((number, i) => {
    const [{ structure, at: origin }, load] = [at(model.parts, number), at(loads, i)];
    const off = minus(origin, place);
    structure.nodes.forEach((spot, node) => {
      const own = atNode(load, node);
      force = plus(force, own);
      moment = plus(moment, plus(turnsAtNode(load, node), crossProduct(plus(spot, off), own)));
    });
  });
  return { force, moment };
}

/** What a case goes through: stacked, on three casters, pushed, carried, lifted, dropped on a corner. */
import { add, at } from "../../algebra/lists.js";
import { crossProduct } from "../../algebra/matrix3.js";
import {
  alongLine,
  type BoxForce,
  type BoxSpot,
  type JoinedAnswer,
  movedJoined,
  placeOfEnd,
  pullAt,
  spaceDofs,
} from "../../fem/index.js";
import { dropHeight } from "../../moving/index.js";
import { Mass, standardGravity } from "../../quantity/index.js";
import { heaviestByHand } from "../travel/drops.js";
import { massLoads } from "./case-loads.js";
import { type CaseSystem, linkOf, type Subsystem, sectionWithLeaves, subsystem } from "./case-system.js";
import type { CaseLink, LinkKind } from "./hardware-links.js";
import { atNode, minus, perAxis, plus, turnsAtNode } from "./places.js";
import { corners, footEnd, sectionNumbers } from "./standing-links.js";

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
}

/** Forces on every body. */
type Loads = readonly Float64Array[];

const inUse: readonly LinkKind[] = ["hinge", "door latch", "latch", "bearing"];

function uses(...kinds: readonly LinkKind[]): (link: CaseLink) => boolean {
  return ({ kind }) => inUse.includes(kind) || kinds.includes(kind);
}

function every({ model }: CaseSystem): readonly number[] {
  return [...model.bodies.keys()];
}

/** Every load case that the case's hardware allows. */
export function loadedCases(system: CaseSystem): readonly LoadedCase[] {
  const { joined } = system;
  const has = (kind: LinkKind): boolean => joined.links.some((link) => linkOf(link).kind === kind);
  const weight = massLoads(system.masses, () => [0, 0, -standardGravity]);
  const jerked = massLoads(system.masses, () => [
    0,
    0,
    -standardGravity * system.input.case.demands.dynamicFactor,
  ]);
  const standing = has("caster") ? standingCase(system, weight) : undefined;
  return [
    ...(standing ? [standing, ...holeCases(system, weight), ...pushedCases(system, weight, standing)] : []),
    ...carriedCases(system, jerked),
    ...(has("latch") ? liftedCases(system, jerked) : []),
    ...droppedCases(system),
  ];
}

/** On its casters, the sections on each other. */
function standingCase(system: CaseSystem, weight: Loads): LoadedCase {
  const bodies = subsystem(system, every(system), uses("caster"));
  const answer = movedJoined(bodies, weight);
  return { id: "stacked", title: "standing, one section on the other", system, bodies, answer };
}

/** One caster over a hole, each that leaves the rest in balance. */
function holeCases(system: CaseSystem, weight: Loads): readonly LoadedCase[] {
  const casters = [
    ...new Map(
      system.joined.links
        .map(linkOf)
        .flatMap((link) => (link.kind === "caster" ? [[link.name, link] as const] : [])),
    ).values(),
  ];
  const place = ({ from }: CaseLink): BoxSpot => placeOfEnd(system.model.parts, from);
  const centre = centreOf(system, () => true);
  return casters
    .filter((hanging) => {
      const [a, b, c, ...more] = casters.filter((other) => other !== hanging).map(place);
      return a && b && c && more.length === 0 && isInside(centre, [a, b, c]);
    })
    .map(({ name }): LoadedCase => {
      const bodies = subsystem(system, every(system), (link) => uses("caster")(link) && link.name !== name);
      const answer = movedJoined(bodies, weight);
      return { id: `hole.${name}`, title: `${name} in a hole`, system, bodies, answer };
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

/** Whether a place lies within the triangle of three others, seen from above. */
function isInside([x, y]: BoxSpot, [a, b, c]: readonly [BoxSpot, BoxSpot, BoxSpot]): boolean {
  const side = (from: BoxSpot, to: BoxSpot): number =>
    (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
  const sides = [side(a, b), side(b, c), side(c, a)];
  return sides.every((each) => each > 0) || sides.every((each) => each < 0);
}

/** Pushed sideways at its top edge while it stands, from the left and from the front. */
function pushedCases(system: CaseSystem, weight: Loads, standing: LoadedCase): readonly LoadedCase[] {
  const top = topSection(system);
  const { length, width, height } = at(system.model.bodies, top).problem;
  const { push } = system.input.case.demands;
  const ways = [
    { id: "x", words: "from the left", to: [0, width, height], force: [push, 0, 0] },
    { id: "y", words: "from the front", to: [length, 0, height], force: [0, push, 0] },
  ] as const;
  return ways.map(({ id, words, to, force }): LoadedCase => {
    const on = alongLine(at(system.model.parts, top).structure, [0, 0, height], to);
    const loads = weight.map((load, number) => (number === top ? load.slice() : load));
    addForce(at(loads, top), { on, force });
    const answer = movedJoined(standing.bodies, loads);
    const title = `pushed at its top edge ${words}`;
    return { id: `pushed.${id}`, title, system, bodies: standing.bodies, answer, from: standing.answer };
  });
}

/** The number of the highest section. */
function topSection({ model }: CaseSystem): number {
  return sectionNumbers(model).reduce((best, number) =>
    at(model.bodies, number).at[2] > at(model.bodies, best).at[2] ? number : best,
  );
}

function addForce(load: Float64Array, { on, force }: BoxForce): void {
  on.nodes.forEach((node, i) => {
    force.forEach((each, axis) => {
      add(load, spaceDofs * node + axis, at(on.shares, i) * each);
    });
  });
}

/** Each section carried by its own handles, with a jerk. */
function carriedCases(system: CaseSystem, jerked: Loads): readonly LoadedCase[] {
  return system.input.parts.sections.flatMap(({ name }): LoadedCase[] => {
    const numbers = sectionWithLeaves(system, name);
    const bodies = subsystem(system, numbers, uses("handle"));
    if (handlesOf(bodies) < 2) return [];
    const answer = movedJoined(bodies, picked(jerked, numbers));
    return [
      { id: `carried.${name}`, title: `${name} carried by its handles, with a jerk`, system, bodies, answer },
    ];
  });
}

function handlesOf({ links }: Subsystem): number {
  return new Set(links.map(linkOf).flatMap(({ kind, name }) => (kind === "handle" ? [name] : []))).size;
}

function picked(loads: Loads, numbers: readonly number[]): Loads {
  return numbers.map((number) => at(loads, number));
}

/** Joined, lifted by the handles of its highest section: the latches carry the rest. */
function liftedCases(system: CaseSystem, jerked: Loads): readonly LoadedCase[] {
  const top = topSection(system);
  const whole = subsystem(
    system,
    every(system),
    (link) => uses()(link) || (link.kind === "handle" && link.from.part === top),
  );
  if (handlesOf(whole) < 2) return [];
  const answer = movedJoined(whole, jerked);
  const title = `joined, lifted by the handles of ${at(system.model.bodies, top).name}, with a jerk`;
  return [{ id: "lifted", title, system, bodies: whole, answer }];
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
function droppedCases(system: CaseSystem): readonly LoadedCase[] {
  return system.input.parts.sections.flatMap(({ name }): LoadedCase[] => {
    const { items } = system.masses;
    const mass = items.reduce((sum, item) => sum + (item.section === name ? item.mass : 0), 0);
    const stopped = stoppedWith(system, mass);
    return stopped === undefined ? [] : [dropped(system, name, stopped * standardGravity)];
  });
}

function dropped(system: CaseSystem, name: string, deceleration: number): LoadedCase {
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
  const answer = movedJoined(bodies, loads);
  return { id: `dropped.${name}`, title: `${name} dropped on a corner`, system, bodies, answer };
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

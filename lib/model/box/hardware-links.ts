/** Casters, handles, latches and hinges as springs between the bodies of the case and to the floor and the hands. */

import { at } from "../../algebra/lists.js";
import type { Fastening, HardwarePart } from "../../design/index.js";
import type { BoxSpot, FaceSpots, Link, LinkEnd } from "../../fem/index.js";
import { distance, extents, frames } from "../../fem/index.js";
import { Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { supportsOf, touchesOf } from "../travel/footprint.js";
import { type BoxBody, isBeside } from "./box-body.js";
import { type BoxModel, bodyOf, faceSpots, fitted, holding } from "./box-model.js";
import { fastenerSlip } from "./edge-joints.js";
import { type Axis, perAxis, placed, spotOf } from "./places.js";

/** What a spring stands for. */
export type LinkKind =
  | "caster"
  | "handle"
  | "latch"
  | "hinge"
  | "door latch"
  | "bearing"
  | "stand"
  | "floor"
  | "rest";

/** A spring of the case. */
export interface CaseLink extends Link {
  /** The sort of hardware or support. */
  readonly kind: LinkKind;
}

const alongX: BoxSpot = [1, 0, 0];
const alongY: BoxSpot = [0, 1, 0];
const up: BoxSpot = [0, 0, 1];
const down: BoxSpot = [0, 0, -1];
const everyWay: readonly BoxSpot[] = [alongX, alongY, up];

/** Springs of casters, N/m: a hard tyre gives about 1 mm under 400 N, its swivel more. Common practice, no source. */
const casterStiffness = { upright: 4e5, sideways: 4e4 };
/** Hands and arms, N/m, and half of a hand's width on its grip, m. Common practice, no source. */
const handStiffness = 1e5;
const halfGrip = 0.04;

/** What keeps a leaf in its opening: without one of these only the leaf cannot be answered. */
export const ofLeaf: readonly LinkKind[] = ["hinge", "door latch"];

/** A piece of hardware of which no spring can be made. */
export interface RefusedLink extends Pick<CaseLink, "kind" | "name"> {
  /** The body it is fixed to; the leaf where it keeps one, and -1 where it is on none. */
  readonly from: Pick<LinkEnd, "part">;
  /** Whether it joins that body to another section. */
  readonly joins: boolean;
  /** Why, in a builder's words. */
  readonly why: string;
}

/** Springs, and hardware of which none could be made. */
export interface MadeLinks {
  /** The springs. */
  readonly links: readonly CaseLink[];
  /** What is missing; load cases that need it cannot be answered. */
  readonly refused: readonly RefusedLink[];
}

/** Every spring that hardware makes. */
export function hardwareLinks(input: ReviewInput, model: BoxModel): MadeLinks {
  const supports = new Set(supportsOf(input).map(({ id }) => id));
  const stands = ({ id }: HardwarePart): boolean => supports.has(id);
  const of = (duty: HardwarePart["item"]["duty"]): readonly HardwarePart[] =>
    input.parts.hardware.filter((part) => part.item.duty === duty && ownBody(model, part) >= 0);
  const keepers = of("join-sections").filter(({ stock }) => stock.kind === "keeper");
  const makers: readonly (readonly [
    LinkKind,
    readonly HardwarePart[],
    (part: HardwarePart) => readonly CaseLink[],
  ])[] = [
    ["caster", of("roll").filter(stands), (part) => casterLinks(input, model, part)],
    ["floor", of("stand").filter(stands), (part) => footLinks(model, part, ownBody(model, part))],
    ["handle", of("lift"), (part) => handleLinks(input, model, part)],
    [
      "latch",
      of("join-sections").filter(({ stock }) => stock.kind === "latch"),
      (part) => latchLinks(input, model, part, keeperOf(part, keepers)),
    ],
    ["hinge", of("hinge"), (part) => hingeLinks(input, model, part)],
    ["door latch", of("close"), (part) => doorLatchLinks(input, model, part)],
  ];
  const made = makers.flatMap(([kind, parts, make]) =>
    parts.map((part) => {
      const body = ofLeaf.includes(kind) ? leafOf(model, part) : ownBody(model, part);
      return madeOf(kind, part.id, body, () => make(part));
    }),
  );
  return { links: made.flatMap(({ links }) => links), refused: made.flatMap(({ refused }) => refused) };
}

function madeOf(kind: LinkKind, name: string, part: number, make: () => readonly CaseLink[]): MadeLinks {
  try {
    return { links: make(), refused: [] };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return {
      links: [],
      refused: [{ kind, name, from: { part }, joins: kind === "latch", why: error.message }],
    };
  }
}

/** The number of the body that a piece of hardware is fixed to first; -1 when it is none of them. */
function ownBody(model: BoxModel, { panels: [first = ""] }: HardwarePart): number {
  return bodyOf(model, first);
}

/** The number of the leaf that a piece of hardware is on; -1 where it is on none. */
function leafOf(model: BoxModel, { panels }: HardwarePart): number {
  const isLeaf = (body: number): boolean => model.bodies[body]?.name !== model.bodies[body]?.section;
  return panels.map((panel) => bodyOf(model, panel)).find(isLeaf) ?? -1;
}

/** @throws Refusal where nothing holds it */
function groupsOf({ parts }: ReviewInput, { id }: HardwarePart): readonly Fastening[] {
  const groups = parts.fastenings.filter(({ holds, at }) => holds === id && at.length > 0);
  if (groups.length === 0) throw new Refusal(`box: ${id} has no fasteners that hold it`);
  return groups;
}

/** A piece of hardware as an end of springs at a place of the stacked case. */
function endOf(
  input: ReviewInput,
  model: BoxModel,
  part: HardwarePart,
  place: BoxSpot,
  body: number = ownBody(model, part),
): LinkEnd {
  const on = faceSpots(at(model.bodies, body), groupsOf(input, part));
  return { part: body, fitting: fitted(model, body, part.id, on, place) };
}

/**
 * All fasteners of a piece of hardware that sit in one body, side by side, N/m.
 *
 * @throws Refusal where none does
 */
function heldBy(input: ReviewInput, model: BoxModel, part: HardwarePart, body: number): number {
  const groups = groupsOf(input, part).filter(({ panel }) => bodyOf(model, panel) === body);
  if (groups.length === 0)
    throw new Refusal(`box: ${part.id} has no fasteners in ${at(model.bodies, body).name}`);
  return groups.reduce((sum, group) => sum + group.count * fastenerSlip(input, group), 0);
}

/** It stands on its wheel; sideways its swivel gives. */
function casterLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const [x, y, z] = spotOf(part.centre);
  const from = endOf(input, model, part, [x, y, z - part.stock.standing]);
  const { upright, sideways } = casterStiffness;
  const held = { kind: "caster", name: part.id, from } as const;
  return [
    { ...held, along: down, stiffness: upright, only: "push" },
    { ...held, along: alongX, stiffness: sideways },
    { ...held, along: alongY, stiffness: sideways },
  ];
}

/** Wood or rubber on a hard floor, and what keeps it from sliding there, N/m. Common practice, no source. */
const floorStiffness = { upright: 1e7, sideways: 1e6 };

/** What stands on the floor at a place: it pushes up, and holds sideways. */
export function floorLinksAt(name: string, from: LinkEnd): readonly CaseLink[] {
  const held = { kind: "floor", name, from } as const;
  const { upright, sideways } = floorStiffness;
  return [
    { ...held, along: down, stiffness: upright, only: "push" },
    { ...held, along: alongX, stiffness: sideways },
    { ...held, along: alongY, stiffness: sideways },
  ];
}

/** A foot or a skid bears on the bottom above it, and touches the floor at its corners. */
function footLinks(model: BoxModel, part: HardwarePart, body: number): readonly CaseLink[] {
  const touches = touchesOf(part);
  const { at: origin } = at(model.bodies, body);
  const below: FaceSpots = {
    face: "bottom",
    spots: touches.map(({ x, y }): Point2 => ({ x: x - origin[0], y: y - origin[1] })),
  };
  const on = holding(model, body, [below]);
  return touches.flatMap(({ x, y }) => {
    const place: BoxSpot = [x, y, part.centre.z - part.stock.standing];
    return floorLinksAt(part.id, { part: body, fitting: fitted(model, body, part.id, on, place) });
  });
}

/** A hand holds the grip at both its sides, so that the case does not tip about the handles. */
function handleLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const grip = gripAxis(at(model.bodies, ownBody(model, part)), part);
  const middle = spotOf(part.centre);
  const held = { kind: "handle", name: part.id, stiffness: handStiffness } as const;
  const sides = [-halfGrip, halfGrip].map((aside) =>
    endOf(input, model, part, placed(middle, [grip, middle[grip] + aside])),
  );
  const from = endOf(input, model, part, middle);
  // An upright grip holds level at both its sides, so that the case does not turn about the line of its handles.
  const [atSides, atMiddle] = grip === 2 ? [[alongX, alongY], [up]] : [[up], [alongX, alongY]];
  return [
    ...sides.flatMap((side) => atSides.map((along): CaseLink => ({ ...held, from: side, along }))),
    ...atMiddle.map((along): CaseLink => ({ ...held, from, along })),
  ];
}

/**
 * The axis of the box along which the longer side of a handle lies.
 *
 * @throws Refusal when it lies on none of the body's panels
 */
function gripAxis(body: BoxBody, { id, panels: [panel = ""], on, size, stock }: HardwarePart): Axis {
  const placeOn = body.panels.get(panel);
  if (!placeOn || !on) throw new Refusal(`box: ${id} lies on no panel of ${body.name}`);
  const { width, height } = size ?? stock;
  const across = width >= height;
  return frames[placeOn(on).face].axes[across ? 0 : 1];
}

/**
 * The keeper a latch pulls on: the nearest of another section, within twice their heights.
 *
 * @throws Refusal for a latch without a keeper, or one out of its reach
 */
function keeperOf(latch: HardwarePart, keepers: readonly HardwarePart[]): HardwarePart {
  const away = (other: HardwarePart): number => distance(spotOf(latch.centre), spotOf(other.centre));
  const [keeper] = keepers
    .filter(({ section }) => section !== latch.section)
    .sort((a, b) => away(a) - away(b));
  if (!keeper) throw new Refusal(`box: ${latch.id} has no keeper on another section`);
  const reach = 2 * (latch.stock.height + keeper.stock.height);
  if (away(keeper) > reach)
    throw new Refusal(
      `box: ${latch.id} and ${keeper.id} do not touch, they are ${(1000 * away(keeper)).toFixed(0)} mm apart`,
    );
  return keeper;
}

/** It pulls, and holds sideways by its hook. */
function latchLinks(
  input: ReviewInput,
  model: BoxModel,
  latch: HardwarePart,
  keeper: HardwarePart,
): CaseLink[] {
  const [lower, upper] = latch.centre.z <= keeper.centre.z ? [latch, keeper] : [keeper, latch];
  const [a, b] = [spotOf(lower.centre), spotOf(upper.centre)];
  const place = perAxis((axis) => (a[axis] + b[axis]) / 2);
  const [from, to] = [endOf(input, model, lower, place), endOf(input, model, upper, place)];
  const stiffness = inRow([lower, upper].map((part) => heldBy(input, model, part, ownBody(model, part))));
  const held = { kind: "latch", name: latch.id, from, to, stiffness } as const;
  return [
    { ...held, along: alongX },
    { ...held, along: alongY },
    { ...held, along: up, only: "pull" },
  ];
}

/** Springs one after the other. */
function inRow(stiffness: readonly number[]): number {
  return 1 / stiffness.reduce((sum, each) => sum + 1 / each, 0);
}

/**
 * It holds every way and turns: two of them leave a door free about their line.
 *
 * @throws Refusal when it does not join a panel and a leaf
 */
function hingeLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const bodies = [...new Set(part.panels.map((panel) => bodyOf(model, panel)))].filter((body) => body >= 0);
  const [one, other] = bodies;
  if (one === undefined || other === undefined)
    throw new Refusal(`box: ${part.id} joins ${part.panels.join(" and ")}, expected a panel and a leaf`);
  const place = spotOf(part.centre);
  const [from, to] = [endOf(input, model, part, place, one), endOf(input, model, part, place, other)];
  const stiffness = inRow([one, other].map((body) => heldBy(input, model, part, body)));
  return everyWay.map((along) => ({ kind: "hinge", name: part.id, from, to, along, stiffness }));
}

/** How far beside an opening a latch catches, and half of how long, m. */
const catchBeside = 0.012;
const halfCatch = 0.015;

/** A latch of a leaf catches behind what is at its nearest side, which keeps the leaf in the face's plane. */
function doorLatchLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const number = ownBody(model, part);
  const leaf = at(model.bodies, number);
  if (leaf.name === leaf.section) return [];
  const held = { kind: "door latch", name: part.id } as const;
  const own = heldBy(input, model, part, number);
  const { face, middle, spread, place } = nearestSide(leaf, part);
  const along = at(everyWay, frames[face].axes[2]);
  const over = part.panels.map((panel) => bodyOf(model, panel)).find((body) => isBesideAt(model, body, leaf));
  if (over !== undefined) {
    const ends = [number, over].map((body) => endOf(input, model, part, spotOf(part.centre), body));
    const stiffness = inRow([own, heldBy(input, model, part, over)]);
    return [{ ...held, from: at(ends, 0), to: at(ends, 1), along, stiffness }];
  }
  const other = model.bodies.findIndex((body) => isBeside(body, leaf) && reaches(body, middle));
  const on = other < 0 ? model.bodies.findIndex(({ name }) => name === leaf.section) : other;
  const { at: low } = at(model.bodies, on);
  const [u, v] = frames[face].axes;
  const spots = spread.map((spot) => ({ x: spot[u] - low[u], y: spot[v] - low[v] }));
  const to: LinkEnd = { part: on, fitting: fitted(model, on, part.id, [{ face, spots }], place) };
  return [{ ...held, from: endOf(input, model, part, place, number), to, along, stiffness: own }];
}

function isBesideAt({ bodies }: BoxModel, number: number, leaf: BoxBody): boolean {
  const body = bodies[number];
  return body !== undefined && isBeside(body, leaf);
}

/** Whether a place of a body's plane lies on it. */
function reaches({ at: low, problem }: BoxBody, place: BoxSpot): boolean {
  const size = extents(problem);
  return [0, 1, 2].every((axis) => {
    const off = at(place, axis) - at(low, axis);
    return at(size, axis) === 0 || (off >= 0 && off <= at(size, axis));
  });
}

/** Where a latch catches beside its leaf, in the stacked case. */
interface Caught {
  /** The face that the leaf is in. */
  readonly face: FaceSpots["face"];
  /** The middle of the catch. */
  readonly middle: BoxSpot;
  /** Its ends. */
  readonly spread: readonly BoxSpot[];
  /** The side of the leaf, between latch and catch. */
  readonly place: BoxSpot;
}

/**
 * The side of a leaf nearest to its latch, and where the latch catches beyond it.
 *
 * @throws RangeError for a leaf without a face
 */
function nearestSide(leaf: BoxBody, { centre }: HardwarePart): Caught {
  const [face] = [...leaf.panels.values()].map((placeOn) => placeOn(origin).face);
  if (!face) throw new RangeError(`box: ${leaf.name} has no face`);
  const [along, across] = frames[face].axes;
  const [size, middle] = [extents(leaf.problem), spotOf(centre)];
  const [nearest] = [along, across]
    .flatMap((axis) =>
      [0, 1].map((high) => {
        const side = leaf.at[axis] + high * size[axis];
        return { axis, out: high === 1 ? 1 : -1, side, away: Math.abs(middle[axis] - side) };
      }),
    )
    .sort((a, b) => a.away - b.away);
  if (!nearest) throw new RangeError(`box: ${leaf.name} has no sides`);
  const { axis, out, side } = nearest;
  const other = axis === along ? across : along;
  const beyond = placed(middle, [axis, side + out * catchBeside]);
  const spread = [-halfCatch, halfCatch].map((aside) => placed(beyond, [other, middle[other] + aside]));
  return { face, middle: beyond, spread, place: placed(middle, [axis, side]) };
}

/** Any place of a panel tells the face it lies in. */
const origin: Point2<Length> = { x: Length.si(0), y: Length.si(0) };

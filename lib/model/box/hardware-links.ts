/** Casters, handles, latches and hinges as springs between the bodies of the case and to the floor and the hands. */
import type { Fastening, HardwarePart } from "../../design/index.js";
import type { BoxSpot, FaceSpots, Link, LinkEnd, Spot } from "../../fem/index.js";
import { distance, frames } from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import type { BoxBody } from "./box-body.js";
import { type BoxModel, bodyOf, faceSpots, fitted, spotOf } from "./box-model.js";
import { fastenerSlip } from "./edge-joints.js";

/** What a spring stands for. */
export type LinkKind = "caster" | "handle" | "latch" | "hinge" | "door latch" | "bearing" | "stand";

/** A spring of the case. */
export interface CaseLink extends Link {
  /** The sort of hardware or support. */
  readonly kind: LinkKind;
}

const axes: readonly BoxSpot[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const down: BoxSpot = [0, 0, -1];
const up: BoxSpot = [0, 0, 1];

/** Springs of casters, N/m: a hard tyre gives about 1 mm under 400 N, its swivel more. Common practice, no source. */
const casterStiffness = { upright: 4e5, sideways: 4e4 };
/** Hands and arms, N/m, and half of a hand's width on its grip, m. Common practice, no source. */
const handStiffness = 1e5;
const halfGrip = 0.04;

/** Every spring that hardware makes. */
export function hardwareLinks(input: ReviewInput, model: BoxModel): readonly CaseLink[] {
  const of = (duty: HardwarePart["item"]["duty"]): readonly HardwarePart[] =>
    input.parts.hardware.filter(
      ({ item, panels }) => item.duty === duty && bodyOf(model, panels[0] ?? "") >= 0,
    );
  return [
    ...of("roll").flatMap((part) => casterLinks(input, model, part)),
    ...of("lift").flatMap((part) => handleLinks(input, model, part)),
    ...latchPairs(of("join-sections")).flatMap(([latch, keeper]) => latchLinks(input, model, latch, keeper)),
    ...of("hinge").flatMap((part) => hingeLinks(input, model, part)),
    ...of("close").flatMap((part) => doorLatchLinks(input, model, part)),
  ];
}

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
  body: number = bodyOf(model, part.panels[0] ?? ""),
): LinkEnd {
  const on = faceSpots(model.bodies[body]!, groupsOf(input, part));
  return { part: body, fitting: fitted(model, body, part.id, on, place) };
}

/** All fasteners of a piece of hardware that sit in one body, side by side, N/m. */
function heldBy(input: ReviewInput, model: BoxModel, part: HardwarePart, body: number): number {
  return groupsOf(input, part)
    .filter(({ panel }) => bodyOf(model, panel) === body)
    .reduce((sum, group) => sum + group.count * fastenerSlip(input, group), 0);
}

/** It stands on its wheel; sideways its swivel gives. */
function casterLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const [x, y, z] = spotOf(part.centre);
  const from = endOf(input, model, part, [x, y, z - part.stock.standing]);
  const { upright, sideways } = casterStiffness;
  const held = { kind: "caster", name: part.id, from } as const;
  return [
    { ...held, along: down, stiffness: upright, only: "push" },
    { ...held, along: axes[0]!, stiffness: sideways },
    { ...held, along: axes[1]!, stiffness: sideways },
  ];
}

/** A hand holds the grip at both its sides, so that the case does not tip about the handles. */
function handleLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const body = model.bodies[bodyOf(model, part.panels[0]!)]!;
  const grip = gripAxis(body, part);
  const middle = spotOf(part.centre);
  const held = { kind: "handle", name: part.id, stiffness: handStiffness } as const;
  const sides = [-halfGrip, halfGrip].map((aside) =>
    endOf(
      input,
      model,
      part,
      middle.map((at, axis) => at + (axis === grip ? aside : 0)) as unknown as BoxSpot,
    ),
  );
  const from = endOf(input, model, part, middle);
  return [
    ...sides.map((side): CaseLink => ({ ...held, from: side, along: up })),
    { ...held, from, along: axes[0]! },
    { ...held, from, along: axes[1]! },
  ];
}

/** The axis of the box along which the longer side of a handle lies. */
function gripAxis({ panels }: BoxBody, { panels: [id = ""], on, item, stock }: HardwarePart): number {
  const place = panels.get(id)!;
  const turned = Array.isArray(item.places) && item.places[0]?.turned === true;
  const across = stock.width >= stock.height !== turned;
  const { face } = place(on!);
  return frames[face].axes[across ? 0 : 1];
}

/** A latch and the keeper it pulls on: the nearest of another section, within twice their heights. */
function latchPairs(parts: readonly HardwarePart[]): readonly (readonly [HardwarePart, HardwarePart])[] {
  return parts
    .filter(({ stock }) => stock.kind === "latch")
    .map((latch) => {
      const away = (other: HardwarePart): number => distance(spotOf(latch.centre), spotOf(other.centre));
      const [keeper] = parts
        .filter(({ stock, section }) => stock.kind === "keeper" && section !== latch.section)
        .sort((a, b) => away(a) - away(b));
      if (!keeper) throw new Refusal(`box: ${latch.id} has no keeper on another section`);
      const reach = 2 * (latch.stock.height + keeper.stock.height);
      if (away(keeper) > reach)
        throw new Refusal(
          `box: ${latch.id} and ${keeper.id} do not touch, they are ${(1000 * away(keeper)).toFixed(0)} mm apart`,
        );
      return [latch, keeper] as const;
    });
}

/** It pulls, and holds sideways by its hook. */
function latchLinks(
  input: ReviewInput,
  model: BoxModel,
  latch: HardwarePart,
  keeper: HardwarePart,
): CaseLink[] {
  const [lower, upper] = [latch, keeper].sort((a, b) => a.centre.z - b.centre.z) as [
    HardwarePart,
    HardwarePart,
  ];
  const [a, b] = [spotOf(lower.centre), spotOf(upper.centre)];
  const place = a.map((at, axis) => (at + b[axis]!) / 2) as unknown as BoxSpot;
  const [from, to] = [endOf(input, model, lower, place), endOf(input, model, upper, place)];
  const stiffness = inRow(
    [lower, upper].map((part) => heldBy(input, model, part, bodyOf(model, part.panels[0]!))),
  );
  return axes.map((along, axis) => ({
    kind: "latch",
    name: latch.id,
    from,
    to,
    along,
    stiffness,
    ...(axis === 2 ? { only: "pull" as const } : {}),
  }));
}

/** Springs one after the other. */
function inRow(stiffness: readonly number[]): number {
  return 1 / stiffness.reduce((sum, each) => sum + 1 / each, 0);
}

/** It holds every way and turns: two of them leave a door free about their line. */
function hingeLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const bodies = [...new Set(part.panels.map((panel) => bodyOf(model, panel)))].filter((body) => body >= 0);
  const [one, other] = bodies;
  if (one === undefined || other === undefined)
    throw new Refusal(`box: ${part.id} joins ${part.panels.join(" and ")}, expected a panel and a leaf`);
  const place = spotOf(part.centre);
  const [from, to] = [endOf(input, model, part, place, one), endOf(input, model, part, place, other)];
  const stiffness = inRow([one, other].map((body) => heldBy(input, model, part, body)));
  return axes.map((along) => ({ kind: "hinge", name: part.id, from, to, along, stiffness }));
}

/** How far beside an opening a latch catches, and half of how long, m. */
const catchBeside = 0.012;
const halfCatch = 0.015;

/** A latch of a leaf catches behind the nearest side of the opening: it keeps the leaf in the face's plane. */
function doorLatchLinks(input: ReviewInput, model: BoxModel, part: HardwarePart): CaseLink[] {
  const leaf = bodyOf(model, part.panels[0]!);
  const { section, problem } = model.bodies[leaf]!;
  const own = input.parts.panels.find(({ id, role }) => id === part.panels[0] && role === "leaf");
  if (!own) return [];
  const frame = model.bodies.findIndex(({ name }) => name === section);
  const [face] = Object.keys(problem.faces) as [FaceSpots["face"]];
  const [along, across, through] = frames[face].axes;
  const { spots, place } = nearestSide(model.bodies[leaf]!, model.bodies[frame]!, part, face);
  const direction = axes[through]!;
  const at: [number, number, number] = [0, 0, 0];
  [at[along], at[across], at[through]] = [place[0], place[1], spotOf(part.centre)[through]!];
  const to: LinkEnd = { part: frame, fitting: fitted(model, frame, part.id, [{ face, spots }], at) };
  const stiffness = heldBy(input, model, part, leaf);
  return [
    {
      kind: "door latch",
      name: part.id,
      from: endOf(input, model, part, at, leaf),
      to,
      along: direction,
      stiffness,
    },
  ];
}

/** The side of a leaf nearest to its latch: where it catches on the frame, in the frame's axes, and where that is in the case. */
function nearestSide(
  leaf: BoxBody,
  frame: BoxBody,
  { centre }: HardwarePart,
  face: FaceSpots["face"],
): { readonly spots: readonly Spot[]; readonly place: Spot } {
  const [along, across] = frames[face].axes;
  const size = [leaf.problem.length, leaf.problem.width, leaf.problem.height];
  const middle: Spot = [spotOf(centre)[along]!, spotOf(centre)[across]!];
  const low: Spot = [leaf.at[along], leaf.at[across]];
  const sides = ([0, 1] as const).flatMap((axis) =>
    [0, 1].map((high) => {
      const at = low[axis] + high * size[axis === 0 ? along : across]!;
      return { axis, out: high === 1 ? 1 : -1, at, away: Math.abs(middle[axis] - at) };
    }),
  );
  const { axis, out, at } = sides.sort((a, b) => a.away - b.away)[0]!;
  const placed = (aside: number, beyond: number): Spot => {
    const moved: [number, number] = [...middle];
    moved[axis] = at + out * beyond;
    moved[1 - axis]! += aside;
    return moved;
  };
  const inFrame = ([u, v]: Spot): Spot => [u - frame.at[along]!, v - frame.at[across]!];
  return {
    spots: [-halfCatch, halfCatch].map((aside) => inFrame(placed(aside, catchBeside))),
    place: placed(0, 0),
  };
}

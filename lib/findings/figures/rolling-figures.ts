/** The case on its wheels: pushed over a floor, a step or a gap, on a ramp, on a slope, on three wheels. */
import { castersOf, footprint, type ReviewInput } from "../../model/index.js";
import { type Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import { type CasePlane, casePlane, posed, turnedAbout } from "./case-plane.js";
import type { Figure, FigureArrow, FigureLine } from "./figure.js";
import { groundUnder, seenFrom, topAboveGround, weightAt } from "./standing-figures.js";

/** Elbow height of a standing adult, m, where a case is pushed unless it is lower; common practice, no source. */
const handsAt = 1.0;

/** To the left, where the front is and a case is pushed to. */
const ahead = Math.PI;

/** The case seen from the right, its front at the left, with its weight. */
function rolled(input: ReviewInput): {
  readonly plane: CasePlane;
  readonly centre: Point2;
  readonly weight: ReturnType<typeof weightAt>;
} {
  const plane = casePlane(input, "y");
  const { mass, ...place } = footprint(input).balance.value;
  const centre = plane.on(place);
  return { plane, centre, weight: weightAt(centre, Mass.show(mass, styleOf(input.case))) };
}

function pushFrom({ box }: CasePlane, input: ReviewInput, words: string | undefined): FigureArrow {
  const y = Math.min(handsAt, 0.9 * topAboveGround(input));
  return { at: { x: box.left + box.width, y }, way: ahead, acts: "pushing", ...told(words) };
}

function told(words: string | undefined): { readonly words?: string } {
  return words === undefined ? {} : { words };
}

/** Where the wheels touch the floor, from front to back. */
function wheelsOf(input: ReviewInput, plane: CasePlane): readonly Point2[] {
  const places = castersOf(input).map(({ centre }) => plane.on(centre).x);
  if (places.length === 0) throw new Refusal("picture of the case: it has no casters");
  return [Math.min(...places), Math.max(...places)].map((x) => ({ x, y: 0 }));
}

/** Pushed over the floor of the journey. */
export function rolledFigure(input: ReviewInput, words: string | undefined): Figure {
  const { plane, weight } = rolled(input);
  const drags = wheelsOf(input, plane).map(
    (at): FigureArrow => ({ at, way: 0, acts: "pulling", share: 0.45 }),
  );
  return {
    title: "Rolling it by hand",
    description: `Seen from the ${seenFrom(plane)}. The push at the back overcomes what holds the wheels back.`,
    shapes: plane.shapes,
    lines: [groundUnder(plane)],
    arrows: [pushFrom(plane, input, words), weight.arrow, ...drags],
    places: [weight.place],
  };
}

/** What the front wheels have to get over. */
export interface Obstacle {
  /** A step up, or a gap in the floor. */
  readonly kind: "step" | "gap";
  /** The height of the step, or the width of the gap. */
  readonly size: Length;
  /** The same in words. */
  readonly words: string;
}

/** Pushed against a step or over a gap. */
export function obstacleFigure(
  input: ReviewInput,
  { kind, size, words }: Obstacle,
  push: string | undefined,
): Figure {
  const { plane, weight } = rolled(input);
  const [front] = wheelsOf(input, plane);
  const { left, width } = plane.box;
  const radius = (input.case.journey.wheel ?? 0) / 2;
  const beyond = 0.3 * width;
  const [near, far] = [left + width + beyond, left - beyond];
  const reach = Math.sqrt(Math.max(0, radius ** 2 - (radius - Math.min(size, radius)) ** 2));
  const lip = front!.x - (kind === "step" ? reach : size / 2);
  const points =
    kind === "step"
      ? [
          { x: far, y: size },
          { x: lip, y: size },
          { x: lip, y: 0 },
          { x: near, y: 0 },
        ]
      : [
          { x: far, y: 0 },
          { x: lip, y: 0 },
          { x: lip, y: -size },
          { x: lip + size, y: -size },
          { x: lip + size, y: 0 },
          { x: near, y: 0 },
        ];
  const ground: FigureLine = { what: "ground", points };
  return {
    title: kind === "step" ? "Over the highest threshold" : "Over the widest gap",
    description: `Seen from the ${seenFrom(plane)}. The ${kind} is drawn as large as it is, ${words}, before the front wheels.`,
    shapes: plane.shapes,
    lines: [ground],
    arrows: [pushFrom(plane, input, push), weight.arrow],
    places: [weight.place, { what: "edge", at: { x: lip, y: kind === "step" ? size : 0 }, words }],
  };
}

/** On a ramp or a slope. */
export interface Slope {
  /** Stands over the picture. */
  readonly title: string;
  /** Of the ground against the level, rad. */
  readonly slope: number;
  /** The same in words. */
  readonly words: string;
}

/** The case on sloping ground, its front uphill, held or pulled along the slope. */
export function slopeFigure(input: ReviewInput, { title, slope, words }: Slope, force?: string): Figure {
  const { plane, centre, weight } = rolled(input);
  const wheels = wheelsOf(input, plane);
  const pose = turnedAbout(wheels[1]!, -slope);
  const ground = groundUnder(plane);
  const at = pose({ x: plane.box.left, y: plane.box.bottom + 0.15 * plane.box.height });
  const uphill = Math.PI - slope;
  const holds: readonly FigureArrow[] = [{ at, way: uphill, acts: "pulling", ...told(force) }];
  const right = ground.points[1]!.x;
  return {
    title,
    description: `Seen from the ${seenFrom(plane)}. The slope is drawn as steep as it is, ${words}; the arrows are what holds it and its weight.`,
    shapes: posed(plane.shapes, pose),
    lines: [
      { ...ground, points: ground.points.map(pose) },
      {
        what: "reach",
        points: [{ x: ground.points[0]!.x, y: pose(ground.points[1]!).y }, pose(ground.points[1]!)],
      },
    ],
    arrows: [...holds, { ...weight.arrow, at: pose(centre) }],
    places: [
      { ...weight.place, at: pose(centre) },
      { what: "point", at: { x: right, y: pose(ground.points[1]!).y }, words },
    ],
  };
}

/** Standing on its wheels, with what the most loaded one takes. */
export function wheelLoadFigure(input: ReviewInput, words: string | undefined): Figure {
  const { plane, centre, weight } = rolled(input);
  const wheels = wheelsOf(input, plane);
  const near = Math.abs(wheels[0]!.x - centre.x) <= Math.abs(wheels[1]!.x - centre.x) ? 0 : 1;
  return {
    title: "What its wheels carry",
    description: `Seen from the ${seenFrom(plane)}. The wheels nearer to the centre of gravity carry more; one in a dip carries nothing.`,
    shapes: plane.shapes,
    lines: [groundUnder(plane)],
    arrows: [
      weight.arrow,
      ...wheels.map(
        (at, i): FigureArrow => ({
          at,
          way: Math.PI / 2,
          acts: "pushing",
          share: i === near ? 1 : 0.6,
          ...(i === near ? told(words) : {}),
        }),
      ),
    ],
    places: [weight.place],
  };
}

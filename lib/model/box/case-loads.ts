/** What the bodies of the case weigh, with what rides in them, in any field of acceleration. */

import { at } from "../../algebra/lists.js";
import { inverse, matrix3, scalarProduct } from "../../algebra/matrix3.js";
import type { ContentPart, ShelfPart } from "../../design/index.js";
import {
  type BoxSpot,
  type BoxStructure,
  type FaceName,
  type FaceSpots,
  type Fitting,
  frames,
  nodeMasses,
  pullAt,
  weightLoad,
} from "../../fem/index.js";
import type { Point2 } from "../../shape/index.js";
import { bareShelfMass, type MassItem, massItems } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { type BoxModel, fitted, holding, inBody } from "./box-model.js";
import { boxFaces, minus, perAxis, plus, spotOf } from "./places.js";

/** Something heavy that rides in a body. */
export interface Rider {
  /** The number of the body it rides in. */
  readonly body: number;
  /** Where it rests or is fixed. */
  readonly fitting: Fitting;
  /** kg */
  readonly mass: number;
}

/** All masses of the case on its bodies. */
export interface CaseMasses {
  /** The bodies. */
  readonly model: BoxModel;
  /** What rides in them: contents and shelves. */
  readonly riders: readonly Rider[];
  /** By body: at each of its nodes, the sheets with all that is fixed to them, kg. */
  readonly fixed: readonly Float64Array[];
  /** Everything that has a mass. */
  readonly items: readonly MassItem[];
}

/** An acceleration at a place of the stacked case, m/s2. */
export type Field = (place: BoxSpot) => BoxSpot;

/**
 * Puts every mass where it rides: contents on what holds them, at their own centres; extrusions, hardware, glue and
 * fasteners spread over the sheets, so that mass and centre of each section are those of its list of masses.
 *
 * @param leftOut leaves by number that take part in no load case: their sections bear their weight, where they are shut
 */
export function caseMasses(input: ReviewInput, model: BoxModel, leftOut: readonly number[]): CaseMasses {
  const items = massItems(input);
  const riders = [
    ...input.parts.contents.map((content) => contentRider(input, model, content)),
    ...input.parts.shelves.map((shelf) => shelfRider(model, shelf)),
  ];
  const sheets = model.parts.map(({ structure, at: origin }) => nodesOf(structure, origin));
  const fixed = model.bodies.map(({ name, section }, i) => {
    const nodes = at(sheets, i);
    if (name !== section) return Float64Array.from(nodes, ({ mass }) => mass);
    const leaves = sheets.flatMap((leaf, k) => {
      const body = at(model.bodies, k);
      return body.section === section && body.name !== section && !leftOut.includes(k) ? leaf : [];
    });
    const carried = riders.flatMap(({ body, mass, fitting }) =>
      body === i ? [{ mass, at: plus(fitting.at, at(model.bodies, i).at) }] : [],
    );
    const whole = items
      .filter((item) => item.section === section)
      .map(({ mass, centre }) => ({ mass, at: spotOf(centre) }));
    return spread(nodes, without(whole, [...leaves, ...carried]));
  });
  return { model, riders, fixed, items };
}

/** A mass at a place of the stacked case. */
interface PointMass {
  /** kg */
  readonly mass: number;
  /** Its centre, m. */
  readonly at: BoxSpot;
}

/** Masses added up: how much, and mass times place. */
interface Moment {
  /** kg */
  readonly mass: number;
  /** Sum of mass times place, kg m. */
  readonly moment: BoxSpot;
}

function nodesOf(structure: BoxStructure, origin: BoxSpot): readonly PointMass[] {
  const masses = nodeMasses(structure);
  return structure.nodes.map((spot, node) => ({ mass: at(masses, node), at: plus(spot, origin) }));
}

function momentOf(points: readonly PointMass[]): Moment {
  const sum = (of: (point: PointMass) => number): number => points.reduce((all, point) => all + of(point), 0);
  return {
    mass: sum(({ mass }) => mass),
    moment: perAxis((axis) => sum(({ mass, at: place }) => mass * place[axis])),
  };
}

function without(whole: readonly PointMass[], parts: readonly PointMass[]): Moment {
  const [all, less] = [momentOf(whole), momentOf(parts)];
  return { mass: all.mass - less.mass, moment: minus(all.moment, less.moment) };
}

/**
 * Masses at the nodes of a section's sheets that come to a wanted mass with its centre: as those of the sheets, and a
 * little more the farther a node lies towards where the centre should be.
 */
function spread(nodes: readonly PointMass[], { mass, moment }: Moment): Float64Array {
  const sheets = momentOf(nodes);
  const middle = perAxis((axis) => sheets.moment[axis] / sheets.mass);
  const arms = nodes.map(({ at: place }) => minus(place, middle));
  const second = matrix3((i, j) =>
    nodes.reduce((sum, node, k) => sum + node.mass * at(arms, k)[i] * at(arms, k)[j], 0),
  );
  const turn = inverse(second);
  const off = perAxis((axis) => moment[axis] - mass * middle[axis]);
  const slope = perAxis((axis) => scalarProduct(turn[axis], off));
  return Float64Array.from(
    nodes,
    (node, k) => node.mass * (mass / sheets.mass + scalarProduct(slope, at(arms, k))),
  );
}

/**
 * Forces on every body.
 *
 * @param masses of the case
 * @param field acceleration that pulls at each place
 */
export function massLoads({ model, riders, fixed }: CaseMasses, field: Field): readonly Float64Array[] {
  return model.parts.map(({ structure, at: origin }, body) => {
    const load = weightLoad(structure, at(fixed, body), (spot) => field(plus(spot, origin)));
    for (const { fitting, mass } of riders.filter((rider) => rider.body === body)) {
      const pull = field(plus(fitting.at, origin));
      pullAt(
        load,
        fitting,
        perAxis((axis) => mass * pull[axis]),
      );
    }
    return load;
  });
}

function contentRider(input: ReviewInput, model: BoxModel, part: ContentPart): Rider {
  const { content, centre, box } = part;
  const { held } = content;
  const shelf = input.parts.shelves.find(({ carries }) => carries.includes(part));
  if (shelf) return rider(model, { ...content, centre }, shelfEnds(model, shelf));
  const face: FaceName =
    held.by === "hung"
      ? "top"
      : held.by === "screws" || held.by === "rivets"
        ? boxFaces[held.to][0]
        : "bottom";
  return rider(model, { ...content, centre }, (section) => [
    { face, spots: shadow(model, section, face, box) },
  ]);
}

/** Something heavy with its place in the stacked case. */
type Heavy = Pick<MassItem, "name" | "section" | "mass" | "centre">;

function rider(
  model: BoxModel,
  { name, section, mass, centre }: Heavy,
  on: (section: number) => readonly FaceSpots[],
): Rider {
  const body = model.bodies.findIndex((one) => one.name === section);
  const rests = holding(model, body, on(body));
  return { body, fitting: fitted(model, body, name, rests, spotOf(centre)), mass };
}

/** Shares of a thing's width and depth at which it rests or is fixed. */
const restsAt = [0.15, 0.5, 0.85];

/** Where a thing lies over a face, as nine places. */
function shadow(
  model: BoxModel,
  body: number,
  face: FaceName,
  { low, size }: ContentPart["box"],
): readonly Point2[] {
  const [along, across] = frames[face].axes;
  const [from, extent] = [inBody(at(model.bodies, body), spotOf(low)), spotOf(size)];
  return restsAt.flatMap((right) =>
    restsAt.map((back) => ({
      x: from[along] + right * extent[along],
      y: from[across] + back * extent[across],
    })),
  );
}

function shelfRider(model: BoxModel, shelf: ShelfPart): Rider {
  const { id: name, section, centroid: centre } = shelf.panel;
  return rider(model, { name, section, mass: bareShelfMass(shelf), centre }, shelfEnds(model, shelf));
}

/** What bears a shelf: its rails, three places on each. */
function shelfEnds(model: BoxModel, { shelf, panel }: ShelfPart): (body: number) => readonly FaceSpots[] {
  return (body) => {
    const from = inBody(at(model.bodies, body), spotOf(panel.box.low));
    const extent = spotOf(panel.box.size);
    const along = (axis: 0 | 1): readonly Point2[] =>
      restsAt.map((share) => ({ x: from[axis] + share * extent[axis], y: from[2] }));
    const ends: readonly FaceSpots[] = (["x0", "x1"] as const).map((face) => ({ face, spots: along(1) }));
    const back: FaceSpots = { face: "y1", spots: along(0) };
    if (shelf.support === "two ends") return ends;
    return shelf.support === "back only" ? [back] : [...ends, back];
  };
}

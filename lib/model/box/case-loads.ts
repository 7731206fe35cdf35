/** What the bodies of the case weigh, with what rides in them, in any field of acceleration. */
import { at } from "../../algebra/lists.js";
import type { ContentPart, ShelfPart } from "../../design/index.js";
import {
  type BoxSpot,
  extents,
  type FaceName,
  type FaceSpots,
  type Fitting,
  frames,
  isMaterial,
  nodeMasses,
  pullAt,
  type Spot,
  weightLoad,
} from "../../fem/index.js";
import { bareShelfMass, type MassItem, massItems } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { type BoxModel, fitted, inBody } from "./box-model.js";
import { boxFaces, perAxis, plus, spotOf } from "./places.js";

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
 * fasteners spread over the sheets.
 */
export function caseMasses(input: ReviewInput, model: BoxModel): CaseMasses {
  const items = massItems(input);
  const shelves = new Set(input.parts.shelves.map(({ panel }) => panel.id));
  const sheets = model.parts.map(({ structure }) => nodeMasses(structure));
  const own = sheets.map((masses) => masses.reduce((sum, mass) => sum + mass, 0));
  const shares = model.bodies.map(({ name, section }, i) => {
    if (name !== section) return 1;
    const fixed = items
      .filter((item) => item.section === section && item.group !== "contents" && !shelves.has(item.name))
      .reduce((sum, { mass }) => sum + mass, 0);
    const leaves = model.bodies.reduce(
      (sum, body, k) => sum + (body.section === section && body.name !== section ? at(own, k) : 0),
      0,
    );
    return (fixed - leaves) / at(own, i);
  });
  const riders = [
    ...input.parts.contents.map((content) => contentRider(input, model, content)),
    ...input.parts.shelves.map((shelf) => shelfRider(model, shelf)),
  ];
  const spread = sheets.map((masses, i) => masses.map((mass) => at(shares, i) * mass));
  return { model, riders, fixed: spread, items };
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
  const rests = on(body).map((spots) => onMaterial(model, body, spots));
  return { body, fitting: fitted(model, body, name, rests, spotOf(centre)), mass };
}

/** Those of a thing's places that no opening takes. */
function onMaterial({ bodies }: BoxModel, body: number, { face, spots }: FaceSpots): FaceSpots {
  const { problem } = at(bodies, body);
  const size = extents(problem);
  const [along, across] = frames[face].axes;
  const outline = { length: size[along], width: size[across], cutouts: problem.faces[face]?.cutouts ?? [] };
  return { face, spots: spots.filter((spot) => isMaterial(outline, spot)) };
}

/** Shares of a thing's width and depth at which it rests or is fixed. */
const restsAt = [0.15, 0.5, 0.85];

/** Where a thing lies over a face, as nine places. */
function shadow(
  model: BoxModel,
  body: number,
  face: FaceName,
  { low, size }: ContentPart["box"],
): readonly Spot[] {
  const [along, across] = frames[face].axes;
  const [from, extent] = [inBody(at(model.bodies, body), spotOf(low)), spotOf(size)];
  return restsAt.flatMap((right) =>
    restsAt.map((back): Spot => [from[along] + right * extent[along], from[across] + back * extent[across]]),
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
    const along = (axis: 0 | 1): readonly Spot[] =>
      restsAt.map((share): Spot => [from[axis] + share * extent[axis], from[2]]);
    const ends: readonly FaceSpots[] = (["x0", "x1"] as const).map((face) => ({ face, spots: along(1) }));
    const back: FaceSpots = { face: "y1", spots: along(0) };
    if (shelf.support === "two ends") return ends;
    return shelf.support === "back only" ? [back] : [...ends, back];
  };
}

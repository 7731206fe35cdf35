/** The case as bodies on a mesh: its sections and door leaves, each factored by itself. */

import { at } from "../../algebra/lists.js";
import {
  type BoxSpot,
  extents,
  type FaceSpots,
  type Fitting,
  type FreePart,
  faceNames,
  fittingOn,
  frames,
  freeBoxes,
  isMaterial,
} from "../../fem/index.js";
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { type BoxBody, facePanels, leafBody, sectionBody } from "./box-body.js";
import { minus } from "./places.js";

/** Bodies of the case, free. */
export interface BoxModel {
  /** Sections first, then leaves. */
  readonly bodies: readonly BoxBody[];
  /** In the order of the bodies. */
  readonly parts: readonly FreePart[];
}

/** About how many elements a section would have if none were needed for seams and openings. */
export type ElementTarget = number;

/**
 * Meshes and factors every section and leaf.
 *
 * @param input the case
 * @param element target of the sections' meshes
 * @throws Refusal that names what cannot be meshed or is loose in itself
 */
export function boxModel(input: ReviewInput, elementTarget: ElementTarget): BoxModel {
  const sections = input.parts.sections.map(({ name }) => sectionBody(input, name));
  const leaves = sections.flatMap((section) =>
    facePanels(input, section.name, "leaf").map((leaf) => leafBody(input, leaf, section)),
  );
  const bodies = [...sections, ...leaves];
  const free = freeBoxes(
    bodies.map(({ problem }, i) => {
      const size = i < sections.length ? sectionSize(problem, elementTarget) : leafSize(problem);
      return { problem, size };
    }),
  );
  const parts = bodies.map(({ at: origin }, i) => ({ ...at(free, i), at: origin }));
  return { bodies, parts };
}

function sectionSize({ length, width, height }: BoxBody["problem"], elementTarget: ElementTarget): number {
  return Math.sqrt((2 * (length * width + length * height + width * height)) / elementTarget);
}

/** A few elements each way are enough for a leaf, which hardly bends. */
function leafSize({ length, width, height }: BoxBody["problem"]): number {
  return Math.max(length, width, height) / 3;
}

/** A place of the stacked case in a body's own axes. */
export function inBody({ at: origin }: Pick<BoxBody, "at">, place: BoxSpot): BoxSpot {
  return minus(place, origin);
}

/** Those of some places of a face that no opening takes; none where the face is open. */
export function onMaterial({ bodies }: BoxModel, body: number, { face, spots }: FaceSpots): FaceSpots {
  const { problem } = at(bodies, body);
  if (!problem.faces[face]) return { face, spots: [] };
  const size = extents(problem);
  const [along, across] = frames[face].axes;
  const outline = { length: size[along], width: size[across], cutouts: problem.faces[face].cutouts };
  return { face, spots: spots.filter((spot) => isMaterial(outline, spot)) };
}

/** Fewer places than these do not hold a thing. */
const fewest = 2;

/** Shares of a face's length and width, where a thing is held that nothing near it can hold. */
const anywhere = [0.15, 0.5, 0.85];

/** The first of several lists of places of which enough lie on material; else places all over the body's faces. */
export function holding(
  model: BoxModel,
  body: number,
  ...wanted: readonly (readonly FaceSpots[])[]
): readonly FaceSpots[] {
  const onWhat = (on: readonly FaceSpots[]): readonly FaceSpots[] =>
    on.map((spots) => onMaterial(model, body, spots)).filter(({ spots }) => spots.length > 0);
  const there = wanted.map(onWhat);
  const size = extents(at(model.bodies, body).problem);
  const held = there.find((on) => on.reduce((sum, { spots }) => sum + spots.length, 0) >= fewest);
  if (held) return held;
  const all = faceNames.map((face): FaceSpots => {
    const [along, across] = frames[face].axes;
    return {
      face,
      spots: anywhere.flatMap((u) => anywhere.map((v) => ({ x: u * size[along], y: v * size[across] }))),
    };
  });
  return onWhat(all);
}

/** Places of panels of one body, face by face. */
export function faceSpots(
  body: BoxBody,
  places: readonly { readonly panel: string; readonly at: readonly Point2<Length>[] }[],
): readonly FaceSpots[] {
  return places
    .flatMap(({ panel, at: points }) => {
      const place = body.panels.get(panel);
      return place ? points.map(place) : [];
    })
    .map(({ face, spot }) => ({ face, spots: [spot] }));
}

/** The number of the body a panel belongs to; -1 when it is none of them. */
export function bodyOf({ bodies }: BoxModel, panel: string): number {
  return bodies.findIndex(({ panels }) => panels.has(panel));
}

/** A fitting on a body at a place of the stacked case. */
export function fitted(
  { bodies, parts }: BoxModel,
  body: number,
  name: string,
  on: readonly FaceSpots[],
  place: BoxSpot,
): Fitting {
  return fittingOn(at(parts, body).structure, name, on, inBody(at(bodies, body), place));
}

/** The case as bodies on a mesh: its sections and door leaves, each factored by itself. */

import { at } from "../../algebra/lists.js";
import {
  type BoxSpot,
  type FaceSpots,
  type Fitting,
  type FreePart,
  fittingOn,
  freeBox,
} from "../../fem/index.js";
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import type { ModuliShares } from "../stiffness/panel-stiffness.js";
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
 * @param shares of the measured moduli; as measured when left out
 * @throws Refusal that names what cannot be meshed or is loose in itself
 */
export function boxModel(input: ReviewInput, elementTarget: ElementTarget, shares?: ModuliShares): BoxModel {
  const sections = input.parts.sections.map(({ name }) => sectionBody(input, name, shares));
  const leaves = sections.flatMap((section) =>
    facePanels(input, section.name, "leaf").map((leaf) => leafBody(input, leaf, section, shares)),
  );
  const bodies = [...sections, ...leaves];
  const parts = bodies.map(({ problem, at: origin }, i) => {
    const size = i < sections.length ? sectionSize(problem, elementTarget) : leafSize(problem);
    return { ...freeBox({ problem, size }), at: origin };
  });
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

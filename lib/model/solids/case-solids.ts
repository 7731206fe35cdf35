/** Every part of a case as it stands in the stacked case. */
import { memoizeLast } from "../../kept/index.js";
import type { ReviewInput } from "../review-input.js";
import type { CaseSolid, CaseSolids } from "./case-solid.js";
import { fastenerSolids } from "./fastener-solids.js";
import { barSolids, hardwareSolids } from "./hardware-solids.js";
import { movementsOf } from "./movements.js";
import { boxPrism } from "./prisms.js";
import { sheetSolids } from "./sheet-solids.js";

/**
 * Every part of a case as prisms in the axes of the stacked case (metres; x right, y back, z up), with what moves and
 * how. From a review it is `review.solids`; below, `caseSolids(input)`. Kept while the parts stay the same.
 *
 *     for (const { name, outline, holes, place, depth } of job.review.solids.solids) ...
 *
 * Panels have their openings but no holes of fasteners: `joins` of a fastener names what it goes through. Circles of
 * casters are cylinders. Stays, straps, cradles and cords have no solid, since nobody says where they are.
 */
export const caseSolids: (input: ReviewInput) => CaseSolids = memoizeLast(
  ({ parts }: ReviewInput) => parts,
  ({ case: build }) => [build.journey, build.leftOut],
  newCaseSolids,
);

function newCaseSolids(input: ReviewInput): CaseSolids {
  const { parts } = input;
  const standing = [
    ...sheetSolids(parts),
    ...barSolids(input),
    ...hardwareSolids(input),
    ...parts.contents.map(
      ({ content: { name, section }, box }): CaseSolid => ({
        ...boxPrism(box),
        ...{ key: name, part: name, name, section, kind: "content", joins: [] },
      }),
    ),
  ];
  const solids = [...standing, ...fastenerSolids(parts, standing)];
  return { solids, movements: movementsOf(input, solids) };
}

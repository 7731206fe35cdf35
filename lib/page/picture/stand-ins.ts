/** What a picture draws in place of a solid that is only the room a thing takes: a wheel in its fork for a caster. */
import { crossProduct } from "../../algebra/matrix3.js";
import type { CaseSolid } from "../../model/index.js";
import { boundsOf, circle, circlesOf, middleOf, rectangle } from "../../shape/index.js";
import { along } from "./camera.js";

/** Shares of the height below the plate: common looks of a caster, for the eye alone. */
const shares = { wheel: 0.8, tread: 0.26, fork: 0.4 } as const;

/** The solids to draw for a solid. */
export function standIns(solid: CaseSolid): readonly CaseSolid[] {
  if (solid.kind !== "caster" || circlesOf(solid.outline).length === 0) return [solid];
  const { place, depth } = solid;
  const down = crossProduct(place.x, place.y);
  const centre = middleOf(boundsOf(solid.outline));
  const top = along(along(place.origin, place.x, centre.x), place.y, centre.y);
  const radius = (shares.wheel * depth) / 2;
  const tread = shares.tread * depth;
  const outwards = down[2] <= 0;
  const axle = along(top, down, outwards ? depth - radius : radius);
  const half = (shares.fork * depth) / 2;
  const forkFrom = outwards ? top : along(top, down, radius);
  return [
    {
      ...solid,
      outline: rectangle({ left: -half, bottom: -half, width: 2 * half, height: 2 * half }),
      place: { ...place, origin: forkFrom },
      depth: depth - 2 * radius,
    },
    {
      ...solid,
      key: `${solid.key}, wheel`,
      outline: circle({ x: 0, y: 0 }, radius),
      place: { origin: along(axle, [1, 0, 0], -tread / 2), x: [0, 1, 0], y: [0, 0, 1] },
      depth: tread,
    },
  ];
}

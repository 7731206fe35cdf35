/** What a box goes into, asked often: whether, not how deep. */
import type { Solid } from "../solid.js";
import { nearOf } from "./near.js";
import { after, before, type Placed, placed, type SolidReach } from "./placed.js";
import { boundsOfPieces, boxRegion, contact, shared } from "./region.js";

/**
 * The solids that a box along the axes shares space with, as they stand in their list. Exact as `findOverlaps` is.
 *
 * @param solids what stands; made ready once
 * @throws Refusal when a solid does not lie along the axes
 */
export function metByBox<S extends Solid>(
  solids: readonly S[],
): (box: SolidReach, asked: (solid: S) => boolean) => readonly S[] {
  const near = nearOf(solids.map((solid) => placed(solid)));
  return (box, asked) =>
    near(box).flatMap((one) => (asked(one.solid) && isReachedInto(one, box) ? [one.solid] : []));
}

/** Far more than a chord leaves its arc, m. */
const clearly = 1e-4;

/** Whether a solid shares space with a box that meets the box round it. */
function isReachedInto({ normal, region, circle }: Placed, { low, high }: SolidReach): boolean {
  const [u, v] = [after(normal), before(normal)];
  if (circle) {
    const { centre, radius } = circle;
    const apart = Math.hypot(
      Math.max(low[u] - centre.x, 0, centre.x - high[u]),
      Math.max(low[v] - centre.y, 0, centre.y - high[v]),
    );
    if (Math.abs(apart - radius) > clearly) return apart < radius;
  }
  const own = region();
  if (own.isBox) return true;
  const { left, bottom, width, height } = own.bounds;
  const isWhole = low[u] <= left && low[v] <= bottom && high[u] >= left + width && high[v] >= bottom + height;
  if (isWhole) return width > contact && height > contact;
  const box = { left: low[u], bottom: low[v], width: high[u] - low[u], height: high[v] - low[v] };
  return boundsOfPieces(shared(own, boxRegion(box))) !== undefined;
}

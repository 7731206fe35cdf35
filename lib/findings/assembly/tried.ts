/** Changes that are tried on solids. */
import { vector3 } from "../../algebra/matrix3.js";
import type { Fastening } from "../../design/index.js";
import type { CaseSolid } from "../../model/index.js";

/** A piece of a fastener moved along its row by a share of the pitch; as it was where there is no row. */
export function shifted(solid: CaseSolid, { at, pitch }: Fastening, share: number): CaseSolid {
  const [first, second] = at;
  if (!first || !second || pitch === undefined) return solid;
  const { place } = solid;
  const along = Math.hypot(second.x - first.x, second.y - first.y);
  const [dx, dy] = [(second.x - first.x) / along, (second.y - first.y) / along];
  const by = share * pitch;
  const origin = vector3((i) => place.origin[i] + by * (dx * place.x[i] + dy * place.y[i]));
  return { ...solid, place: { ...place, origin } };
}

/** Places and names in words. */
import type { Vector3 } from "../../algebra/matrix3.js";
import type { ReviewInput } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { styleOf } from "../amount.js";

/** A place in the builder's units, from the corner of its section. */
export function placeWords(input: ReviewInput, section: string, at: Vector3): string {
  const style = styleOf(input.case);
  const low = input.parts.sections.find(({ name }) => name === section)?.outside.low;
  const shown = (value: number): string => Length.show(Length.si(value), style);
  const [x, y, z] = [at[0] - (low?.x ?? 0), at[1] - (low?.y ?? 0), at[2] - (low?.z ?? 0)];
  return `${shown(x)} right, ${shown(y)} back and ${shown(z)} up from the outside lower left front corner of ${section}`;
}

/** What it takes to keep the case rolling: by the floor, and by the wheel where that is more. */
import type { WorkedLine } from "../../formula.js";
import { rollingShares, wheelResistance } from "../../moving/index.js";
import type { Ratio } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import type { ReviewInput } from "../review-input.js";

/** Push over weight, on the level. */
export interface RollingResistance {
  /** The push over the weight. */
  readonly share: Ratio;
  /** The wheel's line, where tread and diameter are known. */
  readonly because: readonly WorkedLine[];
  /** Where the share comes from. */
  readonly source: Citation;
  /** What decides, in words. */
  readonly words: string;
}

/** The larger of what the floor asks and what the wheel asks; of the floor alone where nobody looked at the wheel. */
export function resistanceOf({ case: { journey } }: ReviewInput): RollingResistance {
  const { tread, wheel, floor } = journey;
  const byFloor = floor === "even" ? rollingShares.good : rollingShares.uneven;
  const onFloor = { share: byFloor.share, source: byFloor.source, words: `an ${floor} floor` };
  if (tread === undefined || wheel === undefined) {
    const missing = "Tread and diameter of the wheels are not in the journey, so the floor alone decides";
    return { ...onFloor, because: [], words: `${onFloor.words}. ${missing}` };
  }
  const line = wheelResistance.worked({ tread, diameter: wheel });
  if (line.value <= byFloor.share) return { ...onFloor, because: [line] };
  return {
    share: line.value,
    because: [line],
    source: cite("hand-carts", "coefficients of rolling friction"),
    words: `wheels of ${tread}`,
  };
}

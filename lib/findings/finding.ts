import type { WorkedLine } from "../formula.js";
import type { RatioInterval } from "../model/index.js";
import type { ShowStyle } from "../quantity/index.js";
import type { MissingMeasurement } from "../refusal.js";
import type { Citation } from "../source.js";

/** What a finding comes to. `unknown` names the measurement to make. */
export type Verdict = "holds" | "close" | "fails" | "unknown";

/** A quantity under a name, ready to show in the reader's units. */
export interface Amount {
  readonly meaning: string;
  show(style?: ShowStyle): string;
}

/** One question about the case, answered with its working. */
export interface Finding {
  /** Dotted path, unique in a review: "stiffness.upper.front". */
  readonly id: string;
  /** The trade that asks: stiffness, joints, buying, travel, fit-out, money. */
  readonly topic: string;
  /** The part it is about: "upper.front", "handles". */
  readonly subject: string;
  /** As a builder would ask it. */
  readonly question: string;
  readonly verdict: Verdict;
  /** One sentence computed from the values. */
  readonly answer: string;
  readonly demand?: Amount;
  readonly capacity?: Amount;
  /** demand / capacity. */
  readonly ratio?: number;
  readonly interval?: RatioInterval;
  /** The worked lines behind it, in order. */
  readonly because: readonly WorkedLine[];
  readonly cautions: readonly string[];
  readonly source: readonly Citation[];
  readonly missing?: MissingMeasurement;
}

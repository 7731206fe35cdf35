/** What works loose on the road, and how often to look at it. */
import type { fastenerTraits } from "../../fastening/index.js";
import type { ReviewInput } from "../review-input.js";

/** How many of each family there are: what is closed for good, what turns back, what lets go of its wood. */
export interface LooseningCount {
  /** Rivets, whose holes wear. */
  readonly rivets: number;
  /** Bolts and the screws of inserts, which turn back. */
  readonly threads: number;
  /** Wood screws, which let go of their wood. */
  readonly screws: number;
}

/** What of a case can work loose. */
export function looseningCount({ parts }: ReviewInput): LooseningCount {
  const of = (chosen: (kind: keyof typeof fastenerTraits) => boolean): number =>
    parts.fastenings.reduce((sum, { fastener, count }) => (chosen(fastener.kind) ? sum + count : sum), 0);
  return {
    rivets: of((kind) => kind === "rivet"),
    threads: of((kind) => kind === "bolt" || kind === "insert"),
    screws: of((kind) => kind === "screw"),
  };
}

/** Trips from one look to the next, after the look that follows the first trip; common practice, no published rule. */
const usualTrips = 10;
const roughTrips = 5;

/** How many trips may pass between two looks at what fastens a case. */
export function tripsBetweenLooks({ case: { journey } }: ReviewInput): number {
  return journey.handling === "rough" || journey.handling === "parcel" ? roughTrips : usualTrips;
}

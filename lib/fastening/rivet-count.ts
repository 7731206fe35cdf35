import { type Formula, formula } from "../formula.js";
import { Count, listOf, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** Like parts that take like rivets. */
export interface RivetedPart {
  readonly part: string;
  /** Rivets in one. */
  readonly each: number;
  readonly parts: number;
}

/** All riveted parts of one rivet. */
export interface RivetCountInputs {
  readonly riveted: readonly RivetedPart[];
}

/**
 * Rivets for a set of parts: sum of rivets each times parts. Spares are not in it.
 *
 * @throws RangeError for an empty list
 * @example rivetCount(rivetCount.read({ riveted: [{ part: "latch", each: 8, parts: 6 }] })) // 48
 */
export const rivetCount: Formula<RivetCountInputs, number> = formula({
  id: "rivet.count",
  title: "Rivets for a set of parts",
  equation: String.raw`N = \sum n_i\,k_i`,
  inputs: {
    riveted: {
      symbol: "n_i, k_i",
      kind: listOf(recordOf<RivetedPart>("riveted part", { part: Name, each: Count, parts: Count })),
      meaning: "rivets each and number of each part",
    },
  },
  result: { symbol: "N", kind: Count, meaning: "rivets in all" },
  source: [cite("common-practice", "count by part: rivets each times parts")],
  validity: "One size of rivet; buy a few more than the count, some are spoilt.",
  refuse: ({ riveted }) => (riveted.length === 0 ? ["at least one part, got none"] : []),
  compute: ({ riveted }) => riveted.reduce((sum, { each, parts }) => sum + each * parts, 0),
});

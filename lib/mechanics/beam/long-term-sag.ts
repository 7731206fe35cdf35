/** Sag after years under load. */
import { type Formula, formula } from "../../formula.js";
import { Length, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** First sags of a part under what stays on it and what comes and goes. */
export interface LastingSag {
  /** From the load that stays: own weight, what is stored. */
  readonly lasting: Length;
  /** From the load that comes and goes. */
  readonly passing: Length;
  /** The result of wood.creep.factor. */
  readonly creepFactor: Ratio;
}

/**
 * Sag after years: what stays creeps, what passes does not.
 *
 * @example longTermSag(longTermSag.read({ lasting: "4 mm", passing: "1 mm", creepFactor: 1.5 })) // 7 mm
 */
export const longTermSag: Formula<LastingSag, Length> = formula<LastingSag, Length>({
  id: "sag.longterm",
  title: "Sag after years",
  equation: String.raw`\Delta_T=K_{cr}\,\Delta_{LT}+\Delta_{ST}`,
  inputs: {
    lasting: {
      symbol: String.raw`\Delta_{LT}`,
      kind: Length,
      meaning: "first sag from the lasting load",
      min: 0,
    },
    passing: { symbol: String.raw`\Delta_{ST}`, kind: Length, meaning: "sag from the passing load", min: 0 },
    creepFactor: { symbol: "K_{cr}", kind: Ratio, meaning: "creep factor", min: 1 },
  },
  result: { symbol: String.raw`\Delta_T`, kind: Length, meaning: "sag after years" },
  source: [cite("nds", "eq. 3.5-1"), cite("en-1995", "2.2.3, eq. 2.3 with k_def")],
  validity: "Wood and plywood stressed within what is allowed; wet and dry by turns creeps more.",
  compute: ({ lasting, passing, creepFactor }) => creepFactor * lasting + passing,
});

import { type Formula, formula } from "../formula.js";
import { choice } from "../quantity/index.js";
import { cite } from "../source.js";

/** What the tail of a rivet sits on. */
export interface WasherInputs {
  readonly back: "bare wood" | "facing" | "metal";
}

/** Whether a washer goes under the tail. */
export type WasherNeed = { readonly washer: "yes" | "no" };

/**
 * Whether a washer goes under the tail of a rivet: on bare wood yes, since the tail crushes into the wood
 * or pulls through; on metal no. A glued facing spreads the tail's load a little, and takes none by custom.
 *
 * @example washerAtBack(washerAtBack.read({ back: "metal" })) // washer no
 */
export const washerAtBack: Formula<WasherInputs, WasherNeed> = formula<WasherInputs, WasherNeed>({
  id: "rivet.washer",
  title: "Washer at the back of a rivet",
  equation: String.raw`\text{bare wood} \Rightarrow \text{washer}`,
  inputs: {
    back: {
      symbol: String.raw`\text{back}`,
      kind: choice("back of the joint", ["bare wood", "facing", "metal"]),
      meaning: "what the tail sits on",
    },
  },
  result: {
    washer: {
      symbol: String.raw`\text{washer}`,
      kind: choice("washer", ["yes", "no"]),
      meaning: "washer under the tail",
    },
  },
  source: [cite("common-practice", "back-up washers under rivet tails in wood")],
  validity: "Blind rivets with the tail inside the case.",
  warn: ({ back }) =>
    back === "facing" ? ["a thin facing may dimple under the tail: try one rivet on an offcut"] : [],
  compute: ({ back }) => ({ washer: back === "bare wood" ? "yes" : "no" }),
});

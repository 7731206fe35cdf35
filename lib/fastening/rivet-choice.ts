import { type Formula, formula } from "../formula.js";
import { Length, listOf, Name, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";

/** A rivet that can be had, with the stacks it closes. */
export interface RivetRange {
  readonly name: string;
  readonly gripMin: Length;
  readonly gripMax: Length;
}

/** A stack and the rivets to choose from. */
export interface RivetChoiceInputs {
  readonly grip: Length;
  readonly rivets: readonly RivetRange[];
}

/** The rivet to take. */
export type ChosenRivet = {
  readonly name: string;
  /** From the stack to the nearer end of the rivet's range. */
  readonly margin: Length;
};

/** What ply of one nominal thickness varies by, so that a stack this near the end of a range may miss it. */
const narrowMargin = 0.0003;

/**
 * The rivet whose grip range covers the stack; of several, the one whose range has the stack nearest its
 * middle, since sheet thickness varies.
 *
 * @throws RangeError when none covers it, naming the stack and every range
 * @example rivetChoice(rivetChoice.read({ grip: "6 mm", rivets: [{ name: "short", gripMin: "3 mm",
 *   gripMax: "6.5 mm" }, { name: "long", gripMin: "4 mm", gripMax: "8 mm" }] })) // name long, margin 2 mm
 */
export const rivetChoice: Formula<RivetChoiceInputs, ChosenRivet> = formula<RivetChoiceInputs, ChosenRivet>({
  id: "rivet.choice",
  title: "Rivet for a stack",
  equation: String.raw`g_{min} \le g \le g_{max}`,
  inputs: {
    grip: { symbol: "g", kind: Length, meaning: "grip needed", above: 0 },
    rivets: {
      symbol: "g_{min}, g_{max}",
      kind: listOf(recordOf<RivetRange>("rivet", { name: Name, gripMin: Length, gripMax: Length })),
      meaning: "rivets to be had, with their grip ranges",
    },
  },
  result: {
    name: { symbol: String.raw`\text{rivet}`, kind: Name, meaning: "rivet to take" },
    margin: { symbol: String.raw`\Delta g`, kind: Length, meaning: "room to the end of its range" },
  },
  source: [
    cite("iso-15981", "recommended grip ranges"),
    cite("common-practice", "the stack near the middle of the range"),
  ],
  validity: "Grip ranges as the maker states them, with the washer counted in the stack.",
  refuse: ({ grip, rivets }) =>
    rivets.some((rivet) => coversGrip(rivet, grip))
      ? []
      : [
          `no rivet covers a stack of ${Length.show(grip)}; ranges: ${rivets.map(showRange).join(", ") || "none"}`,
        ],
  warn: (_inputs, { margin }) =>
    margin < narrowMargin
      ? ["the stack is within 0.3 mm of the end of the range: measure the sheet before buying"]
      : [],
  compute: ({ grip, rivets }) => {
    const [best] = rivets
      .filter((rivet) => coversGrip(rivet, grip))
      .sort((a, b) => Math.abs(middle(a) - grip) - Math.abs(middle(b) - grip)) as [RivetRange];
    return { name: best.name, margin: Math.max(0, Math.min(grip - best.gripMin, best.gripMax - grip)) };
  },
});

/** A hair of room at both ends for the binary rounding of added thicknesses. */
/** Whether a fastener closes a stack: within the range its maker states, but for the rounding of added thicknesses. */
export function coversGrip(
  { gripMin, gripMax }: Pick<RivetRange, "gripMin" | "gripMax">,
  grip: number,
): boolean {
  return grip >= gripMin - 1e-9 && grip <= gripMax + 1e-9;
}

function middle({ gripMin, gripMax }: RivetRange): number {
  return (gripMin + gripMax) / 2;
}

function showRange({ name, gripMin, gripMax }: RivetRange): string {
  return `${name} ${Length.show(gripMin)} to ${Length.show(gripMax)}`;
}

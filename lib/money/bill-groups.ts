/** A bill under its headings: by section, by trade, by supplier. */
import type { Money } from "../quantity/index.js";
import { type BillLine, type SectionShare, totalOf } from "./bill.js";

/** A heading of a bill with its total. */
export interface BillGroup {
  /** The section, trade or supplier. */
  readonly name: string;
  /** The lines under it. */
  readonly lines: readonly BillLine[];
  /** Everything paid under it. */
  readonly total: Money;
  /** Paid for what does not go into the case. */
  readonly waste: Money;
}

/** What a bill can be put in order by. */
export type BillHeading = "section" | "trade" | "supplier";

/**
 * Totals by section, trade or supplier, in the order the headings first appear. A line that several sections
 * share stands under each of them with its share of the quantity, so that every grouping adds up to the bill.
 *
 * @throws RangeError as `billTotal` does
 * @example
 * const { shares, ...ply } = { shares: [{ section: "lower", share: 1 }], trade: "panels", item: "ply", unit: "each" };
 * const lines = [{ ...ply, shares, quantity: 3, unitPrice: money(80, "USD") }];
 * groupBill(lines, "trade").map(({ name, total }) => `${name}: ${Money.show(total)}`).join() // panels: 240.00 USD
 */
export function groupBill(lines: readonly BillLine[], by: BillHeading): BillGroup[] {
  const parts = by === "section" ? lines.flatMap(bySection) : lines;
  const nameOf = (line: BillLine): string =>
    (by === "section" ? line.shares[0]?.section : line[by]) ?? "not yet chosen";
  return [...new Set(parts.map(nameOf))].map((name) => {
    const mine = parts.filter((line) => nameOf(line) === name);
    return { name, lines: mine, ...totalOf(mine) };
  });
}

/** A line in as many parts as sections share it, each all its section's own. */
function bySection(line: BillLine): BillLine[] {
  const { quantity, used = quantity } = line;
  return line.shares.map(({ section, share }) => ({
    ...line,
    shares: [{ section, share: 1 }],
    quantity: quantity * share,
    used: used * share,
  }));
}

/**
 * The shares of things that several sections have a part in, in the order the sections first appear.
 *
 * @throws RangeError for parts that add up to nothing, or a negative one
 * @example
 * const shares = sharesOf([{ section: "lower", amount: 3 }, { section: "upper", amount: 1 }]);
 * shares.map(({ section, share }) => `${section} ${share}`).join() // lower 0.75,upper 0.25
 */
export function sharesOf(
  parts: readonly { readonly section: string; readonly amount: number }[],
): SectionShare[] {
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0);
  if (!(whole > 0) || parts.some(({ amount }) => amount < 0)) {
    throw new RangeError(`shares: parts must be at least 0 and add up to more, got ${whole} in all`);
  }
  return [...new Set(parts.map(({ section }) => section))].map((section) => ({
    section,
    share: parts.reduce((sum, part) => (part.section === section ? sum + part.amount : sum), 0) / whole,
  }));
}

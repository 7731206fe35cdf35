/** How far the builder's own figures may be off: what the case file says, or else what is assumed. */
import type { Business } from "../../design/index.js";
import { Ratio } from "../../quantity/index.js";

/** A doubt as a share, and who says so. */
export interface Doubt {
  readonly share: Ratio;
  readonly from: "case file" | "assumed";
}

/** The doubts that money is reckoned with. */
export interface Doubts {
  /** Prices, either way. */
  readonly prices: Doubt;
  /** Hours at the bench, either way. */
  readonly hours: Doubt;
  /** Standard deviation of one job's income. */
  readonly income: Doubt;
}

/** Common practice, no source: what is taken where the case file says nothing. */
const assumed = { prices: Ratio.si(0.1), hours: Ratio.si(0.2), income: Ratio.si(0.5) };

/** The doubts of a case. */
export function doubtsOf({ priceDoubt, hoursDoubt, incomeSpread }: Business): Doubts {
  return {
    prices: doubt(priceDoubt, assumed.prices),
    hours: doubt(hoursDoubt, assumed.hours),
    income: doubt(incomeSpread, assumed.income),
  };
}

function doubt(said: Ratio | undefined, otherwise: Ratio): Doubt {
  return said === undefined ? { share: otherwise, from: "assumed" } : { share: said, from: "case file" };
}

/** The doubts in a sentence, with which of them are assumed. */
export function doubtsInWords({ prices, hours, income }: Doubts): string {
  const words = ({ share, from }: Doubt): string =>
    `${Ratio.show(share, { unit: "%", digits: 3 })}${from === "assumed" ? " (assumed, your case file does not say)" : ""}`;
  return `Prices may be off by ${words(prices)} and hours by ${words(hours)}, either way; one job's income strays from the mean by ${words(income)}.`;
}

/** Whether the case cost what was planned, in money and in hours, of every line of as-built.csv that says so. */

import type { Timing } from "../design/index.js";
import type { ReviewInput } from "../model/index.js";
import { groupBill } from "../money/index.js";
import type { Bill } from "../plan/index.js";
import { Money, money, Time } from "../quantity/index.js";
import { cite } from "../source.js";
import { amount, offPlan } from "./amount.js";
import { type Question, question, type Subjects } from "./question.js";

/** A case and its bill, worked out once. */
export interface PaidInput extends ReviewInput {
  /** Of everything to buy. */
  readonly bill: () => Bill;
}

const practice = cite("common-practice", "how far off a price or an hour may be");

/** Prices may be off by a tenth, hours by a fifth; common practice, no source. */
const allowed = { price: 0.1, time: 0.2 } as const;

/** What one supplier was paid. */
interface Paid {
  /** The supplier. */
  readonly supplier: string;
  /** What was paid. */
  readonly real: Money;
}

const paidSuppliers: Subjects<Paid> = {
  each: ({ measurements }) =>
    measurements.asBuilt.flatMap(({ what, of, price }) =>
      what === "price paid" && price !== undefined ? [{ supplier: of, real: price }] : [],
    ),
  id: ({ supplier }) => supplier,
  words: ({ supplier }) => supplier,
};

/** Whether a supplier was paid what the bill says. */
const pricePaid: Question<PaidInput> = question({
  id: "money.as-built-price",
  about: paidSuppliers,
  ask: ({ supplier }) => `Did ${supplier} cost what was planned?`,
  tier: "feel",
  cautions: [],
  answer: (input: PaidInput, _, { supplier, real }) => {
    const planned = groupBill(input.bill().lines, "supplier").find(({ name }) => name === supplier)?.total;
    const told = { because: [], limit: practice };
    if (!planned || planned.amount === 0)
      return {
        ...told,
        ratio: 0,
        facts: `${supplier} was paid ${Money.show(real)}. Nothing on the buy list comes from there.`,
      };
    return {
      ...told,
      demand: amount(Money, "off the plan", money(Math.abs(real.amount - planned.amount), real.currency)),
      capacity: amount(Money, "allowed", money(allowed.price * planned.amount, planned.currency)),
      facts: `It cost ${Money.show(real)}, planned ${Money.show(planned)}: ${offPlan(real.amount, planned.amount)}.`,
      remedies: [{ words: "Put the prices of the receipt into your tables, for the next case." }],
    };
  },
});

/** A work whose time was planned, and what one piece took. */
type Timed = Timing & { readonly planned: Time };

const timedWorks: Subjects<Timed> = {
  each: ({ measurements }) => measurements.timings.filter((one): one is Timed => one.planned !== undefined),
  id: ({ work, tool }) => `${work}.${tool}`,
  words: ({ work, tool }) => `${work} (${tool})`,
};

/** Whether a work took as long as planned; hours and money are answered with what it took. */
const timeTaken: Question<PaidInput> = question({
  id: "money.as-built-time",
  about: timedWorks,
  ask: ({ work, tool }) => `Did "${work}" with ${tool} take as long as planned?`,
  tier: "feel",
  cautions: [],
  answer: (_input, _, { time, pieces, planned }) => {
    const each = Time.si(time / pieces);
    const off = Time.si(Math.abs(each - planned));
    return {
      demand: amount(Time, "off the plan", off),
      capacity: amount(Time, "allowed", Time.si(allowed.time * planned)),
      facts: `A piece took ${Time.show(each, { digits: 2 })}, planned ${Time.show(planned, { digits: 2 })}: ${offPlan(each, planned)}. Hours and costs are worked out with what it took.`,
      remedies: [{ words: "Look at the days that are left: they follow the real pace." }],
      because: [],
      limit: practice,
    };
  },
});

/** Every question about what the built case took. */
export const builtQuestions: readonly Question<PaidInput>[] = [pricePaid, timeTaken];

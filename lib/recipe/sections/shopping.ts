/** Shopping: what the bill has, supplier by supplier, what the steps use beside it, and the tools they take. */
import { tableOf } from "../../page/index.js";
import { Money, timesMoney } from "../../quantity/index.js";
import { checklist, type RecipeBlock, type RecipeSection, section, sentence, when } from "../recipe.js";
import { allStages } from "../stages/case-stages.js";
import { type ShopStep, type Supply, suppliesOf } from "../supplies.js";
import { counted, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";
import { allowances, billGroupTable, billItems } from "./buy-list.js";
import { barSteps, cutSteps } from "./cut-list.js";
import { glueSteps } from "./gluing.js";
import { panelSteps } from "./openings-and-holes.js";
import { fastenerSteps } from "./riveting.js";

/** Every step of the recipe, in the order of the papers. */
export function allSteps(workshop: Workshop): readonly ShopStep[] {
  return [
    ...cutSteps(workshop),
    ...barSteps(workshop),
    ...glueSteps(workshop),
    ...panelSteps(workshop),
    ...fastenerSteps(workshop),
    ...allStages(workshop).flatMap(({ steps }) => steps),
  ];
}

/** The section on what to buy and what to have. */
export function shoppingSection(workshop: Workshop): RecipeSection {
  const { bill, purchases } = workshop;
  const used = allSteps(workshop);
  const unpriced = suppliesOf(used, "bought");
  return section(
    "Buy list",
    buyTable(workshop),
    ...allowances(purchases).map(sentence),
    ...when(bill.lines.length > 0, () => billGroupTable(bill, "supplier")),
    ...supplyList(unpriced, "Also used, price not given"),
    ...when(unpriced.length > 0, () =>
      sentence(
        `${counted(unpriced.length, "thing")} of this list ${unpriced.length === 1 ? "has" : "have"} no price: the total is without ${unpriced.length === 1 ? "it" : "them"}.`,
      ),
    ),
    ...supplyList([...suppliesOf(used, "tool"), ...suppliesOf(used, "worn")], "Tools, and what you wear"),
    ...ownTools(workshop),
  );
}

/** Every line of the bill, supplier by supplier. */
function buyTable(workshop: Workshop): RecipeBlock {
  const { bill } = workshop;
  const items = billItems(workshop);
  const rows = grouped(items, ({ supplier = "" }) => supplier).flatMap(([, some]) =>
    some.map((line, i) => ({ ...line, first: i === 0 })),
  );
  const lines = rows.map((line) => ({
    supplier: line.supplier ?? "",
    item: line.item,
    size: line.size,
    count: line.count,
    each: Money.show(line.unitPrice),
    cost: Money.show(timesMoney(line.quantity, line.unitPrice)),
    tick: "☐",
  }));
  const total = {
    supplier: "Total",
    item: "",
    size: "",
    count: "",
    each: "",
    cost: Money.show(bill.total),
    tick: "",
  };
  return tableOf(
    [...lines, total],
    [
      { heading: "Supplier", cell: ({ supplier }) => supplier },
      { heading: "Item", cell: ({ item }) => item, align: "left" },
      { heading: "Size", cell: ({ size }) => size, align: "left" },
      { heading: "Count", cell: ({ count }) => count, align: "left" },
      { heading: "Each", cell: ({ each }) => each, align: "right" },
      { heading: "Cost", cell: ({ cost }) => cost, align: "right" },
      { heading: "☐", cell: ({ tick }) => tick, align: "center" },
    ],
    "To buy, supplier by supplier",
  );
}

/** What each is, how much of it, and what for. */
function supplyList(some: readonly Supply[], title: string): RecipeBlock[] {
  return when(some.length > 0, () =>
    checklist(
      title,
      some.map(
        ({ name, amount, use, kind }) =>
          `${name}${kind === "bought" ? `, ${amount ?? "as needed"}` : ""}: ${use}`,
      ),
    ),
  );
}

function ownTools({ case: { business } }: Workshop): RecipeBlock[] {
  return when(business.tools.length > 0, () =>
    sentence(
      `The cost of this case counts these tools: ${business.tools.map(({ name, price }) => `${name} ${Money.show(price)}`).join(", ")}.`,
    ),
  );
}

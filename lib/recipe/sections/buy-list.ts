/** What to buy: counts, suppliers, prices and the total. */
import type { Purchase } from "../../cutting/index.js";
import { tableOf } from "../../page/index.js";
import { addMoney, Money, Volume } from "../../quantity/index.js";
import type { AdhesiveNeed, FastenerNeed, PurchaseList } from "../../review/index.js";
import { section, sentence } from "../make-block.js";
import type { RecipeSection } from "../recipe.js";
import { counted, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

interface BuyLine {
  readonly trade: string;
  readonly item: string;
  readonly count: string;
  readonly supplier: string;
  readonly each: string;
  readonly cost: Money;
}

/** The section. */
export function buyListSection(workshop: Workshop): RecipeSection {
  const { purchases, case: described } = workshop;
  const lines = buyLines(purchases, workshop);
  const total = addMoney(
    lines.map(({ cost }) => cost),
    described.currency,
  );
  const shown = lines.map((line) => ({ ...line, cost: Money.show(line.cost) }));
  const last = { trade: "Total", item: "", count: "", supplier: "", each: "", cost: Money.show(total) };
  return section(
    "Buy list",
    tableOf(
      [...shown, last],
      [
        { heading: "Trade", cell: ({ trade }) => trade },
        { heading: "Item", cell: ({ item }) => item },
        { heading: "Count", cell: ({ count }) => count, align: "left" },
        { heading: "Supplier", cell: ({ supplier }) => supplier },
        { heading: "Each", cell: ({ each }) => each, align: "right" },
        { heading: "Cost", cell: ({ cost }) => cost, align: "right" },
      ],
    ),
    ...allowances(purchases).map(sentence),
  );
}

function buyLines(
  { sheets, facings, bars, adhesives, fasteners, hardware }: PurchaseList,
  workshop: Workshop,
): BuyLine[] {
  return [
    ...sheets.flatMap(({ stock, plan }) =>
      plan.purchases.map((one) => cutLine("Sheets", stock.supplier, one)),
    ),
    ...facings.flatMap(({ stock, plan }) =>
      plan.purchases.map((one) => cutLine("Laminate", stock.supplier, one)),
    ),
    ...bars.flatMap(({ stock, plan }) =>
      plan.purchases.map((one) => cutLine("Edge bars", stock.supplier, one)),
    ),
    ...adhesives.map((need) => adhesiveLine(need, workshop)),
    ...fasteners.map(fastenerLine),
    ...hardware.map(({ stock, count, cost }) => ({
      trade: "Hardware",
      item: stock.name,
      count: String(count),
      supplier: stock.supplier,
      each: Money.show(stock.price),
      cost,
    })),
  ];
}

function cutLine(trade: string, supplier: string, { stock, count, price, cost }: Purchase): BuyLine {
  return { trade, item: stock, count: String(count), supplier, each: Money.show(price), cost };
}

function adhesiveLine({ stock, volume, containers, cost }: AdhesiveNeed, { rule }: Workshop): BuyLine {
  const [size, needed] = [stock.content, volume].map((one) =>
    Volume.show(one, { ...rule.style, digits: 3 }).replace("floz", "fl oz"),
  );
  return {
    trade: "Adhesive",
    item: stock.name,
    count: `${containers} of ${size} (${needed} needed)`,
    supplier: stock.supplier,
    each: Money.show(stock.price),
    cost,
  };
}

function fastenerLine({ stock, count, spares, packs, washers, cost }: FastenerNeed): BuyLine {
  const washer = washers > 0 ? `, ${counted(washers, "washer")}` : "";
  const washerPrice = washers > 0 ? `, washer ${Money.show(stock.washerPrice)}` : "";
  return {
    trade: "Fasteners",
    item: stock.name,
    count: `${counted(packs, "pack")} of ${stock.packOf} (${count} and ${spares} spare)${washer}`,
    supplier: stock.supplier,
    each: `${Money.show(stock.price)} a pack${washerPrice}`,
    cost,
  };
}

/** What the counts allow for, said once. */
function allowances({ adhesives, sheets }: PurchaseList): string[] {
  const onLabel = adhesives.filter(({ rateFrom }) => rateFrom === "label").map(({ stock }) => stock.name);
  return [
    ...(onLabel.length > 0
      ? [
          `${listed(onLabel)}: reckoned with the label's spread rate. Weigh the can on a trial panel and the figure becomes yours.`,
        ]
      : []),
    ...(sheets.length > 0
      ? [
          "Look at every sheet before paying: flat, no open joints at the edges, and measured with the calliper at three places.",
        ]
      : []),
  ];
}

import { type ReviewInput, washersOf } from "../../model/index.js";
import { packs } from "../../money/index.js";
import { addMoney, ratio, timesMoney, wholeUp } from "../../quantity/index.js";
import type { FastenerNeed, HardwareNeed } from "./purchase-list.js";
import { spareShare } from "./shop-allowances.js";

/** Fasteners by the pack, spares and washers included. */
export function fastenerNeeds({ parts }: ReviewInput): readonly FastenerNeed[] {
  const used = new Map(parts.fastenings.map(({ fastener }) => [fastener.name, fastener]));
  return [...used.values()].map((stock) => {
    const groups = parts.fastenings.filter(({ fastener }) => fastener.name === stock.name);
    const count = groups.reduce((sum, group) => sum + group.count, 0);
    const bare = groups.reduce((sum, group) => sum + washersOf(group), 0);
    const spares = wholeUp(count * spareShare);
    const washers = bare + wholeUp(bare * spareShare);
    const bought = packs({
      needed: count,
      spare: ratio(spareShare),
      perPack: stock.packOf,
      price: stock.price,
    });
    const cost = addMoney([bought.cost, timesMoney(washers, stock.washerPrice)]);
    return { stock, count, spares, packs: bought.packs, washers, cost };
  });
}

/** Hardware by the piece. */
export function hardwareNeeds({ parts }: ReviewInput): readonly HardwareNeed[] {
  const used = new Map(parts.hardware.map(({ stock }) => [stock.name, stock]));
  return [...used.values()].map((stock) => {
    const count = parts.hardware.filter((part) => part.stock.name === stock.name).length;
    return { stock, count, cost: timesMoney(count, stock.price) };
  });
}

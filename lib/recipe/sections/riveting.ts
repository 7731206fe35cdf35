/** Every group of fasteners: what it holds, hole, grip, washer and count, and the totals. */

import type { Fastener, Fastening } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import { listed } from "../../findings/index.js";
import { closesStack, gripOf, takesWasher, washersOf } from "../../model/index.js";
import { steps, tableOf } from "../../page/index.js";
import { drillFor } from "../drilling.js";
import { flowingSection, type RecipeBlock, type RecipeSection, sentence } from "../recipe.js";
import { type ShopStep, step, supplies, using } from "../supplies.js";
import { distinct, grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on fasteners: how they are set, and which of them closes what. */
export function rivetingSection(workshop: Workshop): RecipeSection {
  const { fastenings } = workshop.parts;
  return flowingSection(
    hasRivets(fastenings) ? "Riveting and screwing" : "Screwing",
    steps(
      fastenerSteps(workshop).map(({ text }) => text),
      "How",
    ),
    totalsTable(workshop),
    ...substitutes(workshop).map(sentence),
    ...wrongOnes(workshop).map(sentence),
  );
}

function hasRivets(fastenings: readonly Fastening[]): boolean {
  return fastenings.some(({ fastener }) => fastener.kind === "rivet");
}

/** Every step of setting fasteners. */
export function fastenerSteps({ parts: { fastenings } }: Workshop): ShopStep[] {
  if (fastenings.length === 0) return [];
  const inserts = fastenings.some(({ fastener }) => fastenerTraits[fastener.kind].hasInsert);
  const { clamps, deburr, drill, pliers, tape, insertDriver, riveter, eyes } = supplies;
  return [
    using(
      step`Drill a try hole in scrap of the same stack with the ${drill}. Set one of each fastener there first.`,
      eyes,
    ),
    step`Clamp the layers without a gap with ${clamps}, and drill. Take burrs off with the ${deburr}, and wipe out the chips.`,
    step`Set the two ends of a row first, then the middle, then halve the gaps: the bar or strip stays straight.`,
    ...(fastenings.some(takesWasher)
      ? [step`A washer goes inside, under tail or nut, held with ${pliers} or ${tape} while the box is open.`]
      : []),
    ...(inserts
      ? [
          step`Run each insert in flush with the ${insertDriver}, no deeper. Try its screw by hand before the part goes on.`,
        ]
      : []),
    ...(hasRivets(fastenings)
      ? [
          step`Press the ${riveter} square and hard while it pulls. If a head stands off, drill it out and set a new one.`,
        ]
      : []),
  ];
}

/** Rivets that stand on the list in place of those that the case names. */
function substitutes({ substituted, rule }: Workshop): string[] {
  return grouped(substituted, ({ group, named }) => `${named.name}|${group.fastener.name}`).map(
    ([, some]) => {
      const [{ group, named }] = some;
      const stacks = distinct(some.map((one) => rule.fine(gripOf(one.group))));
      return `The list has ${group.fastener.name} where the case names ${named.name}, which does not close ${listed(stacks)}.`;
    },
  );
}

/** Rivets that do not close their stack, and the tables have none that does: they are never set there. */
function wrongOnes({ parts: { fastenings }, rule }: Workshop): string[] {
  const wrong = fastenings.filter(
    (one) => fastenerTraits[one.fastener.kind].chosenByGrip && !closesStack(one),
  );
  return grouped(wrong, (one) => `${one.fastener.name}|${rule.fine(gripOf(one))}`).map(([, some]) => {
    const [{ fastener }] = some;
    const places = distinct(some.map(({ holds }) => holds));
    const where =
      places.length > 3
        ? `${places.slice(0, 3).join(", ")} and ${places.length - 3} more places`
        : listed(places);
    return `Do not set ${fastener.name} at ${where}. Buy one that closes ${rule.fine(gripOf(some[0]))}: the bill has none.`;
  });
}

function totalsTable({ parts, purchases, rule, case: { units } }: Workshop): RecipeBlock {
  const { fastenings } = parts;
  const kinds = grouped(fastenings, ({ fastener }) => fastener.name).map(([, some]) => ({
    fastener: some[0].fastener,
    some,
  }));
  const bought = ({ name }: Fastener) => purchases.fasteners.find(({ stock }) => stock.name === name);
  return tableOf(
    kinds,
    [
      { heading: "Fastener", cell: ({ fastener }) => fastener.name, align: "left" },
      {
        heading: "Bit",
        cell: ({ some }) => listed(distinct(some.map((one) => drillFor(one, units).words))),
        align: "left",
      },
      {
        heading: "Stack",
        cell: ({ some }) => listed(distinct(some.map((one) => rule.fine(gripOf(one))))),
        align: "left",
      },
      {
        heading: "Closes",
        cell: ({ fastener }) => `${rule.fine(fastener.gripMin)} to ${rule.fine(fastener.gripMax)}`,
        align: "left",
      },
      { heading: "Needed", cell: ({ some }) => total(some, ({ count }) => count) },
      { heading: "Spare", cell: ({ fastener }) => bought(fastener)?.spares ?? "–" },
      { heading: "Washers", cell: ({ some }) => total(some, washersOf) },
    ],
    "Totals",
  );
}

/** Every group of fasteners: what it holds, hole, grip, washer and count, and the totals. */
import type { Fastener, Fastening } from "../../design/index.js";
import { fastenerTraits } from "../../fastening/index.js";
import { closesStack, gripOf, takesWasher, washersOf } from "../../model/index.js";
import { steps, tableOf } from "../../page/index.js";
import { bitFor } from "../drilling.js";
import { type RecipeBlock, type RecipeSection, section } from "../recipe.js";
import { grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on fasteners. */
export function rivetingSection(workshop: Workshop): RecipeSection {
  const { fastenings } = workshop.parts;
  return section(
    hasRivets(fastenings) ? "Riveting and screwing list" : "Screwing list",
    procedure(fastenings),
    totalsTable(workshop),
    ...grouped(fastenings, ({ panel }) => sectionOf(panel, workshop)).map(([name, some]) =>
      groupsTable(name, some, workshop),
    ),
  );
}

function hasRivets(fastenings: readonly Fastening[]): boolean {
  return fastenings.some(({ fastener }) => fastener.kind === "rivet");
}

/** Section that a panel belongs to, by its part. */
function sectionOf(panel: string, { pieces }: Workshop): string {
  return pieces.panels.find(({ name }) => name === panel)?.part.section ?? "";
}

function procedure(fastenings: readonly Fastening[]): RecipeBlock {
  return steps(
    [
      "Drill a try hole in scrap of the same stack and set one of each fastener before the first real one.",
      "Clamp the layers together without a gap, drill, take the burrs off both sides of the metal, brush the chips out from between.",
      "Set the two ends of a row first, then the middle, then halve the gaps: the bar or strip stays straight.",
      ...(fastenings.some(takesWasher)
        ? [
            "Where the table says washer, it goes on the inside, under the tail or nut. Where no hand reaches, tape it over its hole from inside before closing.",
          ]
        : []),
      ...(fastenings.some(({ fastener }) => fastenerTraits[fastener.kind].hasInsert)
        ? [
            "Threaded inserts: drill square with a depth stop, run each in flush with its driver and not deeper, and try its screw by hand before the part goes on.",
          ]
        : []),
      ...(hasRivets(fastenings)
        ? [
            "Press the tool square and hard against the work while it pulls. A head that stands off or a tail that spins: drill it out with the same bit and set a new one.",
          ]
        : []),
    ],
    "How",
  );
}

/** Groups that differ in nothing but the panel share a row. */
function groupsTable(
  section: string,
  fastenings: readonly Fastening[],
  { rule, case: { units } }: Workshop,
): RecipeBlock {
  const likeEachOther = (one: Fastening): string =>
    [one.holds, one.fastener.name, gripOf(one), takesWasher(one), one.pitch ?? ""].join("|");
  return tableOf(
    grouped(fastenings, likeEachOther).map(([, some]) => ({ ...some[0], some })),
    [
      { heading: "Holds", cell: ({ holds }) => holds },
      {
        heading: "Panel and count",
        cell: ({ some }) => some.map(({ panel, count }) => `${panel} ${count}`).join(", "),
      },
      { heading: "Fastener", cell: ({ fastener }) => fastener.name, align: "left" },
      { heading: "Bit", cell: ({ fastener }) => bitFor(fastener, units).name, align: "left" },
      {
        heading: "Stack to close",
        cell: (one) => `${rule.fine(gripOf(one))}${closesStack(one) ? "" : ", NOT what it closes"}`,
        align: "left",
      },
      { heading: "Washer", cell: (one) => (takesWasher(one) ? "yes" : "no") },
      { heading: "Count", cell: ({ some }) => total(some, ({ count }) => count) },
      { heading: "Pitch", cell: ({ pitch }) => (pitch ? rule.drawn(pitch) : ""), align: "left" },
    ],
    `Section ${section}`,
  );
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
      { heading: "Bit", cell: ({ fastener }) => bitFor(fastener, units).name, align: "left" },
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

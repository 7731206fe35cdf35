/** The first page: what the case is, how large, how heavy, what it costs, how long it takes, and whether it may be built. */
import { keepsFromRelease, listed } from "../../findings/index.js";
import {
  pictureOf,
  sizeOfSolids,
  type TableView,
  tableOf,
  tellingCorner,
  usualLook,
} from "../../page/index.js";
import { Length, Mass, Money, Time } from "../../quantity/index.js";
import { sectionFacesDrawing } from "../drawings/section-faces.js";
import { type RecipeBlock, type RecipeSection, section, sentence, when } from "../recipe.js";
import { sectionMass } from "../section-mass.js";
import { counted, distinct, grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { dayCount } from "./days.js";
import { openFindings } from "./decisions.js";

/** The cover. */
export function coverSection(workshop: Workshop): RecipeSection {
  const { case: described, parts, rule } = workshop;
  const picture = casePicture(workshop);
  return section(
    "What you are building",
    sentence(described.purpose),
    ...when(described.invented, () =>
      sentence("This is an invented example. Sizes, prices and measurements are made up; use your own."),
    ),
    ...release(workshop),
    ...(picture ? [picture] : parts.sections.map((one) => sectionFacesDrawing(one, parts, rule))),
    factTable(workshop),
    sizeTable(workshop),
  );
}

/** Whether it is released, and why not. */
function release(workshop: Workshop): RecipeBlock[] {
  if (workshop.findings.length === 0)
    return [sentence("No review came with this recipe: nothing in it has been checked by calculation.")];
  const kept = openFindings(workshop).filter(keepsFromRelease);
  if (kept.length === 0) return [sentence("RELEASED. No question of safety or strength is open.")];
  const asked = grouped(kept, ({ question }) => question).map(([question, some]) => {
    const about = distinct(some.map(({ subject }) => subject));
    const isNamed = about.every((one) => question.includes(one));
    return isNamed
      ? question
      : `${question} It is about ${about.length > 2 ? `${about.length} parts` : listed(about)}.`;
  });
  const most = 6;
  return [
    sentence(
      `NOT RELEASED. ${counted(kept.length, "check")} of safety or strength ${kept.length === 1 ? "fails or waits" : "fail or wait"}. Do not cut.`,
    ),
    {
      kind: "list",
      ordered: false,
      items: [
        ...asked.slice(0, most),
        ...when(
          asked.length > most,
          () => `The page of decisions has ${counted(asked.length - most, "more question")}.`,
        ),
      ],
    },
  ];
}

/** The whole case with its sizes over metal. */
function casePicture({ solids, rule, case: { name } }: Workshop): RecipeBlock | undefined {
  if (!solids?.solids.some((solid) => usualLook(solid) !== undefined)) return undefined;
  const size = sizeOfSolids(solids.solids).map((one) => rule.length(Length.si(one)));
  const from = tellingCorner(solids.solids);
  return pictureOf(solids.solids, {
    description: `${name} from its ${from} corner. Sizes over metal.`,
    from,
    sizes: (["x", "y", "z"] as const).map((along, i) => ({ along, text: size[i] ?? "" })),
  });
}

/** Size over metal, weights, cost and days at one look. */
function factTable(workshop: Workshop): TableView {
  const { solids, masses, bill, rule, pieces, parts } = workshop;
  const sum = (items: typeof masses = []): Mass => Mass.si(total(items, ({ mass }) => mass));
  const facts: (readonly [string, string])[] = [
    ...when(solids !== undefined && solids.solids.length > 0, (): readonly [string, string] => [
      "Size over metal, width × depth × height",
      rule.size(...sizeOfSolids(solids?.solids ?? []).map((one) => Length.si(one))),
    ]),
    ...when(masses !== undefined && masses.length > 0, (): readonly [string, string] => [
      "Weight, empty and loaded",
      `${rule.mass(sum(masses?.filter(({ group }) => group !== "contents")))} and ${rule.mass(sum(masses))}`,
    ]),
    ["What the bill comes to", Money.show(bill.total)],
    ...dayFacts(workshop),
    [
      "Pieces",
      listed([
        `${pieces.panels.length} of sheet (P)`,
        ...when(parts.facings.length > 0, () => `${parts.facings.length} of laminate (L)`),
        ...when(parts.bars.length > 0, () => `${parts.bars.length} edge bars (B)`),
        ...when(parts.strips.length > 0, () => `${parts.strips.length} strips of wood (S)`),
        ...when(parts.panes.length > 0, () => `${parts.panes.length} panes (W)`),
      ]),
    ],
  ];
  return tableOf(facts, [
    { heading: "The whole case", cell: ([name]) => name },
    { heading: "What it comes to", cell: ([, value]) => value, align: "left" },
  ]);
}

function dayFacts(workshop: Workshop): (readonly [string, string])[] {
  const { times = [] } = workshop;
  if (times.length === 0) return [];
  const hours = Time.si(total(times, ({ time }) => time));
  const days = dayCount(workshop);
  return [
    [
      "Work",
      `${Time.show(hours, { unit: "h", digits: 2 })} at the bench, ${counted(days, "day")} with curing, for one person`,
    ],
  ];
}

function sizeTable(workshop: Workshop): RecipeBlock {
  const { case: described, parts, rule } = workshop;
  const massOf = (name: string, which: "empty" | "loaded"): string => {
    const mass = sectionMass(workshop, name);
    return mass ? rule.mass(mass[which]) : "";
  };
  return tableOf(
    parts.sections,
    [
      { heading: "Section", cell: ({ name }) => name },
      {
        heading: "Outside the walls, width × depth × height",
        cell: ({ outside: { size } }) => rule.size(size.x, size.y, size.z),
      },
      {
        heading: "Clear inside",
        cell: ({ name }) => {
          const inside = described.sections.find((one) => one.name === name)?.inside;
          return inside ? rule.size(inside.width, inside.depth, inside.height) : "";
        },
      },
      ...(workshop.masses
        ? [
            { heading: "Empty", cell: ({ name }: { name: string }) => massOf(name, "empty") },
            { heading: "Loaded", cell: ({ name }: { name: string }) => massOf(name, "loaded") },
          ]
        : []),
    ],
    "Sections, from the ground up",
  );
}

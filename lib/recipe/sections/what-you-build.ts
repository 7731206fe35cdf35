/** What the case is, how large, how heavy, and how to read the pages that follow. */
import { list, tableOf } from "../../page/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { sectionFacesDrawing } from "../drawings/section-faces.js";
import { type RecipeBlock, type RecipeSection, section, sentence, when } from "../recipe.js";
import { counted, total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { verdictSummary } from "./before-you-cut.js";

/** The section on what the case is. */
export function whatYouBuild(workshop: Workshop): RecipeSection {
  const { case: described, parts, findings, rule } = workshop;
  return section(
    "What you are building",
    sentence(described.purpose),
    ...when(described.invented, () =>
      sentence("This is an invented example. Sizes, prices and measurements are made up; use your own."),
    ),
    sizeTable(workshop),
    sentence(standing(workshop)),
    sentence(verdictSummary(findings)),
    readingRules(workshop),
    ...parts.sections.map((one) => sectionFacesDrawing(one, parts, rule)),
  );
}

/** Mass of a section without and with what rides in it; undefined where nothing was reckoned. */
export function sectionMass({ masses }: Workshop, name: string): { empty: Mass; loaded: Mass } | undefined {
  const items = masses?.filter((item) => item.section === name);
  if (!items || items.length === 0) return undefined;
  const sum = (some: typeof items): Mass => Mass.si(total(some, ({ mass }) => mass));
  return { empty: sum(items.filter(({ group }) => group !== "contents")), loaded: sum(items) };
}

/** Height that casters add below the lowest section. */
function casterHeight({ parts }: Workshop): Length {
  const standings = parts.hardware
    .filter(({ stock }) => stock.kind === "caster")
    .map(({ stock }) => stock.standing);
  return Length.si(Math.max(0, ...standings));
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
        heading: "Outside, width × depth × height",
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

function standing(workshop: Workshop): string {
  const { parts, rule } = workshop;
  const casters = casterHeight(workshop);
  const boxes = total(parts.sections, ({ outside }) => outside.size.z);
  const height = rule.length(Length.si(boxes + casters));
  const stacked = parts.sections.length > 1 ? "Stacked" : "Standing";
  return casters > 0 ? `${stacked} on its casters it is ${height} high.` : `${stacked} it is ${height} high.`;
}

function readingRules({ parts, pieces, case: { units } }: Workshop): RecipeBlock {
  const bars = parts.bars.length > 0 ? `, ${counted(parts.bars.length, "edge bar")} (B)` : "";
  const strips =
    parts.strips.length > 0 ? `, ${counted(parts.strips.length, "strip of wood", "strips of wood")} (S)` : "";
  const laminates =
    parts.facings.length > 0 ? `, ${counted(parts.facings.length, "piece")} of laminate (L)` : "";
  return list(
    [
      `It is made of ${counted(pieces.panels.length, "sheet piece")} (P)${laminates}${bars}${strips}. The codes are in the cut list and on every drawing.`,
      "A part is named by its section and its face: section.face. Left and right are yours when you stand before the front.",
      "Every panel is measured from its bottom left corner, seen from outside; for the top seen from above, for the bottom seen from below with the front edge towards you. Pencil a mark on that corner first.",
      ...(units === "inch"
        ? [
            "Inches are rounded to 1/16 and can be up to 1/32 in (0.8 mm) off. Where it matters, work by the millimetres beside them.",
          ]
        : []),
    ],
    "How to read this recipe",
  );
}

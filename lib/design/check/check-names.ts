/** Names that the case uses: each must stand in its table, or in the case itself. */
import type { CaseBuild, Content, Cooling, PlacedHardware, Section, Shelf } from "../case.js";
import { edgeNames, faces } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Stock } from "../stock.js";
import { tableFiles } from "../tables.js";
import { buildPaths, type Fault } from "./fault.js";

/** One use of a name. */
interface Use extends Pick<Fault, "path" | "inheritedFrom"> {
  /** The name that is used. */
  readonly name: string;
  /** The table that must have it. */
  readonly table: keyof Stock;
}

/** Every name that leads nowhere. */
export function checkNames(description: CaseBuild, stock: Stock): Fault[] {
  const { sections, hardware, shelves, contents } = description;
  const uses = [
    ...sections.flatMap(sectionUses),
    ...hardware.map(
      ({ name, item }): Use => ({ path: ["hardware", name, "item"], name: item, table: "hardware" }),
    ),
    ...shelves.flatMap(shelfUses),
    ...contents.flatMap(contentUses),
  ];
  return [
    ...uses.flatMap((use) => strangers(use, stock)),
    ...hardware.flatMap((item) => sectionOfHardware(item, sections)),
    ...shelves.flatMap((shelf) => sectionOf("shelves", shelf, sections)),
    ...contents.flatMap((content) => sectionOf("contents", content, sections)),
    ...contents.flatMap((content) => shelfOf(content, shelves)),
    ...contents.flatMap((content) => sharedName(content, shelves)),
    ...description.services.cooling.flatMap((cooling) => ventsOf(cooling, sections)),
  ];
}

function strangers({ name, table, ...where }: Use, stock: Stock): Fault[] {
  const names = stock[table].map((row) => row.name);
  if (names.includes(name)) return [];
  return [{ ...where, value: name, expected: `a name in ${tableFiles[table]} (${names.join(", ")})` }];
}

function sectionUses({ name: section, panels, edges }: Section): Use[] {
  const use = (part: CasePath, inBuild: CasePath, name: string, table: keyof Stock): Use => ({
    path: ["sections", section, ...part],
    inheritedFrom: buildPaths(section, inBuild),
    name,
    table,
  });
  const ofPanels = faces.flatMap((face): Use[] => {
    const { sheet, facing } = panels[face];
    const panel = ["panels", face];
    const laminate = ["facing", "laminate"];
    const adhesive = ["facing", "adhesive"];
    return [
      use([...panel, "sheet"], ["sheet"], sheet, "sheets"),
      ...(facing ? [use([...panel, ...laminate], laminate, facing.facing, "facings")] : []),
      ...(facing ? [use([...panel, ...adhesive], adhesive, facing.adhesive, "adhesives")] : []),
    ];
  });
  const ofEdges = edgeNames.flatMap((edge): Use[] => {
    const { extrusion } = edges[edge];
    if (!extrusion) return [];
    return [
      use(["edges", edge, "bar"], ["edges", "bar"], extrusion.bar, "bars"),
      use(["edges", edge, "rivet"], ["edges", "rivet"], extrusion.rivet, "fasteners"),
    ];
  });
  return [...ofPanels, ...ofEdges];
}

function shelfUses({ name, sheet, joint }: Shelf): Use[] {
  return [
    { path: ["shelves", name, "sheet"], name: sheet, table: "sheets" },
    { path: ["shelves", name, "joint", "fastener"], name: joint.fastener, table: "fasteners" },
  ];
}

function contentUses({ name, held }: Content): Use[] {
  if (!("fastener" in held)) return [];
  const second = held.by === "hung" && typeof held.secondHold === "object" ? [held.secondHold.fastener] : [];
  return [
    { path: ["contents", name, "held", "fastener"], name: held.fastener, table: "fasteners" },
    ...second.map(
      (fastener): Use => ({
        path: ["contents", name, "held", "second hold", "fastener"],
        name: fastener,
        table: "fasteners",
      }),
    ),
  ];
}

function sectionOfHardware({ name, places }: PlacedHardware, sections: readonly Section[]): Fault[] {
  if ("cornersOf" in places) return notASection(["hardware", name, "corners of"], places.cornersOf, sections);
  return places.flatMap(({ section }, i) =>
    notASection(["hardware", name, "places", i, "on"], section, sections),
  );
}

function sectionOf(
  where: string,
  { name, section }: { readonly name: string; readonly section: string },
  sections: readonly Section[],
): Fault[] {
  return notASection([where, name, "in"], section, sections);
}

function notASection(path: CasePath, name: string, sections: readonly Section[]): Fault[] {
  const names = sections.map((section) => section.name);
  return names.includes(name) ? [] : [{ path, expected: `a section (${names.join(", ")})` }];
}

function shelfOf({ name, section, held }: Content, shelves: readonly Shelf[]): Fault[] {
  if (!("shelf" in held) || held.shelf === undefined) return [];
  const here = shelves.filter((shelf) => shelf.section === section).map((shelf) => shelf.name);
  if (here.includes(held.shelf)) return [];
  const expected = `a shelf of section ${section} (${here.join(", ") || "it has none"})`;
  return [{ path: ["contents", name, "held", "shelf"], expected }];
}

/** Fasteners say what they hold by its name, so a content must not be called like a shelf. */
function sharedName({ name }: Content, shelves: readonly Shelf[]): Fault[] {
  if (!shelves.some((shelf) => shelf.name === name)) return [];
  return [{ path: ["contents", name], value: name, expected: "a name that no shelf has" }];
}

/** Vents are openings of their own section, named with the face they are in. */
function ventsOf({ section, letIn, letOut }: Cooling, sections: readonly Section[]): Fault[] {
  const path = ["services", "cooling", section];
  const here = sections.find(({ name }) => name === section);
  if (!here) return notASection(path, section, sections);
  const vents = faces.flatMap((face) => here.panels[face].openings.map(({ name }) => `${face}.${name}`));
  const expected = `an opening of section ${section} (${vents.join(", ") || "it has none"})`;
  return [
    ...(vents.includes(letIn) ? [] : [{ path: [...path, "let in"], expected }]),
    ...(vents.includes(letOut) ? [] : [{ path: [...path, "let out"], expected }]),
  ];
}

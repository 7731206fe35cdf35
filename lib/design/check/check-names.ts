/** Names that the case uses: each must stand in its table, or in the case itself. */
import { didYouMean } from "../../problem.js";
import type {
  CaseBody,
  Content,
  Cooling,
  Drawer,
  Opening,
  PlacedHardware,
  Section,
  Shelf,
  Stiffener,
} from "../case.js";
import { bearingFaces } from "../derive/fastenings.js";
import { leavesOf } from "../derive/leaves.js";
import { edgeNames, type Face, faces, uprightFaces } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Stock } from "../stock.js";
import { nameExpected, strangeName, type UnsureTables } from "../tables.js";
import { buildPaths, type Fault } from "./fault.js";

/** What could not be read: a name may lead there without a fault. */
export interface Unsure {
  /** Tables of which something could not be read. */
  readonly tables: UnsureTables;
  /** Sections of the case file that could not be read. */
  readonly sections: ReadonlySet<string>;
  /** Shelves of the case file that could not be read. */
  readonly shelves: ReadonlySet<string>;
}

/** One use of a name. */
interface Use extends Pick<Fault, "path" | "inheritedFrom"> {
  /** The name that is used. */
  readonly name: string;
  /** The table that must have it. */
  readonly table: keyof Stock;
}

function usesOf({ sections, hardware, shelves, drawers, stiffeners, contents }: CaseBody): Use[] {
  return [
    ...sections.flatMap(sectionUses),
    ...hardware.map(
      ({ name, item }): Use => ({ path: ["hardware", name, "item"], name: item, table: "hardware" }),
    ),
    ...shelves.flatMap(shelfUses),
    ...drawers.flatMap(drawerUses),
    ...stiffeners.flatMap(stiffenerUses),
    ...contents.flatMap(contentUses),
  ];
}

/** Names of one table that a case uses and the table has not. */
export function strangersIn(description: CaseBody, stock: Stock, table: keyof Stock): readonly string[] {
  const names = usesOf(description).flatMap((use) => (use.table === table ? [use.name] : []));
  return [...new Set(names)].filter((name) => !stock[table].some((row) => row.name === name));
}

/** Every name that leads nowhere. */
export function checkNames(description: CaseBody, stock: Stock, unsure: Unsure): Fault[] {
  const { sections, hardware, shelves, drawers, stiffeners, contents, services } = description;
  const known = [...sections.map(({ name }) => name), ...unsure.sections];
  return [
    ...usesOf(description).flatMap(({ table, name, ...where }) =>
      strangeUse(where, name, table, stock, unsure),
    ),
    ...hardware.flatMap((item) => sectionOfHardware(item, known)),
    ...hardware.flatMap((item) => hardwareOnOpen(item, sections)),
    ...shelves.flatMap((shelf) => sectionOf("shelves", shelf, known)),
    ...shelves.flatMap((shelf) => shelfAtOpen(shelf, sections)),
    ...shelves.flatMap((shelf) => ledgesOf(shelf, stiffeners)),
    ...drawers.flatMap((drawer) => sectionOf("drawers", drawer, known)),
    ...drawers.flatMap((drawer) => drawerNames(drawer, description)),
    ...contents.flatMap((content) => contentAtOpen(content, sections)),
    ...stiffeners.flatMap((stiffener) => stiffenerPlace(stiffener, description, unsure)),
    ...contents.flatMap((content) => sectionOf("contents", content, known)),
    ...contents.flatMap((content) => shelfOf(content, shelves, unsure)),
    ...contents.flatMap((content) => sharedName(content, shelves)),
    ...services.cooling
      .filter(({ section }) => !unsure.sections.has(section))
      .flatMap((cooling) => ventsOf(cooling, sections)),
  ];
}

/** The case without whatever uses a name that leads nowhere, and without what stands in that. */
export function withoutStrangers(description: CaseBody, stock: Stock, unsure: Unsure): CaseBody {
  const lost = usesOf(description).filter(
    ({ name, table }) => !stock[table].some((row) => row.name === name),
  );
  const faults = checkNames(description, stock, unsure);
  const bad = new Set([...lost, ...faults].map(({ path: [block, name] }) => `${block} ${name}`));
  if (bad.size + unsure.sections.size + unsure.shelves.size === 0) return description;
  const isGood =
    (block: string) =>
    ({ name }: { readonly name: string }): boolean =>
      !bad.has(`${block} ${name}`);
  const sections = description.sections.filter(isGood("sections"));
  const has = (section: string): boolean => sections.some(({ name }) => name === section);
  const shelves = description.shelves.filter(isGood("shelves")).filter(({ section }) => has(section));
  return {
    ...description,
    sections,
    shelves,
    hardware: description.hardware
      .filter(isGood("hardware"))
      .filter(({ places }) =>
        "cornersOf" in places ? has(places.cornersOf) : places.every(({ section }) => has(section)),
      ),
    drawers: description.drawers.filter(isGood("drawers")).filter(({ section }) => has(section)),
    stiffeners: description.stiffeners.filter(isGood("stiffeners")).filter(({ section, shelf }) => {
      const isThere = shelf === undefined || shelves.some(({ name }) => name === shelf);
      return has(section) && isThere;
    }),
    contents: description.contents.filter(isGood("contents")).filter(({ section, held }) => {
      const shelf = "shelf" in held ? held.shelf : undefined;
      return has(section) && (shelf === undefined || shelves.some(({ name }) => name === shelf));
    }),
  };
}

/** A name that no row of its table has, whether or not the row could be read; none where nobody can tell. */
export function strangeUse(
  where: Pick<Fault, "path" | "inheritedFrom">,
  name: string,
  table: keyof Stock,
  stock: Stock,
  unsure: Unsure,
): Fault[] {
  const names = unsure.tables.has(table) ? unsure.tables.get(table) : stock[table].map((row) => row.name);
  if (names === undefined || names.includes(name)) return [];
  return [{ ...where, value: name, cause: strangeName(name), expected: nameExpected([table], names, name) }];
}

function sectionUses({ name: section, panels, edges }: Section): Use[] {
  const use = (part: CasePath, inBuild: CasePath, name: string, table: keyof Stock): Use => ({
    path: ["sections", section, ...part],
    inheritedFrom: buildPaths(section, inBuild),
    name,
    table,
  });
  const ofPanels = faces.flatMap((face): Use[] => {
    const own = panels[face];
    if (!own) return [];
    const { sheet, facing } = own;
    const panel = ["panels", face];
    const panes = own.openings.flatMap(({ name, pane }) => {
      const path = ["sections", section, "panels", face, "openings", name, "pane"];
      if (!pane) return [];
      const glass: Use = { path: [...path, "sheet"], name: pane.sheet, table: "panes" };
      if (pane.fastener === undefined) return [glass];
      return [glass, { path: [...path, "fastener"], name: pane.fastener, table: "fasteners" } as const];
    });
    const laminate = ["facing", "laminate"];
    const adhesive = ["facing", "adhesive"];
    return [
      ...panes,
      use([...panel, "sheet"], ["sheet"], sheet, "sheets"),
      ...(facing ? [use([...panel, ...laminate], laminate, facing.facing, "facings")] : []),
      ...(facing ? [use([...panel, ...adhesive], adhesive, facing.adhesive, "adhesives")] : []),
      ...own.openings.flatMap((opening) =>
        leavesOf(opening).flatMap(({ leaf: { stay }, path }) =>
          stay
            ? [use([...panel, "openings", opening.name, ...path, "stay", "item"], [], stay.item, "hardware")]
            : [],
        ),
      ),
    ];
  });
  const ofEdges = edgeNames.flatMap((edge): Use[] => {
    const { extrusion, joint } = edges[edge] ?? {};
    const word = (key: string, name: string | undefined, table: keyof Stock): Use[] =>
      name === undefined ? [] : [use(["edges", edge, key], ["edges", key], name, table)];
    if (joint)
      return [
        ...word("strip", joint.strip, "strips"),
        ...word("adhesive", joint.adhesive, "adhesives"),
        ...word("screw", joint.screw, "fasteners"),
      ];
    if (!extrusion) return [];
    return [
      use(["edges", edge, "bar"], ["edges", "bar"], extrusion.bar, "bars"),
      use(["edges", edge, "rivet"], ["edges", "rivet"], extrusion.rivet, "fasteners"),
    ];
  });
  return [...ofPanels, ...ofEdges];
}

function shelfUses({ name, sheet, joint, slides }: Shelf): Use[] {
  return [
    ...(slides === undefined
      ? []
      : [{ path: ["shelves", name, "slides"], name: slides, table: "hardware" } as const]),
    { path: ["shelves", name, "sheet"], name: sheet, table: "sheets" },
    { path: ["shelves", name, "joint", "fastener"], name: joint.fastener, table: "fasteners" },
  ];
}

function drawerUses({ name, sheet, bottom, slides, joint }: Drawer): Use[] {
  const path = ["drawers", name];
  return [
    { path: [...path, "sheet"], name: sheet, table: "sheets" },
    ...(bottom === undefined ? [] : [{ path: [...path, "bottom"], name: bottom, table: "sheets" } as const]),
    { path: [...path, "slides"], name: slides, table: "hardware" },
    { path: [...path, "joint", "fastener"], name: joint.fastener, table: "fasteners" },
  ];
}

function stiffenerUses({ name, strip, sheet, adhesive, fastener }: Stiffener): Use[] {
  const use = (word: string, named: string | undefined, table: keyof Stock): Use[] =>
    named === undefined ? [] : [{ path: ["stiffeners", name, word], name: named, table }];
  return [
    ...use("strip", strip, "strips"),
    ...use("sheet", sheet, "sheets"),
    ...use("adhesive", adhesive, "adhesives"),
    ...use("fastener", fastener, "fasteners"),
  ];
}

/** A stiffener is on a piece that is there, and frames an opening of it; no opening of it has its name. */
function stiffenerPlace(
  stiffener: Stiffener,
  { sections, shelves }: CaseBody,
  { sections: unsure, shelves: unread }: Unsure,
): Fault[] {
  const { name, section, face, leaf, shelf, round } = stiffener;
  const path = ["stiffeners", name];
  const known = [...sections.map((one) => one.name), ...unsure];
  const here = sections.find((one) => one.name === section);
  if (!here) return notASection([...path, "on"], section, known);
  if (face === undefined) {
    const names = shelves.filter((one) => one.section === section).map((one) => one.name);
    return unread.has(shelf ?? "")
      ? []
      : notAmong([...path, "on"], `a shelf of ${section}`, shelf ?? "", names);
  }
  const where = `${section}.${face}`;
  const openings = here.panels[face]?.openings ?? [];
  const names = leaf === undefined ? openings.map((opening) => opening.name) : [];
  return [
    ...openFace([...path, "on"], section, [face], sections),
    ...(leaf === undefined
      ? []
      : notAmong([...path, "on"], `a leaf of ${where}`, leaf, openings.flatMap(leafNames))),
    ...(round === undefined
      ? []
      : notAmong([...path, "round"], `an opening of ${leaf ?? where}`, round, names)),
    ...(names.includes(name)
      ? [{ path, value: name, expected: `a name that no opening of ${where} has` }]
      : []),
  ];
}

/** What a stiffener says after the face: the opening, and the leaf's own name where several share it. */
function leafNames(opening: Opening): readonly string[] {
  return leavesOf(opening).map(({ path: [, , own] }) => [opening.name, own].filter(Boolean).join("."));
}

function notAmong(path: CasePath, what: string, name: string, names: readonly string[]): Fault[] {
  if (names.includes(name)) return [];
  return [{ path, expected: `${what} (${names.join(", ") || "it has none"})${didYouMean(name, names)}` }];
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

function sectionOfHardware({ name, places }: PlacedHardware, known: readonly string[]): Fault[] {
  if ("cornersOf" in places) return notASection(["hardware", name, "corners of"], places.cornersOf, known);
  return places.flatMap(({ section }, i) =>
    notASection(["hardware", name, "places", i, "on"], section, known),
  );
}

function sectionOf(
  where: string,
  { name, section }: { readonly name: string; readonly section: string },
  known: readonly string[],
): Fault[] {
  return notASection([where, name, "in"], section, known);
}

function notASection(path: CasePath, name: string, known: readonly string[]): Fault[] {
  if (known.includes(name)) return [];
  const expected = `a section (${known.join(", ")})${didYouMean(name, known)}`;
  return [{ path, cause: `section ${name}`, expected }];
}

function shelfOf({ name, section, held }: Content, shelves: readonly Shelf[], unsure: Unsure): Fault[] {
  if (!("shelf" in held) || held.shelf === undefined || unsure.shelves.has(held.shelf)) return [];
  const here = shelves.filter((shelf) => shelf.section === section).map((shelf) => shelf.name);
  if (here.includes(held.shelf)) return [];
  const list = here.join(", ") || "it has none";
  const expected = `a shelf of section ${section} (${list})${didYouMean(held.shelf, here)}`;
  return [{ path: ["contents", name, "held", "shelf"], cause: `shelf ${section} ${held.shelf}`, expected }];
}

/** Faces that something needs, where the section is open. */
function openFace(
  path: CasePath,
  section: string,
  needed: readonly Face[],
  sections: readonly Section[],
): Fault[] {
  const here = sections.find(({ name }) => name === section);
  return needed
    .filter((face) => here && !here.panels[face])
    .map((face) => ({ path, expected: `a panel that is there: the ${face} of ${section} is left open` }));
}

function hardwareOnOpen({ name, places }: PlacedHardware, sections: readonly Section[]): Fault[] {
  if ("cornersOf" in places) return [];
  return places.flatMap(({ section, face }, i) =>
    openFace(["hardware", name, "places", i, "on"], section, [face], sections),
  );
}

/** A shelf is borne by the panels at its ends or its back. */
function shelfAtOpen({ name, section, support }: Shelf, sections: readonly Section[]): Fault[] {
  return openFace(["shelves", name, "support"], section, bearingFaces[support], sections);
}

/** A shelf rests on ledges of upright faces of its own section. */
function ledgesOf({ name, section, restsOn = [] }: Shelf, stiffeners: readonly Stiffener[]): Fault[] {
  const names = stiffeners
    .filter((one) => one.section === section && one.leaf === undefined)
    .filter(({ face }) => uprightFaces.some((upright) => upright === face))
    .map((one) => one.name);
  const what = `a stiffener on an upright face of section ${section}`;
  return restsOn.flatMap((one, i) => notAmong(["shelves", name, "rests on", i], what, one, names));
}

/** What a content stands on, hangs from or is fastened to. */
function contentAtOpen({ name, section, held }: Content, sections: readonly Section[]): Fault[] {
  if ("shelf" in held && held.shelf !== undefined) return [];
  const fixed = held.by === "screws" || held.by === "rivets";
  const face = held.by === "hung" ? "top" : fixed ? held.to : "bottom";
  return openFace(["contents", name, "held"], section, [face], sections);
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
  if (!here)
    return notASection(
      path,
      section,
      sections.map(({ name }) => name),
    );
  const vents = faces.flatMap((face) =>
    (here.panels[face]?.openings ?? []).map(({ name }) => `${face}.${name}`),
  );
  const fault = (word: string, vent: string): Fault[] =>
    vents.includes(vent)
      ? []
      : [
          {
            path: [...path, word],
            cause: `vent ${section} ${vent}`,
            expected: `an opening of section ${section} (${vents.join(", ") || "it has none"})${didYouMean(vent, vents)}`,
          },
        ];
  return [...fault("let in", letIn), ...fault("let out", letOut)];
}

/** A drawer comes out of an upright opening of its section that no leaf closes, and is called like nothing else. */
function drawerNames({ name, section, opening }: Drawer, { sections, shelves, contents }: CaseBody): Fault[] {
  const here = sections.find((one) => one.name === section);
  if (!here) return [];
  const openings = uprightFaces.flatMap((face) =>
    (here.panels[face]?.openings ?? [])
      .filter((opening) => leavesOf(opening).length === 0)
      .map((one) => `${face}.${one.name}`),
  );
  const list = openings.join(", ") || "it has none";
  return [
    ...(openings.includes(opening)
      ? []
      : [
          {
            path: ["drawers", name, "opening"],
            value: opening,
            expected: `an opening without a leaf in an upright face of section ${section} (${list})`,
          },
        ]),
    ...([...shelves, ...contents].some((one) => one.name === name)
      ? [{ path: ["drawers", name], value: name, expected: "a name that no shelf and no content has" }]
      : []),
  ];
}

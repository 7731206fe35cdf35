/** The sections of the case file, and how their parts take over what the build says. */
import type { z } from "zod";
import { Name } from "../../quantity/index.js";
import type { Edge, EdgeExtrusion, Facing, Opening, Panel, Section } from "../case.js";
import { type EdgeName, edgeNames, type Face, faces } from "../place.js";
import {
  type Build,
  buildField,
  type EdgeOverride,
  edgeField,
  facingField,
  grainField,
  type Override,
  type RunsThrough,
} from "./build-fields.js";
import { block, type FileUnits, field, lengthIn, named } from "./fields.js";
import { openingsField } from "./opening-field.js";

/** One section as written, before the builds are laid under it. */
export interface WrittenSection {
  readonly inside: Section["inside"];
  readonly build?: Build | undefined;
  readonly panels: Readonly<Partial<Record<Face, PanelOverride>>>;
  readonly edges: Readonly<Partial<Record<EdgeName, EdgeOverride>>>;
}

interface PanelOverride {
  readonly sheet?: string | undefined;
  readonly grain?: Panel["grain"] | undefined;
  readonly facing?: Override<Facing> | undefined;
  readonly openings?: readonly Opening[] | undefined;
}

/** The sections by name, from the ground up. */
export function sectionsField(units: FileUnits): z.ZodType<readonly (readonly [string, WrittenSection])[]> {
  const size = field(lengthIn(units), { above: 0 });
  const panel: z.ZodType<PanelOverride> = block({
    sheet: field(Name).optional(),
    grain: grainField.optional(),
    facing: facingField(units).optional(),
    openings: openingsField(units).optional(),
  });
  const panels = optionalBlock(faces, () => panel);
  const edges = optionalBlock(edgeNames, (edge) => edgeField(units, ...(edge.split("-") as [Face, Face])));
  const section: z.ZodType<WrittenSection> = block({
    inside: block({ width: size, depth: size, height: size }),
    build: buildField(units).optional(),
    panels: panels.default({}),
    edges: edges.default({}),
  });
  return named(section, '"lower"');
}

function optionalBlock<Word extends string, T>(
  words: readonly Word[],
  item: (word: Word) => z.ZodType<T>,
): z.ZodType<Partial<Record<Word, T>>> {
  const shape = Object.fromEntries(words.map((word) => [word, item(word).optional()]));
  return block(shape) as unknown as z.ZodType<Partial<Record<Word, T>>>;
}

/** Reports something missing at a path inside the section. */
export type Complain = (path: readonly string[], expected: string) => void;

/** A section complete: what it does not say itself comes from its build, then from the case's. */
export function completeSection(
  name: string,
  written: WrittenSection,
  caseBuild: Build,
  complain: Complain,
): Section {
  const build = layBuild(caseBuild, written.build ?? {});
  const panels = faces.map((face) => [face, completePanel(face, written, build, complain)]);
  const edges = edgeNames.map((edge) => [edge, completeEdge(edge, written, build, complain)]);
  return {
    name,
    inside: written.inside,
    panels: Object.fromEntries(panels) as Record<Face, Panel>,
    edges: Object.fromEntries(edges) as Record<EdgeName, Edge>,
  };
}

function layBuild(under: Build, over: Build): Build {
  return {
    sheet: over.sheet ?? under.sheet,
    grain: over.grain ?? under.grain,
    facing: layOver(under.facing, over.facing),
    runsThrough: over.runsThrough ?? under.runsThrough,
    edges: layOver(under.edges, over.edges),
  };
}

/** Fields that the upper one gives, else those of the lower one; "none" hides what is under it. */
function layOver<T extends object>(
  under: Override<T> | undefined,
  over: Override<T> | undefined,
): Override<T> | undefined {
  if (over === undefined || over === "none" || under === undefined || under === "none") return over ?? under;
  const given = Object.entries(over).filter(([, value]) => value !== undefined);
  return { ...under, ...Object.fromEntries(given) };
}

function completePanel(face: Face, { panels }: WrittenSection, build: Build, complain: Complain): Panel {
  const own = panels[face] ?? {};
  const sheet = own.sheet ?? build.sheet;
  if (sheet === undefined) complain(["panels", face, "sheet"], "a sheet here or in the block build");
  const facing = completeFacing(layOver(build.facing, own.facing), (word) =>
    complain(["panels", face, "facing", word], `a ${word} here or in the block build`),
  );
  return {
    sheet: sheet ?? "",
    grain: own.grain ?? build.grain ?? "across",
    ...(facing ? { facing } : {}),
    openings: own.openings ?? [],
  };
}

function completeFacing(
  written: Override<Facing> | undefined,
  missing: (word: string) => void,
): Facing | undefined {
  if (written === undefined || written === "none") return undefined;
  const { facing, adhesive, sides = "outside", oversize } = written;
  if (facing === undefined) missing("laminate");
  if (adhesive === undefined) missing("adhesive");
  if (oversize === undefined) missing("oversize");
  if (facing === undefined || adhesive === undefined || oversize === undefined) return undefined;
  return { facing, adhesive, sides, oversize };
}

function completeEdge(edge: EdgeName, { edges }: WrittenSection, build: Build, complain: Complain): Edge {
  const own = edges[edge];
  const through = own?.through ?? throughByOrder(edge, build.runsThrough);
  if (through === undefined) {
    complain(
      ["edges", edge, "through"],
      'which panel runs through, here or as "runs through" in the block build',
    );
  }
  const extrusion = completeExtrusion(layOver(build.edges, own?.extrusion), (word) =>
    complain(["edges", edge, word], `a ${word} here or in the block build`),
  );
  if (through === "neither" && !extrusion) {
    complain(["edges", edge, "bar"], "an extrusion for both panels to stop in, since neither runs through");
  }
  return { through: through ?? "neither", ...(extrusion ? { extrusion } : {}) };
}

function throughByOrder(edge: EdgeName, order: RunsThrough | undefined): Face | undefined {
  const meeting = edge.split("-") as [Face, Face];
  const first = order?.find((pair) => pair.some((face) => meeting.includes(face)));
  return first?.find((face) => meeting.includes(face));
}

function completeExtrusion(
  written: Override<EdgeExtrusion> | undefined,
  missing: (word: string) => void,
): EdgeExtrusion | undefined {
  if (written === undefined || written === "none") return undefined;
  const { bar, rivet, pitch, endDistance, setBack, ends = "square" } = written;
  if (bar === undefined) missing("bar");
  if (rivet === undefined) missing("rivet");
  if (pitch === undefined) missing("pitch");
  if (endDistance === undefined) missing("end distance");
  if (setBack === undefined) missing("set back");
  if (
    bar === undefined ||
    rivet === undefined ||
    pitch === undefined ||
    endDistance === undefined ||
    setBack === undefined
  ) {
    return undefined;
  }
  return { bar, rivet, pitch, endDistance, setBack, ends };
}

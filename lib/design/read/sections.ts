/** The sections of the case file: as written, and complete with what the builds say. */
import { Length } from "../../quantity/index.js";
import type { Edge, Opening, Panel, Section } from "../case.js";
import { type EdgeName, edgeNames, type Face, faces, facesAt } from "../place.js";
import {
  type Build,
  buildForm,
  type EdgeJoint,
  type EdgeJointKind,
  type EdgeOverride,
  type EdgeWords,
  edgeForm,
  extrusionFields,
  facingFields,
  jointFields,
  type Override,
  panelFields,
  type RunsThrough,
} from "./build.js";
import {
  type BlockOf,
  block,
  byName,
  type Fields,
  type Form,
  needed,
  noneOr,
  optional,
  preset,
} from "./form.js";
import { openingsField } from "./opening-field.js";

const openings: Form<readonly Opening[]> = { schema: openingsField };
const panelForm = block({
  ...panelFields,
  openings: optional("openings", openings, "What is cut out of it, by name."),
});

type PanelOverride = BlockOf<(typeof panelForm)["fields"]>;

function partsForm<Part extends string, T>(
  parts: readonly Part[],
  form: (part: Part) => Form<T>,
): Form<Readonly<Partial<Record<Part, T>>>> {
  return block(
    Object.fromEntries(parts.map((part) => [part, optional(part, form(part), `The ${part} one.`)])),
  ) as unknown as Form<Readonly<Partial<Record<Part, T>>>>;
}

const room = { above: 0, reach: 20 };
const insideForm = block({
  width: needed("width", Length, "Clear inside along x.", room),
  depth: needed("depth", Length, "Clear inside along y.", room),
  height: needed("height", Length, "Clear inside along z.", room),
});

const sectionFields = {
  inside: needed("inside", insideForm, "Clear inside."),
  build: optional(
    "build",
    buildForm,
    "What its panels and edges are made of, where it differs from the case.",
  ),
  standsOff: preset(
    "stands off",
    Length,
    Length.si(0),
    "How far it stands above the section below, on the metal of both.",
    { min: 0, reach: 0.1 },
  ),
  panels: preset(
    "panels",
    partsForm(faces, () => noneOr(panelForm)),
    {},
    "What its panels say of themselves; none leaves a face open.",
  ),
  edges: preset(
    "edges",
    partsForm(edgeNames, (edge) => edgeForm(...facesAt(edge))),
    {},
    "What its edges say of themselves.",
  ),
};

/** One section as written, before the builds are laid under it. */
export interface WrittenSection extends BlockOf<typeof sectionFields> {
  /** What the section is called. */
  readonly name: string;
}

/** The sections by name, from the ground up. */
export const sectionsForm: Form<readonly WrittenSection[]> = byName(block(sectionFields), '"lower"');

/** Reports something missing at a path of the file. */
export type Complain = (path: readonly string[], expected: string) => void;

/** A section complete: what it does not say itself comes from its build, then from the case's. */
export function completeSection(written: WrittenSection, caseBuild: Build, complain: Complain): Section {
  const { name, inside, standsOff, panels, edges } = written;
  const build = layBuild(caseBuild, written.build ?? {});
  const here = ["sections", name];
  if (faces.every((face) => panels[face] === "none"))
    complain([...here, "panels"], "at least one face that is not none");
  return {
    name,
    inside,
    ...(standsOff > 0 ? { standsOff } : {}),
    panels: byPart(faces, (face) => {
      const own = panels[face] ?? {};
      if (own === "none") return undefined;
      return completePanel(own, build, missingIn([...here, "panels", face], complain));
    }),
    edges: byPart(edgeNames, (edge) => {
      const open = facesAt(edge).find((face) => panels[face] === "none");
      if (!open) return completeEdge(edge, edges[edge], build, missingIn([...here, "edges", edge], complain));
      if (edges[edge]) complain([...here, "edges", edge], `no edge here: the ${open} is left open`);
      return undefined;
    }),
  };
}

/** Reports a word that is missing: in the case's build where the part itself says nothing of the thing. */
type Missing = (own: boolean, part: readonly string[], inBuild: readonly string[], what: string) => void;

function missingIn(here: readonly string[], complain: Complain): Missing {
  return (own, part, inBuild, what) =>
    own
      ? complain([...here, ...part], inBuild.length > 0 ? `${what} here or in the block build` : what)
      : complain(["build", ...inBuild], what);
}

/** What is made of each part; a part of which nothing is made is left out. */
function byPart<Part extends string, T>(
  parts: readonly Part[],
  make: (part: Part) => T | undefined,
): Readonly<Partial<Record<Part, T>>> {
  const made = parts.map((part) => [part, make(part)] as const).filter(([, one]) => one !== undefined);
  return Object.fromEntries(made) as Partial<Record<Part, T>>;
}

function layBuild(under: Build, over: Build): Build {
  const facing = layOver(under.facing, over.facing);
  const edges = layOver(under.edges, over.edges);
  return { ...under, ...over, ...(facing ? { facing } : {}), ...(edges ? { edges } : {}) };
}

/** Fields that the upper one gives, else those of the lower one; "none" hides what is under it. */
function layOver<T extends object>(
  under: T | "none" | undefined,
  over: T | "none" | undefined,
): T | "none" | undefined {
  if (over === undefined || over === "none" || under === undefined || under === "none") return over ?? under;
  return { ...under, ...over };
}

function completePanel(own: PanelOverride, build: Build, missing: Missing): Panel {
  const sheet = own.sheet ?? build.sheet;
  if (sheet === undefined) missing(false, [], ["sheet"], "a sheet, a name of sheet-stock.csv");
  const facing = complete(layOver(build.facing, own.facing), facingFields, (word) =>
    missing(own.facing !== undefined, ["facing", word], ["facing", word], withArticle(word)),
  );
  return {
    sheet: sheet ?? "",
    grain: own.grain ?? build.grain ?? "across",
    ...(facing ? { facing } : {}),
    openings: own.openings ?? [],
  };
}

function completeEdge(edge: EdgeName, own: EdgeOverride | undefined, build: Build, missing: Missing): Edge {
  const through = own?.through ?? throughByOrder(edge, build.runsThrough);
  if (through === undefined) {
    missing(
      false,
      [],
      ["runs through"],
      "which panels run through, such as [top-bottom, front-back, left-right]",
    );
  }
  const lacking = (word: string, what = withArticle(word)): void =>
    missing(own !== undefined, [word], ["edges", word], what);
  const held = layEdge(build.edges, own?.held);
  const joined = held !== undefined && held !== "none" && held.joint !== undefined ? held : undefined;
  const extrusion = joined ? undefined : complete(held, extrusionFields, lacking);
  const joint = joined ? completeJoint(joined, lacking) : undefined;
  if (through === "neither" && !extrusion) {
    missing(true, ["bar"], [], "an extrusion for both panels to stop in, since neither runs through");
  }
  return { through: through ?? "neither", ...(extrusion ? { extrusion } : {}), ...(joint ? { joint } : {}) };
}

/**
 * An edge that names a joint of its own, or a bar where its build has a joint, takes no other word from the build; one
 * that says nothing of what holds it is held as the build says.
 */
function layEdge(under: EdgeWords | undefined, over: EdgeWords | undefined): EdgeWords | undefined {
  if (over === undefined || Object.keys(over).length === 0) return under;
  const jointOf = (words: EdgeWords | undefined): string | undefined =>
    words === undefined || words === "none" ? undefined : (words.joint ?? (words.bar ? "bar" : undefined));
  const own = jointOf(over);
  return own !== undefined && own !== (jointOf(under) ?? "bar") ? over : layOver(under, over);
}

/** What each joint cannot do without, beside its screws' pitch and end distance. */
const jointNeeds: Readonly<Record<EdgeJointKind, readonly (keyof EdgeJoint)[]>> = {
  glued: ["adhesive"],
  screwed: ["screw"],
  cleat: ["strip"],
  "corner block": ["strip", "blocks", "blockLength"],
};

function completeJoint(
  words: Exclude<EdgeWords, "none">,
  lacking: (word: string, what?: string) => void,
): EdgeJoint | undefined {
  const { joint } = words;
  if (joint === undefined) return undefined;
  const { bar: _bar, rivet: _rivet, ends: _ends, stagger: _stagger, ...given } = words;
  const held = joint === "cleat" || joint === "corner block";
  const fixed = held && !given.adhesive && !given.screw;
  if (fixed) lacking("adhesive", `an adhesive, a screw or both with "joint: ${joint}"`);
  const row: readonly (keyof EdgeJoint)[] = given.screw ? ["pitch", "endDistance"] : [];
  const missing = [...jointNeeds[joint], ...row].filter((name) => given[name] === undefined);
  for (const name of missing)
    lacking(
      jointFields[name].key,
      `${/^[aeiou]/.test(jointFields[name].key) ? "an" : "a"} ${jointFields[name].key} with "joint: ${joint}"`,
    );
  if (fixed || missing.length > 0) return undefined;
  return { ...given, joint, setBack: given.setBack ?? Length.si(0) };
}

function withArticle(word: string): string {
  return `${/^[aeiou]/.test(word) ? "an" : "a"} ${word}`;
}

/** The face of the edge whose pair comes first. */
function throughByOrder(edge: EdgeName, order: RunsThrough | undefined): Face | undefined {
  const meeting = facesAt(edge);
  const first = order?.find((pair) => pair.some((face) => meeting.includes(face)));
  return first?.find((face) => meeting.includes(face));
}

/** The thing whole, or undefined after reporting each word it lacks; undefined for "none" too. */
function complete<All extends Fields>(
  written: Override<All> | undefined,
  fields: All,
  missing: (word: string) => void,
): BlockOf<All> | undefined {
  if (written === undefined || written === "none") return undefined;
  const given: Readonly<Record<string, unknown>> = written;
  const lacking = Object.entries(fields).filter(([name, { needed }]) => needed && given[name] === undefined);
  for (const [, { key }] of lacking) missing(key);
  if (lacking.length > 0) return undefined;
  const presets = Object.entries(fields).map(([name, { preset: otherwise }]) => [name, otherwise]);
  return { ...Object.fromEntries(presets.filter(([, otherwise]) => otherwise !== undefined)), ...given };
}

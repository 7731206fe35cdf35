/** How the parts of a section take over what they do not say themselves from the builds. */
import type { Edge, EdgeExtrusion, Facing, Panel, Section } from "../case.js";
import { type EdgeName, edgeNames, type Face, faces } from "../place.js";
import type { Build, Override, RunsThrough } from "./build-fields.js";
import type { WrittenSection } from "./section-fields.js";

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
  return { ...under, ...given(over) };
}

function completePanel(face: Face, { panels }: WrittenSection, build: Build, complain: Complain): Panel {
  const own = panels[face] ?? {};
  const sheet = own.sheet ?? build.sheet;
  if (sheet === undefined) complain(["panels", face, "sheet"], "a sheet here or in the block build");
  const written = layOver(build.facing, own.facing);
  const facing = complete<Facing>(written, { sides: "outside" }, facingWords, (word) =>
    complain(["panels", face, "facing", word], `a ${word} here or in the block build`),
  );
  return {
    sheet: sheet ?? "",
    grain: own.grain ?? build.grain ?? "across",
    ...(facing ? { facing } : {}),
    openings: own.openings ?? [],
  };
}

function completeEdge(edge: EdgeName, { edges }: WrittenSection, build: Build, complain: Complain): Edge {
  const own = edges[edge];
  const through = own?.through ?? throughByOrder(edge, build.runsThrough);
  if (through === undefined) {
    const expected = 'which panel runs through, here or as "runs through" in the block build';
    complain(["edges", edge, "through"], expected);
  }
  const written = layOver(build.edges, own?.extrusion);
  const extrusion = complete<EdgeExtrusion>(written, { ends: "square" }, extrusionWords, (word) =>
    complain(["edges", edge, word], `a ${word} here or in the block build`),
  );
  if (through === "neither" && !extrusion) {
    complain(["edges", edge, "bar"], "an extrusion for both panels to stop in, since neither runs through");
  }
  return { through: through ?? "neither", ...(extrusion ? { extrusion } : {}) };
}

/** The face of the edge whose pair comes first. */
function throughByOrder(edge: EdgeName, order: RunsThrough | undefined): Face | undefined {
  const meeting = edge.split("-") as [Face, Face];
  const first = order?.find((pair) => pair.some((face) => meeting.includes(face)));
  return first?.find((face) => meeting.includes(face));
}

/** The word of the case file for each field. */
type Words<T> = Readonly<Record<keyof T & string, string>>;

const facingWords: Words<Facing> = {
  facing: "laminate",
  adhesive: "adhesive",
  sides: "sides",
  oversize: "oversize",
};

const extrusionWords: Words<EdgeExtrusion> = {
  bar: "bar",
  rivet: "rivet",
  pitch: "pitch",
  endDistance: "end distance",
  setBack: "set back",
  ends: "ends",
};

/** The thing whole, or undefined after reporting each word it lacks; undefined for "none" too. */
function complete<T extends object>(
  written: Override<T> | undefined,
  defaults: Partial<T>,
  words: Words<T>,
  missing: (word: string) => void,
): T | undefined {
  if (written === undefined || written === "none") return undefined;
  const whole: Readonly<Record<string, unknown>> = { ...defaults, ...given(written) };
  const lacking = Object.entries<string>(words).filter(([field]) => whole[field] === undefined);
  for (const [, word] of lacking) missing(word);
  return lacking.length > 0 ? undefined : (whole as T);
}

function given(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

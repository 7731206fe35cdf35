/** The steps of one section, and which of them puts each part in its place. */
import {
  type Face,
  type Fastening,
  type HardwarePart,
  openFaces,
  type PanelPart,
  type Parts,
  secondHoldOf,
} from "../../design/index.js";
import { hardwareAt, stageOf } from "./hardware-stage.js";
import type { StageName, WorkStep } from "./work-step.js";

/** How a section is put together: what is tried, one after another. */
export interface SectionChoice {
  /** The panel that closes it; absent where a side is open. */
  readonly last?: string;
  /** Whether what is fastened to that panel goes on it on the bench. */
  readonly onBench: boolean;
  /** Whether all that is glued on its panels goes on them before they stand. */
  readonly gluedFlat: boolean;
}

/** Keys of the steps that all sections share. */
export const shared = {
  saw: "saw the pieces",
  laminate: "glue the laminate",
  cure: "let the glue of the laminate cure",
  trim: "trim the edges",
  open: "cut the openings",
  drill: "drill the panels",
  mark: "stack the sections, mark the latches, lift them off again",
  stack: "stack the sections",
} as const;

/** Keys of steps of one section. */
export const keyOf = {
  box: (section: string): string => `stand up ${section}`,
  close: (section: string): string => `close ${section}`,
  cure: (section: string): string => `let the glue of ${section} cure`,
  fit: (hardware: string): string => `fit ${hardware}`,
  bar: (bar: string): string => `rivet bar ${bar}`,
  leg: (bar: string, panel: string): string => `rivet bar ${bar} to ${panel}`,
  joint: (joint: string): string => `join ${joint}`,
  stiffen: (stiffener: string): string => `put on ${stiffener}`,
  pane: (pane: string): string => `put on ${pane}`,
  shelf: (shelf: string): string => `put in ${shelf}`,
  drawer: (drawer: string): string => `put in ${drawer}`,
  content: (content: string): string => `put in ${content}`,
  hang: (leaf: string): string => `hang ${leaf}`,
} as const;

const stages: Readonly<Record<StageName, number>> = {
  pieces: 0,
  flat: 0,
  box: 100,
  inside: 200,
  closing: 300,
  doors: 400,
  joined: 1e5,
  contents: 2e5,
};

/** Ranks of the sections are so far apart. */
const sectionRank = 1000;

/** The steps that all sections share. */
export function sharedSteps({ facings, sections, hardware }: Parts): readonly WorkStep[] {
  const laminated = facings.length > 0;
  const joined = hardware.some(({ item }) => item.duty === "join-sections");
  const keys = [
    shared.saw,
    ...(laminated ? [shared.laminate, shared.cure, shared.trim] : []),
    shared.open,
    shared.drill,
  ];
  const late = (key: string, offset: number): WorkStep => ({
    ...{ key, words: key, stage: "joined" },
    rank: stages.joined + offset,
  });
  return [
    ...keys.map((key, i): WorkStep => ({ key, words: key, rank: i - keys.length, stage: "pieces" })),
    ...(joined ? [late(shared.mark, -2)] : []),
    ...(sections.length > 1 || joined ? [late(shared.stack, 0)] : []),
  ];
}

/** The steps of a section. */
export function sectionSteps(section: string, { last }: SectionChoice, parts: Parts): readonly WorkStep[] {
  const base = sectionRank * (1 + parts.sections.findIndex(({ name }) => name === section));
  const step = (stage: StageName, offset: number, key: string, subject?: string, words = key): WorkStep => ({
    ...{ key, words, stage, section },
    rank: (stage === "joined" || stage === "contents" ? 0 : base) + stages[stage] + offset,
    ...(subject === undefined ? {} : { subject }),
  });
  const here = <Part extends { readonly section: string }>(list: readonly Part[]): readonly Part[] =>
    list.filter((part) => part.section === section);
  const isGlued = here(parts.joints).some(({ adhesive }) => adhesive !== undefined);
  return [
    ...here(parts.stiffeners).map(({ id }) => step("flat", 1, keyOf.stiffen(id), id)),
    ...here(parts.panes).map(({ id }) => step("flat", 3, keyOf.pane(id), id)),
    step(
      "box",
      0,
      keyOf.box(section),
      section,
      `stand up the panels of ${section}${last ? ` but ${last}` : ""}`,
    ),
    ...here(parts.bars).flatMap(({ id, covers }) =>
      last && covers.includes(last)
        ? covers.map((panel) => step("closing", panel === last ? -1 : 1, keyOf.leg(id, panel), id))
        : [step("box", 10, keyOf.bar(id), id)],
    ),
    ...here(parts.joints).map(({ id, panels }) =>
      last && panels.includes(last)
        ? step("closing", 1, keyOf.joint(id), id)
        : step("box", 20, keyOf.joint(id), id),
    ),
    ...(isGlued ? [step("box", 25, keyOf.cure(section))] : []),
    ...here(parts.hardware).map((part) => hardwareStep(part, last, parts, step)),
    ...parts.shelves
      .filter(({ shelf }) => shelf.section === section)
      .map(({ panel }) => step("inside", 20 + panel.box.low.z, keyOf.shelf(panel.id), panel.id)),
    ...parts.drawers
      .filter(({ drawer }) => drawer.section === section)
      .map(({ drawer }) => step("inside", 40, keyOf.drawer(drawer.name), drawer.name)),
    ...(last ? [step("closing", 0, keyOf.close(section), last, `put on ${last}`)] : []),
    ...leavesOf(section, parts).map(({ id }) => step("doors", 0, keyOf.hang(id), id)),
    ...fromBelow(section, parts).map((name, i) => step("contents", i, keyOf.content(name), name)),
  ];
}

function leavesOf(section: string, { panels }: Parts): readonly PanelPart[] {
  return panels.filter((panel) => panel.section === section && panel.role === "leaf");
}

/** What rides in a section: low and far back first. */
function fromBelow(section: string, { contents }: Parts): readonly string[] {
  return contents
    .filter(({ content }) => content.section === section)
    .sort((a, b) => a.box.low.z - b.box.low.z || b.box.low.y - a.box.low.y)
    .map(({ content }) => content.name);
}

type StepMaker = (stage: StageName, offset: number, key: string, subject?: string) => WorkStep;

function hardwareStep(part: HardwarePart, last: string | undefined, parts: Parts, step: StepMaker): WorkStep {
  const key = keyOf.fit(part.id);
  if (part.item.duty === "slide") return step("inside", 35, key, part.id);
  const at = {
    bench: () => step("flat", 2, key, part.id),
    wheels: () => step("box", 40, key, part.id),
    doors: () => step("doors", 1, key, part.id),
    joining: () => step("joined", -1, key, part.id),
    corners: () =>
      last && part.panels.includes(last) ? step("closing", 2, key, part.id) : step("box", 30, key, part.id),
  };
  return at[stageOf(part, parts)]();
}

/** Which step puts a part in its place. */
export type StepOfPart = (part: string) => string | undefined;

/** The step that puts each part of a section in its place. */
export function partSteps(
  section: string,
  { last }: SectionChoice,
  parts: Parts,
): ReadonlyMap<string, string> {
  const of = new Map<string, string>();
  const stand = (panel: string): string => (panel === last ? keyOf.close(section) : keyOf.box(section));
  for (const panel of parts.panels)
    if (panel.section === section) {
      const key = panel.role === "leaf" ? keyOf.hang(panel.id) : stand(panel.id);
      for (const id of [panel.id, `outside laminate of ${panel.id}`, `inside laminate of ${panel.id}`])
        of.set(id, key);
    }
  for (const { id, covers, section: own } of parts.bars)
    if (own === section) of.set(id, last && covers.includes(last) ? keyOf.close(section) : keyOf.bar(id));
  for (const { id, section: own } of parts.hardware) if (own === section) of.set(id, keyOf.fit(id));
  for (const { id, section: own } of parts.panes) if (own === section) of.set(id, keyOf.pane(id));
  for (const one of parts.stiffeners)
    if (one.section === section)
      for (const id of [one.id, ...(one.piece ? [one.piece.id] : [])])
        of.set(id, one.panel === last ? keyOf.close(section) : keyOf.stiffen(one.id));
  for (const { id, section: own, why } of parts.strips)
    if (own === section) of.set(id, stripStep(id, why, parts));
  for (const { shelf, panel } of parts.shelves)
    if (shelf.section === section) of.set(panel.id, keyOf.shelf(panel.id));
  for (const { drawer, panels } of parts.drawers)
    if (drawer.section === section) for (const { id } of panels) of.set(id, keyOf.drawer(drawer.name));
  for (const { content } of parts.contents)
    if (content.section === section) of.set(content.name, keyOf.content(content.name));
  return of;
}

function stripStep(id: string, why: "edge" | "stiffener", { joints, stiffeners }: Parts): string {
  const of = (list: readonly { readonly id: string }[]): string =>
    list.find((one) => id === one.id || id.startsWith(`${one.id} `))?.id ?? id;
  return why === "edge" ? keyOf.joint(of(joints)) : keyOf.stiffen(of(stiffeners));
}

/** The step that sets a group of fasteners. */
export function groupStep(group: Fastening, { last }: SectionChoice, parts: Parts): string {
  const { why, holds, panel } = group;
  const bar = parts.bars.find(({ id }) => id === holds);
  const section = parts.panels.find(({ id }) => id === panel)?.section;
  const shelf = parts.shelves.find((one) => one.shelf.name === holds && one.shelf.section === section);
  const content = parts.contents.find(
    ({ content: { name } }) => name === holds || secondHoldOf(name) === holds,
  );
  if (bar) return last && bar.covers.includes(last) ? keyOf.leg(bar.id, panel) : keyOf.bar(bar.id);
  if (why === "edge") return keyOf.joint(holds);
  if (why === "stiffener") return keyOf.stiffen(holds);
  if (why === "pane") return keyOf.pane(holds);
  if (why === "drawer") return keyOf.drawer(holds);
  if (why === "shelf" && shelf) return keyOf.shelf(shelf.panel.id);
  if (content) return keyOf.content(content.content.name);
  return keyOf.fit(holds);
}

/** Faces in the order in which they are tried last; of both sides the one that carries less, else the one nearer to what stands inside. */
const closing: readonly (readonly Face[])[] = [["top"], ["back"], ["front"], ["right", "left"], ["bottom"]];

/** How many pieces and groups of fasteners are on a panel. */
function carriedOn({ id }: PanelPart, { stiffeners, hardware, fastenings }: Parts): number {
  const fixed = [...stiffeners, ...fastenings].filter(({ panel }) => panel === id).length;
  return fixed + hardware.filter(({ panels }) => panels.includes(id)).length;
}

/** How far a panel is from what stands in its section, all of it together, to a micrometre. */
function farFromThings({ section, box }: PanelPart, { contents, shelves }: Parts): number {
  const things = [
    ...contents.filter(({ content }) => content.section === section),
    ...shelves.filter(({ shelf }) => shelf.section === section).map(({ panel }) => panel),
  ];
  const apart = (other: PanelPart["box"], axis: "x" | "y" | "z"): number =>
    Math.abs(box.low[axis] + box.size[axis] / 2 - other.low[axis] - other.size[axis] / 2);
  const far = things.map((thing) => apart(thing.box, "x") + apart(thing.box, "y") + apart(thing.box, "z"));
  return Math.round(far.reduce((sum, one) => sum + one, 0) * 1e6);
}

/** The panels that may close a section, the preferred one first; none where a side is open. */
export function closers(section: string, preferred: string, parts: Parts): readonly string[] {
  if (openFaces(section, parts).length > 0) return [];
  const faces = parts.panels.filter((panel) => panel.section === section && panel.role === "face");
  const rank = ({ face }: PanelPart): number => closing.findIndex((ones) => face && ones.includes(face));
  const rest = faces
    .filter(({ id }) => id !== preferred)
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        carriedOn(a, parts) - carriedOn(b, parts) ||
        farFromThings(a, parts) - farFromThings(b, parts),
    )
    .map(({ id }) => id);
  return [...faces.filter(({ id }) => id === preferred).map(({ id }) => id), ...rest];
}

/** Wheels of a section. */
export function wheelsOf(section: string, parts: Parts): readonly HardwarePart[] {
  return hardwareAt("wheels", parts, section);
}

/** Random sections from the ground up: what they are made of, their panels, what joins them and what they stand on. */
import { edgeNames, type Face, faces } from "../../../design/index.js";
import type { Block, Draws } from "./draws.js";
import { dressedPanel } from "./panels.js";
import { sheetNames } from "./stock.js";

/** A section's clear inside, mm. */
export interface Room {
  /** What it is called. */
  readonly name: string;
  /** From left to right. */
  readonly width: number;
  /** From front to back. */
  readonly depth: number;
  /** From bottom to top. */
  readonly height: number;
  /** Faces that are left open. */
  readonly open: readonly Face[];
  /** Whether drawers fill it. */
  readonly drawers: boolean;
}

/** The case's own sections and hardware as blocks of case.yaml. */
export interface Built {
  /** The block "build". */
  readonly build: Block;
  /** The block "sections". */
  readonly sections: Block;
  /** The block "hardware". */
  readonly hardware: Block;
  /** The block "stiffeners". */
  readonly stiffeners: Block;
  /** Whether it rolls. */
  readonly rolls: boolean;
}

/** Sections that cases mostly have, each count as often as it stands here: one or two, seldom more (common practice, no source). */
const usualSections = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 4, 5, 6];

/**
 * Random rooms, mostly of one plan.
 *
 * @param most up to six; as many as cases mostly have where it is left out
 */
export function roomsOf(draws: Draws, most?: number): readonly Room[] {
  const names = draws.shuffled(["base", "middle", "crown", "bay", "chest", "loft"]);
  const tall = draws.often(1);
  const [low, high] = tall ? [300, 420] : [320, 800];
  const plan = { width: draws.whole(low, high), depth: draws.whole(low, Math.min(high, 620)) };
  const unlike = draws.often(2);
  return names
    .slice(0, most === undefined ? draws.pick(usualSections) : draws.whole(1, most))
    .map((name, i) => ({
      name,
      width: unlike && i > 0 ? plan.width - draws.whole(0, 20) : plan.width,
      depth: plan.depth,
      ...upwards(draws, tall),
    }));
}

function upwards(draws: Draws, tall: boolean): Pick<Room, "height" | "open" | "drawers"> {
  const height = draws.whole(tall ? 600 : 300, tall ? 1100 : 620);
  if (height > 430 && draws.often(2)) return { height, open: [], drawers: true };
  const open = draws.often(2) ? [draws.pick<Face>(["front", "front", "back", "top"])] : [];
  return { height, open, drawers: false };
}

/** What all panels and edges are made of. */
function buildOf(draws: Draws, cornered: boolean): { readonly build: Block; readonly barred: boolean } {
  const { length } = draws;
  const barred = draws.often(8);
  const pitch = draws.whole(60, 140);
  const asDrawn = draws.whole(15, 25);
  const setBack = cornered ? 55 : draws.whole(0, 30);
  // A row begins inside the thickest wall with its facings, its first hole whole.
  const endDistance = Math.max(18 - setBack, asDrawn);
  const square = {
    rivet: "rivet 4",
    pitch: length(pitch),
    "end distance": length(endDistance),
    "set back": length(setBack),
  };
  const laminate = { laminate: draws.pick(["thin sheet", "thin roll"]), adhesive: "contact" };
  const build = {
    sheet: draws.pick(sheetNames),
    ...draws.some(5, { grain: draws.pick(["across", "up"]) }),
    ...(draws.often(5)
      ? { facing: { ...laminate, sides: draws.pick(["outside", "both"]), oversize: length(10) } }
      : {}),
    "runs through": draws.shuffled(["top-bottom", "front-back", "left-right"]),
    edges: barred ? { bar: "angle 40", ...square } : jointOf(draws),
  };
  return { build, barred };
}

/** What holds an edge without an extrusion. */
function jointOf(draws: Draws): Block | string {
  const { length, whole, often } = draws;
  const glue = { adhesive: "white glue" };
  const row = { screw: "screw", pitch: length(whole(80, 200)), "end distance": length(whole(15, 22)) };
  const wood = { strip: "batten 30", "set back": length(whole(0, 30)), ...(often(5) ? row : {}), ...glue };
  return draws.pick<Block | string>([
    "none",
    { joint: "glued", ...glue },
    { joint: "screwed", ...row, ...(often(5) ? glue : {}) },
    { joint: "cleat", ...wood },
    { joint: "corner block", ...wood, blocks: whole(1, 3), "block length": length(60) },
  ]);
}

/** Sections and hardware of random rooms. */
export function builtOf(draws: Draws, rooms: readonly Room[]): Built {
  const cornered = draws.often(5);
  const { build, barred } = buildOf(draws, cornered);
  const rolls = draws.often(6);
  const joined = rooms.length > 1 && draws.often(8) ? draws.pick(["sides", "front and back"]) : "not";
  const places: Record<string, Block[]> = {};
  const stiffeners: Record<string, unknown> = {};
  const gather = (found: Readonly<Record<string, readonly Block[]>>): void => {
    for (const [what, more] of Object.entries(found)) places[what] = [...(places[what] ?? []), ...more];
  };
  const sections = rooms.map((room, i) => {
    const neighbours = rooms.length > 1;
    const panels = faces.map((face) => {
      if (room.open.includes(face)) return [face, "none"] as const;
      const standsHere = face === "bottom" && i === 0;
      if (room.drawers && face === "front") return [face, { openings: baysOf(draws, room) }] as const;
      const dressed = standsHere
        ? { openings: {}, places: {}, stiffeners: {} }
        : dressedPanel(draws, { ...sizeOf(room, face), barred, margin: neighbours ? 150 : 80 });
      gather(dressed.places);
      Object.assign(stiffeners, dressed.stiffeners);
      return [face, panelBlock(draws, dressed.openings)] as const;
    });
    const said = Object.fromEntries(panels.filter(([, block]) => Object.keys(block).length > 0));
    return [room.name, sectionBlock(draws, room, said, barred)] as const;
  });
  for (const [i, upper] of rooms.entries()) {
    const lower = rooms[i - 1];
    if (lower) gather(latches(draws, joined, lower, upper));
  }
  const [first] = rooms;
  if (rolls && first) gather(wheels(draws, first));
  else if (first && draws.often(4)) gather(feet(draws, first));
  return {
    build,
    sections: Object.fromEntries(sections),
    hardware: hardwareOf(draws, places, rooms, cornered),
    stiffeners,
    rolls,
  };
}

/** Openings of drawers, one over the other. */
function baysOf({ length }: Draws, { width, height }: Room): Block {
  const count = height > 480 ? 2 : 1;
  const each = (height - 320) / count;
  const bay = (i: number): Block => ({
    rectangle: { width: length(width - 200), height: length(Math.max(60, each - 20)) },
    from: "bottom-left",
    across: length(100),
    up: length(150 + i * each),
  });
  return Object.fromEntries(Array.from({ length: count }, (_, i) => [`bay ${i + 1}`, bay(i)]));
}

function sizeOf(
  { name, width, depth, height }: Room,
  face: Face,
): { readonly name: string; readonly across: number; readonly up: number } {
  const across = face === "left" || face === "right" ? depth : width;
  const up = face === "top" || face === "bottom" ? depth : height;
  return { name: `${name}.${face}`, across, up };
}

function panelBlock(draws: Draws, openings: Block): Block {
  return {
    ...(draws.often(2) ? { sheet: draws.pick(sheetNames) } : {}),
    ...(draws.often(1) ? { grain: draws.pick(["across", "up"]) } : {}),
    ...(draws.often(1) ? { facing: "none" } : {}),
    ...(Object.keys(openings).length > 0 ? { openings } : {}),
  };
}

function sectionBlock(draws: Draws, room: Room, panels: Block, barred: boolean): Block {
  const { length } = draws;
  const bare = (edge: string): boolean => room.open.some((face) => edge.split("-").includes(face));
  const edges = edgeNames
    .filter((edge) => !bare(edge) && draws.often(1))
    .map((edge) => [edge, edgeBlock(draws, edge, barred)] as const);
  return {
    inside: { width: length(room.width), depth: length(room.depth), height: length(room.height) },
    ...(Object.keys(panels).length > 0 ? { panels } : {}),
    ...(edges.length > 0 ? { edges: Object.fromEntries(edges) } : {}),
  };
}

function edgeBlock(draws: Draws, edge: string, barred: boolean): Block {
  const through = draws.pick(edge.split("-"));
  const joint = jointOf(draws);
  if (!barred) return { through, ...(draws.often(5) && typeof joint !== "string" ? joint : {}) };
  if (draws.often(3)) return { bar: "seated 40", through: "neither" };
  return draws.often(5) ? { bar: "none", through } : { through };
}

/** Latches of an upper section over keepers of the one below. */
function latches(draws: Draws, joined: string, lower: Room, upper: Room): Record<string, Block[]> {
  const sides: readonly Face[] =
    joined === "sides" ? ["left", "right"] : joined === "not" ? [] : ["front", "back"];
  const shut = sides.filter((face) => !lower.open.includes(face) && !upper.open.includes(face));
  const corners = ["left", "right"];
  const place = (room: Room, face: Face, from: string, up: number): Block => {
    const across = draws.length(110);
    return { on: `${room.name}.${face}`, from, across, up: draws.length(up) };
  };
  return {
    "over latch": shut.flatMap((face) => corners.map((side) => place(upper, face, `bottom-${side}`, 90))),
    "over keeper": shut.flatMap((face) => corners.map((side) => place(lower, face, `top-${side}`, 80))),
  };
}

function wheels(draws: Draws, { name, width, depth }: Room): Record<string, Block[]> {
  const corners = ["bottom-left", "bottom-right", "top-left", "top-right"];
  const [across, up] = [
    draws.length(draws.whole(95, Math.min(120, width / 2 - 50))),
    draws.length(draws.whole(85, Math.min(110, depth / 2 - 40))),
  ];
  const item = draws.pick(["wheel 75", "wheel 125"]);
  return { [item]: corners.map((from) => ({ on: `${name}.bottom`, from, across, up })) };
}

function feet(draws: Draws, { name, width, depth }: Room): Record<string, Block[]> {
  const { length, whole } = draws;
  if (depth > 420 && draws.often(4)) {
    const at = { across: length(whole(80, width / 2 - 60)), up: length(depth / 2) };
    return {
      "wood skid": ["bottom-left", "bottom-right"].map((from) => ({ on: `${name}.bottom`, from, ...at })),
    };
  }
  const at = { across: length(whole(80, 120)), up: length(whole(80, 110)) };
  const turned = draws.pick([0, 90, 180, true, false]);
  const corners = ["bottom-left", "bottom-right", "top-left", "top-right"];
  return { "rubber foot": corners.map((from) => ({ on: `${name}.bottom`, from, ...at, turned })) };
}

const duties: Readonly<Record<string, string>> = {
  grip: "lift",
  eye: "hang",
  "butt hinge": "hinge",
  "turn latch": "close",
  "over latch": "join-sections",
  "over keeper": "join-sections",
  "wheel 75": "roll",
  "wheel 125": "roll",
  "rubber foot": "stand",
  "wood skid": "stand",
};

function hardwareOf(
  draws: Draws,
  places: Readonly<Record<string, readonly Block[]>>,
  rooms: readonly Room[],
  cornered: boolean,
): Block {
  const found = Object.entries(places)
    .filter(([, at]) => at.length > 0)
    .map(([item, at]) => [`each ${item}`, { item, duty: duties[item], places: at }] as const);
  const metal = rooms
    .filter(({ open }) => cornered && open.length === 0 && draws.often(8))
    .map(
      ({ name }) =>
        [`corner of ${name}`, { item: "corner 50", duty: "protect", "corners of": name }] as const,
    );
  return Object.fromEntries([...found, ...metal]);
}

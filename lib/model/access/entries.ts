/** Where a hand gets into a section: through its openings, and through sides that are open or not yet closed. */
import { type Vector3, vector3 } from "../../algebra/matrix3.js";
import { doorwaysIn } from "../../assembly/index.js";
import {
  type Face,
  faceAxes,
  faces,
  frameOn,
  limbThrough,
  type PanelPart,
  type Parts,
  pointIn,
  roomFor,
} from "../../design/index.js";
import { rectangle, type Shape } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { type CaseSolid, caseSolids } from "../solids/index.js";

/** A way into a section. */
export interface Entry {
  /** In a builder's words: "side door of lower.left", "the open top". */
  readonly words: string;
  /** Places of a hand on the inside of the wall, m. */
  readonly doorways: readonly Vector3[];
  /** How far a hand reaches from there, m. */
  readonly reach: number;
  /** Parts that close it once they are in. */
  readonly closedBy: readonly string[];
}

/** The room inside a section. */
export interface InsideRoom {
  /** Lowest corner, m. */
  readonly low: Vector3;
  /** Highest corner, m. */
  readonly high: Vector3;
}

/** The inside of a section in the stacked case. */
export function insideOf(section: string, { parts, case: build }: ReviewInput): InsideRoom {
  const part = parts.sections.find(({ name }) => name === section);
  const described = build.sections.find(({ name }) => name === section);
  const { x = 0, y = 0, z = 0 } = part?.insideLow ?? {};
  const { width = 0, depth = 0, height = 0 } = described?.inside ?? {};
  return { low: [x, y, z], high: [x + width, y + depth, z + height] };
}

/** Every part but doors with all that is fixed to them: they stand open, out of the way. */
export function withDoorsOpen(input: ReviewInput): readonly CaseSolid[] {
  const { solids, movements } = caseSolids(input);
  const leaves = new Set(input.parts.panels.flatMap(({ id, role }) => (role === "leaf" ? [id] : [])));
  const swinging = movements.filter(({ id }) => leaves.has(id));
  const away = new Set(swinging.flatMap(({ parts, hinges }) => [...parts, ...hinges]));
  return solids.filter(({ part }) => !away.has(part));
}

/** Every way of a hand into a section. */
export function entriesOf(section: string, input: ReviewInput): readonly Entry[] {
  const panels = input.parts.panels.filter((panel) => panel.section === section && panel.role === "face");
  const sides = faces.map((face) => sideEntry(section, face, panels, input));
  const openings = panels.flatMap((panel) =>
    panel.openings
      .filter(({ why }) => why === "case")
      .flatMap((opening) => openingEntry(panel, opening.name, opening.outline, input)),
  );
  return [...openings, ...sides];
}

/** Through a whole side before its panel is on. */
function sideEntry(section: string, face: Face, panels: readonly PanelPart[], input: ReviewInput): Entry {
  const { low, high } = insideOf(section, input);
  const { normal, end } = faceAxes[face];
  const across = { x: 0, y: 1, z: 2 }[normal];
  const flat = vector3((i) => (i === across ? 0 : high[i] - low[i]));
  const at = end === "high" ? high : low;
  const frame = frameOn(face, {
    low: pointOf(vector3((i) => (i === across ? at[i] : low[i]))),
    size: pointOf(flat),
  });
  const { u, v } = faceAxes[face];
  const size = (axis: "x" | "y" | "z"): number => flat[{ x: 0, y: 1, z: 2 }[axis] as 0];
  const arm = roomFor("arm", input.measurements.tools);
  const outline = rectangle({ left: 0, bottom: 0, width: size(u.axis), height: size(v.axis) });
  const panel = panels.find((one) => one.face === face)?.id;
  return {
    words: panel ? `the ${face} of ${section} before it is on` : `the open ${face} of ${section}`,
    doorways: doorwaysIn(outline, arm.diameter).map((point) => pointIn(frame, point, 0)),
    reach: arm.length,
    closedBy: panel ? [panel] : [],
  };
}

function pointOf([x, y, z]: Vector3) {
  return { x, y, z } as Parameters<typeof frameOn>[1]["low"];
}

/** Through an opening that the whole arm passes, or the hand alone; leaves stand open. */
function openingEntry(panel: PanelPart, name: string, outline: Shape, input: ReviewInput): readonly Entry[] {
  const frame = frameOn(panel.face ?? "front", panel.box);
  const limb = limbThrough(outline, input.measurements.tools);
  if (!limb) return [];
  return [
    {
      words: `"${name}" of ${panel.id}`,
      doorways: limb.at.map((point) => pointIn(frame, point, 0)),
      reach: limb.reach,
      closedBy: filledBy(panel, name, input.parts),
    },
  ];
}

/** What fills an opening for good: its pane, or the drawer that comes out of it. */
export function filledBy(
  { id, face, section }: PanelPart,
  opening: string,
  { panes, drawers }: Parts,
): readonly string[] {
  return [
    ...panes
      .filter((pane) => pane.panel === id && pane.id === `${id}.${opening} pane`)
      .map((pane) => pane.id),
    ...drawers
      .filter(({ drawer }) => drawer.section === section && drawer.opening === `${face}.${opening}`)
      .flatMap(({ panels }) => panels.slice(0, 1).map((one) => one.id)),
  ];
}

/** A panel that one place of it is pressed on: where it gives most, by a person, a hand or a thing. */

import type { PanelPart } from "../../design/index.js";
import {
  type HeldPanel,
  isMaterial,
  type LargestMoments,
  meshedPanelUniform,
  type Outline,
  type PanelPlace,
  panelPatchMoments,
  patchProblem,
} from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import { keptByContent } from "../../kept/index.js";
import { type Force, Length, LineLoad, Pressure } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { heldPanel, type PanelHold, stiffenedMoments } from "./panel-load.js";

/** A force on a rectangle of a panel. */
export interface PressedPatch {
  /** The force. */
  readonly force: Force;
  /** Of the rectangle, along the panel's x; cut to the panel. */
  readonly length: Length;
  /** Of the rectangle, along the panel's y; cut to the panel. */
  readonly width: Length;
}

/** What pressing there makes. */
export interface PressedPanel {
  /** The panel's largest moments, the shear around the rectangle included. */
  readonly moments: LargestMoments;
  /** The worked line. */
  readonly because: WorkedLine;
}

/**
 * A panel pressed on a rectangle, as near as there is material to where an even load bends it most. Where openings
 * leave no room, the rectangle shrinks: on a smaller place the same force is never milder.
 *
 * @throws Refusal where there is room for nothing as large as a thumb
 */
export function pressedWhereWeakest(
  panel: PanelPart,
  hold: PanelHold,
  patch: PressedPatch,
  input: ReviewInput,
): PressedPanel {
  const held = heldPanel(panel, hold, input);
  const { x, y, length, width } = roomFor(held, hold, patch);
  const inputs = {
    ...held,
    patch: { x, y },
    patchLength: length,
    patchWidth: width,
    force: patch.force,
    points: hold.points,
  };
  const because = panelPatchMoments.worked(inputs);
  const stiffer = stiffenedMoments(panel, patchProblem(inputs), patch.force, input);
  const moments = stiffer ?? because.value;
  const around = patch.force / (2 * (length + width));
  return { moments: { ...moments, edgeShear: LineLoad.si(Math.max(around, moments.edgeShear)) }, because };
}

/**
 * The rectangle that is pressed, from the lower left corner of the panel's clear span.
 *
 * @throws Refusal where there is room for nothing as large as a thumb
 */
export function pressedRoom(
  panel: PanelPart,
  hold: PanelHold,
  patch: Pick<PressedPatch, "length" | "width">,
  input: ReviewInput,
): PressedRoom {
  return roomFor(heldPanel(panel, hold, input), hold, patch);
}

/** A rectangle on a panel, from its lower left corner. */
export type PressedRoom = PanelPlace & Pick<PressedPatch, "length" | "width">;

/** What a rectangle without room shrinks by, again and again. */
const shrinking = 0.8;
/** Nothing smaller is tried. */
const thumb = 0.02;

function roomFor(
  held: HeldPanel,
  hold: PanelHold,
  { length, width }: Pick<PressedPatch, "length" | "width">,
): PressedRoom {
  const outline: Outline = {
    length: held.length,
    width: held.width,
    cutouts: held.openings.map((shape) => ({ name: "opening", shape })),
  };
  const room = keptRoom({ outline, about: weakest(held, hold), sides: { x: length, y: width } });
  if (!room) throw new Refusal("strength: openings leave no room to press on");
  return room;
}

/** Places kept: those of a large case, and of some edits before. */
const mostPlaces = 240;

/** The largest of its shrunken sizes that has room, where it has it; undefined where none has. */
const keptRoom: (asked: {
  readonly outline: Outline;
  readonly about: Point2;
  readonly sides: Point2;
}) => PressedRoom | undefined = keptByContent(
  mostPlaces,
  ({ outline, about, sides: { x: length, y: width } }) => {
    for (let share = 1; share * Math.min(length, width) >= thumb; share *= shrinking) {
      const [u, v] = [Math.min(share * length, outline.length), Math.min(share * width, outline.width)];
      const clear = nearestClear(outline, about, { x: u, y: v });
      if (!clear) continue;
      const { x, y } = clear;
      return { x: Length.si(x), y: Length.si(y), length: Length.si(u), width: Length.si(v) };
    }
    return undefined;
  },
);

/** The middle of a leaf, which single points hold; else where an even load bends it most. */
function weakest(held: HeldPanel, { points }: PanelHold): Point2 {
  if (points.length > 0) return { x: held.length / 2, y: held.width / 2 };
  const { atX, atY } = meshedPanelUniform({ ...held, pressure: Pressure.si(1) });
  return { x: atX, y: atY };
}

/** Steps from one end of the panel to the other in which a clear place is looked for. */
const steps = 32;
/** Places of the rectangle that must lie on material, along each side. */
const looks = 7;

/** Lower left corner of the rectangle that lies on material, its middle nearest to a place; undefined without room. */
function nearestClear(
  outline: Outline,
  { x: atX, y: atY }: Point2,
  { x: u, y: v }: Point2,
): Point2 | undefined {
  const start: Point2 = {
    x: within(atX - u / 2, outline.length - u),
    y: within(atY - v / 2, outline.width - v),
  };
  if (isClear(outline, start, { x: u, y: v })) return start;
  const along = Array.from({ length: steps + 1 }, (_, i) => i / steps);
  const places = along.flatMap((a) =>
    along.map((b) => ({ x: a * (outline.length - u), y: b * (outline.width - v) })),
  );
  const away = ({ x, y }: Point2): number => (x - start.x) ** 2 + (y - start.y) ** 2;
  return places.sort((a, b) => away(a) - away(b)).find((place) => isClear(outline, place, { x: u, y: v }));
}

function within(at: number, most: number): number {
  return Math.min(most, Math.max(0, at));
}

function isClear(outline: Outline, { x, y }: Point2, { x: u, y: v }: Point2): boolean {
  const shares = Array.from({ length: looks }, (_, i) => i / (looks - 1));
  return shares.every((a) => shares.every((b) => isMaterial(outline, { x: x + a * u, y: y + b * v })));
}

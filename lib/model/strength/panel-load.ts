/** What a panel, a leaf or a shelf has to bear, how it is held meanwhile, and the moments that this makes. */
import { type HardwarePart, type PanelPart, panelSides, type ShelfPart } from "../../design/index.js";
import {
  type HeldEdge,
  type HeldEdges,
  type HeldPanel,
  keptSolution,
  type LargestMoments,
  largestMoments,
  type PanelPlace,
  type PanelProblem,
  panelMoments,
  pressedProblem,
} from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import type { EnDuration, ServiceClass } from "../../material/index.js";
import { Length, type Mass, Pressure, standardGravity } from "../../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { facePressure } from "../stiffness/face-pressure.js";
import { sagInputs } from "../stiffness/panel-sag.js";
import { sheetModuli } from "../stiffness/sheet-moduli.js";
import { shelfEdges, shelfPressure } from "../stiffness/shelf-sag.js";
import { stiffenedSpan } from "../stiffness/stiffened.js";

/** How a panel is held. */
export interface PanelHold {
  /** How its edges are held. */
  readonly edges: HeldEdges;
  /** Places that cannot move, from the lower left corner of its clear span. */
  readonly points: readonly PanelPlace[];
}

/** A load on a panel. */
export interface LoadOnPanel {
  /** What it is, in words: "a jolt on what it carries". */
  readonly what: string;
  /** On all of it. */
  readonly pressure: Pressure;
  /** How long it stays in all. */
  readonly duration: EnDuration;
}

/** Held down and free to turn wherever its box holds it. */
export function hingedEdges({ freeSides = [] }: PanelPart): HeldEdges {
  const held = (side: keyof HeldEdges): HeldEdge => (freeSides.includes(side) ? "free" : "hinged");
  return { left: held("left"), right: held("right"), bottom: held("bottom"), top: held("top") };
}

/**
 * How a face or a leaf is held: a face by its edges, a leaf along its hinges and at its latches.
 *
 * @throws Refusal for a leaf without a latch, which holds nothing off
 */
export function holdOf(panel: PanelPart, input: ReviewInput): PanelHold {
  const { leaf } = panel;
  if (!leaf) return { edges: hingedEdges(panel), points: [] };
  const points = latchPlaces(panel, input);
  if (points.length === 0) throw new Refusal(`${panel.id}: no latch is known`, noLatch(panel));
  const free: HeldEdges = { left: "free", right: "free", bottom: "free", top: "free" };
  return { edges: { ...free, [leaf.hinge]: "hinged" }, points };
}

function noLatch({ id }: PanelPart): MissingMeasurement {
  return { measure: `what holds ${id} shut`, how: "place a latch over its free side in the case file" };
}

/** The latches that hold a leaf shut: on its panel, or on a leaf beside it that is held there itself. */
export function latchesOf(panel: PanelPart, { parts }: ReviewInput): readonly HardwarePart[] {
  const on = ({ id }: PanelPart): readonly HardwarePart[] =>
    parts.hardware.filter(({ item, panels }) => item.duty === "close" && panels.includes(id));
  return on(panel).filter((latch) => {
    const caught = caughtOn(panel, latch);
    const other = parts.panels.find(({ id }) => id === caught);
    return !other || on(other).some((one) => caughtOn(other, one) === undefined);
  });
}

/** The leaf beside it that a latch of a leaf catches on; absent where it catches on the panel. */
function caughtOn({ id, width, height, leaf }: PanelPart, { on, panels }: HardwarePart): string | undefined {
  if (!leaf) return undefined;
  const beside = Object.values(leaf.meets);
  const joined = panels.find((one) => one !== id && beside.includes(one));
  if (joined || !on) return joined;
  const [x, y] = [on.x - leaf.low.x, on.y - leaf.low.y];
  const away = { left: x, right: width - x, bottom: y, top: height - y };
  const [nearest] = [...panelSides].sort((a, b) => Math.abs(away[a]) - Math.abs(away[b]));
  return nearest && leaf.meets[nearest];
}

/** Where latches hold a leaf, in its own axes; one beside the leaf holds its edge. */
function latchPlaces(panel: PanelPart, input: ReviewInput): readonly PanelPlace[] {
  const { width, height, leaf } = panel;
  if (!leaf) return [];
  // To a nanometre: what floating point leaves of a sum must not decide between two meshes.
  const within = (at: number, size: number): Length =>
    Length.si(Math.min(size, Math.max(0, Math.round(at * 1e9) / 1e9)));
  return latchesOf(panel, input).flatMap(({ on }) =>
    on
      ? [
          {
            x: within(on.x - leaf.low.x, width),
            y: within(on.y - leaf.low.y, height),
          },
        ]
      : [],
  );
}

/** What presses on a face or a leaf; nothing for one that nobody touches. */
export function faceLoads(panel: PanelPart, input: ReviewInput): readonly LoadOnPanel[] {
  if (panel.face === "bottom") return jolted("what stands on it", floorPressure(panel, input), input);
  const what = panel.face === "top" ? "what lies on it" : "somebody or something leaning on it";
  const pressure = facePressure(panel, input);
  return pressure > 0 ? [{ what, pressure, duration: "short" }] : [];
}

/** What a shelf carries. */
export function shelfLoads(part: ShelfPart, input: ReviewInput): readonly LoadOnPanel[] {
  return jolted("what it carries", shelfPressure(part), input);
}

/** Where a case lives, as EN 1995 sorts it. */
export function serviceClassOf({ case: { demands } }: ReviewInput): ServiceClass {
  return demands.climate === "dry" ? "class 1" : "class 2";
}

/** What stands on a top in storage, spread over what it spans. */
export function storedLoad(
  { clearWidth, clearHeight }: PanelPart,
  mass: Mass,
): { readonly pressure: Pressure } {
  return { pressure: Pressure.si((mass * standardGravity) / (clearWidth * clearHeight)) };
}

/** A weight that stays for years, and the same for a moment with a jolt. */
export function jolted(what: string, still: Pressure, input: ReviewInput): readonly LoadOnPanel[] {
  if (still === 0) return [];
  const { dynamicFactor } = input.case.demands;
  return [
    { what: `${what}, for years`, pressure: still, duration: "permanent" },
    {
      what: `${what}, with a jolt`,
      pressure: Pressure.si(dynamicFactor * still),
      duration: "instantaneous",
    },
  ];
}

/** How far over the floor a thing may begin and still stand on it. */
const onFloor = 0.01;

/** Everything that stands on the floor of its section, however it is held there, spread over it. */
function floorPressure({ section, clearWidth, clearHeight }: PanelPart, { parts }: ReviewInput): Pressure {
  const floor = parts.sections.find(({ name }) => name === section)?.insideLow.z ?? 0;
  const weight = parts.contents
    .filter(({ content, box }) => content.section === section && box.low.z - floor < onFloor)
    .reduce((sum, { content }) => sum + content.mass * standardGravity, 0);
  return Pressure.si(weight / (clearWidth * clearHeight));
}

/** The panel as the formulas of moments take it, without load. */
export function heldPanel(panel: PanelPart, { edges }: PanelHold, input: ReviewInput): HeldPanel {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const { pressure: _, ...inputs } = sagInputs({ panel, moduli, pressure: Pressure.si(1), edges: "hinged" });
  return { ...inputs, ...edges };
}

/** What a panel has to bear, with the worked line of the bare panel. */
export interface PanelMoments {
  /** The largest of each, with the panel's stiffeners. */
  readonly moments: LargestMoments;
  /** The worked line, without them. */
  readonly because: WorkedLine;
}

/** The largest moments of a panel under a pressure. */
export function momentsUnder(
  panel: PanelPart,
  hold: PanelHold,
  pressure: Pressure,
  input: ReviewInput,
): PanelMoments {
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const inputs = {
    ...sagInputs({ panel, moduli, pressure, edges: "hinged" }),
    ...hold.edges,
    points: hold.points,
  };
  const because = panelMoments.worked(inputs);
  const stiffer = stiffenedMoments(panel, pressedProblem(inputs), inputs.pressure, input);
  return { moments: stiffer ?? because.value, because };
}

/** The same with stiffeners, by the same elements; nothing for a bare panel. */
export function stiffenedMoments(
  panel: PanelPart,
  problem: PanelProblem,
  load: number,
  input: ReviewInput,
): LargestMoments | undefined {
  const regions = stiffenedSpan(panel, problem.sheet, input);
  return regions.length > 0 ? largestMoments(keptSolution({ ...problem, regions }), load) : undefined;
}

/** How a shelf is held. */
export function shelfHold({ shelf }: ShelfPart): PanelHold {
  return { edges: shelfEdges(shelf.support), points: [] };
}

/** Tight straps over a section: where its walls leave room for them, and what edges and walls stand there. */
import type { Lashing, PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type OrthotropicStiffness, plywoodDesign } from "../../material/index.js";
import { linePressedBuckling, stripBuckling } from "../../mechanics/index.js";
import { strapEdgePressure } from "../../moving/index.js";
import { Force, Length, mm, Pressure } from "../../quantity/index.js";
import { boundsOf } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { panelStiffness } from "../stiffness/panel-stiffness.js";
import { sheetModuli } from "../stiffness/sheet-moduli.js";
import { serviceClassOf } from "./panel-load.js";
import { loadFactor } from "./panel-strength.js";
import { edgeCompression } from "./sheet-strength.js";

/** From and to, along the axis that a wall runs along, in the stacked case. */
interface Stretch {
  /** Its beginning. */
  readonly from: number;
  /** Its end. */
  readonly to: number;
}

/** Straps over a section from one wall to the wall opposite. */
export interface StrapRun {
  /** The walls that the straps come down beside. */
  readonly walls: readonly [PanelPart, PanelPart];
  /** The middles of the stretches for the straps, from the left or front end of the walls. */
  readonly middles: readonly Length[];
  /** Width of wall that each strap has to itself. */
  readonly strip: Length;
}

/** Where nobody says how wide a strap is: the narrowest with a ratchet. */
export const usualStrapWidth: Length = mm(25);

/** Both ways in which straps can run over a section; a way without two walls, or without room, is left out. */
export function strapRuns(
  section: string,
  { strapWidth = usualStrapWidth, straps }: Lashing,
  input: ReviewInput,
): readonly StrapRun[] {
  const wall = (face: PanelPart["face"]): PanelPart | undefined =>
    input.parts.panels.find((one) => one.role === "face" && one.section === section && one.face === face);
  const pairs = [
    [wall("left"), wall("right")],
    [wall("front"), wall("back")],
  ] as const;
  return pairs.flatMap(([low, high]) => {
    if (!low || !high) return [];
    const free = shared(freeStretches(low), freeStretches(high));
    const strip = stripOf(free, Math.max(1, straps));
    if (strip < strapWidth) return [];
    const start = startOf(low);
    const middles = free.flatMap(({ from, to }) =>
      Array.from({ length: Math.floor((to - from) / strip + tiny) }, (_, i) =>
        Length.si(from + (i + 0.5) * strip - start),
      ),
    );
    // Nearest to the ends first, so that a mirrored section has its straps mirrored.
    const fromEnd = (at: number): number => Math.min(at, low.width - at);
    return [
      {
        walls: [low, high] as const,
        middles: [...middles]
          .sort((a, b) => fromEnd(a) - fromEnd(b))
          .slice(0, Math.max(1, straps))
          .sort((a, b) => a - b),
        strip: Length.si(strip),
      },
    ];
  });
}

const tiny = 1e-9;

/** The widest strip of which as many as there are straps find room side by side. */
function stripOf(free: readonly Stretch[], straps: number): number {
  const tried = free.flatMap(({ from, to }) =>
    Array.from({ length: straps }, (_, i) => (to - from) / (i + 1)),
  );
  const fits = (strip: number): boolean =>
    free.reduce((sum, { from, to }) => sum + Math.floor((to - from) / strip + tiny), 0) >= straps;
  return Math.max(0, ...tried.filter(fits));
}

/** Where a wall's clear span begins, along the axis that the wall runs along. */
function clearStartOf(wall: PanelPart): number {
  const { face, width, clearLow, clearWidth } = wall;
  const mirrored = face === "back" || face === "left";
  return startOf(wall) + (mirrored ? width - clearLow.x - clearWidth : clearLow.x);
}

function startOf({ face, box: { low } }: PanelPart): number {
  return face === "left" || face === "right" ? low.y : low.x;
}

/** Where a wall has no opening over its whole height, in the stacked case; back and left are seen mirrored. */
function freeStretches(wall: PanelPart): readonly Stretch[] {
  const { face, width, clearLow, clearWidth, openings } = wall;
  const start = startOf(wall);
  const mirrored = face === "back" || face === "left";
  const placed = (from: number, to: number): Stretch =>
    mirrored
      ? { from: start + width - to, to: start + width - from }
      : { from: start + from, to: start + to };
  const cuts = openings.map(({ outline }) => {
    const { left, width: wide } = boundsOf(outline);
    return placed(left, left + wide);
  });
  return cuts.reduce<readonly Stretch[]>(
    (free, cut) =>
      free.flatMap(({ from, to }) =>
        [
          { from, to: Math.min(to, cut.from) },
          { from: Math.max(from, cut.to), to },
        ].filter((one) => one.to > one.from),
      ),
    [placed(clearLow.x, clearLow.x + clearWidth)],
  );
}

function shared(one: readonly Stretch[], other: readonly Stretch[]): readonly Stretch[] {
  return one.flatMap((a) =>
    other
      .map((b) => ({ from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) }))
      .filter(({ from, to }) => to > from),
  );
}

/** What a strap asks of the weaker of the walls that it comes down beside. */
export interface StrappedWall {
  /** The wall. */
  readonly wall: PanelPart;
  /** On its upper edge, with the load factor. */
  readonly pressed: Pressure;
  /** What the edge stands. */
  readonly allowed: Pressure;
  /** Down the wall. */
  readonly push: Force;
  /** At which its strip buckles, over the case's safety factor. */
  readonly bears: Force;
  /** The worked lines of the edge. */
  readonly crushing: readonly WorkedLine[];
  /** The worked lines of the wall. */
  readonly buckling: readonly WorkedLine[];
}

/**
 * What straps of a run ask of a wall.
 *
 * @throws Refusal where nobody knows how hard the edge of its sheet may be pressed
 */
export function strappedWall(
  wall: PanelPart,
  { strip, middles }: StrapRun,
  { tension, angle: strapAngle, strapWidth = usualStrapWidth }: Lashing,
  input: ReviewInput,
): StrappedWall {
  const { sheet, grain } = wall;
  const edge = strapEdgePressure.worked({ tension, strapAngle, strapWidth, thickness: sheet.thickness });
  const characteristic = edgeCompression(sheet, grain === "up" ? "along" : "across");
  const design = plywoodDesign.worked({
    characteristic,
    duration: "short",
    serviceClass: serviceClassOf(input),
  });
  const { stiffness, because } = panelStiffness(wall, sheetModuli(sheet, input.measurements));
  const { buckles, because: lines } = bucklingOf(wall, stiffness, { middles, strip });
  return {
    wall,
    pressed: Pressure.si(loadFactor * edge.value),
    allowed: design.value,
    push: Force.si(tension * Math.sin(strapAngle)),
    bears: Force.si(buckles / input.case.demands.safetyFactor),
    crushing: [edge, design],
    buckling: [because, ...lines],
  };
}

/** The force of each strap at which a wall buckles: whole, less the share that is cut out of it, or beside an opening. */
function bucklingOf(
  wall: PanelPart,
  stiffness: OrthotropicStiffness,
  { middles, strip }: Pick<StrapRun, "middles" | "strip">,
): { readonly buckles: number; readonly because: readonly WorkedLine[] } {
  const { clearWidth, clearHeight, openings } = wall;
  const free = freeStretches(wall);
  const solid = free.reduce((sum, { from, to }) => sum + to - from, 0) / clearWidth;
  const begins = clearStartOf(wall) - startOf(wall);
  const whole = linePressedBuckling.worked({
    length: clearWidth,
    width: clearHeight,
    stiffness,
    places: middles.map((at) => Length.si(at - begins)),
  });
  const tallest = Math.max(0, ...openings.map(({ height }) => height));
  if (tallest === 0) return { buckles: whole.value, because: [whole] };
  const beside = stripBuckling.worked({
    stiffness: stiffness.alongY,
    width: strip,
    height: Length.si(Math.min(tallest, clearHeight)),
  });
  return solid * whole.value < beside.value
    ? { buckles: solid * whole.value, because: [whole] }
    : { buckles: beside.value, because: [beside] };
}

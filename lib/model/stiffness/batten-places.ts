/** Where a batten has room on a panel, and what it does there. */
import type { PanelPart } from "../../design/index.js";
import { type PanelProblem, type PanelTask, type SheetRegion, withBatten } from "../../fem/index.js";
import { Length } from "../../quantity/index.js";
import { type Box2, boundsOf, clipped, gapOf, rectangle } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { hingedProblem, panelNamed } from "./panel-sag.js";
import { sheetModuli } from "./sheet-moduli.js";

/** A batten cut from the panel's own sheet, laid flat in two layers: 40 mm wide, 20 mm high. */
export const battenSize = { width: 0.04, height: 0.02 } as const;

/** Room between a batten and an opening, m. */
const clearance = 0.003;

/** A batten that has room. */
export interface PlacedBatten {
  /** Its middle, from the lower or left end of the clear span, m. */
  readonly middle: number;
  /** The strip of the panel that it stiffens. */
  readonly strip: SheetRegion;
}

/**
 * Battens from edge to edge that no opening is in the way of.
 *
 * @param drawn the panel as a problem
 * @param along axis of the panel they run along
 * @param middles where they are tried
 */
export function clearBattens(
  panel: PanelPart,
  drawn: PanelProblem,
  along: "x" | "y",
  middles: readonly number[],
  input: ReviewInput,
): PlacedBatten[] {
  return middles
    .map((middle) => ({ middle, strip: battenStrip(panel, drawn, along, middle, input) }))
    .filter(({ strip }) => isClear(strip, drawn));
}

/** Middles of the strips between the sides of openings, where a batten may have room. */
export function stripMiddles({ outline }: PanelProblem, along: "x" | "y"): readonly number[] {
  const across = along === "x" ? outline.width : outline.length;
  const sides = outline.cutouts.flatMap(({ shape }) => {
    const { left, bottom, width, height } = boundsOf(shape);
    return along === "x" ? [bottom, bottom + height] : [left, left + width];
  });
  const lines = [0, ...sides, across].sort((a, b) => a - b);
  return lines.slice(1).map((line, i) => (line + lines[i]!) / 2);
}

/** One place tried for a batten. */
export interface BattenTrial {
  /** Which way it runs over the panel. */
  readonly runs: "across" | "upright";
  /** Its middle from the lower or left end of the clear span. */
  readonly place: Length;
  /** The panel with it, to be solved. */
  readonly task: PanelTask;
}

/** Elements for each try: within a few percent. */
const trialElementTarget = 16;
/** A shorter batten than this share of the panel is not worth its glue. */
const shortest = 1 / 2;

/**
 * Places for a batten, each way, as tries to be solved: the middle of every strip that the sides of openings mark off,
 * from edge to edge where no opening is in the way, or along the longest stretch that openings leave. The panel is
 * hinged on all edges under the side pressure.
 *
 * @param id of the panel, such as "upper.front"
 * @throws Refusal when there is no such panel
 */
export function battenTrials(
  input: ReviewInput,
  id: string,
): { readonly drawn: PanelTask; readonly trials: readonly BattenTrial[] } {
  const panel = panelNamed(input, id);
  const problem = hingedProblem(panel, input);
  const trials = (["x", "y"] as const).flatMap((along) => {
    const run = along === "x" ? problem.outline.length : problem.outline.width;
    return stripMiddles(problem, along).flatMap((middle): BattenTrial[] => {
      const strip = longestStretch(battenStrip(panel, problem, along, middle, input), along, problem);
      const length = along === "x" ? strip.width : strip.height;
      if (length < shortest * run) return [];
      const task = {
        problem: { ...problem, regions: [...problem.regions, strip] },
        elementTarget: trialElementTarget,
      };
      return [{ runs: along === "x" ? "across" : "upright", place: Length.si(middle), task }];
    });
  });
  return { drawn: { problem, elementTarget: trialElementTarget }, trials };
}

/** The strip cut to the longest stretch between openings. */
function longestStretch(strip: SheetRegion, along: "x" | "y", { outline }: PanelProblem): SheetRegion {
  const [low, size] = along === "x" ? (["left", "width"] as const) : (["bottom", "height"] as const);
  const taken = outline.cutouts
    .flatMap(({ shape }) => clipped(shape, grown(strip)))
    .map(boundsOf)
    .map((cut) => [cut[low] - clearance, cut[low] + cut[size] + clearance] as const)
    .sort((a, b) => a[0] - b[0]);
  let from = strip[low];
  const stretches = [...taken, [strip[low] + strip[size], Infinity] as const].map(([until, next]) => {
    const stretch = [from, until] as const;
    from = Math.max(from, next);
    return stretch;
  });
  const [longest] = stretches.sort((a, b) => b[1] - b[0] - (a[1] - a[0]));
  return { ...strip, [low]: longest![0], [size]: longest![1] - longest![0] };
}

function battenStrip(
  panel: PanelPart,
  drawn: PanelProblem,
  along: "x" | "y",
  middle: number,
  input: ReviewInput,
): SheetRegion {
  const { length, width } = drawn.outline;
  const moduli = sheetModuli(panel.sheet, input.measurements);
  const from = middle - battenSize.width / 2;
  const place =
    along === "x"
      ? { left: 0, bottom: from, width: length, height: battenSize.width }
      : { left: from, bottom: 0, width: battenSize.width, height: width };
  const sheet = withBatten(drawn.sheet, {
    along,
    height: battenSize.height,
    modulus: moduli.along.modulus,
    shearModulus: moduli.shear.modulus,
    density: panel.sheet.density,
  });
  return { ...place, sheet };
}

function isClear(strip: SheetRegion, { outline }: PanelProblem): boolean {
  return outline.cutouts.every(({ shape }) => gapOf(shape, rectangle(strip)) > clearance);
}

/** A strip with the room that it needs. */
function grown({ left, bottom, width, height }: Box2): Box2 {
  return {
    left: left - clearance,
    bottom: bottom - clearance,
    width: width + 2 * clearance,
    height: height + 2 * clearance,
  };
}

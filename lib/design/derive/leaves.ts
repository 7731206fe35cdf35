/** The leaves that close an opening: one that fills it, or several that share it and meet. */
import type { Length } from "../../quantity/index.js";
import { boundsOf, offset, rectangle, type Shape } from "../../shape/index.js";
import type { Leaf, Opening, SharedLeaves } from "../case.js";
import type { HungLeaf, PlacedOpening } from "../parts.js";
import type { PanelSide } from "../place.js";
import { panelPoint, sameness } from "./outline.js";

/** A leaf as its opening says it, with its path there. */
export interface PlannedLeaf {
  /** As the case file describes it. */
  readonly leaf: Leaf;
  /** Where the opening says it: "leaf", or "leaves", "each" and its name. */
  readonly path: readonly string[];
}

/** Every leaf of an opening; none where it stays open. */
export function leavesOf({ leaf, leaves }: Opening): readonly PlannedLeaf[] {
  if (leaf) return [{ leaf, path: ["leaf"] }];
  return (leaves?.each ?? []).map((one) => ({ leaf: one, path: ["leaves", "each", one.name] }));
}

/** The sides at which the first and the last of several leaves meet the panel. */
export const endSides = { across: ["left", "right"], up: ["bottom", "top"] } as const;

/** A leaf with its outline on the panel of its face. */
export interface PlacedLeaf {
  /** Id of the panel part it becomes. */
  readonly id: string;
  /** How it hangs. */
  readonly leaf: HungLeaf;
  /** In the axes of the face's panel, m. */
  readonly outline: Shape;
}

/** The leaves of an opening that its gaps leave anything of; the check of openings tells of the others. */
export function placeLeaves(panel: string, opening: Opening, hole: PlacedOpening): readonly PlacedLeaf[] {
  const { leaf, leaves } = opening;
  if (leaves) return shareOut(panel, leaves, hole);
  if (!leaf || leaf.clearance >= Math.min(hole.width, hole.height) / 2 - sameness) return [];
  const outline = offset(hole.outline, -leaf.clearance);
  return [{ id: `${panel}.${hole.name}`, leaf: hung(leaf, hole.name, outline), outline }];
}

function hung(
  { hinge, clearance, stay }: Leaf,
  opening: string,
  outline: Shape,
  meets: HungLeaf["meets"] = {},
  between?: Length,
): HungLeaf {
  const { left, bottom } = boundsOf(outline);
  const low = panelPoint(left, bottom);
  return {
    hinge,
    clearance,
    ...(stay ? { stay } : {}),
    opening,
    low,
    meets,
    ...(between === undefined ? {} : { between }),
  };
}

/** The opening less the gaps between its leaves is shared out; at the panel each keeps its own clearance. */
function shareOut(
  panel: string,
  { runs, gap, each }: SharedLeaves,
  hole: PlacedOpening,
): readonly PlacedLeaf[] {
  const whole = runs === "across" ? hole.width : hole.height;
  const shares = each.reduce((sum, { share }) => sum + share, 0);
  const room = whole - gap * (each.length - 1);
  const [first, last] = endSides[runs];
  const ids = each.map(({ name }) => `${panel}.${hole.name}.${name}`);
  const ends = each.map((_, i) => {
    const before = each.slice(0, i).reduce((sum, { share }) => sum + share, 0);
    return (room * before) / shares + gap * i;
  });
  return each.flatMap((leaf, i): PlacedLeaf[] => {
    const [before, after] = [ids[i - 1], ids[i + 1]];
    const meets: Partial<Record<PanelSide, string>> = {
      ...(before ? { [first]: before } : {}),
      ...(after ? { [last]: after } : {}),
    };
    const { clearance } = leaf;
    const from = (ends[i] ?? 0) + (before ? 0 : clearance);
    const to = (ends[i] ?? 0) + (room * leaf.share) / shares - (after ? 0 : clearance);
    const [length, other] = [to - from, (runs === "across" ? hole.height : hole.width) - 2 * clearance];
    if (length <= sameness || other <= sameness) return [];
    const { x, y } = hole.low;
    const outline =
      runs === "across"
        ? rectangle({ left: x + from, bottom: y + clearance, width: length, height: other })
        : rectangle({ left: x + clearance, bottom: y + from, width: other, height: length });
    return [{ id: ids[i] ?? panel, leaf: hung(leaf, hole.name, outline, meets, gap), outline }];
  });
}

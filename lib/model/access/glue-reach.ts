/** For every glued face: whether it is pressed on the bench or on the box, and how far in from an edge. */
import { type Parts, roomFor, sheetPieces } from "../../design/index.js";
import { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** One glued face. */
export interface GluedFace {
  /** In a builder's words. */
  readonly words: string;
  /** Id of what is glued on: a stiffener or a joint; absent for laminate, which is glued before anything stands. */
  readonly part?: string;
  /** How far a hand with a roller or a clamp reaches in from the nearest edge of what lies there. */
  readonly far: Length;
}

/** Every glued face of a case, those that take the longest reach first. */
export function gluedFaces({ parts }: ReviewInput): readonly GluedFace[] {
  return [...laminates(parts), ...stiffeners(parts), ...joints(parts)].sort((a, b) => b.far - a.far);
}

/** Somebody goes round the bench, so that nothing is further than half the shorter side. */
function laminates({ facings }: Parts): readonly GluedFace[] {
  return facings.map(({ panel, side, width, height }) => ({
    words: `the ${side} laminate of ${panel}`,
    far: Length.si(Math.min(width, height) / 2),
  }));
}

function stiffeners(parts: Parts): readonly GluedFace[] {
  const sizes = new Map(sheetPieces(parts).map((piece) => [piece.id, piece]));
  return parts.stiffeners.flatMap(({ id, panel, adhesive, zones }): readonly GluedFace[] => {
    const on = sizes.get(panel);
    if (!adhesive || !on) return [];
    const far = zones.map(({ left, bottom, width, height }) => {
      const [x, y] = [left + width / 2, bottom + height / 2];
      return Math.min(x, on.width - x, y, on.height - y);
    });
    return [{ words: `${id} on ${panel}`, part: id, far: Length.si(Math.max(0, ...far)) }];
  });
}

/** The edges of a box are clamped from outside. */
function joints(parts: Parts): readonly GluedFace[] {
  return parts.joints.flatMap(({ id, adhesive }) =>
    adhesive ? [{ words: `the joint ${id}`, part: id, far: Length.si(0) }] : [],
  );
}

/** How far a hand with a roller reaches over a bench. */
export function rollerReach({ measurements }: ReviewInput): Length {
  return roomFor("arm", measurements.tools).length;
}

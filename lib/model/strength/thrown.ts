/** What may come loose inside and be thrown at a panel when the van brakes, and how hard it strikes. */
import { type Content, type ContentPart, faceAxes, type PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { rideShare, type ThrownForce, thrownForce } from "../../moving/index.js";
import { Length, newton, SpringRate, standardGravity } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { holdOf } from "./panel-load.js";
import { type PressedPanel, type PressedPatch, pressedWhereWeakest } from "./pressed-place.js";

/** Something that may fly at a panel. */
export interface ThrownContent {
  /** What it is. */
  readonly part: ContentPart;
  /** Free way before it strikes. */
  readonly way: Length;
  /** Whether friction may hold it, for nobody measured. */
  readonly mayStay: boolean;
}

/** How hard a panel is struck. */
export interface ThrownStrike {
  /** Moments for a force of 1 N on the same place. */
  readonly unit: PressedPanel;
  /** The force and how far the panel gives. */
  readonly struck: WorkedLine & { readonly value: ThrownForce };
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/**
 * What strikes an upright panel hardest, by its mass and its free way: of what is loose, and of what friction may hold.
 *
 * @returns nothing where all is held, or for a top or a floor
 */
export function thrownAt(panel: PanelPart, { parts }: ReviewInput): readonly ThrownContent[] {
  const { face, section } = panel;
  if (face === undefined) return [];
  const { normal: axis, end } = faceAxes[face];
  if (axis === "z") return [];
  const low = end === "low";
  const across = axis === "x" ? "y" : "x";
  const inner = panel.box.low[axis] + (low ? panel.box.size[axis] : 0);
  const thrown = parts.contents
    .filter(({ content }) => content.section === section && !isHeld(content))
    .filter(({ box }) => overlap(box, panel.box, across) && overlap(box, panel.box, "z"))
    .map((part): ThrownContent => {
      const { low: from, size } = part.box;
      const way = low ? from[axis] - inner : inner - from[axis] - size[axis];
      return { part, way: Length.si(Math.max(0, way)), mayStay: mayStay(part.content) };
    });
  const energy = ({ part, way }: ThrownContent): number => part.content.mass * (way + hair);
  const hardest = thrown.sort((a, b) => energy(b) - energy(a));
  return [false, true].flatMap((may) => hardest.find((one) => one.mayStay === may) ?? []);
}

/** A thing that touches the panel already still strikes by its mass. */
const hair = 0.001;

/** Whether a thing is held by more than its own weight, or is known to stay when the van brakes. */
function isHeld({ held, mass, needs: { slidesAt } }: Content): boolean {
  switch (held.by) {
    case "floor":
    case "shelf":
      return slidesAt !== undefined && slidesAt >= braking * mass * standardGravity;
    case "strap":
      return held.rated !== undefined;
    case "cradle":
      return held.lid === true;
    default:
      return true;
  }
}

/** Whether nobody knows if a thing slides: how hard it must be pulled, or what its strap stands, is not said. */
function mayStay({ held, needs: { slidesAt } }: Content): boolean {
  if (held.by === "strap") return held.rated === undefined;
  return slidesAt === undefined && (held.by === "floor" || held.by === "shelf");
}

/** What braking pushes with, over the weight. */
const braking = rideShare({ way: "forward", movement: "sliding" });

function overlap(a: ContentPart["box"], b: ContentPart["box"], axis: "x" | "y" | "z"): boolean {
  return a.low[axis] < b.low[axis] + b.size[axis] && b.low[axis] < a.low[axis] + a.size[axis];
}

/** The side of a thing that faces a panel. */
function strikingSide({ box: { size } }: ContentPart, { face }: PanelPart): Omit<PressedPatch, "force"> {
  const isSide = face === "left" || face === "right";
  return { length: isSide ? size.y : size.x, width: size.z };
}

/**
 * Everything that a side of a case is pressed with at one place: by somebody who leans on it, and by what is thrown at
 * it. Asked for together, so that the panel is factored once.
 */
export function pressedSide(
  panel: PanelPart,
  leaning: PressedPatch,
  input: ReviewInput,
): { readonly leant: PressedPanel; readonly strikes: readonly ThrownStrike[] } {
  const leant = pressedWhereWeakest(panel, holdOf(panel, input), leaning, input);
  return { leant, strikes: thrownAt(panel, input).map((thrown) => strikeOf(panel, thrown, input)) };
}

/** How hard a thing that braking throws strikes a panel where it gives most: the panel is the spring that stops it. */
export function strikeOf(panel: PanelPart, { part, way }: ThrownContent, input: ReviewInput): ThrownStrike {
  const hold = holdOf(panel, input);
  const unit = pressedWhereWeakest(panel, hold, { force: newton(1), ...strikingSide(part, panel) }, input);
  const share = rideShare.worked({ way: "forward", movement: "sliding" });
  const struck = thrownForce.worked({
    mass: part.content.mass,
    share: share.value,
    way,
    stiffness: SpringRate.si(1 / unit.moments.deflection),
  });
  return { unit, struck, because: [unit.because, share, struck] };
}

/** What the road asks of the straps over a section or over the stack, three ways, against sliding and tipping. */
import type { Lashing } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  armTowards,
  headings,
  type RideWay,
  rideWays,
  strapCount,
  type TipWay,
  tieDownTension,
  tieDownTilt,
  tiltedFriction,
  tippingBraking,
} from "../../moving/index.js";
import { Force, Length, type Ratio, ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { castersOf, type Footprint, ridesOnBlocks, ridingFootprint, sectionFootprint } from "./footprint.js";

/** What one way of the road asks of the straps over a section. */
export interface LashingWay {
  /** Braking, starting or turning. */
  readonly way: RideWay;
  /** Tension against sliding; absent where it stands on wheels of which none is locked. */
  readonly slide?: ReturnType<typeof tieDownTension.worked>;
  /** Tension against tipping over. */
  readonly tilt: ReturnType<typeof tieDownTilt.worked>;
  /** The larger of the two; absent where no tension keeps it from rolling. */
  readonly tension?: Force;
  /** How many straps give it, one at least. */
  readonly straps?: ReturnType<typeof strapCount.worked>;
  /** The push at which it tips with no strap at all. */
  readonly loose: ReturnType<typeof tippingBraking.worked>;
}

/** What keeps a case from sliding: its feet, or the wheels that are locked. */
export interface FloorGrip {
  /** Friction times the share of the weight that does not roll. */
  readonly friction: Ratio;
  /** How it was found, where a tilt test was reduced. */
  readonly because: readonly WorkedLine[];
  /** Wheels it stands on; 0 on its underside. */
  readonly wheels: number;
  /** How many of them are locked. */
  readonly locked: number;
}

/** Forward, rearward and sideways, each against sliding and tipping, of one section by itself. */
export function lashingWays(input: ReviewInput, section: string, lashing: Lashing): readonly LashingWay[] {
  return waysOf(
    sectionFootprint(input, section),
    boxOf(input, [section]),
    lashing,
    floorGrip(input, lashing, section),
  );
}

/** The same of all sections stacked. */
export function stackLashingWays(input: ReviewInput, lashing: Lashing): readonly LashingWay[] {
  const names = input.parts.sections.map(({ name }) => name);
  return waysOf(ridingFootprint(input), boxOf(input, names), lashing, floorGrip(input, lashing));
}

/** Friction under a section, or under the stack: no wheel grips that rolls. */
export function floorGrip(
  input: ReviewInput,
  { friction, frictionFrom }: Lashing,
  section?: string,
): FloorGrip {
  const tilted = frictionFrom === "tilt test" ? [tiltedFriction.worked({ tangent: friction })] : [];
  const found = tilted[0]?.value ?? friction;
  const casters = ridesOnBlocks(input) ? [] : castersOf(input);
  const wheels = casters.filter((one) => section === undefined || one.section === section).length;
  const locked = Math.min(wheels, input.case.journey.brakes ?? 0);
  const share = wheels === 0 ? 1 : locked / wheels;
  return { friction: ratio(found * share), because: tilted, wheels, locked };
}

interface Outline {
  /** The middle of it along each axis, in metres. */
  readonly middle: Readonly<Record<"x" | "y", number>>;
}

/**
 * The box around some sections, from above.
 *
 * @throws Refusal for a section that is not there
 */
function boxOf({ parts }: ReviewInput, names: readonly string[]): Outline {
  const boxes = parts.sections.filter(({ name }) => names.includes(name)).map(({ outside }) => outside);
  if (boxes.length === 0) throw new Refusal(`lashing: no section ${names.join(", ")}`);
  const middle = (axis: "x" | "y"): number =>
    (Math.min(...boxes.map(({ low }) => low[axis])) +
      Math.max(...boxes.map(({ low, size }) => low[axis] + size[axis]))) /
    2;
  return { middle: { x: middle("x"), y: middle("y") } };
}

function waysOf(
  standing: Footprint,
  box: Outline,
  lashing: Lashing,
  { friction }: FloorGrip,
): readonly LashingWay[] {
  const { mass } = standing.balance.value;
  const strapAngle = lashing.angle;
  return rideWays.map((way): LashingWay => {
    const stance = tiltOf(standing, box, way);
    const tilt = tieDownTilt.worked({ mass, ...stance, strapAngle, way });
    const loose = tippingBraking.worked({ halfBase: stance.toEdge, height: stance.height });
    if (!(friction > 0)) return { way, tilt, loose };
    const slide = tieDownTension.worked({ mass, friction, strapAngle, way });
    const tension = Force.si(Math.max(slide.value, tilt.value));
    const least = Force.si(Math.max(tension, lashing.tension));
    return {
      way,
      slide,
      tilt,
      tension,
      loose,
      straps: strapCount.worked({ tension: least, each: lashing.tension }),
    };
  });
}

/** Driven with its front to the front, it falls that way when braked. */
const fallsTo: Readonly<Record<RideWay, readonly TipWay[]>> = {
  forward: ["front"],
  rearward: ["back"],
  sideways: ["left", "right"],
};

/**
 * The least way from the centre of gravity to the line it would tip over, and how far a strap over the middle of the
 * case reaches beyond that line: twice that is the width that counts, since one leg of a strap hangs outside the wheels.
 *
 * @throws Refusal where a strap over the middle would pull it over, or it falls as it stands
 */
function tiltOf({ edges, balance, height }: Footprint, { middle }: Outline, way: RideWay) {
  const sides = fallsTo[way].map((side) => ({ side, toEdge: armTowards(edges, headings[side]) }));
  const { side, toEdge } = sides.reduce((least, one) => (one.toEdge < least.toEdge ? one : least));
  const { x, y } = balance.value;
  const [across, deep] = [Math.cos(headings[side]), Math.sin(headings[side])];
  const beyond = toEdge - ((middle.x - x) * across + (middle.y - y) * deep);
  if (!(beyond > 0)) throw new Refusal(`lashing: a strap over its middle would tip it to the ${side}`);
  return { height, toEdge, width: Length.si(2 * beyond) };
}

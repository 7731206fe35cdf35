/** A section in the hands of those who lift and carry it, with what each end takes. */
import {
  type BalanceLine,
  endShares,
  handleLine,
  type ReviewInput,
  sectionBalance,
} from "../../model/index.js";
import { pairShares } from "../../moving/index.js";
import { type Angle, Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { between, type Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import { type CasePlane, casePlane, type Pose, posed, raised, turnedAbout } from "./case-plane.js";
import type { Figure, FigureArrow } from "./figure.js";
import { groundUnder, seenFrom, weightAt } from "./standing-figures.js";

/** A section with its handles and its balance, on the plane of its two ends. */
interface Held {
  /** The section. */
  readonly plane: CasePlane;
  /** Its mass and centre. */
  readonly balance: BalanceLine;
  /** Its centre of gravity. */
  readonly centre: Point2;
  /** Its handles: left or front, right or back. */
  readonly ends: readonly [Point2, Point2];
}

function heldSection(input: ReviewInput, section: string): Held {
  const line = handleLine(input, section);
  const plane = casePlane(input, line.axis, [section]);
  const balance = sectionBalance(input, section);
  const { mass: _, ...place } = balance.value;
  const height = plane.on({ ...place, z: line.height }).y;
  return {
    plane,
    balance,
    centre: plane.on(place),
    ends: [
      { x: line.from, y: height },
      { x: line.from + line.span, y: height },
    ],
  };
}

/** Up. */
const up = Math.PI / 2;

/** A share of the height of a section that it is lifted off the ground in a picture. */
const off = 0.2;

/** A section lifted level at its two ends. */
export function liftedFigure(input: ReviewInput, section: string): Figure {
  const { plane, balance, centre, ends } = heldSection(input, section);
  const { mass } = balance.value;
  const shares = pairShares(endShares(input, section, balance, mass));
  const style = styleOf(input.case);
  const pose = raised(off * plane.box.height);
  const arrows = upArrows(ends.map(pose), [shares.first, shares.second], input);
  const { arrow, place } = weightAt(pose(centre), Mass.show(mass, style));
  const [left, right] = ends.map(pose);
  return {
    title: `Lifting ${section}`,
    description: `Seen from the ${seenFrom(plane)}. Its weight goes down through its centre of gravity, and each end takes its share of it.`,
    shapes: posed(plane.shapes, pose),
    lines: [groundUnder(plane)],
    arrows: [...arrows, arrow],
    places: [place],
    sizes: [
      {
        from: { x: left!.x, y: 0 },
        to: { x: pose(centre).x, y: 0 },
        off: -1.8,
        words: Length.show(Length.si(Math.abs(centre.x - left!.x)), style),
      },
      {
        from: { x: left!.x, y: pose({ x: 0, y: plane.box.bottom + plane.box.height }).y },
        to: { x: right!.x, y: pose({ x: 0, y: plane.box.bottom + plane.box.height }).y },
        off: 2.4,
        words: Length.show(Length.si(right!.x - left!.x), style),
      },
    ],
  };
}

function upArrows(
  ends: readonly Point2[],
  shares: readonly Mass[],
  input: ReviewInput,
): readonly FigureArrow[] {
  const most = Math.max(...shares);
  return ends.map((at, i) => ({
    at,
    way: up,
    acts: "pulling",
    share: (shares[i] ?? 0) / most,
    words: Mass.show(shares[i] ?? Mass.si(0), styleOf(input.case)),
  }));
}

/** Run of one step, m, for the picture: the usual step of a stair, common practice, no source. */
const stepRun = 0.28;

/**
 * A section carried up stairs, the lower end at the left.
 *
 * @throws Refusal where nobody knows how steep they are
 */
export function stairsFigure(input: ReviewInput, section: string, incline: Angle | undefined): Figure {
  if (incline === undefined) throw new Refusal("picture of the stairs: their slope is not known");
  const { plane, balance, centre, ends } = heldSection(input, section);
  const { mass } = balance.value;
  const shares = pairShares({ ...endShares(input, section, balance, mass), incline });
  const pose = onSlope(plane, incline, 0.3 * plane.box.height);
  const { arrow, place } = weightAt(pose(centre), Mass.show(mass, styleOf(input.case)));
  return {
    title: `Carrying ${section} on the stairs`,
    description: `Seen from the ${seenFrom(plane)}, on stairs as steep as the journey says. The ${shares.first >= shares.second ? "lower" : "upper"} end takes more.`,
    shapes: posed(plane.shapes, pose),
    lines: [{ what: "ground", points: stairsUnder(plane, incline) }],
    arrows: [...upArrows(ends.map(pose), [shares.first, shares.second], input), arrow],
    places: [place],
  };
}

/** Turned about the lower left corner of its box and raised. */
function onSlope({ box: { left } }: CasePlane, incline: number, by: number): Pose {
  const turned = turnedAbout({ x: left, y: 0 }, incline);
  const higher = raised(by);
  return (at) => higher(turned(at));
}

/** The steps under a section, from its lower end to its upper. */
function stairsUnder({ box: { left, width } }: CasePlane, incline: number): readonly Point2[] {
  const rise = stepRun * Math.tan(incline);
  const count = Math.ceil((width * Math.cos(incline)) / stepRun) + 1;
  const first = { x: left - stepRun, y: -rise };
  return Array.from({ length: count }, (_, i) => {
    const at = { x: first.x + i * stepRun, y: first.y + i * rise };
    return [at, { x: at.x + stepRun, y: at.y }];
  }).flat();
}

/** A section hanging from its handles: whether its centre of gravity lies below them. */
export function hangingFigure(input: ReviewInput, section: string): Figure {
  const { plane, balance, centre, ends } = heldSection(input, section);
  const style = styleOf(input.case);
  const { arrow, place } = weightAt(centre, Mass.show(balance.value.mass, style));
  const right = plane.box.left + plane.box.width;
  const size = (y: number, far: number) => ({
    from: { x: right, y: plane.box.bottom },
    to: { x: right, y },
    off: -far,
    words: Length.show(Length.si(y - plane.box.bottom), style),
  });
  const middle = between(ends[0], ends[1], 0.5);
  return {
    title: `Hanging from its handles: ${section}`,
    description: `Seen from the ${seenFrom(plane)}. It hangs steadily while its centre of gravity is lower than the line of its handles.`,
    shapes: plane.shapes,
    lines: [{ what: "reach", points: [ends[0], ends[1]] }],
    arrows: [arrow, ...ends.map((at): FigureArrow => ({ at, way: up, acts: "pulling", share: 0.6 }))],
    places: [place],
    sizes: [size(centre.y, 3), size(middle.y, 5.5)],
  };
}

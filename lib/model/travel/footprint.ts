/** Where a case touches the floor, and how it balances over it with its casters swivelled the worst way. */
import type { HardwarePart } from "../../design/index.js";
import {
  armTowards,
  edgeTowards,
  type Foot,
  headings,
  type StandingCase,
  swivelBase,
  type TippingEdge,
  type TipWay,
  tippingEdges,
} from "../../moving/index.js";
import { Length, Ratio } from "../../quantity/index.js";
import {
  type BalanceLine,
  lowestSection,
  type PlacedAt,
  sectionBalance,
  stackedBalance,
  standingHeight,
} from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";

/** A loaded case or section on its feet; the sides of its base are those of its swivel axes. */
export interface Footprint extends StandingCase {
  /** Mass and centre of gravity, worked out. */
  readonly balance: BalanceLine;
  /** The lines it can tip over, the nearest first, each caster at its worst swivel. */
  readonly edges: readonly TippingEdge[];
  /** How the nearest was found where casters swivel. */
  readonly swivel: readonly ReturnType<typeof swivelBase.worked>[];
  /** What was taken of casters that nobody measured, as sentences. */
  readonly assumed: readonly string[];
}

/**
 * The stacked, loaded case on its feet.
 *
 * @param placed where each thing is, its drawer pulled out or its door open; in its place unless said
 */
export function footprint(input: ReviewInput, placed?: PlacedAt): Footprint {
  return standingOn(input, stackedBalance(input, placed), lowestSection(input).name);
}

/** One loaded section as it rides: on blocks, on its casters, or on its underside. */
export function sectionFootprint(input: ReviewInput, section: string): Footprint {
  return standingOn(input, sectionBalance(input, section), section, ridesOnBlocks(input));
}

/** The stacked, loaded case as it rides. */
export function ridingFootprint(input: ReviewInput): Footprint {
  return standingOn(input, stackedBalance(input), lowestSection(input).name, ridesOnBlocks(input));
}

/** Whether blocks take it off its wheels on the road. */
export function ridesOnBlocks({ case: { journey } }: ReviewInput): boolean {
  return journey.lashing?.standsOn === "blocks";
}

/** Whatever balances so, on the feet of one section. */
function standingOn(input: ReviewInput, balance: BalanceLine, section: string, onBlocks = false): Footprint {
  const supports = supportsOf(input).filter((one) => one.section === section);
  const casters = supports.filter(({ item }) => item.duty === "roll");
  const { low, feet } = feetOf(input, section, onBlocks ? [] : supports);
  const edges = tippingEdges(feet, balance.value);
  const [left, right] = [Math.min(...feet.map(({ x }) => x)), Math.max(...feet.map(({ x }) => x))];
  const [front, back] = [Math.min(...feet.map(({ y }) => y)), Math.max(...feet.map(({ y }) => y))];
  const [first, ...others] = new Set(feet.map(({ offset }) => offset));
  const nearest = edges[0];
  const alike = first !== undefined && first > 0 && others.length === 0 && nearest !== undefined;
  const lift = supports.length > 0 ? standingHeight(input) : 0;
  return {
    balance,
    edges,
    baseWidth: Length.si(right - left),
    baseDepth: Length.si(back - front),
    fromLeft: Length.si(balance.value.x - left),
    fromFront: Length.si(balance.value.y - front),
    height: Length.si(balance.value.z - low + lift),
    swivel: alike ? [swivelBase.worked({ toAxes: Length.si(nearest.arm + first), offset: first })] : [],
    assumed: !onBlocks && casters.some(({ stock }) => stock.offset === undefined) ? [offsetAssumed] : [],
  };
}

const offsetAssumed =
  'The offset of the casters is not in hardware.csv, so three tenths of their height are taken, as of common swivel casters. Measure it level from the swivel axis to the axle. Write it into the column "offset", and 0 where they do not swivel.';

/** Common practice, no source: the offset of a swivel caster over its height. */
const usualOffset = 0.3;

/** Casters, feet and skids that reach the floor, or the corners of a section where it has none. */
function feetOf(
  input: ReviewInput,
  section: string,
  supports: readonly HardwarePart[],
): { readonly low: number; readonly feet: readonly Foot[] } {
  const part = input.parts.sections.find(({ name }) => name === section) ?? lowestSection(input);
  const { low, size } = part.outside;
  if (supports.length > 0) return { low: low.z, feet: supports.flatMap(touchesOf) };
  const [right, back, offset] = [Length.si(low.x + size.x), Length.si(low.y + size.y), Length.si(0)];
  const corners = [low.x, right].flatMap((x) => [low.y, back].map((y) => ({ x, y, offset })));
  return { low: low.z, feet: corners };
}

/** Where a caster or a foot touches the floor: a caster at its wheel, a foot or a skid at its corners. */
export function touchesOf({
  item,
  centre: { x, y },
  stock: { offset, standing },
  size,
}: HardwarePart): readonly Foot[] {
  if (item.duty === "roll" || !size) return [{ x, y, offset: offset ?? Length.si(usualOffset * standing) }];
  return [-0.5, 0.5].flatMap((across) =>
    [-0.5, 0.5].map((along) => ({
      x: Length.si(x + across * size.width),
      y: Length.si(y + along * size.height),
      offset: Length.si(0),
    })),
  );
}

/** What holds the case off the floor by as much as anything else does, m. */
const level = 0.001;

/** The casters, feet and skids that reach the floor: those that stand highest. */
export function supportsOf(input: ReviewInput): readonly HardwarePart[] {
  const under = input.parts.hardware.filter(({ item: { duty } }) => duty === "roll" || duty === "stand");
  const highest = Math.max(...under.map(({ stock }) => stock.standing));
  return under.filter(({ stock }) => stock.standing >= highest - level);
}

/** The feet and skids that it stands on. */
export function feetUnder(input: ReviewInput): readonly HardwarePart[] {
  return supportsOf(input).filter(({ item }) => item.duty === "stand");
}

/** How well the feet grip the floor: the least of them; undefined where nobody says, or there are none. */
export function footGrip(input: ReviewInput): Ratio | undefined {
  const grips = feetUnder(input).map(({ stock }) => stock.grip);
  const known = grips.filter((grip) => grip !== undefined);
  return known.length > 0 && known.length === grips.length ? Ratio.si(Math.min(...known)) : undefined;
}

/** The casters it stands on. */
export function castersOf({ parts }: ReviewInput): readonly HardwarePart[] {
  return parts.hardware.filter(({ item }) => item.duty === "roll");
}

/** From the centre of gravity to the nearest line it tips over. */
export function leastTippingArm({ edges: [nearest] }: Footprint): Length {
  return nearest?.arm ?? Length.si(0);
}

/** From the centre of gravity straight to the edge of the base on one side. */
export function tippingArm({ edges }: Footprint, side: TipWay): Length {
  return armTowards(edges, headings[side]);
}

/** The line that a level push to one side tips the case over; undefined where none lies there. */
export function edgeUnderPush({ edges }: Footprint, side: TipWay): TippingEdge | undefined {
  return edgeTowards(edges, headings[side]);
}

/** How far one side of a section stands out past the edge of the base below it; less than nothing where it stands back. */
export function overhangOf(input: ReviewInput, standing: Footprint, side: TipWay, section: string): Length {
  const own = input.parts.sections.find(({ name }) => name === section) ?? lowestSection(input);
  const { low, size } = own.outside;
  const { x, y } = standing.balance.value;
  const toFace = { left: x - low.x, right: low.x + size.x - x, front: y - low.y, back: low.y + size.y - y };
  return Length.si(toFace[side] - tippingArm(standing, side));
}

/** The upper edge of the stack above the underside of its lowest section. */
export function stackTop({ parts }: ReviewInput): Length {
  return Length.si(Math.max(...parts.sections.map(({ outside }) => outside.low.z + outside.size.z)));
}

/** Every way one rivet or bolt of the case can give, and what a group of them bears off its middle. */
import { type Fastening, type SheetStock, washerFor } from "../../design/index.js";
import {
  edgeTearOut,
  groupCentre,
  groupShear,
  headPullThrough,
  rivetLength,
  slipStiffness,
  specificGravity,
  steelBoltSlip,
} from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { species } from "../../material/index.js";
import { Force, Length, newton, Ratio, type SpringRate } from "../../quantity/index.js";
import { densityOf } from "../mass/masses.js";
import type { ReviewInput } from "../review-input.js";
import { fastenerStrength, indoorMoisture, shearLine, sheetUnder } from "./fastener-strength.js";
import { gripOf, holeFor } from "./joint-stack.js";
import { isKnown } from "./known-strength.js";

/** One way to give, with the load it takes. */
export interface WayToGive {
  /** What happens, in words. */
  readonly way: string;
  /** On one fastener. */
  readonly load: Force;
  /** Where the figure comes from. */
  readonly known: "own tests" | "its maker" | "formula" | "code, with its margin";
}

/** What one fastener of a group comes to. */
export interface FastenerWays {
  /** The weakest first. */
  readonly ways: readonly WayToGive[];
  /** Force over slip in use. */
  readonly slip: SpringRate;
  /** Length by the rule of thumb, for want of a maker's range. */
  readonly length: Length;
  /** The worked lines behind all of it. */
  readonly because: readonly WorkedLine[];
}

/** One rivet or bolt of a group, every way it can give, the weakest first. */
export function fastenerWays(fastening: Fastening, input: ReviewInput): FastenerWays {
  const sheet = sheetUnder(fastening, input);
  const { fastener } = fastening;
  const density = densityOf(input, sheet);
  const slip = slipStiffness.worked({
    density,
    diameter: fastener.diameter,
    shank: "screw, bolt or drilled",
  });
  const length = rivetLength.worked({ grip: gripOf(fastening), diameter: fastener.diameter });
  const found = [
    ...sheared(fastening, sheet, input),
    ...tornOut(fastening, sheet),
    ...pulled(fastening, sheet, input),
  ];
  return {
    ways: [...found.map(({ way }) => way), ...ownTests(fastening, input)].sort((a, b) => a.load - b.load),
    slip: slip.value,
    length: length.value,
    because: [...new Set(found.flatMap(({ line }) => line ?? [])), slip, length],
  };
}

/** A way with the line behind it; a maker's word has none. */
interface FoundWay {
  /** The way with its load. */
  readonly way: WayToGive;
  /** The worked line behind it. */
  readonly line?: WorkedLine;
}

function sheared(fastening: Fastening, sheet: SheetStock, input: ReviewInput): FoundWay[] {
  const line = shearLine(fastening, sheet, input);
  if (!line) return [];
  const { rivet, ply, metal: flange } = line.value;
  return [
    { way: { way: "sheared off", load: rivet, known: "its maker" }, line },
    { way: { way: "crushes the side of its hole in the ply", load: ply, known: "formula" }, line },
    { way: { way: "crushes the side of its hole in the metal", load: flange, known: "formula" }, line },
  ];
}

function tornOut({ fastener, edgeDistance }: Fastening, sheet: SheetStock): FoundWay[] {
  const hole = holeFor(fastener);
  if (edgeDistance === undefined || hole === undefined) return [];
  const line = edgeTearOut.worked({
    edgeDistance,
    hole,
    thickness: sheet.thickness,
    shearStrength: species[sheet.species].shearStrength.value,
  });
  return [{ way: { way: "tears out to the nearest edge", load: line.value, known: "formula" }, line }];
}

function pulled({ fastener }: Fastening, sheet: SheetStock, input: ReviewInput): FoundWay[] {
  const gravity = specificGravity({ density: densityOf(input, sheet), moisture: indoorMoisture });
  const through = (headDiameter: Length) =>
    headPullThrough.worked({ specificGravity: gravity, headDiameter, thickness: sheet.thickness });
  const by = (diameter: Length, what: string): FoundWay => {
    const line = through(diameter);
    return {
      way: { way: `pulled through, ${what}`, load: line.value, known: "code, with its margin" },
      line,
    };
  };
  const washer = washerFor(fastener);
  return [
    ...(washer ? [by(washer.diameter, "washer at the back")] : []),
    by(fastener.headDiameter, "by its head"),
    ...(fastener.tension === undefined
      ? []
      : [{ way: { way: "pulled in two", load: fastener.tension, known: "its maker" } as const }]),
  ];
}

/** What 95 of 100 held. */
function ownTests(fastening: Fastening, input: ReviewInput): WayToGive[] {
  return (["shear", "pull"] as const).flatMap((direction): WayToGive[] => {
    const strength = fastenerStrength(fastening, direction, input);
    return isKnown(strength) && strength.from === "tests"
      ? [{ way: `${direction}, 95 of 100 hold`, load: strength.strength, known: "own tests" }]
      : [];
  });
}

/** A group of a handle with the hand off its middle. */
export interface OffMiddle {
  /** How far the hand is off the middle of the group. */
  readonly off: Length;
  /** Load that the group holds, as a share of the load through its middle: elastic, and turned about a point. */
  readonly elastic: Ratio;
  /** The same, turned about a point with every fastener used up. */
  readonly ultimate: Ratio;
}

/** What a group still holds when its load is off the middle: no fastener beyond its strength, or all of them used up. */
export function offMiddle({ at }: Fastening, offs: readonly Length[]): readonly OffMiddle[] {
  const positions = at;
  const [each, load] = [newton(1), { x: newton(0), y: newton(1) }];
  const middle = { x: mean(positions.map(({ x }) => x)), y: mean(positions.map(({ y }) => y)) };
  return offs.map((off) => {
    const on = { x: Length.si(middle.x + off), y: Length.si(middle.y) };
    const { largest } = groupShear({ positions, load, at: on });
    const whole =
      off === 0
        ? Force.si(positions.length)
        : groupCentre({ positions, direction: load, at: on, each, law: steelBoltSlip }).strength;
    const share = (held: number): Ratio => Ratio.si(held / positions.length);
    return { off, elastic: share(1 / largest), ultimate: share(whole) };
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}

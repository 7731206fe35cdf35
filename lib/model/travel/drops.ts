/** From how high a thing falls, by who handles it, and how hard its foam stops it: in its case or by itself. */
import type { Content, CushionPoint, FoamBed } from "../../design/index.js";
import {
  dropHeight,
  type Handling,
  heaviestParcel,
  readCushionCurve,
  rotationalDrop,
  staticStress,
} from "../../moving/index.js";
import { Area, Length, type Mass, pound, type Ratio } from "../../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../../refusal.js";
import { sectionBalance } from "../mass/balance.js";
import type { ReviewInput } from "../review-input.js";

/** By hand up to 200 lb; heavier, one edge is let fall. */
export const heaviestByHand: Mass = pound(200);

/** A drop with its worked line. */
export type DropLine = ReturnType<typeof dropHeight.worked> | ReturnType<typeof rotationalDrop.worked>;

/**
 * The drop that a mass is likely to have.
 *
 * @throws Refusal for a parcel heavier than carriers take
 */
export function dropOf(mass: Mass, handling: Handling): DropLine {
  return handling === "parcel" || mass <= heaviestByHand
    ? dropHeight.worked({ mass, handling })
    : rotationalDrop.worked({ mass, handling });
}

/** The ways a mass can be handled at all. */
export function handlingsOf(mass: Mass): readonly Handling[] {
  const own: readonly Handling[] = ["careful", "usual", "rough"];
  return mass <= heaviestParcel ? [...own, "parcel"] : own;
}

/** All that was measured on a foam of one thickness. */
export function cushionPoints(
  { measurements }: ReviewInput,
  { kind, thickness }: Pick<FoamBed, "kind" | "thickness">,
): readonly CushionPoint[] {
  return measurements.cushions.filter(
    (point) => point.foam === kind && Math.abs(point.thickness - thickness) < 1e-6,
  );
}

/** What is missing where a foam of one thickness has no curve, or none of a drop high enough. */
export function missingCurve(
  { measurements, case: { units } }: ReviewInput,
  { kind, thickness }: Pick<FoamBed, "kind" | "thickness">,
  drop?: Length,
): MissingMeasurement {
  const show = (length: Length): string => Length.show(length, { system: units, digits: 3 });
  const others = measurements.cushions.filter((point) => point.foam === kind);
  const known = [...new Set(others.map((point) => show(point.thickness)))].join(", ");
  const high = drop === undefined ? "" : `, for a drop of ${show(drop)} or more`;
  const thick = known === "" ? "" : `, ${show(thickness)} thick`;
  const there = known === "" ? "" : `; cushion-curves.csv has it ${known} thick`;
  return {
    measure: `a cushion curve of ${kind}${thick}${high}`,
    how: `ask its maker for the cushion curve and put it into cushion-curves.csv${there}`,
  };
}

/**
 * The points of a foam's curve for the least drop that is at least as high.
 *
 * @throws Refusal where no curve is of a drop as high
 */
export function curveFor(input: ReviewInput, foam: FoamBed, drop: Length): readonly CushionPoint[] {
  const mine = cushionPoints(input, foam);
  const drops = mine.map((point) => point.drop).filter((one) => one >= drop - 1e-9);
  const least = Math.min(...drops);
  const points = mine.filter((point) => point.drop === least);
  if (points.length > 1) return points;
  const missing = missingCurve(input, foam, drop);
  throw new Refusal(`cushion-curves.csv has no ${missing.measure.slice(2)}`, missing);
}

/** A fragile content that is dropped with its section and lands on its foam. */
export interface CushionedDrop {
  /** The thing that falls. */
  readonly content: Content;
  /** Deceleration it survives, in gravities. */
  readonly fragility: Ratio;
  /** The foam under it. */
  readonly foam: FoamBed;
  /** How the journey handles it. */
  readonly handling: Handling;
  /** How high it falls from, worked out. */
  readonly drop: DropLine;
  /** The points of its foam's curve for that drop. */
  readonly curve: readonly CushionPoint[];
  /** Its weight over the area of its pad, worked out. */
  readonly stress: ReturnType<typeof staticStress.worked>;
  /** Landed flat, by the curve. */
  readonly landed: ReturnType<typeof readCushionCurve.worked>;
}

/**
 * A content dropped with its section on its foam.
 *
 * @throws Refusal that names what is missing to know it
 */
export function cushionedDrop(input: ReviewInput, content: Content): CushionedDrop {
  const { handling } = input.case.journey;
  const { fragility, foam } = content.needs;
  if (fragility === undefined) throw needed(content, "fragility");
  if (handling === undefined) throw needed(content, "handling");
  if (foam === undefined) throw needed(content, "foam");
  const drop = dropOf(sectionBalance(input, content.section).value.mass, handling);
  const curve = curveFor(input, foam, drop.value);
  const area = Area.si(foam.padWidth * foam.padDepth);
  const stress = staticStress.worked({ mass: content.mass, area });
  const landed = readCushionCurve.worked({ points: curve, stress: stress.value });
  return { content, fragility, foam, handling, drop, curve, stress, landed };
}

function needed({ name }: Content, what: keyof typeof missing): Refusal {
  const would = missing[what];
  return new Refusal(`drop of the ${name}: ${would.measure} is not known`, would);
}

const missing = {
  fragility: {
    measure: "the deceleration it survives",
    how: 'ask its maker, or take 25 g for an instrument nobody knows, and write "stands g" into its needs',
  },
  handling: { measure: "how roughly it is handled", how: 'write "handling: usual" into the journey' },
  foam: {
    measure: "the foam under it",
    how: "choose a foam of cushion-curves.csv, its thickness and the sides of the pad, or carry it by itself",
  },
} as const satisfies Readonly<Record<string, MissingMeasurement>>;

/** A drop, and how hard the content is stopped on its foam; absent where no curve says. */
export interface Drop {
  /** How high it falls from. */
  readonly height: Length;
  /** How hard the foam stops it, in gravities. */
  readonly deceleration?: Ratio;
}

/** One fragile content on one kind of journey. */
export interface ProtectedOrRemoved {
  /** The name of the content. */
  readonly content: string;
  /** Deceleration it survives, in gravities. */
  readonly fragility: Ratio;
  /** Who handles it. */
  readonly handling: Handling;
  /** Dropped with its section. */
  readonly inCase: Drop;
  /** Dropped by itself, in a box with the same foam. */
  readonly byItself: Drop;
}

/**
 * Every fragile content, left in the case or carried by itself: a heavy case is dropped from lower, a light box
 * from higher, and the foam decides.
 *
 * @throws Refusal where the case has no mass
 */
export function protectedOrRemoved(input: ReviewInput): readonly ProtectedOrRemoved[] {
  return input.case.contents.flatMap((content) => {
    const { fragility } = content.needs;
    if (fragility === undefined) return [];
    const section = sectionBalance(input, content.section).value.mass;
    return handlingsOf(section).map((handling) => ({
      content: content.name,
      fragility,
      handling,
      inCase: dropOn(input, content, dropOf(section, handling).value),
      byItself: dropOn(input, content, dropOf(content.mass, handling).value),
    }));
  });
}

function dropOn(input: ReviewInput, { mass, needs: { foam } }: Content, height: Length): Drop {
  if (!foam) return { height };
  try {
    const stress = staticStress({ mass, area: Area.si(foam.padWidth * foam.padDepth) });
    return { height, deceleration: readCushionCurve({ points: curveFor(input, foam, height), stress }) };
  } catch (error) {
    if (error instanceof Refusal) return { height };
    throw error;
  }
}

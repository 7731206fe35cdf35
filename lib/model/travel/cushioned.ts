/** A content on its foam: the curve that holds for it, and how hard it is stopped. */
import type { Content, CushionPoint, FoamBed } from "../../design/index.js";
import { type Handling, readCushionCurve, staticStress } from "../../moving/index.js";
import { Area, Length, type Ratio } from "../../quantity/index.js";
import { type MissingMeasurement, Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { type DropLine, dropOf } from "./drop-of.js";

/** All that was measured on a foam of one thickness. */
export function cushionPoints(
  { measurements }: ReviewInput,
  { kind, thickness }: Pick<FoamBed, "kind" | "thickness">,
): readonly CushionPoint[] {
  return measurements.cushions.filter(
    (point) => point.foam === kind && Math.abs(point.thickness - thickness) < 1e-6,
  );
}

/** The points of a foam's curve for the least drop that is at least as high. */
export function curveFor(input: ReviewInput, foam: FoamBed, drop: Length): readonly CushionPoint[] {
  const { kind, thickness } = foam;
  const mine = cushionPoints(input, foam);
  const drops = mine.map((point) => point.drop).filter((one) => one >= drop - 1e-9);
  const least = Math.min(...drops);
  const points = mine.filter((point) => point.drop === least);
  if (points.length > 1) return points;
  throw new RangeError(
    `cushion curve: no curve of ${kind}, ${Length.show(thickness, { unit: "mm" })} thick, for a drop of ${Length.show(drop, { unit: "mm" })} or more in cushion-curves.csv`,
  );
}

/** A fragile content that is dropped with its section and lands on its foam. */
export interface CushionedDrop {
  readonly content: Content;
  readonly fragility: Ratio;
  readonly foam: FoamBed;
  readonly handling: Handling;
  readonly drop: DropLine;
  readonly curve: readonly CushionPoint[];
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

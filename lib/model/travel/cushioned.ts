/** A content on its foam: the curve that holds for it, and how hard it is stopped. */
import type { Content, CushionPoint, FoamBed } from "../../design/index.js";
import type { Finding, MissingMeasurement } from "../../findings/finding.js";
import { guarded, type Question, type Reply, unknown } from "../../findings/guarded.js";
import { type Handling, readCushionCurve, staticStress } from "../../moving/index.js";
import { Area, Length, type Ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";
import { type DropLine, dropOf } from "./drop-of.js";

/** Said of everything that may be dropped. */
export const dropCaution: string =
  "A dropped case breaks feet before it breaks instruments: test with sandbags, from a low height first, and nobody within its own height of it.";

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

/** Answers a question about a content's landing, or names what is missing for it. */
export function cushionedFinding(
  input: ReviewInput,
  question: Question,
  content: Content,
  reply: (landing: CushionedDrop) => Reply,
): Finding {
  const { handling } = input.case.journey;
  const { fragility, foam } = content.needs;
  if (fragility === undefined) return unknown(question, missing.fragility, [dropCaution]);
  if (handling === undefined) return unknown(question, missing.handling, [dropCaution]);
  if (foam === undefined) return unknown(question, missing.foam, [dropCaution]);
  return guarded(question, () => {
    const drop = dropOf(sectionBalance(input, content.section).value.mass, handling);
    const curve = curveFor(input, foam, drop.value);
    const area = Area.si(foam.padWidth * foam.padDepth);
    const stress = staticStress.worked({ mass: content.mass, area });
    const landed = readCushionCurve.worked({ points: curve, stress: stress.value });
    return reply({ content, fragility, foam, handling, drop, curve, stress, landed });
  }, [dropCaution]);
}

const missing: Readonly<Record<"fragility" | "handling" | "foam", MissingMeasurement>> = {
  fragility: {
    measure: "the deceleration it survives",
    how: 'ask its maker, or take 25 g for an instrument nobody knows, and write "stands g" into its needs',
  },
  handling: { measure: "how roughly it is handled", how: 'write "handling: usual" into the journey' },
  foam: {
    measure: "the foam under it",
    how: "choose a foam of cushion-curves.csv, its thickness and the sides of the pad, or carry it by itself",
  },
};

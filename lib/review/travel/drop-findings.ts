import type { Content, CushionPoint, FoamBed } from "../../design/index.js";
import {
  creepAllowance,
  dropEnergy,
  dropHeight,
  impactSpeed,
  leastPad,
  readCushionCurve,
  rotationalDrop,
  staticStress,
} from "../../moving/index.js";
import {
  Area,
  Energy,
  Length,
  type Mass,
  pound,
  Ratio,
  ratio,
  type ShowStyle,
  Speed,
  standardGravity,
} from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "./balance.js";

/** Whether each fragile content survives a drop of its section on its foam, or is better carried by itself. */
export function dropFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents
    .filter(({ needs }) => needs.fragility !== undefined || needs.foam !== undefined)
    .map((content) => dropFinding(input, content));
}

function dropFinding(input: ReviewInput, content: Content): Finding {
  const { name, needs, section } = content;
  const question: Question = {
    id: `travel.drop.${name}`,
    topic: "travel",
    subject: name,
    question: `Does the ${name} survive a drop of ${section}?`,
  };
  const { handling } = input.case.journey;
  if (needs.fragility === undefined)
    return unknown(
      question,
      {
        measure: "the deceleration it survives",
        how: 'ask its maker, or take 25 g for an instrument nobody knows, and write "stands g" into its needs',
      },
      [dropCaution],
    );
  if (handling === undefined)
    return unknown(
      question,
      {
        measure: "how roughly it is handled",
        how: 'write "handling: usual" into the journey',
      },
      [dropCaution],
    );
  if (needs.foam === undefined)
    return unknown(
      question,
      {
        measure: "the foam under it",
        how: "choose a foam of cushion-curves.csv, its thickness and the sides of the pad, or carry it by itself",
      },
      [dropCaution],
    );
  const { fragility, foam } = needs;
  return guarded(question, () => {
    const drop = dropOf(input, content, handling);
    const curve = curveFor(input, foam, drop.value);
    return dropReply(input, content, { fragility, foam, drop, curve });
  }, [dropCaution]);
}

const dropCaution =
  "A dropped case breaks feet before it breaks instruments: test with sandbags, from a low height first, and nobody within its own height of it.";

/** Heavier than a hand drops it: one edge let fall. */
function dropOf(input: ReviewInput, { section }: Content, handling: "careful" | "usual" | "rough") {
  const { mass } = sectionBalance(input, section).value;
  return mass <= pound(200)
    ? dropHeight.worked({ mass, handling })
    : rotationalDrop.worked({ mass, handling });
}

/** The points of a foam's curve for the least drop that is at least as high. */
export function curveFor(
  { measurements }: ReviewInput,
  { kind, thickness }: FoamBed,
  drop: Length,
): readonly CushionPoint[] {
  const mine = measurements.cushions.filter(
    (point) => point.foam === kind && Math.abs(point.thickness - thickness) < 1e-6,
  );
  const drops = mine.map((point) => point.drop).filter((one) => one >= drop - 1e-9);
  const least = Math.min(...drops);
  const points = mine.filter((point) => point.drop === least);
  if (points.length > 1) return points;
  throw new RangeError(
    `cushion curve: no curve of ${kind}, ${Length.show(thickness, { unit: "mm" })} thick, for a drop of ${Length.show(drop, { unit: "mm" })} or more in cushion-curves.csv`,
  );
}

interface DroppedContent {
  readonly fragility: Ratio;
  readonly foam: FoamBed;
  readonly drop: ReturnType<typeof dropHeight.worked> | ReturnType<typeof rotationalDrop.worked>;
  readonly curve: readonly CushionPoint[];
}

function dropReply(
  input: ReviewInput,
  { mass }: Content,
  { fragility, foam, drop, curve }: DroppedContent,
): Reply {
  const area = Area.si(foam.padWidth * foam.padDepth);
  const stress = staticStress.worked({ mass, area });
  const landed = readCushionCurve.worked({ points: curve, stress: stress.value });
  const [speed, energy] = [
    impactSpeed.worked({ height: drop.value }),
    dropEnergy.worked({ mass, height: drop.value }),
  ];
  const pad = leastPad.worked({ thickness: foam.thickness });
  const style = styleOf(input.case);
  const folds = pad.value > area ? " The pad is so small that it may fold sideways." : "";
  const bought = creepAllowance.worked({ needed: foam.thickness, creep: foamCreep });
  return compared({
    kind: Ratio,
    asked: ["deceleration on its foam, in gravities", landed.value],
    there: ["deceleration it survives", fragility],
    facts: `From ${Length.show(drop.value, style)} it lands at ${Speed.show(speed.value, style)} with ${Energy.show(energy.value, { digits: 2 })} and is stopped with ${Ratio.show(landed.value, { digits: 2 })} g; it stands ${Ratio.show(fragility)} g.${folds} Foam bought ${Length.show(bought.value, style)} thick is still ${Length.show(foam.thickness, style)} when it has settled. ${removedWords(input, mass, style)}`,
    remedy: `Thicker foam, a pad of ${Area.show(bestPad(mass, curve), style)}, or carry it by itself.`,
    because: [drop, speed, energy, stress, landed, pad, bought],
    cautions: [dropCaution],
    source: [
      cite("astm-d4169", "schedule A, drop height by mass and handling"),
      cite("cushion-design", "cushion curves"),
    ],
  });
}

/** Foam under a load for a season; common practice, 5 to 15 %. */
const foamCreep = ratio(0.1);

/** The pad that works where the curve is lowest. */
function bestPad(mass: Mass, curve: readonly CushionPoint[]): Area {
  const least = curve.reduce((best, point) => (point.deceleration < best.deceleration ? point : best));
  return Area.si((mass * standardGravity) / least.stress);
}

/** By itself a light thing is dropped from higher: said, so that protected and removed can be compared. */
function removedWords(input: ReviewInput, mass: Mass, style: ShowStyle): string {
  const { handling } = input.case.journey;
  if (handling === undefined || mass > pound(200)) return "";
  const alone = dropHeight({ mass, handling });
  return `Taken out and carried by itself it would be dropped from ${Length.show(alone, style)}, so it needs its own padded box then.`;
}

/** Whether everything inside stays down and up when the vehicle bounces. */
import type { Content } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { Frequency, floorBounce } from "../../inside/index.js";
import { type FastenerStrength, type ReviewInput, strengthInterval } from "../../model/index.js";
import { Force, inch, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { looseCaution } from "../cautions.js";
import { riddenFigure } from "../figures/riding-figures.js";
import { type Answer, type Question, question } from "../question.js";
import {
  countOf,
  eachContent,
  groupsHolding,
  known,
  says,
  strengthOf,
  unratedStrap,
  where,
} from "../subjects.js";
import type { Cradle } from "./cradle.js";
import { type OnPanel, usedOnPanel } from "./hold.js";

/** The bounce of the loose cargo test: 300 rounds a minute on a circle of 1 in, as a test house runs it. */
const bounce = { frequency: Frequency.si(5), travel: inch(1) };

const bounceTest = cite("mil-std-810-514", "loose cargo transportation, 300 rounds a minute");

/** How an answer is worked out, or what is missing for it. */
type Way = (() => Answer) | MissingMeasurement;

/** Whether each stays where it is, the floor under it going up and down. */
export const bounces: Question = question({
  id: "fit-out.bounce",
  about: where(
    says("journey"),
    eachContent(() => true),
  ),
  ask: ({ name }, { case: { journey } }) =>
    `Will the ${name} stay in place when the ${journey.vehicle} bounces?`,
  tier: "safety",
  cautions: [looseCaution],
  needs: { way: known((input, content: Content) => wayOf(input, content)) },
  answer: (_, { way }) => way(),
  figure: (input, content) =>
    riddenFigure(input, content, "bounce", `${Ratio.show(floorBounce(bounce), { digits: 2 })} g`),
});

function wayOf(input: ReviewInput, content: Content): Way {
  const { held, name } = content;
  switch (held.by) {
    case "floor":
    case "shelf":
      return () => jumping();
    case "strap":
      return held.rated === undefined
        ? unratedStrap(name)
        : pulledDown(input, content, strapWords(held.straps, held.rated));
    case "cradle":
      return underLid(input, content, held);
    default:
      return fastenedWay(input, content);
  }
}

/** A cradle without a lid holds nothing down; a lid holds what it is made for. */
function underLid(input: ReviewInput, content: Content, { lid, lidRated: rated }: Cradle): Way {
  if (!lid) return () => jumping();
  return rated === undefined
    ? {
        measure: `what the strap or lid over the ${content.name} stands`,
        how: 'read the working load off the strap, or pull the lid open with a scale, and write "lid rated" into its block held',
      }
    : pulledDown(input, content, {
        count: 1,
        rated,
        pulled: "its strap or lid",
        one: "it",
        remedy: "Put a stronger strap or catch over it.",
      });
}

/** Weight and bounce pull together off a top, against each other off a floor; along a wall they shear and pry. */
function fastenedWay(input: ReviewInput, content: Content): Way {
  const { held, name } = content;
  const pull = strengthOf(input, name, "pull");
  if ("measure" in pull) return pull;
  const panel = "to" in held ? held.to : "top";
  if (panel === "top" || panel === "bottom") return () => pulledOff(input, content, panel, pull);
  const shear = strengthOf(input, name, "shear");
  return "measure" in shear
    ? shear
    : () => shaken(input, content, { panel, groups: groupsHolding(input, name), shear, pull });
}

/** Along a wall the bounce adds to the weight: it shears the fasteners and pries the far ones off. */
function shaken(input: ReviewInput, content: Content, on: OnPanel): Answer {
  const line = floorBounce.worked(bounce);
  const shares = { off: ratio(0), along: ratio(1 + line.value) };
  const { words, ...use } = usedOnPanel(input, content, on, shares);
  return {
    ...use,
    facts: `Its weight and a bounce of ${Ratio.show(line.value, { digits: 2 })} g ${words}.`,
    because: [line, ...use.because],
    limit: bounceTest,
  };
}

/** Nothing but its weight holds it. */
function jumping(): Answer {
  const line = floorBounce.worked(bounce);
  return {
    demand: amount(Ratio, "bounce of the floor, in gravities", line.value),
    capacity: amount(Ratio, "gravity, which alone holds it down", ratio(1)),
    facts: `A bounce of ${Ratio.show(line.value, { digits: 2 })} g throws up what its weight alone holds.`,
    remedies: [{ words: "Hold it down with a strap, a lid or a cradle." }],
    because: [line],
    limit: bounceTest,
  };
}

/** What holds a thing down, and how it is spoken of. */
interface HeldDown {
  /** How many share the pull. */
  readonly count: number;
  /** What one stands. */
  readonly rated: Force;
  /** What is pulled: "each strap". */
  readonly pulled: string;
  /** One of them: "one". */
  readonly one: string;
  /** What would help. */
  readonly remedy: string;
}

function strapWords(count: number, rated: Force): HeldDown {
  const pulled = count === 1 ? "its strap" : "each strap";
  return { count, rated, pulled, one: "one", remedy: "Pull a second strap tight over it." };
}

/** Straps and lids pull down what the bounce throws up beyond its weight. */
function pulledDown(input: ReviewInput, { mass }: Content, by: HeldDown): () => Answer {
  return () => {
    const line = floorBounce.worked(bounce);
    const each = Force.si(((line.value - 1) * mass * standardGravity) / by.count);
    const style = styleOf(input.case);
    return {
      demand: amount(Force, `pull of ${by.pulled} downwards`, each),
      capacity: amount(Force, `what ${by.one} stands, with its anchors`, by.rated),
      facts: `A bounce of ${Ratio.show(line.value, { digits: 2 })} g pulls ${by.pulled} with ${Force.show(each, style)}; ${by.one} can take ${Force.show(by.rated, style)}.`,
      remedies: [{ words: by.remedy }],
      because: [line],
      limit: bounceTest,
      sources: [cite("statics", "weight and bounce")],
    };
  };
}

/** Off a top fasteners bear the bounce on top of the weight, off a floor what it has over the weight. */
function pulledOff(
  input: ReviewInput,
  { name, mass }: Content,
  panel: "top" | "bottom",
  strength: FastenerStrength,
): Answer {
  const line = floorBounce.worked(bounce);
  const times = panel === "top" ? line.value + 1 : line.value - 1;
  const load = Force.si(times * mass * standardGravity);
  const count = countOf(groupsHolding(input, name));
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength.strength, count, safetyFactor });
  const style = styleOf(input.case);
  return {
    demand: amount(Force, panel === "top" ? "its weight and the bounce" : "the bounce over its weight", load),
    capacity: amount(Force, "its fasteners allow", allowed.value),
    facts: `A bounce of ${Ratio.show(line.value, { digits: 2 })} g pulls on it with ${Force.show(load, style)}; its fasteners allow ${Force.show(allowed.value, style)}.`,
    remedies: [{ words: "Use more or larger fasteners, or take it down for the road." }],
    interval: strengthInterval({ each: strength }, (now) => (load * safetyFactor) / (count * now.each)),
    because: [line, ...strength.because, allowed],
    limit: bounceTest,
    sources: [cite("statics", "weight and bounce")],
  };
}

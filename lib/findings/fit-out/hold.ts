/** Whether each content stays where it is when the van brakes: standing loose, strapped, fastened, or in a cradle. */
import type { Content, ContentPart, Face, Fastening, Holding } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { heldPull, heldShear, strapTension, wallPull } from "../../inside/index.js";
import { type FastenerStrength, type ReviewInput, strengthInterval } from "../../model/index.js";
import { blockingForce, type RideWay, rideShare, rideWays, slidingShares } from "../../moving/index.js";
import { Angle, Force, Length, Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { looseCaution } from "../cautions.js";
import { riddenFigure } from "../figures/riding-figures.js";
import { type Answer, type Compared, type Question, question } from "../question.js";
import {
  countOf,
  eachContentPart,
  groupsHolding,
  known,
  mostOf,
  says,
  strengthOf,
  unratedStrap,
  where,
} from "../subjects.js";
import { roadWords } from "../travel/road.js";
import { cradled } from "./cradle.js";

/** How an answer is worked out, or what is missing for it. */
type Way = (() => Answer) | MissingMeasurement;

/** Whether each content stays put. */
export const holds: Question = question({
  id: "fit-out.hold",
  about: where(
    says("journey"),
    eachContentPart(() => true),
  ),
  ask: ({ content }, { case: { journey } }) =>
    `Will the ${content.name} stay put when the ${journey.vehicle} brakes?`,
  tier: "safety",
  cautions: [looseCaution],
  needs: { way: known((input, { content }: ContentPart) => wayOf(input, content)) },
  answer: (_, { way }) => way(),
  figure: (input, { content }) => {
    const push = blockingForce({ mass: content.mass, friction: ratio(0), way: "forward" });
    return riddenFigure(input, content, "braking", Force.show(push, styleOf(input.case)));
  },
});

function wayOf(input: ReviewInput, content: Content): Way {
  const { held } = content;
  switch (held.by) {
    case "floor":
    case "shelf":
      return loose(input, content, held.by);
    case "strap":
      return strapped(input, content, held);
    case "cradle":
      return cradled(input, content, held);
    default:
      return fastened(input, content);
  }
}

const braking = cite("en-12195", "table 2, 0.8 forward");

/** The share of its weight that braking pushes a thing with. */
function brakingShare() {
  return rideShare.worked({ way: "forward", movement: "sliding" });
}

/** Standing somewhere is not being held. */
function loose(input: ReviewInput, { name, mass, needs: { slidesAt } }: Content, on: "floor" | "shelf"): Way {
  if (slidesAt === undefined)
    return {
      measure: `what holds the ${name} against sliding and lifting off the ${on}`,
      how: `pull it sideways with a luggage scale until it slides and write "slides at" into its needs, or give it straps or screws in its block held`,
    };
  return () => {
    const share = brakingShare();
    const push = heldShear.worked({ mass, share: share.value, count: 1 });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "push of the road", push.value),
      capacity: amount(Force, "push at which it slides", slidesAt),
      facts: `Braking pushes it with ${Force.show(push.value, style)}; it slides at ${Force.show(slidesAt, style)}.`,
      remedies: [
        { words: "Give it a strap, screws or a cradle lined with foam that it cannot jump out of." },
      ],
      because: [share, push],
      limit: braking,
    };
  };
}

/** Friction of a box on faced ply in a shaking van; nobody measured it, so none is counted. */
const noFriction: Ratio = ratio(0);

function strapped(
  input: ReviewInput,
  { name, mass }: Content,
  { straps, rated }: Extract<Holding, { by: "strap" }>,
): Way {
  if (rated === undefined) return unratedStrap(name);
  return () => {
    const share = brakingShare();
    const flat = { strapAngle: Angle.si(0), friction: noFriction };
    const line = strapTension.worked({ mass, share: share.value, straps, ...flat });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "in each strap", line.value),
      capacity: amount(Force, "one strap and its anchors stand", rated),
      facts: `Braking pulls ${straps === 1 ? "its strap" : `each of ${straps} straps`} with ${Force.show(line.value, style)}; one can take ${Force.show(rated, style)}.`,
      remedies: [{ words: "Use more straps, or give it an edge to stand against." }],
      because: [share, line],
      limit: braking,
      sources: [cite("statics", "components of a force")],
    };
  };
}

function fastened(input: ReviewInput, content: Content): Way {
  const shear = strengthOf(input, content.name, "shear");
  const pull = strengthOf(input, content.name, "pull");
  if ("measure" in shear) return shear;
  if ("measure" in pull) return pull;
  const groups = groupsHolding(input, content.name);
  const { held } = content;
  const panel = "to" in held ? held.to : "top";
  return () =>
    panel === "bottom"
      ? shorn(input, content, groups, { shear, pull })
      : onWall(input, content, { panel, groups, shear, pull });
}

/** What one fastener holds each way. */
type Strengths = Readonly<Record<"shear" | "pull", FastenerStrength>>;

/** A thing off the floor: its panel and what holds it. */
export interface OnPanel extends Strengths {
  /** The side of the case it is fastened to. */
  readonly panel: Exclude<Face, "bottom">;
  /** All that holds it. */
  readonly groups: readonly Fastening[];
}

/** Which way of the road throws a thing off a wall; driven with its front to the front. */
const thrownOff: Readonly<Record<Exclude<Face, "bottom" | "top">, RideWay>> = {
  back: "forward",
  front: "rearward",
  left: "sideways",
  right: "sideways",
};

/** Shares of the weight off and along a panel, one way of the road; the weight itself runs along walls, off a top. */
function sharesOn(panel: OnPanel["panel"], way: RideWay): Shares {
  const push = slidingShares[way];
  if (panel === "top") return { off: ratio(1), along: ratio(push) };
  if (thrownOff[panel] === way) return { off: ratio(push), along: ratio(1) };
  const pressed = (panel === "front" && way === "forward") || (panel === "back" && way === "rearward");
  return { off: ratio(0), along: ratio(pressed ? 1 : Math.hypot(push, 1)) };
}

/** Between the outer rows of a foot, over the foot; common practice. */
const rowsOverFoot = 0.8;

const outOf: Readonly<Record<Exclude<Face, "bottom">, "x" | "y" | "z">> = {
  left: "x",
  right: "x",
  front: "y",
  back: "y",
  top: "z",
};

/** Shares of the weight off a panel and along it. */
export interface Shares {
  /** Straight off it. */
  readonly off: Ratio;
  /** Along it. */
  readonly along: Ratio;
}

/** What they use of the fasteners, as an answer without its first sentence. */
export interface PanelUse extends Omit<Compared, "facts"> {
  /** Shear and pull together, as a share of what is allowed. */
  readonly used: number;
  /** What is done to them: "each far one of 4 fasteners off the back with 2 lbf. They shear each with 1 lbf". */
  readonly words: string;
}

/** What shares of the weight do to the fasteners of a thing off the floor: pulled off, pried off by its depth, shorn. */
export function usedOnPanel(
  input: ReviewInput,
  { mass, size }: Content,
  { panel, groups, ...strength }: OnPanel,
  { off, along }: Shares,
): PanelUse {
  const count = countOf(groups);
  const depth = size[outOf[panel]];
  const foot = (["x", "y", "z"] as const).filter((axis) => axis !== outOf[panel]).map((axis) => size[axis]);
  const rows = Length.si(rowsOverFoot * Math.min(...foot));
  const allowed = allowedEach(input, strength);
  const pull = wallPull.worked({ mass, off, along, depth, rows, count });
  const shear = heldShear.worked({ mass, share: along, count });
  const used = shear.value / allowed.shear.value + pull.value / allowed.pull.value;
  const style = styleOf(input.case);
  return {
    ...summed(used, allowed),
    used,
    words: `take ${Ratio.show(ratio(used), { unit: "%", digits: 2 })} of what its ${count} fasteners allow. They pull each far one off the ${panel} with ${Force.show(pull.value, style)}, and shear each with ${Force.show(shear.value, style)}`,
    because: [pull, shear, allowed.shear, allowed.pull],
    interval: strengthInterval(strength, (now) => usedBy(input, { shear, pull }, now)),
  };
}

/** The road throws it off its panel, pries it off by its own depth and shears its fasteners; all add up. */
function onWall(input: ReviewInput, content: Content, on: OnPanel): Answer {
  const ways = rideWays.map((way) => ({ way, ...usedOnPanel(input, content, on, sharesOn(on.panel, way)) }));
  const { way, words, ...worst } = mostOf(ways, ({ used }) => used, "hold: no way of the road was found");
  return { ...worst, facts: `${roadWords[way]} and its weight ${words}.` };
}

function usedBy(
  { case: { demands } }: ReviewInput,
  { shear, pull }: { readonly shear: { readonly value: Force }; readonly pull: { readonly value: Force } },
  now: Readonly<Record<"shear" | "pull", Force>>,
): number {
  return demands.safetyFactor * (shear.value / now.shear + pull.value / now.pull);
}

function allowedEach({ case: { demands } }: ReviewInput, { shear, pull }: Strengths) {
  const { safetyFactor } = demands;
  const allow = (each: Force) => groupStrength.worked({ each, count: 1, safetyFactor });
  return { shear: allow(shear.strength), pull: allow(pull.strength) };
}

/** Shear and pull of one fastener as a share of both, told as shear. */
function summed(used: number, { shear }: ReturnType<typeof allowedEach>) {
  return {
    demand: amount(Force, "sideways on each, including the pull", Force.si(used * shear.value)),
    capacity: amount(Force, "each fastener allows", shear.value),
    remedies: [{ words: "Use more fasteners, a wider foot, or a strap over it." }],
    limit: braking,
    sources: [cite("common-practice", "shear and pull add up")],
  };
}

/** Braking shears all fasteners of a thing on the floor and pulls at the rear half of them; the two add up. */
function shorn(
  input: ReviewInput,
  { mass, size }: Content,
  groups: readonly Fastening[],
  strength: Strengths,
): Answer {
  const count = countOf(groups);
  const share = brakingShare();
  const sideways = heldShear.worked({ mass, share: share.value, count });
  const upwards = heldPull.worked({
    mass,
    share: share.value,
    height: Length.si(size.z / 2),
    base: Length.si(rowsOverFoot * Math.min(size.x, size.y)),
  });
  const rear = Math.max(1, Math.floor(count / 2));
  const allowed = allowedEach(input, strength);
  const pull = { value: Force.si(upwards.value / rear) };
  const used = sideways.value / allowed.shear.value + pull.value / allowed.pull.value;
  const style = styleOf(input.case);
  const pulled =
    pull.value > 0
      ? ` and pulls ${rear === 1 ? "one" : rear} of them with ${Force.show(pull.value, style)} each`
      : "; its own weight keeps it from tipping";
  return {
    ...summed(used, allowed),
    facts: `Braking takes ${Ratio.show(ratio(used), { unit: "%", digits: 2 })} of what ${count === 1 ? "its fastener allows" : `its ${count} fasteners allow`}. It pushes ${count === 1 ? "it" : "each"} with ${Force.show(sideways.value, style)}${pulled}.`,
    because: [share, sideways, upwards, allowed.shear, allowed.pull],
    interval: strengthInterval(strength, (now) => usedBy(input, { shear: sideways, pull }, now)),
  };
}

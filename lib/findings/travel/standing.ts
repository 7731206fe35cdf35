/** Whether the stacked case stands: leaning, pushed, on a slope, in the wind, with a child on an open drawer. */
import type { Point } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  castersOf,
  type Footprint,
  facingNames,
  feetUnder,
  footGrip,
  footprint,
  leastTippingArm,
  type MassItem,
  overhangOf,
  pulledOut,
  type ReviewInput,
  shelvesThatComeOut,
  stackTop,
  standingHeight,
  tippingArm,
  weighedInterval,
} from "../../model/index.js";
import {
  allowedGust,
  ballastNeeded,
  childOnDrawer,
  edgeLoadLimit,
  groundSlope,
  halfBaseNeeded,
  headings,
  outriggerReach,
  pushLimits,
  steadinessPush,
  steadyTilt,
  type TipOver,
  type TipWay,
  tippingWind,
  tipWays,
  windForce,
} from "../../moving/index.js";
import {
  Angle,
  Area,
  Density,
  Force,
  Length,
  Mass,
  metre,
  type Ratio,
  ratio,
  type ShowStyle,
  Speed,
} from "../../quantity/index.js";
import { Refusal, unlessRefused } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, capitalised, styleOf } from "../amount.js";
import { childFigure, leaningFigure, pushFigure, windFigure } from "../figures/standing-figures.js";
import { type Answer, type Cautions, type Question, question, type Subjects } from "../question.js";
import { caseWords, each, movedCase, ofJourney, stackedCase } from "../subjects.js";

/** What is told of a case that may tip; of casters where there are any. */
function tippingCaution(input: ReviewInput): string {
  return [
    "A case that tips can crush a foot or a child.",
    ...(onCasters(input) ? ["Brake or block the casters in public."] : []),
    ...openables(input).map((what) => `Keep ${what} shut when it stands alone.`),
    "Try the real case by lifting one side with a helper ready.",
  ].join(" ");
}

/** What of a case opens, in a word: "doors and drawers"; none for one that has neither. */
function openables({ parts }: ReviewInput): readonly string[] {
  const doors = parts.panels.some(({ role }) => role === "leaf") ? ["doors"] : [];
  const drawers = parts.drawers.length > 0 ? ["drawers"] : [];
  const both = [...doors, ...drawers].join(" and ");
  return both === "" ? [] : [both];
}

function tipping(_: unknown, input: ReviewInput): Cautions {
  return [tippingCaution(input)];
}

function onCasters(input: ReviewInput): boolean {
  return castersOf(input).length > 0;
}

/** What would widen the base. */
function widening(input: ReviewInput): string {
  if (onCasters(input)) return "set the casters further out";
  return feetUnder(input).length > 0 ? "set its feet further out" : "make its base wider";
}

/** Where weight lies lowest. */
function lowestFloor({ parts }: ReviewInput): string {
  return parts.sections.length > 1 ? "in the lowest section" : "on its floor";
}

const windCaution =
  "Take the case down before the wind is that strong. A canopy, a banner or an open door multiplies it, and what falls outdoors falls on somebody.";

const tippingEdge = cite("statics", "moments about the tipping edge");

const sides: readonly TipWay[] = ["left", "right", "front", "back"];

/** What the finding rests on wherever a base is asked for: the balance, and the swivel of the casters. */
function standingLines({ balance, swivel }: Footprint): readonly WorkedLine[] {
  return [balance, ...swivel];
}

/** A case whose centre of gravity is not above its base falls as it stands; no other figure matters then. */
export function onItsFeet(input: ReviewInput, answer: (standing: Footprint) => Answer): Answer {
  return standingUp(input, footprint(input), answer);
}

/** The same of whatever stands so. */
export function standingUp(
  input: ReviewInput,
  standing: Footprint,
  answer: (standing: Footprint) => Answer,
): Answer {
  const [nearest] = standing.edges;
  if (nearest && nearest.arm > 0) return { assumed: standing.assumed, ...answer(standing) };
  return {
    plainNo: true,
    facts: `It falls ${nearest ? `to the ${nearest.way} ` : ""}as it stands: its centre of gravity is not above its base.`,
    because: standingLines(standing),
    assumed: standing.assumed,
    remedies: [{ words: `${capitalised(widening(input))} on that side, or move heavy things away from it.` }],
    limit: tippingEdge,
  };
}

/**
 * The way it falls first.
 *
 * @throws Refusal where the centre of gravity does not stand over the base
 */
function firstWay(standing: Footprint): TipOver {
  const [worst] = tipWays(standing);
  if (!worst) throw new Refusal("tip angle: no way to fall was found");
  return worst;
}

/** The lean that is asked for over the lean at which it tips, the worst way. */
function tipUse(input: ReviewInput): number {
  return steadyTilt.angle / firstWay(footprint(input)).worked.value;
}

/** How far the case leans before it tips. */
export const tip: Question = question({
  id: "travel.tip",
  about: stackedCase,
  ask: (_, input) => `How far does the ${caseWords(input)} lean before it tips?`,
  tier: "safety",
  cautions: tipping,
  answer: (input) =>
    onItsFeet(input, (standing) => {
      const { way, worked } = firstWay(standing);
      const base = halfBaseNeeded.worked({ height: standing.height, angle: steadyTilt.angle });
      const style = styleOf(input.case);
      return {
        demand: amount(Angle, "lean to be borne", steadyTilt.angle),
        capacity: amount(Angle, `lean at which it tips to the ${way}`, worked.value),
        facts: `It tips to the ${way} at ${Angle.show(worked.value, { digits: 2 })}; ${Angle.show(steadyTilt.angle)} is asked for.`,
        remedies: [
          {
            words: `${capitalised(widening(input))}, move heavy things down, or set out a foot on that side. ${baseWords(base.value, standing, style)}`,
            gives: [amount(Length, "half the base that would be enough", base.value)],
          },
        ],
        because: [...standingLines(standing), worked, base],
        limit: steadyTilt.source,
        interval: weighedInterval(input, tipUse),
      };
    }),
  figure: (input) => leaningFigure(input),
});

function baseWords(needed: Length, standing: Footprint, style: ShowStyle): string {
  return `It needs ${Length.show(needed, style)} from below its centre of gravity to that edge and has ${Length.show(leastTippingArm(standing), style)}.`;
}

/** The published test pushes at up to 1.5 m, about the shoulder of a tall adult. */
const shoulderHeight: Length = metre(1.5);

/** Common practice, no source: rubber casters, braked, on a hard floor. */
const blockedCasters: Ratio = ratio(0.5);

/** Whether a push at shoulder height, or at the top of a lower case, tips it. */
export const push: Question = question({
  id: "travel.push",
  about: stackedCase,
  ask: (_, input) => `Does a push at shoulder height tip the ${caseWords(input)}?`,
  tier: "safety",
  cautions: tipping,
  answer: (input) => onItsFeet(input, (standing) => pushed(input, standing)),
  figure: (input, _, { capacity }) =>
    pushFigure(input, pushHeight(input), capacity?.show(styleOf(input.case))),
});

/** At the shoulder, or at the top of a lower case. */
function pushHeight(input: ReviewInput): Length {
  return Length.si(Math.min(shoulderHeight, stackTop(input) + standingHeight(input)));
}

/** 13 % of the weight, or the push of the case file if it is more. */
function pushed(input: ReviewInput, standing: Footprint): Answer {
  const { mass } = standing.balance.value;
  const height = pushHeight(input);
  const wanted = steadinessPush.worked({ mass });
  const demand = Force.si(Math.max(wanted.value, input.case.demands.push));
  const grip = onCasters(input) ? blockedCasters : footGrip(input);
  const limits = pushLimits.worked({
    mass,
    halfBase: leastTippingArm(standing),
    pushHeight: height,
    friction: grip ?? blockedCasters,
  });
  const { tips, slides } = limits.value;
  const style = styleOf(input.case);
  const first =
    slides < tips && grip !== undefined
      ? ` ${onCasters(input) ? "Braked, it" : "It"} would slide at ${Force.show(slides, style)}.`
      : "";
  return {
    demand: amount(Force, "push to be borne", demand),
    capacity: amount(Force, "push that tips it", tips),
    facts: `A level push of ${Force.show(tips, style)} at ${Length.show(height, style)} begins to tip it; it should stand ${Force.show(demand, style)}.${first}`,
    remedies: [
      {
        words: `${capitalised(widening(input))}, lay weight ${lowestFloor(input)}, or fix it to a wall or table.`,
      },
    ],
    because: [...standingLines(standing), wanted, limits],
    limit: cite("iec-62368", "8.6"),
    sources: [tippingEdge],
  };
}

/** A drawer or a door, and how far out of the case its edge comes. */
interface OpenThing {
  /** The panel's id or the content's name. */
  readonly name: string;
  /** The side of the case it opens on. */
  readonly side: TipWay;
  /** From the face of the case to its outer edge. */
  readonly out: Length;
  /** A door turns about its hinge, a drawer comes out as a whole. */
  readonly kind: "door" | "drawer";
  /** The section that it is in. */
  readonly section: string;
  /** What comes out beside the thing of that name. */
  readonly along?: readonly string[];
}

/** A child's foot finds no hold on less; common practice, no source. */
const foothold: Length = metre(0.1);

const openThings: Subjects<OpenThing> = each(
  (input) => {
    const {
      parts,
      case: { contents },
    } = input;
    const doors = parts.panels.flatMap(({ role, id, section, face, width, height, leaf }): OpenThing[] => {
      if (role !== "leaf" || !leaf || face === undefined || face === "top" || face === "bottom") return [];
      return [
        {
          name: id,
          section,
          side: face,
          out: leaf.hinge === "left" || leaf.hinge === "right" ? width : height,
          kind: "door",
        },
      ];
    });
    const drawers = contents.flatMap(
      ({ name, section, needs: { opensBy, opensTo = "front" } }): OpenThing[] => {
        if (opensBy === undefined || opensTo === "top" || opensTo === "bottom") return [];
        return [{ name, section, side: opensTo, out: opensBy, kind: "drawer" }];
      },
    );
    const shelves = shelvesThatComeOut(input).map(({ shelf, panel, carries }): OpenThing => {
      const along = [panel.id, ...carries.map(({ content }) => content.name)];
      const { name, section } = shelf;
      return { name, section, side: "front", out: pulledOut(input, shelf), kind: "drawer", along };
    });
    const boxes = parts.drawers.map(({ drawer, face, panels }): OpenThing => {
      const along = panels.flatMap(({ id }) => [id, ...facingNames(id)]);
      const { name, section } = drawer;
      return { name, section, side: face, out: pulledOut(input, drawer), kind: "drawer", along };
    });
    return [...doors, ...drawers, ...shelves, ...boxes].filter(({ out }) => out >= foothold);
  },
  ({ name }) => name,
);

/** Whether the stacked case stands with a child on each drawer or door that is open. */
export const child: Question = question({
  id: "travel.child",
  about: openThings,
  ask: ({ name }, input) => `Does the ${caseWords(input)} stand with a child on the open ${name}?`,
  tier: "safety",
  cautions: tipping,
  answer: (input, _, thing) =>
    onItsFeet(input, () => {
      const opened = footprint(input, (item) => openedPlace(thing, item));
      return tippingArm(opened, thing.side) > 0
        ? climbedOn(input, thing, opened)
        : {
            plainNo: true,
            facts: `Opened, the ${thing.name} tips the case to the ${thing.side} by its own weight.`,
            remedies: [{ words: "Fix the case to a wall or table, or set out a foot below it." }],
            because: standingLines(opened),
            limit: tippingEdge,
          };
    }),
  figure: (input, thing, { capacity }) =>
    childFigure(
      input,
      footprint(input, (item) => openedPlace(thing, item)),
      thing,
      capacity?.show(styleOf(input.case)),
    ),
});

/** A door's weight moves out by half its width, a drawer's by as far as it comes out. */
function openedPlace({ name, side, out, kind, along = [] }: OpenThing, item: MassItem): Point {
  const belongs =
    [name, ...along].includes(item.name) || (kind === "door" && item.name.endsWith(` of ${name}`));
  if (!belongs) return item.centre;
  const way = kind === "door" ? out / 2 : out;
  const { x, y, z } = item.centre;
  return {
    x: Length.si(x + way * Math.cos(headings[side])),
    y: Length.si(y + way * Math.sin(headings[side])),
    z,
  };
}

function climbedOn(input: ReviewInput, { name, section, side, out }: OpenThing, opened: Footprint): Answer {
  const overhang = Length.si(out + overhangOf(input, opened, side, section));
  if (overhang <= 0)
    return {
      ratio: 0,
      facts: `The open ${name} stays over the base of the case: nobody tips it there.`,
      because: standingLines(opened),
      limit: childOnDrawer.source,
      sources: [tippingEdge],
    };
  const line = edgeLoadLimit.worked({
    mass: opened.balance.value.mass,
    halfBase: tippingArm(opened, side),
    overhang,
  });
  const style = styleOf(input.case);
  return {
    demand: amount(Mass, "child of the published test", childOnDrawer.mass),
    capacity: amount(Mass, "mass that tips it", line.value),
    facts: `${Mass.show(line.value, style)} on the edge of the open ${name} tips it to the ${side}; a child counts as ${Mass.show(childOnDrawer.mass, style)}. That edge stands ${Length.show(overhang, style)} past the line of the wheels or feet, and its own weight has moved out with it.`,
    remedies: [
      { words: "Lock it when unattended, fix the case to a wall or table, or set out a foot below it." },
    ],
    because: [...standingLines(opened), line],
    limit: childOnDrawer.source,
    sources: [tippingEdge],
  };
}

/** Common practice for a box on the ground, no source; air near sea level. */
const boxDrag: Ratio = ratio(1.3);
const seaAir: Density = Density.si(1.2);

/** Whether the wind tips the case. */
export const wind: Question = question({
  id: "travel.wind",
  about: movedCase,
  ask: (_, input) => `Does the wind tip the ${caseWords(input)} outdoors?`,
  tier: "safety",
  cautions: (_, input) => [windCaution, tippingCaution(input)],
  needs: {
    gust: ofJourney((journey) => journey.gust, "the strongest gust where it stands", {
      inch: '"gust: 25 mph", as the weather service says it',
      metric: '"gust: 40 km/h", as the weather service says it',
    }),
  },
  answer: (input, { gust }) => onItsFeet(input, (standing) => blown(input, standing, gust)),
  figure: (input, _, { demand }) => windFigure(input, demand?.show(gustStyle(input))),
});

/** What one side of all sections shows to the wind, and how high its middle is above the lowest underside. */
function sideInWind({ parts }: ReviewInput, side: TipWay): { readonly area: Area; readonly middle: number } {
  const across = side === "left" || side === "right" ? "y" : "x";
  const shown = parts.sections.map(({ outside: { low, size } }) => ({
    area: size[across] * size.z,
    middle: low.z + size.z / 2,
  }));
  const area = shown.reduce((sum, one) => sum + one.area, 0);
  return { area: Area.si(area), middle: shown.reduce((sum, one) => sum + one.area * one.middle, 0) / area };
}

/** As the weather service says it. */
function gustStyle({ case: { units } }: ReviewInput): ShowStyle {
  return { unit: units === "inch" ? "mph" : "km/h", digits: 3 };
}

function blown(input: ReviewInput, standing: Footprint, gust: Speed): Answer {
  const lines = sides.map((side) => {
    const { area, middle } = sideInWind(input, side);
    const air = { area, dragFactor: boxDrag, airDensity: seaAir };
    const tips = tippingWind.worked({
      ...air,
      mass: standing.balance.value.mass,
      halfBase: tippingArm(standing, side),
      middle: Length.si(standingHeight(input) + middle),
    });
    return { tips, push: windForce.worked({ ...air, speed: gust }) };
  });
  const worst = lines.reduce((least, one) => (one.tips.value < least.tips.value ? one : least));
  const allowed = allowedGust.worked({ tips: worst.tips.value });
  const style = styleOf(input.case);
  const speed = gustStyle(input);
  return {
    demand: amount(Speed, "strongest gust", gust),
    capacity: amount(Speed, "gust up to which it may stand", allowed.value),
    facts: `A gust of ${Speed.show(gust, speed)} is expected; with the safety factors it may stand in gusts up to ${Speed.show(allowed.value, speed)}. The expected gust pushes its worst side with ${Force.show(worst.push.value.force, style)}, and ${Speed.show(worst.tips.value, speed)} would tip it.`,
    remedies: [
      {
        words: `${input.parts.sections.length > 1 ? "Take it apart, lean" : "Lean"} it against a wall, or lay ballast ${lowestFloor(input)}.`,
      },
    ],
    because: [...standingLines(standing), worst.push, worst.tips, allowed],
    limit: cite("en-1990", "table A1.2(A), static equilibrium, 0.9 and 1.5"),
    sources: [tippingEdge, cite("fluid-flow", "drag")],
  };
}

/** Whether the case stands on sloping ground, and what would be enough where it does not. */
export const slope: Question = question({
  id: "travel.slope",
  about: movedCase,
  ask: "Does the case stand on sloping ground, and what base, ballast or foot would be enough?",
  tier: "safety",
  cautions: tipping,
  needs: {
    ground: ofJourney(
      (journey) => journey.slope,
      "the slope of the ground",
      '"slope: 3 deg", by a level and a rule laid on the ground',
    ),
  },
  answer: (input, { ground }) => onItsFeet(input, (standing) => sloping(input, standing, ground)),
  figure: (input) => leaningFigure(input),
});

/** The published tilt of any standing thing, or the ground with the slope of normal use on top. */
function askedLean(ground: Angle): Angle {
  return Angle.si(Math.max(steadyTilt.angle, ground + groundSlope.angle));
}

/**
 * One tilt and no other: the ground as measured with the slope of normal use on top, or the published tilt of any
 * standing thing, whichever is more. Nobody asks for the sum of both standards.
 */
function sloping(input: ReviewInput, standing: Footprint, ground: Angle): Answer {
  const wanted = askedLean(ground);
  const { way, worked } = firstWay(standing);
  const { height, balance } = standing;
  const half = leastTippingArm(standing);
  const base = halfBaseNeeded.worked({ height, angle: wanted });
  const foot = outriggerReach.worked({ halfBase: half, height, angle: wanted });
  // On a tilt too steep for it, no ballast helps.
  const ballast = unlessRefused(() =>
    ballastNeeded.worked({
      mass: balance.value.mass,
      halfBase: half,
      height,
      angle: wanted,
      ballastFromEdge: half,
      ballastHeight: Length.si(standingHeight(input) + 0.05),
    }),
  );
  const laid = ballast ? `, or ${Mass.show(ballast.value, styleOf(input.case))} laid on its floor,` : "";
  const style = styleOf(input.case);
  return {
    demand: amount(Angle, "lean to be borne on that ground", wanted),
    capacity: amount(Angle, `lean at which it tips to the ${way}`, worked.value),
    facts: `On ground of ${Angle.show(ground, { digits: 2 })} it should bear a lean of ${Angle.show(wanted, { digits: 2 })}, and it tips to the ${way} at ${Angle.show(worked.value, { digits: 2 })}. What it should bear is the ground and ${Angle.show(groundSlope.angle)} of wobble, but no less than ${Angle.show(steadyTilt.angle)}.`,
    remedies: [
      {
        words: `A foot ${Length.show(foot.value, style)} out on that side${laid} would be enough. ${baseWords(base.value, standing, style)}`,
        gives: [
          amount(Length, "foot that would be enough", foot.value),
          ...(ballast ? [amount(Mass, "ballast that would be enough", ballast.value)] : []),
        ],
      },
    ],
    because: [...standingLines(standing), worked, base, foot, ...(ballast ? [ballast] : [])],
    limit: steadyTilt.source,
    sources: [groundSlope.source],
  };
}

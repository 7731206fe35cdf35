/** Whether the fasteners of corners, casters and hinges hold: set down hard, struck by a kerb, hung with an open door. */
import type { HardwarePart, PanelPart } from "../../design/index.js";
import { type CombinedInputs, combinedUse, groupPull, groupStrength } from "../../fastening/index.js";
import {
  densityOf,
  type KnownStrength,
  massItems,
  type ReviewInput,
  sectionBalance,
  stackedBalance,
  stiffenerNames,
  strengthInterval,
  useInterval,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Length, Mass, Moment, newton, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { unlessRefused } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { casterCaution, doorCaution, dropCaution } from "../cautions.js";
import { hangingDoorFigure } from "../figures/box-figures.js";
import { heldStack } from "../figures/stack-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { countOf, mostOf } from "../subjects.js";
import { eachHeld, type Held, heldOf, strengthIn } from "./held-hardware.js";

/** A section set down on one corner: its weight with a jolt, shared by all fasteners of that corner. */
export const corners: Question = question({
  id: "joints.corners",
  about: eachHeld("protect"),
  ask: ({ part }) => `Do the fasteners of a ${part.stock.name} hold when ${part.section} comes down on it?`,
  tier: "strength",
  cautions: [dropCaution],
  needs: { strength: strengthIn("shear") },
  answer: (input, { strength }, { part: { section }, groups }) => {
    const { dynamicFactor, safetyFactor } = input.case.demands;
    const count = countOf(groups);
    const balance = sectionBalance(input, section);
    const load = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor });
    const allowed = groupStrength.worked({ each: strength.strength, count, safetyFactor });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "on one corner", load.value),
      capacity: amount(Force, "its fasteners allow", allowed.value),
      facts: `All of ${section} on one corner, with a jolt, is ${Force.show(load.value, style)}; its ${count === 1 ? "fastener allows" : `${count} fasteners allow`} ${Force.show(allowed.value, style)} (${percentOf(load.value, allowed.value)}).`,
      interval: useInterval(load.value, strength, count / safetyFactor),
      because: [balance, load, ...strength.because, allowed],
      limit: cite("common-practice", "all weight on one corner for a moment"),
    };
  },
  figure: (input, { groups }, { demand }) => heldStack(input, groups, "shear", demand),
});

function percentOf(demand: Force, capacity: Force): string {
  return Ratio.show(Ratio.si(demand / capacity), { unit: "%", digits: 2 });
}

/** A caster that strikes a kerb: pushed sideways as hard as it is borne on, at the height of its wheel. */
export const kerbs: Question = question({
  id: "joints.casters",
  about: {
    ...eachHeld("roll"),
    each: (input) => heldOf(input, "roll").filter(({ first }) => first.at.length > 0),
  },
  ask: ({ part }) => `Do the fasteners of a ${part.stock.name} hold when it strikes a kerb?`,
  tier: "safety",
  cautions: [casterCaution],
  needs: { strength: strengthIn("pull") },
  answer: (input, { strength }, { part: { stock }, first }) => {
    const balance = stackedBalance(input);
    // One of four may hang over a dip, so one fewer bears.
    const casters = input.parts.hardware.filter(({ item }) => item.duty === "roll").length;
    const touching = Math.max(1, casters - 1);
    const load = handleForce.worked({
      mass: balance.value.mass,
      handles: touching,
      dynamicFactor: ratio(1),
    });
    const prying = Moment.si(load.value * stock.standing);
    const still = Moment.si(0);
    const struck = { positions: first.at, pull: Force.si(-load.value) };
    const ways = [
      groupPull.worked({ ...struck, pryingX: prying, pryingY: still }),
      groupPull.worked({ ...struck, pryingX: still, pryingY: prying }),
    ];
    const worse = mostOf(ways, ({ value }) => value.largest, "kerb: no way to strike was found");
    const pull = Force.si(Math.max(0, worse.value.largest));
    const { safetyFactor } = input.case.demands;
    const allowed = groupStrength.worked({ each: strength.strength, count: 1, safetyFactor });
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "pull on one fastener", pull),
      capacity: amount(Force, "one fastener allows", allowed.value),
      facts: `Pushed sideways with ${Force.show(load.value, style)} at ${Length.show(stock.standing, style)} below the case, its most loaded fastener is pulled with ${Force.show(pull, style)} of ${Force.show(allowed.value, style)} (${percentOf(pull, allowed.value)}).`,
      interval: useInterval(pull, strength, 1 / safetyFactor),
      because: [balance, load, worse, ...strength.because, allowed],
      limit: cite("common-practice", "a kerb strikes as hard as the caster bears"),
      sources: [cite("statics", "prying")],
    };
  },
  figure: (input, { groups }, { demand }) => heldStack(input, groups, "pull", demand),
});

/** A hinge with its fasteners, and the door that hangs on it. */
interface DoorHinge extends Held {
  /** The door. */
  readonly leaf: PanelPart;
}

/** A door that hangs open on its hinges: its weight, and the couple that pulls the upper hinge off. */
export const hinges: Question = question({
  id: "joints.hinges",
  about: {
    ...eachHeld("hinge"),
    each: (input): readonly DoorHinge[] =>
      heldOf(input, "hinge").flatMap((held) => {
        const { panels } = held.part;
        const leaf = input.parts.panels.find(({ id, role }) => role === "leaf" && panels.includes(id));
        return leaf ? [{ ...held, leaf }] : [];
      }),
  },
  ask: ({ leaf }) => `Do the hinges of ${leaf.id} hold the open door, with a jolt?`,
  tier: "strength",
  cautions: [doorCaution],
  needs: { shear: strengthIn("shear"), pull: strengthIn("pull") },
  answer: (input, { shear, pull }, hinge) => {
    const apart = spacingOf(hingesOf(input, hinge.leaf));
    if (apart > 0) return hungOpen(input, hinge, apart, { shear, pull });
    return {
      plainNo: true,
      facts: "It hangs on one hinge, or on two in one place: nothing holds the couple of an open door.",
      remedies: [{ words: "Set two hinges apart from each other." }],
      because: [],
      limit: cite("statics", "couple of two hinges"),
    };
  },
  figure: (input, { leaf, groups }) => {
    const weight = Mass.show(leafMass(input, leaf), styleOf(input.case));
    const open = () => hangingDoorFigure(input, leaf, hingesOf(input, leaf), weight);
    return unlessRefused(open) ?? heldStack(input, groups, "shear");
  },
});

function hingesOf({ parts }: ReviewInput, { id }: PanelPart): readonly HardwarePart[] {
  return parts.hardware.filter(({ item, panels }) => item.duty === "hinge" && panels.includes(id));
}

function hungOpen(
  input: ReviewInput,
  { leaf, groups }: DoorHinge,
  apart: number,
  known: Readonly<Record<"shear" | "pull", KnownStrength>>,
): Answer {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const hung = hingesOf(input, leaf).length;
  const fasteners = Math.min(...groups.map(({ count }) => count));
  const weight = leafMass(input, leaf) * standardGravity * dynamicFactor;
  const arm = Math.min(leaf.width, leaf.height) / 2;
  const onEach = {
    shear: newton(weight / hung / fasteners),
    pull: newton((weight * arm) / apart / fasteners),
  };
  const useOf = (strengths: Readonly<Record<"shear" | "pull", Force>>): CombinedInputs => ({
    ...onEach,
    shearStrength: Force.si(strengths.shear / safetyFactor),
    pullStrength: Force.si(strengths.pull / safetyFactor),
    shank: "smooth",
  });
  const line = combinedUse.worked(useOf({ shear: known.shear.strength, pull: known.pull.strength }));
  const style = styleOf(input.case);
  return {
    demand: amount(Ratio, "shear and pull together", line.value),
    capacity: amount(Ratio, "limit", ratio(1)),
    facts: `The open door takes ${Ratio.show(line.value, { unit: "%", digits: 2 })} of what a fastener of its hinges allows. It puts ${Force.show(onEach.shear, style)} of shear and ${Force.show(onEach.pull, style)} of pull on each.`,
    interval: strengthInterval(known, (now) => combinedUse(useOf(now))),
    because: [...known.shear.because, ...known.pull.because, line],
    limit: cite("common-practice", "safety factor of the case file"),
    sources: [cite("statics", "couple of two hinges")],
  };
}

/** Sheet, facing and stiffeners of a door leaf. */
function leafMass(input: ReviewInput, { id, netArea, sheet, facing }: PanelPart): Mass {
  const faced = facing ? facing.stock.thickness * densityOf(input, facing.stock) : 0;
  const stiffeners = stiffenerNames(input, id);
  const wood = massItems(input).filter(({ name }) => stiffeners.has(name));
  const own = netArea * (sheet.thickness * densityOf(input, sheet) + faced);
  return Mass.si(wood.reduce<number>((sum, { mass }) => sum + mass, own));
}

/** Between the outermost hinges, along the panel they hang on. */
function spacingOf(parts: readonly HardwarePart[]): number {
  const places = parts.flatMap(({ on }) => (on ? [on] : []));
  const reach = (axis: "x" | "y"): number =>
    Math.max(...places.map((at) => at[axis])) - Math.min(...places.map((at) => at[axis]));
  return places.length < 2 ? 0 : Math.max(reach("x"), reach("y"));
}

/** Corners, casters and hinges: do their fasteners hold what happens to them on the road? */
import type { Fastening, HardwarePart, PanelPart } from "../../design/index.js";
import { combinedUse, groupPull, groupStrength } from "../../fastening/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Length, Mass, Moment, newton, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { densityOf } from "../masses.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance, stackedBalance } from "../travel/balance.js";
import { verdictOf } from "../verdict.js";
import { type FastenerStrength, fastenerStrength, isKnown } from "./fastener-strength.js";

/** All of them. */
export function hardwareFindings(input: ReviewInput): readonly Finding[] {
  return [...cornerFindings(input), ...casterFindings(input), ...hingeFindings(input)];
}

/** Hardware of one duty, a representative of each item and section. */
function oneOfEach(input: ReviewInput, duty: HardwarePart["item"]["duty"]): readonly HardwarePart[] {
  const parts = input.parts.hardware.filter(({ item }) => item.duty === duty);
  return parts.filter(
    (part, i) =>
      parts.findIndex((one) => one.stock.name === part.stock.name && one.section === part.section) === i,
  );
}

function fasteningsOf({ id }: HardwarePart, { parts }: ReviewInput): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === id);
}

function question(kind: string, { stock, section }: HardwarePart, words: string): Question {
  const subject = `${stock.name} of ${section}`;
  return { id: `joints.${kind}.${section}.${stock.name}`, topic: "joints", subject, question: words };
}

/** A section set down on one corner: its weight with a jolt, shared by all fasteners of that corner. */
function cornerFindings(input: ReviewInput): readonly Finding[] {
  return oneOfEach(input, "protect").flatMap((corner) => {
    const groups = fasteningsOf(corner, input);
    const [first] = groups;
    if (!first) return [];
    const asked = question(
      "corners",
      corner,
      `Do the fasteners of a ${corner.stock.name} hold when ${corner.section} comes down on it?`,
    );
    const strength = fastenerStrength(first, "shear", input);
    if (!isKnown(strength)) return [unknown(asked, strength)];
    const count = groups.reduce((sum, group) => sum + group.count, 0);
    return [guarded(asked, () => cornerReply(input, corner.section, count, strength))];
  });
}

function cornerReply(
  input: ReviewInput,
  section: string,
  count: number,
  { strength, because }: FastenerStrength,
): Reply {
  const { jerk, safetyFactor } = input.case.demands;
  const balance = sectionBalance(input, section);
  const load = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor: jerk });
  const allowed = groupStrength.worked({ each: strength, count, safetyFactor });
  const used = ratio(load.value / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `All of ${section} on one corner, with a jolt, is ${Force.show(load.value, style)}; its ${count} fasteners allow ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    demand: amount(Force, "on one corner", load.value),
    capacity: amount(Force, "its fasteners allow", allowed.value),
    ratio: used,
    because: [balance, load, ...because, allowed],
    cautions: [
      "A real drop is harder than a jolt: this is setting down in a hurry, not falling off a truck.",
    ],
    source: [cite("common-practice", "all weight on one corner for a moment")],
  };
}

/** A caster that strikes a kerb: pushed sideways as hard as it is borne on, at the height of its wheel. */
function casterFindings(input: ReviewInput): readonly Finding[] {
  const casters = input.parts.hardware.filter(({ item }) => item.duty === "roll");
  return oneOfEach(input, "roll").flatMap((caster) => {
    const [fastening] = fasteningsOf(caster, input);
    if (!fastening || fastening.at.length === 0) return [];
    const asked = question(
      "casters",
      caster,
      `Do the fasteners of a ${caster.stock.name} hold when it strikes a kerb?`,
    );
    const strength = fastenerStrength(fastening, "pull", input);
    if (!isKnown(strength)) return [unknown(asked, strength)];
    return [
      guarded(asked, () => casterReply(input, caster, fastening, Math.max(1, casters.length - 1), strength)),
    ];
  });
}

function casterReply(
  input: ReviewInput,
  { stock }: HardwarePart,
  fastening: Fastening,
  touching: number,
  { strength, because }: FastenerStrength,
): Reply {
  const balance = stackedBalance(input);
  // One of four may hang over a dip, so one fewer bears.
  const load = handleForce.worked({ mass: balance.value.mass, handles: touching, dynamicFactor: ratio(1) });
  const prying = Moment.si(load.value * stock.standing);
  const positions = fastening.at.map(({ u, v }) => ({ x: u, y: v }));
  const still = Moment.si(0);
  const ways = [
    groupPull.worked({ positions, pull: Force.si(-load.value), pryingX: prying, pryingY: still }),
    groupPull.worked({ positions, pull: Force.si(-load.value), pryingX: still, pryingY: prying }),
  ].sort((a, b) => b.value.largest - a.value.largest);
  const [worse] = ways as [(typeof ways)[number]];
  const pull = Force.si(Math.max(0, worse.value.largest));
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength, count: 1, safetyFactor });
  const used = ratio(pull / allowed.value);
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(used),
    answer: `Pushed sideways with ${Force.show(load.value, style)} at ${Length.show(stock.standing, style)} below the case, its most loaded fastener is pulled with ${Force.show(pull, style)} of ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).`,
    demand: amount(Force, "pull on one fastener", pull),
    capacity: amount(Force, "one fastener allows", allowed.value),
    ratio: used,
    because: [balance, load, worse, ...because, allowed],
    cautions: ["Lift the case over kerbs: a caster torn out tips the case towards whoever pushes it."],
    source: [
      cite("common-practice", "a kerb strikes as hard as the caster bears"),
      cite("statics", "prying"),
    ],
  };
}

/** A door that hangs open on its hinges: its weight, and the couple that pulls the upper hinge off. */
function hingeFindings(input: ReviewInput): readonly Finding[] {
  return oneOfEach(input, "hinge").flatMap((hinge) => {
    const leaf = input.parts.panels.find(({ id, role }) => role === "leaf" && hinge.panels.includes(id));
    const groups = fasteningsOf(hinge, input);
    const [first] = groups;
    const hinges = input.parts.hardware.filter(
      ({ item, panels }) => item.duty === "hinge" && leaf && panels.includes(leaf.id),
    );
    if (!leaf || !first) return [];
    const asked = question("hinges", hinge, `Do the hinges of ${leaf.id} hold the open door, with a jolt?`);
    const [shear, pull] = [fastenerStrength(first, "shear", input), fastenerStrength(first, "pull", input)];
    if (!isKnown(shear)) return [unknown(asked, shear)];
    if (!isKnown(pull)) return [unknown(asked, pull)];
    const fewest = Math.min(...groups.map(({ count }) => count));
    return [guarded(asked, () => hingeReply(input, leaf, hinges, fewest, shear, pull))];
  });
}

function hingeReply(
  input: ReviewInput,
  leaf: PanelPart,
  hinges: readonly HardwarePart[],
  fasteners: number,
  shear: FastenerStrength,
  pull: FastenerStrength,
): Reply {
  const { jerk, safetyFactor } = input.case.demands;
  const apart = spacingOf(hinges);
  if (apart <= 0) throw new RangeError("two hinges apart from each other are needed to hold a door");
  const weight = leafMass(input, leaf) * standardGravity * jerk;
  const arm = Math.min(leaf.width, leaf.height) / 2;
  const each = { shear: weight / hinges.length / fasteners, pull: (weight * arm) / apart / fasteners };
  const line = combinedUse.worked({
    shear: newton(each.shear),
    pull: newton(each.pull),
    shearStrength: Force.si(shear.strength / safetyFactor),
    pullStrength: Force.si(pull.strength / safetyFactor),
    shank: "smooth",
  });
  const style = styleOf(input.case);
  return {
    verdict: verdictOf(line.value),
    answer: `The open door puts ${Force.show(newton(each.shear), style)} of shear and ${Force.show(newton(each.pull), style)} of pull on each fastener of a hinge: ${Ratio.show(line.value, { unit: "%", digits: 2 })} of what they allow together.`,
    demand: amount(Ratio, "shear and pull together", line.value),
    capacity: amount(Ratio, "limit", ratio(1)),
    ratio: line.value,
    because: [...shear.because, ...pull.because, line],
    cautions: ["Somebody will lean on an open door: give it a stay."],
    source: [cite("statics", "couple of two hinges")],
  };
}

/** Sheet and facing of a door leaf. */
function leafMass(input: ReviewInput, { netArea, sheet, facing }: PanelPart): Mass {
  const faced = facing ? facing.stock.thickness * densityOf(input, facing.stock) : 0;
  return Mass.si(netArea * (sheet.thickness * densityOf(input, sheet) + faced));
}

/** Between the outermost hinges, along the panel they hang on. */
function spacingOf(hinges: readonly HardwarePart[]): number {
  const places = hinges.flatMap(({ on }) => (on ? [on] : []));
  const reach = (axis: "u" | "v"): number =>
    Math.max(...places.map((at) => at[axis])) - Math.min(...places.map((at) => at[axis]));
  return places.length < 2 ? 0 : Math.max(reach("u"), reach("v"));
}

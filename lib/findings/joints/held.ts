/** Whether shelves and what is inside stay on their joints with a jolt: standing, hung overhead, screwed into inserts. */
import {
  type Content,
  type ContentPart,
  type Face,
  type Fastening,
  type SecondHold,
  type ShelfPart,
  secondHoldOf,
} from "../../design/index.js";
import { type CombinedInputs, combinedUse, fastenerTraits, groupStrength } from "../../fastening/index.js";
import {
  type FastenerStrength,
  fastenerStrength,
  type KnownStrength,
  type ReviewInput,
  shelfMass,
  strengthInterval,
  useInterval,
} from "../../model/index.js";
import { handleForce, snatchFactor } from "../../moving/index.js";
import { Force, Length, type Mass, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, counted, showFine, styleOf } from "../amount.js";
import { shelfCaution } from "../cautions.js";
import { heldStack } from "../figures/stack-figures.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { countOf, each, eachShelf, groupsHolding, known, mostOf, strengthOf } from "../subjects.js";

const percent = { unit: "%", digits: 2 } as const;

const fromWords = { tests: "your own tests", formula: "a formula" } as const;

/** Whether a joint holds a mass with a jolt, its fasteners sharing alike. */
function held(
  input: ReviewInput,
  names: readonly string[],
  mass: Mass,
  strength: FastenerStrength,
  words: "pulled" | "sheared",
): Answer {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const count = countOf(names.flatMap((name) => groupsHolding(input, name)));
  const load = handleForce.worked({ mass, handles: 1, dynamicFactor });
  const allowed = groupStrength.worked({ each: strength.strength, count, safetyFactor });
  const style = styleOf(input.case);
  const used = Ratio.show(ratio(load.value / allowed.value), percent);
  return {
    demand: amount(Force, "load with a jolt", load.value),
    capacity: amount(Force, "the joint allows", allowed.value),
    facts: `${counted(count, "fastener", "fasteners")}, ${words} with ${Force.show(load.value, style)}, may carry ${Force.show(allowed.value, style)} (${used} used). Their strength comes from ${fromWords[strength.from]}.`,
    interval: useInterval(load.value, strength, count / safetyFactor),
    because: [load, ...strength.because, allowed],
    limit: cite("common-practice", "safety factor of the case file"),
    sources: [cite("statics", "equal shares")],
  };
}

/** What the fasteners hold that bear a shelf: its ledges where it rests on some, else itself. */
function bearersOf({ shelf, ledges }: ShelfPart): readonly string[] {
  return ledges.length > 0 ? ledges.map(({ id }) => id) : [shelf.name];
}

/** The least that one of the fasteners that bear a shelf stands; a ledge that is only glued has none. */
function weakestBearer(input: ReviewInput, part: ShelfPart): FastenerStrength | MissingMeasurement {
  const strengths = bearersOf(part).map((name) => strengthOf(input, name, "shear"));
  const missing = strengths.find((one): one is MissingMeasurement => "measure" in one);
  if (missing) return missing;
  const found = strengths.filter((one): one is FastenerStrength => !("measure" in one));
  return mostOf(found, ({ strength }) => -strength, `${part.shelf.name}: nothing bears it`);
}

/** Whether shelves stay on their joints, loaded and jolted. */
export const shelfJoints: Question = question({
  id: "joints.shelf",
  about: eachShelf,
  ask: ({ shelf }) => `Do the joints of the ${shelf.name} hold what stands on it, with a jolt?`,
  tier: "strength",
  cautions: [shelfCaution],
  needs: { strength: known(weakestBearer) },
  answer: (input, { strength }, part) => {
    const answer = held(input, bearersOf(part), shelfMass(part), strength, "sheared");
    const ledges = part.ledges.map(({ id }) => id).join(" and ");
    return ledges ? { ...answer, facts: `It rests on ${ledges}. ${answer.facts}` } : answer;
  },
  figure: (input, part, { demand }) =>
    heldStack(
      input,
      bearersOf(part).flatMap((name) => groupsHolding(input, name)),
      "shear",
      demand,
    ),
});

const overhead =
  "Anything overhead can fall on somebody: give it a second, independent hold that bears the whole weight, and check both before every show. A hold that has caught a fall once is spent. Follow local rules for things hung over people.";

/** Something that hangs overhead, and what would catch it. */
interface Hung {
  /** The thing. */
  readonly content: Content;
  /** What would catch it: false for nothing, true where nobody described it. */
  readonly secondHold: boolean | SecondHold;
}

function hungThings({ parts }: ReviewInput): readonly Hung[] {
  return parts.contents.flatMap(({ content }) =>
    content.held.by === "hung" ? [{ content, secondHold: content.held.secondHold }] : [],
  );
}

/** Whether what hangs overhead stays up; without a second hold it never does. */
export const hung: Question = question({
  id: "joints.hung",
  about: each(hungThings, ({ content }) => content.name),
  ask: ({ content }) => `Will the ${content.name} stay up, with a jolt?`,
  tier: "safety",
  cautions: [overhead],
  needs: {
    strength: known((input, { content, secondHold }: Hung) => {
      const strength = strengthOf(input, content.name, "pull");
      // Without a second hold it fails whatever the first may bear.
      return "measure" in strength && secondHold === false ? undefined : strength;
    }),
  },
  answer: (input, { strength }, { content: { name, mass }, secondHold }) => {
    const missing = `The ${name} has no second hold.`;
    if (!strength)
      return {
        plainNo: true,
        facts: missing,
        because: [],
        limit: cite("common-practice", "a second hold bears the fall alone"),
      };
    const answer = held(input, [name], mass, strength, "pulled");
    return secondHold === false
      ? { ...answer, verdict: "fails", facts: `${missing} ${answer.facts}` }
      : answer;
  },
  figure: (input, { content: { name } }, { demand }) =>
    heldStack(input, groupsHolding(input, name), "pull", demand),
});

function describeIt(name: string): MissingMeasurement {
  return {
    measure: `what the second hold of the ${name} bears, and how far it lets it fall`,
    how: 'in its block held write "second hold: { fastener, count, rated, slack, give }": the load on its label, the slack left when it hangs on its first hold, and how far a weight of the rated load stretches it',
  };
}

/** Whether the second hold catches what the first lets go. */
export const secondHolds: Question = question({
  id: "joints.second-hold",
  about: each(
    (input) => hungThings(input).filter(({ secondHold }) => secondHold !== false),
    ({ content }) => content.name,
    ({ content }) => secondHoldOf(content.name),
  ),
  ask: ({ content }) => `Does the second hold catch the ${content.name} when the first lets go?`,
  tier: "safety",
  cautions: [overhead],
  needs: {
    hold: known((input, { content: { name }, secondHold }: Hung) => {
      const [fastening] = groupsHolding(input, secondHoldOf(name));
      return typeof secondHold === "boolean" || !fastening ? describeIt(name) : secondHold;
    }),
    strength: known((input, { content }: Hung) => strengthOf(input, secondHoldOf(content.name), "pull")),
  },
  answer: (input, { hold, strength }, { content }) => snatched(input, content, hold, strength),
  figure: (input, { content: { name } }, { demand }) =>
    heldStack(input, groupsHolding(input, secondHoldOf(name)), "pull", demand),
});

/** The falling weight stretches the hold until its energy is spent: more than the weight, most of all on a stiff hold. */
function snatched(
  input: ReviewInput,
  { name, mass }: Content,
  { rated, slack, give, count }: SecondHold,
  strength: KnownStrength,
): Answer {
  const { safetyFactor } = input.case.demands;
  const weight = mass * standardGravity;
  const snatch = snatchFactor.worked({ slack, give: Length.si((give * weight) / rated) });
  const load = handleForce.worked({ mass, handles: 1, dynamicFactor: snatch.value });
  const allowed = groupStrength.worked({ each: strength.strength, count, safetyFactor });
  const useOf = (one: Force): number =>
    Math.max(load.value / rated, load.value / ((one * count) / safetyFactor));
  const used = ratio(useOf(strength.strength));
  const style = styleOf(input.case);
  const itself = load.value / rated >= load.value / allowed.value;
  const holder = itself ? "the hold itself allows" : "its fasteners allow";
  const capacity = amount(Force, holder, Force.si(load.value / used));
  return {
    demand: amount(Force, "when it is caught", load.value),
    capacity,
    facts: `Caught, the ${name} pulls with ${Force.show(load.value, style)}; ${holder} ${capacity.show(style)} (${Ratio.show(used, percent)}). It falls ${showFine(slack, style)}, and pulls with ${Ratio.show(snatch.value, { digits: 2 })} times its weight.`,
    remedies: [{ words: "Take up the slack, or use a hold that gives more." }],
    interval: strengthInterval({ each: strength }, (now) => useOf(now.each)),
    because: [snatch, load, ...strength.because, allowed],
    limit: cite("common-practice", "a second hold bears the fall alone"),
    sources: [cite("strength-of-materials", "weight falling on a spring")],
  };
}

/** A thing screwed into inserts. */
interface Inserted {
  /** The thing. */
  readonly content: Content;
  /** The side of the case it is screwed to. */
  readonly to: Face;
  /** The inserts that hold it. */
  readonly group: Fastening;
}

function insertedIn(input: ReviewInput, { content }: ContentPart): readonly Inserted[] {
  const { name, held: holding } = content;
  const [group] = groupsHolding(input, name);
  return holding.by === "screws" && group && fastenerTraits[group.fastener.kind].hasInsert
    ? [{ content, to: holding.to, group }]
    : [];
}

const insertedThings: Subjects<Inserted> = each(
  (input) => input.parts.contents.flatMap((part) => insertedIn(input, part)),
  ({ content }) => content.name,
  ({ content }) => `inserts of ${content.name}`,
);

/** Whether inserts hold what is screwed to them, with a jolt, upright or lying. */
export const inserts: Question = question({
  id: "joints.inserts",
  about: insertedThings,
  ask: ({ content }) =>
    `Do the inserts of the ${content.name} hold it with a jolt, whichever way the case lies?`,
  tier: "strength",
  cautions: ["An insert that was run in askew or twice holds little: drill beside it and set a new one."],
  needs: {
    pull: known((input, { group }: Inserted) => fastenerStrength(group, "pull", input)),
    shear: known((input, { group }: Inserted) => fastenerStrength(group, "shear", input)),
  },
  answer: (input, given, thing) => inserted(input, given, thing),
  figure: (input, { group }) => heldStack(input, [group], "pull"),
});

/** Share of a foot between the outer rows of its screws; common practice. */
const rowsApart = 0.8;

/** Forces on one insert, in newtons. */
interface OnEach {
  /** Out of the panel, in newtons. */
  readonly pull: number;
  /** Along the panel, in newtons. */
  readonly shear: number;
}

/** Hanging straight off its panel all pull alike; hanging beside it, all shear and the far half is pried out. */
function loadsOn(
  { size }: Content,
  to: Face,
  weight: number,
  count: number,
): Record<"off" | "beside", OnEach> {
  const { x, y, z } = size;
  const [depth, ...foot] = {
    left: [x, y, z],
    right: [x, y, z],
    front: [y, x, z],
    back: [y, x, z],
    top: [z, x, y],
    bottom: [z, x, y],
  }[to] as [Length, Length, Length];
  const arm = rowsApart * Math.min(...foot);
  const far = Math.max(1, Math.floor(count / 2));
  return {
    off: { pull: weight / count, shear: 0 },
    beside: { pull: (weight * depth) / 2 / arm / far, shear: weight / count },
  };
}

type Strengths<T> = Readonly<Record<"pull" | "shear", T>>;

function inserted(
  input: ReviewInput,
  strengths: Strengths<FastenerStrength>,
  { content, to, group: { count } }: Inserted,
): Answer {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const load = handleForce.worked({ mass: content.mass, handles: 1, dynamicFactor });
  const { off, beside } = loadsOn(content, to, load.value, count);
  const inputs = ({ pull, shear }: OnEach, now: Strengths<Force>): CombinedInputs => ({
    shear: Force.si(shear),
    pull: Force.si(pull),
    shearStrength: Force.si(now.shear / safetyFactor),
    pullStrength: Force.si(now.pull / safetyFactor),
    shank: "threaded",
  });
  const useOf = (now: Strengths<Force>): number =>
    Math.max(...[off, beside].map((way) => combinedUse(inputs(way, now))));
  const bare = { pull: strengths.pull.strength, shear: strengths.shear.strength };
  const used = ratio(useOf(bare));
  const style = styleOf(input.case);
  return {
    demand: amount(Ratio, "shear and pull together", used),
    capacity: amount(Ratio, "limit", ratio(1)),
    facts: `With a jolt the ${content.name} pulls on its ${counted(count, "insert", "inserts")} with ${Force.show(load.value, style)}, ${Ratio.show(used, percent)} of what they allow. Beside its panel each is sheared with ${Force.show(Force.si(beside.shear), style)} and the far ones pulled with ${Force.show(Force.si(beside.pull), style)}. Their strength comes from ${fromWords[strengths.pull.from]}.`,
    interval: strengthInterval(strengths, useOf),
    because: [
      load,
      ...strengths.pull.because,
      ...strengths.shear.because,
      ...[off, beside].map((way) => combinedUse.worked(inputs(way, bare))),
    ],
    limit: cite("en-1995", "8.3.3, eq. 8.28"),
    sources: [cite("statics", "prying over the foot")],
  };
}

/** Whether parts share space: fasteners inside a corner, heads and metal, what stands on the floor, sections, ways. */
import { findOverlaps, middleOfOverlap, overlapsOnWay, reachOfSolid } from "../../assembly/index.js";
import { type Fastening, rulerOf } from "../../design/index.js";
import {
  type CaseMovement,
  type CaseOverlap,
  type CaseSolid,
  caseOverlaps,
  caseSolids,
  classed,
  meantToShare,
  movementOverlaps,
  type OverlapClass,
  type ReviewInput,
  type StackGap,
  stackGaps,
} from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { capitalised, counted, fineAmount, showFine, styleOf } from "../amount.js";
import type { Remedy } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { each, stackedCase, where } from "../subjects.js";
import { placeWords } from "./place.js";
import { shifted } from "./tried.js";

/** Common to all: how far the answer can be trusted. */
const asDrawn =
  "Parts stand where the case file puts them; set tails are 1.5 bodies wide and 1.05 deep, heads and nuts of usual sizes.";

const limit = cite("geometry", "two parts cannot share space");
/** Of what stands on nuts and tails: a battery that rides along is the worst of it. */
function nutCaution({ case: { services } }: ReviewInput): string {
  return services.battery
    ? "A nut wears through the case of a battery on the road and shorts it: keep everything sharp from under one."
    : "A nut wears through what stands on it on the road: keep everything sharp from under it.";
}
/** Of sections set on each other. */
const fingersCaution = "A section that is set down crushes fingers: hold it by its handles, with two people.";
/** Of what is opened and pulled out. */
const movingCaution =
  "A door, drawer or shelf pinches fingers where it passes metal: move it by its pull, and try it empty first.";
/** What decides, told of each. */
const rests = "the places and sizes of the case file and the tables";

/** The answer of a list of overlaps, deepest first. */
function overlapAnswer(
  input: ReviewInput,
  list: readonly CaseOverlap[],
  fine: string,
  remedies: () => readonly Remedy[],
): Answer {
  const [worst, ...rest] = list;
  const told = { because: [], limit, rests };
  if (!worst) return { ...told, facts: fine, ratio: 0 };
  const depth = Length.si(worst.depth);
  const { one, other } = worst;
  const pair = `${capitalised(one.name)} and ${other.name}`;
  const shared = `share ${showFine(depth, styleOf(input.case))} of space`;
  const isLong = `${pair} ${shared}`.split(" ").length > mostWords;
  const many =
    rest.length > 0
      ? ` So ${rest.length === 1 ? "does one other pair" : `do ${rest.length} other pairs`}.`
      : "";
  return {
    ...told,
    plainNo: true,
    demand: fineAmount("deepest shared space", depth),
    facts: `${isLong ? `Two things ${shared}. They are ${one.name} and ${other.name}` : `${pair} ${shared}`}. The place is ${placeWords(input, one.section, middleOfOverlap(worst))}.${many}`,
    remedies: remedies(),
  };
}

/** A longer sentence is told in two. */
const mostWords = 25;

/** So many names are told; more would be no sentence. */
const mostNamed = 2;

function fewOf(names: readonly string[]): string {
  const more = names.length - mostNamed;
  return `${names.slice(0, mostNamed).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** The same solids with some changed, and how many overlaps of a class are left. */
function leftAfter(
  input: ReviewInput,
  kind: OverlapClass,
  change: (solid: CaseSolid) => CaseSolid | undefined,
): readonly CaseOverlap[] {
  const solids = caseSolids(input).solids.map((solid) => change(solid) ?? solid);
  return classed(findOverlaps(solids, meantToShare))[kind];
}

function leftWords(left: readonly CaseOverlap[], { case: build }: ReviewInput): string {
  const [worst] = left;
  if (!worst) return "then none share space";
  return `then ${counted(left.length, "pair shares", "pairs share")} space, at most ${showFine(Length.si(worst.depth), styleOf(build))}`;
}

/** Groups of bars' rivets that stand on the leg that would be shifted. */
function secondLegs({ parts }: ReviewInput): readonly Fastening[] {
  return parts.fastenings.filter(({ holds, panel, why }) => {
    const bar = parts.bars.find(({ id }) => id === holds);
    if (why !== "edge" || !bar) return false;
    return panel === (bar.edge.startsWith("bottom") ? bar.covers[0] : bar.covers[1]);
  });
}

/** Half a pitch of shift on one leg of every bar. */
function halfPitch(input: ReviewInput): (solid: CaseSolid) => CaseSolid | undefined {
  const groups = new Map(secondLegs(input).map((group) => [group.id, group]));
  return (solid) => {
    const group = solid.group === undefined ? undefined : groups.get(solid.group);
    return group && shifted(solid, group, 0.5);
  };
}

function triedHalfPitch(input: ReviewInput, kind: OverlapClass): Remedy {
  const left = leftAfter(input, kind, halfPitch(input));
  return {
    words: `Shift the rivets of one leg of every bar by half a pitch ("stagger: true" of the edges). ${capitalised(leftWords(left, input))}.`,
    gives: [fineAmount("deepest shared space then", Length.si(left[0]?.depth ?? 0))],
  };
}

function has(...kinds: readonly CaseSolid["kind"][]): (input: ReviewInput) => boolean {
  return (input) => caseSolids(input).solids.some(({ kind }) => kinds.includes(kind));
}

const anyFastener = has("fastener");

/** Bodies, tails, nuts and tips against each other. */
export const meetInside: Question = question({
  id: "assembly.inside",
  about: where(anyFastener, stackedCase),
  ask: "Do rivets, screws and bolts pass each other inside the corners?",
  tier: "strength",
  cautions: [],
  assumes: [asDrawn],
  answer: (input) =>
    overlapAnswer(input, caseOverlaps(input).inside, "No two fasteners meet behind their panels.", () =>
      input.parts.bars.length > 0 ? [triedHalfPitch(input, "inside")] : [],
    ),
});

/** Heads against each other, and fasteners against bars, corners, hardware, edges of openings, shelves. */
export const meetHeads: Question = question({
  id: "assembly.heads",
  about: where(anyFastener, stackedCase),
  ask: "Do fasteners keep clear of metal, openings and shelves that they do not hold, and heads of each other?",
  tier: "strength",
  cautions: [],
  assumes: [asDrawn],
  answer: (input) => {
    const list = caseOverlaps(input).heads;
    return overlapAnswer(input, list, "Every fastener has its place to itself.", () => {
      const worst = Math.max(...list.map(({ depth }) => depth));
      return [
        {
          words: `Move the places apart by ${showFine(Length.si(worst), styleOf(input.case))} or more, or take a smaller head.`,
        },
      ];
    });
  },
});

/** Bolts, nuts and tails against what stands on a floor or a shelf. */
export const meetContents: Question = question({
  id: "assembly.under-contents",
  about: where((input) => anyFastener(input) && input.parts.contents.length > 0, stackedCase),
  ask: "Does what rides inside stand clear of bolts, nuts and tails?",
  tier: "strength",
  cautions: (_, input) => [nutCaution(input)],
  assumes: [asDrawn],
  answer: (input) => {
    const list = caseOverlaps(input).contents;
    return overlapAnswer(input, list, "Nothing that rides inside touches a fastener of the case.", () => [
      triedBoard(input),
    ]);
  },
});

/** What touches nuts and tails, and how thick a board must be under it. */
export interface BoardUnder {
  /** Contents that touch a fastener of the case. */
  readonly names: readonly string[];
  /** How far fasteners stand proud under them, m; 0 where none does. */
  readonly high: number;
}

/** The board that contents must stand on, so that nuts and tails have room. */
export function boardUnder(input: ReviewInput): BoardUnder {
  const list = caseOverlaps(input).contents;
  const names = new Set(
    list.flatMap(({ one, other }) =>
      [one, other].filter(({ kind }) => kind === "content").map(({ part }) => part),
    ),
  );
  return { names: [...names], high: proudUnder(input, names, list) };
}

/** Boards under what meets fasteners, as thick as these stand proud there. */
function triedBoard(input: ReviewInput): Remedy {
  const { names: touching, high } = boardUnder(input);
  const names = new Set(touching);
  const left = leftAfter(input, "contents", (solid) => {
    if (!names.has(solid.part)) return undefined;
    const [x, y, z] = solid.place.origin;
    return { ...solid, place: { ...solid.place, origin: [x, y, z + high] } };
  });
  return {
    words: `Stand ${fewOf([...names])} on a board of ${showFine(Length.si(high), styleOf(input.case))} with room for the nuts. ${capitalised(leftWords(left, input))}.`,
    gives: [fineAmount("deepest shared space then", Length.si(left[0]?.depth ?? 0))],
  };
}

/** How far the fasteners that some contents meet reach above the undersides of these, m. */
function proudUnder(input: ReviewInput, names: ReadonlySet<string>, list: readonly CaseOverlap[]): number {
  const met = new Set(list.flatMap(({ one, other }) => [one.part, other.part]));
  const { solids } = caseSolids(input);
  const pieces = solids.filter(({ part, kind }) => kind === "fastener" && met.has(part)).map(reachOfSolid);
  const tops = pieces.map(({ high }) => high[2]);
  const floors = solids.filter(({ part }) => names.has(part)).map((solid) => reachOfSolid(solid).low[2]);
  return Math.max(
    0,
    ...tops.flatMap((top) => floors.map((floor) => top - floor)).filter((by) => by < highest),
  );
}

/** Nuts and tails stand no further above a floor, m; what is higher belongs to another side. */
const highest = 0.05;

/** All other parts of a section against each other. */
export const meetParts: Question = question({
  id: "assembly.parts",
  about: stackedCase,
  ask: "Has every panel, bar, shelf, drawer and content its place to itself?",
  tier: "strength",
  cautions: [],
  assumes: [asDrawn],
  answer: (input) =>
    overlapAnswer(input, caseOverlaps(input).parts, "No two parts share space.", () => [
      { words: "Move one of the two, or make it smaller by what they share." },
    ]),
});

/** What stands proud of a bottom against what stands proud of the top below. */
export const stackGap: Question = question({
  id: "assembly.stack",
  about: each(
    stackGaps,
    ({ above }) => above,
    ({ above, below }) => `${above} on ${below}`,
  ),
  ask: ({ above, below }) => `Does ${above} stand clear of the metal on ${below}?`,
  tier: "handling",
  cautions: [fingersCaution],
  assumes: [asDrawn],
  answer: (input, _, gap) => stackAnswer(input, gap),
});

function stackAnswer(input: ReviewInput, { needed, meet, above }: StackGap): Answer {
  const style = styleOf(input.case);
  const told = { because: [], limit, rests };
  const has = input.case.sections.find(({ name }) => name === above)?.standsOff ?? 0;
  if (needed <= has + 1e-9)
    return {
      ...told,
      facts: `The metal takes ${showFine(Length.si(needed), style)} between the sections; they stand ${showFine(Length.si(has), style)} apart. ${overMetal(input)}`,
      ratio: has > 0 ? needed / has : 0,
    };
  const [one, other] = meet ?? [];
  return {
    ...told,
    plainNo: true,
    demand: fineAmount("metal between the sections", Length.si(needed)),
    capacity: fineAmount("they stand apart", Length.si(has)),
    facts: `${capitalised(one?.name ?? above)} and ${other?.name ?? above} meet first. So ${above} really stands ${showFine(Length.si(needed), style)} higher than its panels alone say.`,
    remedies: [
      {
        words: `Write "stands off: ${Length.show(Length.si(needed), { unit: "mm", digits: 3 })}" into ${above}, so that latches and sizes count it.`,
        gives: [fineAmount("gap between the sections then", Length.si(needed))],
      },
    ],
  };
}

/** Outside sizes with bars, corners and heads. */
function overMetal(input: ReviewInput): string {
  const style = styleOf(input.case);
  const corners = caseSolids(input)
    .solids.filter(({ kind }) => kind === "bar" || kind === "corner")
    .map(({ key }) => key);
  if (corners.length === 0) return "";
  const stock = input.parts.bars.map(({ stock: bar }) => bar.wall);
  const wall = Math.max(0, ...stock);
  const widest = Math.max(...input.parts.sections.map(({ outside }) => outside.size.x));
  const deepest = Math.max(...input.parts.sections.map(({ outside }) => outside.size.y));
  const shown = (value: number): string => Length.show(Length.si(value), style);
  return `Over its bars the case is ${shown(widest + 2 * wall)} wide and ${shown(deepest + 2 * wall)} deep; heads stand further out.`;
}

/** Doors, drawers and shelves on their whole way. */
export const ways: Question = question({
  id: "assembly.way",
  about: each(
    (input) => caseSolids(input).movements,
    ({ id }) => id,
  ),
  ask: ({ words }: CaseMovement) => `Is the way free for ${words}?`,
  tier: "strength",
  cautions: [movingCaution],
  assumes: [
    asDrawn,
    "A door turns about the outside edge of its leaf, and a drawer comes out as far as its slides do.",
  ],
  answer: (input, _, movement) => {
    const list = movementOverlaps(input, movement);
    return overlapAnswer(input, list, "Nothing stands in its way.", () => triedWay(input, movement, list));
  },
});

/** Where a hinge belongs whose fasteners stand in its leaf's way: half its holes in the panel, half in the leaf. */
function hingeOffGap(
  { case: build, parts }: ReviewInput,
  hinges: ReadonlySet<string>,
  pair: readonly CaseSolid[],
): string | undefined {
  const groups = new Set(pair.flatMap(({ group }) => group ?? []));
  const held = parts.fastenings.find(({ id, holds }) => groups.has(id) && hinges.has(holds));
  const part = parts.hardware.find(({ id }) => id === held?.holds);
  const panel = parts.panels.find(({ id, leaf }) => leaf !== undefined && part?.panels.includes(id));
  if (!part || !panel?.leaf) return undefined;
  const { low, hinge, clearance } = panel.leaf;
  const middle = {
    left: low.x - clearance / 2,
    right: low.x + panel.width + clearance / 2,
    bottom: low.y - clearance / 2,
    top: low.y + panel.height + clearance / 2,
  }[hinge];
  const side = hinge === "left" || hinge === "right" ? "left" : "bottom";
  return `Set the middle of ${part.id} over the gap, ${rulerOf(build)(Length.si(middle))} from the ${side} edge of the panel.`;
}

/** Without what it hits first; and how much of its way is free. */
function triedWay(
  input: ReviewInput,
  { parts, hinges, movement }: CaseMovement,
  [worst]: readonly CaseOverlap[],
): readonly Remedy[] {
  const hinge = worst && hingeOffGap(input, hinges, [worst.one, worst.other]);
  const advice = {
    words: hinge ?? `Move ${worst?.other.name ?? "what it hits"}, or make what moves smaller.`,
  };
  if (movement.kind !== "slide") return [advice];
  const { solids } = caseSolids(input);
  const share = [0.75, 0.5, 0.25].find(
    (part) =>
      overlapsOnWay(
        solids.filter((solid) => parts.has(solid.part)),
        solids.filter((solid) => !parts.has(solid.part)),
        { kind: "slide", by: [movement.by[0] * part, movement.by[1] * part, movement.by[2] * part] },
        meantToShare,
      ).length === 0,
  );
  const far = Math.hypot(...movement.by) * (share ?? 0);
  const free = share
    ? `It comes out ${Length.show(Length.si(far), styleOf(input.case))} before it hits anything.`
    : "It does not come out a quarter of its way.";
  return [{ words: free, gives: [fineAmount("free way", Length.si(far))] }, advice];
}

/** The bodies of the case with every spring that any load case uses. */
import { at, under } from "../../algebra/lists.js";
import { isBalanced, type JoinedParts, joinedParts, type PreparedLink, spaceDofs } from "../../fem/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { type BoxModel, boxModel, type ElementTarget } from "./box-model.js";
import { type CaseMasses, caseMasses } from "./case-loads.js";
import { type CaseLink, hardwareLinks, type RefusedLink } from "./hardware-links.js";
import { bearingLinks, lidLinks, sectionNumbers, standLinks, undersideLinks } from "./standing-links.js";

/** Bodies with springs, ready to be loaded. */
export interface JoinedBodies {
  /** The case. */
  readonly input: ReviewInput;
  /** Its bodies. */
  readonly model: BoxModel;
  /** The bodies with every spring that any load case uses. */
  readonly joined: JoinedParts;
  /** Hardware of which no spring could be made. */
  readonly refused: readonly RefusedLink[];
  /** Leaves that neither hinges nor latches keep in their openings: of load cases only their weight is left. */
  readonly loose: readonly LooseLeaf[];
}

/** A leaf that nothing keeps in its opening. */
export interface LooseLeaf {
  /** Its number among the bodies. */
  readonly number: number;
  /** Why, in a builder's words. */
  readonly why: string;
}

/** A case ready for its load cases. */
export interface CaseSystem extends JoinedBodies {
  /** What the bodies weigh, with what rides in them. */
  readonly masses: CaseMasses;
}

/**
 * Sections, doors and all that joins them, on one mesh.
 *
 * @param input the case
 * @param element target of the mesh
 * @throws Refusal that names what is loose, does not touch or lies on no material
 */
export function joinedBodies(input: ReviewInput, elementTarget: ElementTarget): JoinedBodies {
  const model = boxModel(input, elementTarget);
  const { links, refused } = hardwareLinks(input, model);
  const all = [
    ...links,
    ...bearingLinks(input, model),
    ...undersideLinks(input, model),
    ...lidLinks(model),
    ...feetOf(model),
  ];
  const bodies = { input, model, refused, joined: joinedParts(model.parts, all), loose: [] };
  return { ...bodies, loose: sectionNumbers(model).flatMap((number) => looseLeaves(bodies, number)) };
}

/** What keeps a leaf in its opening while its section stands held. */
const keepShut: ReadonlySet<CaseLink["kind"]> = new Set(["hinge", "door latch", "rest", "stand"]);

/** Leaves of a section that stay loose beside those that are held, a leaf latched to its neighbour included. */
function looseLeaves(bodies: JoinedBodies, section: number): readonly LooseLeaf[] {
  const { name } = at(bodies.model.bodies, section);
  const leaves = bodies.model.bodies.flatMap((body, i) =>
    body.section === name && i !== section ? [i] : [],
  );
  const whyLoose = (numbers: readonly number[]): string | undefined => {
    try {
      const some = subsystem(bodies, numbers, ({ kind }) => keepShut.has(kind));
      isBalanced(
        some,
        some.parts.map(({ structure }) => new Float64Array(spaceDofs * structure.nodes.length)),
      );
      return undefined;
    } catch (error) {
      if (error instanceof Refusal) return error.message;
      throw error;
    }
  };
  if (leaves.length === 0 || whyLoose([section]) !== undefined) return [];
  const held = [section];
  if (whyLoose([section, ...leaves]) === undefined) return [];
  for (let found = true; found; ) {
    const next = leaves.find((leaf) => !held.includes(leaf) && whyLoose([...held, leaf]) === undefined);
    found = next !== undefined;
    if (next !== undefined) held.push(next);
  }
  return leaves.flatMap((leaf) => {
    const why = held.includes(leaf) ? undefined : whyLoose([...held, leaf]);
    return why === undefined ? [] : [{ number: leaf, why }];
  });
}

/**
 * Bodies with the masses of a case.
 *
 * @param input the case, which may carry other things than the one the bodies were made of
 * @throws Refusal that names what rides on no material
 */
export function caseSystem(input: ReviewInput, bodies: JoinedBodies): CaseSystem {
  const leftOut = bodies.loose.map(({ number }) => number);
  return { ...bodies, input, masses: caseMasses(input, bodies.model, leftOut) };
}

function feetOf(model: BoxModel): readonly CaseLink[] {
  return sectionNumbers(model).flatMap((number) => standLinks(model, number));
}

/** The spring with what it stands for. */
export function linkOf({ link }: PreparedLink): CaseLink {
  return link as CaseLink;
}

/** Some bodies by themselves: they and the springs between them and to the ground. */
export interface Subsystem extends JoinedParts {
  /** The number of each of its parts in the whole. */
  readonly numbers: readonly number[];
}

/** Whether a load case has a spring. */
export type Uses = (link: Pick<RefusedLink, "kind" | "name" | "from">) => boolean;

/**
 * Takes bodies out of the system, with the springs of a load case.
 *
 * @throws Refusal that says why a spring that it has could not be made
 */
export function subsystem(
  { model, joined, refused }: JoinedBodies,
  numbers: readonly number[],
  uses: Uses,
): Subsystem {
  const several = new Set(numbers.map((number) => at(model.bodies, number).section)).size > 1;
  const missing = refused.find((one) => uses(one) && (one.joins ? several : numbers.includes(one.from.part)));
  if (missing) throw new Refusal(missing.why);
  const place = new Map(numbers.map((number, i) => [number, i]));
  const kept = [...joined.links.entries()].filter(
    ([, link]) => uses(linkOf(link)) && link.ends.every(({ part }) => place.has(part)),
  );
  const links = kept.map(([, { link, ends }]) => ({
    link,
    ends: ends.map((end) => ({ ...end, part: under(place, end.part) })),
  }));
  const of = kept.map(([i]) => i);
  const give = (i: number, j: number): number => joined.give(at(of, i), at(of, j));
  return { parts: numbers.map((number) => at(joined.parts, number)), links, give, numbers };
}

/** A section with the leaves that close its openings, by number. */
export function sectionWithLeaves(system: CaseSystem, section: string): readonly number[] {
  const { bodies } = system.model;
  return everyHeld(system).filter((number) => at(bodies, number).section === section);
}

/** All bodies but the leaves that nothing holds, by number. */
export function everyHeld({ model, loose }: JoinedBodies): readonly number[] {
  return [...model.bodies.keys()].filter((number) => !loose.some((one) => one.number === number));
}

/** The bodies of the case with every spring that any load case uses. */
import { at, under } from "../../algebra/lists.js";
import { type JoinedParts, joinedParts, type PreparedLink } from "../../fem/index.js";
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
  return { input, model, refused, joined: joinedParts(model.parts, all) };
}

/**
 * Bodies with the masses of a case.
 *
 * @param input the case, which may carry other things than the one the bodies were made of
 * @throws Refusal that names what rides on no material
 */
export function caseSystem(input: ReviewInput, bodies: JoinedBodies): CaseSystem {
  return { ...bodies, input, masses: caseMasses(input, bodies.model) };
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
export function sectionWithLeaves({ model: { bodies } }: CaseSystem, section: string): readonly number[] {
  return bodies.flatMap((body, i) => (body.section === section ? [i] : []));
}

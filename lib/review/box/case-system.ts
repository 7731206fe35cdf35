/** The bodies of the case with every spring that any load case uses. */
import { type JoinedParts, joinedParts, type PreparedLink } from "../../fem/index.js";
import type { ReviewInput } from "../review-input.js";
import { type BoxModel, boxModel, type Coarseness } from "./box-model.js";
import { type CaseMasses, caseMasses } from "./case-loads.js";
import { type CaseLink, hardwareLinks } from "./hardware-links.js";
import { bearingLinks, sectionNumbers, standLinks } from "./standing-links.js";

/** A case ready for its load cases. */
export interface CaseSystem {
  readonly input: ReviewInput;
  readonly model: BoxModel;
  readonly masses: CaseMasses;
  readonly joined: JoinedParts;
}

/**
 * Works the case out on one mesh.
 *
 * @param input the case
 * @param coarseness of the mesh
 * @throws RangeError that names what is loose, does not touch or lies on no material
 */
export function caseSystem(input: ReviewInput, coarseness: Coarseness): CaseSystem {
  const model = boxModel(input, coarseness);
  const links = [
    ...hardwareLinks(input, model),
    ...bearingLinks(input, model),
    ...sectionNumbers(model).flatMap((number) => standLinks(model, number)),
  ];
  return { input, model, masses: caseMasses(input, model), joined: joinedParts(model.parts, links) };
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

/** Takes bodies out of the system, with the springs of a load case. */
export function subsystem(
  { joined }: CaseSystem,
  numbers: readonly number[],
  uses: (link: CaseLink) => boolean,
): Subsystem {
  const place = new Map(numbers.map((number, i) => [number, i]));
  const links = joined.links
    .filter((link) => uses(linkOf(link)) && link.ends.every(({ part }) => place.has(part)))
    .map((link) => ({ ...link, ends: link.ends.map((end) => ({ ...end, part: place.get(end.part)! })) }));
  return { parts: numbers.map((number) => joined.parts[number]!), links, numbers };
}

/** A section with the leaves that close its openings, by number. */
export function sectionWithLeaves({ model: { bodies } }: CaseSystem, section: string): readonly number[] {
  return bodies.flatMap((body, i) => (body.section === section ? [i] : []));
}

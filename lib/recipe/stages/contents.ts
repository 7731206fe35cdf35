/** What rides in the case: whether it goes in before the box is closed, and how it is put in. */
import type { ContentPart, Holding, PlacedOpening } from "../../design/index.js";
import { tableOf } from "../../page/index.js";
import type { RecipeBlock } from "../recipe.js";
import { needed, type ShopStep, step, supplies, using } from "../supplies.js";
import { counted } from "../words.js";
import type { Workshop } from "../workshop.js";
import { closedBy, goesInOpen, placeOf } from "./found-order.js";

/** Openings of a section through which things are put in: no drawer and no pane fills them. */
function waysIn(section: string, { parts, case: described }: Workshop): readonly PlacedOpening[] {
  const filled = described.drawers.filter((one) => one.section === section).map(({ opening }) => opening);
  const paned = new Set(parts.panes.map(({ id }) => id));
  return parts.panels
    .filter((panel) => panel.section === section && panel.role === "face")
    .flatMap(({ id, face, openings }) =>
      openings.filter(
        ({ why, name }) =>
          why === "case" && !filled.includes(`${face}.${name}`) && !paned.has(`${id}.${name} pane`),
      ),
    );
}

/** Whether a box passes an opening with two of its sides, turned as it likes but not slanted. */
function passes({ size }: ContentPart["box"], { width, height }: PlacedOpening): boolean {
  const [least = 0, middle = 0] = [size.x, size.y, size.z].sort((a, b) => a - b);
  return least < Math.min(width, height) && middle < Math.max(width, height);
}

/** Contents that go in while the section is open, by the found order; else because no opening lets them in, or a shelf will stand over them. */
export function earlyContents(section: string, workshop: Workshop): readonly ContentPart[] {
  const { parts } = workshop;
  const here = parts.contents.filter(({ content }) => content.section === section);
  if (closedBy(section, workshop) !== undefined)
    return inOrder(
      here.filter(({ content }) => goesInOpen(content.name, section, workshop) === true),
      workshop,
    );
  if ((parts.sections.find(({ name }) => name === section)?.open.length ?? 0) > 0) return [];
  const ways = waysIn(section, workshop);
  const under = ({ box }: ContentPart): boolean =>
    parts.shelves.some(({ shelf, panel }) => shelf.section === section && over(panel.box, box));
  return fromBelow(here.filter((one) => under(one) || !ways.some((opening) => passes(one.box, opening))));
}

/** Contents that go in through an opening when all else is done. */
export function lateContents(workshop: Workshop): readonly ContentPart[] {
  const early = new Set(workshop.parts.sections.flatMap(({ name }) => earlyContents(name, workshop)));
  return inOrder(fromBelow(workshop.parts.contents.filter((one) => !early.has(one))), workshop);
}

/** By the found order; as they come where there is none. */
function inOrder(contents: readonly ContentPart[], workshop: Workshop): readonly ContentPart[] {
  const at = ({ content }: ContentPart): number => placeOf(content.name, content.section, workshop) ?? 0;
  return [...contents].sort((a, b) => at(a) - at(b));
}

/** What stands low and far back goes in first. */
function fromBelow(contents: readonly ContentPart[]): readonly ContentPart[] {
  return [...contents].sort((a, b) => a.box.low.z - b.box.low.z || b.box.low.y - a.box.low.y);
}

function over(shelf: ContentPart["box"], below: ContentPart["box"]): boolean {
  const meets = (axis: "x" | "y"): boolean =>
    shelf.low[axis] < below.low[axis] + below.size[axis] &&
    below.low[axis] < shelf.low[axis] + shelf.size[axis];
  return meets("x") && meets("y") && below.low.z + below.size.z <= shelf.low.z + 1e-6;
}

/** Where things stand, from the inside lower left front corner of their section. */
export function placesTable(
  things: readonly { readonly name: string; readonly at: ContentPart["content"]["at"] }[],
  { rule }: Workshop,
): RecipeBlock {
  return tableOf(
    things,
    [
      { heading: "Thing", cell: ({ name }) => name },
      { heading: "To the right", cell: ({ at }) => rule.length(at.x), align: "right" },
      { heading: "To the back", cell: ({ at }) => rule.length(at.y), align: "right" },
      { heading: "Up", cell: ({ at }) => rule.length(at.z), align: "right" },
    ],
    "Lower left front corners, from the inside lower left front corner of the section",
  );
}

/** The step that puts a content in. */
export function contentStep({ content: { name, section, held } }: ContentPart, workshop: Workshop): ShopStep {
  const base = heldStep(`Put ${name} into ${section}`, name, held);
  const { power, needs } = workshop.case.contents.find((one) => one.name === name) ?? { needs: {} };
  const foam = "foam" in needs && needs.foam ? needs.foam : undefined;
  return using(
    base,
    ...(power !== undefined && power > 0
      ? [
          needed(
            "cable, fuse and terminals",
            "everything that takes power; wired by someone allowed to",
            "as the plan of the wiring says",
          ),
        ]
      : []),
    ...(foam ? [needed(`foam: ${foam.kind}`, "under and beside what rides on foam", `for ${name}`)] : []),
  );
}

function heldStep(place: string, name: string, held: Holding): ShopStep {
  switch (held.by) {
    case "shelf":
      return step`${place}, on "${held.shelf}". Strap it there with ${needed("lashing strap with 2 anchors", "what stands loose", `1 for ${name}`)}.`;
    case "floor":
      return step`${place}, on the floor. Strap it with ${needed("lashing strap with 2 anchors", "what stands loose", `1 for ${name}`)}.`;
    case "strap":
      return using(
        step`${place}. Screw down the anchors and pull ${counted(held.straps, "strap")} tight: ${needed(`strap and anchors for ${name}`, "holding it", `${held.straps}, with 2 anchors each`)}.`,
        supplies.jScrew,
      );
    case "cradle":
      return step`Build ${needed(`cradle for ${name}`, "holding it", "walls of sheet from the offcuts")} and line it with ${needed(`foam: ${held.lining.kind}`, "lining cradles", `for ${name}`)}. ${place}${held.shelf === undefined ? ", on the floor" : `, on "${held.shelf}"`}; close ${needed(`strap or lid over ${name}`, "keeping it in its cradle", "1")}.`;
    case "hung":
      return step`${place}, hung with ${counted(held.count, "fastener")} (${held.fastener}). Clip on ${needed(`cord as second hold for ${name}`, "catching it when its fasteners let go", "1")} before you let go.`;
    case "rivets":
      return step`${place} with ${counted(held.count, "rivet")} (${held.fastener}) through the ${held.to}, set with the ${supplies.riveter}.`;
    case "screws":
      return held.foot === undefined
        ? step`${place} with ${counted(held.count, "screw")} (${held.fastener}) through the ${held.to}, with the ${supplies.jScrew}.`
        : step`${place} with ${needed(`machine screws for the inserts of ${name}`, "holding it", `${held.count}, to the thread of ${held.fastener}`)} into the ${counted(held.count, "insert")} of the ${held.to}.`;
  }
}

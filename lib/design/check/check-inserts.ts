/** Threaded inserts: only where a part says how thick it is, and no longer than their sheet. */
import { fastenerTraits } from "../../fastening/index.js";
import type { CaseBuild, Content } from "../case.js";
import { contentFastenings, cornerFastenings, hardwareFastenings } from "../derive/fastenings.js";
import { sameness } from "../derive/outline.js";
import { type CasePlan, pieceNamed } from "../derive/plan.js";
import type { Fastening } from "../parts.js";
import type { CasePath } from "../read/case-text.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { placePath } from "./check-hardware.js";
import type { Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Every insert that is out of place. */
export function checkInserts(description: CaseBuild, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const tooLong = (groups: readonly Fastening[], path: CasePath): Fault[] =>
    groups.flatMap((group) => longerThanSheet(group, path, plan, ruler));
  return [
    ...plan.spots.flatMap((spot) => tooLong(hardwareFastenings(spot, stock, plan), placePath(spot))),
    ...plan.corners.flatMap((spot) =>
      tooLong(cornerFastenings(spot, stock, plan), ["hardware", spot.item.name, "item"]),
    ),
    ...description.contents.flatMap((content) => [
      ...tooLong(contentFastenings(content, stock, plan), ["contents", content.name, "held", "fastener"]),
      ...checkFoot(content, stock),
    ]),
    ...description.shelves.flatMap(({ name, joint }) =>
      noPlace(joint.fastener, ["shelves", name, "joint", "fastener"], stock),
    ),
  ];
}

function longerThanSheet(
  { fastener, panel }: Fastening,
  path: CasePath,
  plan: CasePlan,
  ruler: Ruler,
): Fault[] {
  const { thickness } = pieceNamed(plan, panel).surface.layout.sheet;
  const { insertLength = 0 } = fastener;
  if (insertLength <= thickness + sameness) return [];
  const expected = `an insert no longer than the sheet of ${panel}, ${ruler(thickness)}`;
  return [{ path, value: `${fastener.name}, ${ruler(insertLength)} long`, expected }];
}

/** The screw of an insert goes through something whose thickness must be known; other fasteners need no such word. */
function checkFoot({ name, held }: Content, stock: Stock): Fault[] {
  if (!("fastener" in held)) return [];
  const path = ["contents", name, "held", "fastener"];
  if (held.by === "rivets" || held.by === "hung") {
    const second = held.by === "hung" && typeof held.secondHold === "object" ? held.secondHold : undefined;
    return [
      ...noPlace(held.fastener, path, stock),
      ...(second
        ? noPlace(second.fastener, ["contents", name, "held", "second hold", "fastener"], stock)
        : []),
    ];
  }
  const insert = isInsert(held.fastener, stock);
  if (insert === (held.foot !== undefined)) return [];
  const expected = insert
    ? "foot, how thick the part is that the screw goes through, with an insert"
    : `an insert beside foot, not "${held.fastener}"`;
  return [{ path: ["contents", name, "held", "foot"], expected }];
}

function noPlace(fastener: string, path: CasePath, stock: Stock): Fault[] {
  return isInsert(fastener, stock)
    ? [{ path, expected: 'no insert here: inserts hold hardware, and contents "by: screws"' }]
    : [];
}

function isInsert(fastener: string, stock: Stock): boolean {
  return fastenerTraits[stockNamed(stock, "fasteners", fastener).kind].hasInsert;
}

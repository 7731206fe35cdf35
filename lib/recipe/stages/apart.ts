/** A section taken apart: its panels and bars moved away from its middle, so that one sees what goes where. */
import { type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { SectionPart } from "../../design/index.js";
import { list, pictureOf } from "../../page/index.js";
import { type GroupBlock, group } from "../recipe.js";
import type { Workshop } from "../workshop.js";

/** How far panels are moved away, as a share of the longest side of the section. */
const gap = 0.3;

/** A picture of the section of most pieces taken apart, with the codes of what is drawn. */
export function apartBlocks(workshop: Workshop): GroupBlock[] {
  const { parts, pieces, solids } = workshop;
  const count = ({ name }: SectionPart): number =>
    [...parts.panels, ...parts.bars].filter(({ section }) => section === name).length;
  const [most] = [...parts.sections].sort((one, other) => count(other) - count(one));
  if (!most || !solids) return [];
  const drawn = solids.solids.flatMap((solid) => {
    const away = movedAway(solid.part, most, workshop);
    if (away === undefined || !/^(sheet|leaf|bar)$/.test(solid.kind)) return [];
    const { origin } = solid.place;
    return [{ ...solid, place: { ...solid.place, origin: vector3((i) => origin[i] + away[i]) } }];
  });
  if (drawn.length === 0) return [];
  const there = new Set(drawn.map(({ part }) => part));
  const codes = [...pieces.panels, ...pieces.bars]
    .filter(({ name }) => there.has(name))
    .map(({ code, name }) => `${code} ${name.replace(`${most.name}.`, "")}`);
  const rows = Array.from({ length: Math.ceil(codes.length / 4) }, (_, i) =>
    codes.slice(4 * i, 4 * i + 4).join(", "),
  );
  const picture = pictureOf(drawn, {
    description: `The panels and bars of ${most.name}, each moved straight away.`,
    from: { around: 33, above: 32 },
  });
  return [{ ...group(`${most.name}, taken apart`, picture, list(rows)), pictureBeside: true }];
}

/** Where a panel or a bar is moved: straight away from the middle, along each side of which it lies at the end. */
function movedAway(part: string, { name, outside }: SectionPart, { parts }: Workshop): Vector3 | undefined {
  const panel = parts.panels.find(({ id, section }) => id === part && section === name);
  const bar = parts.bars.find(({ id, section }) => id === part && section === name);
  const middle = panel ? boxMiddle(panel.box) : bar?.centroid;
  if (!middle) return undefined;
  const whole = boxMiddle(outside);
  const far =
    gap * Math.max(outside.size.x, outside.size.y, outside.size.z) * (panel?.role === "leaf" ? 1.6 : 1);
  const along = (axis: "x" | "y" | "z"): number => {
    const share = (middle[axis] - whole[axis]) / (outside.size[axis] / 2);
    return Math.abs(share) > 0.75 ? Math.sign(share) * far : 0;
  };
  return [along("x"), along("y"), along("z")];
}

function boxMiddle({ low, size }: SectionPart["outside"]): Readonly<Record<"x" | "y" | "z", number>> {
  return { x: low.x + size.x / 2, y: low.y + size.y / 2, z: low.z + size.z / 2 };
}

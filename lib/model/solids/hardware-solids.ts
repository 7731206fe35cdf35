/** The solids of bars and hardware: legs, flanges, dishes, casters with the circle that they swivel in, slides. */
import {
  type BarPart,
  type CaseAxis,
  type DrawerPart,
  type Face,
  faceAxes,
  facesAt,
  frameOf,
  type HardwarePart,
  type PanelPart,
  type PieceFrame,
  type Point,
  type SectionPart,
  type ShelfPart,
} from "../../design/index.js";
import type { Point2 } from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import type { CaseSolid, SolidKind } from "./case-solid.js";
import { block, boxPrism, type Prism, rod } from "./prisms.js";

const axisNames: readonly CaseAxis[] = ["x", "y", "z"];

/** The legs of every bar: the inner corner of the angle lies on the section's outside edge. */
export function barSolids({ parts }: ReviewInput): readonly CaseSolid[] {
  return parts.bars.flatMap((bar) => {
    const section = sectionOf(parts.sections, bar.section);
    return section ? legsOf(bar, section) : [];
  });
}

function sectionOf(sections: readonly SectionPart[], name: string): SectionPart | undefined {
  return sections.find((section) => section.name === name);
}

/** The first leg takes the corner; the second ends at it. */
function legsOf({ id, section, edge, stock, length }: BarPart, { outside }: SectionPart): CaseSolid[] {
  const [first, second] = facesAt(edge);
  const { leg, wall } = stock;
  const along = axisNames.find(
    (axis) => axis !== faceAxes[first].normal && axis !== faceAxes[second].normal,
  ) as CaseAxis;
  const spans = (face: Face, off: number, to: number): readonly [CaseAxis, readonly [number, number]] => {
    const { normal, end } = faceAxes[face];
    const edgeAt = outside.low[normal] + (end === "high" ? outside.size[normal] : 0);
    const out = end === "high" ? 1 : -1;
    const [a, b] = [edgeAt + out * off, edgeAt + out * to];
    return [normal, [Math.min(a, b), Math.max(a, b)]];
  };
  const from = outside.low[along] + (outside.size[along] - length) / 2;
  const legOn = (face: Face, other: Face, corner: number, key: string): CaseSolid => {
    const reach = new Map([spans(face, 0, wall), spans(other, corner, wall - leg)]);
    reach.set(along, [from, from + length]);
    return {
      ...spanned(reach),
      ...{ key: `${id} ${key}`, part: id, name: `bar ${id}`, section, kind: "bar", joins: [] },
    };
  };
  return [legOn(first, second, wall, `leg on ${first}`), legOn(second, first, 0, `leg on ${second}`)];
}

/** The box between two places along each axis. */
function spanned(reach: ReadonlyMap<CaseAxis, readonly [number, number]>): Prism {
  const at = (axis: CaseAxis): readonly [number, number] => reach.get(axis) ?? [0, 0];
  const point = (pick: (span: readonly [number, number]) => number): Point =>
    Object.fromEntries(axisNames.map((axis) => [axis, pick(at(axis))])) as unknown as Point;
  return boxPrism({ low: point(([low]) => low), size: point(([low, high]) => high - low) });
}

/** Every piece of hardware. Of a stay nobody says where it is, so it has none. */
export function hardwareSolids(input: ReviewInput): readonly CaseSolid[] {
  const { parts } = input;
  return parts.hardware.flatMap((part): readonly CaseSolid[] => {
    if (part.item.duty === "slide") return slideSolids(part, input);
    if (part.stock.kind === "corner" && !part.on) return cornerSolids(part, input);
    const panel = parts.panels.find(({ id }) => id === facePanelOf(part));
    if (!part.on || !part.size || !panel) return [];
    return spotSolids(part, panel, input);
  });
}

/** The panel of the face that hardware is on, in whose axes its centre is. */
function facePanelOf({ item, id, section }: HardwarePart): string | undefined {
  if ("cornersOf" in item.places) return undefined;
  const place = item.places[Number(id.slice(item.name.length + 1)) - 1];
  return place && `${section}.${place.face}`;
}

function spotSolids(part: HardwarePart, panel: PanelPart, input: ReviewInput): readonly CaseSolid[] {
  const { id, stock, section, on, size } = part;
  if (!on || !size) return [];
  const frame = frameOf(panel);
  const top = panel.sheet.thickness + (panel.facing ? panel.facing.stock.thickness : 0);
  const { width, height } = size;
  const turned = width !== stock.width;
  const kind: SolidKind = stock.kind === "caster" ? "caster" : stock.standing > 0 ? "foot" : "hardware";
  const own = { part: id, name: id, section, kind, joins: [] } as const;
  const flange: CaseSolid = {
    ...block(frame, { left: on.x - width / 2, bottom: on.y - height / 2, width, height }, [
      top,
      top + stock.flange,
    ]),
    ...own,
    key: `${id} flange`,
  };
  const [cutWidth, cutHeight] = turned
    ? [stock.cutHeight, stock.cutWidth]
    : [stock.cutWidth, stock.cutHeight];
  const dish = stock.dish ?? 0;
  const below: CaseSolid[] =
    dish > 0 && cutWidth > 0
      ? [
          {
            ...block(
              frame,
              { left: on.x - cutWidth / 2, bottom: on.y - cutHeight / 2, width: cutWidth, height: cutHeight },
              [top - dish, top],
            ),
            ...own,
            key: `${id} dish`,
          },
        ]
      : [];
  const standing = standingSolid(part, input);
  const under = standing ? [{ ...standing(frame, on, top), ...own, key: `${id} under it` }] : [];
  return [flange, ...below, ...under];
}

/** Wheel over the height of its caster where nobody says how large it is; common practice, no source. */
const wheelShare = 0.8;

/** What stands under the case: the circle that a caster's wheel swivels in, as high as the wheel, or the block of a foot. */
function standingSolid({ stock, size }: HardwarePart, { case: build }: ReviewInput) {
  const { standing, flange, offset = 0, kind } = stock;
  if (!(standing > flange) || !size) return undefined;
  const { width, height } = size;
  const named = build.leftOut.includes("journey") ? undefined : build.journey.wheel;
  const wheel = Math.min(named ?? wheelShare * standing, standing - flange);
  return (frame: PieceFrame, centre: Point2, top: number): Prism =>
    kind === "caster"
      ? rod(frame, centre, 2 * offset + wheel, [top + standing - wheel, top + standing])
      : block(frame, { left: centre.x - width / 2, bottom: centre.y - height / 2, width, height }, [
          top + flange,
          top + standing,
        ]);
}

/** Three plates that meet at the section's outside corner. */
function cornerSolids(part: HardwarePart, { parts }: ReviewInput): readonly CaseSolid[] {
  const { id, section, stock, panels } = part;
  const box = sectionOf(parts.sections, section)?.outside;
  if (!box) return [];
  const faces = panels.map((panel) => panel.slice(panel.lastIndexOf(".") + 1) as Face);
  return faces.map((face, i): CaseSolid => {
    const reach = new Map<CaseAxis, readonly [number, number]>();
    for (const [j, other] of faces.entries()) {
      const { normal, end } = faceAxes[other];
      const edge = box.low[normal] + (end === "high" ? box.size[normal] : 0);
      const out = end === "high" ? 1 : -1;
      const upright = faceAxes[face].v.axis === normal;
      const leg = upright ? stock.height : stock.width;
      const [a, b] = i === j ? [0, stock.flange] : [stock.flange - leg, j > i ? stock.flange : 0];
      reach.set(normal, [Math.min(edge + out * a, edge + out * b), Math.max(edge + out * a, edge + out * b)]);
    }
    return {
      ...spanned(reach),
      ...{ key: `${id} on ${face}`, part: id, name: id, section, kind: "corner", joins: [] },
    };
  });
}

/** The two slides beside what runs on them. */
function slideSolids({ id, stock, section }: HardwarePart, input: ReviewInput): readonly CaseSolid[] {
  const { parts } = input;
  const name = id.replace(/^slides of /, "");
  const drawer = parts.drawers.find((one) => one.drawer.name === name && one.drawer.section === section);
  const shelf = parts.shelves.find((one) => one.shelf.name === name && one.shelf.section === section);
  const carried = drawer ? drawerRun(drawer) : shelf && shelfRun(shelf);
  const room = stock.sideRoom ?? 0;
  if (!carried || room <= 0) return [];
  const { low, size, along, level } = carried;
  const other = along === "x" ? "y" : "x";
  const high = Math.min(stock.height, size.z);
  const from = low.z + (level === "under" ? 0 : (size.z - high) / 2);
  const long = Math.min(stock.width, size[along]);
  const start = carried.front === "low" ? low[along] : low[along] + size[along] - long;
  return (["low", "high"] as const).map((end): CaseSolid => {
    const at = end === "low" ? low[other] - room : low[other] + size[other];
    const reach = new Map<CaseAxis, readonly [number, number]>([
      [along, [start, start + long]],
      [other, [at, at + room]],
      ["z", [from, from + high]],
    ]);
    const key = `${id} ${end === "low" ? 1 : 2}`;
    return { ...spanned(reach), ...{ key, part: id, name: id, section, kind: "runner", joins: [] } };
  });
}

/** The box that runs, and the way it runs. */
interface Run {
  /** Its lower left front corner. */
  readonly low: Point;
  /** Its width, depth and height. */
  readonly size: Point;
  /** The axis that it runs along. */
  readonly along: "x" | "y";
  /** The end at which it comes out. */
  readonly front: "low" | "high";
  /** Whether slides sit beside its middle or from its underside up. */
  readonly level: "middle" | "under";
}

function drawerRun({ face, panels }: DrawerPart): Run | undefined {
  const bottom = panels.find(({ id }) => id.endsWith(".bottom"))?.box;
  const side = panels.find(({ id }) => id.endsWith(" side"))?.box;
  if (!bottom || !side) return undefined;
  const { normal, end } = faceAxes[face];
  return {
    low: bottom.low,
    size: { ...bottom.size, z: side.size.z },
    along: normal === "x" ? "x" : "y",
    front: end,
    level: "middle",
  };
}

function shelfRun({ panel: { box } }: ShelfPart): Run {
  return { ...box, along: "y", front: "low", level: "under" };
}

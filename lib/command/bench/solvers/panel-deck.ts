import type { BoxPlace } from "../../reference/fe/box-file.js";
import type { CaseBox, CaseCutout, CasePlace, PanelCase } from "../../reference/fe/case-file.js";
import { type Deck, GridBuilder, gridLines, patchShares } from "./deck.js";

/** Places nearer than this are one, mm. */
const same = 1e-6;

/** Whether a panel can be cut in straight rows: sharp rectangles only, one sheet throughout. */
export function isStraight({ geometry, regions }: PanelCase): boolean {
  const plain = regions.every(({ kind, name }) => (kind ?? name) === "patch");
  return plain && geometry.cutouts.every((cutout) => cutout.type === "rect" && !cutout.r);
}

/**
 * A panel case for the general solver.
 *
 * @param found a straight case
 * @param size of elements, mm
 */
export function panelDeck(found: PanelCase, size: number): Deck {
  const { geometry, material, thickness, grain_deg, load } = found;
  const patch = found.regions.find(({ kind, name }) => (kind ?? name) === "patch")?.region;
  const boxes = [...geometry.cutouts.filter(isRectangle), ...(patch ? [patch] : [])];
  const columns = gridLines(
    geometry.length,
    boxes.flatMap(({ x, w }) => [x, x + w]),
    size,
  );
  const rows = gridLines(
    geometry.width,
    boxes.flatMap(({ y, h }) => [y, y + h]),
    size,
  );
  const grid = new GridBuilder();
  const cut = geometry.cutouts.filter(isRectangle);
  const elements = grid.addFace(
    columns,
    rows,
    (x, y) => [x, y, 0],
    (x, y) => !cut.some((box) => covers(box, [x, y])),
  );
  const angle = (grain_deg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const loaded = patch ? elements.filter((element) => covers(patch, middleOf(grid, element))) : [];
  const shares = load.type === "patch" ? [...patchShares(grid, loaded)] : [];
  return {
    grid,
    sheets: [
      {
        elements,
        axes: [
          [c, s, 0],
          [-s, c, 0],
        ],
      },
    ],
    material,
    thickness,
    held: held(found, grid.nodes),
    forces: shares.map(([node, share]) => [node, 3, share * (load.type === "patch" ? load.F : 0)]),
    pressure: load.type === "pressure" ? load.q : 0,
  };
}

function isRectangle(cutout: CaseCutout): cutout is Extract<CaseCutout, { type: "rect" }> {
  return cutout.type === "rect";
}

function covers({ x, y, w, h }: CaseBox, [px, py]: CasePlace): boolean {
  return px > x && px < x + w && py > y && py < y + h;
}

function middleOf({ nodes, elements }: GridBuilder, element: number): CasePlace {
  const [a, , b] = elements[element]!.map((node) => nodes[node]!);
  return [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];
}

/** Supported edges hold only down; without a clamped one, three more supports keep the panel from drifting. */
function held({ edges }: PanelCase, nodes: readonly BoxPlace[]): Deck["held"] {
  const onEdges = edges.flatMap(({ segment, type }) =>
    nodes.flatMap((place, node) =>
      isOn(segment, place) ? [[node, type === "ss" ? 3 : 1, type === "ss" ? 3 : 6] as const] : [],
    ),
  );
  if (edges.some(({ type }) => type === "clamped")) return onEdges;
  const first = nodes.reduce(
    (best, place, node) => (place[0] + place[1] < sum(nodes[best]!) ? node : best),
    0,
  );
  const farthest = nodes.reduce((best, place, node) => (place[0] > nodes[best]![0] ? node : best), 0);
  return [...onEdges, [first, 1, 2], [farthest, 2, 2]];
}

function sum(place: BoxPlace): number {
  return place[0] + place[1];
}

function isOn([from, to]: readonly [CasePlace, CasePlace], place: BoxPlace): boolean {
  return ([0, 1] as const).every(
    (axis) =>
      place[axis] > Math.min(from[axis], to[axis]) - same &&
      place[axis] < Math.max(from[axis], to[axis]) + same,
  );
}

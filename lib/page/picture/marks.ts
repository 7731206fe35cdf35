/** Signs on the parts of a picture: each where there is most room on what is seen of its part, none on another. */
import type { Verdict } from "../../findings/index.js";
import type { CaseSolid } from "../../model/index.js";
import type { Point2 } from "../../shape/index.js";
import type { Camera } from "./camera.js";
import type { Page } from "./page-of-picture.js";
import type { PictureMark } from "./picture-view.js";
import { type Prism, prismOf, reach } from "./prism.js";
import type { SeenGrid } from "./seen.js";
import { edgesOf } from "./surfaces.js";

/** A sign that is asked for. */
export interface MarkRequest {
  /** Id of the part. */
  readonly part: string;
  /** What the sign says. */
  readonly verdict: Verdict;
  /** Written beside the sign. */
  readonly text: string;
}

/** Where signs may stand. */
export interface Ground {
  /** Every surface in its order, with its solid. */
  readonly all: readonly { readonly solid: CaseSolid }[];
  /** Where each is seen. */
  readonly grid: SeenGrid;
  /** The picture's page. */
  readonly page: Page;
  /** Every solid, drawn or not. */
  readonly solids: readonly CaseSolid[];
  /** The eye. */
  readonly camera: Camera;
}

/** A sign in its place, with the outline of a part that nothing is seen of. */
export interface PlacedMark {
  /** The sign. */
  readonly mark: PictureMark;
  /** To be drawn in broken line. */
  readonly hidden: readonly Prism[];
}

/** Room that a sign with its words takes around its middle, in the picture's units. */
export const markRoom = 62;

/** Signs in their places; one for a part that is not there is left out. */
export function placedMarks(requests: readonly MarkRequest[], ground: Ground): readonly PlacedMark[] {
  const placed: PlacedMark[] = [];
  for (const { part, verdict, text } of requests) {
    const taken = placed.map(({ mark }) => mark.at);
    const found = onPart(part, taken, ground) ?? onHidden(part, ground);
    if (found) placed.push({ mark: { verdict, text, at: rounded(found.at) }, hidden: found.hidden });
  }
  return placed;
}

/** A place with what has to be drawn for it. */
interface Found {
  /** In the picture's units. */
  readonly at: Point2;
  /** To be drawn in broken line. */
  readonly hidden: readonly Prism[];
}

function onPart(part: string, taken: readonly Point2[], { all, grid, page }: Ground): Found | undefined {
  const own = new Set(all.flatMap(({ solid }, i) => (solid.part === part ? [i] : [])));
  const fine = grid.width / page.width;
  const scaled = ({ x, y }: Point2, by: number): Point2 => ({ x: x * by, y: y * by });
  const off = taken.map((at) => scaled(at, fine));
  const at = grid.roomiest(own, off, markRoom * fine) ?? grid.roomiest(own, [], 0);
  return at && { at: scaled(at, 1 / fine), hidden: [] };
}

function onHidden(part: string, { solids, page, camera }: Ground): Found | undefined {
  const hidden = solids.filter((solid) => solid.part === part).map(prismOf);
  if (hidden.length === 0) return undefined;
  const points = hidden.flatMap((prism) => edgesOf(prism, camera).flat());
  const { left, right, bottom, top } = reach(points);
  return { at: page.place({ x: (left + right) / 2, y: (bottom + top) / 2 }), hidden };
}

function rounded({ x, y }: Point2): Point2 {
  return { x: Math.round(x), y: Math.round(y) };
}

/** A picture of solids from a side or a corner: what is hidden stays hidden, what fails is marked, sizes stand beside it. */
import type { Vector3 } from "../../algebra/matrix3.js";
import type { CaseSolid, SolidKind } from "../../model/index.js";
import type { Point2 } from "../../shape/index.js";
import { type Camera, cameraOf, type NamedSight, projected, type Sight } from "./camera.js";
import { type MarkRequest, placedMarks } from "./marks.js";
import { type Coat, paintingOrder } from "./order.js";
import { fitted, type Page } from "./page-of-picture.js";
import type { PartLook, PictureFace, PictureView, Stuff } from "./picture-view.js";
import { prismOf } from "./prism.js";
import { SeenGrid } from "./seen.js";
import { type SizeRequest, sizeLines } from "./size-lines.js";
import { standIns } from "./stand-ins.js";
import { edgesOf, type Surface, surfacesOf } from "./surfaces.js";

/** What a picture shows. */
export interface PictureRequest {
  /** Stands over it; default nothing. */
  readonly title?: string;
  /** What it shows, for a reader who cannot see it. */
  readonly description: string;
  /** A side, a corner, or degrees around and above; default the front right corner. */
  readonly from?: NamedSight | Sight;
  /** The look of a part, undefined to leave it out; default all but laminate, fasteners and what rides inside, as they are. */
  readonly look?: (solid: CaseSolid) => PartLook | undefined;
  /** Signs on parts, by the part's id; one that nothing is seen of is drawn in broken line. */
  readonly marks?: readonly MarkRequest[];
  /** Arrows between places of the case, m. */
  readonly arrows?: readonly {
    /** Its tail. */
    readonly from: Vector3;
    /** Its head. */
    readonly to: Vector3;
    /** Written at its tail. */
    readonly text?: string;
  }[];
  /** Sizes over all that is drawn, with the words to write. */
  readonly sizes?: readonly SizeRequest[];
}

const stuffs: Readonly<Record<SolidKind, Stuff>> = {
  sheet: "wood",
  leaf: "wood",
  shelf: "wood",
  drawer: "wood",
  stiffener: "wood",
  strip: "wood",
  laminate: "wood",
  pane: "glass",
  bar: "metal",
  corner: "metal",
  hardware: "metal",
  caster: "metal",
  foot: "metal",
  runner: "metal",
  fastener: "fastener",
  content: "content",
};

/** What a picture shows unless asked otherwise: laminate and fasteners are too thin to see, contents are hidden. */
export function usualLook({ kind }: Pick<CaseSolid, "kind">): PartLook | undefined {
  return kind === "laminate" || kind === "fastener" || kind === "content" ? undefined : "plain";
}

/**
 * The front corner from which more is seen of what is cut out of the walls, hung in them or fixed to them; the right one
 * of equals.
 */
export function tellingCorner(solids: readonly CaseSolid[]): NamedSight {
  const wall = /\.(left|right)\b/;
  const told = (side: string): number =>
    solids.reduce((sum, { part, holes, kind }) => {
      const on = wall.exec(part)?.[1] === side;
      return sum + (on && kind === "leaf" ? 1 : 0) + (on && kind === "sheet" ? holes.length : 0);
    }, 0);
  return told("left") > told("right") ? "front left" : "front right";
}

/** A surface with the part that it is of. */
interface Painted {
  /** The solid. */
  readonly solid: CaseSolid;
  /** Its look. */
  readonly look: PictureFace["look"];
  /** The surface, in the picture's units, y down. */
  readonly surface: Surface;
}

/**
 * A picture of solids, hidden lines removed. It is plain data: `show(picture)` in a notebook, `viewHtml(picture)` on a
 * page, `pictureSvg(picture)` for the markup alone; none of them needs more than a browser has.
 *
 *     // The whole case, its sizes, and a numbered cross on a panel that fails:
 *     pictureOf(job.review.solids.solids, {
 *       description: "The case from its front right corner.",
 *       sizes: [{ along: "x", text: "775 mm" }, { along: "y", text: "622 mm" }, { along: "z", text: "1375 mm" }],
 *       marks: [{ part: "upper.front", verdict: "fails", text: "1" }],
 *     });
 *
 *     // A stage of its assembly: what stands is grey, what is added is bold, the rest is left out.
 *     pictureOf(solids, {
 *       description: "The back goes onto the bottom.",
 *       from: "front left",
 *       look: ({ part }) => (added.has(part) ? "added" : standing.has(part) ? "there" : undefined),
 *     });
 *
 * @throws RangeError where nothing is to be drawn
 */
export function pictureOf(solids: readonly CaseSolid[], request: PictureRequest): PictureView {
  const { look = usualLook, from = "front right", title = "", description } = request;
  const camera = cameraOf(from);
  const prisms = solids.flatMap((solid) => {
    const looks = look(solid);
    return looks ? standIns(solid).map((one) => ({ prism: prismOf(one), look: looks })) : [];
  });
  const filled = prisms.filter((one) => one.look !== "broken line").map(({ prism }) => prism);
  if (prisms.length === 0) throw new RangeError("picture: nothing to draw");
  const looks = new Map(prisms.map(({ prism, look: of }) => [prism.solid.key, of]));
  const all = paintingOrder(filled, camera.toEye).flatMap((coat) => painted(coat, looks, camera));
  const places = prisms.flatMap(({ prism }) => edgesOf(prism, camera).flat());
  const sizes = sizeLines(request.sizes ?? [], filled, camera);
  const arrows = (request.arrows ?? []).map(({ from: tail, to, ...text }) => ({
    ...text,
    from: projected(camera, tail),
    to: projected(camera, to),
  }));
  const page = fitted(places, [...sizes, ...arrows]);
  const grid = gridOf(all, page);
  const seen = grid.seen();
  const signs = placedMarks(request.marks ?? [], { all, grid, page, solids, camera });
  const hidden = [
    ...prisms.filter((one) => one.look === "broken line").map(({ prism }) => prism),
    ...signs.flatMap((sign) => sign.hidden),
  ];
  return {
    ...{ kind: "picture", title, description, width: page.width, height: page.height },
    faces: seenOf(all, seen, grid, page).map((one) => faceOf(one, page)),
    added: addedShare(all, seen),
    hidden: hidden.flatMap((prism) => edgesOf(prism, camera).map(page.numbers)),
    marks: signs.map(({ mark }) => mark),
    arrows: arrows.map((one) => ({ ...one, from: page.place(one.from), to: page.place(one.to) })),
    sizes: sizes.map((one) => ({ ...one, from: page.place(one.from), to: page.place(one.to) })),
  };
}

function painted(
  coat: Coat<CaseSolid>,
  looks: ReadonlyMap<string, PartLook>,
  camera: Camera,
): readonly Painted[] {
  const { solid } = coat.prism;
  const look = looks.get(solid.key);
  if (look === undefined || look === "broken line") return [];
  return surfacesOf(coat, camera).map((surface) => ({ solid, look, surface }));
}

/** Points of the grid on which is found what is seen, over the picture's own units. */
const fineness = 0.7;

function gridOf(all: readonly Painted[], page: Page): SeenGrid {
  const grid = new SeenGrid(page.width * fineness, page.height * fineness);
  for (const [i, { surface }] of all.entries()) grid.paint(i, onGrid(surface, page));
  return grid;
}

function onGrid({ areas }: Surface, page: Page): readonly (readonly Point2[])[] {
  return areas.map((points) =>
    points.map((point) => {
      const { x, y } = page.place(point);
      return { x: x * fineness, y: y * fineness };
    }),
  );
}

/** What something is seen of; a sliver that falls between the grid's points is kept unless its edges are covered. */
function seenOf(
  all: readonly Painted[],
  seen: ReadonlyMap<number, number>,
  grid: SeenGrid,
  page: Page,
): readonly Painted[] {
  return all.filter((one, i) => seen.has(i) || !grid.covered(i, onGrid(one.surface, page)));
}

function addedShare(all: readonly Painted[], seen: ReadonlyMap<number, number>): number {
  const points = (wanted: (one: Painted) => boolean): number =>
    all.reduce((sum, one, i) => sum + (wanted(one) ? (seen.get(i) ?? 0) : 0), 0);
  return (
    points(({ look }) => look === "added") /
    Math.max(
      1,
      points(() => true),
    )
  );
}

function faceOf({ solid, look, surface: { areas, lines, light } }: Painted, page: Page): PictureFace {
  return {
    part: solid.part,
    look,
    stuff: stuffs[solid.kind],
    light: Math.round(light * 8) / 8,
    areas: areas.map(page.numbers),
    ...(lines ? { lines: lines.map(page.numbers) } : {}),
  };
}

/** A section of the case, or a door leaf, as a box for the solver, and where its panels' places lie in it. */
import type { Face, PanelPart, PlacedOpening } from "../../design/index.js";
import {
  type BoxFace,
  type BoxProblem,
  type BoxSpot,
  type Cutout,
  extents,
  type FaceName,
  frames,
  looksOut,
  type Sheet,
  type SheetRegion,
} from "../../fem/index.js";
import { Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import {
  circleOf,
  counterclockwise,
  onCircle,
  type Point2,
  polygon,
  reachOf,
  roundedBoxOf,
  sampled,
} from "../../shape/index.js";
import type { ReviewInput } from "../review-input.js";
import { panelSheet } from "../stiffness/panel-stiffness.js";
import { stiffenedZones } from "../stiffness/stiffened.js";
import { edgeJoints } from "./edge-joints.js";
import { boxFaces, minus, perAxis, placed, spotOf } from "./places.js";

/** Where a place of a panel lies. */
export interface FacePlace {
  /** The face of the box. */
  readonly face: FaceName;
  /** The place on that face, in its own two axes, m. */
  readonly spot: Point2;
}

/** One body of the case. */
export interface BoxBody {
  /** The section's name, or the leaf's. */
  readonly name: string;
  /** The section it is, or closes. */
  readonly section: string;
  /** The opening of a face that it closes, or shares with other leaves; absent for a section. */
  readonly closes?: string;
  /** The box for the solver. */
  readonly problem: BoxProblem;
  /** Where its 0, 0, 0 lies in the stacked case. */
  readonly at: BoxSpot;
  /** Its panels, and how their places lie in it. */
  readonly panels: ReadonlyMap<string, (point: Point2<Length>) => FacePlace>;
}

/** Whether two leaves share an opening. */
export function isBeside(one: BoxBody, other: BoxBody): boolean {
  return (
    one !== other && one.closes !== undefined && one.closes === other.closes && one.section === other.section
  );
}

/** A panel that is a face of a section, or closes one. */
export type FacePanel = PanelPart & { readonly face: Face };

/** The panels of a section that are its faces, or that close its openings. */
export function facePanels(
  { parts }: ReviewInput,
  section: string,
  role: "face" | "leaf",
): readonly FacePanel[] {
  return parts.panels.filter(
    (panel): panel is FacePanel =>
      panel.section === section && panel.role === role && panel.face !== undefined,
  );
}

/**
 * A section as a box: panels meet at their middle planes, half a sheet outside the inside. Riveted edges give, others
 * are rigid. Sharp corners stand for rounded ones; what cuts less than 5 % of a face away is left whole.
 *
 * @throws Refusal when there is no such section
 */
export function sectionBody(input: ReviewInput, section: string): BoxBody {
  const panels = facePanels(input, section, "face");
  const part = input.parts.sections.find(({ name }) => name === section);
  if (!part) throw new Refusal(`box: no section "${section}"`);
  const half = (face: Face): number =>
    (panels.find((panel) => panel.face === face)?.sheet.thickness ?? 0) / 2;
  const inside = insideOf(input, section);
  const margins: BoxSpot = [half("left"), half("front"), half("bottom")];
  const far: BoxSpot = [half("right"), half("back"), half("top")];
  const [length, width, height] = perAxis((axis) => inside[axis] + margins[axis] + far[axis]);
  const placing = panels.map((panel) => ({ panel, place: placeIn(panel, margins, inside) }));
  const faces = Object.fromEntries(
    placing.map(({ panel, place }) => [
      boxFaces[panel.face][0],
      boxFace(panel, place, panelSheet(panel, input), input),
    ]),
  );
  const plain: BoxProblem = { name: `the ${section} section`, length, width, height, faces };
  return {
    name: section,
    section,
    problem: { ...plain, ...edgeJoints(input, section, plain) },
    at: minus(spotOf(part.insideLow), margins),
    panels: new Map(placing.map(({ panel, place }) => [panel.id, place])),
  };
}

/** Clear sizes along x, y, z. */
function insideOf({ case: { sections } }: ReviewInput, section: string): BoxSpot {
  const inside = sections.find(({ name }) => name === section)?.inside;
  return inside ? [inside.width, inside.depth, inside.height] : [0, 0, 0];
}

function placeIn(
  { face, clearLow }: FacePanel,
  margins: BoxSpot,
  inside: BoxSpot,
): (point: Point2<Length>) => FacePlace {
  const [name, reversed] = boxFaces[face];
  const [along, across] = frames[name].axes;
  return ({ x, y }) => {
    const fromLow = x - clearLow.x;
    return {
      face: name,
      spot: {
        x: margins[along] + (reversed ? inside[along] - fromLow : fromLow),
        y: margins[across] + y - clearLow.y,
      },
    };
  };
}

/** A smaller share of its face an opening is left out at. */
const smallShare = 0.05;

function boxFace(
  panel: FacePanel,
  place: (point: Point2<Length>) => FacePlace,
  sheet: Sheet,
  input: ReviewInput,
): BoxFace {
  const matters = ({ area }: PlacedOpening): boolean =>
    area > smallShare * panel.clearWidth * panel.clearHeight;
  return {
    sheet,
    regions: boxRegions(panel, place, sheet, input),
    cutouts: panel.openings.filter(matters).map((opening) => cutoutOf(opening, place)),
    freely: true,
  };
}

/** Stiffeners of a panel, in the axes of its face of the box. */
function boxRegions(
  panel: FacePanel,
  place: (point: Point2<Length>) => FacePlace,
  sheet: Sheet,
  input: ReviewInput,
): readonly SheetRegion[] {
  const [face] = boxFaces[panel.face];
  return stiffenedZones(panel, sheet, input, looksOut(face) ? 1 : -1).map(({ sheet: own, ...zone }) => {
    const { left, bottom, width, height } = zone;
    const low = place({ x: Length.si(left), y: Length.si(bottom) }).spot;
    const high = place({ x: Length.si(left + width), y: Length.si(bottom + height) }).spot;
    return { left: Math.min(low.x, high.x), bottom: Math.min(low.y, high.y), width, height, sheet: own };
  });
}

/** Corners of the octagon of a circle's area, over its radius. */
const octagon = Math.sqrt(Math.PI / (2 * Math.SQRT2));

/** An opening with straight sides: those of its rectangle, an octagon of a circle's area, chords of any other arc. */
function cutoutOf({ name, outline }: PlacedOpening, place: (point: Point2<Length>) => FacePlace): Cutout {
  const at = ({ x, y }: Point2): Point2 => {
    const { x: along, y: across } = place({ x: Length.si(x), y: Length.si(y) }).spot;
    return { x: along, y: across };
  };
  const round = circleOf(outline);
  if (round) {
    const corner = (i: number): Point2 =>
      onCircle(at(round.centre), octagon * round.radius, ((i + 1 / 2) * Math.PI) / 4);
    return { name, shape: polygon(Array.from({ length: 8 }, (_, i) => corner(i))) };
  }
  if (!roundedBoxOf(outline))
    return { name, shape: counterclockwise(polygon(sampled(outline, Math.PI / 4).map(at))) };
  const { left, right, bottom, top } = reachOf(outline);
  const [a, b] = [at({ x: left, y: bottom }), at({ x: right, y: top })];
  const [x1, x2] = [Math.min(a.x, b.x), Math.max(a.x, b.x)];
  return {
    name,
    shape: polygon([
      { x: x1, y: a.y },
      { x: x2, y: a.y },
      { x: x2, y: b.y },
      { x: x1, y: b.y },
    ]),
  };
}

/** A door leaf as a body of one face, in the plane of the face it closes. */
export function leafBody(
  input: ReviewInput,
  leaf: FacePanel,
  { name: section, problem, at: origin }: BoxBody,
): BoxBody {
  const [name, reversed] = boxFaces[leaf.face];
  const { axes, far } = frames[name];
  const [along, across, through] = axes;
  const [length, width, height] = placed([0, 0, 0], [along, leaf.width], [across, leaf.height]);
  const plane = origin[through] + (far ? extents(problem)[through] : 0);
  const place = ({ x, y }: Point2<Length>): FacePlace => ({
    face: name,
    spot: { x: reversed ? leaf.width - x : x, y },
  });
  const sheet = panelSheet(leaf, input);
  const face: BoxFace = { sheet, regions: boxRegions(leaf, place, sheet, input), cutouts: [] };
  return {
    name: leaf.id,
    section,
    ...(leaf.leaf ? { closes: `${leaf.face}.${leaf.leaf.opening}` } : {}),
    problem: { name: leaf.id, length, width, height, faces: { [name]: face } },
    at: placed(spotOf(leaf.box.low), [through, plane]),
    panels: new Map([[leaf.id, place]]),
  };
}

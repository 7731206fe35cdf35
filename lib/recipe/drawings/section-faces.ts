/** The six faces of a section unfolded, each as it is seen from outside. */
import type { Face, HardwarePart, PanelPart, Parts, SectionPart, StiffenerPart } from "../../design/index.js";
import { faces } from "../../design/index.js";
import { type DrawingMark, type DrawingView, drawing } from "../../page/index.js";
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { Rule } from "../rule.js";
import { millimetres, openingMark, openingName } from "./marks.js";

/** Letters along the drawing's longer side. */
const lettersAcross = 42;

/** Draws a section's faces: left, front, right and back in a row, the top above the front, the bottom below. */
export function sectionFacesDrawing(section: SectionPart, parts: Parts, rule: Rule): DrawingView {
  const panels = facesOf(section, parts);
  const { x, y } = section.outside.size;
  const letter = (2 * millimetres(x) + 2 * millimetres(y)) / lettersAcross;
  const origins = layOutFaces(panels, 2 * letter);
  const marks = faces.flatMap((face) => faceMarks(panels[face], origins[face], parts, letter));
  const { size } = section.outside;
  return drawing(
    `The ${section.name} section, unfolded`,
    `Each face as seen from outside; the top from above and the bottom from below, front edge nearest. Outside size ${rule.size(size.x, size.y, size.z)} (width × depth × height).`,
    [...marks, ...outsideDimensions(section, panels, origins, rule, letter)],
    letter,
  );
}

type ByFace<Value> = Readonly<Record<Face, Value>>;

/** A face as it is drawn: its panel, or the gap that an open one leaves. */
type DrawnFace = Pick<PanelPart, "width" | "height"> & { readonly face: Face; readonly panel?: PanelPart };

function facesOf({ name, outside: { size } }: SectionPart, { panels }: Parts): ByFace<DrawnFace> {
  const drawn = (face: Face, width: Length, height: Length): DrawnFace => {
    const panel = panels.find((one) => one.section === name && one.role === "face" && one.face === face);
    return { face, width, height, ...(panel ? { ...panel, face, panel } : {}) };
  };
  return {
    front: drawn("front", size.x, size.z),
    back: drawn("back", size.x, size.z),
    left: drawn("left", size.y, size.z),
    right: drawn("right", size.y, size.z),
    top: drawn("top", size.x, size.y),
    bottom: drawn("bottom", size.x, size.y),
  };
}

/** Bottom left corner of each face on the paper, with a gap for their names. */
function layOutFaces(panels: ByFace<DrawnFace>, gap: number): ByFace<Point2> {
  const width = (face: Face): number => millimetres(panels[face].width);
  const height = (face: Face): number => millimetres(panels[face].height);
  const right = width("front") + gap;
  return {
    front: { x: 0, y: 0 },
    right: { x: right, y: 0 },
    back: { x: right + width("right") + gap, y: 0 },
    left: { x: -width("left") - gap, y: 0 },
    top: { x: 0, y: height("front") + gap },
    bottom: { x: 0, y: -height("bottom") - gap },
  };
}

function faceMarks(drawn: DrawnFace, at: Point2, parts: Parts, letter: number): DrawingMark[] {
  const [width, height] = [millimetres(drawn.width), millimetres(drawn.height)];
  const { face, panel } = drawn;
  return [
    { mark: "rectangle", role: panel ? "panel" : "opening", at, width, height },
    ...(panel ? panelMarks(panel, at, parts, letter) : []),
    {
      mark: "text",
      at: { x: at.x + width / 2, y: at.y + height + letter * 0.5 },
      text: panel ? face : `${face}, open`,
      anchor: "middle",
    },
  ];
}

function panelMarks(panel: PanelPart, at: Point2, parts: Parts, letter: number): DrawingMark[] {
  return [
    ...panel.openings.map((opening) => openingMark(opening, at)),
    ...parts.panels.flatMap((one) => leafMarks(one, panel, at)),
    ...parts.stiffeners.flatMap((one) => stiffenerMarks(one, panel, at)),
    ...parts.hardware.flatMap((part) => hardwareMark(part, panel, at, parts)),
    ...panel.openings
      .filter(({ why }) => why === "case")
      .flatMap((opening) => openingName(opening, at, letter)),
  ];
}

/** A leaf that shares its opening, as the rectangle that it fills there. */
function leafMarks(
  { section, face, leaf, width, height }: PanelPart,
  panel: PanelPart,
  at: Point2,
): DrawingMark[] {
  if (section !== panel.section || face !== panel.face || leaf?.between === undefined) return [];
  return [
    {
      mark: "rectangle",
      role: "panel",
      at: { x: at.x + millimetres(leaf.low.x), y: at.y + millimetres(leaf.low.y) },
      width: millimetres(width),
      height: millimetres(height),
    },
  ];
}

/** A stiffener as the rectangles it covers; one that is inside is hidden from here. */
function stiffenerMarks(
  { panel: id, side, zones }: StiffenerPart,
  panel: PanelPart,
  at: Point2,
): DrawingMark[] {
  if (id !== panel.id) return [];
  return zones.map(({ left, bottom, width, height }) => ({
    mark: "rectangle",
    role: side === "inside" ? "hidden" : "panel",
    at: { x: at.x + 1000 * left, y: at.y + 1000 * bottom },
    width: 1000 * width,
    height: 1000 * height,
  }));
}

/** A piece of hardware as the rectangle it covers. Corners are told by their holes on the panel's own drawing. */
function hardwareMark(part: HardwarePart, panel: PanelPart, at: Point2, parts: Parts): DrawingMark[] {
  const place = placeOf(part, parts);
  if (!part.on || place?.section !== panel.section || place.face !== panel.face) return [];
  const [across, up] = place.turned
    ? [part.stock.height, part.stock.width]
    : [part.stock.width, part.stock.height];
  const [width, height] = [millimetres(across), millimetres(up)];
  const corner = { x: millimetres(part.on.x) - width / 2, y: millimetres(part.on.y) - height / 2 };
  return [
    {
      mark: "rectangle",
      role: "hardware",
      at: { x: at.x + corner.x, y: at.y + corner.y },
      width,
      height,
    },
  ];
}

/** Parts of one item stand in the order of its places. */
function placeOf(part: HardwarePart, { hardware }: Parts) {
  const { places } = part.item;
  if ("cornersOf" in places) return undefined;
  return places[hardware.filter(({ item }) => item === part.item).indexOf(part)];
}

function outsideDimensions(
  { outside }: SectionPart,
  panels: ByFace<DrawnFace>,
  origins: ByFace<Point2>,
  rule: Rule,
  letter: number,
): DrawingMark[] {
  const offset = 2.4 * letter;
  const topOf = (face: Face): number => origins[face].y + millimetres(panels[face].height);
  const rightOf = (face: Face): number => origins[face].x + millimetres(panels[face].width);
  const level = (face: Face, text: string): DrawingMark => ({
    mark: "dimension",
    from: { x: origins[face].x, y: topOf(face) },
    to: { x: rightOf(face), y: topOf(face) },
    offset,
    text,
  });
  return [
    level("top", rule.drawn(outside.size.x)),
    level("right", rule.drawn(outside.size.y)),
    {
      mark: "dimension",
      from: { x: rightOf("back"), y: origins.back.y },
      to: { x: rightOf("back"), y: topOf("back") },
      offset: -offset,
      text: rule.drawn(outside.size.z),
    },
  ];
}

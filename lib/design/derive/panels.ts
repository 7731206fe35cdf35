import { Area, Length } from "../../quantity/index.js";
import { areaOf, boundsOf, centroidOf, type Point2, type Shape } from "../../shape/index.js";
import type { PanelPart, PlacedOpening } from "../parts.js";
import { panelSides } from "../place.js";
import { faceAxes, neighbour } from "./axes.js";
import { inCase, insideFacing, sheetBox } from "./in-case.js";
import { panelPoint } from "./outline.js";
import type { Piece } from "./plan.js";
import { ownOutline } from "./surfaces.js";

/** A piece of sheet as a part: its size, its areas and its place in the stacked case. */
export function panelPart({ surface, openings }: Piece): PanelPart {
  const { id, layout, leaf } = surface;
  const { left, bottom, ...size } = boundsOf(surface.outline);
  const [width, height] = [Length.si(size.width), Length.si(size.height)];
  const outline = ownOutline(surface);
  const { section, face, panel, sheet, facing } = layout;
  const { u, v } = faceAxes[face];
  const freeSides = leaf ? [] : panelSides.filter((side) => !section.panels[neighbour(face, side)]);
  const centre = netCentre(outline, openings);
  const inFace = panelPoint(left + centre.x, bottom + centre.y);
  const [low, high] = [panelPoint(left, bottom), panelPoint(left + width, bottom + height)];
  return {
    id,
    section: section.section.name,
    role: leaf ? "leaf" : "face",
    face,
    sheet,
    width,
    height,
    grain: panel.grain,
    clearWidth: leaf ? width : section.inside[u.axis],
    clearHeight: leaf ? height : section.inside[v.axis],
    ...(freeSides.length > 0 ? { freeSides } : {}),
    clearLow: leaf ? panelPoint(0, 0) : panelPoint(layout.reach.left, layout.reach.bottom),
    openings,
    ...(leaf ? { leaf } : {}),
    outline,
    grossArea: Area.si(width * height),
    netArea: netArea(outline, openings),
    ...(facing ? { facing } : {}),
    box: sheetBox(layout, low, high),
    centroid: inCase(layout, inFace, insideFacing(layout) + sheet.thickness / 2),
  };
}

/** What is left of an outline with openings cut out of it. */
function netArea(outline: Shape, openings: readonly PlacedOpening[]): Area {
  return Area.si(openings.reduce((left, { area }) => left - area, areaOf(outline)));
}

/** Centre of what is left of an outline with openings cut out of it. */
function netCentre(outline: Shape, openings: readonly PlacedOpening[]): Point2 {
  const pieces = [
    { centre: centroidOf(outline), area: areaOf(outline) },
    ...openings.map((opening) => ({ centre: centroidOf(opening.outline), area: -opening.area })),
  ];
  const total = pieces.reduce((sum, { area }) => sum + area, 0);
  const moment = (along: keyof Point2): number =>
    pieces.reduce((sum, { centre, area }) => sum + centre[along] * area, 0);
  return { x: moment("x") / total, y: moment("y") / total };
}

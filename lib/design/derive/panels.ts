import { Area } from "../../quantity/index.js";
import type { PanelPart, PlacedOpening } from "../parts.js";
import type { PanelPoint } from "../place.js";
import { faceAxes } from "./axes.js";
import { inCase, insideFacing, sheetBox } from "./in-case.js";
import { type Form, formArea, formCentre, panelPoint } from "./outline.js";
import type { Piece } from "./plan.js";

/** A piece of sheet as a part: its size, its areas and its place in the stacked case. */
export function panelPart({ surface, openings }: Piece): PanelPart {
  const { id, layout, form, leaf } = surface;
  const { width, height } = form;
  const { section, face, panel, sheet, facing } = layout;
  const { u, v } = faceAxes[face];
  const centre = netCentre({ ...form, low: panelPoint(0, 0) }, openings);
  const inFace = panelPoint(form.low.u + centre.u, form.low.v + centre.v);
  const high = panelPoint(form.low.u + width, form.low.v + height);
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
    clearLow: leaf ? panelPoint(0, 0) : panelPoint(layout.reach.left, layout.reach.bottom),
    openings,
    ...(leaf ? { leaf } : {}),
    cornerRadius: form.outline.cornerRadius,
    grossArea: Area.si(width * height),
    netArea: netArea(form, openings),
    ...(facing ? { facing } : {}),
    box: sheetBox(layout, form.low, high),
    centroid: inCase(layout, inFace, insideFacing(layout) + sheet.thickness / 2),
  };
}

/** What is left of a form with openings cut out of it. */
function netArea(form: Form, openings: readonly PlacedOpening[]): Area {
  return Area.si(openings.reduce((left, { area }) => left - area, formArea(form) as number));
}

/** Centre of what is left of a form with openings cut out of it. */
function netCentre(form: Form, openings: readonly PlacedOpening[]): PanelPoint {
  const whole = { centre: formCentre(form), area: formArea(form) as number };
  const pieces = [
    whole,
    ...openings.map((opening) => ({ centre: formCentre(opening), area: -opening.area })),
  ];
  const total = pieces.reduce((sum, { area }) => sum + area, 0);
  const moment = (along: "u" | "v"): number =>
    pieces.reduce((sum, { centre, area }) => sum + centre[along] * area, 0);
  return panelPoint(moment("u") / total, moment("v") / total);
}

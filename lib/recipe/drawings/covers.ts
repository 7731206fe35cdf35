/** What lies on a panel when the case stands: bars, corners, hardware and stiffeners, in the axes of the panel. */
import {
  type Box,
  type CaseAxis,
  type Face,
  faceAxes,
  facesAt,
  type PanelPart,
  type Parts,
} from "../../design/index.js";
import type { Box2 } from "../../shape/index.js";

/** The rectangles, m from the bottom left corner of the panel's cut size, cut off at its edges. */
export function coversOf(panel: PanelPart, parts: Parts): readonly Box2[] {
  const { width, height } = panel;
  return [...edgeCovers(panel, parts), ...hardwareCovers(panel, parts), ...stiffenerCovers(panel, parts)]
    .map((box) => cutTo(box, width, height))
    .filter((box) => box.width > 0 && box.height > 0);
}

function cutTo({ left, bottom, width, height }: Box2, across: number, up: number): Box2 {
  const [low, base] = [Math.max(0, left), Math.max(0, bottom)];
  return {
    left: low,
    bottom: base,
    width: Math.min(across, left + width) - low,
    height: Math.min(up, bottom + height) - base,
  };
}

/** Bars and corners, which lie over the edges of a face. */
function edgeCovers({ id, section, role, face, box }: PanelPart, parts: Parts): readonly Box2[] {
  const outside = parts.sections.find(({ name }) => name === section)?.outside;
  if (!face || role !== "face" || !outside) return [];
  const bars = parts.bars
    .filter(({ covers }) => covers.includes(id))
    .flatMap(({ edge, stock, length }) => {
      const other = facesAt(edge).find((one) => one !== face);
      return other ? [alongEdge(outside, face, other, stock.leg - stock.wall, length)] : [];
    });
  const corners = parts.hardware
    .filter(({ panels, on, stock }) => stock.kind === "corner" && !on && panels.includes(id))
    .map(({ panels, stock }) => {
      const others = panels.map((panel) => panel.slice(panel.lastIndexOf(".") + 1) as Face);
      const reach = faceAxes[face].v.axis;
      return others
        .filter((other) => other !== face)
        .reduce((area, other) => {
          const leg = (faceAxes[other].normal === reach ? stock.height : stock.width) - stock.flange;
          return within(area, outside, other, leg);
        }, outside);
    });
  return [...bars, ...corners].map((area) => onPanel(area, face, box));
}

/** What of a box lies next to one of its faces. */
function within(area: Box, outside: Box, face: Face, reach: number): Box {
  const { normal, end } = faceAxes[face];
  const low = end === "low" ? outside.low[normal] : outside.low[normal] + outside.size[normal] - reach;
  return {
    low: { ...area.low, [normal]: low },
    size: { ...area.size, [normal]: reach },
  };
}

function alongEdge(outside: Box, face: Face, other: Face, reach: number, length: number): Box {
  const along = (["x", "y", "z"] as const).find(
    (axis) => axis !== faceAxes[face].normal && axis !== faceAxes[other].normal,
  ) as CaseAxis;
  const strip = within(outside, outside, other, reach);
  return {
    low: { ...strip.low, [along]: outside.low[along] + (outside.size[along] - length) / 2 },
    size: { ...strip.size, [along]: length },
  };
}

/** A box of the case as seen on a face's panel. */
function onPanel(area: Box, face: Face, panel: Box): Box2 {
  const { u, v } = faceAxes[face];
  const from = ({ axis, reversed }: typeof u): number =>
    reversed
      ? panel.low[axis] + panel.size[axis] - (area.low[axis] + area.size[axis])
      : area.low[axis] - panel.low[axis];
  return { left: from(u), bottom: from(v), width: area.size[u.axis], height: area.size[v.axis] };
}

/** Hardware that is fastened to it; a leaf sees it from its own corner. */
function hardwareCovers({ id, leaf }: PanelPart, parts: Parts): readonly Box2[] {
  const low = leaf?.low ?? { x: 0, y: 0 };
  return parts.hardware.flatMap(({ panels, on, size }) =>
    on && size && panels.includes(id)
      ? [
          {
            left: on.x - low.x - size.width / 2,
            bottom: on.y - low.y - size.height / 2,
            width: size.width,
            height: size.height,
          },
        ]
      : [],
  );
}

function stiffenerCovers({ id }: PanelPart, parts: Parts): readonly Box2[] {
  return parts.stiffeners.flatMap(({ panel, zones }) => (panel === id ? zones : []));
}

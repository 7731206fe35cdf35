/** Edges without an extrusion: panels glued or screwed to each other, cleats and corner blocks inside the corner. */
import { rivetRow } from "../../fastening/index.js";
import { Area, Density, Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { Fastening, GluePart, JointPart, StripPart } from "../parts.js";
import { type Box, type EdgeName, type Face, facesAt, type Point } from "../place.js";
import { type Stock, type StripStock, stockNamed } from "../stock.js";
import { type Axis, edgeAxis, faceAxes } from "./axes.js";
import { sideTowards } from "./bars.js";
import { casePoint } from "./case-point.js";
import { fasten } from "./fastenings.js";
import { insideFacing, middleOf } from "./in-case.js";
import { type JointedEdge, otherFace, type Stretch } from "./jointed-edges.js";
import { type PanelLayout, panelAt, type SectionLayout } from "./layout.js";
import { panelPoint } from "./outline.js";
import { type CasePlan, pieceNamed } from "./plan.js";

/** How wide a strip lies on each of its two panels: its wider side on the one that the edge names first. */
function widthsOf({ width, thickness }: StripStock): readonly [Length, Length] {
  return [width, thickness];
}

/** The edge as a part. */
export function jointPart(one: JointedEdge, stock: Stock): JointPart {
  const { id, section, edge, joint, strip, stretches, through } = one;
  const [first, second] = facesAt(edge);
  const adhesive = joint.adhesive === undefined ? undefined : stockNamed(stock, "adhesives", joint.adhesive);
  return {
    id,
    section: section.section.name,
    edge,
    kind: joint.joint,
    panels: [panelAt(section, first).id, panelAt(section, second).id],
    clear: section.inside[edgeAxis(edge)],
    length: Length.si(stretches.reduce((sum, { length }) => sum + length, 0)),
    widths: strip ? widthsOf(strip) : [panelAt(section, otherFace(edge, through)).sheet.thickness],
    ...(adhesive ? { adhesive } : {}),
    ...(strip ? { strip } : {}),
  };
}

/** The wood inside the corner. */
export function jointStrips({ id, section, edge, joint, strip, stretches }: JointedEdge): StripPart[] {
  if (!strip) return [];
  const panels = facesAt(edge).map((face) => panelAt(section, face).id);
  return stretches.map((stretch, i) => {
    const box = cornerBox(section, edge, widthsOf(strip), stretch);
    return {
      id: `${id} ${joint.joint}${stretches.length > 1 ? ` ${i + 1}` : ""}`,
      section: section.section.name,
      why: "edge",
      kind: joint.joint,
      stock: strip,
      length: Length.si(stretch.length),
      panels,
      box,
      centroid: middleOf(box),
    };
  });
}

/** A piece inside the corner of two faces, so wide on each of them. */
function cornerBox(
  { inside, insideLow }: SectionLayout,
  edge: EdgeName,
  [onFirst, onSecond]: readonly [number, number],
  { from, length }: Stretch,
): Box {
  const [first, second] = facesAt(edge);
  // What is wide on one face stands off the other by so much.
  const off = new Map<Axis, readonly [number, "low" | "high"]>([
    [faceAxes[first].normal, [onSecond, faceAxes[first].end]],
    [faceAxes[second].normal, [onFirst, faceAxes[second].end]],
  ]);
  const size = (axis: Axis): number => off.get(axis)?.[0] ?? length;
  const low = (axis: Axis): number => {
    const [depth, end] = off.get(axis) ?? [0, undefined];
    return insideLow[axis] + (end === undefined ? from : end === "low" ? 0 : inside[axis] - depth);
  };
  return { low: casePoint(low("x"), low("y"), low("z")), size: casePoint(size("x"), size("y"), size("z")) };
}

/** What is glued: the panels to each other, or each of them to the wood in the corner. */
export function jointGlues(one: JointedEdge, stock: Stock): GluePart[] {
  const { adhesive, widths, length, panels, section, id } = jointPart(one, stock);
  if (!adhesive) return [];
  const bond = stretchMiddle(one);
  return widths.map((width, i) => ({
    id: one.strip ? `${id} ${one.joint.joint} on ${panels[i]}` : `${panels[0]} to ${panels[1]}`,
    section,
    adhesive,
    area: Area.si(width * length),
    centre: bond,
  }));
}

function stretchMiddle({ section, edge, stretches }: JointedEdge): Point {
  const none = Length.si(0);
  const middles = stretches.map((stretch) => middleOf(cornerBox(section, edge, [none, none], stretch)));
  const mean = (axis: Axis): number => middles.reduce((sum, point) => sum + point[axis], 0) / middles.length;
  return casePoint(mean("x"), mean("y"), mean("z"));
}

/** The screws: a row through each panel into the wood, or one through the panel that runs past into the other. */
export function jointFastenings(one: JointedEdge, stock: Stock, plan: CasePlan): Fastening[] {
  const { id: holds, section, edge, joint, strip, stretches, through } = one;
  const { screw, pitch: largestPitch, endDistance } = joint;
  if (screw === undefined || largestPitch === undefined || endDistance === undefined) return [];
  const fastener = stockNamed(stock, "fasteners", screw);
  const rows = stretches.map(({ from, length }) => {
    const { count, pitch } = rivetRow({ length: Length.si(length), endDistance, largestPitch });
    return { places: Array.from({ length: count }, (_, i) => from + endDistance + i * pitch), pitch };
  });
  const along = rows.flatMap(({ places }) => places);
  const pitch = Length.si(Math.max(...rows.map((row) => row.pitch)));
  return (strip ? facesAt(edge) : [through]).map((face, i) => {
    const layout = panelAt(section, face);
    const met = panelAt(section, otherFace(edge, face));
    const [first, second] = strip ? widthsOf(strip) : [Length.si(0), Length.si(0)];
    const off = strip ? (i === 0 ? first : second) / 2 : -insideFacing(met) - met.sheet.thickness / 2;
    const at = along.map((place) => holeAt(layout, met.face, place, off));
    const reach = fastener.length - layout.thickness;
    const depth = strip ? Math.min(reach, i === 0 ? second : first) : reach;
    const density = Density.si((strip ?? met.sheet).density);
    return fasten(
      {
        holds,
        why: "edge",
        fastener,
        at,
        count: at.length,
        pitch,
        metal: 0,
        ...(depth > 0 ? { into: { density, depth: Length.si(depth) } } : {}),
      },
      pieceNamed(plan, layout.id),
    );
  });
}

/** A place of a panel so far along the edge that it shares with another face, and so far in from their corner. */
function holeAt(layout: PanelLayout, other: Face, along: number, off: number): Point2<Length> {
  const { reach, width, height, face, section } = layout;
  const { u } = faceAxes[face];
  const across = reach.left + (u.reversed ? section.inside[u.axis] - along : along);
  switch (sideTowards(layout, other)) {
    case "left":
      return panelPoint(reach.left + off, reach.bottom + along);
    case "right":
      return panelPoint(width - reach.right - off, reach.bottom + along);
    case "bottom":
      return panelPoint(across, reach.bottom + off);
    case "top":
      return panelPoint(across, height - reach.top - off);
  }
}

/** The parts that stiffeners are: strips or pieces of sheet, their glue and their fasteners. */
import { rivetRow } from "../../fastening/index.js";
import { Area, Density, Length } from "../../quantity/index.js";
import { areaOf, type Box2, boundsOf, centroidOf, moved, type Point2, rectangle } from "../../shape/index.js";
import type {
  Fastening,
  GluePart,
  PanelPart,
  PlacedOpening,
  StiffenedZone,
  StiffenerPart,
  StripPart,
} from "../parts.js";
import { type SheetStock, type Stock, stockNamed } from "../stock.js";
import { fasten } from "./fastenings.js";
import { boxOn, inCase, middleOf } from "./in-case.js";
import { coveredBy, type LaidStiffener, runOf } from "./laid-stiffeners.js";
import { panelPoint } from "./outline.js";
import { type CasePlan, pieceNamed } from "./plan.js";

/** The stiffener as a part. */
export function stiffenerPart(one: LaidStiffener, stock: Stock): StiffenerPart {
  const { id, stiffener, layout, wood, zones, height } = one;
  const { section, kind, side, adhesive } = stiffener;
  return {
    ...{ id, section, kind, panel: layout.id, side, zones, height },
    ...("strip" in wood ? wood : { piece: sheetPiece(one, wood.sheet) }),
    ...(adhesive === undefined ? {} : { adhesive: stockNamed(stock, "adhesives", adhesive) }),
  };
}

/** Between which distances outwards from the panel's inside face it lies. */
function depthOf({ layout, stiffener: { side }, height }: LaidStiffener): readonly [number, number] {
  return side === "inside" ? [-height, 0] : [layout.thickness, layout.thickness + height];
}

function sheetPiece(one: LaidStiffener, sheet: SheetStock): PanelPart {
  const { id, layout, stiffener, framed } = one;
  const covered = coveredBy(one);
  const [width, height] = [Length.si(covered.width), Length.si(covered.height)];
  const own = { x: -covered.left, y: -covered.bottom };
  const low = panelPoint(covered.left, covered.bottom);
  const high = panelPoint(covered.left + width, covered.bottom + height);
  const openings = framed ? [cutIn(framed, own)] : [];
  const grossArea = Area.si(width * height);
  const depth = depthOf(one);
  return {
    ...{ id, section: stiffener.section, role: "stiffener", face: layout.face, sheet, width, height },
    grain: stiffener.runs,
    clearWidth: width,
    clearHeight: height,
    clearLow: panelPoint(0, 0),
    openings,
    outline: rectangle({ left: 0, bottom: 0, width, height }),
    grossArea,
    netArea: Area.si(openings.reduce<number>((left, { area }) => left - area, grossArea)),
    box: boxOn(layout, low, high, depth),
    centroid: inCase(layout, netCentre(covered, framed), (depth[0] + depth[1]) / 2),
  };
}

function cutIn(opening: PlacedOpening, by: Point2): PlacedOpening {
  const outline = moved(opening.outline, by);
  const { left, bottom } = boundsOf(outline);
  return { ...opening, outline, low: panelPoint(left, bottom) };
}

function netCentre({ left, bottom, width, height }: Box2, framed: PlacedOpening | undefined): Point2<Length> {
  const whole = width * height;
  const [hole, at] = framed ? [areaOf(framed.outline), centroidOf(framed.outline)] : [0, { x: 0, y: 0 }];
  const centre = (middle: number, off: number): number => (whole * middle - hole * off) / (whole - hole);
  return panelPoint(centre(left + width / 2, at.x), centre(bottom + height / 2, at.y));
}

/** The pieces of strip that it is cut from. */
export function stiffenerStrips(one: LaidStiffener): StripPart[] {
  const { id, stiffener, layout, wood, zones } = one;
  if (!("strip" in wood)) return [];
  return zones.map((zone, i) => {
    const { left, bottom, width, height, along } = zone;
    const box = boxOn(
      layout,
      panelPoint(left, bottom),
      panelPoint(left + width, bottom + height),
      depthOf(one),
    );
    return {
      id: zones.length > 1 ? `${id} ${i + 1}` : id,
      section: stiffener.section,
      why: "stiffener",
      kind: stiffener.kind,
      stock: wood.strip,
      length: Length.si(along === "x" ? width : height),
      panels: [layout.id],
      box,
      centroid: middleOf(box),
    };
  });
}

/** What is glued to the panel. */
export function stiffenerGlues(one: LaidStiffener, stock: Stock): GluePart[] {
  const { id, layout, stiffener, zones, wood } = one;
  if (stiffener.adhesive === undefined) return [];
  const piece = "sheet" in wood ? sheetPiece(one, wood.sheet) : undefined;
  const covered = coveredBy(one);
  const middle = panelPoint(covered.left + covered.width / 2, covered.bottom + covered.height / 2);
  return [
    {
      id: `${id} on ${layout.id}`,
      section: stiffener.section,
      adhesive: stockNamed(stock, "adhesives", stiffener.adhesive),
      area: piece?.netArea ?? Area.si(zones.reduce((sum, { width, height }) => sum + width * height, 0)),
      centre: inCase(layout, middle, stiffener.side === "inside" ? 0 : layout.thickness),
    },
  ];
}

/** Its fasteners: a row along the middle of each of its zones, through the panel. */
export function stiffenerFastenings(one: LaidStiffener, stock: Stock, plan: CasePlan): Fastening[] {
  const { id, layout, stiffener, zones, wood, height } = one;
  const { fastener: name, pitch: largestPitch, endDistance } = stiffener;
  if (name === undefined || largestPitch === undefined || endDistance === undefined) return [];
  const fastener = stockNamed(stock, "fasteners", name);
  const rows = zones.map((zone) => {
    const row = rivetRow({ length: Length.si(runOf(zone)), endDistance, largestPitch });
    const places = Array.from({ length: row.count }, (_, i) => endDistance + i * row.pitch);
    return { pitch: row.pitch, at: places.map((place) => placeIn(zone, place)) };
  });
  const at = rows.flatMap((row) => row.at);
  const depth = Math.min(height, fastener.length - layout.thickness);
  const density = Density.si("strip" in wood ? wood.strip.density : wood.sheet.density);
  const bites = fastener.kind === "screw" && depth > 0;
  return [
    fasten(
      {
        holds: id,
        why: "stiffener",
        fastener,
        at,
        count: at.length,
        pitch: Length.si(Math.max(...rows.map(({ pitch }) => pitch))),
        metal: 0,
        ...(bites ? { into: { density, depth: Length.si(depth) } } : {}),
        ...(fastener.kind === "screw" ? {} : { behind: height }),
      },
      pieceNamed(plan, layout.id),
    ),
  ];
}

function placeIn({ left, bottom, width, height, along }: StiffenedZone, place: number): Point2<Length> {
  return along === "x"
    ? panelPoint(left + place, bottom + height / 2)
    : panelPoint(left + width / 2, bottom + place);
}

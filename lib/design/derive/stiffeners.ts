/** The parts that stiffeners are: strips or pieces of sheet, their glue and their fasteners. */
import { rivetRow } from "../../fastening/index.js";
import { Area, Density, Length } from "../../quantity/index.js";
import {
  areaOf,
  type Box2,
  boundsOf,
  centroidOf,
  middleOf as middleOfBox,
  moved,
  type Point2,
  rectangle,
} from "../../shape/index.js";
import type {
  Fastening,
  GluePart,
  PanelPart,
  PlacedOpening,
  StiffenedZone,
  StiffenerPart,
  StripPart,
} from "../parts.js";
import type { Box } from "../place.js";
import { type SheetStock, type Stock, stockNamed } from "../stock.js";
import { type FastenerGroup, fasten, fastenBare } from "./fastenings.js";
import { middleOf } from "./in-case.js";
import { coveredBy, type LaidStiffener, runOf } from "./laid-stiffeners.js";
import { panelPoint } from "./outline.js";
import { type CasePlan, pieceNamed } from "./plan.js";
import { boxOf } from "./stiffened-pieces.js";

/** The stiffener as a part. */
export function stiffenerPart(one: LaidStiffener, stock: Stock): StiffenerPart {
  const { id, stiffener, on, wood, zones, height } = one;
  const { section, kind, side, adhesive } = stiffener;
  return {
    ...{ id, section, kind, panel: on.id, side, zones, height },
    ...("strip" in wood ? wood : { piece: sheetPiece(one, wood.sheet) }),
    ...(adhesive === undefined ? {} : { adhesive: stockNamed(stock, "adhesives", adhesive) }),
  };
}

/** Between which distances outwards from the inside of its piece it lies. */
function depthOf({ on, stiffener: { side }, height }: LaidStiffener): readonly [number, number] {
  return side === "inside" ? [-height, 0] : [on.thickness, on.thickness + height];
}

/** All that it covers, in the stacked case. */
export function laidBox(one: LaidStiffener): Box {
  return boxOf(one.on, coveredBy(one), depthOf(one));
}

function sheetPiece(one: LaidStiffener, sheet: SheetStock): PanelPart {
  const { id, on, stiffener, framed } = one;
  const covered = coveredBy(one);
  const [width, height] = [Length.si(covered.width), Length.si(covered.height)];
  const own = { x: -covered.left, y: -covered.bottom };
  const openings = framed ? [cutIn(framed, own)] : [];
  const grossArea = Area.si(width * height);
  const depth = depthOf(one);
  return {
    ...{ id, section: stiffener.section, role: "stiffener", sheet, width, height },
    ...(on.face ? { face: on.face } : {}),
    grain: stiffener.runs,
    clearWidth: width,
    clearHeight: height,
    clearLow: panelPoint(0, 0),
    openings,
    outline: rectangle({ left: 0, bottom: 0, width, height }),
    grossArea,
    netArea: Area.si(openings.reduce<number>((left, { area }) => left - area, grossArea)),
    box: laidBox(one),
    centroid: on.toCase(netCentre(covered, framed), (depth[0] + depth[1]) / 2),
  };
}

function cutIn(opening: PlacedOpening, by: Point2): PlacedOpening {
  const outline = moved(opening.outline, by);
  const { left, bottom } = boundsOf(outline);
  return { ...opening, outline, low: panelPoint(left, bottom) };
}

function netCentre({ left, bottom, width, height }: Box2, framed: PlacedOpening | undefined): Point2 {
  const whole = width * height;
  const [hole, at] = framed ? [areaOf(framed.outline), centroidOf(framed.outline)] : [0, { x: 0, y: 0 }];
  const centre = (middle: number, off: number): number => (whole * middle - hole * off) / (whole - hole);
  return { x: centre(left + width / 2, at.x), y: centre(bottom + height / 2, at.y) };
}

/** The pieces of strip that it is cut from. */
export function stiffenerStrips(one: LaidStiffener): StripPart[] {
  const { id, stiffener, on, wood, zones } = one;
  if (!("strip" in wood)) return [];
  return zones.map((zone, i) => {
    const { width, height, along } = zone;
    const box = boxOf(on, zone, depthOf(one));
    return {
      id: zones.length > 1 ? `${id} ${i + 1}` : id,
      section: stiffener.section,
      why: "stiffener",
      kind: stiffener.kind,
      stock: wood.strip,
      length: Length.si(along === "x" ? width : height),
      panels: [on.id],
      box,
      centroid: middleOf(box),
    };
  });
}

/** What is glued to the piece. */
export function stiffenerGlues(one: LaidStiffener, stock: Stock): GluePart[] {
  const { id, on, stiffener, zones, wood } = one;
  if (stiffener.adhesive === undefined) return [];
  const piece = "sheet" in wood ? sheetPiece(one, wood.sheet) : undefined;
  const covered = coveredBy(one);
  return [
    {
      id: `${id} on ${on.id}`,
      section: stiffener.section,
      adhesive: stockNamed(stock, "adhesives", stiffener.adhesive),
      area: piece?.netArea ?? Area.si(zones.reduce((sum, { width, height }) => sum + width * height, 0)),
      centre: on.toCase(middleOfBox(covered), stiffener.side === "inside" ? 0 : on.thickness),
    },
  ];
}

/** Its fasteners: a row along the middle of each of its zones, through what it is on. */
export function stiffenerFastenings(one: LaidStiffener, stock: Stock, plan: CasePlan): Fastening[] {
  const { id, on, stiffener, zones, wood, height } = one;
  const { fastener: name, pitch: largestPitch, endDistance } = stiffener;
  if (name === undefined || largestPitch === undefined || endDistance === undefined) return [];
  const fastener = stockNamed(stock, "fasteners", name);
  const rows = zones.map((zone) => {
    const row = rivetRow({ length: Length.si(runOf(zone)), endDistance, largestPitch });
    const places = Array.from({ length: row.count }, (_, i) => endDistance + i * row.pitch);
    return { pitch: row.pitch, at: places.map((place) => placeIn(zone, place)) };
  });
  const at = rows.flatMap((row) => row.at);
  const depth = Math.min(height, fastener.length - on.thickness);
  const density = Density.si("strip" in wood ? wood.strip.density : wood.sheet.density);
  const bites = fastener.kind === "screw" && depth > 0;
  const group: FastenerGroup = {
    ...{ holds: id, why: "stiffener", fastener, at, count: at.length, metal: 0 },
    pitch: Length.si(Math.max(...rows.map(({ pitch }) => pitch))),
    ...(bites ? { into: { density, depth: Length.si(depth) } } : {}),
    ...(fastener.kind === "screw" ? {} : { behind: height }),
  };
  return [on.face ? fasten(group, pieceNamed(plan, on.id)) : fastenBare(group, on)];
}

function placeIn({ left, bottom, width, height, along }: StiffenedZone, place: number): Point2<Length> {
  return along === "x"
    ? panelPoint(left + place, bottom + height / 2)
    : panelPoint(left + width / 2, bottom + place);
}

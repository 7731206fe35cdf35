/** Everything that has a mass, with its place in the stacked case. */
import {
  type Adhesive,
  type DrawerPart,
  type EdgeName,
  type Face,
  type Fastening,
  type Measurements,
  type PanelPart,
  type Point,
  type ShelfPart,
  type StiffenerPart,
  sheetPieces,
} from "../../design/index.js";
import { memoize } from "../../kept/index.js";
import { measuredMean, sheetDensity } from "../../measure/index.js";
import { Density, Length, Mass } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { ratesOf } from "./adhesive-rates.js";
import { asWeighed } from "./as-weighed.js";

/** What part of the case a mass belongs to. */
export type MassGroup = "panels" | "facings" | "glue" | "edges" | "hardware" | "fasteners" | "contents";

/** One thing with its mass and its place in the stacked case. */
export interface MassItem {
  /** What it is: "upper.front", "fasteners of upper.handle 1". */
  readonly name: string;
  /** The section it belongs to. */
  readonly section: string;
  /** The part of the case it counts with. */
  readonly group: MassGroup;
  /** Its mass. */
  readonly mass: Mass;
  /** Its centre of gravity in the stacked case. */
  readonly centre: Point;
  /** Its box; a small thing has none and counts as a point. */
  readonly size?: Point;
  /** The sheet or facing it is cut from, where its density may have been weighed. */
  readonly material?: string;
}

/**
 * Everything that has a mass: panels and shelves by their net area, facings and dry glue on them, bars,
 * hardware, fasteners at what they hold, contents. Densities are the builder's own weighings where there are
 * any, or else the stock table's. A section that was weighed as built weighs what the scale said.
 */
export function massItems(input: ReviewInput): readonly MassItem[] {
  return asWeighed(plannedMasses(input), input.measurements.asBuilt);
}

/** The same before anything was on the scale. */
export function plannedMasses(input: ReviewInput): readonly MassItem[] {
  const { parts } = input;
  const panels = sheetPieces(parts);
  const places = placesOf(input, panels);
  return [
    ...structureItems(input, panels),
    ...parts.glues.map(({ id, section, adhesive, area, centre }) => ({
      name: `glue, ${id}`,
      section,
      group: "glue" as const,
      mass: Mass.si(area * dryRate(adhesive, input)),
      centre,
    })),
    ...parts.hardware.map(({ id, section, stock, centre }) => ({
      name: id,
      section,
      group: "hardware" as const,
      mass: stock.mass,
      centre,
    })),
    ...parts.fastenings.flatMap((fastening) => fastenerItem(fastening, places)),
    ...loadItems(input),
  ];
}

/** What is sawn: panels with their facings, bars, strips and panes. */
function structureItems(input: ReviewInput, panels: readonly PanelPart[]): readonly MassItem[] {
  const { parts } = input;
  return [
    ...panels.map((panel) => ({
      name: panel.id,
      section: panel.section,
      group: "panels" as const,
      mass: Mass.si(panel.netArea * panel.sheet.thickness * densityOf(input, panel.sheet)),
      centre: panel.centroid,
      size: panel.box.size,
      material: panel.sheet.name,
    })),
    ...facingItems(input, panels),
    ...parts.bars.map(({ id, section, edge, stock, length, centroid }) => ({
      name: id,
      section,
      group: "edges" as const,
      mass: Mass.si(stock.massPerLength * length),
      centre: centroid,
      size: alongEdge(edge, length),
    })),
    ...parts.strips.map(({ id, section, why, stock, length, centroid, box }) => ({
      name: id,
      section,
      group: why === "edge" ? ("edges" as const) : ("panels" as const),
      mass: Mass.si(length * stock.width * stock.thickness * densityOf(input, stock)),
      centre: centroid,
      size: box.size,
      material: stock.name,
    })),
    ...parts.panes.map(({ id, section, stock, width, height, centroid, box }) => ({
      name: id,
      section,
      group: "panels" as const,
      mass: Mass.si(width * height * stock.thickness * densityOf(input, stock)),
      centre: centroid,
      size: box.size,
      material: stock.name,
    })),
  ];
}

/** What rides inside: contents, and what is laid into drawers. */
function loadItems({ parts }: ReviewInput): readonly MassItem[] {
  return [
    ...parts.drawers
      .filter(({ drawer }) => drawer.load > 0)
      .map(({ drawer: { name, section, load }, box: { low, size } }) => ({
        name,
        section,
        group: "contents" as const,
        mass: load,
        centre: {
          x: Length.si(low.x + size.x / 2),
          y: Length.si(low.y + size.y / 2),
          z: Length.si(low.z + size.z / 2),
        },
        size,
      })),
    ...parts.contents.map(({ content, centre }) => ({
      name: content.name,
      section: content.section,
      group: "contents" as const,
      mass: content.mass,
      centre,
      size: content.size,
    })),
  ];
}

/** A bar as a rod along the one direction that its two faces do not name. */
function alongEdge(edge: EdgeName, length: Length): Point {
  const none = Length.si(0);
  const has = (...faces: readonly Face[]): boolean => faces.some((face) => edge.split("-").includes(face));
  return {
    x: has("left", "right") ? none : length,
    y: has("front", "back") ? none : length,
    z: has("top", "bottom") ? none : length,
  };
}

/** Density of a sheet or facing: the mean of the builder's weighings, or the table's. */
export function densityOf(
  { measurements }: ReviewInput,
  stock: { readonly name: string; readonly density: Density },
): Density {
  return weighedDensity(measurements.weights, stock.name) ?? stock.density;
}

const weighedDensity = memoize((weights: Measurements["weights"], name: string): Density | undefined => {
  const weighed = weights.filter(({ material }) => material === name).map((row) => sheetDensity(row).density);
  return weighed.length > 1 ? Density.si(measuredMean(weighed).mean) : weighed[0];
});

function facingItems(input: ReviewInput, panels: readonly PanelPart[]): MassItem[] {
  return input.parts.facings.flatMap(({ panel: id, side, stock, adhesive, netArea }) => {
    const panel = panels.find((candidate) => candidate.id === id);
    if (!panel) return [];
    const { section, centroid: centre, box } = panel;
    return [
      {
        name: `${side} facing of ${id}`,
        section,
        group: "facings",
        mass: Mass.si(netArea * stock.thickness * densityOf(input, stock)),
        centre,
        size: box.size,
        material: stock.name,
      },
      {
        name: `glue under the ${side} facing of ${id}`,
        section,
        group: "glue",
        mass: Mass.si(netArea * dryRate(adhesive, input)),
        centre,
      },
    ];
  });
}

/** What is left of an adhesive on a square metre of a bond when it is dry, kg. */
function dryRate(adhesive: Adhesive, input: ReviewInput): number {
  const { sheetRate, facingRate } = ratesOf(adhesive, input);
  return (sheetRate + facingRate) * adhesive.solids;
}

interface Place {
  /** The section of the thing. */
  readonly section: string;
  /** The middle of the thing in the stacked case. */
  readonly centre: Point;
}

/** Where the thing is that a group of fasteners holds. */
function placesOf({ parts }: ReviewInput, panels: readonly PanelPart[]): ReadonlyMap<string, Place> {
  return new Map<string, Place>([
    ...panels.map((panel) => [panel.id, { section: panel.section, centre: panel.centroid }] as const),
    ...parts.bars.map((bar) => [bar.id, { section: bar.section, centre: bar.centroid }] as const),
    ...parts.panes.map((pane) => [pane.id, { section: pane.section, centre: pane.centroid }] as const),
    ...parts.strips.map((strip) => [strip.id, { section: strip.section, centre: strip.centroid }] as const),
    ...parts.hardware.map((part) => [part.id, part] as const),
  ]);
}

function fastenerItem(fastening: Fastening, places: ReadonlyMap<string, Place>): MassItem[] {
  const place = places.get(fastening.holds) ?? places.get(fastening.panel);
  if (!place) return [];
  const { section, centre } = place;
  const mass = Mass.si(fastening.count * fastening.fastener.mass);
  return [{ name: `fasteners of ${fastening.id}`, section, centre, group: "fasteners", mass }];
}

/** A drawer with what lies in it: its pieces, their facing, and its load. */
export function drawerMass(input: ReviewInput, { drawer, panels }: DrawerPart): Mass {
  const names = new Set([drawer.name, ...panels.flatMap(({ id }) => [id, ...facingNames(id)])]);
  return Mass.si(massItems(input).reduce((sum, { name, mass }) => (names.has(name) ? sum + mass : sum), 0));
}

/** What the list of masses calls the facings of a panel and their glue. */
export function facingNames(id: string): readonly string[] {
  return ["outside", "inside"].flatMap((side) => [
    `${side} facing of ${id}`,
    `glue under the ${side} facing of ${id}`,
  ]);
}

/** A shelf by itself, with its stiffeners. */
export function bareShelfMass({ panel: { netArea, sheet }, stiffeners }: ShelfPart): Mass {
  const wood = stiffeners.reduce((sum, one) => sum + woodOf(one), 0);
  return Mass.si(netArea * sheet.thickness * sheet.density + wood);
}

/** The wood of a stiffener without its glue and fasteners, kg. */
function woodOf({ zones, height, strip, piece }: StiffenerPart): number {
  if (piece) return piece.netArea * piece.sheet.thickness * piece.sheet.density;
  const area = zones.reduce((sum, zone) => sum + zone.width * zone.height, 0);
  return strip ? area * height * strip.density : 0;
}

/** What the list of masses calls all that stiffens a panel or a leaf: wood, glue, fasteners. */
export function stiffenerNames({ parts }: ReviewInput, panel: string): ReadonlySet<string> {
  const on = parts.stiffeners.filter((one) => one.panel === panel);
  return new Set(
    on.flatMap(({ id, zones }) => [
      id,
      ...zones.map((_, i) => `${id} ${i + 1}`),
      `glue, ${id} on ${panel}`,
      `fasteners of ${id} on ${panel}`,
    ]),
  );
}

/** A shelf's own mass and that of all it carries. */
export function shelfMass(shelf: ShelfPart): Mass {
  return Mass.si(
    shelf.carries.reduce<number>((sum, { content }) => sum + content.mass, bareShelfMass(shelf)),
  );
}

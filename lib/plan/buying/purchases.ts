/** What a case needs bought, trade by trade, each with the plan behind the count. */

import { adhesiveNeed } from "../../bonding/index.js";
import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import type {
  Adhesive,
  BarStock,
  FacingStock,
  Fastener,
  Fastening,
  Hardware,
  PaneStock,
  SheetStock,
  StripStock,
} from "../../design/index.js";
import {
  closingParts,
  knownRate,
  knownWaste,
  onFaces,
  type ReviewInput,
  washersOf,
} from "../../model/index.js";
import { packs } from "../../money/index.js";
import {
  Area,
  type AreaDensity,
  addMoney,
  type Money,
  ratio,
  timesMoney,
  type Volume,
  wholeUp,
} from "../../quantity/index.js";
import {
  barNeeds,
  type CutNeed,
  facingNeeds,
  type KnownKerf,
  kerfFor,
  leastSpareShare,
  paneNeeds,
  sheetNeeds,
  spareShare,
  stripNeeds,
} from "./cut-plans.js";

/** Everything to buy for the case, trade by trade. */
export function purchaseList(input: ReviewInput): PurchaseList {
  return {
    kerfs: { sheets: kerfFor("sheets", input), bars: kerfFor("bars", input) },
    sheets: sheetNeeds(input),
    facings: facingNeeds(input),
    bars: barNeeds(input),
    strips: stripNeeds(input),
    panes: paneNeeds(input),
    adhesives: adhesiveNeeds(input),
    fasteners: fastenerNeeds(input),
    hardware: hardwareNeeds(input),
  };
}

/** Everything to buy for one case. */
export interface PurchaseList {
  /** The cuts of the saws that the plans reckon with. */
  readonly kerfs: { readonly sheets: KnownKerf; readonly bars: KnownKerf };
  /** Sheets of ply with their cut plans. */
  readonly sheets: readonly CutNeed<SheetStock, SheetPlan>[];
  /** Laminate with its cut plans. */
  readonly facings: readonly CutNeed<FacingStock, SheetPlan>[];
  /** Extrusions with their cut plans. */
  readonly bars: readonly CutNeed<BarStock, BarPlan>[];
  /** Strips of wood with their cut plans. */
  readonly strips: readonly CutNeed<StripStock, BarPlan>[];
  /** Clear sheets with their cut plans. */
  readonly panes: readonly CutNeed<PaneStock, SheetPlan>[];
  /** Adhesives by the container. */
  readonly adhesives: readonly AdhesiveNeed[];
  /** Fasteners by the pack. */
  readonly fasteners: readonly FastenerNeed[];
  /** Hardware by the piece. */
  readonly hardware: readonly HardwareNeed[];
}

/** Adhesive by the container. */
export interface AdhesiveNeed {
  /** The adhesive. */
  readonly stock: Adhesive;
  /** Area to be bonded, counted once: panels to be faced, wood to wood. */
  readonly area: Area;
  /** Wet, both faces where the adhesive asks for it, waste included. */
  readonly volume: Volume;
  /** How many to buy. */
  readonly containers: number;
  /** Of all containers. */
  readonly cost: Money;
  /** Whether the spread rate is the builder's own trial or the label's. */
  readonly rateFrom: "trial" | "label";
}

/** Fasteners by the pack. */
export interface FastenerNeed {
  /** The fastener. */
  readonly stock: Fastener;
  /** The groups that take it, also those for which the case names one that does not close them. */
  readonly groups: readonly Fastening[];
  /** How many the case takes. */
  readonly count: number;
  /** Bought beyond the count, for those that go wrong. */
  readonly spares: number;
  /** How many packs to buy. */
  readonly packs: number;
  /** How many washers to buy, spares included. */
  readonly washers: number;
  /** Packs and washers. */
  readonly cost: Money;
}

/** Hardware by the piece. */
export interface HardwareNeed {
  /** The piece of hardware. */
  readonly stock: Hardware;
  /** How many to buy. */
  readonly count: number;
  /** Of all of them. */
  readonly cost: Money;
}

/** Adhesives to buy for the facings of the case, and for wood glued to wood. */
function adhesiveNeeds(input: ReviewInput): readonly AdhesiveNeed[] {
  const { facings, glues } = input.parts;
  const used = new Map([...facings, ...glues].map(({ adhesive }) => [adhesive.name, adhesive]));
  return [...used.values()].map((stock) => needFor(stock, gluedArea(stock, input), input));
}

/**
 * What one adhesive would take for an area.
 *
 * @param rate wet spread on one face; the best known one unless given
 */
export function adhesiveLine(
  stock: Adhesive,
  area: Area,
  input: ReviewInput,
  rate: AreaDensity = knownRate(stock, input).rate,
): ReturnType<typeof adhesiveNeed.worked> {
  return adhesiveNeed.worked({
    ...onFaces(stock, rate),
    ...adhesiveInputs(stock),
    waste: knownWaste(stock, input),
    area,
  });
}

function adhesiveInputs({ kind, density, content, price }: Adhesive) {
  return { kind, density, container: content, price };
}

function gluedArea({ name }: Adhesive, { parts }: ReviewInput): Area {
  const bonds = [
    ...parts.facings.map(({ adhesive, gluedArea: area }) => ({ adhesive, area })),
    ...parts.glues,
  ];
  return Area.si(bonds.reduce((sum, { adhesive, area }) => (adhesive.name === name ? sum + area : sum), 0));
}

function needFor(stock: Adhesive, area: Area, input: ReviewInput): AdhesiveNeed {
  const { value } = adhesiveLine(stock, area, input);
  const { volume, containers, cost } = value;
  return { stock, area, volume, containers, cost, rateFrom: knownRate(stock, input).from };
}

/** Fasteners by the pack, spares and washers included. */
function fastenerNeeds({ parts: named, stock: sold }: ReviewInput): readonly FastenerNeed[] {
  const { parts } = closingParts(named, sold);
  const used = new Map(parts.fastenings.map(({ fastener }) => [fastener.name, fastener]));
  return [...used.values()].map((stock) => {
    const groups = parts.fastenings.filter(({ fastener }) => fastener.name === stock.name);
    const count = groups.reduce((sum, group) => sum + group.count, 0);
    const bare = groups.reduce((sum, group) => sum + washersOf(group), 0);
    const washers = bare + wholeUp(bare * spareShare);
    const bought = packs({
      needed: count,
      spare: ratio(leastSpareShare),
      perPack: stock.packOf,
      price: stock.price,
    });
    const spares = Math.min(wholeUp(count * spareShare), bought.over);
    const loose = stock.washerPrice ? [timesMoney(washers, stock.washerPrice)] : [];
    const cost = addMoney([bought.cost, ...loose]);
    return { stock, groups, count, spares, packs: bought.packs, washers, cost };
  });
}

/** Hardware by the piece. */
function hardwareNeeds({ parts }: ReviewInput): readonly HardwareNeed[] {
  const used = new Map(parts.hardware.map(({ stock }) => [stock.name, stock]));
  return [...used.values()].map((stock) => {
    const count = parts.hardware.filter((part) => part.stock.name === stock.name).length;
    return { stock, count, cost: timesMoney(count, stock.price) };
  });
}

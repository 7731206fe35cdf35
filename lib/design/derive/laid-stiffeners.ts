/** Stiffeners laid on their panels, leaves and shelves. */
import { Length } from "../../quantity/index.js";
import { type Box2, boundsOf } from "../../shape/index.js";
import type { CaseBody, Stiffener } from "../case.js";
import type { PlacedOpening, StiffenedZone } from "../parts.js";
import { type SheetStock, type Stock, type StripStock, stockNamed } from "../stock.js";
import type { SectionLayout } from "./layout.js";
import { fromCorner } from "./openings.js";
import { type StiffenedPiece, stiffenedPiece } from "./stiffened-pieces.js";

/** A stiffener on its piece. */
export interface LaidStiffener {
  /** "upper.front.window frame". */
  readonly id: string;
  /** What the case says of it. */
  readonly stiffener: Stiffener;
  /** The panel, leaf or shelf it is on. */
  readonly on: StiffenedPiece;
  /** What it is cut from. */
  readonly wood: { readonly strip: StripStock } | { readonly sheet: SheetStock };
  /** Where it lies, in the axes of its piece. */
  readonly zones: readonly StiffenedZone[];
  /** How far it stands off that. */
  readonly height: Length;
  /** The opening that it frames. */
  readonly framed?: PlacedOpening;
}

/** Every stiffener of a case on its piece. */
export function layStiffeners(
  description: CaseBody,
  stock: Stock,
  layouts: readonly SectionLayout[],
): readonly LaidStiffener[] {
  return description.stiffeners.map((stiffener) => {
    const on = stiffenedPiece(stiffener, description, stock, layouts);
    const { strip, sheet = "", standing } = stiffener;
    const wood =
      strip === undefined
        ? { sheet: stockNamed(stock, "sheets", sheet) }
        : { strip: stockNamed(stock, "strips", strip) };
    const framed = on.openings.find(({ name }) => name === stiffener.round);
    const lies =
      "sheet" in wood
        ? (stiffener.width ?? Length.si(0))
        : standing
          ? wood.strip.thickness
          : wood.strip.width;
    const height =
      "sheet" in wood ? wood.sheet.thickness : standing ? wood.strip.width : wood.strip.thickness;
    return {
      id: `${on.id}.${stiffener.name}`,
      stiffener,
      on,
      wood,
      zones: framed ? frameZones(framed, lies) : [zoneOf(stiffener, on, lies)],
      height,
      ...(framed ? { framed } : {}),
    };
  });
}

function zoneOf(stiffener: Stiffener, { outline }: StiffenedPiece, lies: number): StiffenedZone {
  const { from, across = Length.si(0), up = Length.si(0), length = Length.si(0), runs } = stiffener;
  const [width, height] = runs === "across" ? [length, lies] : [lies, length];
  const middle = fromCorner(boundsOf(outline), from, { across: across + width / 2, up: up + height / 2 });
  return {
    left: middle.x - width / 2,
    bottom: middle.y - height / 2,
    width,
    height,
    along: runs === "across" ? "x" : "y",
  };
}

/** Two pieces over the whole width of the frame, and two between them. */
function frameZones({ outline }: PlacedOpening, lies: number): readonly StiffenedZone[] {
  const { left, bottom, width, height } = boundsOf(outline);
  const level = { left: left - lies, width: width + 2 * lies, height: lies, along: "x" } as const;
  const upright = { bottom, width: lies, height, along: "y" } as const;
  return [
    { ...level, bottom: bottom - lies },
    { ...level, bottom: bottom + height },
    { ...upright, left: left - lies },
    { ...upright, left: left + width },
  ];
}

/** All that a stiffener covers, its opening counted in. */
export function coveredBy({ zones }: Pick<LaidStiffener, "zones">): Box2 {
  const left = Math.min(...zones.map((zone) => zone.left));
  const bottom = Math.min(...zones.map((zone) => zone.bottom));
  const right = Math.max(...zones.map((zone) => zone.left + zone.width));
  const top = Math.max(...zones.map((zone) => zone.bottom + zone.height));
  return { left, bottom, width: right - left, height: top - bottom };
}

/** Length of a zone along its stiffener. */
export function runOf({ along, width, height }: StiffenedZone): number {
  return along === "x" ? width : height;
}

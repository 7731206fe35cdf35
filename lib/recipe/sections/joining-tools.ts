/** Tools for gluing, fastening and staying whole. */

import { adhesiveTraits } from "../../bonding/index.js";
import type { FastenerKind } from "../../fastening/index.js";
import { takesWasher } from "../../model/index.js";
import { bitFor } from "../drill-bits.js";
import { when } from "../make-block.js";
import { distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** A tool and what it is for. */
export interface Tool {
  readonly tool: string;
  readonly use: string;
}

/** For laying laminate. */
export function gluing({ purchases, parts }: Workshop): Tool[] {
  if (parts.facings.length === 0) return [];
  const traits = purchases.adhesives.map(({ stock }) => adhesiveTraits[stock.kind]);
  const contact = traits.some(({ gripsOnTouch }) => gripsOnTouch);
  const pressed = traits.some(({ gripsOnTouch }) => !gripsOnTouch);
  return [
    ...when(
      traits.some(({ sprayed }) => !sprayed),
      () => ({ tool: "Roller or notched spreader", use: "spreading adhesive" }),
    ),
    ...when(
      traits.some(({ sprayed }) => sprayed),
      () => ({ tool: "Spray gun or canister hose", use: "spray adhesive" }),
    ),
    ...when(contact, () => ({
      tool: "Hard hand roller (J-roller), dowels as slip sticks",
      use: "laying laminate with contact adhesive",
    })),
    ...when(pressed, () => ({
      tool: "Flat cauls and clamps, or weights",
      use: "pressing laminate until the glue holds",
    })),
    { tool: "Router with a flush-trim bit, file", use: "trimming laminate to the panel" },
  ];
}

/** The tools that set fasteners of each kind, given their names. */
const settingTools: Readonly<Record<FastenerKind, (names: readonly string[]) => Tool>> = {
  rivet: (names) => ({ tool: `Blind rivet tool with nosepieces for: ${listed(names)}`, use: "riveting" }),
  screw: () => ({ tool: "Screwdriver, bits to match", use: "screws" }),
  insert: () => ({
    tool: "Insert driver, depth stop on the drill, screwdriver",
    use: "threaded inserts and their screws",
  }),
  bolt: () => ({ tool: "Two wrenches", use: "bolts and nuts" }),
};

/** For holes and fasteners. */
export function fastening({ parts, case: { units } }: Workshop): Tool[] {
  const { fastenings } = parts;
  const named = (kind: FastenerKind): string[] =>
    distinct(
      fastenings.filter(({ fastener }) => fastener.kind === kind).map(({ fastener }) => fastener.name),
    );
  const used = (Object.keys(settingTools) as FastenerKind[])
    .map((kind) => ({ kind, names: named(kind) }))
    .filter(({ names }) => names.length > 0);
  const bits = distinct(fastenings.map(({ fastener }) => bitFor(fastener, units).name));
  return [
    ...when(bits.length > 0, () => ({
      tool: `Drill with bits: ${listed(bits)}`,
      use: "holes for fasteners; drill a try hole in scrap first",
    })),
    ...when(fastenings.some(takesWasher), () => ({
      tool: "Long-nosed pliers, adhesive tape",
      use: "holding washers on the inside",
    })),
    ...used.map(({ kind, names }) => settingTools[kind](names)),
    { tool: "Clamps, four corner squares", use: "dry fit and edges" },
  ];
}

/** For the builder. */
export function safety({ purchases }: Workshop): Tool[] {
  const solvent = purchases.adhesives.some(({ stock }) => stock.solvent !== "none");
  return [
    { tool: "Eye and hearing protection, dust mask, dust extraction", use: "all work with power tools" },
    { tool: "Gloves", use: "carrying sheets and metal, never at a spinning blade" },
    ...when(solvent, () => ({
      tool: "Respirator and gloves as the safety data sheet says",
      use: "solvent adhesive",
    })),
  ];
}

/** Tools for gluing, fastening and staying whole. */

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
  const kinds = purchases.adhesives.map(({ stock }) => stock.kind);
  const contact = kinds.some((kind) => kind === "contact" || kind === "spray contact");
  const pressed = kinds.some((kind) => kind !== "contact" && kind !== "spray contact");
  return [
    ...when(
      kinds.some((kind) => kind !== "spray contact"),
      () => ({ tool: "Roller or notched spreader", use: "spreading adhesive" }),
    ),
    ...when(kinds.includes("spray contact"), () => ({
      tool: "Spray gun or canister hose",
      use: "spray adhesive",
    })),
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

/** For holes and fasteners. */
export function fastening({ parts, case: { units } }: Workshop): Tool[] {
  const { fastenings } = parts;
  const ofKind = (kind: string) => fastenings.filter(({ fastener }) => fastener.kind === kind);
  const bits = distinct(fastenings.map(({ fastener }) => bitFor(fastener, units).name));
  return [
    ...when(bits.length > 0, () => ({
      tool: `Drill with bits: ${listed(bits)}`,
      use: "holes for fasteners; drill a try hole in scrap first",
    })),
    ...when(ofKind("rivet").length > 0, () => ({
      tool: `Blind rivet tool with nosepieces for: ${listed(distinct(ofKind("rivet").map(({ fastener }) => fastener.name)))}`,
      use: "riveting",
    })),
    ...when(fastenings.some(takesWasher), () => ({
      tool: "Long-nosed pliers, adhesive tape",
      use: "holding washers on the inside",
    })),
    ...when(ofKind("screw").length > 0, () => ({ tool: "Screwdriver, bits to match", use: "screws" })),
    ...when(ofKind("insert").length > 0, () => ({
      tool: "Insert driver, depth stop on the drill, screwdriver",
      use: "threaded inserts and their screws",
    })),
    ...when(ofKind("bolt").length > 0, () => ({ tool: "Two wrenches", use: "bolts and nuts" })),
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

/**
 * What a step of the work uses beside what the bill buys: naming it in a step is what puts it on the shopping list.
 * A step is written with the template `step`, which takes words and supplies alike, so none can name what is not bought.
 */
import { listed } from "../findings/index.js";
import { distinct, grouped } from "./words.js";

/** Something that a step uses. */
export interface Supply {
  /** As a step and the list name it. */
  readonly name: string;
  /** Used up or built in, kept as a tool, or worn. */
  readonly kind: "bought" | "tool" | "worn";
  /** How much of it, where a builder would not know. */
  readonly amount?: string;
  /** What it is for, where the steps that name it do not say. */
  readonly use: string;
}

/** One step of the work, with all that it uses. */
export interface ShopStep {
  /** What to do. */
  readonly text: string;
  /** What it takes. */
  readonly uses: readonly Supply[];
}

/** A step written of words and of what it uses. */
export function step(
  words: TemplateStringsArray,
  ...parts: readonly (string | Supply | ShopStep)[]
): ShopStep {
  const text = words.reduce((said, word, i) => said + textOf(parts[i - 1]) + word);
  const uses = parts.flatMap((part) => (typeof part === "string" ? [] : "uses" in part ? part.uses : [part]));
  return { text, uses };
}

function textOf(part: string | Supply | ShopStep | undefined): string {
  if (part === undefined || typeof part === "string") return part ?? "";
  return "text" in part ? part.text : part.name;
}

/** A step with what it uses but does not name. */
export function using(base: ShopStep, ...more: readonly Supply[]): ShopStep {
  return { text: base.text, uses: [...base.uses, ...more] };
}

function bought(name: string, use: string, amount?: string): Supply {
  return { name, kind: "bought", use, ...(amount === undefined ? {} : { amount }) };
}

function tool(name: string, use: string): Supply {
  return { name, kind: "tool", use };
}

function worn(name: string, use: string): Supply {
  return { name, kind: "worn", use };
}

/** Supplies that many cases take. */
export const supplies = {
  alcohol: bought("denatured alcohol", "wiping faces clean", "1 bottle"),
  cloths: bought("lint-free cloths", "wiping", "1 pack"),
  tape: bought("masking tape", "holding laminate and washers", "1 roll"),
  sandpaper: bought("sandpaper, 120 grit", "edges and corners", "5 sheets"),
  brush: bought("small brush", "coating edges", "2"),
  sealer: bought("edge sealer", "raw edges of plywood", "1 small can"),
  rollerCovers: bought("glue roller covers", "spreading adhesive", "1 a session and 1 spare"),
  backer: bought("scrap boards", "behind what is drilled"),
  packing: bought("packing strips", "holding the gap of a door"),
  machineOil: bought("cutting oil for aluminium", "bars", "1 small can"),
  threadLock: bought("thread locker", "nuts that are no lock nuts", "1 small bottle"),
  sheetBlade: bought("fine-tooth saw blade for plywood", "sheets"),
  metalBlade: bought("saw blade for non-ferrous metal", "bars"),
  trimBit: bought("flush-trim router bit", "laminate"),
  openingBit: bought("straight router bit with guide bush", "openings with straight sides"),
  jScrew: tool("screwdriver and bits", "screws"),
  tape_measure: tool("tape, steel rule, square and fine pencil", "marking out"),
  calliper: tool("calliper", "thickness, bits and fasteners"),
  scale: tool("floor or hanging scale", "each section before it is lifted"),
  kitchenScale: tool("kitchen scale", "the adhesive can"),
  saw: tool("table saw or track saw with a straight guide", "sheets"),
  barSaw: tool("mitre saw with a stop", "bars and strips"),
  router: tool("router", "openings and trimming"),
  jigsaw: tool("jigsaw", "openings, in place of the router"),
  trestles: tool("trestles", "panels while their glue dries"),
  weights: tool("board and weights", "panels while their glue cures"),
  deburr: tool("file and deburring tool", "cut metal"),
  drill: tool("drill with a depth stop", "holes"),
  clamps: tool("clamps and four corner squares", "dry fit"),
  jRoller: tool("J-roller", "laying laminate"),
  dowels: bought("dowels as slip sticks", "laying laminate", "10, as long as the panels are wide"),
  cauls: tool("flat cauls and weights", "pressing laminate"),
  spray: tool("spray gun or canister hose", "spray adhesive"),
  riveter: tool("blind rivet tool with its nosepieces", "rivets"),
  wrenches: tool("two wrenches", "bolts and nuts"),
  insertDriver: tool("insert driver", "threaded inserts"),
  pliers: tool("long-nosed pliers", "washers inside"),
  blanket: tool("blanket", "laying a section on its back"),
  eyes: worn("eye and hearing protection", "all work with power tools"),
  mask: worn("fitted dust mask and extraction", "sawing and routing"),
  gloves: worn("gloves", "sheets and metal, never at a spinning blade"),
  respirator: worn("respirator and glue gloves", "solvent adhesive, as its safety data sheet says"),
} as const satisfies Readonly<Record<string, Supply>>;

/** A thing that one case alone asks for, such as slides for its shelf. */
export function needed(name: string, use: string, amount: string): Supply {
  return bought(name, use, amount);
}

/** Every supply of steps once, in the order of first use, with all that it is for: foam for one thing and for another. */
export function suppliesOf(steps: readonly ShopStep[], kind: Supply["kind"]): readonly Supply[] {
  const uses = steps.flatMap((one) => one.uses).filter((one) => one.kind === kind);
  return grouped(uses, ({ name }) => name).map(([, some]) => {
    const amounts = distinct(some.flatMap(({ amount }) => amount ?? []));
    const last = some.at(-1) ?? some[0];
    return amounts.length > 1 && amounts.every((one) => one.startsWith("for "))
      ? { ...last, amount: listed(amounts) }
      : last;
  });
}

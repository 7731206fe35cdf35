/** Which tables of the stock a case leads to. */
import type { CaseBuild, Content } from "./case.js";
import type { Stock } from "./stock.js";

/** The tables that a case cannot do without; of a case that could not be read, the sheets alone. */
export function usedTables(
  description: Pick<CaseBuild, "sections" | "hardware" | "shelves" | "contents"> | undefined,
): ReadonlySet<keyof Stock> {
  if (!description) return new Set(["sheets"]);
  const { sections, hardware, shelves, contents } = description;
  const barred = sections.some(({ edges }) => Object.values(edges).some(({ extrusion }) => extrusion));
  const faced = sections.some(({ panels }) => Object.values(panels).some(({ facing }) => facing));
  const fastened = barred || hardware.length > 0 || shelves.length > 0 || contents.some(isFastened);
  return new Set<keyof Stock>([
    "sheets",
    ...(barred ? (["bars"] as const) : []),
    ...(faced ? (["facings", "adhesives"] as const) : []),
    ...(hardware.length > 0 ? (["hardware"] as const) : []),
    ...(fastened ? (["fasteners"] as const) : []),
  ]);
}

function isFastened({ held }: Content): boolean {
  return "fastener" in held;
}

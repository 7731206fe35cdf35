/** For which section of the case each thing on the bill is bought. */
import { type Parts, sheetPieces } from "../../design/index.js";
import { type SectionShare, sharesOf } from "../../money/index.js";

/** How a line that several sections have a part in is shared among them, in words. */
export const sharingRule =
  "What more than one section needs is shared: sheets and laminate by the area of each section's pieces, bars by their length, adhesive by the area glued, fasteners and hardware by their number, shipping and tax by the cost of the goods they come with.";

/** The shares of each stock, by its name. */
export interface StockShares {
  sheet(name: string): readonly SectionShare[];
  facing(name: string): readonly SectionShare[];
  bar(name: string): readonly SectionShare[];
  adhesive(name: string): readonly SectionShare[];
  fastener(name: string): readonly SectionShare[];
  hardware(name: string): readonly SectionShare[];
}

/** One use of a stock. */
interface Use {
  readonly section: string;
  readonly stock: string;
  readonly amount: number;
}

/** The shares of every stock that a case is made of, by `sharingRule`. */
export function stockShares(parts: Parts): StockShares {
  const panels = sheetPieces(parts);
  const sectionOf = new Map(panels.map(({ id, section }) => [id, section]));
  const at = (panel: string): string => sectionOf.get(panel) ?? "whole case";
  const sharing = sharingOf(parts.sections.map(({ name }) => name));
  return {
    sheet: sharing(
      panels.map(({ section, sheet, grossArea }) => ({ section, stock: sheet.name, amount: grossArea })),
    ),
    facing: sharing(
      parts.facings.map(({ panel, stock, width, height }) => ({
        section: at(panel),
        stock: stock.name,
        amount: width * height,
      })),
    ),
    bar: sharing(
      parts.bars.map(({ section, stock, length }) => ({ section, stock: stock.name, amount: length })),
    ),
    adhesive: sharing(
      parts.facings.map(({ panel, adhesive, gluedArea }) => ({
        section: at(panel),
        stock: adhesive.name,
        amount: gluedArea,
      })),
    ),
    fastener: sharing(
      parts.fastenings.map(({ panel, fastener, count }) => ({
        section: at(panel),
        stock: fastener.name,
        amount: count,
      })),
    ),
    hardware: sharing(
      parts.hardware.map(({ section, stock }) => ({ section, stock: stock.name, amount: 1 })),
    ),
  };
}

/** Shares in the order in which the case names its sections. */
function sharingOf(sections: readonly string[]) {
  return (uses: readonly Use[]) =>
    (name: string): readonly SectionShare[] => {
      const mine = uses.filter(({ stock }) => stock === name);
      return sharesOf(mine.sort((a, b) => sections.indexOf(a.section) - sections.indexOf(b.section)));
    };
}

/** "lower", or "lower 60 %, upper 40 %" of a line that is shared; a section and its share stay on one line. */
export function sharesInWords(shares: readonly SectionShare[]): string {
  if (shares.length === 1) return shares[0]?.section ?? "";
  return shares.map(({ section, share }) => `${section}\u00a0${Math.round(share * 100)}\u00a0%`).join(", ");
}

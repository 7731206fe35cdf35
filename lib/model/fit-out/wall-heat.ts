import type { PanelPart } from "../../design/index.js";
import {
  HeatConductance,
  HeatConductivity,
  stillFilm,
  wallConductance,
  wallTransmittance,
} from "../../inside/index.js";
import type { ReviewInput } from "../review-input.js";

/** Plywood and laminate, W/mK; common values, from memory: 0.13 as in ISO 10456, 0.25. */
const plywood = HeatConductivity.si(0.13);
const laminate = HeatConductivity.si(0.25);

/** Faces with free air outside: not those between stacked sections. */
export function freeFaces({ parts, case: { sections } }: ReviewInput, section: string): readonly PanelPart[] {
  const level = sections.findIndex(({ name }) => name === section);
  const covered = [level < sections.length - 1 ? "top" : "", level > 0 ? "bottom" : ""];
  return parts.panels.filter(
    (panel) => panel.section === section && panel.role === "face" && !covered.includes(panel.face ?? ""),
  );
}

/** Heat through a square metre of one face. */
export function transmittanceOf({ sheet, facing }: PanelPart): ReturnType<typeof wallTransmittance.worked> {
  const skins = facing ? (facing.sides === "both" ? 2 : 1) : 0;
  return wallTransmittance.worked({
    layers: [
      { thickness: sheet.thickness, conductivity: plywood },
      ...Array.from({ length: skins }, () => ({
        thickness: facing?.stock.thickness ?? sheet.thickness,
        conductivity: laminate,
      })),
    ],
    insideFilm: stillFilm,
    outsideFilm: stillFilm,
  });
}

/** Heat that all walls of a section pass for each degree. */
export function wallsOf(input: ReviewInput, section: string): HeatConductance {
  return HeatConductance.si(freeFaces(input, section).reduce((sum, panel) => sum + wallOf(panel).value, 0));
}

/** Heat that one face passes for each degree. */
export function wallOf(panel: PanelPart): ReturnType<typeof wallConductance.worked> {
  return wallConductance.worked({ transmittance: transmittanceOf(panel).value, area: panel.netArea });
}

import type { PanelPart } from "../../design/index.js";
import { HeatConductivity, stillFilm, wallConductance, wallTransmittance } from "../../inside/index.js";

/** Plywood and laminate, W/mK; common values, from memory: 0.13 as in ISO 10456, 0.25. */
const plywood = HeatConductivity.si(0.13);
const laminate = HeatConductivity.si(0.25);

/** Heat that one face passes for each degree. */
export function wallOf(panel: PanelPart): ReturnType<typeof wallConductance.worked> {
  const { sheet, facing, netArea } = panel;
  const skins = facing ? (facing.sides === "both" ? 2 : 1) : 0;
  const transmittance = wallTransmittance({
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
  return wallConductance.worked({ transmittance, area: netArea });
}

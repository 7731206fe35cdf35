/** Heat through the walls of a section, and what the sun sends in. */
import type { PanelPart, Sun } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  HeatConductance,
  HeatConductivity,
  shadowArea,
  solAir,
  stillFilm,
  sunHeat,
  sunTaken,
  TemperatureRise,
  wallConductance,
  wallTransmittance,
} from "../../inside/index.js";
import { Area, type Power, type Temperature } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
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
function transmittanceOf({ sheet, facing }: PanelPart): ReturnType<typeof wallTransmittance.worked> {
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

/** What the sun does to a section. */
export interface SunOnSection {
  /** Through the walls. */
  readonly heat: Power;
  /** As warm as the sunlit facing gets at the most. */
  readonly face: Temperature;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Clear sky takes nothing back: to the safe side, and true of upright faces. */
const noSkyLoss = TemperatureRise.si(0);

/**
 * Heat that the sun sends into a section through its faced ply, wherever it takes hold of most.
 *
 * @throws Refusal where a formula refuses its inputs
 */
export function sunOnSection(
  input: ReviewInput,
  section: string,
  { facing, strength }: Sun,
  outside: Temperature,
): SunOnSection {
  const faces = freeFaces(input, section);
  const largest = (...names: readonly string[]): Area =>
    Area.si(
      Math.max(0, ...faces.filter(({ face = "" }) => names.includes(face)).map(({ netArea }) => netArea)),
    );
  const area = shadowArea.worked({
    top: largest("top"),
    front: largest("front", "back"),
    side: largest("left", "right"),
  });
  const air = solAir.worked({ outside, taken: sunTaken[facing], sun: strength, skyLoss: noSkyLoss });
  const wall = transmittanceOf(thinnest(faces));
  const gain = sunHeat.worked({
    transmittance: wall.value,
    area: area.value,
    rise: TemperatureRise.si(air.value - outside),
  });
  return { heat: gain.value, face: air.value, because: [air, area, wall, gain] };
}

/**
 * The wall that lets most through.
 *
 * @throws Refusal where there is no wall
 */
function thinnest(faces: readonly PanelPart[]): PanelPart {
  const [first] = [...faces].sort((a, b) => transmittanceOf(b).value - transmittanceOf(a).value);
  if (!first) throw new Refusal("sun: the section has no walls");
  return first;
}

import type { PanelPart, Sun } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { shadowArea, solAir, sunHeat, sunTaken, TemperatureRise } from "../../inside/index.js";
import { Area, type Power, type Temperature } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { freeFaces, transmittanceOf } from "./wall-heat.js";

/** What the sun does to a section. */
export interface SunOnSection {
  /** Through the walls. */
  readonly heat: Power;
  /** As warm as the sunlit facing gets at the most. */
  readonly face: Temperature;
  readonly because: readonly WorkedLine[];
}

/** Clear sky takes nothing back: to the safe side, and true of upright faces. */
const noSkyLoss = TemperatureRise.si(0);

/**
 * Heat that the sun sends into a section through its faced ply, wherever it takes hold of most.
 *
 * @throws RangeError where a formula refuses its inputs
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

/** The wall that lets most through. */
function thinnest(faces: readonly PanelPart[]): PanelPart {
  const [first] = [...faces].sort((a, b) => transmittanceOf(b).value - transmittanceOf(a).value);
  if (!first) throw new RangeError("sun: the section has no walls");
  return first;
}

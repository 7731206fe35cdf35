/** Stiffeners of a panel as strips of another make-up. */
import type { PanelPart, StiffenedZone, StiffenerPart } from "../../design/index.js";
import { type Sheet, type SheetRegion, withBatten } from "../../fem/index.js";
import { slippingShare } from "../../material/index.js";
import { Area, Length, Pressure, type Ratio, ratio } from "../../quantity/index.js";
import { boundsOf, clipped, rectangle } from "../../shape/index.js";
import { woodSlip } from "../joints/wood-slip.js";
import type { ReviewInput } from "../review-input.js";
import { sheetModuli } from "./sheet-moduli.js";

/** What of a strip of wood shears as its length is stretched: softwood, a sixteenth. Common practice, no source. */
const stripShear = 1 / 16;

/** Moduli of a stiffener along its zone and across it, Pa. */
interface WoodModuli {
  /** Along the zone. */
  readonly modulus: number;
  /** Across the zone. */
  readonly across: number;
  /** In its plane. */
  readonly shearModulus: number;
  /** kg/m3 */
  readonly density: number;
}

/**
 * Where stiffeners lie on a panel, in the panel's own axes, with the make-up there: glued they work together with the
 * sheet, on fasteners alone they slip (EN 1995, annex B).
 *
 * @param base make-up of the bare panel
 * @param outward which way of the make-up looks out of the case
 */
export function stiffenedZones(
  panel: PanelPart,
  base: Sheet,
  input: ReviewInput,
  outward: 1 | -1 = 1,
): readonly SheetRegion[] {
  return input.parts.stiffeners
    .filter((one) => one.panel === panel.id)
    .flatMap((one) => {
      const side = one.side === "outside" ? outward : outward === 1 ? -1 : 1;
      return one.zones.map((zone): SheetRegion => {
        const { left, bottom, width, height } = zone;
        return { left, bottom, width, height, sheet: zoneSheet(base, one, zone, side, input) };
      });
    });
}

/** The same within the panel's clear span, from where the span begins. */
export function stiffenedSpan(panel: PanelPart, base: Sheet, input: ReviewInput): readonly SheetRegion[] {
  const { clearLow, clearWidth, clearHeight } = panel;
  const span = { left: 0, bottom: 0, width: clearWidth, height: clearHeight };
  return stiffenedZones(panel, base, input).flatMap(({ sheet, ...zone }) => {
    const shifted = { ...zone, left: zone.left - clearLow.x, bottom: zone.bottom - clearLow.y };
    return clipped(rectangle(shifted), span).map((within) => ({ ...boundsOf(within), sheet }));
  });
}

function zoneSheet(
  base: Sheet,
  stiffener: StiffenerPart,
  zone: StiffenedZone,
  side: 1 | -1,
  input: ReviewInput,
): Sheet {
  const { along, width, height: up } = zone;
  const { height, strip } = stiffener;
  const moduli = moduliOf(stiffener, zone, input);
  const wide = along === "x" ? up : width;
  return withBatten(base, {
    along,
    height,
    side,
    ...moduli,
    share: shareOf(stiffener, zone, moduli, input),
    ...(strip && height > wide ? { twist: (wide / height) ** 2 } : {}),
  });
}

function moduliOf({ strip, piece }: StiffenerPart, { along }: StiffenedZone, input: ReviewInput): WoodModuli {
  if (strip) {
    const { modulus, density } = strip;
    return { modulus, across: 0, shearModulus: stripShear * modulus, density };
  }
  if (!piece) return { modulus: 0, across: 0, shearModulus: 0, density: 0 };
  const moduli = sheetModuli(piece.sheet, input.measurements);
  const withGrain = (piece.grain === "across") === (along === "x");
  const [modulus, across] = withGrain
    ? [moduli.along.modulus, moduli.across.modulus]
    : [moduli.across.modulus, moduli.along.modulus];
  return { modulus, across, shearModulus: moduli.shear.modulus, density: piece.sheet.density };
}

/** Glue lets nothing slip; a row of fasteners does. */
function shareOf(
  { adhesive, id, height }: StiffenerPart,
  { along, width, height: up }: StiffenedZone,
  { modulus }: WoodModuli,
  input: ReviewInput,
): Ratio {
  if (adhesive) return ratio(1);
  const row = input.parts.fastenings.find(({ why, holds }) => why === "stiffener" && holds === id);
  if (!row?.pitch) return ratio(0);
  const [length, wide] = along === "x" ? [width, up] : [up, width];
  return slippingShare({
    modulus: Pressure.si(modulus),
    area: Area.si(wide * height),
    pitch: row.pitch,
    slip: woodSlip(input, row),
    length: Length.si(length),
  });
}

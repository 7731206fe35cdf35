/** One fastener of each kind in one sheet, side by side: what to take where. */
import type { SheetStock } from "../../design/index.js";
import {
  boltClamp,
  dowelShear,
  dowelYieldMoment,
  glueLineShear,
  headPullThrough,
  inclinedScrewPull,
  nailWithdrawalAllowable,
  nailWithdrawalUltimate,
  plywoodEmbedment,
  screwWithdrawalAllowable,
  screwWithdrawalUltimate,
  specificGravity,
  threadStrip,
  timberEmbedment,
  trackClamp,
} from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
import { type SpeciesName, species } from "../../material/index.js";
import {
  Density,
  degree,
  type Force,
  type Length,
  Moment,
  megapascal,
  mm,
  newton,
  type Ratio,
  ratio,
} from "../../quantity/index.js";
import { indoorMoisture } from "./fastener-strength.js";

/** Load of one fastener of a kind. */
export interface KindLoad {
  /** The fastener and where it sits, in words. */
  readonly kind: string;
  /** What one of them bears. */
  readonly load: Force;
  /** What the figure means: an allowable one carries its margin, an average one does not. */
  readonly figure: "allowable" | "average at failure" | "95 of 100 hold" | "estimate";
  /** The worked line. */
  readonly because: WorkedLine;
}

/** Friction of dry metal on metal; common practice, on the low side. */
const plainFriction = ratio(0.15);

/**
 * One fastener of each kind, pulled out of or off one sheet: nail and screw through its thickness, and sideways on a
 * batten; rivet or bolt by head and washer, insert, pocket screw, a hand's breadth of glue, a clamp in a track.
 */
export function fastenerKinds(sheet: SheetStock): readonly KindLoad[] {
  const gravity = specificGravity({ density: sheet.density, moisture: indoorMoisture });
  return [...inWood(sheet, gravity), ...throughHeads(sheet, gravity), ...otherKinds(sheet)];
}

/** Nails and screws. */
function inWood(sheet: SheetStock, gravity: Ratio): readonly KindLoad[] {
  const through = sheet.thickness;
  const nail = { specificGravity: gravity, diameter: mm(2.5), penetration: through };
  const screw = {
    specificGravity: gravity,
    diameter: mm(4.2),
    penetration: through,
    base: "plywood",
  } as const;
  return [
    kind("nail 2.5 mm, thickness of the sheet", "average at failure", nailWithdrawalUltimate.worked(nail)),
    kind("nail 2.5 mm, thickness of the sheet", "allowable", nailWithdrawalAllowable.worked(nail)),
    kind(
      "wood screw 4.2 mm, thickness of the sheet",
      "average at failure",
      screwWithdrawalUltimate.worked(screw),
    ),
    kind("wood screw 4.2 mm, thickness of the sheet", "allowable", screwWithdrawalAllowable.worked(screw)),
    sideways("nail 2.5 mm, sheet on a batten, pushed sideways", sidewaysLine(sheet, mm(2.5), "driven")),
    sideways(
      "wood screw 4.2 mm, sheet on a batten, pushed sideways",
      sidewaysLine(sheet, mm(4.2), "drilled"),
    ),
    kind(
      "pocket screw 4 mm, 25 mm of thread at 30 degrees",
      "95 of 100 hold",
      inclinedScrewPull.worked({
        density: Density.si(sheet.density),
        diameter: mm(4),
        penetration: mm(25),
        angle: degree(30),
        count: ratio(1),
      }),
    ),
  ];
}

/** What pulls its head, tail or washer through the sheet. */
function throughHeads({ thickness }: SheetStock, gravity: Ratio): readonly KindLoad[] {
  const head = (diameter: Length) =>
    headPullThrough.worked({ specificGravity: gravity, headDiameter: diameter, thickness });
  return [
    kind("rivet with a 10 mm tail on bare ply", "allowable", head(mm(10))),
    kind("rivet or bolt on a 16 mm washer", "allowable", head(mm(16))),
  ];
}

/** An insert, glue, and a clamp. */
function otherKinds({ thickness: through, species: name }: SheetStock): readonly KindLoad[] {
  const wood = species[name as SpeciesName];
  const clamped = boltClamp({ torque: Moment.si(5), diameter: mm(6), nutFactor: ratio(0.2) });
  return [
    kind(
      "insert, 10 mm outer thread, thickness of the sheet",
      "estimate",
      threadStrip.worked({ diameter: mm(10), engaged: through, shearStrength: wood.shearStrength.value }),
    ),
    kind(
      "glue along 100 mm of edge, screws as clamps",
      "estimate",
      glueLineShear.worked({
        length: mm(100),
        width: through,
        shearStrength: megapascal(3),
        bonded: ratio(0.5),
      }),
    ),
    kind(
      "6 mm clamp in a track, drawn up by hand",
      "estimate",
      trackClamp.worked({ clampForce: clamped, friction: plainFriction, faces: ratio(2) }),
    ),
  ];
}

function sideways(name: string, line: ReturnType<typeof sidewaysLine>): KindLoad {
  return { kind: name, load: line.value.strength, figure: "95 of 100 hold", because: line };
}

function kind(
  name: string,
  figure: KindLoad["figure"],
  line: WorkedLine & { readonly value: Force },
): KindLoad {
  return { kind: name, load: line.value, figure, because: line };
}

/** Softwood battens of any yard, on the low side; common practice. */
const battenDensity = Density.of(350, "kg/m3");

/** Wire nails and screws of any shop, on the low side; common practice. */
const wireStrength = megapascal(600);

/** One nail or screw through a sheet into a batten, without the help of its head. */
function sidewaysLine(
  sheet: SheetStock,
  diameter: Length,
  hole: "drilled" | "driven",
): WorkedLine & { readonly value: { readonly strength: Force } } {
  return dowelShear.worked({
    outerThickness: sheet.thickness,
    innerThickness: mm(25),
    outerEmbedment: plywoodEmbedment({ density: sheet.density, diameter }),
    innerEmbedment: timberEmbedment({ density: battenDensity, diameter, hole }),
    diameter,
    yieldMoment: dowelYieldMoment({ tensileStrength: wireStrength, diameter }),
    withdrawal: newton(0),
    helpShare: ratio(0),
  });
}

/** The gluing of the case as a plan of rounds and hours, and what heat and damp do to its edges. */
import {
  closedVehicle,
  facingEdgeStress,
  facingWarp,
  glueFilms,
  heatLimits,
  porousEdgeShare,
  spreadingSpeed,
  workPlan,
} from "../../bonding/index.js";
import type { Adhesive, FacingPart, PanelPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { expansions } from "../../material/index.js";
import { type ReviewInput, sheetModuli } from "../../model/index.js";
import { Area, Length, type Pressure, type Ratio, ratio, type Temperature } from "../../quantity/index.js";

/** One adhesive of the case, with its rounds. */
export interface GluePlan {
  /** The adhesive. */
  readonly adhesive: Adhesive;
  /** How many facings it glues. */
  readonly pieces: number;
  /** Its rounds and hours, worked out. */
  readonly plan: ReturnType<typeof workPlan.worked>;
  /** Share of glue that the sheet's raw edges would take on top, if they are sealed with it. */
  readonly edges: Ratio;
  /** Heat at which its sort begins to let go, and whether a closed vehicle in the sun gets there. */
  readonly heatLimit: Temperature;
  /** Whether it holds in a closed vehicle in the sun. */
  readonly standsVehicle: boolean;
}

/** Common practice, no source: spreading takes at most half of the open time, and raw edges drink two and a half coats. */
const spreadingShare = ratio(0.5);
const soaking = ratio(2.5);

/** The plan of each adhesive that the case uses. */
export function gluePlans({ parts }: ReviewInput): readonly GluePlan[] {
  const adhesives = new Map(parts.facings.map(({ adhesive }) => [adhesive.name, adhesive]));
  return [...adhesives.values()].map((adhesive) => {
    const pieces = parts.facings.filter((piece) => piece.adhesive.name === adhesive.name);
    const area = Area.si(pieces.reduce((sum, { gluedArea }) => sum + gluedArea, 0));
    const heatLimit = heatLimits[adhesive.kind];
    return {
      adhesive,
      pieces: pieces.length,
      plan: workPlan.worked({
        area,
        faces: adhesive.faces === "both" ? 2 : 1,
        spreadInMinute: spreadingSpeed[adhesive.kind],
        openTime: adhesive.openTime,
        pressTime: adhesive.pressTime,
        cureTime: adhesive.cureTime,
        share: spreadingShare,
      }),
      edges: porousEdgeShare({ edgeArea: edgeArea(pieces, parts.panels), soaking, faceArea: area }),
      heatLimit,
      standsVehicle: heatLimit > closedVehicle,
    };
  });
}

function edgeArea(pieces: readonly FacingPart[], panels: readonly PanelPart[]): Area {
  const faced = panels.filter(({ id }) => pieces.some(({ panel }) => panel === id));
  return Area.si(
    faced.reduce((sum, { width, height, sheet }) => sum + 2 * (width + height) * sheet.thickness, 0),
  );
}

/** A climate that the glued panel goes through. */
export interface GluedClimate {
  /** Change of temperature, K. */
  readonly warming: Ratio;
  /** Change of relative humidity, as a share. */
  readonly moistening: Ratio;
}

/** What a facing's own growth does to a faced panel. */
export interface FacingStress {
  /** The name of the laminate. */
  readonly facing: string;
  /** The largest panel that it faces. */
  readonly panel: string;
  /** Largest shear in the film of glue, at its end. */
  readonly shear: Pressure;
  /** Largest pull across the film of glue, at its end. */
  readonly peel: Pressure;
  /** Bow of the free panel, faced on one side; nothing where both sides are. */
  readonly bow: Length | undefined;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Laminate is glued with contact adhesive. */
const film = glueFilms.contact;

/**
 * Shear, peel and bow of the largest panel of each facing when the air dries and warms by so much.
 *
 * @param climate change of relative humidity as a share, and of temperature in kelvin
 */
export function facingStresses(
  input: ReviewInput,
  { warming, moistening }: GluedClimate,
): readonly FacingStress[] {
  const faced = input.parts.panels.filter(({ facing }) => facing !== undefined);
  const names = [...new Set(faced.flatMap(({ facing }) => facing?.stock.name ?? []))];
  const { plywood, "high-pressure laminate": laminate } = expansions;
  const grown = (kind: typeof plywood): number =>
    kind.heat.value * warming + kind.humidity.value * moistening;
  const mismatch = ratio(Math.abs(grown(laminate) - grown(plywood)));
  return names.flatMap((name) => {
    const [panel] = faced
      .filter(({ facing }) => facing?.stock.name === name)
      .sort((a, b) => b.grossArea - a.grossArea);
    if (!panel?.facing) return [];
    const layers = {
      facingModulus: panel.facing.stock.modulus,
      facingThickness: panel.facing.stock.thickness,
      sheetModulus: sheetModuli(panel.sheet, input.measurements).across.modulus,
      sheetThickness: panel.sheet.thickness,
      mismatch,
    };
    const length = Length.si(Math.max(panel.width, panel.height));
    const edge = facingEdgeStress.worked({
      ...layers,
      length,
      glueShearModulus: film.shearModulus,
      glueThickness: film.thickness,
    });
    const bow = facingWarp.worked({ ...layers, span: length });
    const both = panel.facing.sides === "both";
    return [
      {
        facing: name,
        panel: panel.id,
        shear: edge.value.shear,
        peel: edge.value.peel,
        bow: both ? undefined : bow.value,
        because: both ? [edge] : [edge, bow],
      },
    ];
  });
}

/** What a panel's stresses come to against what its sheet stands: bending both ways, twisting, and shear through it. */
import type { PanelPart } from "../../design/index.js";
import type { LargestMoments } from "../../fem/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  durationFactor,
  type EnDuration,
  type LoadDuration,
  plywoodDesign,
  plywoodStrength,
} from "../../material/index.js";
import { plateBendingStress, plateShearStress } from "../../mechanics/index.js";
import { type PlateMoment, Pressure, type Ratio, ratio } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { serviceClassOf } from "./panel-load.js";
import { type SheetStrength, weakerRolling } from "./sheet-strength.js";

/** EN 1990 multiplies a load that comes and goes by this before it is compared with a design strength. */
export const loadFactor: Ratio = ratio(1.5);

/** One way in which a panel may break. */
export interface PanelStress {
  /** "bending across its grain". */
  readonly what: string;
  /** With the load factor. */
  readonly stress: Pressure;
  /** What the code allows. */
  readonly allowed: Pressure;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** What breaks first, and how the other code sees it. */
export interface PanelUse {
  /** The one nearest to breaking. */
  readonly worst: PanelStress;
  /** Stress over strength by US allowable stresses for any plywood of its species group. */
  readonly usUse: Ratio;
  /** The worked lines of the US figure. */
  readonly usBecause: readonly WorkedLine[];
}

/** What presses on a panel, and for how long in all. */
export interface StressedPanel {
  /** The panel. */
  readonly panel: PanelPart;
  /** What its sheet stands. */
  readonly strength: SheetStrength;
  /** The largest of each. */
  readonly moments: Pick<LargestMoments, "alongX" | "alongY" | "twist" | "edgeShear">;
  /** How long the load stays, by EN 1995. */
  readonly duration: EnDuration;
}

/** The same time by the US standard. */
const usDurations: Readonly<Record<EnDuration, LoadDuration>> = {
  permanent: "ten years",
  long: "ten years",
  medium: "two months",
  short: "ten minutes",
  instantaneous: "impact",
};

/** US Group 1 plywood, grade S-2, dry, a load of ten years: in bending and in rolling. */
const usAllowed = { bending: Pressure.of(1650, "psi"), rolling: Pressure.of(53, "psi") };

/** How near a panel comes to breaking. Its facing is not counted on: all is borne by the sheet. */
export function panelUse(stressed: StressedPanel, input: ReviewInput): PanelUse {
  const stresses = stressesOf(stressed, input);
  const worst = stresses.reduce((most, one) => (useOf(one) > useOf(most) ? one : most));
  const factor = durationFactor.worked({ duration: usDurations[stressed.duration] });
  const us = plywoodStrength.worked({
    veneers: stressed.panel.sheet.veneers,
    bending: Pressure.si(usAllowed.bending * factor.value),
    rolling: Pressure.si(usAllowed.rolling * factor.value),
  });
  const { thickness } = stressed.panel.sheet;
  const sheared = plateShearStress({ shear: stressed.moments.edgeShear, thickness });
  const uses = directionsOf(stressed).map(
    ({ grain, moment }) =>
      plateBendingStress({ moment, thickness }) /
      (grain === "along" ? us.value.bendingAlong : us.value.bendingAcross),
  );
  return {
    worst,
    usUse: ratio(Math.max(...uses, sheared / weakerRolling(us.value))),
    usBecause: [factor, us],
  };
}

function useOf({ stress, allowed }: PanelStress): number {
  return stress / allowed;
}

/** A moment by how the face grain runs to it. */
interface GrainMoment {
  /** Whether it bends the sheet along its face grain. */
  readonly grain: "along" | "across";
  /** The largest of its direction. */
  readonly moment: PlateMoment;
}

function directionsOf({
  panel,
  moments: { alongX, alongY },
}: Pick<StressedPanel, "panel" | "moments">): readonly [GrainMoment, GrainMoment] {
  const [along, across] = panel.grain === "across" ? [alongX, alongY] : [alongY, alongX];
  return [
    { grain: "along", moment: along },
    { grain: "across", moment: across },
  ];
}

/** Bending both ways; twisting and shear where the handbook has figures. */
function stressesOf(stressed: StressedPanel, input: ReviewInput): readonly [PanelStress, ...PanelStress[]] {
  const { panel, strength, moments, duration } = stressed;
  const { thickness } = panel.sheet;
  const serviceClass = serviceClassOf(input);
  const compared = (
    what: string,
    line: WorkedLine & { readonly value: Pressure },
    characteristic: Pressure,
    because: readonly WorkedLine[] = [],
  ): PanelStress => {
    const allowed = plywoodDesign.worked({ characteristic, duration, serviceClass });
    return {
      what,
      stress: Pressure.si(loadFactor * line.value),
      allowed: allowed.value,
      because: [...because, line, allowed],
    };
  };
  const bending = ({ grain, moment }: GrainMoment): PanelStress => {
    const { strength: characteristic, because } = strength.bending[grain];
    const line = plateBendingStress.worked({ moment, thickness });
    return compared(`bending ${grain} its grain`, line, characteristic, because);
  };
  const [along, across] = directionsOf(stressed);
  const { handbook } = strength;
  if (!handbook) return [bending(along), bending(across)];
  const twisted = plateBendingStress.worked({ moment: moments.twist, thickness });
  const sheared = plateShearStress.worked({ shear: moments.edgeShear, thickness });
  return [
    bending(along),
    bending(across),
    compared("twisting", twisted, handbook.panelShear),
    compared("shear through it", sheared, handbook.rolling),
  ];
}

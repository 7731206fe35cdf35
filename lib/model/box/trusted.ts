/** A value of the box model with what the mesh and the builder's measured moduli leave open about it. */
import { meshChange } from "../../fem/index.js";
import { spread, type Uncertainties } from "../../measure/index.js";
import { Ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../ratio-interval.js";
import type { ReviewInput } from "../review-input.js";
import type { ModuliShares } from "../stiffness/panel-sheet.js";
import { sheetModuli } from "../stiffness/sheet-moduli.js";
import { type CaseRun, type CaseRuns, larger } from "./case-box.js";
import type { SectionStiffness } from "./section-stiffness.js";

/** A value with its doubt. */
export interface MeshedValue {
  readonly value: number;
  /** Change from the rougher mesh, as a share. */
  readonly meshError: Ratio;
}

/**
 * A value read from both meshes.
 *
 * @param of reads it from one run
 */
export function onBothMeshes({ fine, rough }: CaseRuns, of: (run: CaseRun) => number): MeshedValue {
  const [value, rougher] = [of(fine), of(rough)];
  return { value, meshError: meshChange(value, rougher) };
}

/** The powers with which what a section racks, pushed along x (0) or y (1), follows the moduli of its sheets. */
export function rackingPowers({ rough, stiffer }: CaseRuns, section: string, way: 0 | 1): ModuliShares {
  const of = (sections: readonly SectionStiffness[]): number =>
    sections.find((one) => one.section === section)!.racking[way];
  const power = (sections: readonly SectionStiffness[]): number =>
    -Math.log(of(sections) / of(rough.sections)) / Math.log(larger);
  return { along: power(stiffer.along), across: power(stiffer.across) };
}

/**
 * What the scatter of the builder's bend tests does to a ratio that goes with a value; undefined without tests.
 *
 * @param input the case
 * @param ratio demand over capacity
 * @param powers with which it follows the moduli
 */
export function moduliInterval(
  input: ReviewInput,
  ratio: number,
  powers: ModuliShares,
): RatioInterval | undefined {
  const uncertainties = moduliUncertainties(input);
  if (Object.keys(uncertainties).length === 0) return undefined;
  const of = ({ along, across }: Record<keyof ModuliShares, Ratio>): Ratio =>
    Ratio.si(ratio * along ** powers.along * across ** powers.across);
  const { interval, shares } = spread(of, { along: Ratio.si(1), across: Ratio.si(1) }, uncertainties);
  return {
    ...interval,
    shares: shares.map(({ input: name, share }) => ({ input: `modulus ${name} the grain`, share })),
  };
}

/** Of the sheet that most of the case's faces are of, as shares of its moduli. */
function moduliUncertainties({
  parts,
  measurements,
}: ReviewInput): Uncertainties<Record<keyof ModuliShares, Ratio>> {
  const areas = new Map<string, number>();
  for (const { sheet, grossArea } of parts.panels)
    areas.set(sheet.name, (areas.get(sheet.name) ?? 0) + grossArea);
  const [most] = [...areas].sort((a, b) => b[1] - a[1]);
  const sheet = parts.panels.find((panel) => panel.sheet.name === most?.[0])?.sheet;
  if (!sheet) return {};
  const moduli = sheetModuli(sheet, measurements);
  return Object.fromEntries(
    (["along", "across"] as const).flatMap((way) => {
      const { modulus, uncertainty } = moduli[way];
      return uncertainty ? [[way, { ...uncertainty, standard: uncertainty.standard / modulus }]] : [];
    }),
  );
}

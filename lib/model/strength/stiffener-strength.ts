/** A stiffener as a beam: what it bears of its panel's load, and what its wood stands. */
import type { PanelPart, StiffenedZone, StiffenerPart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type EnDuration, lowestTimber, plywoodDesign, timberDesign } from "../../material/index.js";
import { beamBendingStress, rectangleSection, simpleUniform } from "../../mechanics/index.js";
import { BeamStiffness, Length, LineLoad, Pressure } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";
import { faceLoads, type LoadOnPanel, serviceClassOf, shelfLoads } from "./panel-load.js";
import { loadFactor } from "./panel-strength.js";
import { sheetStrength } from "./sheet-strength.js";

/** A stiffener with its panel. */
export interface PanelStiffener {
  /** The stiffener. */
  readonly stiffener: StiffenerPart;
  /** The panel that it is on. */
  readonly panel: PanelPart;
}

/** A stiffener that bends as a beam, and what it stands. */
export interface StiffenerUse {
  /** What presses on its panel. */
  readonly what: string;
  /** With the load factor. */
  readonly stress: Pressure;
  /** What the code allows. */
  readonly allowed: Pressure;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** Kinds that bear nothing as beams: a doubler is more of the sheet, the others hold up a shelf or an edge. */
const noBeams: readonly string[] = ["doubler", "ledge", "cleat"];

/** The stiffeners of a case that bear the load of a panel, a leaf or a shelf as beams. */
export function beamStiffeners({ parts }: ReviewInput): readonly PanelStiffener[] {
  const pieces = [...parts.panels, ...parts.shelves.map(({ panel }) => panel)];
  return parts.stiffeners
    .filter(({ kind }) => !noBeams.includes(kind))
    .flatMap((stiffener) =>
      pieces.filter(({ id }) => id === stiffener.panel).map((panel) => ({ stiffener, panel })),
    );
}

/** What presses on the piece that a stiffener is on. */
export function stiffenerLoads({ panel }: PanelStiffener, input: ReviewInput): readonly LoadOnPanel[] {
  const shelf = input.parts.shelves.find((one) => one.panel.id === panel.id);
  return shelf ? shelfLoads(shelf, input) : faceLoads(panel, input);
}

/** Characteristic strength of a stiffener's wood along each of its runs; of a strip without a grade the lowest class counts. */
export type StiffenerStrength = Readonly<Record<StiffenedZone["along"], Pressure>>;

/** What a stiffener's wood stands, or the test that would tell it. */
export function stiffenerStrength(
  { stiffener: { strip, piece } }: PanelStiffener,
  input: ReviewInput,
): StiffenerStrength | MissingMeasurement {
  if (strip) {
    const strength = Pressure.si(strip.strength ?? lowestTimber);
    return { x: strength, y: strength };
  }
  if (!piece) return { x: lowestTimber, y: lowestTimber };
  const found = sheetStrength(piece.sheet, input.measurements);
  if (!("bending" in found)) return found;
  const { along, across } = found.bending;
  const [x, y] = piece.grain === "across" ? [along, across] : [across, along];
  return { x: x.strength, y: y.strength };
}

/** The run of a stiffener that comes nearest to breaking, as if it bore half its panel without the sheet's help. */
export function stiffenerUses(
  { stiffener, panel }: PanelStiffener,
  strength: StiffenerStrength,
  loads: readonly LoadOnPanel[],
  input: ReviewInput,
): readonly StiffenerUse[] {
  return stiffener.zones.flatMap((zone) =>
    loads.map((load) => {
      const beam = bentAlone(stiffener, panel, zone, load);
      const characteristic = strength[zone.along];
      const design = stiffener.strip ? timberDesign : plywoodDesign;
      const serviceClass = serviceClassOf(input);
      const duration: EnDuration = load.duration;
      const allowed = design.worked({ characteristic, duration, serviceClass });
      const stress = Pressure.si(loadFactor * beam.stress);
      return { what: load.what, stress, allowed: allowed.value, because: [...beam.because, allowed] };
    }),
  );
}

/** Nothing of the moment rests on it. */
const anyStiffness = BeamStiffness.si(1);

function bentAlone(
  { height }: StiffenerPart,
  { clearWidth, clearHeight }: PanelPart,
  { along, width, height: up }: StiffenedZone,
  { pressure }: LoadOnPanel,
): { readonly stress: Pressure; readonly because: readonly WorkedLine[] } {
  const [run, wide, across, free] =
    along === "x" ? [width, up, clearHeight, clearWidth] : [up, width, clearWidth, clearHeight];
  const section = rectangleSection.worked({ width: Length.si(wide), depth: height });
  const beam = simpleUniform.worked({
    load: LineLoad.si((pressure * across) / 2),
    span: Length.si(Math.min(run, free)),
    stiffness: anyStiffness,
  });
  const stress = beamBendingStress.worked({
    moment: beam.value.moment,
    sectionModulus: section.value.modulus,
  });
  return { stress: stress.value, because: [section, beam, stress] };
}

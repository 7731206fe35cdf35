import { adhesiveNeed } from "../../bonding/index.js";
import type { Adhesive } from "../../design/index.js";
import { knownRate, knownWaste, onFaces, type ReviewInput } from "../../model/index.js";
import { Area, type AreaDensity } from "../../quantity/index.js";
import type { AdhesiveNeed } from "./purchase-list.js";

/** Adhesives to buy for the facings of the case. */
export function adhesiveNeeds(input: ReviewInput): readonly AdhesiveNeed[] {
  const used = new Map(input.parts.facings.map(({ adhesive }) => [adhesive.name, adhesive]));
  return [...used.values()].map((stock) => needFor(stock, gluedArea(stock, input), input));
}

/**
 * What one adhesive would take for an area.
 *
 * @param rate wet spread on one face; the best known one unless given
 */
export function adhesiveLine(
  stock: Adhesive,
  area: Area,
  input: ReviewInput,
  rate: AreaDensity = knownRate(stock, input).rate,
): ReturnType<typeof adhesiveNeed.worked> {
  return adhesiveNeed.worked({
    ...onFaces(stock, rate),
    ...adhesiveInputs(stock),
    waste: knownWaste(stock, input),
    area,
  });
}

function adhesiveInputs({ kind, density, content, price }: Adhesive) {
  return { kind, density, container: content, price };
}

function gluedArea({ name }: Adhesive, { parts }: ReviewInput): Area {
  return Area.si(
    parts.facings.reduce(
      (sum, { adhesive, gluedArea: area }) => (adhesive.name === name ? sum + area : sum),
      0,
    ),
  );
}

function needFor(stock: Adhesive, area: Area, input: ReviewInput): AdhesiveNeed {
  const { value } = adhesiveLine(stock, area, input);
  const { volume, containers, cost } = value;
  return { stock, area, volume, containers, cost, rateFrom: knownRate(stock, input).from };
}

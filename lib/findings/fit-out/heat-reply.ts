import { TemperatureRise } from "../../inside/index.js";
import type { HeatLimit, RatioInterval, ReviewInput, SectionHeat } from "../../model/index.js";
import { Temperature } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { compared, criterionWords } from "../compared.js";
import type { Reply } from "../guarded.js";

/** Said with everything about heat. */
export const heatCaution =
  "Heat that cannot get out starts fires: no charger or battery in a shut case, a thermal cut-out on whatever may run unwatched, and nothing in front of the vents.";

const criterion = cite("common-practice", "warmest air that the maker allows");

/** Judges a rise by what the tenderest thing stands. */
export function warmthReply(
  input: ReviewInput,
  { outside, name, hottest }: HeatLimit,
  { rise, riseWithin, because }: Pick<SectionHeat, "rise" | "riseWithin" | "because">,
  words: { readonly facts: string; readonly remedy: string },
): Reply {
  const allowed = hottest - outside;
  if (allowed <= 0) return alreadyTooWarm(input, { outside, name, hottest });
  return compared({
    kind: TemperatureRise,
    asked: ["rise over the air outside", rise],
    there: [`rise that the ${name} allows`, TemperatureRise.si(allowed)],
    ...words,
    because,
    cautions: [heatCaution],
    source: [criterion, cite("heat-transfer", "heat balance")],
    ...(riseWithin === undefined ? {} : { interval: spreadOf(rise, riseWithin, allowed) }),
  });
}

function spreadOf(rise: number, within: number, allowed: number): RatioInterval {
  return {
    low: (rise - within) / allowed,
    high: (rise + within) / allowed,
    shares: [{ input: "temperature log", share: 1 }],
  };
}

/** No vent helps where the air outside is too warm itself. */
function alreadyTooWarm(input: ReviewInput, { outside, name, hottest }: HeatLimit): Reply {
  const style = styleOf(input.case);
  return {
    verdict: "fails",
    answer: `The air outside, ${Temperature.show(outside, style)}, is already as warm as the ${name} may work in, ${Temperature.show(hottest, style)}: no vent helps, only a cooler place. No margin. ${criterionWords(criterion)}`,
    demand: amount(Temperature, "air outside", outside),
    capacity: amount(Temperature, `warmest air for the ${name}`, hottest),
    because: [],
    cautions: [heatCaution],
    source: [criterion],
  };
}

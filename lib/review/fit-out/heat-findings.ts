import type { Content } from "../../design/index.js";
import { TemperatureRise } from "../../inside/index.js";
import { Power, Temperature } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionHeat } from "./heat.js";

const heatCaution =
  "Heat that cannot get out starts fires: no charger or battery in a shut case, a thermal cut-out on whatever may run unwatched, and nothing in front of the vents. Sun on a dark case adds 20 K by itself.";

/** Whether the air of each section with loads stays cool enough for what works in it. */
export function heatFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections
    .filter(({ name }) =>
      input.case.contents.some(({ section, power }) => section === name && (power ?? 0) > 0),
    )
    .map(({ name }) => heatFinding(input, name));
}

function heatFinding(input: ReviewInput, section: string): Finding {
  const question: Question = {
    id: `fit-out.heat.${section}`,
    topic: "fit-out",
    subject: section,
    question: `Does ${section} stay cool enough for what works in it?`,
  };
  const { hottest } = input.case.services;
  if (hottest === undefined) {
    const how = 'look up the hottest day where it works and write "hottest: 95 °F" into services';
    return unknown(question, { measure: "the hottest air outside", how }, [heatCaution]);
  }
  const limit = tenderest(input, section);
  if (!limit) {
    const how = 'read it off the sheet of each thing that draws power, and write "hottest" into its needs';
    return unknown(question, { measure: `the warmest air that the things in ${section} may work in`, how }, [
      heatCaution,
    ]);
  }
  return guarded(question, () => heatReply(input, section, hottest, limit), [heatCaution]);
}

/** The thing that stands least. */
function tenderest(
  { case: { contents } }: ReviewInput,
  section: string,
): { readonly name: string; readonly hottest: Temperature } | undefined {
  const [first] = contents
    .flatMap(({ name, section: where, needs }: Content) =>
      where === section && needs.hottest !== undefined ? [{ name, hottest: needs.hottest }] : [],
    )
    .sort((a, b) => a.hottest - b.hottest);
  return first;
}

function heatReply(
  input: ReviewInput,
  section: string,
  outside: Temperature,
  { name, hottest }: { readonly name: string; readonly hottest: Temperature },
): Reply {
  const { power, rise, because, from } = sectionHeat(input, section);
  const style = styleOf(input.case);
  const inside = Temperature.si(outside + rise);
  const words = from === "log" ? "by your own log" : "reckoned from walls and vents: log it once to be sure";
  return compared({
    kind: TemperatureRise,
    asked: ["rise over the air outside", rise],
    there: [`rise that the ${name} allows`, TemperatureRise.si(hottest - outside)],
    facts: `${Power.show(power, { digits: 3 })} on the mean warm it by ${TemperatureRise.show(rise, { ...style, digits: 2 })} to ${Temperature.show(inside, style)} (${words}); the ${name} may work in ${Temperature.show(hottest, style)}.`,
    remedy: "Larger vents, a fan, a lower duty, or shade.",
    because,
    cautions: [heatCaution],
    source: [
      cite("common-practice", "warmest air that the maker allows"),
      cite("heat-transfer", "heat balance"),
    ],
  });
}

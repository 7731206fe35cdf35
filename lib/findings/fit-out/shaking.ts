/** Whether panels shake with the vehicle, and mounts keep its shaking from what stands on them. */
import type { Content, PanelPart, SpringMounts } from "../../design/index.js";
import { Frequency, mountFrequency, panelFrequency, transmissibility } from "../../inside/index.js";
import { panelStiffness, type ReviewInput, sheetModuli } from "../../model/index.js";
import { AreaDensity, type Ratio, ratio, SpringRate } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, counted } from "../amount.js";
import { looseCaution } from "../cautions.js";
import { type Question, question } from "../question.js";
import { each, eachSection, mostOf, says, where } from "../subjects.js";

/** Wheels of a van hop at 10 to 15 a second, its body shakes up to about 20: common practice, no source. */
export const vehicleBand: Frequency = Frequency.si(20);

/** Damping of thin panels and of foam: common practice, no source. */
const panelDamping: Ratio = ratio(0.05);

/** Whether the softest face of each section shakes with the vehicle. */
export const rattle: Question = question({
  id: "fit-out.rattle",
  about: where(says("journey"), eachSection),
  ask: (section, { case: { journey } }) => `Does a panel of ${section} shake with the ${journey.vehicle}?`,
  tier: "feel",
  cautions: [
    "What hums on the road works screws, rivets and lamp holders loose: go over all of them after the first trip, and again every month.",
  ],
  assumes: [
    "Each face counts bare: stiffeners raise its frequency, openings and what is fixed to it lower it, and none of them is counted.",
  ],
  answer: (input, _, section) => {
    const faces = input.parts.panels.filter((panel) => panel.section === section && panel.role === "face");
    const lines = faces.map((panel) => ({ panel, line: frequencyOf(input, panel) }));
    const none = `rattle: ${section} has no panels`;
    const { panel, line } = mostOf(lines, (one) => -one.line.value, none);
    const frequencyRatio = ratio(vehicleBand / line.value);
    const passed = transmissibility.worked({ frequencyRatio, damping: panelDamping });
    return {
      demand: amount(Frequency, "top of the vehicle's band", vehicleBand),
      capacity: amount(Frequency, `natural frequency of ${panel.id}`, line.value),
      facts: `${panel.id} is the slowest, at ${Frequency.show(line.value, { digits: 2 })} with its edges free to turn; vehicles shake up to ${Frequency.show(vehicleBand)}. A shake that fast reaches its middle ${passed.value.toPrecision(2)} times as large.`,
      remedies: [{ words: "A batten or a foam strip across its middle quiets it." }],
      because: [line, passed],
      limit: cite("common-practice", "vehicles shake below 20 Hz"),
      sources: [cite("anisotropic-plates", "free vibration")],
    };
  },
});

function frequencyOf(input: ReviewInput, panel: PanelPart): ReturnType<typeof panelFrequency.worked> {
  const { stiffness } = panelStiffness(panel, sheetModuli(panel.sheet, input.measurements));
  const { sheet, facing } = panel;
  const sides = facing?.sides === "both" ? 2 : 1;
  const skins = facing ? sides * facing.stock.thickness * facing.stock.density : 0;
  return panelFrequency.worked({
    length: panel.clearWidth,
    width: panel.clearHeight,
    stiffness,
    areaMass: AreaDensity.si(sheet.thickness * sheet.density + skins),
  });
}

/** Wheels of a van hop from here up: common practice, no source. */
const wheelHop: Frequency = Frequency.si(10);

/** Rubber and foam: common practice, no source. */
const rubberDamping: Ratio = ratio(0.1);

/** A thing on springs. */
interface Mounted {
  /** The thing. */
  readonly content: Content;
  /** Its mounts. */
  readonly mounts: SpringMounts;
}

/** Whether the mounts of each content keep the vehicle's shaking from it. */
export const mounts: Question = question({
  id: "fit-out.mount",
  about: where(
    says("journey"),
    each(
      (input): readonly Mounted[] =>
        input.case.contents.flatMap((content) =>
          content.needs.mounts ? [{ content, mounts: content.needs.mounts }] : [],
        ),
      ({ content }) => content.name,
    ),
  ),
  ask: ({ content }, { case: { journey } }) =>
    `Do the mounts of the ${content.name} keep the shaking of the ${journey.vehicle} from it?`,
  tier: "feel",
  cautions: [looseCaution],
  answer: (_, __, { content: { name, mass }, mounts: { count, rate } }) => {
    const line = mountFrequency.worked({ mass, stiffness: SpringRate.si(count * rate) });
    const frequencyRatio = ratio(wheelHop / line.value);
    const passed = transmissibility.worked({ frequencyRatio, damping: rubberDamping });
    // A mount helps from 1.414 times its own frequency up; one stiffer than the whole band only carries.
    const helpsFrom = Frequency.si(Math.SQRT2 * line.value);
    const stiff = line.value >= vehicleBand;
    const shown = (one: Frequency): string => Frequency.show(one, { digits: 2 });
    const swings = `On ${counted(count, "mount", "mounts")} the ${name} swings at ${shown(line.value)}`;
    const first = stiff
      ? `${swings}; vehicles shake up to ${shown(vehicleBand)}.`
      : `${swings} and is helped from ${shown(helpsFrom)} up; wheels hop at ${shown(wheelHop)}.`;
    return {
      demand: stiff
        ? amount(Frequency, "top of the vehicle's band", vehicleBand)
        : amount(Frequency, "it helps from", helpsFrom),
      capacity: stiff
        ? amount(Frequency, "its own frequency", line.value)
        : amount(Frequency, "wheels hop from", wheelHop),
      facts: `${first} Of the hop of the wheels it gets ${passed.value.toPrecision(2)} times as much.`,
      remedies: [{ words: "Use softer mounts, or stiff ones that do not swing in the band at all." }],
      because: [line, passed],
      limit: cite("common-practice", "wheels hop at 10 to 15 Hz"),
      sources: [cite("vibration", "a mount helps above 1.414 times its own frequency")],
    };
  },
});

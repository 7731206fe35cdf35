import type { PanelPart } from "../../design/index.js";
import { Frequency, panelFrequency, shakePassedOn } from "../../inside/index.js";
import { panelStiffness, type ReviewInput, sheetModuli } from "../../model/index.js";
import { AreaDensity, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

/** Wheels of a van hop at 10 to 15 a second, its body shakes up to about 20: common practice, no source. */
export const vehicleBand: Frequency = Frequency.si(20);

const rattleCaution =
  "What hums on the road works screws, rivets and lamp holders loose: go over all of them after the first trip, and again every month.";

/** Damping of thin panels and of foam: common practice, no source. */
const panelDamping = ratio(0.05);

/** Whether the softest face of each section shakes with the vehicle. */
export function rattleFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.map(({ name }) =>
    guarded(
      {
        id: `fit-out.rattle.${name}`,
        topic: "fit-out",
        subject: name,
        question: `Does a panel of ${name} shake with the ${input.case.journey.vehicle}?`,
      },
      () => rattleReply(input, name),
      [rattleCaution],
    ),
  );
}

function rattleReply(input: ReviewInput, section: string): Reply {
  const faces = input.parts.panels.filter((panel) => panel.section === section && panel.role === "face");
  const lines = faces.map((panel) => ({ panel, line: frequencyOf(input, panel) }));
  const [slowest] = [...lines].sort((a, b) => a.line.value - b.line.value);
  if (!slowest) throw new RangeError(`rattle: ${section} has no panels`);
  const { panel, line } = slowest;
  const passed = shakePassedOn.worked({
    frequencyRatio: ratio(vehicleBand / line.value),
    damping: panelDamping,
  });
  return compared({
    kind: Frequency,
    asked: ["top of the vehicle's band", vehicleBand],
    there: [`natural frequency of ${panel.id}`, line.value],
    facts: `${panel.id} is the slowest, at ${Frequency.show(line.value, { digits: 2 })} with its edges free to turn; a shake of ${Frequency.show(vehicleBand)} reaches its middle ${passed.value.toPrecision(2)} times.`,
    remedy: "A batten or a foam strip across its middle quiets it.",
    because: [line, passed],
    cautions: [rattleCaution],
    source: [
      cite("common-practice", "vehicles shake below 20 Hz"),
      cite("anisotropic-plates", "free vibration"),
    ],
  });
}

function frequencyOf(input: ReviewInput, panel: PanelPart): ReturnType<typeof panelFrequency.worked> {
  const { stiffness } = panelStiffness(panel, sheetModuli(panel.sheet, input.measurements));
  const { sheet, facing } = panel;
  const skins = facing
    ? (facing.sides === "both" ? 2 : 1) * facing.stock.thickness * facing.stock.density
    : 0;
  return panelFrequency.worked({
    length: panel.clearWidth,
    width: panel.clearHeight,
    stiffness,
    areaMass: AreaDensity.si(sheet.thickness * sheet.density + skins),
  });
}

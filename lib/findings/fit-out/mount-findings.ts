import type { Content, SpringMounts } from "../../design/index.js";
import { Frequency, mountFrequency, shakePassedOn } from "../../inside/index.js";
import type { ReviewInput } from "../../model/index.js";
import { ratio, SpringRate } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply } from "../guarded.js";
import { vehicleBand } from "./rattle-findings.js";

const looseMountCaution =
  "A thing on springs still flies when the van brakes: mounts quiet it, straps or screws hold it.";

/** Wheels of a van hop from here up: common practice, no source. */
const wheelHop = Frequency.si(10);

/** Rubber and foam: common practice, no source. */
const rubberDamping = ratio(0.1);

/** Whether the mounts of each content keep the vehicle's shaking from it. */
export function mountFindings(input: ReviewInput): readonly Finding[] {
  return input.case.contents.flatMap((content) => {
    const { mounts } = content.needs;
    if (!mounts) return [];
    const question: Question = {
      id: `fit-out.mount.${content.name}`,
      topic: "fit-out",
      subject: content.name,
      question: `Do the mounts of the ${content.name} keep the shaking of the ${input.case.journey.vehicle} from it?`,
    };
    return [guarded(question, () => mountReply(content, mounts), [looseMountCaution])];
  });
}

/** A mount helps from 1.414 times its own frequency up; one stiffer than the whole band only carries. */
function mountReply({ name, mass }: Content, { count, rate }: SpringMounts): Reply {
  const line = mountFrequency.worked({ mass, stiffness: SpringRate.si(count * rate) });
  const passed = shakePassedOn.worked({
    frequencyRatio: ratio(wheelHop / line.value),
    damping: rubberDamping,
  });
  const helpsFrom = Frequency.si(Math.SQRT2 * line.value);
  const stiff = line.value >= vehicleBand;
  const asked: [string, Frequency] = stiff
    ? ["top of the vehicle's band", vehicleBand]
    : ["it helps from", helpsFrom];
  const there: [string, Frequency] = stiff
    ? ["its own frequency", line.value]
    : ["wheels hop from", wheelHop];
  const shown = (one: Frequency): string => Frequency.show(one, { digits: 2 });
  return compared({
    kind: Frequency,
    asked,
    there,
    facts: `On ${count} mounts the ${name} swings at ${shown(line.value)} and is helped from ${shown(helpsFrom)} up; of the wheels' hop at ${shown(wheelHop)} it gets ${passed.value.toPrecision(2)} times.`,
    remedy: "Softer mounts, or stiff ones that do not swing in the band at all.",
    because: [line, passed],
    cautions: [looseMountCaution],
    source: [
      cite("common-practice", "wheels hop at 10 to 15 Hz, bodies shake below 20 Hz"),
      cite("vibration", "a mount helps above 1.414 times its own frequency"),
    ],
  });
}

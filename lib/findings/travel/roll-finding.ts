import { type ReviewInput, resistanceOf, stackedBalance } from "../../model/index.js";
import { pushGuides, rollingPush } from "../../moving/index.js";
import { degree, Force } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";

const rollCaution =
  "Two people on any ramp, one of them below it never; push, do not pull, and look over the case or around it.";

/** Whether one person can keep the stacked case rolling on the floor of the journey. */
export function rollFinding(input: ReviewInput): Finding {
  const { floor } = input.case.journey;
  return guarded(
    {
      id: "travel.roll",
      topic: "travel",
      subject: "stacked case",
      question: `Can one person roll the stacked case over ${floor === "even" ? "an even" : "an uneven"} floor?`,
    },
    () => rollReply(input),
    [rollCaution],
  );
}

function rollReply(input: ReviewInput): Reply {
  const balance = stackedBalance(input);
  const { share, because, source, words } = resistanceOf(input);
  const push = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: degree(0) });
  const guide = pushGuides.women;
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: ["push that keeps it rolling", push.value],
    there: ["guide figure, the lower of the two published", guide.keepMoving],
    facts: `It takes about ${Force.show(push.value, style)} to keep it rolling, on ${words}; up to ${Force.show(guide.keepMoving, style)} needs no closer look.`,
    remedy: "Push it with two people, take the sections apart, or take larger and harder wheels.",
    because: [balance, ...because, push],
    cautions: [rollCaution],
    source: [guide.source, source],
  });
}

import { pushGuides, rollingPush, rollingShares } from "../../moving/index.js";
import { degree, Force, ratio } from "../../quantity/index.js";
import { amount, styleOf } from "../amount.js";
import { criterionWords, marginWords } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { verdictOf } from "../verdict.js";
import { stackedBalance } from "./balance.js";

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
    () => {
      const balance = stackedBalance(input);
      const resistance = floor === "even" ? rollingShares.good : rollingShares.uneven;
      const push = rollingPush.worked({
        mass: balance.value.mass,
        resistance: resistance.share,
        slope: degree(0),
      });
      const guide = pushGuides.women;
      const used = ratio(push.value / guide.keepMoving);
      const style = styleOf(input.case);
      return {
        verdict: verdictOf(used),
        answer: `It takes about ${Force.show(push.value, style)} to keep it rolling; up to ${Force.show(guide.keepMoving, style)} needs no closer look. ${marginWords(used)} ${criterionWords(guide.source)}`,
        demand: amount(Force, "push that keeps it rolling", push.value),
        capacity: amount(Force, "guide figure, the lower of the two published", guide.keepMoving),
        ratio: used,
        because: [balance, push],
        cautions: [
          "Two people on any ramp, one of them below it never; push, do not pull, and look over the case or around it.",
        ],
        source: [resistance.source, guide.source],
      };
    },
  );
}

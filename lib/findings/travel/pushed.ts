/** A push of two people against what they may push without a closer look. */

import type { ReviewInput } from "../../model/index.js";
import { pushGuides } from "../../moving/index.js";
import { Force } from "../../quantity/index.js";
import type { Citation } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Reply } from "../guarded.js";

/** Two people may push twice the guide figure of one; the lower of the two published. */
const pushers = 2;
const guide: Force = Force.si(pushers * pushGuides.women.startOrStop);

/** What is pushed, and where its figure comes from. */
export interface Push {
  /** In words: "push over it". */
  readonly words: string;
  readonly push: Force;
  /** After the first sentence. */
  readonly facts?: string;
  readonly remedy: string;
  readonly because: Reply["because"];
  readonly caution: string;
  readonly source: Citation;
}

/** Judges a push that starts, stops or lifts the case over something. */
export function pushedReply(
  input: ReviewInput,
  { words, push, facts, remedy, because, caution, source }: Push,
): Reply {
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: [words, push],
    there: [`guide figure for ${pushers} people`, guide],
    facts: `It takes about ${Force.show(push, style)}; ${pushers} people may push ${Force.show(guide, style)} without a closer look.${facts ? ` ${facts}` : ""}`,
    remedy,
    because,
    cautions: [caution],
    source: [pushGuides.women.source, source],
  });
}

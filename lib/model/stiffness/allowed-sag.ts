/** How far anything may sag: the one rule, for panels, shelves, and boxes that are pushed. */
import { Length } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import type { ReviewInput } from "../review-input.js";

/** Where the rule comes from. */
export const allowedSagSource: Citation = cite("common-practice", "allowed sag as a share of the span");

/** The sag that is allowed over a span: `allowed sag` of the case file, as a share of it. */
export function allowedSag({ case: { demands } }: ReviewInput, span: Length): Length {
  return Length.si(demands.allowedSag * span);
}

/** The span of a panel that its sag is judged by: the shorter of its clear sides. */
export function sagSpan({
  clearWidth,
  clearHeight,
}: {
  readonly clearWidth: Length;
  readonly clearHeight: Length;
}): Length {
  return Length.si(Math.min(clearWidth, clearHeight));
}

/** How far anything may sag: the one rule, for panels, shelves, and boxes that are pushed. */
import type { PanelPart } from "../../design/index.js";
import { Length } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import type { ReviewInput } from "../review-input.js";

/** Where the rule comes from. */
export const allowedSagSource: Citation = cite("common-practice", "allowed sag as a share of the span");

/** The sag that is allowed over a span: `allowed sag` of the case file, as a share of it. */
export function allowedSag({ case: { demands } }: ReviewInput, span: Length): Length {
  return Length.si(demands.allowedSag * span);
}

/** The span of a panel that its sag is judged by: the shorter of its clear sides that has a hold at both ends. */
export function sagSpan({
  clearWidth,
  clearHeight,
  freeSides = [],
}: Pick<PanelPart, "clearWidth" | "clearHeight" | "freeSides">): Length {
  const across = freeSides.includes("left") || freeSides.includes("right") ? Infinity : clearWidth;
  const up = freeSides.includes("bottom") || freeSides.includes("top") ? Infinity : clearHeight;
  const spanned = Math.min(across, up);
  return Length.si(spanned < Infinity ? spanned : Math.min(clearWidth, clearHeight));
}

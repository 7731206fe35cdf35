import type { PanelPart } from "../../design/index.js";
import { Pressure, standardGravity } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** What presses on a panel: leaning on upright faces, things on the top; a floor carries what stands on it. */
export function facePressure(
  { face, section, clearWidth, clearHeight }: PanelPart,
  { case: { demands }, parts }: ReviewInput,
): Pressure {
  if (face === "top") return demands.topPressure;
  if (face !== "bottom") return demands.sidePressure;
  const standing = parts.contents.filter(
    ({ content: { section: where, held } }) =>
      where === section && (held.by === "floor" || (held.by === "cradle" && held.shelf === undefined)),
  );
  const weight = standing.reduce((sum, { content }) => sum + content.mass * standardGravity, 0);
  return Pressure.si((demands.dynamicFactor * weight) / (clearWidth * clearHeight));
}

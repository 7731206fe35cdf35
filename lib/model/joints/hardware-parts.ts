/** Pieces of hardware that findings ask about, and what fastens them. */
import type { Fastening, HardwarePart } from "../../design/index.js";
import type { ReviewInput } from "../review-input.js";

/** Hardware of one duty, a representative of each item and section. */
export function oneOfEach(input: ReviewInput, duty: HardwarePart["item"]["duty"]): readonly HardwarePart[] {
  const parts = input.parts.hardware.filter(({ item }) => item.duty === duty);
  return parts.filter(
    (part, i) =>
      parts.findIndex((one) => one.stock.name === part.stock.name && one.section === part.section) === i,
  );
}

/** The fastener groups that hold a piece of hardware. */
export function fasteningsOf({ id }: HardwarePart, { parts }: ReviewInput): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === id);
}

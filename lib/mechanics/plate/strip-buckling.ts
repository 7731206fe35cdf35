/** A strip of a panel that is pressed along its plane. */
import { type Formula, formula } from "../../formula.js";
import { Force, Length, PlateStiffness } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A strip of a panel, pressed end to end. */
export interface PressedStrip {
  /** Bending stiffness of the panel along the strip. */
  readonly stiffness: PlateStiffness;
  /** Of the strip. */
  readonly width: Length;
  /** Between its ends, which may turn. */
  readonly height: Length;
}

/**
 * Force at which a strip of a panel buckles, as if it were cut free at both sides: pi^2 D b / h^2.
 *
 * @example stripBuckling(stripBuckling.read({ stiffness: "1000 N·m", width: "100 mm", height: "1 m" })) // 987 N
 */
export const stripBuckling: Formula<PressedStrip, Force> = formula<PressedStrip, Force>({
  id: "plate.strip.buckling",
  title: "Force at which a strip of a panel buckles",
  equation: String.raw`P_{cr}=\frac{\pi^2 D\,b}{h^2}`,
  inputs: {
    stiffness: { symbol: "D", kind: PlateStiffness, meaning: "bending stiffness along the strip", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the strip", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "between its ends", above: 0 },
  },
  result: { symbol: "P_{cr}", kind: Force, meaning: "force at which it buckles" },
  source: [
    cite("elastic-stability", "art. 2.1, hinged column"),
    cite("strength-of-materials", "column of pinned ends"),
  ],
  validity: "Thin and straight, pressed in its middle plane; the panel beside the strip holds it more.",
  compute: ({ stiffness, width, height }) => (Math.PI ** 2 * stiffness * width) / height ** 2,
});

import { Length, type ShowStyle, showNumber } from "../../quantity/index.js";

/** A sag is read off a ruler in hundredths of an inch or tenths of a millimetre. */
export function showSag(sag: Length, { system }: ShowStyle): string {
  const millimetres = Length.show(sag, { unit: "mm", digits: 2 });
  return system === "inch" ? `${showNumber(Length.in(sag, "in"), 2)} in (${millimetres})` : millimetres;
}

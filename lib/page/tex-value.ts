/** Values as TeX: "1200 mm" -> 1200\,\mathrm{mm}, "3/8 in" -> \tfrac{3}{8}\,\mathrm{in}. */

const decimal = String.raw`\d[\d\u202f]*(?:\.\d+)?(?:e-?\d+)?`;
const fraction = String.raw`(?:\d+-)?\d+/\d+`;
const simpleValue = new RegExp(`^(-?)(${fraction}|${decimal})(?:\\s?([^\\d\\s/-]\\S{0,11}))?$`);

/** A shown value as TeX; undefined unless it is one number with at most one unit. */
export function texOfValue(text: string): string | undefined {
  const [, sign, number, unit] = simpleValue.exec(text) ?? [];
  if (number === undefined) return undefined;
  const gap = unit === "°" ? "" : "\\,";
  return [`${sign}${texOfNumber(number)}`, unit && texOfUnit(unit)].filter(Boolean).join(gap);
}

function texOfNumber(number: string): string {
  const [, whole = "", numerator, denominator] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(number) ?? [];
  if (denominator) return `${whole}\\tfrac{${numerator}}{${denominator}}`;
  const [digits = "", exponent] = number.split("e");
  const grouped = digits.replaceAll("\u202f", "\\,");
  return exponent ? `${grouped}\\times10^{${exponent}}` : grouped;
}

/** "kg/m2" -> \mathrm{kg}/\mathrm{m}^{2} */
function texOfUnit(unit: string): string {
  return unit
    .replace(/[#$&_{}\\~^]/g, "")
    .replace(/([A-Za-zµ]+)([\d²³⁴]?)/g, (_, letters: string, power: string) =>
      power ? `\\mathrm{${letters}}^{${plainDigit(power)}}` : `\\mathrm{${letters}}`,
    )
    .replaceAll("µ", "\\text{µ}")
    .replaceAll("°", "{}^{\\circ}")
    .replaceAll("%", "\\%")
    .replaceAll("·", "\\cdot ");
}

function plainDigit(power: string): string {
  return power.replace("²", "2").replace("³", "3").replace("⁴", "4");
}

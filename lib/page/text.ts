/** Values and sentences as text of a page. */

const powers: Readonly<Record<string, string>> = { "2": "²", "3": "³", "4": "⁴" };

/** "12 mm2" -> "12 mm²", for a text that is one value with its unit. */
export function readableValue(text: string): string {
  if (!/^[-+±]?[\d.][\d.\u202fe-]*\s\S+$/.test(text)) return text;
  return text.replace(/(?<=[A-Za-zµ])[234](?![\d.])/g, (power) => powers[power] ?? power);
}

/** Keeps a number and its unit on one line. */
export function tieUnits(text: string): string {
  return text.replace(/(\d) (?=[A-Za-z°%µ²³·/]{1,6}(?![A-Za-z]))/g, "$1\u00a0");
}

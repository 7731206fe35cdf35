/** Mime bundles on their way between a file, where text stands in lines, and memory. */
import type { MimeBundle } from "./notebook.js";

/** A bundle with its texts in one piece. */
export function joinTexts(bundle: MimeBundle): MimeBundle {
  return mapTexts(bundle, (value) => (Array.isArray(value) ? value.join("") : value));
}

/** A bundle with its texts in lines. */
export function splitTexts(bundle: MimeBundle): MimeBundle {
  return mapTexts(bundle, (value) => (typeof value === "string" ? splitLines(value) : value));
}

/** Lines of a text, each with its end. */
export function splitLines(text: string): string[] {
  return text === "" ? [] : text.split(/(?<=\n)/);
}

/** JSON kinds hold a value of any shape, so only the other kinds are text. */
function mapTexts(bundle: MimeBundle, map: (value: unknown) => unknown): MimeBundle {
  const isJson = (kind: string): boolean => kind === "application/json" || kind.endsWith("+json");
  return Object.fromEntries(
    Object.entries(bundle).map(([kind, value]) => [kind, isJson(kind) ? value : map(value)]),
  );
}

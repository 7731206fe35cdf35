import { unbreakableHyphen } from "./rule.js";

/** Text so that Markdown shows it as it stands, on one line. */
export function markdownText(text: string): string {
  return text
    .replaceAll(unbreakableHyphen, "-")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&]/g, "\\$&")
    .replace(/^[-+=](?=\s|$)/, "\\$&")
    .replace(/^(\d+)([.)])(?=\s|$)/, "$1\\$2");
}

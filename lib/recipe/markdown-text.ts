/** Text so that Markdown shows it as it stands, on one line. */
export function markdownText(text: string): string {
  return text
    .replace(/\s+/g, " ")
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&]/g, "\\$&")
    .replace(/^([-+=]|\d+(?=[.)]))/, (start) => (/\d/.test(start) ? start : `\\${start}`))
    .replace(/^(\d+)([.)])/, "$1\\$2");
}

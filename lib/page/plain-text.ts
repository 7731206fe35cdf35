/** Views as plain text, for a terminal and for readers that show nothing else. */
import { ratioWords, verdictWords } from "./verdict.js";
import type { FindingView, TableView, View, WorkedView } from "./view.js";

/** A view as lines of text. */
export function plainText(view: View): string {
  switch (view.kind) {
    case "sentence":
    case "markdown":
      return view.text;
    case "answer":
      return [view.verdict && verdictWords[view.verdict], view.text].filter(Boolean).join(": ");
    case "table":
      return tableText(view);
    case "list":
      return [
        ...(view.title === undefined ? [] : [view.title]),
        ...view.items.map((item, i) => `${view.ordered ? `${i + 1}.` : "-"} ${item}`),
      ].join("\n");
    case "cautions":
      return view.items.map((item) => `Mind this: ${item}`).join("\n");
    case "worked":
      return workedText(view);
    case "finding":
      return findingText(view);
    case "chart":
    case "drawing":
    case "picture":
      return `[${view.kind}] ${view.title}. ${view.description}`;
  }
}

function tableText({ caption, columns, rows }: TableView): string {
  const lines = [columns.map(({ heading }) => heading), ...rows];
  const widths = columns.map((_, i) => Math.max(...lines.map((line) => (line[i] ?? "").length)));
  const laid = lines.map((line) =>
    columns
      .map(({ align }, i) => {
        const cell = line[i] ?? "";
        return align === "right" ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0);
      })
      .join("  ")
      .trimEnd(),
  );
  return [...(caption === undefined ? [] : [caption]), ...laid].join("\n");
}

function workedText({ title, results, source }: WorkedView): string {
  const found = results.map(({ meaning, value }) => `${meaning} ${value}`).join(", ");
  return `${title}: ${found} (${source.join("; ")})`;
}

function findingText(finding: FindingView): string {
  const { question, verdict, answer, missing } = finding;
  const ratio = ratioWords(finding);
  const measure = missing && `How: ${missing.how}`;
  return [`${question} ${verdictWords[verdict]}. ${answer}`, ratio, measure].filter(Boolean).join("\n");
}

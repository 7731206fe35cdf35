/** Reads case.yaml: text in, a typed case or every problem out. Touches no file. */
import { z } from "zod";
import type { Problem } from "../../problem.js";
import { choice, Name } from "../../quantity/index.js";
import type { Case } from "../case.js";
import { type Build, buildField } from "./build-fields.js";
import { type CaseText, readCaseText } from "./case-text.js";
import { completeSection } from "./complete-section.js";
import { businessField, demandsField, journeyField } from "./demand-fields.js";
import { block, type FileUnits, field } from "./fields.js";
import { hardwareField } from "./hardware-field.js";
import { contentsField, shelvesField } from "./inside-fields.js";
import { sectionsField, type WrittenSection } from "./section-fields.js";
import { servicesField } from "./services-field.js";

/** What a case file gave. */
export interface ReadCase {
  /** Absent when there are problems. */
  readonly case?: Case;
  readonly problems: readonly Problem[];
  /** Where things stand in the file, for problems found later. */
  readonly written: CaseText;
}

/**
 * Reads a case file.
 *
 * Bare numbers are in the file's own unit (`lengths: in` or `lengths: mm`) and currency. What a panel or an
 * edge does not say itself comes from its section's `build`, then from the case's.
 *
 * @param file name to show in problems
 */
export function readCase(text: string, file: string): ReadCase {
  const written = readCaseText(text, file);
  if (written.problems.length > 0) return { problems: written.problems, written };
  const read = caseField(unitsOf(written.content)).safeParse(written.content);
  if (read.success) return { case: read.data, problems: [], written };
  return { problems: read.error.issues.flatMap((issue) => problemsOf(issue, written)), written };
}

/** The file's units are needed to read it; when they are wrong, their own fields say so. */
function unitsOf(content: unknown): FileUnits {
  const { lengths, currency } = (content ?? {}) as { lengths?: unknown; currency?: unknown };
  return {
    length: lengths === "mm" ? "mm" : "in",
    currency: typeof currency === "string" && currencyCode.test(currency) ? currency : "USD",
  };
}

const currencyCode = /^[A-Z]{3}$/;

function caseField(units: FileUnits): z.ZodType<Case> {
  return block({
    case: field(Name),
    invented: z.boolean({ error: "true or false" }).default(false),
    purpose: field(Name),
    units: field(choice("units", ["inch", "metric"])),
    lengths: field(choice("lengths", ["in", "mm"])),
    currency: z.string({ error: "a currency of three capitals such as USD" }).regex(currencyCode, {
      error: "a currency of three capitals such as USD",
    }),
    build: buildField(units),
    sections: sectionsField(units),
    hardware: hardwareField(units).default([]),
    shelves: shelvesField(units).default([]),
    contents: contentsField(units).default([]),
    demands: demandsField,
    journey: journeyField(units),
    services: servicesField(units).default({ cooling: [] }),
    business: businessField(units),
  }).transform(
    ({ case: name, lengths: _, build, sections, ...rest }, context): Case => ({
      name,
      ...rest,
      sections: completeSections(sections, build, (path, expected) =>
        context.addIssue({ code: "custom", path: [...path], message: expected }),
      ),
    }),
  );
}

function completeSections(
  sections: readonly (readonly [string, WrittenSection])[],
  build: Build,
  complain: (path: readonly string[], expected: string) => void,
): Case["sections"] {
  if (sections.length === 0) complain(["sections"], "at least one section");
  return sections.map(([name, section]) =>
    completeSection(name, section, build, (path, expected) =>
      complain(["sections", name, ...path], expected),
    ),
  );
}

/** A fault that the schema found, as problems of the file: one for each unknown word. */
function problemsOf(issue: z.core.$ZodIssue, { problemAt }: CaseText): Problem[] {
  const path = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => problemAt([...path, key], issue.message, key));
  }
  if (issue.code === "invalid_key") {
    const [inner] = issue.issues;
    return [problemAt(path, inner?.message ?? issue.message, String(path.at(-1)))];
  }
  return [problemAt(path, issue.message)];
}

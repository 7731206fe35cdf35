/** Reads case.yaml: text in, a typed case or every problem out. Touches no file. */
import { z } from "zod";
import type { Problem } from "../../problem.js";
import { choice, Name } from "../../quantity/index.js";
import type { Case } from "../case.js";
import { buildForm } from "./build.js";
import { type CaseText, readCaseText } from "./case-text.js";
import { contentsForm, shelvesForm } from "./contents.js";
import { businessForm, demandsForm, journeyForm } from "./demands.js";
import type { FileUnits } from "./fields.js";
import { block, type Form, needed, preset, yesOrNo } from "./form.js";
import { hardwareForm } from "./hardware.js";
import { completeSection, sectionsForm } from "./sections.js";
import { servicesForm } from "./services.js";

/** What a case file gave. */
export interface ReadCase {
  /** Absent when there are problems. */
  readonly case?: Case;
  /** Everything that is wrong with the file. */
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
  const read = caseSchema(unitsOf(written.content)).safeParse(written.content);
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

const currency: Form<string> = {
  schema: () => {
    const expected = "a currency of three capitals such as USD";
    return z.string({ error: expected }).regex(currencyCode, { error: expected });
  },
};

/** Every block of a case file. */
const caseForm = block({
  name: needed("case", Name, "Its name, shown on every page."),
  invented: preset("invented", yesOrNo, false, "True for a made-up scenario; pages say so."),
  purpose: needed("purpose", Name, "What the case is for, in the builder's words."),
  units: needed("units", choice("units", ["inch", "metric"]), "The units that pages show."),
  lengths: needed("lengths", choice("lengths", ["in", "mm"]), "What a bare length means in the file."),
  currency: needed("currency", currency, "ISO 4217 code of every price."),
  build: needed("build", buildForm, "What every panel and edge is made of, unless it says otherwise itself."),
  sections: needed("sections", sectionsForm, "The sections, from the ground up."),
  hardware: preset("hardware", hardwareForm, [], "Hardware by name."),
  shelves: preset("shelves", shelvesForm, [], "Shelves by name."),
  contents: preset("contents", contentsForm, [], "What rides in the case, by name."),
  demands: needed("demands", demandsForm, "What is asked of the case."),
  journey: needed("journey", journeyForm, "Who moves it, and how."),
  services: preset("services", servicesForm, { cooling: [] }, "Heat and power."),
  business: needed("business", businessForm, "What it must earn."),
});

function caseSchema(units: FileUnits): z.ZodType<Case> {
  return caseForm.schema(units).transform(({ lengths: _, build, sections, ...rest }, context): Case => {
    const complain = (path: readonly string[], expected: string): void =>
      context.addIssue({ code: "custom", path: [...path], message: expected });
    if (sections.length === 0) complain(["sections"], "at least one section");
    const whole = sections.map((section) =>
      completeSection(section, build, (path, expected) =>
        complain(["sections", section.name, ...path], expected),
      ),
    );
    return { ...rest, sections: whole };
  });
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

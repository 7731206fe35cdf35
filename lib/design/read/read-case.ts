/** Reads case.yaml: text in, a typed case or every problem out. Touches no file. */
import { z } from "zod";
import { keptByContent } from "../../kept/index.js";
import { didYouMean, nearestWord, type RawProblem } from "../../problem.js";
import { choice, Name } from "../../quantity/index.js";
import type { Case, CaseBody, LeftOut, Section } from "../case.js";
import { buildForm } from "./build.js";
import { type CasePath, type CaseText, readCaseText } from "./case-text.js";
import { contentsForm, shelvesForm } from "./contents.js";
import { businessForm, demandsForm, journeyForm, noBusiness, noJourney } from "./demands.js";
import { drawersForm } from "./drawers.js";
import type { FileUnits } from "./fields.js";
import {
  type BlockOf,
  block,
  type Form,
  listOfForm,
  needed,
  optional,
  preset,
  value,
  yesOrNo,
} from "./form.js";
import { hardwareForm } from "./hardware.js";
import { completeSection, sectionsForm } from "./sections.js";
import { servicesForm } from "./services.js";
import { stiffenersForm } from "./stiffeners.js";

/** What a case file gave. */
export interface ReadCase {
  /** Absent when there are problems. */
  readonly case?: Case;
  /** What could be read of the thing itself, where the whole could not. */
  readonly body?: CaseBody;
  /** Names that are written, but could not be read. */
  readonly hidden: HiddenNames;
  /** Paths of the blocks that names were not read from. */
  readonly unread: readonly CasePath[];
  /** The currency of the file, where it is one. */
  readonly currency: string | undefined;
  /** The unit that bare lengths were read in; absent where the text could not be read at all. */
  readonly length: FileUnits["length"] | undefined;
  /** Everything that is wrong with the file. */
  readonly problems: readonly RawProblem[];
  /** Where things stand in the file, for problems found later. */
  readonly written: CaseText;
}

/** Names of what could not be read. */
export interface HiddenNames {
  /** Sections. */
  readonly sections: ReadonlySet<string>;
  /** Shelves. */
  readonly shelves: ReadonlySet<string>;
}

const nothingHidden: HiddenNames = { sections: new Set(), shelves: new Set() };

/**
 * Reads a case file.
 *
 * Bare numbers are in the file's own unit (`lengths: in` or `lengths: mm`) and currency. What a panel or an
 * edge does not say itself comes from its section's `build`, then from the case's.
 *
 * @param file name to show in problems
 * @param length the unit of bare lengths, to try another than the file's own
 */
export function readCase(text: string, file: string, length?: FileUnits["length"]): ReadCase {
  const written = readCaseText(text, file);
  const none = { written, hidden: nothingHidden, unread: [], currency: undefined, length: undefined };
  if (written.problems.length > 0) return { ...none, problems: written.problems };
  const own = unitsOf(written.content);
  const units = { ...own, length: length ?? own.length };
  const read = caseSchema(units).safeParse(written.content);
  if (read.success) {
    const { currency } = read.data;
    return { ...none, currency, length: units.length, case: read.data, problems: [] };
  }
  const { issues } = read.error;
  const meant = new Set(issues.flatMap(meantBy));
  const problems = issues
    .filter(({ path }) => !meant.has(JSON.stringify(path)) || written.has(path.map(stepOf)))
    .flatMap((issue) => problemsOf(issue, written));
  return {
    written,
    ...bodyOf(written.content, issues, units),
    currency: currencyOf(written.content),
    length: units.length,
    problems,
  };
}

/** The file's units are needed to read it; when they are wrong, their own fields say so. */
function unitsOf(content: unknown): FileUnits {
  return {
    length: isRecord(content) && content.lengths === "mm" ? "mm" : "in",
    currency: currencyOf(content) ?? "USD",
  };
}

function currencyOf(content: unknown): string | undefined {
  const written = isRecord(content) ? content.currency : undefined;
  return typeof written === "string" && currencyCode.test(written) ? written : undefined;
}

const currencyCode = /^[A-Z]{3}$/;

const currency: Form<string> = {
  schema: () => {
    const expected = "a currency of three capitals such as USD";
    return z.string({ error: expected }).regex(currencyCode, { error: expected });
  },
};

/** What the thing itself is made of. */
const bodyFields = {
  units: needed("units", choice("units", ["inch", "metric"]), "The units that pages show."),
  build: needed("build", buildForm, "What every panel and edge is made of, unless it says otherwise itself."),
  sections: needed("sections", sectionsForm, "The sections, from the ground up."),
  hardware: preset("hardware", hardwareForm, [], "Hardware by name."),
  shelves: preset("shelves", shelvesForm, [], "Shelves by name."),
  drawers: preset("drawers", drawersForm, [], "Drawers by name."),
  stiffeners: preset("stiffeners", stiffenersForm, [], "Stiffeners of panels by name."),
  contents: preset("contents", contentsForm, [], "What rides in the case, by name."),
  services: preset("services", servicesForm, { cooling: [] }, "Heat and power."),
};

/** Every block of a case file. */
export const caseForm = block({
  name: needed("case", Name, "Its name, shown on every page."),
  invented: preset("invented", yesOrNo, false, "True for a made-up scenario; pages say so."),
  purpose: needed("purpose", Name, "What the case is for, in the builder's words."),
  units: bodyFields.units,
  lengths: needed("lengths", choice("lengths", ["in", "mm"]), "What a bare length means in the file."),
  currency: needed("currency", currency, "ISO 4217 code of every price."),
  build: bodyFields.build,
  sections: bodyFields.sections,
  hardware: bodyFields.hardware,
  shelves: bodyFields.shelves,
  drawers: bodyFields.drawers,
  stiffeners: bodyFields.stiffeners,
  contents: bodyFields.contents,
  demands: needed("demands", demandsForm, "What is asked of the case."),
  journey: optional(
    "journey",
    journeyForm,
    "Who moves it, and how; nobody asks of the way where it is left out.",
  ),
  services: optional("services", servicesForm, "Heat and power; nobody asks of them where it is left out."),
  business: optional(
    "business",
    businessForm,
    "What it must earn; nobody asks of money where it is left out.",
  ),
  keep: preset(
    "keep",
    listOfForm(value(Name), 'places such as "upper.front" that no proposed change may move'),
    [],
    "What must not move while changes are looked for: places of this file, and names of tables.",
  ),
});

/** Sections made complete with what the builds say. */
function wholeSections(
  { build, sections }: Pick<BlockOf<typeof bodyFields>, "build" | "sections">,
  context: z.RefinementCtx,
): Section[] {
  const complain = (path: readonly string[], message: string): void =>
    context.addIssue({ code: "custom", path: [...path], message });
  if (sections.length === 0) complain(["sections"], "at least one section");
  return sections.map((section) => completeSection(section, build, complain));
}

/** What a case can do without. */
const dispensable: readonly LeftOut[] = ["journey", "services", "business"];

/** How a whole case is read: made once for the units of a file, since making it takes as long as reading with it. */
const caseSchema = keptByContent(8, newCaseSchema);

function newCaseSchema(units: FileUnits): z.ZodType<Case> {
  return caseForm.schema(units).transform(({ lengths: _, build, sections, ...rest }, context): Case => {
    const { journey = noJourney, services = { cooling: [] }, business = noBusiness(rest.currency) } = rest;
    const leftOut = dispensable.filter((name) => rest[name] === undefined);
    const whole = wholeSections({ build, sections }, context);
    return { ...rest, sections: whole, journey, services, business, leftOut };
  });
}

function bodySchema(units: FileUnits): z.ZodType<CaseBody> {
  return block(bodyFields)
    .schema(units)
    .transform(({ build, sections, ...rest }, context): CaseBody => {
      return { ...rest, sections: wholeSections({ build, sections }, context) };
    });
}

/** Blocks of names, of which each may be right or wrong by itself. */
const blocksOfNames: readonly string[] = [
  "sections",
  "hardware",
  "shelves",
  "drawers",
  "stiffeners",
  "contents",
];

/** As much of the thing itself as can be read without what has an issue; nothing where the builds have one. */
function bodyOf(
  content: unknown,
  issues: readonly z.core.$ZodIssue[],
  units: FileUnits,
): Pick<ReadCase, "body" | "hidden" | "unread"> {
  const all = ["build", ...blocksOfNames].map((block) => [block]);
  const none = { hidden: nothingHidden, unread: all };
  if (!isRecord(content) || issues.some(({ code }) => code === "invalid_key")) return none;
  const { units: shown = "metric", build, sections } = content;
  const { hardware = {}, shelves = {}, drawers = {}, stiffeners = {}, contents = {} } = content;
  const given: Record<string, unknown> = {
    units: shown,
    build,
    sections,
    hardware,
    shelves,
    drawers,
    stiffeners,
    contents,
  };
  if (issues.some(({ path: [block] }) => block === "units")) given.units = "metric";
  const wrong = issues.map(({ path: [block, name] }) => [String(block), String(name)] as const);
  const hiddenIn = (block: string): Set<string> =>
    new Set(wrong.filter(([one]) => one === block).map(([, name]) => name));
  for (const block of blocksOfNames) {
    const names = given[block];
    if (!isRecord(names)) return none;
    given[block] = Object.fromEntries(Object.entries(names).filter(([name]) => !hiddenIn(block).has(name)));
  }
  const read = bodySchema(units).safeParse(given);
  const hidden = { sections: hiddenIn("sections"), shelves: hiddenIn("shelves") };
  if (!read.success) return { hidden, unread: all };
  const unread = blocksOfNames.flatMap((block) => [...hiddenIn(block)].map((name) => [block, name]));
  return { body: read.data, hidden, unread };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A fault that the schema found, as problems of the file: one for each unknown word. */
function problemsOf(issue: z.core.$ZodIssue, { problemAt }: CaseText): RawProblem[] {
  const path = issue.path.map(stepOf);
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => problemAt([...path, key], wordExpected(key, issue.message), key));
  }
  if (issue.code === "invalid_key") {
    const [inner] = issue.issues;
    return [problemAt(path, inner?.message ?? issue.message, String(path.at(-1)))];
  }
  return [problemAt(path, issue.message)];
}

function stepOf(step: PropertyKey): string | number {
  return typeof step === "symbol" ? String(step) : step;
}

/** Where the words are missing of which unknown words are slips: a missing word and its slip are one mistake. */
function meantBy(issue: z.core.$ZodIssue): string[] {
  if (issue.code !== "unrecognized_keys") return [];
  const known = wordsIn(issue.message);
  return issue.keys.map((key) => JSON.stringify([...issue.path, nearestWord(key, known)]));
}

function wordsIn(oneOf: string): string[] {
  return oneOf.replace(/^one of /, "").split(", ");
}

/** What an unknown word should have been. */
function wordExpected(word: string, oneOf: string): string {
  if (word === "<<") return "the words themselves: a block cannot be merged into another";
  return `${oneOf}${didYouMean(word, wordsIn(oneOf))}`;
}

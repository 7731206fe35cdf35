import { asBuiltTable } from "./as-built-table.js";
import { labelsOf } from "./labels.js";
import { numberBlanks } from "./number-blanks.js";
import type { Recipe, RecipeSection } from "./recipe.js";
import { asBuiltSection } from "./sections/as-built.js";
import { assemblySection } from "./sections/assembly.js";
import { cautionsSection } from "./sections/cautions.js";
import { coverSection } from "./sections/cover.js";
import { cutSections } from "./sections/cut-list.js";
import { decisionsSection, stampOf } from "./sections/decisions.js";
import { gluingSection } from "./sections/gluing.js";
import { openingsAndHolesSection } from "./sections/openings-and-holes.js";
import { rivetingSection } from "./sections/riveting.js";
import { shoppingSection } from "./sections/shopping.js";
import { wordsAndMarks } from "./sections/words-and-marks.js";
import { openWorkshop, type RecipeInput, type Workshop } from "./workshop.js";

/**
 * Writes the recipe of a case as a set of papers in the order of the work, so that somebody else can build the same one.
 * What the review does not say yes to is on one page of decisions; whether it may be built is on every page.
 *
 * @throws Refusal for a rivet whose body is outside the range of the hole rule
 */
export function writeRecipe(input: RecipeInput): Recipe {
  const workshop = openWorkshop(input);
  const sections = sectionsOf(workshop);
  return {
    title: input.case.name,
    invented: input.case.invented,
    stamp: stampOf(input),
    sections,
    asBuilt: asBuiltTable(sections, input.case),
    labels: labelsOf(workshop),
  };
}

/** The sections in the order of the work, their blanks numbered. */
function sectionsOf(workshop: Workshop): readonly RecipeSection[] {
  return numberBlanks([
    coverSection(workshop),
    wordsAndMarks(workshop),
    cautionsSection(workshop),
    ...decisionsSection(workshop),
    shoppingSection(workshop),
    ...cutSections(workshop),
    ...gluingSection(workshop),
    ...(workshop.parts.fastenings.length > 0 ? [rivetingSection(workshop)] : []),
    openingsAndHolesSection(workshop),
    assemblySection(workshop),
    asBuiltSection(workshop),
  ]);
}

import type { Recipe } from "./recipe.js";
import { asBuiltSection } from "./sections/as-built.js";
import { assemblySection } from "./sections/assembly.js";
import { beforeYouCut } from "./sections/before-you-cut.js";
import { buyListSection } from "./sections/buy-list.js";
import { cautionsSection } from "./sections/cautions.js";
import { checksSection } from "./sections/checks.js";
import { cutListSection } from "./sections/cut-list.js";
import { gluingSection } from "./sections/gluing.js";
import { openingsAndHolesSection } from "./sections/openings-and-holes.js";
import { rivetingSection } from "./sections/riveting.js";
import { toolsSection } from "./sections/tools.js";
import { whatYouBuild } from "./sections/what-you-build.js";
import { openWorkshop, type RecipeInput } from "./workshop.js";

/**
 * Writes the recipe of a case, in the order of the work, so that somebody else can build the same one.
 * What the review does not yet say yes to comes first.
 *
 * @throws Refusal for a rivet whose body is outside the range of the hole rule
 */
export function writeRecipe(input: RecipeInput): Recipe {
  const workshop = openWorkshop(input);
  return {
    title: input.case.name,
    invented: input.case.invented,
    sections: [
      ...beforeYouCut(workshop),
      whatYouBuild(workshop),
      cautionsSection(workshop),
      toolsSection(workshop),
      buyListSection(workshop),
      cutListSection(workshop),
      ...gluingSection(workshop),
      openingsAndHolesSection(workshop),
      ...(input.parts.fastenings.length > 0 ? [rivetingSection(workshop)] : []),
      assemblySection(workshop),
      checksSection(workshop),
      asBuiltSection(workshop),
    ],
  };
}

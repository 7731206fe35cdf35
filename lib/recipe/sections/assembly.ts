/** Putting it together: stage by stage, each with its picture, its steps and what to measure. */
import { flowingSection, type RecipeSection, sentence } from "../recipe.js";
import { apartBlocks } from "../stages/apart.js";
import { allStages } from "../stages/case-stages.js";
import { stageBlocks } from "../stages/stage.js";
import type { Workshop } from "../workshop.js";

/** The section on assembly. */
export function assemblySection(workshop: Workshop): RecipeSection {
  return flowingSection(
    "Assembly",
    sentence(
      "Left and right are as seen facing the front. Do not begin a stage before the measures of the last one are right.",
    ),
    ...apartBlocks(workshop),
    ...stageBlocks(allStages(workshop), workshop),
  );
}

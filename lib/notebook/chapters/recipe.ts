/** What the chapter with the recipe shows. */
export { recipeOf } from "../../job/index.js";
export { showRecipe } from "../show.js";
export { recipeAnswer } from "../tables/recipe.js";

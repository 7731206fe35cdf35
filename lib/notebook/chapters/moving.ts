/** What the chapter on lifting, rolling, tipping and carrying shows. */
export { steadyTilt } from "../../moving/index.js";
export { lengthUnit } from "../tables/chart-units.js";
export {
  dropHeightsTable,
  heaviestMoved,
  inertiaTable,
  journeySentence,
  leanRows,
  massParts,
  massStatesTable,
  massUnit,
  movesTable,
  movingAnswer,
  recommendedShare,
  ridesTable,
  shareRows,
} from "../tables/moving.js";

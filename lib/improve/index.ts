export { fewestAtOdds } from "./at-odds.js";
export {
  addedWeights,
  byCost,
  type Candidate,
  type Cover,
  dominates,
  leastCovers,
  separateGroups,
  spread,
  undominated,
  type Weights,
} from "./cover.js";
export {
  type HowFar,
  type HowFarAsked,
  howFar,
  type Moved,
  type Mover,
  type Reach,
  type Stop,
} from "./how-far.js";
export { movedLocks } from "./locked.js";
export { cheapestMending, mendingInWords, triedRemedy } from "./mending.js";
export { type CaseNumber, numbersOf, writtenNumber } from "./numbers.js";
export type { Option } from "./option.js";
export { optionsFor } from "./options/index.js";
export { type Improved, type Improvement, improve, type Progress, type Wanted } from "./search.js";
export { sideBySide } from "./singles.js";
export { failingOf, graveTiers, holdsForSure, mayFail } from "./standing.js";
export { type Stepped, type Stepping, stepByStep, type Taken } from "./steps.js";
export type { SearchBounds } from "./still-time.js";
export { type Measures, measuresOf, textsWith, withOptions } from "./trial.js";
export { builtThenCheapest, lockChange, type Mending, triedFor } from "./tried.js";
export type { Wish } from "./wish-list.js";
export { type WishCost, type WishCosts, wishCosts } from "./wishes.js";
export {
  type BeforeAndAfter,
  beforeAndAfter,
  type FigureOfDesign,
  type FiguresOfDesign,
  figuresOf,
  movedHeadings,
  movedInWords,
  reachHeadings,
  reachInWords,
  searchInWords,
  unpricedOf,
  wishHeadings,
  wishInWords,
} from "./words.js";

/** What the chapter on costs shows. */
export {
  billTables,
  cashPoints,
  chancePoints,
  chanceTable,
  dearestItem,
  doubtsNote,
  moneyAnswer,
  optionRows,
  optionTable,
  preventing,
  pricePoints,
  sharingNote,
  swingBars,
  timeTable,
  tradeCosts,
  whatIfTable,
} from "../tables/money.js";

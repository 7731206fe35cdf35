import type { Measurements, Offers, Stock } from "./stock.js";

/** The file beside case.yaml that each table stands in. */
export const tableFiles: Readonly<Record<keyof Stock | keyof Offers | keyof Measurements, string>> = {
  sheets: "sheet-stock.csv",
  bars: "bar-stock.csv",
  hardware: "hardware.csv",
  fasteners: "fasteners.csv",
  adhesives: "adhesives.csv",
  facings: "facings.csv",
  priceBreaks: "price-breaks.csv",
  suppliers: "suppliers.csv",
  leftovers: "leftovers.csv",
  bends: "bend-tests.csv",
  weights: "weights.csv",
  spreads: "spread-trials.csv",
  pulls: "pull-tests.csv",
  kerfs: "kerfs.csv",
  timings: "timings.csv",
  twists: "twist-tests.csv",
  tilts: "tilt-tests.csv",
  cushions: "cushion-curves.csv",
  temperatures: "temperature-log.csv",
  profiles: "bar-profiles.csv",
};

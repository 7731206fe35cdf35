/** Changes what was compiled of one room, one thing at a time, and runs the tests that see it. */
const room = process.env.CASEWRIGHT_ROOM ?? "";

export default {
  testRunner: "vitest",
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
  mutate: [`lib/dist/${room}/**/*.js`],
  // Titles, meanings and citations are read by other tests, as words.
  mutator: { excludedMutations: ["StringLiteral"] },
  ignorePatterns: ["book", "data/*/book", "notebooks", "coverage"],
  coverageAnalysis: "perTest",
  concurrency: 2,
  reporters: ["clear-text"],
  clearTextReporter: { logTests: false, allowColor: false },
  tempDirName: "node_modules/.mutated",
  thresholds: { high: 85, low: 85, break: 0 },
};

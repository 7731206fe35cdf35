import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** Tests that set the environment, start programs or declare formulas of their own: each file by itself. */
const alone = [
  "tests/{book,command,host,house,job}/**/*.test.ts",
  "tests/notebook/show.test.ts",
  "tests/laws/*-in-browser.test.ts",
  "tests/{formula,published-check}.test.ts",
];

export default defineConfig({
  // The sources run themselves; package.json names the compiled host.
  resolve: { alias: { "#host": fileURLToPath(new URL("lib/host/node.ts", import.meta.url)) } },
  test: {
    testTimeout: 20_000,
    projects: [
      {
        extends: true,
        // Pure functions: the library is read once a process, and the demo is reviewed once.
        test: { name: "rooms", include: ["tests/**/*.test.ts"], exclude: alone, isolate: false },
      },
      { extends: true, test: { name: "edges", include: alone } },
    ],
    coverage: {
      provider: "v8",
      include: ["lib/**/*.ts"],
      exclude: ["lib/dist/**"],
      reporter: ["text-summary", "json-summary"],
    },
  },
});

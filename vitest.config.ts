import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { compiledLibrary, compileLibrary } from "./tests/compiled-library.js";

/** Tests that set the environment, start programs or declare formulas of their own: each file by itself. */
const alone = [
  "tests/{book,command,host,house,job}/**/*.test.ts",
  "tests/notebook/show.test.ts",
  "tests/laws/*-in-browser.test.ts",
  "tests/{formula,published-check}.test.ts",
];

/** Lines are counted in the sources, which then run themselves. */
const counting = process.argv.includes("--coverage");
if (!counting) compileLibrary();

function sourceOf(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}

export default defineConfig({
  plugins: counting ? [] : [compiledLibrary],
  // What runs from the sources takes the host from them too; package.json names the compiled one.
  resolve: counting
    ? { alias: { "#host": sourceOf("lib/host/node.ts"), "#mathml": sourceOf("lib/page/mathml.ts") } }
    : {},
  test: {
    // Ten times what a book takes on a machine with nothing else to do: a busy machine fails no test.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    server: { deps: { external: [/\/lib\/dist\//] } },
    projects: [
      {
        extends: true,
        // Pure functions: the library is read once a process, and the demo is reviewed once.
        test: {
          name: "rooms",
          include: ["tests/**/*.test.ts"],
          exclude: alone,
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      // Books take both processors by themselves.
      { extends: true, test: { name: "edges", include: alone, maxWorkers: 1, sequence: { groupOrder: 1 } } },
    ],
    coverage: {
      provider: "v8",
      include: ["lib/**/*.ts"],
      exclude: ["lib/dist/**"],
      reporter: ["text-summary", "json-summary"],
    },
  },
});

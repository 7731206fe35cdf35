/** The tests of one room and the published checks, for what was compiled and then changed: nothing is compiled anew. */
import { defineConfig } from "vitest/config";
import { compiledLibrary } from "../compiled-library.js";

const room = process.env.CASEWRIGHT_ROOM ?? "";

export default defineConfig({
  plugins: [compiledLibrary],
  test: {
    include: [`tests/${room}/**/*.test.ts`, "tests/published-check.test.ts"],
    testTimeout: 600_000,
    server: { deps: { external: [/\/lib\/dist\//] } },
  },
});

import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  // The sources run themselves; package.json names the compiled host.
  resolve: { alias: { "#host": fileURLToPath(new URL("lib/host/node.ts", import.meta.url)) } },
  test: {
    include: ["tests/**/*.test.ts"],
    testTimeout: 20_000,
    coverage: {
      provider: "v8",
      include: ["lib/**/*.ts"],
      exclude: ["lib/dist/**"],
      reporter: ["text-summary", "json-summary"],
    },
  },
});

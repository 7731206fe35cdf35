/** Part of npm run build: the live page's two scripts, one of the library for its workers, one of the page itself. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { rolldown } from "rolldown";

const lib = import.meta.dirname;

/** Bundles a source with all that it needs, for a browser. */
async function bundle(source) {
  const build = await rolldown({
    input: join(lib, source),
    platform: "browser",
    // Of a package only what is used: none does anything by being there.
    treeshake: { moduleSideEffects: (id) => !id.includes("/node_modules/") },
    resolve: { extensionAlias: { ".js": [".ts", ".js"] } },
    onLog: (level, log, handler) =>
      log.code === "UNRESOLVED_IMPORT" ? handler("error", log) : handler(level, log),
  });
  const { output } = await build.generate({
    format: "iife",
    minify: true,
    comments: { legal: true, annotation: false, jsdoc: false },
  });
  await build.close();
  return output[0].code;
}

mkdirSync(join(lib, "dist/live"), { recursive: true });
for (const [source, name] of [
  ["dist/live/worker.js", "worker.bundle.js"],
  ["live/page/main.ts", "page.bundle.js"],
]) {
  writeFileSync(join(lib, "dist/live", name), await bundle(source));
}

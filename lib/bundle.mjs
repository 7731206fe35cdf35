/** Part of npm run build: the live page's two scripts, one of the library for its workers, one of the page itself. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { rolldown } from "rolldown";

const lib = import.meta.dirname;

/**
 * KaTeX without the measures of its letters, which only its HTML needs: equations here are MathML, which asks only whether a
 * font has a letter. The two that it measures when it is loaded stay.
 *
 * @throws Error for a KaTeX that keeps them elsewhere
 */
const withoutFontMeasures = {
  name: "without-font-measures",
  transform(code, id) {
    if (!/katex\.mjs$/.test(id)) return null;
    const [whole, table] = /var fontMetricsData = (\{[\s\S]*?\n\});/.exec(code) ?? [];
    if (!whole) throw new Error("bundle: KaTeX keeps its font measures elsewhere, look for fontMetricsData");
    const fonts = Object.entries(Function(`return ${table}`)()).map(([font, letters]) => {
      const measured = (letter) => font === "Main-Regular" && ["65", "84"].includes(letter);
      const kept = Object.entries(letters).map(([letter, sizes]) => [letter, measured(letter) ? sizes : 1]);
      return [font, Object.fromEntries(kept)];
    });
    return code.replace(whole, () => `var fontMetricsData = ${JSON.stringify(Object.fromEntries(fonts))};`);
  },
};

/**
 * KaTeX without the outlines of its stretched signs, which only its HTML draws.
 *
 * @throws Error for a KaTeX that keeps them elsewhere
 */
const withoutOutlines = {
  name: "without-outlines",
  transform(code, id) {
    if (!/katex\.mjs$/.test(id)) return null;
    const [whole] = /\nvar path = \{[\s\S]*?\n\};/.exec(code) ?? [];
    if (!whole) throw new Error("bundle: KaTeX keeps its outlines elsewhere, look for leftbraceunder");
    return code.replace(whole, "\nvar path = {};");
  },
};

/** Bundles a source with all that it needs, for a browser. */
async function bundle(source) {
  const build = await rolldown({
    input: join(lib, source),
    platform: "browser",
    plugins: [withoutFontMeasures, withoutOutlines],
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

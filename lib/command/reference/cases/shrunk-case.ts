/** A failing case made smaller: whatever can be left out of its files without mending it. */

import type { CaseContent } from "./case-content.js";
import type { Block } from "./draws.js";

/**
 * The case without all that its fault does not need.
 *
 * @param fails whether a smaller case still has the same fault
 * @param seconds how long smaller cases are looked for
 */
export function shrunkCase(
  given: CaseContent,
  fails: (smaller: CaseContent) => boolean,
  seconds: number,
): CaseContent {
  let best = given;
  const end = performance.now() + 1000 * seconds;
  for (let found = true; found; ) {
    found = false;
    for (const path of pathsIn(best.content)) {
      const smaller = { ...best, content: without(best.content, path) as Block };
      if (performance.now() > end) return best;
      if (!fails(smaller)) continue;
      best = smaller;
      found = true;
      break;
    }
  }
  return best;
}

/** Every entry of a block or a list, the outermost first. */
function pathsIn(value: unknown): readonly (readonly string[])[] {
  const levels: string[][] = [];
  const walk = (one: unknown, path: readonly string[]): void => {
    if (typeof one !== "object" || one === null) return;
    if (path.length > 0 && Array.isArray(one) && one.every((entry) => typeof entry !== "object")) return;
    for (const key of Object.keys(one)) levels.push([...path, key]);
    for (const [key, inner] of Object.entries(one)) walk(inner, [...path, key]);
  };
  walk(value, []);
  return levels.sort((a, b) => a.length - b.length);
}

function without(value: unknown, [key = "", ...rest]: readonly string[]): unknown {
  if (Array.isArray(value))
    return rest.length === 0
      ? value.filter((_, i) => String(i) !== key)
      : value.map((one, i) => (String(i) === key ? without(one, rest) : one));
  const entries = Object.entries(value as Block);
  return Object.fromEntries(
    rest.length === 0
      ? entries.filter(([name]) => name !== key)
      : entries.map(([name, one]) => [name, name === key ? without(one, rest) : one]),
  );
}

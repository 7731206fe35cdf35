/**
 * Compiled cells, kept. A cell that passed the compiler after the same declarations, with the same library and
 * the same packages, would pass it again and give the same code; so the compiler is started only when a cell
 * comes that nobody has seen.
 */
import type { KeptOnDisk } from "../kept-on-disk.js";
import type { Converted, Converter } from "./tslab-internals.js";

/** A file beside the notebook, whose text is not known here. */
const pathInQuotes = /["'`](\.{0,2}\/|[A-Za-z]:|file:)/;

/** A converter that asks the compiler only for cells not kept yet; made when it is first needed. */
export function keptConverter(create: () => Converter, kept: KeptOnDisk): Converter {
  let made: Converter | undefined;
  const compiler = (): Converter => {
    made ??= create();
    return made;
  };
  return {
    convert: (declared, code) => {
      if (pathInQuotes.test(declared) || pathInQuotes.test(code)) return compiler().convert(declared, code);
      const key = ["cell", process.cwd(), declared, code];
      const found = kept.read(key);
      if (isConverted(found)) return found;
      const converted = compiler().convert(declared, code);
      if (converted.diagnostics.length === 0 && !converted.sideOutputs) kept.write(key, converted);
      return converted;
    },
    addModule: (...request) => compiler().addModule(...request),
    inspect: (...request) => compiler().inspect(...request),
    complete: (...request) => compiler().complete(...request),
    close: () => made?.close(),
  };
}

function isConverted(found: unknown): found is Converted {
  return typeof found === "object" && found !== null && "diagnostics" in found;
}

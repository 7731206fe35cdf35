import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * A script and everything it imports as one CommonJS file. Reading a hundred small modules takes Node longer than
 * solving a panel does.
 *
 * @param entry compiled script, without await at its top
 * @returns its text
 */
export async function oneFile(entry: string): Promise<string> {
  const { default: typescript } = await import("typescript");
  const { ModuleKind, ScriptTarget } = typescript;
  const compilerOptions = { module: ModuleKind.CommonJS, target: ScriptTarget.ES2022, esModuleInterop: true };
  const modules = new Map<string, string>();
  const add = (file: string): string => {
    if (modules.has(file)) return file;
    modules.set(file, "");
    const { outputText } = typescript.transpileModule(readFileSync(file, "utf8"), { compilerOptions });
    const text = outputText.replace(/\brequire\("([^"]+)"\)/g, (asWritten, name: string) =>
      name.startsWith("node:") ? asWritten : `require(${JSON.stringify(add(fileOf(name, file)))})`,
    );
    modules.set(file, text);
    return file;
  };
  add(entry);
  const parts = [...modules].map(
    ([file, text]) => `${JSON.stringify(file)}(module, exports, require) {\n${text}\n}`,
  );
  return `${loader}({\n${parts.join(",\n")}\n}, ${JSON.stringify(entry)}, require);\n`;
}

function fileOf(name: string, from: string): string {
  return name.startsWith(".") ? resolve(dirname(from), name) : fileURLToPath(import.meta.resolve(name));
}

/** Runs modules as they are asked for, each once. */
const loader = `"use strict";
((modules, entry, builtIn) => {
  const run = new Map();
  const load = (name) => {
    if (!(name in modules)) return builtIn(name);
    if (!run.has(name)) {
      const module = { exports: {} };
      run.set(name, module);
      modules[name](module, module.exports, load);
    }
    return run.get(name).exports;
  };
  load(entry);
})`;

/** npm run notebooks -- clean|check: keeps the notebook files in their normal form. */
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { cleanNotebook, parseNotebook, printNotebook, projectFolder } from "../book/index.js";
import { usageOf } from "./help.js";

/**
 * Brings notebooks into the form in which they are kept, or tells which are not.
 *
 * @param args "clean" or "check", then files (default: all in notebooks/)
 * @returns exit code: 1 when a file is not in normal form, or no notebook
 */
export async function notebooks([task, ...files]: readonly string[]): Promise<number> {
  if (task !== "clean" && task !== "check") {
    console.error(usageOf("notebooks"));
    return 1;
  }
  const treat = task === "clean" ? cleanFile : checkFile;
  const codes: number[] = [];
  for (const file of files.length > 0 ? files : await notebookFiles()) codes.push(await treat(file));
  return Math.max(0, ...codes);
}

/** The notebooks of a folder, the project's where none is named, in the order of their names. */
export async function notebookFiles(folder: string = join(projectFolder(), "notebooks")): Promise<string[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".ipynb")).sort();
  return names.map((name) => relative(process.cwd(), join(folder, name)));
}

async function cleanFile(file: string): Promise<number> {
  return withForms(file, async (text, normal) => {
    if (text === normal) return 0;
    await writeFile(file, normal);
    console.log(`${file}: brought into normal form`);
    return 0;
  });
}

async function checkFile(file: string): Promise<number> {
  return withForms(file, async (text, normal) => {
    if (text === normal) return 0;
    console.error(`${file}: not in normal form; "npm run notebooks -- clean" mends it`);
    return 1;
  });
}

async function withForms(
  file: string,
  treat: (text: string, normal: string) => Promise<number>,
): Promise<number> {
  try {
    const text = await readFile(file, "utf8");
    return await treat(text, printNotebook(cleanNotebook(parseNotebook(text, file))));
  } catch (error) {
    console.error((error as Error).message);
    return 1;
  }
}

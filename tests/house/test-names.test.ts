/** A test stands where one looks for it: it is named after the file it tests, in the folder of its room. */
import { readdirSync } from "node:fs";
import { basename, join, resolve, sep } from "node:path";
import { expect, test } from "vitest";

const root = resolve(import.meta.dirname, "../..");

function filesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !/^(dist|node_modules)/.test(file))
    .map((file) => file.split(sep).join("/"));
}

/** What holds over several files has rooms of its own. */
const overSeveral: readonly string[] = ["laws", "reference", "house"];

test("every test is named after a file of its room, or stands among the laws, references or house rules", () => {
  const files = filesIn("lib");
  const room = (file: string): string => file.split("/")[0] ?? "";
  const strays = filesIn("tests")
    .filter((file) => file.endsWith(".test.ts") && !overSeveral.includes(room(file)))
    .filter((file) => {
      const name = file.replace(/\.test\.ts$/, ".ts");
      return !files.some(
        (one) => one === name || (room(one) === room(name) && basename(one) === basename(name)),
      );
    });
  expect(strays).toEqual([]);
});

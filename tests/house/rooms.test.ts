/** The house rule of DEVELOPERS.md: data flows one way, so an import goes down or stays in its room. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { expect, test } from "vitest";

const lib = resolve(import.meta.dirname, "../../lib");

const floors: readonly (readonly string[])[] = [
  ["quantity", "source", "problem"],
  ["formula"],
  ["published-check", "measure", "material"],
  ["mechanics", "fem", "fastening", "bonding", "cutting", "moving", "inside", "money"],
  ["design"],
  ["review"],
  ["page"],
  ["recipe"],
  ["job"],
  ["notebook", "book"],
  ["index"],
  ["command"],
];
const files = readdirSync(lib, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !/^(dist|node_modules)/.test(file))
  .map((file) => join(lib, file));

function roomOf(file: string): string {
  const room = (relative(lib, file).split(sep)[0] ?? "").replace(/\.(ts|js)$/, "");
  // The three rooms that review/ became still import each other: they count as one until their ties are cut.
  return ["model", "plan", "findings"].includes(room) ? "review" : room;
}

function floorOf(room: string): number {
  return floors.findIndex((rooms) => rooms.includes(room));
}

function importsOf(file: string): string[] {
  const specifiers = readFileSync(file, "utf8").matchAll(/(?:from|import)\s*\(?\s*"(\.[^"]+)"/g);
  return [...specifiers].map(([, specifier = ""]) => resolve(dirname(file), specifier));
}

test("every room has a floor", () => {
  expect([...new Set(files.map(roomOf))].filter((room) => floorOf(room) < 0)).toEqual([]);
});

test("no import climbs, and none goes sideways", () => {
  const climbing = files.flatMap((file) =>
    importsOf(file)
      .map((imported) => ({ from: roomOf(file), to: roomOf(imported), file: relative(lib, file) }))
      .filter(({ from, to }) => from !== to && floorOf(to) >= floorOf(from)),
  );
  expect(climbing).toEqual([]);
});

test("only the edges touch files, processes or the network", () => {
  const edges = new Set(["job", "notebook", "book", "command"]);
  // Its script is text here: it runs in a reader's browser.
  const browserScripts = new Set([join("page", "chart-runtime.ts")]);
  const touching = files.filter(
    (file) =>
      !browserScripts.has(relative(lib, file)) &&
      !edges.has(roomOf(file)) &&
      /from "node:(fs|child_process|http|https|net|worker_threads|process)|\bprocess\.|\bfetch\(|console\./.test(
        readFileSync(file, "utf8"),
      ),
  );
  expect(touching.map((file) => relative(lib, file))).toEqual([]);
});

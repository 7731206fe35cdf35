import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { JobFiles } from "../../lib/book/job-files.js";

let folder = "";
let files: JobFiles;
const at = (name: string): string => join(folder, name);
const said = (name: string): string => readFileSync(at(name), "utf8");
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  writeFileSync(at("case.yaml"), "name: a\n", { mode: 0o640 });
  writeFileSync(at("notes.md"), "mine\n");
  files = new JobFiles(folder);
});
afterEach(() => rmSync(folder, { recursive: true }));

test("reads the job's own files and no others", () => {
  expect(files.read()).toEqual({ "case.yaml": "name: a\n" });
});

test("writes what differs in place, leaves its permissions, and leaves nothing beside it but what was there before", async () => {
  const wanted = { "case.yaml": "name: b\n", "suppliers.csv": "name\n" };
  expect(await files.save(files.read(), wanted)).toEqual({ kind: "saved", left: [] });
  expect(files.read()).toEqual(wanted);
  expect(statSync(at("case.yaml")).mode & 0o777).toBe(0o640);
  expect(readdirSync(folder).sort()).toEqual([".earlier", "case.yaml", "notes.md", "suppliers.csv"]);
});

test("the last ten versions of what was saved over stay, each as it was", async () => {
  for (let i = 0; i < 13; i++) await files.save(files.read(), { "case.yaml": `name: version ${i}\n` });
  await files.save(files.read(), files.read());
  const versions = readdirSync(at(".earlier")).sort();
  const kept = versions.map((name) => said(join(".earlier", name, "case.yaml")));
  expect(new Set(kept)).toEqual(new Set(Array.from({ length: 10 }, (_, i) => `name: version ${i + 2}\n`)));
});

test("writes nothing when a file changed in the folder meanwhile, and tells what stands there", async () => {
  const known = files.read();
  writeFileSync(at("case.yaml"), "name: c\n");
  const wanted = { "case.yaml": "name: b\n", "suppliers.csv": "name\n" };
  expect(await files.save(known, wanted)).toEqual({ kind: "changed", texts: { "case.yaml": "name: c\n" } });
  expect(readdirSync(folder)).not.toContain("suppliers.csv");
  expect(said("case.yaml")).toBe("name: c\n");
});

test("of two saves at once that know the same, the second finds the first", async () => {
  const known = files.read();
  const [one, other] = await Promise.all([
    files.save(known, { "case.yaml": "name: one\n" }),
    files.save(known, { "case.yaml": "name: other\n" }),
  ]);
  expect([one.kind, other.kind]).toEqual(["saved", "changed"]);
  expect(said("case.yaml")).toBe("name: one\n");
});

test("takes no file away, and says which ones stay", async () => {
  writeFileSync(at("suppliers.csv"), "name\n");
  expect(await files.save(files.read(), { "case.yaml": "name: b\n" })).toEqual({
    kind: "saved",
    left: ["suppliers.csv"],
  });
  expect(said("suppliers.csv")).toBe("name\n");
});

test.each(["notes.md", "../case.yaml", "__proto__", "sub/case.yaml", ""])("writes no %j", async (name) => {
  const before = readdirSync(folder);
  const wanted = JSON.parse(
    JSON.stringify({ "case.yaml": "name: b\n" }).replace("}", `, ${JSON.stringify(name)}: "x"}`),
  );
  expect(await files.save(files.read(), wanted)).toMatchObject({
    kind: "refused",
    words: expect.stringContaining(`no file "${name}"`),
  });
  expect([readdirSync(folder), said("case.yaml"), said("notes.md")]).toEqual([before, "name: a\n", "mine\n"]);
});

test("a link still leads where it led", async () => {
  const elsewhere = mkdtempSync(join(tmpdir(), "casewright-test-"));
  writeFileSync(join(elsewhere, "shared.csv"), "name\n");
  symlinkSync(join(elsewhere, "shared.csv"), at("suppliers.csv"));
  await files.save(files.read(), { ...files.read(), "suppliers.csv": "name\nx\n" });
  expect(readFileSync(join(elsewhere, "shared.csv"), "utf8")).toBe("name\nx\n");
  rmSync(elsewhere, { recursive: true });
});

test("a file that cannot be read is not written over", async () => {
  writeFileSync(at("suppliers.csv"), Buffer.from([0, 159, 146, 150]));
  const saved = await files.save(files.read(), { "case.yaml": "name: b\n", "suppliers.csv": "x" });
  expect(saved).toMatchObject({ kind: "refused", words: expect.stringContaining("suppliers.csv: expected") });
  expect(said("case.yaml")).toBe("name: a\n");
});

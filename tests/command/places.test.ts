import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { projectFolder } from "../../lib/book/index.js";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { bookFolder, notebooksOf } from "../../lib/command/places.js";

const folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("the book of a job", () => {
  test("stands in book/ of the project, or beside the folder of a job elsewhere", () => {
    const name = "my-case";
    expect(bookFolder({ folder: join(projectFolder(), "data", name), name })).toBe(
      join(projectFolder(), "book", name),
    );
    expect(bookFolder({ folder: join(folder, "a", name), name })).toBe(join(folder, "a/book", name));
  });

  test("is not built over a case that stands in its place", async () => {
    const [job, inTheWay] = [join(folder, "shop/plain"), join(folder, "shop/book/plain")];
    for (const one of [job, inTheWay])
      cpSync(join(projectFolder(), "data/soil-lab"), one, { recursive: true });
    expect(await bookOfJob({ job })).toMatchObject({
      trouble: expect.stringContaining("shop/book/plain is a case"),
    });
  });

  test("has a notebook beside the job in place of ours of the same name", async () => {
    const job = join(folder, "own");
    mkdirSync(job);
    for (const name of ["01-measure-your-stock.ipynb", "20-mine.ipynb"]) writeFileSync(join(job, name), "{}");
    const files = await notebooksOf({ folder: job });
    const names = files.map((file) => basename(file));
    expect(names.length).toBe(new Set(names).size);
    expect(files.filter((file) => file.includes("/own/")).map((file) => basename(file))).toEqual([
      "01-measure-your-stock.ipynb",
      "20-mine.ipynb",
    ]);
    expect(names).toContain("02-will-thin-ply-stay-stiff.ipynb");
  });
});

import { expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import type { Option } from "../../lib/improve/option.js";
import { textsWith, withOptions } from "../../lib/improve/trial.js";
import { openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";

function option(id: string, ...changes: Option["changes"]): Option {
  return { id, lever: id, words: id, changes, helps: [], rule: false };
}

function batten(name: string, up: string): Option {
  const what = `{ on: box.top, sheet: ply 10, across: 100 mm, up: ${up}, length: 300 mm, width: 40 mm, adhesive: glue }`;
  return option(name, set(`stiffeners.${name}`, what));
}

test("two battens stand side by side in a file that had no stiffeners", async () => {
  const job = openJob(await otherJob("bare-box"));
  const both = [batten("front batten", "100 mm"), batten("back batten", "300 mm")];
  expect(withOptions(job, both)?.case.stiffeners.map(({ name }) => name)).toEqual([
    "front batten",
    "back batten",
  ]);
  expect(textsWith(job, both)["case.yaml"]?.match(/^stiffeners:/gm)).toHaveLength(1);
});

test("changes that touch one place are made one after another, others at once, and come to the same files", async () => {
  const job = openJob(await otherJob("bare-box"));
  const apart = [option("push", set("demands.push", "50 N")), option("people", set("journey.people", "2"))];
  expect(withOptions(job, apart)?.texts).toEqual(textsWith(job, apart));
  const same = [
    option("push", set("demands.push", "50 N")),
    option("push again", set("demands.push", "60 N")),
  ];
  expect(withOptions(job, same)?.texts).toEqual(textsWith(job, same));
});

test("what a case cannot have is no change", async () => {
  const job = openJob(await otherJob("bare-box"));
  expect(withOptions(job, [option("no such sheet", set("build.sheet", "ply 99"))])).toBeUndefined();
  expect(withOptions(job, [option("no such place", set("lid.width", "1"))])).toBeUndefined();
});

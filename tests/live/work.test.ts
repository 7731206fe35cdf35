/** Every question of a review is answered by one worker, once; what is told before is told as such. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { readDesign } from "../../lib/design/index.js";
import { reviewCase } from "../../lib/findings/index.js";
import { shared, type Told, workOf } from "../../lib/live/index.js";

const jobs = resolve(import.meta.dirname, "../jobs");
const tables = join(jobs, "tables");
const texts = {
  ...Object.fromEntries(readdirSync(tables).map((name) => [name, readFileSync(join(tables, name), "utf8")])),
  "case.yaml": readFileSync(join(jobs, "bare-box.yaml"), "utf8"),
};
const read = readDesign(texts);
if ("problems" in read) throw new Error(JSON.stringify(read.problems));
const { design } = read;
const review = reviewCase(design);
const edited = { edit: 7, texts, design, review };
const told = (share: "quick" | "deep"): readonly Told[] => workOf(share, edited).flatMap((step) => step());
const questionsOf = (messages: readonly Told[]): readonly string[] =>
  messages.flatMap((one) => (one.kind === "answers" ? [one.question] : []));
const [quick, deep] = [told("quick"), told("deep")];

test("each question is in one share, or left to be handed out", () => {
  const spare = quick.flatMap((one) => (one.kind === "spare" ? one.questions : []));
  expect([...questionsOf(quick), ...questionsOf(deep), ...spare].sort()).toEqual(
    review.steps.map(({ id }) => id).sort(),
  );
  const { panels, boxes } = shared(review.steps);
  expect([panels.length, boxes.length, spare.length].every((count) => count > 0)).toBe(true);
});

test("a share tells at its end which questions it answered, each message with its edit", () => {
  for (const messages of [quick, deep]) {
    const last = messages.at(-1);
    expect(last?.kind === "done" && last.questions).toEqual(questionsOf(messages));
    // what is handed to the other worker is right whatever the edit
    const ofEdit = messages.filter(({ kind }) => kind !== "handed");
    expect(new Set(ofEdit.map((one) => "edit" in one && one.edit))).toEqual(new Set([7]));
  }
});

test("what both workers need is handed over with the first sags", () => {
  const handed = quick.findIndex((one) => one.kind === "handed" && one.answers.length > 0);
  expect(quick[handed - 1]?.kind).toBe("first");
});

test("the sag of each panel alone is told first, with the figure that the final answer has", () => {
  const first = quick.flatMap((one) => (one.kind === "first" ? one.answers : []));
  const last = deep.flatMap((one) =>
    one.kind === "answers" && one.question === "stiffness" ? one.answers : [],
  );
  expect(first.length).toBeGreaterThan(0);
  expect(first.map(({ id, demand }) => [id, demand])).toEqual(last.map(({ id, demand }) => [id, demand]));
  expect(first.every(({ answer }) => !/locked into the box/i.test(answer))).toBe(true);
  expect(last.some(({ answer }) => /locked into the box/i.test(answer))).toBe(true);
});

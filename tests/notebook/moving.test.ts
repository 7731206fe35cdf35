/** Rows of the notebook that asks about lifting, rolling and tipping. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { sectionBalance } from "../../lib/model/index.js";
import {
  dropHeightsTable,
  inertiaTable,
  journeySentence,
  leanRows,
  massParts,
  massStatesTable,
  movesTable,
  recommendedShare,
  ridesTable,
  shareRows,
} from "../../lib/notebook/tables/moving.js";

import { Mass } from "../../lib/quantity/index.js";
import { otherJob } from "../other-jobs.js";

const job = openJob("soil-lab-draft");

test("the parts of a bar make its section's mass", () => {
  for (const { name } of job.parts.sections) {
    const mine = massParts(job).filter(({ section }) => section === name);
    const sum = mine.reduce((total, { mass }) => total + mass, 0);
    expect(sum).toBeCloseTo(Mass.in(sectionBalance(job, name).value.mass, "lb"), 9);
    expect(mine.map(({ group }) => group)).toEqual([
      "panels",
      "facings and glue",
      "edges",
      "hardware and fasteners",
      "contents",
    ]);
  }
});

test("mass and inertia have a row a state: two sections and the stack, three states each", () => {
  expect(massStatesTable(job).rows).toHaveLength(9);
  expect(inertiaTable(job).rows).toHaveLength(9);
  expect(String(massStatesTable(job).rows[0]?.[2])).toContain("±");
});

test("everyone who lifts has a bar, and together they carry the section", () => {
  const rows = shareRows(job);
  expect(rows.map(({ who }) => who)).toEqual([
    "lower, front end",
    "lower, back end",
    "upper, left end",
    "upper, right end",
  ]);
  const upper = rows.slice(2).reduce((sum, { share }) => sum + share, 0);
  expect(upper).toBeCloseTo(Mass.in(sectionBalance(job, "upper").value.mass, "lb"), 0);
  expect(recommendedShare(job)).toBeGreaterThan(0);
});

test("at most three things to move a section", () => {
  const sections = movesTable(job).rows.map(([section]) => section);
  expect(sections).toEqual(["lower", "lower", "lower", "upper", "upper", "upper"]);
});

test("the road has three ways for each section, none where there are no straps", () => {
  expect(ridesTable(job)?.rows).toHaveLength(6);
  const { lashing: _, ...journey } = job.case.journey;
  expect(ridesTable({ ...job, case: { ...job.case, journey } })).toBeUndefined();
});

test("a section too heavy for a parcel says so, what is fragile falls from higher by itself", () => {
  const rows = dropHeightsTable(job).rows.map((cells) => cells.map(String));
  expect(rows.find(([what]) => what === "lower")?.[5]).toBe("too heavy");
  expect(rows.map(([what]) => what)).toEqual([
    "lower",
    "upper",
    "field spectrometer, by itself",
    "microscope, by itself",
  ]);
});

test("the lean is told in every direction, four of them by name", () => {
  const rows = leanRows(job, 24);
  expect(rows.map(({ towards }) => towards).filter(Boolean)).toEqual(["back", "right", "front", "left"]);
  expect(rows.every(({ lean }) => lean > 0 && lean < 90)).toBe(true);
});

test("a box of one section without leaves is told once, not stacked and not with its leaves off", async () => {
  const box = openJob(await otherJob("bare-box"));
  const { columns, rows } = massStatesTable(box);
  expect(rows.map(([what, state]) => [what, state])).toEqual([
    ["box", "loaded"],
    ["box", "empty"],
  ]);
  expect(columns.at(-1)?.heading).toBe("Above the floor");
});

test("who moves it, and over what, is the case file's own", async () => {
  expect(journeySentence(openJob(await otherJob("bare-box")))).toBe(
    "One person moves it over an even floor, and it rides in a van.",
  );
  expect(journeySentence(job)).toMatch(
    /^2 people move it over an uneven floor, on stairs, outdoors in the wind, and/,
  );
});

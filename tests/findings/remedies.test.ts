import { beforeAll, describe, expect, test } from "vitest";
import { type PanelRemedy, panelRemedies } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { bendingDrawing, remedyTable } from "../../lib/notebook/index.js";

const job = openJob("soil-lab-draft");
const panel = "upper.front";

describe("what would make the most cut panel stiffer", () => {
  let remedies: readonly PanelRemedy[] = [];
  beforeAll(() => {
    remedies = panelRemedies(job, panel);
  }, 600_000);

  const named = (word: string): PanelRemedy => {
    const found = remedies.find(({ words }) => words.startsWith(word));
    if (!found) throw new Error(`no remedy ${word}`);
    return found;
  };

  test("lists the stiffest first, with what each opening costs", () => {
    expect(remedies.map(({ sag }) => sag)).toEqual(remedies.map(({ sag }) => sag).sort((a, b) => a - b));
    for (const { name } of job.parts.panels.find(({ id }) => id === panel)?.openings ?? [])
      expect(named(`without ${name}`).share).toBeLessThanOrEqual(1.005);
  });

  test("thicker sheet gains about the cube of its thickness, and a batten gains too", () => {
    expect(named("as drawn").share).toBe(1);
    expect(named("sheet 1/8 in thicker").share).toBeGreaterThan((9.1 / 12.1) ** 3 - 0.05);
    expect(named("sheet 1/8 in thicker").share).toBeLessThan(0.6);
    expect(named("batten").share).toBeLessThan(0.8);
  });
});

test("names a panel that is not there", () => {
  expect(() => panelRemedies(job, "lower.nothing")).toThrow('stiffness: no panel "lower.nothing"');
});

test("each panel is told alone and locked into its box, with the mesh error of both", () => {
  const finding = job.review.stiffness.find(({ subject }) => subject === panel);
  expect(finding?.answer).toMatch(
    /^upper\.front sags .* with its edges free to turn and .* locked into the box; .* is allowed\. By the mesh the first is within .* %, the second within .* %\./,
  );
  const [alone = 0, locked] = [...(finding?.answer ?? "").matchAll(/(?:sags|and) ([\d.]+) in/g)].map(
    ([, value]) => Number(value),
  );
  expect(locked).toBeLessThan(0.7 * alone);
}, 600_000);

test("draws lines of equal sag over the panel, and a table of what would help", { timeout: 600_000 }, () => {
  const view = bendingDrawing(job, panel);
  expect(view.title).toBe("Where upper.front sags");
  const points = view.marks.flatMap((mark) =>
    mark.mark === "line" && mark.role === "hardware" ? mark.points : [],
  );
  expect(points.length).toBeGreaterThan(50);
  expect(view.marks.filter((mark) => mark.mark === "text" && / in$/.test(mark.text)).length).toBeGreaterThan(
    3,
  );
  expect(remedyTable(job, panel).kind).toBe("table");
});

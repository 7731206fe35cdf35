/** Every hole and every edge, read back from the files by programs that are not ours, within 0.05 mm. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { PanelPart } from "../../lib/design/index.js";
import { reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { type Workpieces, workpiecesOf } from "../../lib/recipe/index.js";
import { drawingFiles } from "../../lib/true-scale/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { designOf, smallJob } from "../design/small-job.js";
import {
  longestLine,
  type Measured,
  measuredDxf,
  measuredPdfs,
  measuredSvgs,
  noPoppler,
  wordsOfPdf,
} from "./measured.js";

const near = 0.05;

const small = designOf(smallJob);
const jobs: readonly (readonly [string, Workpieces])[] = [
  ["soil-lab", piecesOf(openJob("soil-lab"))],
  ["the small box", piecesOf({ ...small, review: reviewCase(small) })],
];

function piecesOf({
  case: described,
  parts,
  review: { purchases },
}: Pick<ReturnType<typeof openJob>, "case" | "parts" | "review">): Workpieces {
  return workpiecesOf({ case: described, parts, purchases });
}

const files = new Map<string, ReadonlyMap<string, string | Uint8Array>>();
let browser: Browser;
beforeAll(async () => {
  for (const [name, pieces] of jobs)
    files.set(name, new Map((await drawingFiles(pieces)).map(({ file, content }) => [file, content])));
  if (!noChromium) browser = await startChromium();
});
afterAll(() => browser?.close());

const textOf = (job: string, file: string): string => String(files.get(job)?.get(file));
const bytesOf = (job: string, file: string): Uint8Array => files.get(job)?.get(file) as Uint8Array;

/** What a panel must have, mm from its own lower left corner: bits are checked by the recipe's tests, places here. */
function wanted(panel: PanelPart, { parts }: Workpieces) {
  const holes = parts.fastenings.filter((one) => one.panel === panel.id).flatMap(({ at }) => at);
  const openings = panel.openings.map(
    ({ low, width, height }): Measured => ({
      left: 1000 * low.x,
      bottom: 1000 * low.y,
      width: 1000 * width,
      height: 1000 * height,
    }),
  );
  return { holes: holes.map(({ x, y }) => ({ x: 1000 * x, y: 1000 * y })), openings };
}

/** Boxes moved so that the panel's outline begins at 0. */
function fromCorner(boxes: readonly Measured[], panel: PanelPart): readonly Measured[] {
  const [width, height] = [1000 * panel.width, 1000 * panel.height];
  const outline = boxes.find((one) => same(one.width, width) && same(one.height, height));
  expect(outline, `${panel.id}: an outline ${width} x ${height}`).toBeDefined();
  const { left = 0, bottom = 0 } = outline ?? {};
  return boxes.map((one) => ({ ...one, left: one.left - left, bottom: one.bottom - bottom }));
}

const same = (one: number, other: number): boolean => Math.abs(one - other) <= near;

function expectAll(read: readonly Measured[], panel: PanelPart, pieces: Workpieces): void {
  const boxes = fromCorner(read, panel);
  const { holes, openings } = wanted(panel, pieces);
  const round = boxes.filter(({ width, height }) => width > 1 && width < 20 && same(width, height));
  const lost = holes.filter(
    ({ x, y }) =>
      !round.some((box) => same(box.left + box.width / 2, x) && same(box.bottom + box.height / 2, y)),
  );
  expect(lost, `holes of ${panel.id}`).toEqual([]);
  const missing = openings.filter(
    (opening) =>
      !boxes.some((box) =>
        (["left", "bottom", "width", "height"] as const).every((key) => same(box[key], opening[key])),
      ),
  );
  expect(missing, `openings of ${panel.id}`).toEqual([]);
}

describe.each(jobs)("the drawings of %s", (job, pieces) => {
  const panels = pieces.pieces.panels.map(({ code, part }) => ({
    part,
    file: `${code}-${part.id.replaceAll(" ", "-")}`,
  }));

  test("every panel, sheet and template has its files", () => {
    const names = [...(files.get(job)?.keys() ?? [])];
    const list = textOf(job, "index.html");
    for (const name of names.filter((one) => one !== "index.html")) expect(list).toContain(`href="${name}"`);
    for (const { file } of panels)
      for (const ending of ["svg", "dxf", "pdf"]) expect(names).toContain(`${file}.${ending}`);
    for (const { label } of [...pieces.sheets, ...pieces.laminates])
      expect(names).toContain(`${label.replace(/\s/, "-")}.dxf`);
    expect(names.filter((name) => /^template-.*\.svg$/.test(name)).length).toBeGreaterThan(0);
  });

  test("a parser of DXF reads every hole and edge, and nothing else is cut or drilled", () => {
    for (const { part, file } of panels) {
      const read = measuredDxf(textOf(job, `${file}.dxf`));
      expectAll(read, part, pieces);
      const count = (layer: string): number => read.filter((one) => one.layer === layer).length;
      const { holes, openings } = wanted(part, pieces);
      expect([file, count("OUTLINE"), count("CUT"), count("DRILL")]).toEqual([
        file,
        1,
        openings.length,
        holes.length,
      ]);
    }
  });

  test("pieces lie on the DXF of their sheet where the plan has them", () => {
    for (const { label, cut } of pieces.sheets) {
      const read = measuredDxf(textOf(job, `${label.replace(/\s/, "-")}.dxf`));
      const outlines = read.filter(({ layer }) => layer === "OUTLINE");
      expect(outlines).toHaveLength(cut.pieces.length);
      for (const { x, y, length, width } of cut.pieces)
        expect(
          outlines.some(
            (one) =>
              same(one.left, 1000 * x) &&
              same(one.bottom, 1000 * y) &&
              same(one.width, 1000 * length) &&
              same(one.height, 1000 * width),
          ),
        ).toBe(true);
    }
  });

  test.skipIf(noChromium)(
    "Chromium measures every hole and edge of the SVG files on its screen",
    async () => {
      const read = await measuredSvgs(
        panels.map(({ file }) => textOf(job, `${file}.svg`)),
        browser,
      );
      panels.forEach(({ part }, i) => void expectAll(read[i] ?? [], part, pieces));
    },
  );

  test.skipIf(noChromium || noPoppler)("poppler reads every hole and edge of the PDF files", async () => {
    const read = await measuredPdfs(
      panels.map(({ file }) => [bytesOf(job, `${file}.pdf`), 1]),
      browser,
    );
    panels.forEach(({ part }, i) => void expectAll(read[i] ?? [], part, pieces));
  });
});

describe("the small box, by hand from its case file", () => {
  const [, pieces] = jobs[1] as (typeof jobs)[number];
  const front = pieces.pieces.panels.find(({ part }) => part.id === "box.front");

  test("has its window, 200 x 150 mm with corners of 20 mm, and its round port of 100 mm in the DXF", () => {
    const read = measuredDxf(textOf("the small box", `${front?.code}-box.front.dxf`));
    const cut = read.filter(({ layer }) => layer === "CUT");
    expect(cut.map(({ width, height }) => [width, height])).toEqual([
      [expect.closeTo(200, 6), expect.closeTo(150, 6)],
      [expect.closeTo(100, 6), expect.closeTo(100, 6)],
    ]);
    const text = textOf("the small box", `${front?.code}-box.front.dxf`);
    expect(text.match(/\n42\n0\.414214\n/g)).toHaveLength(4);
    expect(text).toMatch(/\$ACADVER\n1\nAC1009\n/);
    expect(text).toMatch(/\$INSUNITS\n70\n4\n/);
  });
});

describe.skipIf(noChromium || noPoppler)("sheets for a small printer", () => {
  const joins = (boxes: readonly Measured[]): readonly number[] =>
    boxes
      .filter(({ dashed, width, height }) => dashed && width < near && height > 190)
      .map(({ left }) => left);

  test("fit together: with the broken lines laid on each other, holes of both sheets are in their places", async () => {
    const [job, pieces] = jobs[0] as (typeof jobs)[number];
    const [{ part, code } = { part: undefined, code: "" }] = pieces.pieces.panels;
    if (!part) throw new Error("no panel");
    const file = bytesOf(job, `${code}-${part.id}-letter.pdf`);
    const [first = [], second = []] = await measuredPdfs(
      [
        [file, 1],
        [file, 2],
      ],
      browser,
    );
    const [[right = 0] = [], [left = 0] = []] = [joins(first).slice(-1), joins(second).slice(0, 1)];
    expect(right).toBeGreaterThan(150);
    expect(left).toBeLessThan(30);
    const holes = (boxes: readonly Measured[], shift: number) =>
      boxes
        .filter(({ width, height, dashed }) => !dashed && width > 1 && width < 20 && same(width, height))
        .map((box) => ({ x: box.left + box.width / 2 + shift, y: box.bottom + box.height / 2 }));
    const both = [...holes(first, 0), ...holes(second, right - left)];
    // The corner of the panel is 4 mm inside the printed part, which begins 8 mm from the left and 26 mm from below.
    const corner = { x: 12, y: 30 };
    const wantedHere = wanted(part, pieces).holes.filter(({ x, y }) => x < 340 && y < 200);
    expect(wantedHere.length).toBeGreaterThan(4);
    const lost = wantedHere.filter(
      ({ x, y }) => !both.some((hole) => same(hole.x, x + corner.x) && same(hole.y, y + corner.y)),
    );
    expect(lost).toEqual([]);
  });

  test.each([
    ["soil-lab", "letter", 101.6, "4 in"],
    ["the small box", "a4", 100, "100 mm"],
  ])("%s has a ruler on %s of %d mm", (job, paper, long, said) => {
    const name = [...(files.get(job)?.keys() ?? [])].find(
      (one) => one.startsWith("template") && one.endsWith(`-${paper}.pdf`),
    );
    const bytes = bytesOf(job, name ?? "");
    expect(wordsOfPdf(bytes)).toContain(`This ruler measures ${said} on paper.`);
    // From the outer edges of its first and last tick, which are 0.18 mm wide; a dot is 0.05 mm.
    expect(Math.abs(longestLine(bytes, 14) - long - 0.18)).toBeLessThanOrEqual(0.1);
  });
});

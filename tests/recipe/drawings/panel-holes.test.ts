/** What stands on a panel's drawing: numbers from one corner, words that do not lie over each other, the outside seen from outside. */
import { describe, expect, test } from "vitest";
import type { Face, PanelPart } from "../../../lib/design/index.js";
import { type Job, openJob } from "../../../lib/job/index.js";
import type { DrawingMark, TextMark } from "../../../lib/page/index.js";
import { boxesMeet, textBox } from "../../../lib/page/index.js";
import { panelHolesDrawing, ruleOf } from "../../../lib/recipe/index.js";
import { otherJob } from "../../other-jobs.js";

const jobs: readonly (readonly [string, Job])[] = [
  ["soil-lab", openJob("soil-lab")],
  ["bare-box", openJob(await otherJob("bare-box"))],
  ["tower-of-six", openJob(await otherJob("tower-of-six"))],
];

function drawn(panel: PanelPart, { parts, case: { units } }: Job) {
  const groups = parts.fastenings
    .filter((fastening) => fastening.panel === panel.id)
    .map((fastening, i) => ({ letter: String(i + 1), fastening }));
  return panelHolesDrawing(panel, groups, ruleOf(units), parts);
}

const isText = (mark: DrawingMark): mark is TextMark => mark.mark === "text";

/** Unit directions to the right of whoever looks at a face from outside, by hand from a box on a table. */
const toTheRight: Readonly<Record<Face, readonly ["x" | "y", 1 | -1]>> = {
  front: ["x", 1],
  right: ["y", 1],
  back: ["x", -1],
  left: ["y", -1],
  top: ["x", 1],
  bottom: ["x", -1],
};

describe.each(jobs)("the panels of %s", (_, job) => {
  const { panels, hardware, fastenings } = job.parts;

  test("have words that do not lie over each other, of at least 9 points on paper", () => {
    for (const panel of panels) {
      const { marks, letter = 0 } = drawn(panel, job);
      const texts = marks.filter(isText);
      const boxes = texts.map((text) => textBox(text, letter));
      const meeting = boxes.flatMap((box, i) =>
        boxes.slice(i + 1).flatMap((other, j) => (boxesMeet(box, other) ? [[i, i + 1 + j]] : [])),
      );
      expect(
        meeting.map((pair) => [panel.id, ...pair.map((i) => texts[i]?.text)]),
        panel.id,
      ).toEqual([]);
      const xs = [...boxes.flatMap(({ left, width }) => [left, left + width]), 1000 * panel.width];
      const onPaper = (180 * letter) / (Math.max(...xs) - Math.min(...xs) + 3 * letter);
      expect(onPaper, panel.id).toBeGreaterThanOrEqual((9 * 25.4) / 72);
    }
  });

  test("show every hole where the parts have it", () => {
    for (const panel of panels) {
      const holes = drawn(panel, job).marks.filter((mark) => mark.mark === "circle" && mark.role === "hole");
      const wanted = fastenings.filter((one) => one.panel === panel.id).flatMap(({ at }) => at);
      expect(holes.map((hole) => "at" in hole && hole.at)).toEqual(
        wanted.map(({ x, y }) => ({ x: expect.closeTo(1000 * x, 6), y: expect.closeTo(1000 * y, 6) })),
      );
    }
  });

  test("stand as they are seen from outside", () => {
    for (const panel of panels.filter(({ role, face }) => role === "face" && face)) {
      const [axis, way] = toTheRight[panel.face as Face];
      const edge = panel.box.low[axis] + (way < 0 ? panel.box.size[axis] : 0);
      for (const { on, centre, panels: held } of hardware)
        if (on && held[0] === panel.id) expect(way * (centre[axis] - edge), panel.id).toBeCloseTo(on.x, 6);
    }
  });
});

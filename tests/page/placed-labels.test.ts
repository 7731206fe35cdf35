import { expect, test } from "vitest";
import { boxesMeet, lineMeetsBox, placedLabels, textBox } from "../../lib/page/index.js";

const box = { left: 0, bottom: 0, width: 10, height: 5 };

test.each([
  ["through it", { x: -5, y: 2 }, { x: 15, y: 3 }, true],
  ["ending in it", { x: 5, y: 2 }, { x: 20, y: 20 }, true],
  ["beside it", { x: -1, y: -5 }, { x: -1, y: 10 }, false],
  ["past its corner", { x: 8, y: 8 }, { x: 14, y: 2 }, false],
  ["over its corner", { x: 8, y: 6 }, { x: 11, y: 3 }, true],
  ["too short to reach it", { x: -9, y: 2 }, { x: -1, y: 2 }, false],
])("a line %s", (_, from, to, meets) => {
  expect(lineMeetsBox([from, to], box)).toBe(meets);
});

test("two labels that want one place stand apart, and neither on the line there", () => {
  const line = [
    { x: -50, y: 0 },
    { x: 50, y: 0 },
  ] as const;
  const wanted = [
    { text: "one", at: { x: 0, y: 0 } },
    { text: "other\nof two", at: { x: 0, y: 0 } },
  ];
  const words = placedLabels(wanted, { boxes: [], lines: [line] }, 2).flatMap((mark) =>
    mark.mark === "text" ? [mark] : [],
  );
  const boxes = words.map((mark) => textBox(mark, 2));
  expect(words.map(({ text }) => text)).toEqual(["one", "other", "of two"]);
  expect(boxes.some((one) => lineMeetsBox(line, one))).toBe(false);
  expect(boxesMeet(boxes[0]!, boxes[1]!) || boxesMeet(boxes[0]!, boxes[2]!)).toBe(false);
});

test("a label far from what it names has a line that ends at its own room", () => {
  const marks = placedLabels([{ text: "far", at: { x: 0, y: 0 }, names: { x: 40, y: 0 } }], { boxes: [] }, 2);
  const [line] = marks;
  expect(line).toMatchObject({ mark: "line", role: "thin" });
  // Three letters of 0.6 of 2 mm are 3.6 wide, with 0.2 of 2 mm clear on either side.
  expect(line?.mark === "line" && line.points[1]?.x).toBeCloseTo(1.8 + 0.4, 9);
});

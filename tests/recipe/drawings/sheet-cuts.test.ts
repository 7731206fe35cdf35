/** The marks on the pieces of a cut sheet, each where it hides no other, however narrow the strip. */
import { describe, expect, test } from "vitest";
import { openJob, recipeOf } from "../../../lib/job/index.js";
import { boxesMeet, type DrawingView, textBox } from "../../../lib/page/index.js";
import type { Box2 } from "../../../lib/shape/index.js";
import { flatBlocks } from "../recipes.js";

/** The arrow of the grain as it is drawn: its head is three fifths of a letter high. */
function arrowBoxes({ marks, letter = 0 }: DrawingView): readonly Box2[] {
  return marks.flatMap((mark) =>
    mark.mark === "arrow"
      ? [
          {
            left: mark.from.x,
            bottom: mark.from.y - 0.3 * letter,
            width: mark.to.x - mark.from.x,
            height: 0.6 * letter,
          },
        ]
      : [],
  );
}

/** Words without the free room over and under their letters. */
function letterBoxes({ marks, letter = 0 }: DrawingView): readonly (Box2 & { readonly text: string })[] {
  return marks.flatMap((mark) => {
    if (mark.mark !== "text") return [];
    const { left, width } = textBox(mark, letter);
    return [{ text: mark.text, left, width, bottom: mark.at.y, height: 0.72 * letter }];
  });
}

describe.each(["soil-lab", "soil-lab-draft"])("the sheets of %s", (name) => {
  const drawings = recipeOf(openJob(name))
    .sections.flatMap(({ blocks }) => flatBlocks(blocks))
    .flatMap((block) => (block.kind === "drawing" && block.title.startsWith("Sheet") ? [block] : []));

  test("are all among the papers", () => {
    const bought = openJob(name).review.purchases.sheets.flatMap(({ plan }) => plan.sheets);
    expect(drawings).toHaveLength(bought.length);
  });

  test("have the arrow of the grain on every piece, clear of its code and of the rings of cuts", () => {
    const hidden = drawings.flatMap((drawing) => {
      const { marks, letter = 0 } = drawing;
      const arrows = arrowBoxes(drawing);
      expect(arrows).toHaveLength(
        marks.filter((mark) => mark.mark === "rectangle" && mark.role === "panel").length,
      );
      const rings = marks.flatMap((mark) =>
        mark.mark === "circle"
          ? [
              {
                text: `cut ${mark.label}`,
                left: mark.at.x - mark.radius,
                bottom: mark.at.y - mark.radius,
                width: 2 * mark.radius,
                height: 2 * mark.radius,
              },
            ]
          : [],
      );
      return [...letterBoxes(drawing), ...rings]
        .filter((words) => arrows.some((arrow) => boxesMeet(arrow, words)))
        .map(({ text }) => `${drawing.title}, ${letter.toFixed(1)}: ${text}`);
    });
    expect(hidden).toEqual([]);
  });

  test("have no arrow that is too short to be read, or leaves its piece", () => {
    for (const { marks, letter = 0 } of drawings) {
      const pieces = marks.flatMap((mark) =>
        mark.mark === "rectangle" && mark.role === "panel" ? [mark] : [],
      );
      for (const { from, to } of marks.flatMap((mark) => (mark.mark === "arrow" ? [mark] : []))) {
        expect(to.x - from.x).toBeGreaterThan(letter);
        expect(
          pieces.some(
            ({ at, width, height }) =>
              from.x > at.x && to.x < at.x + width && from.y > at.y && from.y < at.y + height,
          ),
        ).toBe(true);
      }
    }
  });
});

import { describe, expect, test } from "vitest";
import type { DrawingMark, DrawingView } from "../../lib/page/index.js";
import { Length } from "../../lib/quantity/index.js";
import { accessOf, lastPanel } from "../../lib/recipe/access.js";
import { stageOf } from "../../lib/recipe/hardware-stage.js";
import { flatBlocks, plainInput, sectionNamed, smallInput, smallRecipe } from "./recipes.js";

const { parts, purchases } = smallInput;

function drawings(title: string): DrawingView[] {
  return flatBlocks(sectionNamed(smallRecipe, title).blocks).flatMap((block) =>
    block.kind === "drawing" ? [block] : [],
  );
}

function texts({ marks }: DrawingView): string[] {
  return marks.flatMap((mark) =>
    mark.mark === "text" || mark.mark === "dimension"
      ? [mark.text]
      : "label" in mark && mark.label
        ? [mark.label]
        : [],
  );
}

const holes = (mark: DrawingMark): boolean => mark.mark === "circle" && mark.role === "hardware";

describe("drawings", () => {
  test("a panel has a circle a hole and a letter a group", () => {
    for (const panel of parts.panels) {
      const view = drawings("Openings and holes").find(({ title }) => title === panel.id);
      const groups = parts.fastenings.filter((one) => one.panel === panel.id && one.at.length > 0);
      const count = groups.reduce((sum, { at }) => sum + at.length, 0);
      if (!view) expect(count + panel.openings.length).toBe(0);
      else {
        expect(view.marks.filter(holes)).toHaveLength(count);
        expect(texts(view).filter((text) => /^[A-Z]{1,2}$/.test(text))).toHaveLength(groups.length);
      }
    }
  });

  test("a panel's holes lie where the parts say", () => {
    const fastening = parts.fastenings.find(({ at }) => at.length > 3);
    const view = drawings("Openings and holes").find(({ title }) => title === fastening?.panel);
    for (const { u, v } of fastening?.at ?? []) {
      const at = { x: Length.in(u, "mm"), y: Length.in(v, "mm") };
      expect(view?.marks).toContainEqual(expect.objectContaining({ mark: "circle", at }));
    }
  });

  test("a sheet shows every piece on it by its code", () => {
    const sheets = purchases.sheets.flatMap(({ plan }) => plan.sheets);
    const views = drawings("Cut list").filter(({ title }) => title.startsWith("Sheet"));
    expect(views).toHaveLength(sheets.length);
    sheets.forEach(({ pieces }, i) => {
      const codes = texts(views[i] as DrawingView).filter((text) => /^P\d+\b/.test(text));
      expect(codes).toHaveLength(pieces.length);
    });
  });

  test("an unfolded section shows its six faces and its hardware", () => {
    const [view] = drawings("What you are building") as [DrawingView];
    expect(texts(view)).toEqual(expect.arrayContaining(["front", "back", "left", "right", "top", "bottom"]));
    const placed = parts.hardware.filter(({ on }) => on !== undefined);
    expect(view.marks.filter((mark) => mark.mark === "rectangle" && mark.role === "hardware")).toHaveLength(
      placed.length,
    );
  });

  test("hardware that is turned a quarter is drawn turned", () => {
    const [view] = drawings("What you are building") as [DrawingView];
    const sizes = view.marks.flatMap((mark) =>
      mark.mark === "rectangle" && mark.role === "hardware"
        ? [`${Math.round(mark.width)} × ${Math.round(mark.height)}`]
        : [],
    );
    expect(sizes.sort()).toEqual(["120 × 160", "160 × 120"]);
  });
});

describe("order of assembly", () => {
  test("a hand reaches in through the opening that is widest in its narrow direction", () => {
    expect(accessOf("box", parts)?.opening.name).toBe("window");
  });

  test("a closed box has no way in, and its top closes last", () => {
    const access = accessOf("box", plainInput.parts);
    expect(access).toBeUndefined();
    expect(lastPanel("box", access)).toBe("box.top");
  });

  test("a box that is open at the top closes at the back", () => {
    const opening = accessOf("box", parts)?.opening;
    if (!opening) throw new Error("no opening");
    expect(lastPanel("box", { opening, panel: "box.top" })).toBe("box.back");
  });

  test("handles go on flat panels, corners on the finished box", () => {
    const stages = new Map(parts.hardware.map((part) => [part.item.name, stageOf(part, parts)]));
    expect(Object.fromEntries(stages)).toEqual({ corner: "corners", handle: "bench" });
  });
});

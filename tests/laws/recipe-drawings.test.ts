import { describe, expect, test } from "vitest";
import { accessOf, lastPanel, sheetPieces } from "../../lib/design/index.js";
import type { DrawingMark, DrawingView } from "../../lib/page/index.js";
import { stageOf } from "../../lib/plan/order/hardware-stage.js";
import { Length } from "../../lib/quantity/index.js";
import { pieceLines } from "../../lib/recipe/drawings/sheet-cuts.js";
import { ruleOf, sectionFacesDrawing } from "../../lib/recipe/index.js";
import { flatBlocks, plainInput, sectionNamed, smallInput, smallRecipe } from "../recipe/recipes.js";

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

const holes = (mark: DrawingMark): boolean => mark.mark === "circle" && mark.role === "hole";

const unfolded = (): DrawingView => {
  const [box] = parts.sections;
  if (!box) throw new Error("no section");
  return sectionFacesDrawing(box, parts, ruleOf(smallInput.case.units));
};

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
    for (const { x: u, y: v } of fastening?.at ?? []) {
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

  test("every piece of a sheet carries an arrow along the grain, and a face mark that says what its list says", () => {
    const views = drawings("Cut list").filter(({ title }) => title.startsWith("Sheet"));
    const faceWords = /^(face (in|out|up)|either face)$/;
    purchases.sheets
      .flatMap(({ plan }) => plan.sheets)
      .forEach(({ pieces }, i) => {
        const view = views[i] as DrawingView;
        const arrows = view.marks.flatMap((mark) => (mark.mark === "arrow" ? [mark] : []));
        expect(arrows).toHaveLength(pieces.length);
        expect(arrows.every(({ from, to }) => to.y === from.y && to.x > from.x)).toBe(true);
        expect(view.marks.filter(({ mark }) => mark === "polygon")).toHaveLength(pieces.length);
        // Letters are some six tenths as wide as high; the triangle beside the words takes two. A strip too low for two rows
        // of words and an arrow has its triangle alone.
        const letter = view.letter ?? Number.NaN;
        const named = pieces.flatMap(({ name, length, width }) => {
          if (1000 * width < 4.25 * letter) return [];
          const panel = sheetPieces(parts).find(({ id }) => id === name);
          const words = panel?.facing ? "face in" : panel?.role === "shelf" ? "face up" : "face out";
          return 1000 * length >= (0.6 * words.length + 2) * letter ? [words] : [];
        });
        expect(named).not.toEqual([]);
        expect(
          texts(view)
            .filter((text) => faceWords.test(text))
            .sort(),
        ).toEqual(named.sort());
      });
  });

  test("every cut of a sheet has its number in a ring on its line, or led to it", () => {
    const views = drawings("Cut list").filter(({ title }) => title.startsWith("Sheet"));
    purchases.sheets
      .flatMap(({ plan }) => plan.sheets)
      .forEach(({ cuts }, i) => {
        const rings = (views[i] as DrawingView).marks.flatMap((mark) =>
          mark.mark === "circle" ? [mark] : [],
        );
        expect(rings.map(({ label }) => label)).toEqual(cuts.map((_, cut) => String(cut + 1)));
        // A ring beside its line has a thin line to it, which ends on the cut.
        const leaders = (views[i] as DrawingView).marks.flatMap((mark) =>
          mark.mark === "line" && mark.role === "thin" ? [mark.points] : [],
        );
        cuts.forEach(({ direction, at }, cut) => {
          const ring = rings[cut]?.at;
          const [place = ring] = leaders.find(([, end]) => end?.x === ring?.x && end?.y === ring?.y) ?? [];
          expect(direction === "along" ? place?.y : place?.x).toBeCloseTo(Length.in(at, "mm"), 6);
        });
      });
  });

  test("a name too long for its piece is broken after a dot or at a space, or left out", () => {
    const words = { code: "P4", name: "lower.left.side door", size: "300 × 350 mm" };
    expect(pieceLines(words, 1000, 500, 40)).toEqual(["P4  lower.left.side door", "300 × 350 mm"]);
    expect(pieceLines(words, 300, 500, 40)).toEqual(["P4", "lower.left.", "side door", "300 × 350 mm"]);
    expect(pieceLines(words, 270, 170, 40)).toEqual(["P4", "lower.left.", "side door"]);
    expect(pieceLines(words, 130, 500, 40)).toEqual(["P4"]);
    expect(pieceLines(words, 300, 60, 40)).toEqual(["P4"]);
  });

  test("an unfolded section shows its six faces and its hardware", () => {
    const view = unfolded();
    expect(texts(view)).toEqual(expect.arrayContaining(["front", "back", "left", "right", "top", "bottom"]));
    const placed = parts.hardware.filter(({ on }) => on !== undefined);
    expect(view.marks.filter((mark) => mark.mark === "rectangle" && mark.role === "hardware")).toHaveLength(
      placed.length,
    );
  });

  test("hardware that is turned a quarter is drawn turned", () => {
    const view = unfolded();
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

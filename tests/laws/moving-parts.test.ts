/** What pulls out, stands under a case and is turned: slides, feet and skids, hardware turned by a quarter. */
import { describe, expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { massItems } from "../../lib/model/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, problemsOf, smallJob, spoilt } from "../design/small-job.js";

type Texts = Readonly<Record<string, string>>;

const hardwareHead = (smallJob["hardware.csv"] ?? "").split("\n")[0] ?? "";
const fasteners = smallJob["fasteners.csv"] ?? "";

function find(texts: Texts, id: string): Finding | undefined {
  const { travel, fitOut } = reviewCase(designOf(texts));
  return [...travel, ...fitOut].find((one) => one.id === id);
}

describe("feet", () => {
  const corners = ["bottom-left", "bottom-right", "top-left", "top-right"];
  const onFeet = (row: string): Texts => {
    const places = corners.map((from) => `{ on: trunk.bottom, from: ${from}, across: 60, up: 60 }`);
    return {
      ...plainTrunk,
      "case.yaml": `${plainTrunk["case.yaml"]}hardware: { foot: { item: foot, duty: stand, places: [${places.join(", ")}] } }\n`,
      "fasteners.csv": fasteners,
      "hardware.csv": `${hardwareHead},grip\n${row}`,
    };
  };
  const light = onFeet("foot,foot,0.001,1,counter,40,40,2,0,0,30,screw,2,2,1,20,0,,0.6");

  test("carry the case over their outer edges, and lift it", () => {
    // From the middle 237 mm to the edge of the bottom, 60 back to a foot's middle, 20 out to its edge; 262 + 30 mm up.
    const degrees = (Math.atan2(0.237 - 0.06 + 0.02, 0.262 + 0.03) * 180) / Math.PI;
    expect(10 / (find(light, "travel.tip")?.ratio ?? 0)).toBeCloseTo(degrees, 1);
  });

  test("hold it on the floor by their grip, where that is known", () => {
    const words = (texts: Texts): string => find(texts, "travel.push")?.answer ?? "";
    // Tips at weight times 197 over 554 mm, slides at grip times weight.
    expect(197 / 554).toBeGreaterThan(0.3);
    expect(words(onFeet("foot,foot,0.001,1,counter,40,40,2,0,0,30,screw,2,2,1,20,0,,0.3"))).toContain(
      "It would slide at",
    );
    expect(words(light)).not.toContain("slide");
    expect(words(light)).not.toContain("caster");
  });

  test("that are not asked for stand under nothing", () => {
    expect(problemsOf(onFeet("foot,foot,0.001,1,counter,40,40,2,0,0,30,screw,2,2,1,20,0,,-1"))).toHaveLength(
      1,
    );
  });
});

describe("hardware turned", () => {
  const turned = (word: string): Texts => spoilt("case.yaml", "turned: true", `turned: ${word}`);

  test("by 90 or 270 degrees is turned by a quarter, by 0 or 180 it is not", () => {
    const holes = (texts: Texts) => designOf(texts).parts.fastenings.map(({ at }) => at);
    expect(holes(turned("90"))).toEqual(holes(smallJob));
    expect(holes(turned("270"))).toEqual(holes(smallJob));
    expect(holes(turned("0"))).toEqual(holes(turned("false")));
    expect(holes(turned("180"))).not.toEqual(holes(smallJob));
  });

  test("by anything else is a problem", () => {
    expect(problemsOf(turned("45"))).toMatchObject([
      { expected: "true, false, or degrees in quarters: 0, 90, 180 or 270" },
    ]);
  });
});

describe("a shelf on slides", () => {
  const board =
    "board: { in: box, sheet: ply 10, size: [600, 300], at: [0, 0, 200], support: two ends, sliding: false";
  const onSlides = (texts: Texts = smallJob): Texts => ({
    ...texts,
    "case.yaml": (texts["case.yaml"] ?? "").replace(
      board,
      board.replace("sliding: false", "sliding: true, slides: slide 300"),
    ),
    "hardware.csv": `${hardwareHead},extension (mm)\n${(smallJob["hardware.csv"] ?? "")
      .split("\n")
      .slice(1)
      .map((row) => `${row},`)
      .join("\n")}\nslide 300,slide,700,14,counter,300,45,1,0,0,0,screw,12,6,2,250,20,250,280`,
  });
  const openFront = (texts: Texts): Texts => ({
    ...texts,
    "case.yaml": (texts["case.yaml"] ?? "").replace(
      / {6}front:\n {8}openings:\n.*\n.*\n/,
      "      front: none\n",
    ),
  });

  test("has them bought, screwed into both walls and weighed, once", () => {
    const design = designOf(onSlides());
    const slides = design.parts.hardware.filter(({ item }) => item.duty === "slide");
    expect(slides.map(({ id, panels }) => [id, panels])).toEqual([
      ["slides of board", ["box.left", "box.right"]],
    ]);
    const held = design.parts.fastenings.filter(({ holds }) => holds === "slides of board");
    expect(held.map(({ panel, count }) => [panel, count])).toEqual([
      ["box.left", 6],
      ["box.right", 6],
    ]);
    expect(massItems(design).find(({ name }) => name === "slides of board")?.mass).toBeCloseTo(0.7, 9);
    expect(reviewCase(design).purchases.hardware.find(({ stock }) => stock.name === "slide 300")?.count).toBe(
      1,
    );
  });

  test("is carried by what their row says, pulled out", () => {
    // Board 600 x 300 x 10 mm of 700 kg/m3 and 4 kg on it, twice for a jolt, of 250 N.
    const mass = 0.6 * 0.3 * 0.01 * 700 + 4;
    expect(find(onSlides(), "fit-out.slide.board")?.ratio).toBeCloseTo((2 * mass * 9.80665) / 250, 6);
  });

  test("is asked of a child only where it comes out of the case", () => {
    expect(find(onSlides(), "travel.child.board")).toBeUndefined();
    expect(find(openFront(onSlides()), "travel.child.board")?.answer).toContain(
      "its own weight has moved out",
    );
  });

  test("that names slides which nobody sells is a problem", () => {
    const texts = onSlides();
    const wrong = {
      ...texts,
      "case.yaml": (texts["case.yaml"] ?? "").replace("slides: slide 300", "slides: slide 400"),
    };
    expect(problemsOf(wrong)).toMatchObject([{ column: "shelves.board.slides", value: "slide 400" }]);
  });
});

test("a thing screwed to a panel that it does not touch is told", () => {
  const held = (at: string) =>
    spoilt(
      "case.yaml",
      "at: [50, 50, 0], size: [200, 150, 120], held: { by: floor }",
      `at: ${at}, size: [200, 150, 120], held: { by: screws, to: back, fastener: screw, count: 4 }`,
    );
  // The box is 400 mm deep: 400 - 100 - 150 = 150 mm off its back.
  const told = find(held("[50, 100, 0]"), "fit-out.reach.battery");
  expect(told?.verdict).toBe("fails");
  expect(told?.ratio).toBeCloseTo(15, 9);
  expect(find(held("[50, 250, 0]"), "fit-out.reach.battery")).toBeUndefined();
});

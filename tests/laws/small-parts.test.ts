/** The parts of the small box, worked out by hand: ply 10 mm and laminate 1 mm outside make 11 mm. */
import { describe, expect, test } from "vitest";
import { designOf, smallJob, spoilt } from "../design/small-job.js";

const { parts } = designOf(smallJob);
const panel = (id: string) => parts.panels.find((one) => one.id === id);
const millimetres = (length: number | undefined): number =>
  Number(((length ?? Number.NaN) * 1000).toFixed(6));
const fastening = (id: string) => parts.fastenings.find((one) => one.id === id);

describe("panels", () => {
  test.each([
    ["box.top", 622, 422],
    ["box.bottom", 622, 422],
    ["box.front", 622, 500],
    ["box.back", 622, 500],
    ["box.left", 400, 500],
    ["box.right", 400, 500],
    ["box.left.door", 144, 194],
  ])("%s is %d x %d mm", (id, width, height) => {
    expect([panel(id)?.width, panel(id)?.height].map(millimetres)).toEqual([width, height]);
  });

  test("stop in the seat of a bar where neither runs through", () => {
    const seated = designOf(
      spoilt(
        "case.yaml",
        "    panels:\n",
        "    edges: { front-left: { through: neither, bar: seat 50 } }\n    panels:\n",
      ),
    ).parts.panels;
    const size = (id: string): number => millimetres(seated.find((one) => one.id === id)?.width);
    expect(size("box.front")).toBe(600 - 3 + 11);
    expect(size("box.left")).toBe(400 - 3);
  });

  test("know the clear span inside", () => {
    expect(millimetres(panel("box.front")?.clearWidth)).toBe(600);
    expect(millimetres(panel("box.top")?.clearHeight)).toBe(400);
  });

  test("have openings in their own axes", () => {
    const port = panel("box.front")?.openings.find(({ name }) => name === "port");
    expect([port?.low.x, port?.low.y].map(millimetres)).toEqual([622 - 120 - 50, 500 - 150 - 50]);
    expect(port?.area).toBeCloseTo((Math.PI / 4) * 0.01, 12);
    const cutOut = panel("box.back")?.openings.find(({ name }) => name === "handle 2");
    expect(cutOut?.why).toBe("hardware");
    // turned: 80 wide and 120 high
    expect([cutOut?.width, cutOut?.height].map(millimetres)).toEqual([80, 120]);
  });

  test("sit where they belong in the stacked case", () => {
    const front = panel("box.front")?.box;
    expect([front?.low.x, front?.low.y, front?.low.z].map(millimetres)).toEqual([0, 1, 11]);
    expect([front?.size.x, front?.size.y, front?.size.z].map(millimetres)).toEqual([622, 10, 500]);
  });

  test("of a face that is seen from behind, from the left and from below keep their own right hand", () => {
    // the door is 120 mm from the left edge of the left panel, which is the back of the box: at its back
    const door = panel("box.left.door")?.box;
    expect([door?.low.x, door?.low.y, door?.low.z].map(millimetres)).toEqual([
      1,
      11 + 400 - 120 - 3 - 144,
      11 + 123,
    ]);
  });

  test("have their centre shifted away from openings", () => {
    const { centroid, openings, grossArea, netArea } = panel("box.left") ?? { openings: [] };
    const [door] = openings;
    const moment = (grossArea ?? 0) * 0.2 - (door?.area ?? 0) * (0.12 + 0.075);
    // u runs from the back to the front: y = outside depth - 11 mm - u
    expect(centroid?.y).toBeCloseTo(0.422 - 0.011 - moment / (netArea ?? 1), 12);
  });
});

describe("facings", () => {
  test("are cut oversize and glued on whole", () => {
    const front = parts.facings.find((one) => one.panel === "box.front");
    expect([front?.width, front?.height].map(millimetres)).toEqual([632, 510]);
    expect(front?.gluedArea).toBeCloseTo(0.622 * 0.5, 12);
    expect(front?.netArea).toBeCloseTo(panel("box.front")?.netArea ?? 0, 12);
    expect(parts.facings).toHaveLength(7);
  });
});

describe("bars and rivets", () => {
  test("a bar is the outside edge less both set-backs", () => {
    expect(millimetres(parts.bars.find(({ id }) => id === "box.top-front")?.length)).toBe(622 - 120);
    expect(millimetres(parts.bars.find(({ id }) => id === "box.front-left")?.length)).toBe(522 - 120);
  });

  test("its rivets are on the middle of each leg's flat", () => {
    // 502 mm less 20 at each end is 462: five spaces of 92.4
    const onTop = fastening("box.top-front on box.top");
    expect(onTop?.count).toBe(6);
    expect(millimetres(onTop?.pitch)).toBe(92.4);
    expect(onTop?.at.map(({ x: u, y: v }) => [millimetres(u), millimetres(v)])[0]).toEqual([80, 24]);
    const onFront = fastening("box.top-front on box.front");
    // the front stops 11 mm below the outside, so the row is 13 mm off its edge
    expect(onFront?.at.map(({ x: u, y: v }) => [millimetres(u), millimetres(v)])[0]).toEqual([80, 500 - 13]);
    expect(millimetres(onFront?.edgeDistance)).toBe(13);
  });

  test("they close metal, laminate and ply, with bare wood behind", () => {
    expect(fastening("box.top-front on box.top")).toMatchObject({
      stack: [
        { what: "metal", thickness: 0.002 },
        { what: "facing", thickness: 0.001 },
        { what: "ply", thickness: 0.01 },
      ],
      backIsBareWood: true,
    });
  });
});

describe("hardware", () => {
  // each face seen from outside, 200 mm to the right and 150 mm up; the box is 622 x 422 x 522 mm outside
  test.each([
    ["front", [200, 0, 11 + 150]],
    ["back", [622 - 200, 422, 11 + 150]],
    ["left", [0, 422 - 11 - 200, 11 + 150]],
    ["right", [622, 11 + 200, 11 + 150]],
    ["top", [200, 150, 522]],
    ["bottom", [622 - 200, 150, 0]],
  ])("on the %s is where its right hand says", (face, place) => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace(/ {4}panels:\n[\s\S]*?hardware:/, "hardware:")
      .replace(
        / {4}places:\n[\s\S]*?shelves:/,
        `    places: [{ on: box.${face}, from: bottom-left, across: 200, up: 150 }]\nshelves:`,
      );
    const handle = designOf({ ...smallJob, "case.yaml": text }).parts.hardware.find(
      ({ id }) => id === "handle 1",
    );
    expect([handle?.centre.x, handle?.centre.y, handle?.centre.z].map(millimetres)).toEqual(place);
  });

  test("a corner has two rivets on each of its three panels", () => {
    const groups = parts.fastenings.filter(({ holds }) => holds === "corner 1");
    expect(groups.map(({ panel: on, count }) => [on, count])).toEqual([
      ["box.bottom", 2],
      ["box.front", 2],
      ["box.left", 2],
    ]);
    // 45 and 25 mm off the outside edges; the left panel stops 11 mm short of both
    const left = groups.find(({ panel: on }) => on === "box.left")?.at;
    expect(left?.map(({ x: u, y: v }) => [millimetres(u), millimetres(v)])).toEqual([
      [400 - 34, 14],
      [400 - 14, 34],
    ]);
  });

  test("a turned handle has its rows upright", () => {
    const holes = fastening("handle 2 on box.back")?.at ?? [];
    const range = (values: number[]): number => millimetres(Math.max(...values) - Math.min(...values));
    expect(range(holes.map(({ x: u }) => u))).toBe(104);
    expect(range(holes.map(({ y: v }) => v))).toBe(140);
    expect(holes).toHaveLength(10);
  });

  test("a hinge is half on the panel and half on the leaf", () => {
    const hinge =
      "  hinge: { item: hinge, duty: hinge, places: [{ on: box.left, from: bottom-left, across: 125, up: 160 }] }\nshelves:";
    const { fastenings, hardware } = designOf(spoilt("case.yaml", "shelves:", hinge)).parts;
    const groups = fastenings.filter(({ holds }) => holds === "hinge 1");
    expect(groups.map(({ panel: on, count }) => [on, count])).toEqual([
      ["box.left", 2],
      ["box.left.door", 2],
    ]);
    // on the leaf, 137 mm across the panel is 14 mm from the leaf's edge at 123
    expect(millimetres(groups[1]?.at[0]?.x)).toBe(14);
    expect(hardware.find(({ id }) => id === "hinge 1")?.panels).toEqual(["box.left", "box.left.door"]);
  });
});

describe("inside", () => {
  test("a shelf carries what stands on it, and is fastened at both ends", () => {
    const [board] = parts.shelves;
    expect(board?.carries.map(({ content }) => content.name)).toEqual(["meter"]);
    expect(board?.panel).toMatchObject({ id: "box.shelf.board", role: "shelf" });
    expect(
      parts.fastenings.filter(({ holds }) => holds === "board").map(({ panel: on, count }) => [on, count]),
    ).toEqual([
      ["box.left", 3],
      ["box.right", 3],
    ]);
  });

  test("a content's centre is in the stacked case", () => {
    const battery = parts.contents.find(({ content }) => content.name === "battery")?.centre;
    expect([battery?.x, battery?.y, battery?.z].map(millimetres)).toEqual([11 + 150, 11 + 125, 11 + 60]);
  });
});

test("a notch is not cut where the panel ends", () => {
  const notch = "notch: { width: 50, height: 20 }, from: bottom-left, across: 286, up: 0";
  const text = spoilt("case.yaml", "circle: { diameter: 100 }, from: top-right, across: 120, up: 150", notch);
  const bare = (text["case.yaml"] ?? "").replace(
    "    panels:\n",
    "    edges: { bottom-front: { bar: none } }\n    panels:\n",
  );
  const front = designOf({ ...text, "case.yaml": bare }).parts.panels.find(({ id }) => id === "box.front");
  expect(millimetres(front?.openings.find(({ name }) => name === "port")?.perimeter)).toBe(20 + 50 + 20);
});

import { describe, expect, test } from "vitest";
import {
  edgePlateUniform,
  openPlatePatch,
  openPlateUniform,
  openPlateUniformAt,
} from "../../../lib/mechanics/index.js";
import { metre, mm, pascal } from "../../../lib/quantity/index.js";
import { circle, polygon, rectangle, type Shape } from "../../../lib/shape/index.js";
import { close, edges, patchOf, plywood } from "./plates.js";

const hinged = edges("hinged", "hinged", "hinged", "hinged");
const panel = {
  length: metre(0.62),
  width: metre(0.41),
  stiffness: plywood,
  ...hinged,
  pressure: pascal(1000),
};

const opening = (left: number, bottom: number, width: number, height: number, radius = 0): Shape =>
  rectangle(
    { left: left / 1000, bottom: bottom / 1000, width: width / 1000, height: height / 1000 },
    radius / 1000,
  );
const round = (x: number, y: number, diameter: number): Shape =>
  circle({ x: x / 1000, y: y / 1000 }, diameter / 2000);

const window = opening(90, 110, 230, 180);

describe("a panel with openings", () => {
  test("without any is the solid panel", () => {
    const solid = edgePlateUniform(panel);
    const open = openPlateUniform({ ...panel, openings: [] });
    expect(open.largestDeflection).toBe(solid.largestDeflection);
    expect([open.cutAway, open.largestX, open.largestY]).toEqual([0, solid.largestX, solid.largestY]);
    expect(open.unsettled).toBeLessThan(1e-4);
  });

  test("mirrored, answers mirrored", () => {
    const one = openPlateUniform({ ...panel, openings: [window] });
    const other = openPlateUniform({ ...panel, openings: [opening(300, 110, 230, 180)] });
    expect(close(one.largestDeflection, other.largestDeflection, 1e-5)).toBe(true);
    expect(other.largestX).toBeCloseTo(0.62 - one.largestX, 3);
    expect(other.largestY).toBeCloseTo(one.largestY, 3);
  });

  test("a round port lies between the squares inside and around it", () => {
    const { pressure: _, ...shape } = panel;
    const sag = (port: Shape): number =>
      openPlatePatch({ ...shape, ...patchOf(0.31, 0.36, 0.06, 0.06), openings: [port] }).largestDeflection;
    const inside = 200 / Math.SQRT2;
    const port = sag(round(310, 180, 200));
    expect(port).toBeGreaterThan(sag(opening(310 - inside / 2, 180 - inside / 2, inside, inside)));
    expect(port).toBeLessThan(sag(opening(210, 80, 200, 200)));
  });

  test("rounding the corners of a window stiffens the panel a little", () => {
    const { pressure: _, ...shape } = panel;
    const sag = (radius: number): number =>
      openPlatePatch({
        ...shape,
        ...patchOf(0.5, 0.2, 0.06, 0.06),
        openings: [opening(90, 110, 230, 180, radius)],
      }).largestDeflection;
    expect(sag(40)).toBeLessThan(sag(0));
    expect(sag(40)).toBeGreaterThan(0.95 * sag(0));
  });

  test("a pinhole changes next to nothing", () => {
    const solid = openPlateUniform({ ...panel, openings: [] }).largestDeflection;
    const pricked = openPlateUniform({ ...panel, openings: [round(200, 150, 2)] });
    expect(close(solid, pricked.largestDeflection, 1e-3)).toBe(true);
  });

  test("two plates read the same place alike whether asked for it or for all", () => {
    const {
      largestX: x,
      largestY: y,
      largestDeflection,
    } = openPlateUniform({ ...panel, openings: [window] });
    const there = openPlateUniformAt({ ...panel, openings: [window], x, y });
    expect(close(there.deflection, largestDeflection, 0.01)).toBe(true);
  });

  test("stays solvable with most of it cut away, and says that this was never compared", () => {
    const port = round(310, 205, 400);
    const { value, warnings } = openPlateUniform.worked({
      ...panel,
      openings: [port, opening(20, 20, 60, 60)],
    });
    expect(value.largestDeflection).toBeGreaterThan(0);
    expect(warnings[0]).toBe(
      "the narrowest bar is 1.2 % of the side across it, narrower than was ever compared",
    );
    const frame = openPlateUniform.worked({ ...panel, openings: [opening(60, 40, 500, 330)] });
    expect(frame.warnings[0]).toBe("64.9 % is cut away, more than was ever compared");
  });

  test("says when there are too many openings to follow each", () => {
    const slots = Array.from({ length: 6 }, (_, n) => opening(60, 40 + 60 * n, 500, 8));
    expect(openPlateUniform.worked({ ...panel, openings: slots }).warnings).toContain(
      "there are more openings than the series can follow: the panel will sag more than this",
    );
  });

  test("says by how much it has not settled around an inside corner cut thin", () => {
    const corner = [opening(100, 100, 300, 10), opening(100, 115, 10, 200)];
    const held = { ...panel, ...edges("clamped", "clamped", "clamped", "clamped") };
    const { value, warnings } = openPlateUniform.worked({ ...held, openings: corner });
    expect(value.unsettled).toBeGreaterThan(0.03);
    expect(warnings.at(-1)).toBe(
      `the estimate has not settled: expect up to ${(100 * value.unsettled).toFixed(1)} % more sag`,
    );
    expect(openPlateUniform.worked({ ...panel, openings: [window] }).warnings).toEqual([]);
  });

  test.each([
    [[window, opening(200, 110, 230, 180)], "openings 1 and 2 overlap"],
    [[opening(90, 110, 600, 180)], "opening 1 must lie on the plate"],
    [[opening(0, 100, 620, 50)], "opening 1 cuts the plate in two"],
    [
      [
        window,
        polygon([
          { x: 0.4, y: 0.1 },
          { x: 0.5, y: 0.1 },
          { x: 0.45, y: 0.2 },
        ]),
      ],
      "opening 2 must be a rectangle with corners sharp or alike round; panels with others are for the finite elements",
    ],
  ])("refuses openings that cannot be %#", (openings, fault) => {
    expect(() => openPlateUniform({ ...panel, openings })).toThrow(
      new RangeError(`plate.edges.openings.uniform: ${fault}`),
    );
  });

  test.each([
    [{ width: "0 mm", cornerRadius: "0 mm" }, "opening 2: width must be positive, got 0 mm"],
    [
      { width: "100 mm", cornerRadius: "60 mm" },
      "opening 2: corner radius must be from 0 to 50 mm, half its shorter side, got 60 mm",
    ],
  ])("reads no opening that cannot be cut, %#, and says which, with its lengths", (change, fault) => {
    const read = { left: "10 mm", bottom: "10 mm", width: "100 mm", height: "100 mm", cornerRadius: "0 mm" };
    expect(() =>
      openPlateUniform.declaration.inputs.openings.kind.read([read, { ...read, ...change }]),
    ).toThrow(fault);
  });

  test("refuses a place or a load in an opening", () => {
    expect(() => openPlateUniformAt({ ...panel, openings: [window], x: mm(200), y: mm(200) })).toThrow(
      new RangeError("plate.edges.openings.uniform.at: the place lies in an opening"),
    );
    const { pressure: _, ...shape } = panel;
    expect(() => openPlatePatch({ ...shape, openings: [window], ...patchOf(0.34, 0.2, 0.06, 0.06) })).toThrow(
      new RangeError("plate.edges.openings.patch: the patch must not lie over an opening"),
    );
  });
});

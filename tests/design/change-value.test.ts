import { expect, test } from "vitest";
import { set } from "../../lib/design/index.js";
import { inch, kg, mm } from "../../lib/quantity/given-units.js";

test("a quantity is written with its unit, a number and words as the file has them", () => {
  expect(set("upper.front.stage.width", mm(600))).toEqual({
    kind: "set",
    at: "upper.front.stage.width",
    to: "600 mm",
  });
  expect(set("upper.front.stage.width", inch(12.125))).toMatchObject({ to: "12.125 in" });
  expect(set("services.outlets", 4)).toMatchObject({ to: "4" });
  expect(set("build.runs through", ["top-bottom", "front-back"])).toMatchObject({
    to: '["top-bottom", "front-back"]',
  });
  expect(set("invented", false)).toMatchObject({ to: "false" });
  expect(set("upper.front.stage.width", "23-5/8")).toMatchObject({ to: "23-5/8" });
});

test("a mass is no width, to the compiler and when it runs", () => {
  // @ts-expect-error a mass
  expect(() => set("upper.front.stage.width", kg(5))).toThrow(
    new RangeError(
      "set upper.front.stage.width: expected a length such as mm(600) or inch(600), got 5 kg, a mass",
    ),
  );
});

test("a width needs its unit, to the compiler and when it runs", () => {
  // @ts-expect-error no unit
  expect(() => set("upper.front.stage.width", 600)).toThrow(
    new RangeError("set upper.front.stage.width: write the unit too, such as mm(600) or inch(600); got 600"),
  );
});

test("a place that comes as a variable takes any value, and is checked when it runs", () => {
  const place: string = "upper.front.stage.width";
  expect(set(place, mm(600))).toMatchObject({ to: "600 mm" });
  expect(() => set(place, 600)).toThrow("write the unit too");
});

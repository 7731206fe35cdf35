/** What an answer rests on most, read from its worked lines. */
import { expect, test } from "vitest";
import { restsOn, restsOnWords } from "../../lib/findings/how-sure.js";
import { heatGrowth } from "../../lib/material/index.js";
import { beamBendingStress, rectangleSection, simpleUniform } from "../../lib/mechanics/index.js";
import { strapPress } from "../../lib/moving/index.js";
import {
  BeamStiffness,
  degree,
  LineLoad,
  Moment,
  mm,
  newton,
  ratio,
  Temperature,
} from "../../lib/quantity/index.js";

const beam = simpleUniform.worked({
  load: LineLoad.si(77),
  span: mm(1234),
  stiffness: BeamStiffness.si(1000),
});

test("of a beam its sag moves most, with the fourth power of its span", () => {
  const found = restsOn([beam]);
  expect([found?.input, found?.slope.toFixed(1)]).toEqual(["span", "4.0"]);
  expect(found && restsOnWords(found, { system: "metric" })).toBe(
    "Nobody measured how sure this is. It depends most on span (1234 mm). 1 % more or less of that moves the answer by about 4 %.",
  );
});

test("what a line hands on is followed back to what it was made of", () => {
  const section = rectangleSection.worked({ width: mm(31), depth: mm(17) });
  const stress = beamBendingStress.worked({ moment: Moment.si(7.7), sectionModulus: section.value.modulus });
  expect(restsOn([stress])).toMatchObject({ input: "bending moment", slope: expect.closeTo(1, 2) });
  // The section's own area and second moment are used by no line; without them the depth counts squared.
  const handedOn = { ...section, results: section.results.filter(({ name }) => name === "modulus") };
  expect(restsOn([handedOn, stress])).toMatchObject({
    input: "depth along the load",
    slope: expect.closeTo(2, 2),
  });
});

test("counts and temperatures are never what it rests on, and nothing is said of no lines", () => {
  const straps = strapPress.worked({ straps: 3, tension: newton(2490), strapAngle: degree(75) });
  expect(restsOn([straps])?.input).toBe("tension of one");
  const growth = heatGrowth.worked({
    length: mm(1200),
    expansion: ratio(0.00007),
    from: Temperature.of(10, "°C"),
    to: Temperature.of(40, "°C"),
  });
  expect(restsOn([growth])?.input).toBe("length");
  expect(restsOn([])).toBeUndefined();
});

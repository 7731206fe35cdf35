import { expect, test } from "vitest";
import { inUnits, markupInUnits, unitChanges } from "../../../lib/page/index.js";

const { inch, metric } = unitChanges;

// Worked by hand: 1 in = 25.4 mm, 1 lb = 0.45359 kg, 1 lbf = 4.4482 N, 1 psi = 6.8948 kPa.
test.each([
  ["13-1/2 in by 24 in", "343 mm by 610 mm"],
  ["5/16 in", "7.94 mm"],
  ["It weighs 174 lb.", "It weighs 78.9 kg."],
  ["a push of 33.7\u00a0lbf", "a push of 150\u00a0N"],
  ["30 × 24 in", "760 × 610 mm"],
  ["101 °F, 6.1 F° warmer", "38.3 °C, 3.4 K warmer"],
  ["10\u202f000 in", "250\u202f000 mm"],
  ["7 in of a 12.6 mm stack", "180 mm of a 12.6 mm stack"],
  ["2 people in 5 minutes", "2 people in 5 minutes"],
  ["rivet 3/16 short", "rivet 3/16 short"],
  ["0.77 g", "0.77 g"],
  ["-0.5 in, 13-1/2 in", "-13 mm, 343 mm"],
  ["-4 °F outside", "-20 °C outside"],
  ["0.47 W/F°", "0.85 W/K"],
  ["24 in² of vent", "15\u202f000 mm² of vent"],
  // 1 ft² = 0.092903 m².
  ["2.19 USD/ft² ± 0.04, 4.5 min/ft²", "23.6 USD/m² ± 0.43, 48 min/m²"],
])("in metric units %j reads %j", (given, expected) => {
  expect(inUnits(given, metric, [])).toBe(expected);
});

test.each([
  ["9.56 GPa ± 0.7", "1\u202f390\u202f000 psi ± 100\u202f000"],
  ["50 mm wide and 700 mm long", "2 in wide and 28 in long"],
  ["7.2 to 10.1 MPa", "1000 to 1460 psi"],
  ["679 kg/m³", "42.4 lb/ft³"],
  ["1.2 m and 3 min", "3.9 ft and 3 min"],
  ["a bow of -0.47 mm", "a bow of -0.019 in"],
  ["4926 cm²", "763.5 in²"],
  ["0.84 W/K", "0.47 W/F°"],
  ["at 23.59 EUR/m²", "at 2.19 EUR/ft²"],
  ["EN 1022, 3 N5", "EN 1022, 3 N5"],
])("in inch units %j reads %j", (given, expected) => {
  expect(inUnits(given, inch, [])).toBe(expected);
});

test("names as things are sold stay, and so do tags, code and equations", () => {
  const names = ["laminate sheet 1 mm"];
  expect(inUnits("laminate sheet 1 mm, 1 mm thick", inch, names)).toBe("laminate sheet 1 mm, 0.039 in thick");
  expect(inUnits("laminate sheet 1\u00a0mm", inch, names)).toBe("laminate sheet 1\u00a0mm");
  expect(markupInUnits("<p>0.5 in (12.7 mm) of slack</p>", "inch", [])).toBe("<p>0.5 in of slack</p>");
  expect(markupInUnits("<p>96 × 48 in (2438.4 × 1219.2 mm)</p>", "inch", [])).toBe("<p>96 × 48 in</p>");
  expect(markupInUnits('<p title="5 mm">5 mm<code>5 mm</code><math>5 mm</math></p>', "inch", [])).toBe(
    '<p title="5 mm">0.2 in<code>5 mm</code><math>5 mm</math></p>',
  );
});

import { expect, test } from "vitest";
import { metalBearing, woodDowelBearing } from "../../lib/fastening/index.js";
import { megapascal, mm, ratio } from "../../lib/quantity/index.js";

test("metal bears no more beyond two diameters from the edge", () => {
  const hole = { diameter: mm(4.8), thickness: mm(1.5), tensileStrength: megapascal(200) };
  expect(metalBearing({ ...hole, edgeDistance: mm(50) })).toBe(
    metalBearing({ ...hole, edgeDistance: mm(9.6) }),
  );
});

test("wood bears less across the grain than along it under a thick dowel, alike under a thin one", () => {
  const dowel = (diameter: number, grain: "along" | "across") =>
    woodDowelBearing({ specificGravity: ratio(0.5), diameter: mm(diameter), grain });
  expect(dowel(8, "across")).toBeLessThan(dowel(8, "along"));
  expect(dowel(5, "across")).toBe(dowel(5, "along"));
});

import { inspect } from "node:util";
import { expect, test } from "vitest";
import { inch, mm } from "../../lib/quantity/given-units.js";
import { kinds } from "../../lib/quantity/kinds-with-units.js";
import { beam, tip } from "../../lib/trades/index.js";

test("a formula of a trade gives quantities that print, one or several", () => {
  const section = beam.rectangleSection({ width: inch(12), depth: inch(3 / 8) });
  const stiffness = beam.beamStiffness({
    modulus: kinds.Pressure.read("9 GPa"),
    secondMoment: section.secondMoment,
  });
  expect(
    inspect(beam.simpleUniform({ load: kinds.LineLoad.read("10 lbf/ft"), span: inch(30), stiffness })),
  ).toBe("{ sag: 3.243 mm, moment: 10.59 N·m }");
  expect(`${tip.tipAngle({ halfBase: mm(300), height: mm(300) })}`).toBe("45°");
});

test("its working is that of the formula", () => {
  const { value, results } = tip.tipAngle.worked({ halfBase: mm(300), height: mm(300) });
  expect([value, results[0]?.show()]).toEqual([Math.PI / 4, "45°"]);
});

import { expect, test } from "vitest";
import { compositeBeam } from "../../lib/material/index.js";
import { mm, Pressure } from "../../lib/quantity/index.js";

test("composite beam refuses layers that carry nothing", () => {
  expect(() => compositeBeam({ layers: [{ thickness: mm(1), modulus: Pressure.si(0) }] })).toThrow(
    new RangeError("composite.beam: layers must hold at least one stiff layer"),
  );
  expect(() => compositeBeam({ layers: [{ thickness: mm(0), modulus: Pressure.si(1e9) }] })).toThrow(
    new RangeError("composite.beam: layer 1 must have a positive thickness and a modulus of at least zero"),
  );
});

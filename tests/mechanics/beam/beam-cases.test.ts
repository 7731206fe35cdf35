import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  beamBendingStress,
  beamShearSag,
  beamStiffness,
  cantileverTip,
  fixedUniform,
  longTermSag,
  plateBendingStress,
  proppedUniform,
  rectangleSection,
  simpleCentre,
  simplePoint,
  simpleUniform,
  twoSpanUniform,
} from "../../../lib/mechanics/index.js";
import {
  BeamStiffness,
  Force,
  Length,
  LineLoad,
  Moment,
  megapascal,
  metre,
  mm,
  newton,
  PlateMoment,
  Ratio,
} from "../../../lib/quantity/index.js";

const stiffness = BeamStiffness.si(35);
const shelf = { load: LineLoad.si(120), span: metre(0.83), stiffness };
const force = newton(70);
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe("a shelf under a uniform load", () => {
  test("sags less the better its ends are held", () => {
    const [simple, propped, fixed] = [simpleUniform, proppedUniform, fixedUniform].map(
      (held) => held(shelf).sag,
    );
    expect(simple).toBeGreaterThan(propped ?? 0);
    expect(propped).toBeGreaterThan(fixed ?? 0);
    expect(twoSpanUniform(shelf).sag).toBe(propped);
  });

  test("propped sags most where the curve of its deflection is highest", () => {
    const curve = (s: number): number => (s ** 2 * (1 - s) * (3 - 2 * s)) / 48;
    const highest = Math.max(...Array.from({ length: 100_001 }, (_, n) => curve(n / 100_000)));
    const unit = { load: LineLoad.si(1), span: metre(1), stiffness: BeamStiffness.si(1) };
    expect(proppedUniform(unit).sag).toBeCloseTo(highest, 10);
  });

  test("sag grows with span to the fourth, moment to the second", () => {
    const [once, twice] = [shelf, { ...shelf, span: metre(1.66) }].map(simpleUniform);
    expect(twice?.sag).toBeCloseTo(16 * (once?.sag ?? 0), 12);
    expect(twice?.moment).toBeCloseTo(4 * (once?.moment ?? 0), 12);
  });

  test("refuses a span that is none", () => {
    expect(() => simpleUniform({ ...shelf, span: mm(-3) })).toThrow(
      new RangeError("beam.simple.uniform: span must be positive, got -3 mm"),
    );
  });
});

describe("a shelf with a force anywhere", () => {
  const at = (s: number) => simplePoint({ force, span: metre(0.83), stiffness, place: Length.si(0.83 * s) });

  test("answers alike from either end", () => {
    fc.assert(
      fc.property(share, (s) => {
        const [here, there] = [at(s), at(1 - s)];
        return (
          Math.abs(here.sag - there.sag) < 1e-12 &&
          Math.abs(here.moment - there.moment) < 1e-9 &&
          Math.abs(here.sagPlace + there.sagPlace - 0.83) < 1e-9
        );
      }),
    );
  });

  test("sags most between the force and the middle, a little more than under the force", () => {
    fc.assert(
      fc.property(share, (s) => {
        const { sag, sagUnderForce, sagPlace } = at(s);
        const within = Math.abs(sagPlace / 0.83 - 0.5) <= Math.abs(s - 0.5) + 1e-9;
        return sag >= sagUnderForce * (1 - 1e-12) && within && Math.abs(sagPlace / 0.83 - 0.5) < 0.0774;
      }),
    );
  });

  test("refuses a place beyond the span", () => {
    expect(() => at(1.2)).toThrow(
      new RangeError("beam.simple.point: place must be at most the span, got 996 mm"),
    );
  });
});

test("a force at the tip of half a shelf is half the force in the middle of a whole one", () => {
  const whole = simpleCentre({ force, span: metre(0.83), stiffness });
  const half = cantileverTip({ force: Force.si(force / 2), span: metre(0.415), stiffness });
  expect(half.sag).toBeCloseTo(whole.sag, 12);
  expect(half.moment).toBeCloseTo(whole.moment, 12);
});

test("section, stiffness and stress fit together: stress over modulus times half the depth is curvature", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 400, noNaN: true }),
      fc.double({ min: 5, max: 400, noNaN: true }),
      (b, h) => {
        const { secondMoment, modulus, area } = rectangleSection({ width: mm(b), depth: mm(h) });
        const ei = beamStiffness({ modulus: megapascal(9000), secondMoment });
        const stress = beamBendingStress({ moment: Moment.si(10), sectionModulus: modulus });
        const curvature = 10 / ei;
        return (
          Math.abs(stress - (9e9 * curvature * h) / 2000) < 1e-9 * stress &&
          Math.abs(secondMoment - (area * (h / 1000) ** 2) / 12) < 1e-9 * secondMoment
        );
      },
    ),
  );
});

test("a panel's face stress is that of a strip one unit wide", () => {
  const { modulus } = rectangleSection({ width: metre(1), depth: mm(9) });
  const strip = beamBendingStress({ moment: Moment.si(17), sectionModulus: modulus });
  expect(plateBendingStress({ moment: PlateMoment.si(17), thickness: mm(9) })).toBeCloseTo(strip, 3);
});

test("shear adds little to a slender shelf and much to a stubby bar", () => {
  const part = (span: number): number => {
    const bar = { totalLoad: force, span: metre(span), width: mm(40), depth: mm(60) };
    const { secondMoment } = rectangleSection(bar);
    const bending = simpleCentre({
      force,
      span: bar.span,
      stiffness: beamStiffness({ modulus: megapascal(11000), secondMoment }),
    }).sag;
    return beamShearSag({ ...bar, held: "simple, centre", shearModulus: megapascal(700) }) / bending;
  };
  expect(part(1.8)).toBeCloseTo(part(0.6) / 9, 9);
  expect(part(1.8)).toBeLessThan(0.03);
  expect(part(0.3)).toBeGreaterThan(0.5);
});

test("only the lasting load creeps, and a factor below one is refused", () => {
  const sags = { lasting: mm(2), passing: mm(3) };
  expect(longTermSag({ ...sags, creepFactor: Ratio.si(2) })).toBeCloseTo(0.007, 12);
  expect(longTermSag({ ...sags, creepFactor: Ratio.si(1) })).toBeCloseTo(0.005, 12);
  expect(() => longTermSag({ ...sags, creepFactor: Ratio.si(0.9) })).toThrow(
    new RangeError("sag.longterm: creepFactor must be at least 1, got 0.9"),
  );
});

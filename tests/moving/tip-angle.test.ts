import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ballastNeeded,
  centreOfMass,
  edgeLoadLimit,
  halfBaseNeeded,
  outriggerReach,
  type StandingCase,
  steadyTilt,
  tipAngle,
  tippingWind,
  tipWays,
  toppleDirections,
  windForce,
} from "../../lib/moving/index.js";
import {
  Angle,
  Area,
  Density,
  degree,
  kg,
  Length,
  metre,
  mm,
  ratio,
  Speed,
  standardGravity,
} from "../../lib/quantity/index.js";

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const origin = { x: mm(0), y: mm(0), z: mm(0) };

describe("a standing case", () => {
  test("mass added below the centre of gravity never lowers the tilt angle", () => {
    fc.assert(
      fc.property(
        length(0.1, 0.5),
        length(0.3, 1.5),
        length(1, 100),
        length(0, 1),
        length(0.1, 50),
        (half, height, mass, share, more) => {
          const thing = { name: "case", mass: kg(mass), x: mm(0), y: mm(0), z: metre(height) };
          const added = { name: "ballast", mass: kg(more), x: mm(0), y: mm(0), z: metre(height * share) };
          const lower = centreOfMass({ masses: [thing, added], origin }).z;
          const before = tipAngle({ halfBase: metre(half), height: metre(height) });
          expect(tipAngle({ halfBase: metre(half), height: lower })).toBeGreaterThanOrEqual(before - 1e-12);
        },
      ),
    );
  });

  test("the ballast that is asked for makes it bear the lean, no more", () => {
    fc.assert(
      fc.property(
        length(0.05, 0.4),
        length(0.5, 1.5),
        length(5, 30),
        length(0.4, 0.6),
        (half, height, lean, from) => {
          const mass = kg(60);
          const angle = degree(lean);
          const placed = { ballastFromEdge: metre(from), ballastHeight: metre(0.1) };
          const ballast = ballastNeeded({
            mass,
            halfBase: metre(half),
            height: metre(height),
            angle,
            ...placed,
          });
          const total = mass + ballast;
          const newHalf = Length.si((mass * half + ballast * from) / total);
          const newHeight = Length.si((mass * height + ballast * 0.1) / total);
          const reached = tipAngle({ halfBase: newHalf, height: newHeight });
          if (ballast > 0) expect(reached).toBeCloseTo(angle, 9);
          else expect(reached).toBeGreaterThanOrEqual(angle - 1e-9);
        },
      ),
    );
  });

  test("base and outrigger make the half base that is needed", () => {
    fc.assert(
      fc.property(length(0.01, 0.5), length(0.2, 2), length(1, 40), (half, height, lean) => {
        const [at, angle] = [metre(height), degree(lean)];
        const reach = outriggerReach({ halfBase: metre(half), height: at, angle });
        expect(half + reach).toBeCloseTo(Math.max(half, halfBaseNeeded({ height: at, angle })), 9);
      }),
    );
  });

  test("the gust that tips it pushes with just the moment of its weight", () => {
    fc.assert(
      fc.property(
        length(10, 200),
        length(0.1, 0.5),
        length(0.2, 2),
        length(0.3, 1),
        (mass, half, side, middle) => {
          const air = { dragFactor: ratio(1.3), airDensity: Density.si(1.2) };
          const speed = tippingWind({
            mass: kg(mass),
            halfBase: metre(half),
            area: Area.si(side),
            middle: metre(middle),
            ...air,
          });
          const { force } = windForce({ speed, area: Area.si(side), ...air });
          expect(force * middle).toBeCloseTo(mass * standardGravity * half, 6);
        },
      ),
    );
  });

  test("a wind twice as fast pushes four times as hard", () => {
    const push = (speed: number) =>
      windForce({
        speed: Speed.si(speed),
        area: Area.si(0.7),
        dragFactor: ratio(1.1),
        airDensity: Density.si(1.2),
      }).force;
    fc.assert(
      fc.property(length(0.1, 40), (speed) => {
        expect(push(2 * speed)).toBeCloseTo(4 * push(speed), 6);
      }),
    );
  });

  test("a load further out tips it sooner", () => {
    fc.assert(
      fc.property(length(0.05, 1), (out) => {
        const at = (overhang: number) =>
          edgeLoadLimit({ mass: kg(60), halfBase: mm(250), overhang: metre(overhang) });
        expect(at(out * 1.1)).toBeLessThan(at(out));
      }),
    );
  });

  test("straight to a side it tips as over that edge, and towards a corner never sooner", () => {
    const standing = {
      baseWidth: mm(600),
      baseDepth: mm(400),
      fromLeft: mm(250),
      fromFront: mm(180),
      height: mm(700),
    };
    const lean = toppleDirections(standing, 360).map((one) => one.lean);
    const over = (half: number) => tipAngle({ halfBase: mm(half), height: mm(700) });
    expect(lean[0]).toBeCloseTo(over(350), 12);
    expect(lean[90]).toBeCloseTo(over(220), 12);
    expect(lean[180]).toBeCloseTo(over(250), 12);
    expect(lean[270]).toBeCloseTo(over(180), 12);
    expect(Math.min(...lean)).toBeCloseTo(over(180), 12);
  });

  test("what cannot stand is refused", () => {
    expect(() =>
      toppleDirections(
        { baseWidth: mm(600), baseDepth: mm(400), fromLeft: mm(650), fromFront: mm(180), height: mm(700) },
        8,
      ),
    ).toThrow("tip directions: the centre of gravity does not stand over the base");
    expect(() =>
      ballastNeeded({
        mass: kg(50),
        halfBase: mm(100),
        height: mm(900),
        angle: degree(45),
        ballastFromEdge: mm(100),
        ballastHeight: mm(200),
      }),
    ).toThrow("tip.ballast: ballast that high so near the edge tips the case instead");
  });
});

const standing: StandingCase = {
  baseWidth: mm(600),
  baseDepth: mm(500),
  fromLeft: mm(280),
  fromFront: mm(200),
  height: mm(700),
};

const extent = fc.integer({ min: 50, max: 1500 }).map(mm);

test("the half base needed for a tip angle is the half base that has it", () => {
  fc.assert(
    fc.property(extent, extent, (halfBase, height) => {
      expect(halfBaseNeeded({ height, angle: tipAngle({ halfBase, height }) })).toBeCloseTo(halfBase, 9);
    }),
  );
});

test("a case tips first towards the edge nearest its weight", () => {
  expect(tipWays(standing).map(({ way }) => way)).toEqual(["front", "left", "back", "right"]);
});

test("a mirrored case tips the other way by as much", () => {
  const mirrored = { ...standing, fromLeft: mm(320) };
  const angle = (one: StandingCase, way: string) => tipWays(one).find((tip) => tip.way === way)?.worked.value;
  expect(angle(mirrored, "right")).toBeCloseTo(angle(standing, "left") ?? 0, 12);
  expect(angle(mirrored, "front")).toBe(angle(standing, "front"));
});

test("a case whose weight is not over its base falls", () => {
  expect(() => tipWays({ ...standing, fromFront: mm(520) })).toThrow(
    new RangeError("tip angle: the centre of gravity does not stand over the base, it falls to the back"),
  );
});

test("the criterion is ten degrees", () => {
  expect(Angle.show(steadyTilt.angle)).toBe("10°");
});

test("refuses a case without a base", () => {
  expect(() => tipAngle({ halfBase: mm(0), height: mm(700) })).toThrow(
    new RangeError("tip.angle: halfBase must be positive, got 0 mm"),
  );
});

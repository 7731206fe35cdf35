import fc from "fast-check";
import { expect, test } from "vitest";
import {
  judgeTeamLift,
  type Lift,
  type Lifter,
  LiftRate,
  type LoadBetweenTwo,
  pairShares,
  teamLimit,
  teamShares,
} from "../../lib/moving/index.js";
import { degree, kg, mm } from "../../lib/quantity/index.js";

const load: LoadBetweenTwo = {
  mass: kg(40),
  span: mm(1000),
  toCentre: mm(300),
  rise: mm(200),
  incline: degree(0),
};

test("the shares add up to the load", () => {
  const some = fc.record({
    mass: fc.integer({ min: 0, max: 900 }).map((tenths) => kg(tenths / 10)),
    span: fc.integer({ min: 400, max: 2000 }).map(mm),
    toCentre: fc.integer({ min: 100, max: 300 }).map(mm),
    rise: fc.integer({ min: -50, max: 50 }).map(mm),
    incline: fc.integer({ min: 0, max: 40 }).map(degree),
  });
  fc.assert(
    fc.property(some, (one) => {
      const { first, second } = pairShares(one);
      expect(first + second).toBeCloseTo(one.mass, 9);
    }),
  );
});

test("swapping ends swaps the shares on the flat", () => {
  const there = pairShares(load);
  const back = pairShares({ ...load, toCentre: mm(700) });
  expect(back.first).toBeCloseTo(there.second, 9);
  expect(back.second).toBeCloseTo(there.first, 9);
});

test("on stairs the lower person carries more, unless the weight hangs below the handles", () => {
  const onStairs = pairShares({ ...load, incline: degree(35) });
  expect(onStairs.first).toBeGreaterThan(pairShares(load).first);
  expect(pairShares({ ...load, rise: mm(-200), incline: degree(35) }).first).toBeLessThan(
    pairShares(load).first,
  );
});

test("refuses a load that would tip over a handle", () => {
  expect(() => pairShares({ ...load, toCentre: mm(-10) })).toThrow(
    new RangeError("lift.pair.shares: the load tips over: the second person would have to hold it down"),
  );
  expect(() => pairShares({ ...load, toCentre: mm(1010) })).toThrow(
    new RangeError("lift.pair.shares: the load tips over: the first person would have to hold it down"),
  );
});

const at = (name: string, x: number, y: number): Lifter => ({ name, x: mm(x), y: mm(y) });

const ends = [at("left", 0, 200), at("right", 1000, 200)];

const within = fc.integer({ min: -60, max: 60 });

const place = fc.record({ x: fc.integer({ min: 0, max: 1500 }), y: fc.integer({ min: 0, max: 800 }) });

test("the shares add up to the load and balance at its centre", () => {
  fc.assert(
    fc.property(fc.array(place, { minLength: 3, maxLength: 6 }), within, within, (places, dx, dy) => {
      const people = places.map(({ x, y }, i) => at(`p${i}`, x, y));
      const mean = (axis: "x" | "y") => places.reduce((sum, one) => sum + one[axis], 0) / places.length;
      const spread = (axis: "x" | "y") =>
        Math.max(...places.map((p) => p[axis])) - Math.min(...places.map((p) => p[axis]));
      fc.pre(spread("x") > 300 && spread("y") > 300 && people.length > 2);
      const load = { mass: kg(50), people, x: mm(mean("x") + dx / 10), y: mm(mean("y") + dy / 10) };
      const area = places.reduce((sum, p, i) => {
        const q = places[(i + 1) % places.length] ?? p;
        return sum + p.x * q.y - q.x * p.y;
      }, 0);
      fc.pre(Math.abs(area) > 200_000);
      try {
        const { shares } = teamShares(load);
        const moment = (axis: "x" | "y") =>
          shares.reduce<number>((sum, share, i) => sum + share * (people[i]?.[axis] ?? 0), 0);
        expect(shares.reduce<number>((sum, share) => sum + share, 0)).toBeCloseTo(50, 9);
        expect(moment("x") / 50).toBeCloseTo(load.x, 9);
        expect(moment("y") / 50).toBeCloseTo(load.y, 9);
      } catch (error) {
        expect((error as Error).message).toContain("would have to hold it down");
      }
    }),
  );
});

test("moving everybody and the load changes no share", () => {
  fc.assert(
    fc.property(place, fc.integer({ min: 300, max: 700 }), (by, x) => {
      const load = { mass: kg(40), people: [...ends, at("back", 500, 700)], x: mm(x), y: mm(350) };
      const moved = {
        ...load,
        people: load.people.map((one) => at(one.name, one.x * 1000 + by.x, one.y * 1000 + by.y)),
        x: mm(x + by.x),
        y: mm(350 + by.y),
      };
      const [here, there] = [teamShares(load).shares, teamShares(moved).shares];
      here.forEach((share, i) => {
        expect(there[i]).toBeCloseTo(share, 9);
      });
    }),
  );
});

test("two people share as two ends do", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1000 }), (x) => {
      const two = teamShares({ mass: kg(40), people: ends, x: mm(x), y: mm(200) });
      const pair = pairShares({
        mass: kg(40),
        span: mm(1000),
        toCentre: mm(x),
        rise: mm(100),
        incline: degree(0),
      });
      expect(two.shares[0]).toBeCloseTo(pair.first, 9);
      expect(two.shares[1]).toBeCloseTo(pair.second, 9);
    }),
  );
});

test("another pair of hands at each place halves every share", () => {
  const load = { mass: kg(40), people: ends, x: mm(300), y: mm(200) };
  const doubled = { ...load, people: [...ends, ...ends] };
  expect(teamShares(doubled).greatest).toBeCloseTo(teamShares(load).greatest / 2, 9);
});

test("from four people on it says that statics alone does not settle the shares", () => {
  const load = { mass: kg(40), people: ends, x: mm(300), y: mm(200) };
  expect(teamShares.worked(load).warnings).toEqual([]);
  expect(teamShares.worked({ ...load, people: [...ends, ...ends] }).warnings).toEqual([
    "four people or more: statics alone does not settle who carries what; arms alike are taken",
  ]);
});

test("refuses nobody, and a load that would tip over somebody", () => {
  const load = { mass: kg(40), people: ends, x: mm(-100), y: mm(200) };
  expect(() => teamShares(load)).toThrow(
    new RangeError("lift.team.shares: the load tips over: right would have to hold it down"),
  );
  expect(() => teamShares({ ...load, people: [] })).toThrow(
    new RangeError("lift.team.shares: nobody lifts: at least one person is needed"),
  );
});

test("a team of more than four is refused", () => {
  expect(() => teamLimit({ each: kg(20), people: 5 })).toThrow(
    new RangeError("lift.team.limit: people must be at most 4, got 5"),
  );
});

test("the largest share is judged as a lift of its own, with the caution for teams", () => {
  const hands = { reach: mm(300), height: mm(600), twist: degree(0) };
  const lift: Lift = {
    start: hands,
    end: hands,
    rate: LiftRate.of(0.2, "lifts/min"),
    duration: "up to 1 h",
    grip: "good",
  };
  const judge = (mass: number) =>
    judgeTeamLift({ mass: kg(mass), people: ends, x: mm(300), y: mm(200) }, lift);
  const verdict = judge(40);
  expect(verdict.who).toBe("left");
  expect(verdict.worst.index.value / judge(20).worst.index.value).toBeCloseTo(2, 9);
  expect(verdict.caution).toMatch(/made for one person; comparing each share with it is common practice/);
});

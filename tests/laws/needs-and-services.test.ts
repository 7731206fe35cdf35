/** Bad input about the way and the inside: told with file, row, column, value and what was expected. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { designOf, problemsOf, rowOf, smallJob, spoilt } from "../design/small-job.js";

const curves = `foam,thickness (mm),drop (mm),stress (kPa),deceleration
soft,50,300,1,60
soft,50,300,3,40`;

function onlyProblem(texts: Record<string, string>): unknown {
  const problems = problemsOf(texts);
  expect(problems).toHaveLength(1);
  return problems[0];
}

function withServices(services: string): Record<string, string> {
  return spoilt("case.yaml", "business:\n", `services:\n${services}\nbusiness:\n`);
}

describe("contents", () => {
  test("outside the box", () => {
    const texts = spoilt(
      "case.yaml",
      "at: [50, 50, 0], size: [200, 150, 120]",
      "at: [450, 50, 0], size: [200, 150, 120]",
    );
    expect(onlyProblem(texts)).toEqual({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery:"),
      column: "contents.battery.at",
      value: "650 mm",
      expected: "its right at most 600 mm, the inside of section box",
    });
  });

  test("overlapping", () => {
    const texts = spoilt("case.yaml", "at: [50, 50, 0], size", "at: [50, 50, 100], size");
    expect(problemsOf(texts)[0]).toMatchObject({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery:"),
      column: "contents.battery.at",
      expected: 'a place that "board" does not take up',
    });
  });

  test("heavier than the handles' rating is for a finding to say", () => {
    const { joints } = reviewCase(designOf(spoilt("case.yaml", "mass: 9 kg", "mass: 130 kg")));
    expect(joints.find(({ id }) => id === "joints.handles.box")?.missing).toBeDefined();
  });

  test("hung below the top", () => {
    const texts = spoilt(
      "case.yaml",
      "  battery: { in: box, mass: 9 kg, at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }",
      "  battery: { in: box, mass: 9 kg, at: [50, 50, 300], size: [200, 150, 120], held: { by: hung, fastener: screw, count: 2, second hold: true } }",
    );
    expect(problemsOf(texts)).toContainEqual({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery:"),
      column: "contents.battery.at",
      value: "420 mm",
      expected: "its top at 500 mm, where it hangs: count chain or bracket into its size",
    });
  });

  test("a pad with one side", () => {
    const needs = "held: { by: floor }, needs: { foam: { kind: soft, thickness: 50, pad: [80] } } }";
    const texts = spoilt("case.yaml", "held: { by: floor } }", needs);
    expect(onlyProblem(texts)).toMatchObject({
      column: "contents.battery.needs.foam.pad",
      expected: "a list of 2 lengths: the sides of the foam that bears it",
    });
  });

  test("foam beside it with one side", () => {
    const foam = "foam: { kind: soft, thickness: 50, pad: [80, 60], sides: [70], ends: [60, 50] }";
    const texts = spoilt("case.yaml", "held: { by: floor } }", `held: { by: floor }, needs: { ${foam} } }`);
    expect(onlyProblem(texts)).toMatchObject({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery:"),
      column: "contents.battery.needs.foam.sides",
      expected: "a list of 2 lengths: the foam against its left and its right",
    });
  });
});

describe("cushion curves", () => {
  test("of one point", () => {
    const lone = `${curves}\nhard,25,300,2,90`;
    expect(onlyProblem({ ...smallJob, "cushion-curves.csv": lone })).toEqual({
      file: "cushion-curves.csv",
      row: 4,
      column: "foam",
      value: "hard",
      expected: "at least 2 points of the curve hard, 25 mm, drop 300 mm, at different pressures",
    });
  });

  test("with a pressure twice", () => {
    expect(onlyProblem({ ...smallJob, "cushion-curves.csv": `${curves}\nsoft,50,300,3,45` })).toEqual({
      file: "cushion-curves.csv",
      row: 4,
      column: "stress",
      value: "3 kPa",
      expected: "more than 3 kPa, the point before on the curve soft, 50 mm, drop 300 mm",
    });
  });

  test("that are sound are read", () => {
    const { measurements } = designOf({ ...smallJob, "cushion-curves.csv": curves });
    expect(measurements.cushions).toHaveLength(2);
    expect(measurements.cushions[1]).toMatchObject({ foam: "soft", stress: 3000, deceleration: 40 });
  });
});

describe("a temperature log", () => {
  const log = (rows: string): Record<string, string> => ({
    ...smallJob,
    "temperature-log.csv": `section,time (min),inside (°C),outside (°C),power (W)\n${rows}`,
  });

  test("of two loads", () => {
    expect(onlyProblem(log("box,0,25,25,20\nbox,10,27,25,20\nbox,20,30,25,35"))).toEqual({
      file: "temperature-log.csv",
      row: 4,
      column: "power",
      value: "35 W",
      expected: "the 20 W of the reading before: a log is one warm-up with one load",
    });
  });

  test("that runs backwards", () => {
    expect(onlyProblem(log("box,0,25,25,20\nbox,30,27,25,20\nbox,20,30,25,20"))).toEqual({
      file: "temperature-log.csv",
      row: 4,
      column: "time",
      value: "20 min",
      expected: "later than the 30 min of the reading before",
    });
  });

  test("that is sound is read", () => {
    const { measurements } = designOf(log("box,0,25,25,20\nbox,10,27,25,20"));
    expect(measurements.temperatures).toHaveLength(2);
  });
});

describe("a strip tested by its builder", () => {
  test("needs three thicknesses", () => {
    const needs =
      "held: { by: floor }, needs: { pane: { strip: 4, squeeze: 30 %, clearance: 1, set test: [4, 3] } } }";
    expect(onlyProblem(spoilt("case.yaml", "held: { by: floor } }", needs))).toMatchObject({
      column: "contents.battery.needs.pane.set test",
      expected: "a list of 3 lengths: thickness before, while squeezed, half an hour after",
    });
  });
});

describe("services", () => {
  test("a battery without voltage", () => {
    const texts = withServices("  battery: { capacity: 50 Ah, usable: 80 %, must last: 6 h }");
    expect(onlyProblem(texts)).toEqual({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery: { capacity"),
      column: "services.battery.voltage",
      expected: 'a voltage such as "12 V", above 0',
    });
  });

  test("a vent that is no opening of its section", () => {
    const texts = withServices("  cooling: { box: { let in: front.port, let out: back.vent } }");
    expect(onlyProblem(texts)).toEqual({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "cooling:"),
      column: "services.cooling.box.let out",
      value: "back.vent",
      expected: "an opening of section box (front.window, front.port, left.door)",
    });
  });

  test("a sun stronger than any, and a facing that is no colour", () => {
    expect(onlyProblem(withServices("  sun: { facing: dark, strength: 2000 W/m2 }"))).toMatchObject({
      column: "services.sun.strength",
      value: "2000 W/m2",
      expected: 'an irradiance such as "900 W/m2", at least 0, at most 1400 W/m2',
    });
    expect(onlyProblem(withServices("  sun: { facing: blue, strength: 900 W/m2 }"))).toMatchObject({
      column: "services.sun.facing",
      value: "blue",
    });
  });

  test("a plug strip without sockets", () => {
    const texts = withServices(
      "  mains: { voltage: 230 V, breaker: 10 A, cable gauge: 14, cable length: 9000, plug strip: { rated: 10 A } }",
    );
    expect(onlyProblem(texts)).toMatchObject({ column: "services.mains.plug strip.sockets" });
  });

  test("may be left out, and then nothing is known of them", () => {
    expect(designOf(smallJob).case.services).toEqual({ cooling: [] });
  });

  test("that are sound are read with their usual values", () => {
    const texts = withServices(
      "  battery: { capacity: 50 Ah, voltage: 12 V, usable: 80 %, must last: 6 h }\n  cooling: { box: { let in: front.window, let out: front.port } }",
    );
    const { battery, cooling } = designOf(texts).case.services;
    expect(battery).toMatchObject({ voltage: 12, ratedTime: 72_000, peukert: 1, efficiency: 1 });
    expect(cooling).toEqual([{ section: "box", letIn: "front.window", letOut: "front.port", free: 1 }]);
  });
});

test("a slope beyond a ramp is refused with its row", () => {
  const texts = spoilt("case.yaml", "vehicle: van", "ramp: 60 deg, vehicle: van");
  expect(onlyProblem(texts)).toEqual({
    file: "case.yaml",
    row: rowOf(texts, "case.yaml", "journey:"),
    column: "journey.ramp",
    value: "60 deg",
    expected: 'an angle such as "10 deg", at least 0, at most 45°',
  });
});

describe("a ramp by tape", () => {
  const withRamp = (words: string) => spoilt("case.yaml", "vehicle: van", `${words}, vehicle: van`);

  test("with a rise that is longer than the ramp is refused with its row", () => {
    const texts = withRamp("ramp size: { rise: 900, length: 800 }");
    expect(onlyProblem(texts)).toMatchObject({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "journey:"),
      column: "journey.ramp size",
      expected: "a rise shorter than the ramp",
    });
  });

  test("and by angle at once is refused: one of them is wrong", () => {
    expect(onlyProblem(withRamp("ramp: 9 deg, ramp size: { rise: 500, length: 3000 }"))).toMatchObject({
      column: "journey.ramp size",
      expected: '"ramp" as an angle or "ramp size" with rise and length, not both',
    });
  });

  test("is read", () => {
    const { journey } = designOf(withRamp("ramp size: { rise: 500, length: 3000 }, tread: hard rubber")).case;
    expect(journey).toMatchObject({ rampSize: { rise: 0.5, length: 3 }, tread: "hard rubber" });
  });
});

describe("a cradle", () => {
  const withCradle = (words: string) =>
    spoilt("case.yaml", "held: { by: floor } }", `held: { by: cradle, ${words} } }`);
  const lining = "lining: { kind: soft, thickness: 25 }";

  test("without the height of its walls is refused with its row", () => {
    const texts = withCradle(`${lining}, lid: true`);
    expect(onlyProblem(texts)).toMatchObject({
      file: "case.yaml",
      row: rowOf(texts, "case.yaml", "battery:"),
      column: "contents.battery.held.rim",
      expected: 'rim, lining, lid with "by: cradle"',
    });
  });

  test("on a shelf that its section does not have is refused", () => {
    const texts = withCradle(`shelf: attic, rim: 60, ${lining}, lid: true`);
    expect(problemsOf(texts)[0]).toMatchObject({
      column: "contents.battery.held.shelf",
      value: "attic",
      expected: "a shelf of section box (board)",
    });
  });

  test("that hangs in the air is refused: it stands on the floor or on its shelf", () => {
    const texts = spoilt(
      "case.yaml",
      "at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }",
      `at: [50, 50, 30], size: [200, 150, 120], held: { by: cradle, rim: 60, ${lining}, lid: true } }`,
    );
    expect(onlyProblem(texts)).toMatchObject({
      column: "contents.battery.at",
      expected: "up 0, since the floor holds it",
    });
  });

  test("is read, and its shelf carries the thing", () => {
    const texts = spoilt(
      "case.yaml",
      "held: { by: shelf, shelf: board }",
      `held: { by: cradle, shelf: board, rim: 60, ${lining}, rated: 200 N, lid: false }`,
    );
    const { case: description, parts } = designOf(texts);
    expect(description.contents[0]?.held).toEqual({
      by: "cradle",
      shelf: "board",
      rim: 0.06,
      lining: { kind: "soft", thickness: 0.025 },
      rated: 200,
      lid: false,
    });
    expect(parts.shelves[0]?.carries.map(({ content }) => content.name)).toEqual(["meter"]);
  });
});

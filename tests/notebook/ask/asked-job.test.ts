import { inspect } from "node:util";
import { describe, expect, test } from "vitest";
import { set } from "../../../lib/design/index.js";
import { statesOfMass } from "../../../lib/model/index.js";
import { openAskedJob, table } from "../../../lib/notebook/ask/index.js";
import { kg, mm } from "../../../lib/quantity/given-units.js";
import { Refusal } from "../../../lib/refusal.js";

const job = openAskedJob("soil-lab");

test("it is a job as the rest of the library takes it", () => {
  const [stacked] = statesOfMass(job).filter(({ what, state }) => what === "stacked" && state === "loaded");
  expect(job.mass().si).toBe(stacked?.balance.value.mass);
  expect(inspect(job)).toBe("job soil-lab: Travelling soil lab");
});

test("a copy with other measurements works out nothing that was not asked", () => {
  const named = Object.keys({ ...job });
  expect(named).toContain("measurements");
  for (const name of ["findings", "size", "released", "openings"]) {
    expect(named).not.toContain(name);
    expect(Object.getOwnPropertyDescriptor(job, name)?.get).toBeTypeOf("function");
  }
});

describe("an answer", () => {
  test.each([
    ["the sag of a panel", () => job.panel("upper.front").sag(), /^0\.\d+ in$/],
    ["what it may sag", () => job.panel("upper.front").allowedSag(), /^0\.\d+ in$/],
    ["the mass of a panel", () => job.panel("upper.front").mass(), / lb$/],
    ["what is cut away", () => job.panel("upper.front").cutAway(), / %$/],
    ["the width of an opening", () => job.opening("upper.front.display window").size.width, /^18 in$/],
    ["a shelf's sag after years", () => job.shelf("instrument shelf").laterSag(), / in$/],
    ["a drawer with its load", () => job.drawer("tool drawer").mass(), / lb$/],
    ["a thing inside", () => job.content("microscope").mass(), / lb$/],
    ["the length of a bar", () => job.bar("upper.front-left").length(), / in$/],
    ["the width of the case", () => job.size.width, / in$/],
    ["the lean at which it tips", () => job.tip(), /^\d+\.?\d*°$/],
    ["the hours", () => job.hours(), / h$/],
    ["the cost", () => job.cost(), / USD$/],
    ["where it balances", () => job.section("upper").balance().z, / in$/],
  ])("prints with the units of the case: %s", (_, ask, printed) => {
    expect(inspect(ask())).toMatch(printed);
  });

  test("agrees with what its own finding says", () => {
    const { ratio = 0, demand } = job.panel("upper.front").stiffness();
    const panel = job.panel("upper.front");
    expect(panel.sag().over(panel.allowedSag())).toBeCloseTo(ratio, 10);
    expect(demand?.show()).toBe(panel.sag().show({ unit: "mm", exact: false }));
  });

  test("comes in metric units from a metric case", () => {
    const metric = job.with(set("units", "metric"));
    expect(metric.panel("upper.front").sag().show()).toMatch(/^\d\.\d+ mm$/);
    expect(metric.mass().show()).toMatch(/ kg$/);
  });
});

describe("a list of all panels, one of which has no sag", () => {
  const none = job.panels.filter((panel) => panel.sag().whyNone !== undefined);

  test("is whole: that one says why", () => {
    expect(none.length).toBeGreaterThan(0);
    expect(none.length).toBeLessThan(job.panels.length);
    const printed = job.panels.map((panel) => panel.sag().show());
    expect(printed.filter((text) => / in$/.test(text)).length).toBe(job.panels.length - none.length);
    expect(printed).toContain(`no answer: nothing presses on ${none[0]?.name}, so it has no sag`);
  });

  test("is a table with a row for each, of records or of questions", () => {
    const asked = table(job.panels, { panel: (one) => one.name, sag: (one) => one.sag() }, "Sag");
    expect(asked).toEqual(
      table(
        job.panels.map((one) => ({ panel: one.name, sag: one.sag() })),
        "Sag",
      ),
    );
    expect(asked.rows.length).toBe(job.panels.length);
    expect(asked.rows.find(([name]) => name === none[0]?.name)?.[1]).toMatch(
      /^no answer: nothing presses on/,
    );
  });

  test("keeps its row where what is reckoned from the sag cannot be given", () => {
    const shares = table(job.panels, { share: (one) => one.sag().over(one.allowedSag()) });
    expect(shares.rows.flat().filter((text) => text.startsWith("no answer: nothing presses")).length).toBe(
      none.length,
    );
  });
});

describe("a name that is not there", () => {
  test.each([
    [() => job.panel("uper.front"), 'no panel "uper.front": did you mean "upper.front"?'],
    [() => job.shelf("shelf"), 'no shelf "shelf": expected one of "instrument shelf", "supply shelf"'],
    [() => job.content("microscop"), 'no content "microscop": did you mean "microscope"?'],
    [() => job.panel("upper.front").opening("windw"), 'no opening in upper.front "windw"'],
    [() => job.finding("travel.wnd"), 'no finding "travel.wnd": did you mean "travel.wind"?'],
  ])("says which are: %#", (ask, message) => {
    expect(ask).toThrow(Refusal);
    expect(ask).toThrow(message);
  });

  test("of a place to change says which word is not known", () => {
    expect(() => job.with(set("upper.front.display windw.width", mm(400)))).toThrow(
      'it has no "display windw"; did you mean "display window"?',
    );
  });
});

test("a changed job is asked alike, and the job itself stays", () => {
  const before = job.opening("upper.front.display window").size.width.show();
  const changed = job.with(set("upper.front.display window.width", mm(400)));
  expect(changed.opening("upper.front.display window").size.width.in("mm")).toBeCloseTo(400, 9);
  expect(job.opening("upper.front.display window").size.width.show()).toBe(before);
});

test("a cell of a table takes a quantity in any unit of its kind", () => {
  const weight = { file: "hardware.csv", row: "recessed handle", column: "mass" };
  const heavier = job.with(set(weight, kg(2)));
  expect(heavier.hardware("carry handle 1").mass().in("kg")).toBeCloseTo(2, 9);
  expect(() => job.with(set(weight, mm(2)))).toThrow(
    /hardware\.csv, row 3, mass \(g\): found "2 mm", expected a number in g/,
  );
});

test("an opening says where its width stands in the case file, where it has one", () => {
  for (const opening of job.panel("upper.front").openings) {
    const wider = job.with(set(opening.widthPlace(), opening.size.width.times(0.9)));
    expect(wider.opening(opening.name).size.width.over(opening.size.width)).toBeCloseTo(0.9, 9);
  }
});

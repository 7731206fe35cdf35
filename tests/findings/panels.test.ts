/** Whether panels, leaves and shelves break: answered, failing, disputed and unknown. */
import { describe, expect, test } from "vitest";
import { panelsBend, shelvesBend } from "../../lib/findings/strength/panels.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { Pressure } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");

function withPressure(side: number, breaks = job.measurements.breaks): Job {
  const demands = { ...job.case.demands, sidePressure: Pressure.of(side, "psf") };
  return { ...job, case: { ...job.case, demands }, measurements: { ...job.measurements, breaks } };
}

const front = (input: Job) => panelsBend(input).find(({ id }) => id === "strength.panel.upper.front")!;

describe("a panel that is leant on", () => {
  test("holds at the demo's 25 psf and fails at ten times as much", () => {
    expect(front(job).verdict).toBe("holds");
    const ten = front(withPressure(250));
    expect(ten.verdict).toBe("fails");
    expect(ten.ratio! / front(job).ratio!).toBeCloseTo(10, 6);
    expect(ten.answer).toMatch(/thicker sheet/);
  });

  test("is close where the two codes disagree and nobody broke a strip", () => {
    const disputed = front(withPressure(45, []));
    expect(disputed.ratio).toBeLessThan(1);
    expect(disputed.verdict).toBe("close");
    expect(disputed.answer).toMatch(/break strips of your own sheet/);
    expect(front(withPressure(45)).verdict).toBe("holds");
  });

  test("waits for broken strips where its species has no figures, and keeps its caution", () => {
    const panels = job.parts.panels.map((panel) => ({
      ...panel,
      sheet: { ...panel.sheet, name: "unknown ply", species: "yellow-poplar" as const },
    }));
    const unknown = front({ ...job, parts: { ...job.parts, panels } });
    expect(unknown.verdict).toBe("unknown");
    expect(unknown.missing?.measure).toBe("the bending strength of unknown ply along its grain");
    expect(unknown.cautions).toEqual(front(job).cautions);
  });
});

test("a face that is open at one side is held on three, and more is asked of it", () => {
  const open = (input: Job) => panelsBend(input).find(({ id }) => id === "strength.panel.upper.left")!;
  const panels = job.parts.panels.map((panel) =>
    panel.id === "upper.left" ? { ...panel, freeSides: ["top"] as const } : panel,
  );
  expect(open({ ...job, parts: { ...job.parts, panels } }).ratio).toBeGreaterThan(open(job).ratio!);
});

describe("a door", () => {
  const door = (input: Job) => panelsBend(input).find(({ id }) => id.endsWith("side door"))!;

  test("is held along its hinges and at its latch: more is asked of it than of a leaf held all round", () => {
    expect(door(job).verdict).toBe("holds");
    expect(door(job).ratio).toBeGreaterThan(0.1);
  });

  test("without a latch asks for one", () => {
    const hardware = job.parts.hardware.filter(({ item }) => item.duty !== "close");
    const open = door({ ...job, parts: { ...job.parts, hardware } });
    expect(open.verdict).toBe("unknown");
    expect(open.missing?.how).toBe("place a latch over its free side in the case file");
  });
});

test("every shelf and every floor with something on it is asked, for years and with a jolt", () => {
  expect(shelvesBend(job).map(({ subject }) => subject)).toEqual(["instrument shelf", "supply shelf"]);
  const floor = panelsBend(job).find(({ id }) => id === "strength.panel.lower.bottom")!;
  // Crate 16.5 and battery 39 lb over 30 by 24 in, twice for the jolt.
  expect(floor.question).toContain("22.2 psf");
});

/** What rides inside: each question answered, failed, and left open for want of a measurement. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitOutQuestions } from "../../lib/findings/fit-out/index.js";
import type { Finding } from "../../lib/findings/index.js";
import { heatPaths, type ReviewInput, sectionHeat } from "../../lib/model/index.js";
import { workedView } from "../../lib/page/to-view.js";
import { designOf, smallJob } from "../design/small-job.js";

const shelfHold = "held: { by: shelf, shelf: board } }";
const meterLine = `meter: { in: box, mass: 4 kg, at: [50, 50, 210], size: [200, 150, 120], ${shelfHold}`;

/** The small job with words added to its meter, its services, its board, and tables beside. */
function job(
  words: {
    readonly meter?: string;
    readonly services?: string;
    readonly contents?: string;
  },
  tables: Record<string, string> = {},
): ReviewInput {
  const { meter = "", services = "", contents = "" } = words;
  const text = (smallJob["case.yaml"] ?? "")
    .replace(meterLine, `${meterLine.slice(0, -2)}${meter} }${contents}`)
    .replace("business:\n", services === "" ? "business:\n" : `services:\n${services}\nbusiness:\n`);
  return designOf({ ...smallJob, ...tables, "case.yaml": text });
}

/** Every question about heat, power, cables, screens and what holds shelves; not the costly ones about panels. */
function asked(input: ReviewInput): readonly Finding[] {
  const cheap = fitOutQuestions.filter(({ id }) => !/^fit-out\.(hold|jolt|rattle)$/.test(id));
  return cheap.flatMap((ask) => ask(input));
}

function find(input: ReviewInput, id: string): Finding {
  const found = asked(input).find((one) => one.id === id);
  if (!found) throw new Error(`no finding ${id}`);
  return found;
}

const powered = ", power: 20 W";
const tender = `${powered}, needs: { hottest: 40 °C }`;
const vents = "{ let in: front.window, let out: front.port, free: 60 % }";
const services = (more: string): string => `  hottest: 35 °C\n${more}`;

describe("heat", () => {
  test("is judged by the tenderest thing; an outside as warm as it stands fails whatever the vents", () => {
    const cool = find(job({ meter: tender, services: services("") }), "fit-out.heat.box");
    expect(cool.verdict).toBe("holds");
    const hot = find(job({ meter: tender, services: "  hottest: 41 °C" }), "fit-out.heat.box");
    expect(hot).toMatchObject({ verdict: "fails", because: [] });
    expect(hot.answer).toContain("no vent helps");
  });

  test("says when a case that gets too warm passes its limit", () => {
    const finding = find(
      job({ meter: `, power: 80 W, needs: { hottest: 40 °C }`, services: services("") }),
      "fit-out.heat.box",
    );
    expect(finding.verdict).toBe("fails");
    expect(finding.answer).toMatch(/Switched on cold, it is too warm after [\d.]+ (min|h)\./);
    expect(finding.because.map(({ id }) => id)).toContain("heat.warm.wait");
  });

  test("thin air cools less, and only where there are vents", () => {
    const rise = (altitude: string, cooling: string): number =>
      sectionHeat(job({ meter: tender, services: services(`${altitude}${cooling}`) }), "box").rise;
    const withVents = `  cooling: { box: ${vents} }`;
    expect(rise("  altitude: 3000 m\n", withVents)).toBeGreaterThan(rise("", withVents));
    expect(rise("  altitude: 3000 m\n", "")).toBe(rise("", ""));
  });

  test("one opening alone lets less through than two at two heights", () => {
    const rise = (out: string): number =>
      sectionHeat(
        job({
          meter: tender,
          services: services(`  cooling: { box: { let in: front.port, let out: ${out}, free: 60 % } }`),
        }),
        "box",
      ).rise;
    expect(rise("front.port")).toBeGreaterThan(rise("front.window"));
  });

  test("all ways out together carry what is put in", () => {
    const input = job({ meter: tender, services: services(`  cooling: { box: ${vents} }`) });
    const { power, rise } = sectionHeat(input, "box");
    const out = heatPaths(input, "box").reduce((sum, { conductance }) => sum + conductance * rise, 0);
    expect(out / power).toBeCloseTo(1, 2);
  });
});

describe("the sun", () => {
  const inSun = (sun: string, meter = tender): ReviewInput => job({ meter, services: services(sun) });
  const rise = (facing: string, strength: number): number =>
    find(inSun(`  sun: { facing: ${facing}, strength: ${strength} W/m2 }`), "fit-out.sun.box").ratio ??
    Number.NaN;

  test("is unknown until somebody says whether it stands in it", () => {
    expect(find(inSun(""), "fit-out.sun.box")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "the sun that it stands in" },
    });
  });

  test("of no strength is the shade; more of it, and a dark face, are never cooler", () => {
    const shade = find(inSun(""), "fit-out.heat.box").ratio ?? Number.NaN;
    expect(rise("dark", 0)).toBeCloseTo(shade, 12);
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 1300 }), (strength) => {
        expect(rise("light", strength)).toBeGreaterThan(shade);
        expect(rise("light", strength + 50)).toBeGreaterThan(rise("light", strength));
        expect(rise("dark", strength) - shade).toBeCloseTo(2 * (rise("light", strength) - shade), 9);
      }),
      { numRuns: 3 },
    );
  });
});

describe("air through the vents", () => {
  test("is enough by the fan and too little by warmth alone", () => {
    const cooled = (fan: string): Finding =>
      find(
        job({
          meter: ", power: 150 W, needs: { hottest: 40 °C }",
          services: services(
            `  cooling: { box: { let in: front.window, let out: front.port, free: 2 %${fan} } }`,
          ),
        }),
        "fit-out.air.box",
      );
    expect(cooled("").verdict).toBe("fails");
    const blown = cooled(", fan: { flow: 100 m3/h, pressure: 60 Pa }");
    expect(blown.because.map(({ id }) => id)).toEqual(["heat.air", "heat.vents", "heat.fan"]);
    expect(blown.ratio).toBeLessThan(cooled("").ratio ?? 0);
  });

  test("agrees with the heat wherever the log decides", () => {
    const log = [0, 20, 40, 80, 160, 320]
      .map((minutes) => `box,${minutes},${(25 + 6 * (1 - Math.exp(-minutes / 50))).toFixed(3)},25,20`)
      .join("\n");
    const tables = { "temperature-log.csv": `section,time (min),inside (°C),outside (°C),power (W)\n${log}` };
    for (const watts of [10, 14, 18, 25, 40]) {
      const input = job(
        {
          meter: `, power: ${watts} W, needs: { hottest: 40 °C }`,
          services: services(`  cooling: { box: ${vents} }`),
        },
        tables,
      );
      expect(find(input, "fit-out.air.box").verdict).toBe(
        (find(input, "fit-out.heat.box").ratio ?? 0) > 1 ? "fails" : "holds",
      );
    }
  });
});

describe("a temperature log", () => {
  const logged = (wobble: number): Finding => {
    const log = [0, 10, 20, 40, 60, 90, 120, 180, 240]
      .map((minutes, i) => {
        const rise = 5 * (1 - Math.exp(-minutes / 50)) + (i % 2 === 0 ? wobble : -wobble);
        return `box,${minutes},${(25 + rise).toFixed(4)},25,20`;
      })
      .join("\n");
    return find(
      job(
        { meter: tender, services: services("") },
        { "temperature-log.csv": `section,time (min),inside (°C),outside (°C),power (W)\n${log}` },
      ),
      "fit-out.heat.box",
    );
  };

  test("gives the answer an interval, wider the more it scatters, and close when it straddles the limit", () => {
    const width = (wobble: number): number => {
      const { interval } = logged(wobble);
      return (interval?.high ?? 0) - (interval?.low ?? 0);
    };
    expect(width(0)).toBeLessThan(0.001);
    expect(width(0.1)).toBeGreaterThan(width(0.02));
    expect(logged(0.3)).toMatchObject({
      verdict: "close",
      interval: { shares: [{ input: "temperature log", share: 1 }] },
    });
    expect(logged(0.3).answer).toContain("by your own log");
  });
});

describe("screens", () => {
  const pane = (words: string): ReviewInput =>
    job({ meter: `, needs: { pane: { strip: 4, squeeze: 30 %, clearance: 0.5${words} } }` });

  test("keep their grip by the maker's figure or the builder's own test of the strip", () => {
    const byMaker = find(pane(", set: 25 %"), "fit-out.screen.meter");
    const byTest = find(pane(", set test: [4, 2.8, 3.7]"), "fit-out.screen.meter");
    expect(byMaker.ratio).toBeCloseTo(0.5 / 0.9, 9);
    expect(byTest.ratio).toBeCloseTo(byMaker.ratio ?? 0, 9);
    expect(byTest.because.map(({ id }) => id)).toEqual(["screen.strip.set", "screen.strip.grip"]);
    expect(find(pane(", set: 80 %"), "fit-out.screen.meter").verdict).toBe("fails");
    expect(find(pane(""), "fit-out.screen.meter")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "how much of its squeeze the strip of the meter loses" },
    });
  });

  test("a test piece that grew is not known", () => {
    expect(find(pane(", set test: [4, 2.8, 4.1]"), "fit-out.screen.meter").missing?.how).toContain(
      "the piece must be thinner squeezed than before, and not grow",
    );
  });

  test("stand their clamps, or wait for the clamp's force and the maker's limit", () => {
    const clamp = ", clamp: { force: 24 N, pad: [12, 40] }";
    // 24 N over 480 mm2 is 50 kPa
    expect(find(pane(`${clamp}, stands: 100 kPa`), "fit-out.glass.meter").ratio).toBeCloseTo(0.5, 9);
    expect(find(pane(`${clamp}, stands: 40 kPa`), "fit-out.glass.meter").verdict).toBe("fails");
    expect(find(pane(clamp), "fit-out.glass.meter").missing?.measure).toBe(
      "what the edge of the screen of the meter stands",
    );
    expect(find(pane(""), "fit-out.glass.meter").missing?.measure).toBe(
      "the force of one clamp on the screen of the meter",
    );
  });
});

describe("plugs, strips and first currents", () => {
  const mains = (more: string): string =>
    `  mains: { voltage: 230 V, breaker: 10 A, cable gauge: 14, cable length: 10000${more} }`;

  test("a strip is judged by rating and by sockets, and unknown without them", () => {
    const strip = job({
      meter: ", power: 2300 W",
      services: mains(", plug strip: { rated: 8 A, sockets: 1 }"),
    });
    expect(find(strip, "fit-out.power.strip").ratio).toBeCloseTo(10 / 8, 9);
    expect(find(strip, "fit-out.power.sockets")).toMatchObject({ ratio: 1, verdict: "holds" });
    const bare = job({ meter: powered, services: mains("") });
    for (const id of ["fit-out.power.strip", "fit-out.power.sockets"]) {
      expect(find(bare, id)).toMatchObject({
        verdict: "unknown",
        missing: { measure: "rating and sockets of the plug strip" },
      });
    }
  });

  test("no breaker is said to hold while a first current is missing", () => {
    const without = job({ meter: powered, services: mains("") });
    expect(find(without, "fit-out.power.inrush")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "the first current of meter" },
    });
    const known = job({ meter: ", power: 230 W, needs: { cold start: 60 }", services: mains("") });
    // 1 A x 60 against five times 10 A
    expect(find(known, "fit-out.power.inrush")).toMatchObject({ verdict: "fails", ratio: 1.2 });
  });

  test("what draws power is asked for its plug", () => {
    expect(find(job({ meter: powered }), "fit-out.cable.meter")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "plug and cable of the meter, and the side they are on" },
    });
    const plug = ", needs: { plug: { at: right, length: 40, cable: 8, bend factor: 6 } }";
    // 40 + 48 + 8 of the 350 to the right wall
    expect(find(job({ meter: plug }), "fit-out.cable.meter").ratio).toBeCloseTo(96 / 350, 9);
  });
});

describe("pass-throughs", () => {
  const passRow = "brush,pass-through,60,8,counter,90,90,2,20,10,0,screw,4,2,2,70,70,";
  const withBrush = (meter: string): ReviewInput => {
    const text = (smallJob["case.yaml"] ?? "")
      .replace(meterLine, `${meterLine.slice(0, -2)}${meter} }`)
      .replace(
        "shelves:\n",
        "  brush: { item: brush, duty: other, places: [{ on: box.right, from: top-left, across: 100, up: 120 }] }\nshelves:\n",
      );
    const hardware = `${smallJob["hardware.csv"]}\n${passRow}`;
    return designOf({ ...smallJob, "case.yaml": text, "hardware.csv": hardware });
  };
  const plug = (more: string): string =>
    `, needs: { plug: { at: right, length: 40, cable: 10, bend factor: 6${more} } }`;

  test("are judged by their fill and by the widest plug", () => {
    // a quarter of pi of 100 in 200 mm2, against 53 % for one cable
    const input = withBrush(plug(", width: 12"));
    expect(find(input, "fit-out.pass.box").ratio).toBeCloseTo(Math.PI / 8 / 0.53, 9);
    expect(find(input, "fit-out.plug.box")).toMatchObject({ verdict: "fails", ratio: 1.2 });
  });

  test("are unknown without cables, or without the width of a plug", () => {
    expect(find(withBrush(""), "fit-out.pass.box").missing?.measure).toBe("the cables that leave box");
    expect(find(withBrush(plug("")), "fit-out.plug.box").missing?.measure).toBe("the plugs that leave box");
  });
});

describe("lamps, mounts and platforms", () => {
  const lamp = (needs: string): ReviewInput =>
    job({
      contents: `\n  lamp: { in: box, mass: 1 kg, at: [300, 50, 450], size: [200, 50, 50], held: { by: hung, fastener: screw, count: 2, second hold: true }, power: 10 W${needs} }`,
    });

  test("a lamp keeps free of what lies under it, or waits for its label", () => {
    // 450 up, the board's top at 210
    expect(find(lamp(", needs: { keep clear: 120 }"), "fit-out.clear.lamp").ratio).toBeCloseTo(0.5, 9);
    expect(find(lamp(", needs: { keep clear: 300 }"), "fit-out.clear.lamp").verdict).toBe("fails");
    expect(find(lamp(""), "fit-out.clear.lamp")).toMatchObject({
      verdict: "unknown",
      missing: { measure: "how much free way the lamp wants" },
    });
  });

  test("mounts help when soft or when stiff, not between", () => {
    const mount = (rate: string): Finding["verdict"] =>
      find(job({ meter: `, needs: { mounts: { count: 4, rate: ${rate} } }` }), "fit-out.mount.meter").verdict;
    expect(mount("1 N/mm")).toBe("holds");
    expect(mount("8 N/mm")).toBe("fails");
    expect(mount("60 N/mm")).toBe("holds");
  });

  test("slides carry what stands on them, or wait for their rating", () => {
    const slid = (more: string): ReviewInput =>
      designOf({
        ...smallJob,
        "case.yaml": (smallJob["case.yaml"] ?? "").replace("sliding: false", `sliding: true${more}`),
      });
    expect(find(slid(""), "fit-out.slide.board").missing?.measure).toBe(
      "the load that the slides of the board are made for",
    );
    // 4 kg and 1.26 kg of shelf, twice
    expect(find(slid(", slides rated: 200 N"), "fit-out.slide.board").ratio).toBeCloseTo(
      (2 * (4 + 1.26) * 9.80665) / 200,
      6,
    );
  });

  test("a bracket spares screws in proportion to its height, glue to the square of it", () => {
    const platform = (more: string): ReviewInput =>
      designOf({
        ...smallJob,
        "case.yaml": (smallJob["case.yaml"] ?? "").replace(
          "support: two ends, sliding: false",
          `support: back only, sliding: false${more}`,
        ),
        "pull-tests.csv": `test,fastener,sheet,washer,direction,load (N)\n${[1, 2, 3, 4, 5].map((i) => `p${i},screw,ply 10,no,pull,${900 + 10 * i}`).join("\n")}`,
      });
    const used = (more: string, by: "screws" | "glue"): number =>
      find(platform(more), `fit-out.platform.${by}.board`).ratio ?? Number.NaN;
    expect(used(", bracket: 100", "screws")).toBeCloseTo(used(", bracket: 50", "screws") / 2, 9);
    expect(used(", bracket: 100", "glue")).toBeCloseTo(used(", bracket: 50", "glue") / 4, 9);
    expect(used("", "screws")).toBeCloseTo(10 * used(", bracket: 50", "screws"), 9);
  });
});

test("every worked line has a line with its numbers, in inches and in millimetres, but for the fit and what is solved in steps", () => {
  const plug = "plug: { at: right, length: 40, cable: 8, bend factor: 6 }";
  const pane =
    "pane: { strip: 4, squeeze: 30 %, clearance: 0.5, set test: [4, 2.8, 3.7], clamp: { force: 24 N, pad: [12, 40] }, stands: 100 kPa }";
  const input = job({
    meter: `, power: 90 W, needs: { hottest: 40 °C, cold start: 10, ${plug}, ${pane}, mounts: { count: 4, rate: 1 N/mm } }`,
    services: services(`  altitude: 900 m
  sun: { facing: dark, strength: 900 W/m2 }
  battery: { capacity: 50 Ah, voltage: 12 V, usable: 80 %, must last: 2 h }
  mains: { voltage: 230 V, breaker: 10 A, cable gauge: 14, cable length: 10000, plug strip: { rated: 10 A, sockets: 4 } }
  cooling: { box: ${vents} }`),
  });
  const lines = asked(input).flatMap(({ because }) => because);
  const bare = (system: "inch" | "metric"): readonly string[] => [
    ...new Set(
      lines.filter((line) => workedView(line, { system }).substituted.length === 0).map(({ id }) => id),
    ),
  ];
  expect(lines.length).toBeGreaterThan(20);
  expect(bare("metric")).toEqual(["heat.vented"]);
  expect(bare("inch")).toEqual(["heat.vented"]);
});

/** Every safety finding of the demo fails once more is asked of it than it bears, and keeps its cautions. */
import { describe, expect, test } from "vitest";
import { type Change, set } from "../../lib/design/index.js";
import { fitOutQuestions } from "../../lib/findings/fit-out/index.js";
import type { Finding } from "../../lib/findings/index.js";
import { jointQuestions } from "../../lib/findings/joints/index.js";
import { strengthQuestions } from "../../lib/findings/strength/index.js";
import { travelQuestions } from "../../lib/findings/travel/index.js";
import { openJob } from "../../lib/job/index.js";
import { type BusinessInput, caseBox } from "../../lib/model/index.js";
import { Length } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");
const before = job.review.findings.filter(({ tier, verdict }) => tier === "safety" && verdict !== "unknown");

/** The demo in a worse world. */
type Worse = (demo: typeof job) => BusinessInput;

const written =
  (...changes: readonly Change[]): Worse =>
  (demo) =>
    changes.reduce((changed, change) => changed.with(change), demo);

const things = job.case.contents.map(({ name }) => name);
const powered = job.case.contents.flatMap(({ name, power = 0 }) => (power > 0 ? [name] : []));
const plugged = job.case.contents.flatMap(({ name, needs }) => (needs.plug ? [name] : []));

const rated = (row: string, column: string, text: string): Change =>
  set({ file: "hardware.csv", row, column }, text);

/** Every sheet a third as thick, its veneers too. */
const thin: Worse = (demo) => ({
  ...demo,
  parts: {
    ...demo.parts,
    panels: demo.parts.panels.map((panel) => ({
      ...panel,
      sheet: {
        ...panel.sheet,
        thickness: Length.si(panel.sheet.thickness / 3),
        veneers: panel.sheet.veneers.map((one) => Length.si(one / 3)),
      },
    })),
  },
});

/** Everything inside a metre higher. */
const topHeavy: Worse = (demo) => ({
  ...demo,
  parts: {
    ...demo.parts,
    contents: demo.parts.contents.map((part) => ({
      ...part,
      centre: { ...part.centre, z: Length.si(part.centre.z + 1) },
    })),
  },
});

/** Worlds that ask at least twice what is there, with the findings that they must make fail. */
const worlds: readonly (readonly [string, RegExp, Worse])[] = [
  ["a push three times as hard", /^travel\.push$/, written(set("demands.push", "90 lbf"))],
  [
    "hardware rated for next to nothing",
    /^joints\.(box|handles|handle-alone|latches)\.|^travel\.casters$/,
    written(
      rated("recessed handle", "rated", "10"),
      rated("draw latch", "rated", "5"),
      rated("draw latch keeper", "rated", "5"),
      rated("swivel caster 5 in", "rated", "5"),
      rated("door hinge", "rated", "2"),
    ),
  ],
  [
    "a safety factor of a hundred",
    /^joints\.(casters|handle-sideways|handle-out)\./,
    written(set("demands.safety factor", "100")),
  ],
  [
    "things that weigh a ton",
    /^fit-out\.(hold|bounce)\.|^joints\.(second-hold|hung)\./,
    written(...things.map((name) => set(`contents.${name}.mass`, "2000 lb"))),
  ],
  ["everything a metre higher", /^travel\.hang\./, topHeavy],
  ["somebody who stands on it", /^strength\.person\./, written(set("demands.top bears", "stands"))],
  ["sheets a third as thick", /^strength\.lean\./, thin],
  ["a gale", /^travel\.wind$/, written(set("journey.gust", "60 mph"))],
  ["a steep slope", /^travel\.(slope|brakes)$/, written(set("journey.slope", "40 deg"))],
  [
    "casters that swing far inwards",
    /^travel\.(tip|child\..*)$/,
    written(rated("swivel caster 5 in", "offset", "8")),
  ],
  [
    "things that draw kilowatts",
    /^fit-out\.(heat|sun|air)\.|^fit-out\.power\.(circuit|strip)$/,
    written(...powered.map((name) => set(`contents.${name}.power`, "3 kW"))),
  ],
  ["a fuse ten times too large", /^fit-out\.power\.dc-fuse$/, written(set("services.battery.fuse", "150 A"))],
  ["one socket", /^fit-out\.power\.sockets$/, written(set("services.mains.plug strip.sockets", "1"))],
  [
    "a breaker that trips late",
    /^fit-out\.power\.outdoors$/,
    written(set("services.mains.residual current", "100 mA")),
  ],
  ["a lamp that wants more air", /^fit-out\.clear\./, written(set("contents.lamp.needs.keep clear", "40"))],
  ["a weak winch", /^travel\.ramp-down$/, written(set("journey.winch", "10 lbf"))],
  [
    "weak straps on ice",
    /^travel\.lashing/,
    written(set("journey.lashing.tension", "20 lbf"), set("journey.lashing.friction", "0.05")),
  ],
  [
    "cables and plugs as thick as an arm",
    /^fit-out\.(cable|pass)\./,
    written(
      ...plugged.flatMap((name) => [
        set(`contents.${name}.needs.plug.cable`, "4"),
        set(`contents.${name}.needs.plug.length`, "6"),
      ]),
    ),
  ],
  [
    "a clamp that crushes",
    /^fit-out\.glass\./,
    written(set("contents.field spectrometer.needs.pane.clamp.force", "100 lbf")),
  ],
];

const lists = {
  travel: travelQuestions,
  strength: strengthQuestions,
  joints: jointQuestions,
  "fit-out": fitOutQuestions,
};

/** Only the questions that a world is about. */
function askedIn(input: BusinessInput, of: readonly Finding[]): readonly Finding[] {
  const topics = Object.entries(lists).filter(([topic]) => of.some((one) => one.topic === topic));
  return topics.flatMap(([, questions]) =>
    questions
      .filter(({ id }) => of.some((one) => one.id === id || one.id.startsWith(`${id}.`)))
      .flatMap((ask) => ask({ ...input, box: () => caseBox(input) })),
  );
}

describe.each(worlds)("in %s", (_, which, worse) => {
  const of = before.filter(({ id }) => which.test(id));

  test("what held fails, and tells its cautions all the same", () => {
    expect(of.length).toBeGreaterThan(0);
    const after = new Map(askedIn(worse(job), of).map((one) => [one.id, one]));
    expect(
      of
        .filter(({ id }) => after.get(id)?.verdict !== "fails")
        .map(({ id }) => [id, after.get(id)?.verdict, after.get(id)?.ratio]),
    ).toEqual([]);
    expect(of.filter(({ id, cautions }) => after.get(id)?.cautions.join() !== cautions.join())).toEqual([]);
    expect(of.filter(({ cautions }) => cautions.length === 0)).toEqual([]);
  });
});

test("no safety finding of the demo is left out", () => {
  const left = before.filter(({ id }) => !worlds.some(([, which]) => which.test(id)));
  expect(left.map(({ id }) => id)).toEqual([]);
});

/** Sentences that a builder reads: whole, short, one unit at a time, of figures that make sense. */
import { describe, expect, test } from "vitest";
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";
import type { Design } from "../../lib/design/index.js";
import { designReader } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { openJob } from "../../lib/index.js";
import { sentencesOf } from "../../lib/page/index.js";
import { otherJob } from "../other-jobs.js";

/** A text, and where a builder reads it. */
interface Told {
  /** The finding or page, and the part of it. */
  readonly where: string;
  /** What stands there. */
  readonly text: string;
}

/** All that a finding says in sentences. */
function toldBy({ id, question, answer, cautions, assumes, remedies }: Finding): readonly Told[] {
  const parts = { question: [question], answer: [answer], caution: cautions, assumes };
  const helping = remedies.map(({ words }) => ({ where: `${id} remedy`, text: words }));
  return [
    ...Object.entries(parts).flatMap(([part, texts]) =>
      texts.map((text) => ({ where: `${id} ${part}`, text })),
    ),
    ...helping,
  ];
}

const reviewed = (design: Design): readonly Told[] => reviewCase(design).findings.flatMap(toldBy);

function randomDesign(seed: number): Design {
  const read = designReader()(textsOf(randomCase(seed)));
  if (!("design" in read)) throw new Error(`seed ${seed} is no case`);
  return read.design;
}

const cases: readonly (readonly [string, () => Promise<Design> | Design])[] = [
  ["the demo", () => openJob("soil-lab")],
  ["its draft", () => openJob("soil-lab-draft")],
  ["a bare box", async () => openJob(await otherJob("bare-box"))],
  ["a tower of six", async () => openJob(await otherJob("tower-of-six"))],
  ...[2, 4].map((seed) => [`random case ${seed}`, () => randomDesign(seed)] as const),
];

/** Words of a sentence: what has a letter or a figure in it. */
const wordsIn = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /[A-Za-z0-9]/.test(word)).length;

const mostWords = 25;

/** What no sentence may be, by name. */
const faults: Readonly<Record<string, (sentence: string) => boolean>> = {
  "has more than 25 words": (one) => wordsIn(one) > mostWords,
  "has no capital or number at its head": (one) =>
    !/^["(]?[A-Z0-9]/.test(one) && !/^[a-z][\w -]*\.[a-z]/.test(one),
  "has no mark at its end": (one) => !/[.?!]["')]?$/.test(one),
  "has a blank too many or before a mark": (one) => /\s{2}|\s[,.;:](?=\s|$)/.test(one),
  "tells a length in two systems": (one) => /\d in \([\d.]+ (mm|m)\)|\d (mm|m) \([\d./-]+ in\)/.test(one),
  "tells a mass or a force in two systems": (one) =>
    /\d lbf? \([\d.]+ (kg|N)\)|\d (kg|N) \([\d.]+ lbf?\)/.test(one),
  "counts one as many": (one) =>
    /(?<![\d.,/-])1 (?:rivet|screw|bolt|fastener|strap|sheet|question|caster|wheel|handle|hour|day|pair|mount|insert|latche|trip|pixel|thing)s\b/.test(
      one,
    ),
  "is finer than sense": (one) => /\d(e-\d|\.0{4,}\d)/.test(one),
  "shows what went wrong within": (one) => /undefined|NaN|\[object|Infinity|null/.test(one),
  "says that there is no source": (one) => /\bno source\b/i.test(one),
};

/** Each fault with the sentences that have it, one of a kind. */
function faultsIn(all: readonly Told[]): readonly string[] {
  const found = new Map<string, string>();
  for (const { where, text } of all) {
    for (const sentence of sentencesOf(text)) {
      for (const [fault, has] of Object.entries(faults)) {
        const kind = `${fault}: ${where.split(".").slice(0, 2).join(".")} ${sentence.replace(/[\d.,/-]+/g, "#").slice(0, 40)}`;
        if (has(sentence) && !found.has(kind)) found.set(kind, `${where} ${fault}: ${sentence}`);
      }
    }
  }
  return [...found.values()];
}

describe("every sentence of the findings", () => {
  test.each(cases)(
    "of %s is whole and short",
    async (_, design) => {
      const all = reviewed(await design());
      expect(all.length).toBeGreaterThan(20);
      expect(faultsIn(all)).toEqual([]);
    },
    600_000,
  );
});

test("a fault is seen", () => {
  const long = `It ${"goes ".repeat(mostWords)}on.`;
  const wrong = [
    long,
    "it is",
    "It is 3 in (76 mm) long.",
    "It has 1 rivets.",
    "It is 5e-13 mm.",
    "There is no source.",
  ];
  for (const text of wrong) expect(faultsIn([{ where: "x", text }])).not.toEqual([]);
  expect(faultsIn([{ where: "x", text: "It has 1 rivet. The front sags 1 in of 2 in." }])).toEqual([]);
});

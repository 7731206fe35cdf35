/** What is odd about the readings, and what to measure better. */
import type { Job } from "../../job/index.js";
import { bentStrips, type ScatterShare, spannedPieces, twistedSamples } from "../../measure/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { Length, Ratio, ratio } from "../../quantity/index.js";

/** Unloading may lag so far behind loading before it is worth a word. */
const mostHysteresis = 0.05;

/** Something odd about a test, and what to do. */
interface OddReading {
  readonly where: string;
  readonly odd: string;
}

/** Everything odd about the bend and twist tests: rows that do not belong, strips that creep, tests that cannot be used. */
export function oddReadings({ measurements: { bends, twists } }: Job): readonly OddReading[] {
  const bent = bentStrips(bends);
  const unusable = [...bent.problems, ...spannedPieces(bends).problems, ...twistedSamples(twists).problems];
  return [
    ...unusable.map(({ file, row, expected }) => ({
      where: `${file}, row ${row ?? ""}`,
      odd: `not used: expected ${expected}`,
    })),
    ...bent.strips.flatMap(({ strip, oddLines }) =>
      oddLines.map((line) => ({
        where: `bend-tests.csv, row ${line}`,
        odd: `off the line of strip ${strip}: read it again, or strike it out`,
      })),
    ),
    ...bent.strips.flatMap(({ strip, hysteresis = ratio(0) }) =>
      hysteresis > mostHysteresis
        ? [
            {
              where: `strip ${strip}`,
              odd: `sags ${Ratio.show(hysteresis, { unit: "%", digits: 2 })} more on the way back: look at rests and gauge`,
            },
          ]
        : [],
    ),
  ];
}

/** What is odd about the tests, as a table. */
export function oddTable(job: Job): TableView {
  return tableOf(
    oddReadings(job),
    [
      { heading: "Where", cell: ({ where }) => where },
      { heading: "What is odd", cell: ({ odd }) => odd },
    ],
    "Readings to look at again",
  );
}

/** Share of each measured size and of the readings in the scatter of a strip's modulus, the largest first. */
export function scatterShares({ measurements }: Job, strip: string): readonly ScatterShare[] {
  const rows = measurements.bends.filter((row) => row.strip === strip);
  const words: Readonly<Record<string, string>> = { slope: "sag and load" };
  const shares = bentStrips(rows).strips[0]?.modulus.shares ?? [];
  return shares.map(({ input, share }) => ({ input: words[input] ?? input, share }));
}

/** What to measure better next, in a sentence. */
export function nextMeasurement(job: Job, strip: string): string {
  const [largest] = scatterShares(job, strip);
  const thickness = job.measurements.bends.find((row) => row.strip === strip)?.thickness;
  if (!largest || thickness === undefined)
    return "Bend a strip first: then its scatter tells what to measure better.";
  const remedies: Readonly<Record<string, string>> = {
    "sag and load": "a dial gauge instead of a ruler, and heavier or more weights",
    thickness: `calipers that read hundredths: thickness counts three times over, here at ${Length.show(thickness, { unit: "mm" })}`,
    span: "a steel rule between the rests, read to half a millimetre, or a longer span",
    width: "calipers on the width, at three places",
  };
  return `Most of the scatter of strip ${strip} comes from ${largest.input} (${Ratio.show(ratio(largest.share), { unit: "%", digits: 2 })}). What helps next: ${remedies[largest.input] ?? "more readings"}.`;
}

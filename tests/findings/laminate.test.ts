/** Wood glue on laminate. */
import { expect, test } from "vitest";
import { gluedLaminate } from "../../lib/findings/joints/laminate.js";
import { designOf } from "../design/small-job.js";
import { trayJob } from "../design/tray-job.js";

const changed = (from: string, to: string) => {
  const text = trayJob["case.yaml"] ?? "";
  expect(text).toContain(from);
  return designOf({ ...trayJob, "case.yaml": text.replaceAll(from, to) });
};

test("wood glue on a face covered with laminate is a plain no, with its caution", () => {
  const found = gluedLaminate(designOf(trayJob));
  // The back is covered on both sides and has a doubler inside; the bottom is bare and its batten is screwed.
  expect(found.map(({ subject }) => subject)).toContain("tray.back.back doubler");
  expect(found.map(({ verdict }) => verdict)).toEqual(found.map(() => "fails"));
  expect(found.every(({ cautions }) => cautions.length > 0)).toBe(true);
});

test("nothing is asked where the glue is another, or the laminate is on the other side", () => {
  expect(gluedLaminate(changed("adhesive: yellow glue", "adhesive: contact"))).toEqual([]);
  expect(gluedLaminate(changed("sides: both", "sides: outside"))).toEqual([]);
});

/** What is kept of the work at the bench. */
import { describe, expect, test } from "vitest";
import {
  type BenchNotes,
  measuredCount,
  noNotes,
  notesIn,
  readTogether,
  ticked,
  valued,
} from "../../../lib/live/bench/notes.js";
import type { BenchValue } from "../../../lib/live/bench/view.js";

const can = (what: "can before" | "can after", text: string, of = "lower.front, outside"): BenchValue => ({
  key: { what, of },
  text,
  unit: "g",
});

describe("notes of the bench", () => {
  test("come back from storage as they went in", () => {
    const notes: BenchNotes = {
      ...valued(ticked(noNotes, "a step", true), can("can before", "900")),
      at: 5,
      step: "a step",
      clocks: [{ adhesive: "wood glue", what: "open", ends: 99 }],
    };
    expect(notesIn(JSON.stringify(notes))).toEqual(notes);
  });

  test.each([
    "",
    "null",
    "[]",
    '{"at":1}',
    '{"at":1,"step":"","done":[2],"values":[],"clocks":[]}',
    '{"at":1,"step":"","done":[],"values":[["a",{"key":null,"text":"","unit":""}]],"clocks":[]}',
    '{"at":1,"step":"","done":[],"values":[],"clocks":[{"adhesive":"a","what":"__proto__","ends":1}]}',
    null,
  ])("are none where storage holds something else: %s", (text) => {
    expect(notesIn(text)).toEqual(noNotes);
  });

  test("take a tick back, and keep an emptied figure as an empty one", () => {
    expect(ticked(ticked(noNotes, "a", true), "a", false).done).toEqual([]);
    const emptied = valued(valued(noNotes, can("can before", "900")), can("can before", ""));
    expect(emptied.values).toHaveLength(1);
    expect(measuredCount(emptied)).toBe(0);
    expect(valued(noNotes, can("can before", " ")).values).toEqual([]);
  });

  test("read a can together with the same can, and nothing else", () => {
    const before = can("can before", "900");
    const notes = [before, can("can before", "700", "lower.back, outside")].reduce(valued, noNotes);
    expect(readTogether(notes, can("can after", "800"))).toEqual([before]);
    expect(readTogether(notes, { key: { what: "width", of: "a" }, text: "1", unit: "mm" })).toEqual([]);
  });
});

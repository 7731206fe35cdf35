import { expect, test } from "vitest";
import { type Chapter, chapterOf } from "../../lib/book/chapter.js";

function chapterFrom(prose: string): Chapter {
  const cell = { cell_type: "markdown" as const, id: "a", metadata: {}, source: prose };
  return chapterOf({
    name: "01-name",
    notebook: { nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [cell] },
  });
}

test.each([
  ["# Is it?\n\nWe look.\n\nMore.", "Is it?", "We look."],
  ["# Is it?\nWe *look*\nclosely.", "Is it?", "We look closely."],
  ["# Is it? #\n**Will it hold?** The rest is long.", "Is it?", "Will it hold?"],
  ["# Is it?\n\n- one\n- two\n\n> said\n\nWe look.", "Is it?", "We look."],
  ["# Is it?", "Is it?", undefined],
  ["Without a heading.", "01-name", "Without a heading."],
])("title and question of %j", (prose, title, question) => {
  expect(chapterFrom(prose)).toMatchObject({ title, question });
});

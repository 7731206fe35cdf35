/** Mistakes of the text of case.yaml, told in a builder's words with their line. */
import { expect, test } from "vitest";
import { showProblem } from "../../lib/problem.js";
import { problemsOf, smallJob } from "./small-job.js";

const told = (text: string): string[] => problemsOf({ ...smallJob, "case.yaml": text }).map(showProblem);

test.each([
  ["tabs", "a:\n\tb: 1\n", "case.yaml, row 2: expected spaces before a word instead of tabs"],
  [
    "tabs on many lines",
    "a:\n\tb: 1\n\tc: 1\n \td: 1\n",
    "case.yaml, row 2: expected spaces before a word instead of tabs (also in rows 3, 4)",
  ],
  [
    "a missing colon",
    "a:\n  width 600\n  depth: 3\n",
    'case.yaml, row 2: found "width 600", expected a colon and a space after the name, such as "width: 12"',
  ],
  [
    "a missing space",
    "a:\n  width:600\n  depth: 3\n",
    'case.yaml, row 2: found "width:600", expected a space after the colon of "width"',
  ],
  [
    "a second colon in a text",
    "a:\n  purpose: films in halls: sound below\n  depth: 3\n",
    'case.yaml, row 2: found "purpose: films in halls: sound below", expected a text that has a colon and a space in it in quotes',
  ],
  [
    "a line too far right",
    "a:\n  b: 1\n    c: 2\n",
    'case.yaml, row 3: found "c: 2", expected as many spaces before it as before "b", the line above',
  ],
  [
    "a line too far left",
    "a:\n    b: 1\n  c: 2\n",
    'case.yaml, row 3: found "c: 2", expected as many spaces before it as before the other words of its block',
  ],
  [
    "a brace that is not closed",
    "a: { b: 1, c: 2\nd: 3\n",
    'case.yaml, row 2: found "d: 3", expected the end of the list or block that begins above, with }',
  ],
  [
    "an alias of nothing",
    "a: *x\n",
    'case.yaml, row 1: found "*x", expected a value; "*" repeats what an earlier "&x" marks, and there is none',
  ],
  [
    "copies of copies",
    `a: &a [1,1,1,1,1,1,1,1]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*b,*b,*b,*b]`,
    "case.yaml, row 2: expected plain values instead of copies of copies (& and *)",
  ],
  [
    "a tag",
    "a: !!js/function x\n",
    'case.yaml, row 1: found "!!js/function", expected a value without a tag; a text that begins with "!" stands in quotes',
  ],
  [
    "two documents",
    "a: 1\n---\nb: 2\n",
    'case.yaml, row 2: found "---", expected one case in a file, without a line of three hyphens',
  ],
  [
    "brackets without end",
    `a: ${"[".repeat(20_000)}`,
    "case.yaml, row 1: expected brackets and blocks less than 60 deep inside each other",
  ],
  [
    "lists without end",
    `a:\n  ${"- ".repeat(5000)}x`,
    "case.yaml, row 2: expected brackets and blocks less than 60 deep inside each other",
  ],
])("%s", (_, text, problem) => {
  expect(told(text)).toEqual([problem]);
});

test("a decimal comma among the words of a line", () => {
  const text = (smallJob["case.yaml"] ?? "").replace("height: 500 }", "height: 500,5 }");
  expect(told(text)).toEqual([
    expect.stringMatching(
      /sections\.box\.inside\.height: found "500,5", expected a decimal point where there is a comma; did you mean "500\.5"\?$/,
    ),
  ]);
});

test("a decimal comma before a unit, and one in a list", () => {
  const text = (smallJob["case.yaml"] ?? "")
    .replace("mass: 4 kg", "mass: 4,5 kg")
    .replace("size: [600, 300]", "size: [600,5, 300]");
  expect(told(text)).toEqual([
    expect.stringMatching(
      /shelves\.board\.size: expected a list of 2 lengths: .*; this one has 3, as a comma begins the next length$/,
    ),
    expect.stringMatching(
      /contents\.meter\.mass: found "4,5 kg", expected a decimal point where there is a comma; did you mean "4\.5 kg"\?$/,
    ),
  ]);
});

test("words without a comma between them stay as they are", () => {
  const text = (smallJob["case.yaml"] ?? "").replace("height: 500 }", "height: 500, 5 }");
  expect(told(text)).toEqual([
    expect.stringMatching(/sections\.box\.inside\.5: found "5", expected one of /),
  ]);
});

test("a block merged into another", () => {
  const text = (smallJob["case.yaml"] ?? "").replace("inside: {", "inside: { <<: { depth: 400 },");
  expect(told(text)).toEqual([
    expect.stringMatching(/expected the words themselves: a block cannot be merged into another$/),
  ]);
});

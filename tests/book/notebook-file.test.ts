import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Notebook, parseNotebook, printNotebook } from "../../lib/book/index.js";
import { schemaProblems } from "./json-schema.js";

const schema = JSON.parse(readFileSync(join(import.meta.dirname, "nbformat.v4.5.schema.json"), "utf8"));

const code = (id: string, source: string, outputs: object[] = []): object => ({
  cell_type: "code",
  execution_count: outputs.length > 0 ? 1 : null,
  id,
  metadata: {},
  outputs,
  source,
});
const file = (...cells: object[]): string =>
  JSON.stringify({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells });

const complete: Notebook = {
  nbformat: 4,
  nbformat_minor: 5,
  metadata: { kernelspec: { name: "casewright", display_name: "TypeScript (Casewright)" } },
  cells: [
    {
      cell_type: "markdown",
      id: "question",
      metadata: {},
      source: "# Will it hold?\n\nThe front has a window.",
      attachments: { "sketch.svg": { "image/svg+xml": "<svg>\n</svg>" } },
    },
    {
      cell_type: "code",
      id: "answer",
      metadata: { tags: ["answer"] },
      source: "const sag = 1;\nshow(sag);\n",
      execution_count: 3,
      outputs: [
        { output_type: "stream", name: "stdout", text: "one\ntwo" },
        {
          output_type: "display_data",
          data: { "text/html": "<b>\n1</b>", "application/json": { b: [1], a: ["x", "y"] } },
          metadata: {},
        },
        { output_type: "execute_result", execution_count: 3, data: { "text/plain": "1" }, metadata: {} },
        { output_type: "error", ename: "RangeError", evalue: "too long", traceback: ["a", "b"] },
      ],
    },
    { cell_type: "raw", id: "raw", metadata: {}, source: "" },
  ],
};

describe("printing a notebook", () => {
  test("gives a file that the notebook schema accepts", () => {
    expect(schemaProblems(schema, JSON.parse(printNotebook(complete)))).toEqual([]);
  });

  test("and reading it gives the same notebook", () => {
    expect(parseNotebook(printNotebook(complete), "a.ipynb")).toEqual(complete);
  });

  test("keeps every text, whatever its line ends", () => {
    const text = fc
      .array(fc.constantFrom("a", "\n", "\r", " ", "é", "\u2028", "\\"))
      .map((parts) => parts.join(""));
    fc.assert(
      fc.property(text, (source) => {
        const notebook = {
          ...complete,
          cells: [{ cell_type: "raw" as const, id: "x", metadata: {}, source }],
        };
        expect(parseNotebook(printNotebook(notebook), "a.ipynb")).toEqual(notebook);
      }),
    );
  });

  test("sorts keys, indents by one space, and stores text as lines that keep their ends", () => {
    const notebook: Notebook = {
      ...complete,
      metadata: {},
      cells: [{ source: "a\nb", id: "x", cell_type: "raw", metadata: {} }],
    };
    expect(printNotebook(notebook)).toBe(
      [
        '{\n "cells": [\n  {\n   "cell_type": "raw",\n   "id": "x",\n   "metadata": {},',
        '   "source": [\n    "a\\n",\n    "b"\n   ]\n  }\n ],\n "metadata": {},\n "nbformat": 4,\n "nbformat_minor": 5\n}\n',
      ].join("\n"),
    );
  });

  test("leaves lists inside JSON values alone", () => {
    const json = parseNotebook(printNotebook(complete), "a.ipynb").cells[1];
    expect(json).toMatchObject({
      outputs: [{}, { data: { "application/json": { a: ["x", "y"] } } }, {}, {}],
    });
  });
});

describe("reading a notebook refuses", () => {
  test.each([
    ["no JSON", "{", /^1 problem found\na\.ipynb: expected a notebook in JSON \(/],
    ["another format", '{"nbformat":3}', /nbformat: expected 4/],
    [
      "an older minor format",
      file().replace('"nbformat_minor":5', '"nbformat_minor":4'),
      /nbformat_minor: expected 5/,
    ],
    ["a cell without id", file({ ...code("x", ""), id: undefined }), /cells\.0\.id: expected string/],
    ["an id with a space", file(code("a b", "")), /cells\.0\.id: expected 1 to 64 letters, digits, - or _/],
    [
      "two cells of one id",
      file(code("x", ""), code("x", "")),
      /cells\.1\.id: expected an id of its own, "x" is taken/,
    ],
    [
      "code without outputs",
      file({ ...code("x", ""), outputs: undefined }),
      /cells\.0\.outputs: expected array/,
    ],
    [
      "an output of no kind",
      file(code("x", "", [{ output_type: "sound" }])),
      /cells\.0\.outputs\.0\.output_type/,
    ],
    ["a field of its own", file({ ...code("x", ""), colour: "red" }), /cells\.0.*colour/],
  ])("%s", (_name, text, message) => {
    expect(() => parseNotebook(text, "a.ipynb")).toThrow(message);
    // What we refuse as JSON the schema refuses too, unless ids repeat, of which it knows nothing.
    if (text !== "{" && !text.includes('"id":"x","metadata":{},"outputs":[],"source":""},{')) {
      expect(schemaProblems(schema, JSON.parse(text))).not.toEqual([]);
    }
  });

  test("names all places at once", () => {
    const text = file({ ...code("x", ""), id: "?" }, { ...code("y", ""), source: 7 });
    expect(() => parseNotebook(text, "a.ipynb")).toThrow(
      /^2 problems found\n.*cells\.0\.id.*\n.*cells\.1\.source/,
    );
  });
});

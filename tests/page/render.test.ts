import { expect, test } from "vitest";
import {
  answer,
  cautions,
  chart,
  list,
  markdown,
  plainText,
  renderView,
  renderViews,
  type Showable,
  steps,
  tableOf,
  toViews,
  type View,
} from "../../lib/page/index.js";
import { sampleDrawing, sampleFindings, sampleLine, samplePicture, sampleThings } from "./sample-views.js";

const nasty = `<script>alert("x")</script><img src=x onerror=alert(1)>`;

/** Every string in a view replaced, but for the words that choose how it is drawn. */
function poisoned<T>(value: T, field = ""): T {
  if (typeof value === "string") {
    return (
      ["kind", "verdict", "mark", "role", "align", "anchor", "look", "stuff"].includes(field) ? value : nasty
    ) as T;
  }
  if (Array.isArray(value)) return value.map((one) => poisoned(one)) as T;
  if (typeof value === "object" && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, poisoned(one, name)])) as T;
  }
  return value;
}

const everyView: View[] = [
  ...toViews([...sampleThings, sampleLine]),
  markdown("# Head"),
  samplePicture,
  chart("title", "description", { mark: "bar", data: { values: [{ a: nasty }] } }),
];

test.each(everyView.map((view) => [view.kind, view] as const))("%s: no text can become markup", (_, view) => {
  const markup = renderView(poisoned(view));
  expect(markup).not.toMatch(/<script(?! type="application\/json")/i);
  expect(markup).not.toMatch(/<img src=x/i);
  expect(markup).not.toMatch(/<\/script>\s*<img/i);
  expect(markup.match(/<script/g)?.length ?? 0).toBe(markup.match(/<\/script/g)?.length ?? 0);
});

test.each(everyView.map((view) => [view.kind, view] as const))(
  "%s travels as JSON and draws the same",
  (_, view) => {
    expect(renderView(JSON.parse(JSON.stringify(view)) as View)).toBe(renderView(view));
  },
);

test("a finding shows its verdict in words and with a shape of its own", () => {
  const shapes = sampleFindings.map((finding) => {
    const markup = renderViews(toViews(finding));
    return /<svg class="cw-shape[^>]*>(.*?)<\/svg>([^<]*)</.exec(markup)?.slice(1) ?? [];
  });
  expect(shapes.map(([, words]) => words)).toEqual([
    "Holds",
    "Close",
    "Does not hold",
    "Not known yet",
    "Not computed",
  ]);
  expect(new Set(shapes.map(([shape]) => shape)).size).toBe(5);
});

test("a finding's bar says in words how far along the limit it is", () => {
  const [holds, , fails] = sampleFindings.map((finding) => renderViews(toViews(finding)));
  expect(holds).toContain('aria-label="63 % of the limit, 47 % to 81 % with your scatter"');
  expect(fails).toContain("190 % of the limit");
});

test("a finding says what it takes for granted, and what would help with what it gives", () => {
  const [holds, , fails] = sampleFindings.map((finding) => renderViews(toViews(finding)));
  expect(holds).toContain("<b>Assumed:</b> A hand leans on its middle.</p>");
  expect(holds).not.toContain("What would help");
  expect(fails).toContain("<b>What would help, worked out:</b> half the base that would do: 320 mm</p>");
});

test("what went wrong in a broken finding stands in its working, as text", () => {
  const [broken] = sampleFindings.slice(-1).map((finding) => renderViews(toViews(finding)));
  expect(broken).toContain("<b>What went wrong:</b> TypeError: &lt;fan&gt; is not a function</p>");
});

test("the unknown names the measurement to make", () => {
  const [view] = toViews(sampleFindings.slice(3));
  expect(plainText(view as View)).toBe(
    "Does the lamp stay cool enough? Not known yet. The lamp's power is not in the case file.\n" +
      "How: Read it on the lamp's label, or put a plug meter in line.",
  );
});

test("a worked line shows the equation, then the numbers in it with the result", () => {
  const [view] = toViews(sampleLine);
  if (view?.kind !== "worked") throw new TypeError("expected a worked line");
  expect(view.substituted).toEqual([expect.stringMatching(/^w = .*384.* = 24\.7\\,\\mathrm\{mm\}$/)]);
  const markup = renderView(view);
  expect(markup.match(/<math/g)?.length).toBe(2 + 5);
  expect(markup).toContain("14\u202f580\u00a0mm⁴");
  expect(markup).toContain("Euler-Bernoulli beam theory");
});

test("a list among the values stands line by line, a long one behind a disclosure", () => {
  const withValue = (value: string): string => {
    const inputs = [{ name: "all", symbol: "x_i", meaning: "all of them", show: () => value }];
    return renderViews(toViews({ ...sampleLine, inputs }));
  };
  expect(withValue("1 mm2; 2 mm2")).toContain(
    '<td><span class="cw-line">1\u00a0mm²</span><span class="cw-line">2\u00a0mm²</span></td>',
  );
  expect(withValue(Array(7).fill("1 mm").join("; "))).toContain("<summary>7 values</summary>");
  expect(withValue("a word of more than thirty letters is no figure")).toContain(
    '<td><span class="cw-line">a word',
  );
});

test("an equation that cannot be read is shown as it is written", () => {
  const [view] = toViews({ ...sampleLine, equation: "w = \\frac{<b>" });
  expect(renderView(view as View)).toContain("<code>w = \\frac{&lt;b&gt;</code>");
});

test("values are shown in the units asked for", () => {
  const line = {
    ...sampleLine,
    results: [
      {
        name: "value",
        symbol: "w",
        meaning: "sag",
        show: (style?: { system?: string }) => style?.system ?? "none",
      },
    ],
  };
  expect(toViews(line, { system: "inch" })).toMatchObject([{ results: [{ value: "inch" }] }]);
});

test("what cannot be shown is refused with what it is", () => {
  expect(() => toViews(7 as unknown as Showable)).toThrow(
    "show: expected a worked line, a finding, a table, a chart, a drawing, a sentence or a list of those, got 7 (number)",
  );
  expect(() => toViews({ span: 1 } as unknown as Showable)).toThrow("got an object with span");
});

test("Markdown keeps its marks, and nothing in it runs or loads", () => {
  const markup = renderView(
    markdown("# A\n\n**b** [c](javascript:alert(1)) ![picture](https://example.invalid/p.png)\n\n<b>raw</b>"),
  );
  // The page has a title of its own.
  expect(markup).toContain("<h2>A</h2>");
  expect(markup).toContain("<strong>b</strong>");
  expect(markup).toContain("&lt;b&gt;raw&lt;/b&gt;");
  expect(markup).not.toMatch(/<img|href="javascript|src=/);
});

test("no cautions, no box", () => {
  expect(renderView(cautions())).toBe('<div class="cw"></div>');
});

test("a number and its unit stay on one line", () => {
  expect(renderView(answer("It sags 3 mm over 1.2 m."))).toContain("3\u00a0mm over 1.2\u00a0m.");
});

test("a name in a table goes on in another line after a dot; a number does not", () => {
  const rows = [["lower.bottom.left upright", "1.25 in", "bend-tests.csv"]];
  const columns = ["Of", "Size", "File"].map((heading) => ({ heading, align: "left" as const }));
  const markup = renderView({ kind: "table", columns, rows });
  expect(markup).toContain("<td>lower.<wbr>bottom.<wbr>left upright</td><td>1.25\u00a0in</td>");
});

test("a table's columns of figures stand at the right, words at the left", () => {
  const table = tableOf(
    [
      { name: "ply", price: "12.50 USD", note: 3 },
      { name: "4 mm ply", price: "-", note: "none" },
    ],
    [
      { heading: "Name", cell: ({ name }) => name },
      { heading: "Price", cell: ({ price }) => price },
      { heading: "Note", cell: ({ note }) => note },
    ],
    "Stock",
  );
  expect(table.columns.map(({ align }) => align)).toEqual(["left", "right", "left"]);
  expect(plainText(table)).toBe(
    "Stock\nName          Price  Note\nply       12.50 USD  3\n4 mm ply          -  none",
  );
});

test("plain text of the rest", () => {
  expect(
    [answer("Yes.", "holds"), list(["a"], "T"), steps(["b"]), cautions("c"), sampleDrawing].map(plainText),
  ).toEqual([
    "Holds: Yes.",
    "T\n- a",
    "1. b",
    "Mind this: c",
    `[drawing] ${sampleDrawing.title}. ${sampleDrawing.description}`,
  ]);
});

import { expect, test } from "vitest";
import { saidOnce } from "../../lib/book/said-once.js";

const figure = (title: string): string => `<span class="cw-figure-title">${title}</span>`;
const hidden = (title: string): string => `<span class="cw-figure-title cw-hidden">${title}</span>`;
const caption = (words: string): string => `<caption><span>${words}</span></caption>`;

test("a title that its heading begins with is left to screen readers", () => {
  expect(saidOnce(`<h3>Sheet 4: ply, 3 pieces</h3>${figure("Sheet 4: ply")}`)).toContain(
    hidden("Sheet 4: ply"),
  );
  expect(saidOnce(`<h2>What rides inside</h2>${caption("What rides inside")}`)).toContain(
    '<caption class="cw-hidden">',
  );
});

test("so is one that another has said since the heading, and no other", () => {
  const said = saidOnce(`<h2>Cuts</h2>${figure("Sheet 1")}${caption("Sheet 1")}${caption("Sheet 2")}`);
  expect(said).toBe(
    `<h2>Cuts</h2>${figure("Sheet 1")}<caption class="cw-hidden"><span>Sheet 1</span></caption>${caption("Sheet 2")}`,
  );
  expect(saidOnce(`${figure("Sheet 1")}<h2>Again</h2>${caption("Sheet 1")}`)).not.toContain("cw-hidden");
});

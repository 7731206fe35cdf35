/** The one script of the book's pages. */
import { drawChartsScript } from "../page/index.js";

/** Opens every "how we know" for printing, and closes it again after. */
const printScript = `addEventListener("beforeprint", () => {
  for (const part of document.querySelectorAll("details.cw-how:not([open])")) {
    part.open = true;
    part.dataset.opened = "for print";
  }
});
addEventListener("afterprint", () => {
  for (const part of document.querySelectorAll("details[data-opened]")) {
    part.open = false;
    delete part.dataset.opened;
  }
});`;

/** Draws charts, and readies a page for print. */
export const bookScript: string = `"use strict";\n${drawChartsScript}\n${printScript}\n`;

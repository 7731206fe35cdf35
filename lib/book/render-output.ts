/** What a cell showed or printed, as HTML. Our own views are drawn anew; all else is text, a picture, or boxed in. */
import { stripVTControlCharacters } from "node:util";
import { type Html, html, renderMarkdown, type View, viewHtml } from "../page/index.js";
import { viewsOf } from "./chapter.js";
import type { MimeBundle, Output } from "./notebook.js";

/** One output. */
export function renderOutput(output: Output): Html {
  switch (output.output_type) {
    case "stream":
      return printed(output.text, output.name === "stderr" ? "Warnings" : "Printed");
    case "error":
      return printed([`${output.ename}: ${output.evalue}`, ...output.traceback].join("\n"), "Error");
    case "display_data":
    case "execute_result":
      return renderViewsOf(output) ?? renderBundle(output.data);
  }
}

function renderViewsOf(output: Output): Html | undefined {
  const views = viewsOf(output);
  return views && html`<div class="cw">${views.map(renderSafely)}</div>`;
}

/** A view that was damaged on its way must not cost the reader the rest of the page. */
function renderSafely(view: View): Html {
  try {
    return html`${viewHtml(view)}`;
  } catch (error) {
    return printed(`this output cannot be drawn: ${(error as Error).message}`, "Error");
  }
}

/** The richest kind that can be shown without trusting it. */
function renderBundle(data: MimeBundle): Html {
  const text = (kind: string): string | undefined =>
    typeof data[kind] === "string" ? data[kind] : undefined;
  const svg = text("image/svg+xml");
  if (svg !== undefined) return picture("image/svg+xml", Buffer.from(svg, "utf8").toString("base64"), data);
  const bitmap = ["image/png", "image/jpeg"].find((kind) => text(kind) !== undefined);
  if (bitmap) return picture(bitmap, text(bitmap)?.replace(/\s/g, "") ?? "", data);
  const markup = text("text/html");
  if (markup !== undefined) return boxed(markup);
  const prose = text("text/markdown");
  return prose === undefined
    ? printed(text("text/plain") ?? "", "Printed")
    : html`<div class="cw">${renderMarkdown(prose)}</div>`;
}

function picture(kind: string, base64: string, data: MimeBundle): Html {
  const words = typeof data["text/plain"] === "string" ? data["text/plain"] : "picture shown by the notebook";
  return html`<img class="cw-picture" alt="${words}" src="data:${kind};base64,${base64}">`;
}

/** Markup of unknown origin: no scripts, no links out, its own document. */
function boxed(markup: string): Html {
  return html`<iframe class="cw-boxed" sandbox title="output of a cell" srcdoc="${markup}"></iframe>`;
}

function printed(text: string, label: string): Html {
  const plain = stripVTControlCharacters(text).trimEnd();
  if (plain === "") return html``;
  return html`<div class="cw-printed"><p class="cw-printed-label">${label}</p><pre tabindex="0">${plain}</pre></div>`;
}

/** What to mind, as HTML. */
import { type Html, html } from "./html.js";
import { tieUnits } from "./text.js";
import type { CautionsView } from "./view.js";

/** Cautions in a ruled box; nothing where there are none. */
export function renderCautions({ items }: Pick<CautionsView, "items">): Html {
  if (items.length === 0) return html``;
  const points = items.map((item) => html`<li>${tieUnits(item)}</li>`);
  return html`<div class="cw-cautions" role="note"><p class="cw-label">Mind this</p><ul>${points}</ul></div>`;
}

/** The rack as a form: sizes and prices to change, and the cutting plan that comes of them. */
import { type Html, html, trusted } from "../../page/html.js";
import type { RackTable, RackView } from "../rack.js";

/** The rack, and the cutting plan below it. */
export function rackBox({ tables, plan }: RackView, isStale: boolean): Html {
  return html`<p>Put in the sizes and prices of the sheets that you have. The sheets, the bill and every answer follow.</p>${tables.map(tableBox)}<div class="cw ${isStale && "lv-stale"}">${trusted(plan)}</div>`;
}

function tableBox({ file, columns, rows }: RackTable): Html {
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="${file}"><table class="lv-rack"><caption>${file}</caption><thead><tr><th scope="col">name</th>${columns.map(
    (column) => html`<th scope="col">${column}</th>`,
  )}</tr></thead><tbody>${rows.map(
    ({ name, cells }) =>
      html`<tr><th scope="row">${name}</th>${cells.map(
        (cell, i) =>
          html`<td><input type="text" size="7" aria-label="${columns[i] ?? ""} of ${name}" data-file="${file}" data-row="${name}" data-column="${columns[i] ?? ""}" value="${cell}"></td>`,
      )}</tr>`,
  )}</tbody></table></div>`;
}

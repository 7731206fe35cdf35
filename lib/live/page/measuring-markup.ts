/** The measuring form as markup: the fields of a new row, the rows that stand in the table, what comes of them. */
import { type Html, html, trusted } from "../../page/html.js";
import type { Problem } from "../../problem.js";
import type { MeasuringColumn, MeasuringTable } from "../measuring/view.js";

/** Fields of a new row; what is likely the same as in the last row stands there already. */
export function newRowBox({ columns, rows, file }: MeasuringTable): Html {
  const last = rows.at(-1)?.cells ?? [];
  return html`${columns.map((column, i) => fieldBox(column, column.again ? (last[i] ?? "") : "", i))}<p><button type="submit">Add this row to ${file}</button></p>`;
}

function fieldBox(
  { name, header, doc, choices, optional, again }: MeasuringColumn,
  value: string,
  i: number,
): Html {
  const id = `measuring-${i}`;
  const fresh = !again && trusted(" data-fresh");
  const needed = !optional && trusted(" required");
  const words = choices && (choices.includes(value) || value === "" ? choices : [value, ...choices]);
  const field = words
    ? html`<select id="${id}" data-column="${name}"${fresh}>${optional && html`<option value=""></option>`}${words.map(
        (one) => html`<option value="${one}"${one === value && trusted(" selected")}>${one}</option>`,
      )}</select>`
    : html`<input type="text" id="${id}" data-column="${name}" value="${value}" autocomplete="off"${fresh}${needed}>`;
  return html`<div class="lv-field"><label for="${id}">${header}</label>${field}<small>${doc}${optional && " May be left out."}</small></div>`;
}

/** What comes of the table, what is wrong in it, and its rows, the newest first, each with how far it is off. */
export function rowsBox({ columns, rows, told, file }: MeasuringTable, problems: readonly Problem[]): Html {
  return html`<div role="status">${problems.map(
    ({ row, column, value, expected }) =>
      html`<p class="lv-problem">Row ${row ?? ""}, ${column ?? ""}: ${value !== undefined && `found "${value}", `}expected ${expected}.</p>`,
  )}<ul class="lv-told">${told.map((one) => html`<li>${one}</li>`)}</ul></div>${
    rows.length > 0 &&
    html`<div class="cw-scroll" tabindex="0" role="group" aria-label="Rows of ${file}"><table class="lv-rack"><caption>${file}</caption><thead><tr><th scope="col">row</th>${columns.map(
      ({ header }) => html`<th scope="col">${header}</th>`,
    )}<th scope="col">how far off</th><th scope="col"><span class="lv-hidden">take away</span></th></tr></thead><tbody>${rows
      .toReversed()
      .map(
        ({ line, cells, off, odd }) =>
          html`<tr class="${odd && "lv-odd"}"><th scope="row">${line}</th>${columns.map(
            ({ name, header }, i) =>
              html`<td><input type="text" size="7" id="measured-${line}-${i}" aria-label="${header} of row ${line}" data-line="${line}" data-cell="${name}" value="${cells[i] ?? ""}"></td>`,
          )}<td>${odd && html`<b>Odd: </b>`}${off}</td><td><button type="button" data-away="${line}" aria-label="Take away row ${line}">Take away</button></td></tr>`,
      )}</tbody></table></div>`
  }`;
}

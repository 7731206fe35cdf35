/** The part of the page in which what was measured is typed row by row, with what comes of it. */
import { html } from "../../page/html.js";
import type { Problem } from "../../problem.js";
import type { MeasuringTable, MeasuringView } from "../measuring/view.js";
import type { Asked } from "../messages.js";
import { newRowBox, rowsBox } from "./measuring-markup.js";
import { isTypedIn } from "./typed.js";

/** A change as a worker takes it. */
export type Changes = Extract<Asked, { kind: "change" }>["changes"];

/** What the form asks of the page. */
export interface MeasuringHost {
  /** Asks for the tables as they are now. */
  ask(): void;
  /** Changes the files. */
  change(changes: Changes): void;
  /** What is wrong with the files. */
  problems(): readonly Problem[];
}

/** The form. */
export class Measuring {
  readonly #part: HTMLDetailsElement;
  readonly #place: HTMLElement;
  readonly #host: MeasuringHost;
  #view: MeasuringView | undefined;
  #file = "";
  #drawn = "";
  #rows = "";
  #wasAdded = false;
  /** Whether rows wait to be drawn until a cell is left; drawn without need, they would move away below the pointer. */
  #waits = false;

  constructor(part: HTMLDetailsElement, place: HTMLElement, host: MeasuringHost) {
    this.#part = part;
    this.#place = place;
    this.#host = host;
    place.innerHTML = String(
      html`<p>Type one row after another. Each is written into its table at once, and every answer follows.</p><p class="lv-row"><label for="measuring-table">What you measure</label> <select id="measuring-table"></select></p><form id="measuring-new"></form><div id="measuring-rows"></div>`,
    );
    part.addEventListener("toggle", () => this.changed());
    place.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#add();
    });
    place.addEventListener("change", ({ target }) => {
      if (target instanceof HTMLSelectElement && target.id === "measuring-table") this.#choose(target.value);
      else if (target instanceof HTMLInputElement && target.dataset.line !== undefined) this.#set(target);
    });
    place.addEventListener("click", ({ target }) => {
      if (!(target instanceof HTMLElement) || target.dataset.away === undefined) return;
      host.change([{ kind: "remove", at: { file: this.#file, row: Number(target.dataset.away) } }]);
    });
    place.addEventListener("focusout", () => setTimeout(() => this.#waits && this.#drawRows(), 0));
  }

  /** The files were read anew. */
  changed(): void {
    if (this.#part.open) this.#host.ask();
  }

  /** Takes the tables as they are now. */
  heard(view: MeasuringView): void {
    this.#view = view;
    const select = this.#find<HTMLSelectElement>("#measuring-table");
    if (select.options.length === 0) {
      for (const { file, title } of view.tables) select.add(new Option(title, file));
      this.#file = select.value;
    }
    this.#draw();
  }

  #choose(file: string): void {
    this.#file = file;
    this.#draw();
  }

  #table(): MeasuringTable | undefined {
    return this.#view?.tables.find(({ file }) => file === this.#file);
  }

  /** The fields of a new row stay as they are while its columns do, but after a row was added. */
  #draw(): void {
    const table = this.#table();
    if (!table) return;
    const columns = JSON.stringify([table.file, table.columns]);
    if (columns !== this.#drawn || this.#wasAdded) {
      const focuses = this.#wasAdded;
      this.#drawn = columns;
      this.#wasAdded = false;
      const form = this.#find("#measuring-new");
      form.innerHTML = String(newRowBox(table));
      if (focuses) form.querySelector<HTMLElement>("[data-fresh]")?.focus();
    }
    this.#drawRows();
  }

  /** Waits while a cell is typed in. */
  #drawRows(): void {
    const table = this.#table();
    const place = this.#find("#measuring-rows");
    this.#waits = isTypedIn(place);
    if (!table || this.#waits) return;
    const problems = this.#host.problems().filter(({ file }) => file === table.file);
    const markup = String(rowsBox(table, problems));
    if (markup === this.#rows) return;
    this.#rows = markup;
    const field = document.activeElement;
    const entered = field instanceof HTMLElement && place.contains(field) ? field.id : "";
    place.innerHTML = markup;
    if (entered !== "") document.getElementById(entered)?.focus();
  }

  #add(): void {
    const table = this.#table();
    if (!table) return;
    const fields = [...this.#place.querySelectorAll<HTMLInputElement | HTMLSelectElement>("[data-column]")];
    const what = Object.fromEntries(fields.map(({ dataset, value }) => [dataset.column ?? "", value.trim()]));
    const { file, begun } = table;
    const first: Changes =
      begun === undefined ? [] : [{ kind: "edits", edits: [{ file, at: 0, old: "", now: begun }] }];
    this.#wasAdded = true;
    this.#host.change([...first, { kind: "add", at: { file }, what }]);
  }

  #set(field: HTMLInputElement): void {
    const { line, cell = "" } = field.dataset;
    field.defaultValue = field.value;
    const at = { file: this.#file, row: Number(line), column: cell };
    this.#host.change([{ kind: "set", at, to: field.value.trim() }]);
  }

  #find<Kind extends HTMLElement = HTMLElement>(selector: string): Kind {
    const found = this.#place.querySelector<Kind>(selector);
    if (!found) throw new Error(`measuring: no part "${selector}"`);
    return found;
  }
}

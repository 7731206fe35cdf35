/** Every formula of the library: equation, symbols, where it holds, where it comes from. */
import { type AnyFormula, resultSymbols } from "../formula.js";
import { displayEquation, type Html, html, inlineSymbol } from "../page/index.js";
import { showCitation } from "../source.js";
import { counted } from "./counted.js";

/** What a formula declares. */
export type FormulaDeclaration = AnyFormula["declaration"];

/** The formulas, grouped by the first word of their ids. */
export function formulaPage(declarations: readonly FormulaDeclaration[]): Html {
  const sorted = [...declarations].sort((a, b) => a.id.localeCompare(b.id, "en"));
  const topics = [...new Set(sorted.map(topicOf))];
  return html`<h1>Formulas</h1><p>${counted(sorted.length, "formula")} behind the worked lines of this book. Each says where it holds and where it comes from.</p>${topics.map(
    (topic) => html`<h2>${topic}</h2>${sorted.filter((one) => topicOf(one) === topic).map(formulaEntry)}`,
  )}`;
}

function topicOf({ id }: FormulaDeclaration): string {
  const word = id.split(".")[0] ?? id;
  return word.charAt(0).toUpperCase() + word.slice(1);
}

function formulaEntry(declaration: FormulaDeclaration): Html {
  const { id, title, equation, validity, source } = declaration;
  return html`<article class="cw cw-formula" id="formula-${id}"><h3>${title}</h3><p class="cw-id">${id}</p>
${displayEquation(equation)}${symbolTable(declaration)}
<p class="cw-small"><b>Holds for:</b> ${validity}</p><p class="cw-small"><b>From:</b> ${source.map(showCitation).join("; ")}</p></article>`;
}

function symbolTable(declaration: FormulaDeclaration): Html {
  const inputs = Object.values(declaration.inputs) as {
    symbol: string;
    meaning: string;
    kind: { name: string };
  }[];
  const row = ({ symbol, meaning, kind }: (typeof inputs)[number], isResult: boolean): Html =>
    html`<tr${isResult && html` class="cw-result"`}><td>${inlineSymbol(symbol)}</td><td>${meaning}</td><td>${kind.name}</td></tr>`;
  return html`<details class="cw-how"><summary>Symbols<span class="cw-hidden"> of ${declaration.title}</span></summary><div class="cw-scroll" tabindex="0" role="group" aria-label="symbols of ${declaration.title}"><table class="cw-table cw-symbols">
<thead><tr><th scope="col">Symbol</th><th scope="col">Meaning</th><th scope="col">Kind</th></tr></thead>
<tbody>${inputs.map((symbol) => row(symbol, false))}${resultSymbols(declaration).map(([, symbol]) => row(symbol, true))}</tbody></table></div></details>`;
}

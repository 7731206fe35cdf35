/** The script that shows a page in the other system of units. */
import { chartInUnits } from "./chart-units.js";
import { inUnits, unitChanges } from "./other-units.js";

/** Switches a page between the two systems: texts and charts change in place; the first choice is the case's own. */
export const unitsScript: string = `(() => {
  const inUnits = ${inUnits.toString()};
  const chartInUnits = ${chartInUnits.toString()};
  const changes = ${JSON.stringify(unitChanges)};
  const body = document.querySelector("main");
  const own = body?.dataset.units;
  if (!own) return;
  const keep = JSON.parse(body.dataset.names || "[]");
  const other = own === "inch" ? "metric" : "inch";
  const texts = new Map();
  const convert = (text) => inUnits(text, changes[other], keep);
  const collect = () => {
    const walker = document.createTreeWalker(body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode())
      if (!texts.has(node) && /\\d/.test(node.data) && !node.parentElement.closest("script,style,pre,code,math,.cw-chart")) texts.set(node, node.data);
  };
  globalThis.casewrightChart = (spec) => (body.dataset.shown === other ? chartInUnits(spec, changes[other], convert) : spec);
  const show = (system) => {
    body.dataset.shown = system;
    if (system === other) collect();
    for (const [node, text] of texts) node.data = system === other ? convert(text) : text;
    for (const button of document.querySelectorAll(".cw-units button")) button.setAttribute("aria-pressed", String(button.value === system));
    globalThis.casewrightRedraw?.();
    try { localStorage.setItem("casewright-units", system); } catch {}
  };
  const bar = document.createElement("div");
  bar.className = "cw-units";
  bar.setAttribute("role", "group");
  bar.setAttribute("aria-label", "Units");
  for (const system of ["inch", "metric"]) {
    const button = document.createElement("button");
    button.type = "button";
    button.value = system;
    button.textContent = system;
    button.setAttribute("aria-pressed", String(system === own));
    button.addEventListener("click", () => show(system));
    bar.append(button);
  }
  document.querySelector(".cw-head > div").append(bar);
  let wanted = own;
  try { wanted = localStorage.getItem("casewright-units") || own; } catch {}
  if (wanted === other) show(other);
})();`;

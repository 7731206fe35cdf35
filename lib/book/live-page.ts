/**
 * Pages that follow the builder while they are served: the server tells them of every new book and of every
 * mistake, and they change where they stand. On disk a page knows nothing of this.
 */
import { drawChartsScript } from "../page/index.js";

/** What open pages are told. */
export interface LiveState {
  /** How many books have been built so far. */
  readonly built: number;
  /** Why the last change gave no book; absent when it gave one. */
  readonly trouble?: string | undefined;
}

/** Where a page listens, where its script stands, and where the page to change the case and its files are. */
export const livePaths = {
  events: "/changes",
  script: "/assets/live.js",
  page: "/live",
  pageFile: "/live.html",
  files: "/live/files",
} as const;

/** A page with the script in it, and leave to listen to its own server. */
export function livePage(page: string, { built }: LiveState): string {
  return page
    .replace("; script-src", "; connect-src &#39;self&#39;; script-src")
    .replace("<script ", `<script defer src="assets/live.js" data-built="${built}"></script>\n<script `);
}

/** The event that tells of a saved file, before there is a book of it. */
export const savedEvent = "event: saved\ndata: {}\n\n";

/** One event on the way to a page. */
export function liveEvent(state: LiveState): string {
  return `data: ${JSON.stringify(state)}\n\n`;
}

/**
 * Listens and changes the page. It runs before the charts are drawn, so that it knows each piece as it was
 * sent, and changes only pieces that differ: an open working, a slider and the place where one reads stay.
 */
export const liveScript: string = `"use strict";
(() => {
  const main = document.querySelector("main");
  const textsOf = (parent) => [...parent.children].map((piece) => piece.outerHTML);
  let built = Number(document.currentScript.dataset.built);
  let texts = textsOf(main);
  const drawCharts = () => {
    ${drawChartsScript}
  };
  const tell = (trouble) => {
    document.documentElement.classList.toggle("cw-stale", trouble !== undefined);
    let place = document.querySelector(".cw-trouble");
    if (trouble === undefined) return place && place.remove();
    if (!place) {
      place = document.createElement("div");
      place.className = "cw-trouble";
      place.setAttribute("role", "alert");
      place.append(document.createElement("p"), document.createElement("pre"));
      place.firstChild.textContent = "Your last change cannot be used. Below are the answers from before it.";
      place.lastChild.tabIndex = 0;
      document.body.prepend(place);
    }
    place.lastChild.textContent = trouble;
  };
  const sources = (page) => [...page.querySelectorAll("script[src]")].map((script) => script.getAttribute("src"));
  const openAgain = (before, after) => {
    const parts = before.querySelectorAll("details");
    after.querySelectorAll("details").forEach((part, i) => { part.open = Boolean(parts[i] && parts[i].open); });
  };
  const change = (fresh) => {
    const before = [...main.children];
    const reading = before.findIndex((piece) => piece.getBoundingClientRect().bottom > 0);
    const top = reading < 0 ? 0 : before[reading].getBoundingClientRect().top;
    const freshTexts = textsOf(fresh);
    const after = [...fresh.children].map((piece, i) => {
      if (before[i] && texts[i] === freshTexts[i]) return before[i];
      if (before[i]) openAgain(before[i], piece);
      return piece;
    });
    after.forEach((piece, i) => {
      if (piece === before[i]) return;
      if (before[i]) before[i].replaceWith(piece);
      else main.append(piece);
    });
    for (const piece of before.slice(after.length)) piece.remove();
    texts = freshTexts;
    if (after[reading]) scrollBy({ top: after[reading].getBoundingClientRect().top - top, behavior: "instant" });
    drawCharts();
  };
  const refresh = async () => {
    const answer = await fetch(location.pathname, { cache: "no-store" });
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const here = sources(document);
    if (sources(page).some((source) => !here.includes(source))) return location.reload();
    document.title = page.title;
    for (const part of ["header", "nav.cw-side"]) {
      document.querySelector(part).replaceChildren(...page.querySelector(part).childNodes);
    }
    change(page.querySelector("main"));
  };
  new EventSource("changes").onmessage = async ({ data }) => {
    const state = JSON.parse(data);
    tell(state.trouble);
    if (state.built === built) return;
    built = state.built;
    await refresh();
    document.documentElement.dataset.built = built;
  };
})();
`;

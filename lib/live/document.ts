/** The live page as one file: its frame, its style, its scripts and the job's files inside as data. */
import type { Texts } from "../design/index.js";
import { html, pageDocument, pageStyles, scriptJson, trusted } from "../page/index.js";
import { benchStyles } from "./bench-styles.js";
import type { AnswerView, Totals } from "./messages.js";
import { liveStyles } from "./styles.js";

/** What a live page is made of. */
export interface LiveParts {
  /** The job's name, as its folder is called. */
  readonly job: string;
  /** The case's name. */
  readonly title: string;
  /** The job's files, by name. */
  readonly texts: Texts;
  /** The library as a classic script for a worker. */
  readonly workerScript: string;
  /** The page's own script. */
  readonly pageScript: string;
  /** SHA-256 of a text in base 64, for the policy. */
  readonly digest: (text: string) => string;
  /** Where to save and with what leave; absent for a page on disk, which asks nothing of anybody. */
  readonly saves?: LiveSaves;
  /** What the case answered where the page was written; absent for a page that is not passed on. */
  readonly passedOn?: PassedOn;
  /** Where the book of the job stands; absent for a page by itself. */
  readonly book?: string;
}

/** What a case answered where its page was written. */
export interface PassedOn {
  /** Without their working. */
  readonly answers: readonly AnswerView[];
  /** Figures of the whole case. */
  readonly totals: Totals;
}

/** Where a served page reads and saves the files of its job. */
export interface LiveSaves {
  /** The address of the files. */
  readonly files: string;
  /** The address that tells when a file was saved. */
  readonly events: string;
  /** Sent along with every request, which no other page can. */
  readonly token: string;
}

/** What stands in the page as data for its script. */
export interface LiveData extends Pick<LiveParts, "job" | "texts" | "saves" | "passedOn"> {
  /** The library as a classic script. */
  readonly worker: string;
}

/** The page as text. It runs its own two scripts and asks nothing of any network, unless it may save to its server. */
export function liveDocument(parts: LiveParts): string {
  const { job, title, texts, workerScript, pageScript, digest, saves, book, passedOn } = parts;
  const script = pageScript.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
  const style = pageStyles + liveStyles + benchStyles;
  const policy = [
    "default-src 'none'",
    `script-src 'wasm-unsafe-eval' blob: 'sha256-${digest(script)}'`,
    "worker-src blob:",
    `style-src 'sha256-${digest(style)}'`,
    "img-src data: blob:",
    "frame-src blob:",
    `connect-src ${saves ? "'self'" : "'none'"}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  const data: LiveData = {
    job,
    texts,
    worker: workerScript,
    ...(saves ? { saves } : {}),
    ...(passedOn ? { passedOn } : {}),
  };
  return pageDocument({
    title: `${title}: change it`,
    policy,
    head: html`<style>${trusted(style)}</style>`,
    body: html`${frame(title, book)}
<script type="application/json" id="live-data">${scriptJson(data)}</script>
<script>${trusted(script)}</script>`,
  });
}

function frame(title: string, book: string | undefined): ReturnType<typeof html> {
  return html`<header class="lv-head">
<div><p class="lv-over">A case to change${book !== undefined && html` - <a href="${book}">back to its book</a>`}</p><h1 id="title">${title}</h1></div>
<p class="lv-tools" id="tools"><button type="button" id="undo" disabled>Undo</button> <button type="button" id="redo" disabled>Redo</button> <button type="button" id="papers">Papers</button> <a class="lv-button" href="#bench">At the bench</a></p>
<p id="state" class="lv-state" role="status">Reading the files.</p>
</header>
<div id="notice" role="alert"></div>
<main class="lv-main">
<section class="lv-left" aria-label="The case">
<div id="picture" class="lv-picture" role="group" tabindex="0" aria-label="The case from a corner; arrow keys turn it"></div>
<p class="lv-row" id="sights"></p>
<p class="lv-row"><label><input type="checkbox" id="inside"> Show what rides inside</label></p>
<div id="hand"></div>
</section>
<section class="lv-right cw" aria-label="What it comes to">
<div id="verdict"></div>
<div id="changed"></div>
<div id="answers"></div>
</section>
</main>
<section class="lv-wide" aria-label="Change it">
<details id="fields"><summary>Every field, with what it means</summary><div id="form"></div></details>
<details id="rack-part"><summary>Other sheets on the rack, and how they are cut</summary><div id="rack"></div></details>
<details id="measuring-part"><summary>What you measured, row by row</summary><div id="measuring"></div></details>
<details id="texts"><summary>The files as text</summary><p class="lv-row"><label for="file">File</label> <select id="file"></select></p>
<textarea id="text" spellcheck="false" rows="22" aria-label="Text of the file"></textarea><div id="text-problems"></div></details>
<details id="keep"><summary>Keep it, take it along, open another</summary><div id="keeping"></div></details>
</section>
<main id="bench" class="lv-bench cw" aria-label="At the bench" hidden><p id="bench-said" class="lv-state" role="status"></p><div id="bench-parts"></div></main>`;
}

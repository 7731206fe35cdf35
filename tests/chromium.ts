/** The system's Chromium for tests of pages. Where it is missing a build machine fails, any other skips aloud. */
import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const program = process.env.CASEWRIGHT_CHROMIUM ?? "/usr/bin/chromium";

/** Whether tests of pages are to be skipped. */
export const noChromium: boolean = !existsSync(program) && process.env.CI !== "true";

if (noChromium) {
  console.warn(`SKIPPED: no Chromium at ${program}, so no page is tested; set CASEWRIGHT_CHROMIUM to one`);
}

/** Starts it without a window. */
export function startChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: program,
    args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
  });
}

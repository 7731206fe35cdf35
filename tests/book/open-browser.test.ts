import { expect, test } from "vitest";
import { browserOpener } from "../../lib/book/open-browser.js";

const url = "http://127.0.0.1:8000/";

test.each([
  ["linux", { DISPLAY: ":0" }, "xdg-open"],
  ["linux", { WAYLAND_DISPLAY: "wayland-0" }, "xdg-open"],
  ["linux", {}, undefined],
  ["darwin", {}, "open"],
  ["win32", {}, "rundll32"],
  ["darwin", { CI: "true" }, undefined],
  ["linux", { DISPLAY: ":0", CASEWRIGHT_NO_BROWSER: "1" }, undefined],
] as const)("%s with %j opens by %s", (platform, env, program) => {
  const opener = browserOpener(url, platform, env);
  expect(opener?.program).toBe(program);
  if (opener) expect(opener.args.at(-1)).toBe(url);
});

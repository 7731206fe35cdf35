import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { projectFolder } from "../../lib/book/index.js";
import { improve } from "../../lib/command/improve.js";
import { otherJob } from "../other-jobs.js";

let folder = "";
beforeEach(async () => {
  folder = await otherJob("bare-box");
  vi.spyOn(console, "log").mockImplementation(() => {});
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  vi.restoreAllMocks();
});

const printed = (to: "log" | "error"): string => vi.mocked(console[to]).mock.calls.flat().join("\n");

/** The box, pushed more gently; a push of 100 N tips it whatever is changed. */
function pushedGently(): void {
  const file = join(folder, "case.yaml");
  writeFileSync(file, readFileSync(file, "utf8").replace("push: 100 N", "push: 40 N"));
}

test("improve writes a case that a fresh process finds nothing to mend in", async () => {
  pushedGently();
  const out = join(dirname(folder), "mended");
  expect(await improve([folder, "--apply", "1", "--out", out, "--seconds", "240"])).toBe(0);
  // its 20 last rivets take no washers: 22 of 0.02 EUR less, with spares
  expect(printed("log")).toMatch(/^1 +1 +1 +102\.20 EUR \(the same\) +12\.95 kg \(the same\)/m);
  expect(printed("log")).toMatch(/demands\.top bears: nothing → sits/);
  expect(printed("log")).toMatch(/^nothing of it fails, as a process of its own reviewed it$/m);
  const main = join(projectFolder(), "lib/dist/command/main.js");
  const again = spawnSync(process.execPath, [main, "improve", out], { encoding: "utf8" });
  expect(again.status).toBe(0);
  expect(again.stdout).toMatch(/nothing fails, so nothing has to change/);
}, 900_000);

test("improve leaves with 2 and names what nothing helps where no design holds", async () => {
  expect(await improve([folder, "--seconds", "240"])).toBe(2);
  expect(printed("log")).toMatch(/Nothing known helps here.*\n {2}travel\.push: /);
}, 900_000);

test("improve --wishes tells what whole packs and spares cost", async () => {
  expect(await improve([folder, "--wishes", "--seconds", "120"])).toBe(0);
  expect(printed("log")).toMatch(/^packs and containers are bought whole +only what is used +\d+\.\d\d EUR/m);
  expect(printed("log")).toMatch(/^Without 10 other wishes nothing is saved\./m);
}, 300_000);

test("improve refuses what it does not understand, with what it takes", async () => {
  const said = async (...args: string[]): Promise<string> => {
    vi.mocked(console.error).mockClear();
    expect(await improve(args)).toBe(1);
    return printed("error");
  };
  expect(await said("--seconds", "soon")).toMatch(/^--seconds: found "soon", expected seconds.*\nusage: /);
  expect(await said("--apply", "8")).toMatch(/^--apply: found "8", expected the number of a design, 1 to 7/);
  expect(await said("--out", "x")).toMatch(/^--out: expected --apply beside it/);
  expect(await said("one", "two")).toMatch(/^expected one job, got one, two/);
  expect(await said("no-such-job")).toMatch(/no-such-job/);
  expect(await said(folder, "--apply", "1", "--out", folder)).toMatch(/is there already/);
  expect(existsSync(join(folder, "case.yaml"))).toBe(true);
});

test("improve --verify tells what fails of a case as its files stand", async () => {
  pushedGently();
  expect(await improve([folder, "--verify"])).toBe(2);
  expect(printed("log")).toBe("strength.person.box.top: Does box.top bear somebody standing on it?");
  const file = join(folder, "case.yaml");
  const sat = readFileSync(file, "utf8").replace("push: 40 N", "push: 40 N, top bears: sits");
  writeFileSync(file, sat);
  vi.mocked(console.log).mockClear();
  expect(await improve([folder, "--verify"])).toBe(0);
  expect(printed("log")).toBe("nothing fails");
}, 300_000);

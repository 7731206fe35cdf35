/** The rough sag of a panel with an opening in the hand: near the one that a review gives for the opening there. */
import { expect, test } from "vitest";
import { openJob } from "../../lib/job/index.js";
import { heldSag } from "../../lib/live/index.js";
import { panelSag, sagCaseOf } from "../../lib/model/index.js";
import { Length } from "../../lib/quantity/index.js";

const job = openJob("soil-lab");
const panel = "upper.front";
const name = "display window";

/** The length after "about". */
function aboutOf(words: string): number {
  return Length.read(/about (.*?), worked out roughly; .* is allowed\.$/.exec(words)?.[1] ?? "");
}

function sagOf({ parts, ...design }: typeof job): number {
  const part = parts.panels.find(({ id }) => id === panel);
  if (!part) throw new Error(`no ${panel}`);
  const input = { ...design, parts };
  return panelSag(sagCaseOf(part, job.case.demands.sidePressure, "hinged", input)).sag;
}

test("where the opening is, and two inches from there, it is within a tenth of the sag by the fine mesh", () => {
  const here = heldSag({ panel, name, right: 0, up: 0 }, job);
  expect(Math.abs(aboutOf(here) / sagOf(job) - 1)).toBeLessThan(0.1);
  const moved = job.with({ kind: "set", at: `sections.upper.panels.front.openings.${name}.across`, to: "1" });
  const there = heldSag({ panel, name, right: -2 * 0.0254, up: 0 }, job);
  expect(Math.abs(aboutOf(there) / sagOf(moved) - 1)).toBeLessThan(0.1);
});

test("an opening held off its panel leaves the panel whole; a panel that there is not has nothing to tell", () => {
  const whole = heldSag({ panel, name, right: 9, up: 0 }, job);
  expect(aboutOf(whole)).toBeLessThan(sagOf(job));
  expect(heldSag({ panel: "upper.lid", name, right: 0, up: 0 }, job)).toBe("");
});

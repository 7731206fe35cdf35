/** Made-up cases made to hold: a few here, 200 with "npm run improve -- --cases 200". */
import { expect, test } from "vitest";
import { triedCase } from "../../lib/command/improve-cases.js";

test.each([5, 6])(
  "what is proposed for made-up case %i holds afresh, and what is locked stays",
  async (seed) => {
    const { failing, locked, faults } = await triedCase({ seed, seconds: 10 });
    expect(failing).toBeGreaterThan(0);
    // without it nothing would have been tried
    expect(locked).toBeDefined();
    expect(faults).toEqual([]);
  },
  300_000,
);

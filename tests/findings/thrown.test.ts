/** What braking throws at sides and doors, and sections that fall on corners and casters. */
import { describe, expect, test } from "vitest";
import { droppedOnCasters, droppedOnCorners } from "../../lib/findings/joints/dropped.js";
import { thrownAtLatch, thrownThings } from "../../lib/findings/strength/thrown.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { Force, Length, Mass } from "../../lib/quantity/index.js";

const draft = openJob("soil-lab-draft");
const built = openJob("soil-lab");

/** The draft with nothing in it but the crate of the lower section, slid at a pull, or of another mass. */
function withCrate(change: { readonly mass?: number; readonly slidesAt?: number | undefined }): Job {
  const contents = draft.parts.contents.flatMap((part) => {
    if (part.content.name !== "storage bay crate") return [];
    const { slidesAt: _, ...needs } = part.content.needs;
    const slides = change.slidesAt === undefined ? {} : { slidesAt: Force.of(change.slidesAt, "lbf") };
    const mass = change.mass === undefined ? part.content.mass : Mass.of(change.mass, "lb");
    return { ...part, content: { ...part.content, mass, needs: { ...needs, ...slides } } };
  });
  return { ...draft, parts: { ...draft.parts, contents } };
}

const lower = (input: Job) => thrownThings(input).find(({ subject }) => subject === "lower");
const latch = (input: Job) => thrownAtLatch(input)[0];

describe("what nothing holds", () => {
  test("that slides when the van brakes is stopped by no thin side, nor by the latch of its door", () => {
    const slid = withCrate({ slidesAt: 7 });
    expect(lower(slid)?.verdict).toBe("fails");
    expect(lower(slid)?.answer).toMatch(/The storage bay crate slides/);
    expect(latch(slid)?.verdict).toBe("fails");
    expect(latch(slid)?.capacity?.meaning).toBe("it stands");
  });

  test("of which nobody knows whether it slides leaves it open, with the caution told", () => {
    const unknown = lower(withCrate({ slidesAt: undefined }));
    expect(unknown?.verdict).toBe("unknown");
    expect(unknown?.missing?.measure).toMatch(/^what holds the storage bay crate against sliding/);
    expect(unknown?.cautions).toEqual(lower(withCrate({ slidesAt: 7 }))?.cautions);
    expect(latch(withCrate({ slidesAt: undefined }))?.verdict).toBe("unknown");
  });

  test("of whose straps nobody knows what they stand leaves it open, and asks for their rating", () => {
    const contents = withCrate({ slidesAt: undefined }).parts.contents.map((part) => ({
      ...part,
      content: { ...part.content, held: { by: "strap" as const, straps: 2 } },
    }));
    const strapped = { ...draft, parts: { ...draft.parts, contents } };
    for (const found of [lower(strapped), latch(strapped)]) {
      expect(found?.verdict).toBe("unknown");
      expect(found?.missing?.measure).toBe("what one strap of the storage bay crate and its anchors stand");
    }
  });

  test("is told of the latch with the share that it bears before the blow", () => {
    expect(latch(withCrate({ slidesAt: 7 }))?.answer).toMatch(
      /^A paddle latch bears \S+ lbf of the blow, and stands \S+ lbf\. /,
    );
  });

  test("is not asked about where it is known to stay: 18 lb pushed with 0.8 of them", () => {
    expect(lower(withCrate({ slidesAt: 14.5 }))).toBeUndefined();
    expect(lower(withCrate({ slidesAt: 14.3 }))).toBeDefined();
  });

  test("fails for what slides, though something else may stay", () => {
    const crate = withCrate({ mass: 17, slidesAt: 0.1 }).parts.contents;
    const others = draft.parts.contents.filter(
      ({ content }) => content.name === "hand tools and cleaning things",
    );
    const both = { ...draft, parts: { ...draft.parts, contents: [...others, ...crate] } };
    expect(lower(both)?.verdict).toBe("fails");
    expect(lower({ ...draft, parts: { ...draft.parts, contents: others } })?.verdict).toBe("unknown");
  });

  test("strikes harder the heavier it is", () => {
    const ratios = [2, 9, 18].map((mass) => lower(withCrate({ mass, slidesAt: 0.1 }))!.ratio!);
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
  });
});

test("a case whose things are all strapped, screwed or lidded is asked nothing", () => {
  expect(thrownThings(built)).toEqual([]);
  expect(thrownAtLatch(built)).toEqual([]);
});

describe("a section that falls", () => {
  const corner = (input: Job) => droppedOnCorners[0]!(input).find(({ id }) => id.includes(".lower."))!;
  const caster = (input: Job) => droppedOnCasters(input)[0]!;
  const handled = (input: Job, handling: "careful" | "usual" | "rough" | undefined): Job => {
    const { handling: _, ...journey } = input.case.journey;
    return { ...input, case: { ...input.case, journey: { ...journey, ...(handling ? { handling } : {}) } } };
  };

  test("on its casters asks for the rating that the impact test of casters gives", () => {
    const found = caster(draft);
    expect(found.verdict).toBe("fails");
    // 164.6 lb from 7 in: half of it on each of two, over 50 mm.
    expect(found.answer).toMatch(/Let fall from 7 in, lower asks for casters rated 288 lbf/);
    expect(caster(built).verdict).toBe("holds");
  });

  test("asks more of corner and casters the rougher it is handled", () => {
    for (const ask of [corner, caster]) {
      const ratios = (["careful", "usual", "rough"] as const).map((one) => ask(handled(draft, one)).ratio!);
      expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
    }
  });

  test("is open until somebody says how it is handled, and until casters have a rating", () => {
    expect(corner(handled(draft, undefined)).missing?.measure).toBe("how roughly it is handled");
    const hardware = draft.parts.hardware.map(({ stock: { rated: _, ...stock }, ...part }) => ({
      ...part,
      stock,
    }));
    const open = caster({ ...draft, parts: { ...draft.parts, hardware } });
    expect([open.verdict, open.missing?.measure]).toEqual([
      "unknown",
      "the load rating of swivel caster 4 in",
    ]);
    expect(open.cautions).toEqual(caster(draft).cautions);
  });

  test("on one corner strikes with its weight times one and the fall over the stop", () => {
    const found = corner(draft);
    const gravities = 1 + Length.of(7, "in") / 0.025;
    expect(gravities).toBeCloseTo(8.112, 3);
    expect(found.answer).toMatch(/8\.1 times its weight/);
  });
});

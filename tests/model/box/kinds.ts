/** Small jobs of other kinds than the demo: stacked, on casters or the floor, with lids and doors. */
import type { Design } from "../../../lib/design/index.js";
import { designOf, smallJob } from "../../design/small-job.js";

/** A section of a job: sizes of its inside, mm, and lines of case.yaml under `panels`. */
export interface SectionKind {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly panels?: string;
}

/** What a job is made of; sections stand on each other in the order given. */
export interface JobKind {
  readonly sections: Readonly<Record<string, SectionKind>>;
  /** Casters at these places of the lowest section's bottom, mm from its lower left front corner. */
  readonly casters?: readonly (readonly [across: number, up: number])[];
  /** How far a caster's wheel stands from its axis, mm. */
  readonly offset?: number;
  /** Further hardware, as lines of case.yaml. */
  readonly hardware?: string;
  /** As lines of case.yaml. */
  readonly contents?: string;
  /** N */
  readonly push?: number;
  /** Rivets' pitch, mm. */
  readonly pitch?: number;
}

const rows = (offset: number): string => `
caster,caster,400,9,counter,60,60,3,0,0,90,rivet 4,4,2,2,40,40,900,${offset}
foot,foot,20,1,counter,60,60,3,0,0,30,rivet 4,4,2,2,40,40,,
latch,latch,200,9,counter,50,70,2,0,0,0,rivet 4,6,2,3,36,58,600,
keeper,keeper,70,3,counter,50,30,2,0,0,0,rivet 4,4,2,2,36,16,600,
catch,latch,200,9,counter,60,60,2,0,0,0,rivet 4,4,2,2,40,40,600,`;

/** Latches on the left and right of every section but the lowest, keepers on the section below. */
function latches(names: readonly string[], depth: number): string {
  if (names.length < 2) return "";
  const at = (section: string, corners: readonly string[], up: number): string =>
    ["left", "right"]
      .flatMap((face) =>
        corners.map(
          (from) =>
            `\n      - { on: ${section}.${face}, from: ${from}, across: ${Math.round(depth / 4)}, up: ${up} }`,
        ),
      )
      .join("");
  const upper = names.slice(1).map((name) => at(name, ["bottom-left", "bottom-right"], 75));
  const lower = names.slice(0, -1).map((name) => at(name, ["top-left", "top-right"], 70));
  return `\n  latch:\n    item: latch\n    duty: join-sections\n    places:${upper.join("")}\n  keeper:\n    item: keeper\n    duty: join-sections\n    places:${lower.join("")}`;
}

/** The design of a job of a kind. */
export function kindOf({
  sections,
  casters = [],
  offset = 0,
  hardware = "",
  contents,
  push = 50,
  pitch = 100,
}: JobKind): Design {
  const names = Object.keys(sections);
  const [lowest = "", ...others] = names;
  const boxes = Object.entries(sections).map(
    ([name, { width, depth, height, panels }]) =>
      `  ${name}:\n    inside: { width: ${width}, depth: ${depth}, height: ${height} }${panels ? `\n    panels:\n${panels}` : ""}`,
  );
  const wheels = casters.map(
    ([across, up]) => `\n      - { on: ${lowest}.bottom, from: bottom-left, across: ${across}, up: ${up} }`,
  );
  const rolling =
    wheels.length > 0 ? `\n  caster:\n    item: caster\n    duty: roll\n    places:${wheels.join("")}` : "";
  const joined = others.length > 0 ? latches(names, sections[lowest]!.depth) : "";
  const things = `${rolling}${joined}${hardware}`;
  const [head = "", rest = ""] = (smallJob["case.yaml"] ?? "").split(/sections:[\s\S]*?(?=demands:)/);
  const text = `${head.replace("pitch: 100", `pitch: ${pitch}`)}sections:\n${boxes.join("\n")}\nhardware:${things === "" ? " {}" : things}\n${contents ? `contents:\n${contents}\n` : ""}${rest.replace("push: 100 N", `push: ${push} N`)}`;
  const [heading = "", ...items] = (smallJob["hardware.csv"] ?? "").split("\n");
  return designOf({
    ...smallJob,
    "case.yaml": text,
    "hardware.csv": `${heading},offset (mm)\n${items.map((item) => `${item},`).join("\n")}${rows(offset)}`,
    "sheet-stock.csv": (smallJob["sheet-stock.csv"] ?? "").replaceAll("2500,1250", "2500,2500"),
    "facings.csv": (smallJob["facings.csv"] ?? "").replace("2440,1220", "2500,2500"),
  });
}

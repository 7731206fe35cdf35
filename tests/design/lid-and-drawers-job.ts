/** A chest with a lid on two stays in its top and two drawers in its front: a metric job of what moves. */
import { plainTrunk } from "./plain-trunk.js";
import { smallJob } from "./small-job.js";

const [head = "", , , hinge = ""] = (smallJob["hardware.csv"] ?? "").split("\n");

const lid =
  "lid: { rectangle: { width: 800, height: 340 }, from: bottom-left, across: 62, up: 67, leaf: { hinge: top, clearance: 3, stay: { item: lid stay, count: 2, arm: 150, opens to: 95 deg, pulls at: 45 deg } } }";
const bay = (name: string, across: number): string =>
  `${name}: { rectangle: { width: 380, height: 150 }, from: bottom-left, across: ${across}, up: 60 }`;
const drawer = (name: string): string =>
  `  ${name} drawer: { in: chest, opening: front.${name}, slides: slide 350, depth: 380, sheet: ply 12, bottom: ply 6, joint: { fastener: screw, count: 16 }, load: 3 kg }`;

/** The texts of the job, by file name. */
export const lidAndDrawers: Readonly<Record<string, string>> = {
  ...plainTrunk,
  "case.yaml": `${(plainTrunk["case.yaml"] ?? "")
    .replace("Plain trunk", "Chest with a lid and drawers")
    .replace("trunk:", "chest:")
    .replace(
      "height: 500 } }",
      `height: 500 }, panels: { top: { openings: { ${lid} } }, front: { openings: { ${bay("left", 60)}, ${bay("right", 484)} } } } }`,
    )}hardware:
  hinge: { item: hinge, duty: hinge, places: [{ on: chest.top, from: bottom-left, across: 160, up: 405.5, turned: 90 }, { on: chest.top, from: bottom-left, across: 764, up: 405.5, turned: 90 }] }
drawers:
${drawer("left")}
${drawer("right")}
`,
  "sheet-stock.csv": `${plainTrunk["sheet-stock.csv"]}\nply 6,2500,1250,6,540,25,yard,2+2+2,yellow birch`,
  "fasteners.csv": smallJob["fasteners.csv"] ?? "",
  "hardware.csv": `${head},side room (mm),extension (mm)
${hinge.replace("rivet 4", "screw")},,
slide 350,slide,1200,14,counter,350,45,1,0,0,0,screw,12,6,2,300,20,300,13,300
lid stay,stay,0.001,6,counter,200,15,1,0,0,0,screw,2,2,1,150,0,300,,`,
};

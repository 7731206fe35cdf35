/** A small metric job for tests: one box with a little of everything, and a way to spoil its texts. */
import { type Design, readDesign } from "../../lib/design/index.js";
import { type Problem, showProblem } from "../../lib/problem.js";

const caseText = `case: Small box
purpose: tests
units: metric
lengths: mm
currency: EUR
build:
  sheet: ply 10
  facing: { laminate: lam 1, adhesive: glue, oversize: 10 }
  runs through: [top-bottom, front-back, left-right]
  edges: { bar: angle 50, rivet: rivet 4, pitch: 100, end distance: 20, set back: 60 }
sections:
  box:
    inside: { width: 600, depth: 400, height: 500 }
    panels:
      front:
        openings:
          window: { rectangle: { width: 200, height: 150, corner radius: 20 }, from: bottom-left, across: 60, up: 200 }
          port: { circle: { diameter: 100 }, from: top-right, across: 120, up: 150 }
      left:
        openings:
          door:
            rectangle: { width: 150, height: 200 }
            from: bottom-left
            across: 120
            up: 120
            leaf: { hinge: left, clearance: 3 }
hardware:
  corner: { item: corner 55, duty: protect, corners of: box }
  handle:
    item: handle
    duty: lift
    places:
      - { on: box.right, from: bottom-left, across: 200, up: 250 }
      - { on: box.back, from: bottom-left, across: 311, up: 250, turned: true }
shelves:
  board: { in: box, sheet: ply 10, size: [600, 300], at: [0, 0, 200], support: two ends, sliding: false, joint: { fastener: screw, count: 6 } }
contents:
  meter: { in: box, mass: 4 kg, at: [50, 50, 210], size: [200, 150, 120], held: { by: shelf, shelf: board } }
  battery: { in: box, mass: 9 kg, at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }
demands: { side pressure: 1 kPa, top pressure: 1 kPa, allowed sag: 1/180, jerk: 2, safety factor: 3, climate: dry, push: 100 N }
journey: { people: 2, lift from: 500, lift to: 750, reach: 350, lifts per minute: 0.2, lifting time: 20 min, grip: good, vehicle: van, floor: even }
business:
  ready made: 900
  own hour: 20
  building time: 20 h
  tools: { riveter: 40 }
  income per job: 100
  running cost per job: 30
  jobs per month: 2
  interest: 5 %
`;

/** The texts of the small job, by file name. */
export const smallJob: Readonly<Record<string, string>> = {
  "case.yaml": caseText,
  "sheet-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),price (EUR),supplier,veneers (mm),species
ply 10,2500,1250,10,700,60,yard,2+2+2+2+2,yellow birch
ply 15,2500,1250,15,700,80,yard,3+3+3+3+3,yellow birch`,
  "bar-stock.csv": `name,length (mm),mass per length (kg/m),price (EUR),supplier,leg (mm),wall (mm),seat (mm)
angle 50,2500,0.4,12,counter,50,2,0
seat 50,2500,0.5,15,counter,50,2,3`,
  "hardware.csv": `name,kind,mass (g),price (EUR),supplier,width (mm),height (mm),flange (mm),cut width (mm),cut height (mm),standing (mm),fastener,fasteners,hole columns,hole rows,hole width (mm),hole height (mm),rated (N)
corner 55,corner,90,2,counter,55,55,1,0,0,0,rivet 4,6,2,1,45,25,
handle,handle,500,12,counter,160,120,2,120,80,0,rivet 4,10,5,2,140,104,500
hinge,hinge,80,3,counter,40,60,2,0,0,0,rivet 4,4,2,2,24,40,300`,
  "fasteners.csv": `name,kind,diameter (mm),head diameter (mm),length (mm),grip min (mm),grip max (mm),shear (N),tension (N),pack of,price (EUR),supplier,mass (g),washer diameter (mm),washer thickness (mm),washer price (EUR)
rivet 4,rivet,4,12,18,9,14,1000,1200,100,8,counter,2,12,1,0.02
screw,screw,4,8,30,0,15,,,100,6,counter,2,12,1,0.02`,
  "adhesives.csv": `name,kind,content (mL),price (EUR),supplier,density (g/cm3),label rate (g/m2),faces,solids (%),waste (%),open time (min),press time (min),cure time (h),solvent
glue,contact,1000,20,shop,0.85,150,both,22,8,60,0,24,flammable`,
  "facings.csv": `name,form,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),price (EUR),supplier
lam 1,sheet,2440,1220,1,1400,9,50,yard`,
};

/** The small job with one text replaced in one of its files; the text must stand there exactly once. */
export function spoilt(file: string, find: string, replacement: string): Record<string, string> {
  const text = smallJob[file] ?? "";
  if (text.split(find).length !== 2) throw new Error(`${file}: "${find}" does not stand there exactly once`);
  return { ...smallJob, [file]: text.replace(find, () => replacement) };
}

/** A job with the box of the small job on four casters. */
export function rolling(texts: Readonly<Record<string, string>>): Record<string, string> {
  const corners = ["bottom-left", "bottom-right", "top-left", "top-right"];
  const places = corners.map((from) => `{ on: box.bottom, from: ${from}, across: 100, up: 110 }`).join(", ");
  const caster = "wheel,caster,300,9,counter,70,90,2,0,0,120,rivet 4,4,2,2,45,65,600";
  return {
    ...texts,
    "case.yaml": (texts["case.yaml"] ?? "").replace(
      "shelves:\n",
      `  wheel: { item: wheel, duty: roll, places: [${places}] }\nshelves:\n`,
    ),
    "hardware.csv": `${texts["hardware.csv"]}\n${caster}`,
  };
}

/** The line on which a text first stands in a file of the job. */
export function rowOf(texts: Readonly<Record<string, string>>, file: string, text: string): number {
  return (texts[file] ?? "").split(text)[0]?.split("\n").length ?? 0;
}

/** Every problem of a job. */
export function problemsOf(texts: Readonly<Record<string, string | undefined>>): readonly Problem[] {
  const read = readDesign(texts);
  return "problems" in read ? read.problems : [];
}

/** The design of a job without problems; throws with the problems otherwise. */
export function designOf(texts: Readonly<Record<string, string | undefined>>): Design {
  const read = readDesign(texts);
  if ("problems" in read) throw new Error(read.problems.map(showProblem).join("\n"));
  return read.design;
}

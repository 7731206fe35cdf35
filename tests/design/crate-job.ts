/** A metric job unlike the demo: an open crate of bare ply, its edges glued, screwed and held by cleats and blocks. */

const caseText = `case: Open crate
purpose: tests of parts
units: metric
lengths: mm
currency: EUR
build:
  sheet: ply 9
  facing: none
  runs through: [top-bottom, left-right, front-back]
  edges: { joint: cleat, strip: pine 20 x 30, adhesive: white glue, screw: screw 4, pitch: 120, end distance: 40, set back: 10 }
sections:
  crate:
    inside: { width: 500, depth: 300, height: 400 }
    panels:
      front: none
      back:
        openings:
          window: { rectangle: { width: 120, height: 100 }, from: bottom-left, across: 190, up: 150, pane: { sheet: acrylic 3, overlap: 15, side: outside, held: clips, fastener: screw 4, count: 8 } }
    edges:
      back-left: { joint: glued, adhesive: white glue }
      back-right: { joint: screwed, screw: screw 4, pitch: 100, end distance: 30 }
      top-left: { joint: corner block, strip: pine 20 x 30, blocks: 2, block length: 60, adhesive: white glue, set back: 20 }
      top-right: { joint: cleat, strip: pine 20 x 30, screw: screw 4, pitch: 120, end distance: 40 }
stiffeners:
  floor batten: { on: crate.bottom, strip: pine 20 x 30, from: bottom-left, across: 60, up: 140, length: 400, adhesive: white glue }
  side rib: { on: crate.left, kind: rib, strip: pine 20 x 30, standing: true, side: outside, runs: up, from: bottom-left, across: 150, up: 50, length: 300, fastener: screw 4, pitch: 80, end distance: 30 }
  lid doubler: { on: crate.top, kind: doubler, sheet: ply 9, from: bottom-left, across: 160, up: 60, length: 200, width: 150, adhesive: white glue }
  window frame: { on: crate.back, kind: frame, sheet: ply 9, round: window, width: 40, adhesive: white glue, fastener: screw 4, pitch: 60, end distance: 15 }
  ledge: { on: crate.right, kind: ledge, strip: pine 20 x 30, from: bottom-left, across: 40, up: 200, length: 200, adhesive: white glue, fastener: screw 4, pitch: 90, end distance: 30 }
demands: { side pressure: 500 Pa, top pressure: 500 Pa, allowed sag: 1/150, jerk: 2, safety factor: 3, climate: dry, push: 60 N }
journey: { people: 1, lift from: 400, lift to: 900, reach: 350, lifts per minute: 0.2, lifting time: 10 min, grip: good, vehicle: car, floor: even }
business:
  ready made: 300
  own hour: 20
  building time: 6 h
  tools: { clamps: 40 }
  income per job: 100
  running cost per job: 30
  jobs per month: 2
  interest: 5 %
`;

/** The texts of the crate, by file name. */
export const crateJob: Readonly<Record<string, string>> = {
  "case.yaml": caseText,
  "sheet-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),price (EUR),supplier,veneers (mm),species
ply 9,2500,1250,9,650,50,yard,1.8+1.8+1.8+1.8+1.8,yellow birch`,
  "bar-stock.csv": `name,length (mm),mass per length (kg/m),price (EUR),supplier,leg (mm),wall (mm),seat (mm)
angle 50,2500,0.4,12,counter,50,2,0`,
  "strip-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),price (EUR),supplier
pine 20 x 30,2400,30,20,500,9,4,yard`,
  "pane-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),poisson,price (EUR),supplier
acrylic 3,1000,500,3,1190,3.2,0.37,22,yard`,
  "hardware.csv": `name,kind,mass (g),price (EUR),supplier,width (mm),height (mm),flange (mm),cut width (mm),cut height (mm),standing (mm),fastener,fasteners,hole columns,hole rows,hole width (mm),hole height (mm),rated (N)
handle,handle,500,12,counter,160,120,2,0,0,0,screw 4,4,2,2,140,104,500`,
  "fasteners.csv": `name,kind,diameter (mm),head diameter (mm),length (mm),grip min (mm),grip max (mm),shear (N),tension (N),pack of,price (EUR),supplier,mass (g),washer diameter (mm),washer thickness (mm),washer price (EUR)
screw 4,screw,4,8,30,0,15,,,100,6,counter,2,12,1,0.02`,
  "adhesives.csv": `name,kind,content (mL),price (EUR),supplier,density (g/cm3),label rate (g/m2),faces,solids (%),waste (%),open time (min),press time (min),cure time (h),solvent
white glue,wood glue,500,9,shop,1.1,180,one,50,10,10,30,12,none`,
  "facings.csv": `name,form,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),price (EUR),supplier
lam 1,sheet,2440,1220,1,1400,9,50,yard`,
};

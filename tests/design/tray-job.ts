/** A job in inches unlike the demo: a display case open at the top, faced on both sides, with cleats, battens and a pane. */

const caseText = `case: Display tray
purpose: tests of parts in inches
units: inch
lengths: in
currency: USD
build:
  sheet: birch 1/2
  facing: { laminate: lam, adhesive: contact, sides: both, oversize: 1/2 }
  runs through: [left-right, front-back, top-bottom]
  edges: { joint: cleat, strip: pine 3/4, adhesive: yellow glue }
sections:
  tray:
    inside: { width: 24, depth: 16, height: 10 }
    panels:
      top: none
      bottom: { facing: none }
      front:
        openings:
          window: { rectangle: { width: 12, height: 5 }, from: bottom-left, across: 7, up: 3, pane: { sheet: polycarbonate 1/8, overlap: 1/2, held: gasket } }
stiffeners:
  floor batten: { on: tray.bottom, strip: pine 3/4, from: bottom-left, across: 2, up: 7, length: 18, fastener: screw 8, pitch: 4, end distance: 1 }
  back doubler: { on: tray.back, kind: doubler, sheet: birch 1/2, from: bottom-left, across: 8, up: 3, length: 8, width: 4, adhesive: yellow glue }
demands: { side pressure: 10 psf, top pressure: 10 psf, allowed sag: 1/150, jerk: 2, safety factor: 3, climate: dry, push: 10 lbf }
`;

/** The texts of the tray, by file name. */
export const trayJob: Readonly<Record<string, string>> = {
  "case.yaml": caseText,
  "sheet-stock.csv": `name,length (in),width (in),thickness (in),density (kg/m3),price (USD),supplier,veneers (in),species
birch 1/2,96,48,0.5,680,70,yard,0.1+0.1+0.1+0.1+0.1,yellow birch`,
  "strip-stock.csv": `name,length (in),width (in),thickness (in),density (kg/m3),modulus (psi),price (USD),supplier
pine 3/4,96,3/4,3/4,450,1.3e6,3,yard`,
  "pane-stock.csv": `name,length (in),width (in),thickness (in),density (kg/m3),modulus (psi),poisson,price (USD),supplier
polycarbonate 1/8,48,24,1/8,1200,3.4e5,0.37,30,yard`,
  "fasteners.csv": `name,kind,diameter (in),head diameter (in),length (in),grip min (in),grip max (in),shear (lbf),tension (lbf),pack of,price (USD),supplier,mass (g),washer diameter (in),washer thickness (in),washer price (USD)
screw 8,screw,0.164,0.33,1-1/4,0,0.9,,,100,7,counter,2.5,0.5,0.05,0.02`,
  "adhesives.csv": `name,kind,content (mL),price (USD),supplier,density (g/cm3),label rate (g/m2),faces,solids (%),waste (%),open time (min),press time (min),cure time (h),solvent
contact,contact,1000,20,shop,0.85,150,both,20,0,60,0,24,flammable
yellow glue,wood glue,500,9,shop,1.1,200,one,50,0,10,30,12,none`,
  "facings.csv": `name,form,length (in),width (in),thickness (in),density (kg/m3),modulus (psi),price (USD),supplier
lam,sheet,96,48,0.04,1400,1.3e6,60,yard`,
};

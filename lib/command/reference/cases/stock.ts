/** What every random case is made of: invented tables in one currency. */

/** The tables by file name. */
export function stockOf(currency: string): Readonly<Record<string, string>> {
  const price = `price (${currency})`;
  return {
    "sheet-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),${price},supplier,veneers (mm),species
ply 9,2500,1250,9,690,55,yard,1.8+1.8+1.8+1.8+1.8,yellow birch
ply 12,2500,1250,12,690,70,yard,1.7+1.7+1.7+1.8+1.7+1.7+1.7,yellow birch
light 10,2440,1220,10,460,40,yard,2+2+2+2+2,yellow-poplar`,
    "bar-stock.csv": `name,length (mm),mass per length (kg/m),${price},supplier,leg (mm),wall (mm),seat (mm)
angle 40,2500,0.3,11,counter,40,1.5,0
seated 40,2500,0.42,16,counter,40,1.6,1.6`,
    "hardware.csv": `name,kind,mass (g),${price},supplier,width (mm),height (mm),flange (mm),cut width (mm),cut height (mm),standing (mm),fastener,fasteners,hole columns,hole rows,hole width (mm),hole height (mm),rated (N),grip,side room (mm),extension (mm),offset (mm)
corner 50,corner,90,2,counter,50,50,1,0,0,0,rivet 4,6,2,1,38,20,,,,,
grip,handle,480,12,counter,110,80,2,80,50,0,rivet 4,8,4,2,94,64,900,,,,
strap grip,handle,120,6,counter,90,40,2,0,0,0,screw,4,2,2,74,24,,,,,
butt hinge,hinge,60,3,counter,36,36,2,0,0,0,screw,4,2,2,22,24,300,,,,
turn latch,latch,70,4,counter,36,36,2,0,0,0,screw,4,2,2,24,24,200,,,,
over latch,latch,150,7,counter,40,50,2,0,0,0,rivet 4,4,2,2,24,30,800,,,,
over keeper,keeper,60,2,counter,40,24,2,0,0,0,rivet 4,2,2,1,24,0,800,,,,
wheel 75,caster,650,14,counter,70,50,3,0,0,100,bolt,4,2,2,52,34,600,,,,30
wheel 125,caster,1200,22,counter,80,60,3,0,0,155,bolt,4,2,2,62,42,,,,,
eye,hook,50,1,counter,30,30,2,0,0,0,screw,2,1,2,0,18,,,,,
lid stay,stay,120,6,counter,200,15,1,0,0,0,screw,2,2,1,150,0,120,,,,
rubber foot,foot,40,1,counter,40,40,2,0,0,20,screw,1,1,1,0,0,500,0.6,,,
wood skid,foot,200,3,counter,60,200,15,0,0,30,screw,4,2,2,30,160,,,,,
slide pair,slide,700,14,counter,250,45,1,0,0,0,screw,8,4,2,200,20,300,,13,250,`,
    "fasteners.csv": `name,kind,diameter (mm),head diameter (mm),length (mm),grip min (mm),grip max (mm),shear (N),tension (N),pack of,${price},supplier,mass (g),washer diameter (mm),washer thickness (mm),washer price (${currency}),insert diameter (mm),insert length (mm),insert hole (mm)
rivet 4,rivet,4,12,18,8,14,1000,1200,100,8,counter,2,12,1,0.02,,,
rivet 4 long,rivet,4,12,24,13,20,1000,1200,100,9,counter,2,12,1,0.02,,,
screw,screw,4,8,30,0,15,,,100,6,counter,2,,,,,,
bolt,bolt,6,12,30,6,24,4000,7000,25,7,counter,9,16,1.5,0.05,,,
insert,insert,4,8,12,1,4,2500,4000,50,15,counter,4,,,,8,8,7`,
    "adhesives.csv": `name,kind,content (mL),${price},supplier,density (g/cm3),label rate (g/m2),faces,solids (%),waste (%),open time (min),press time (min),cure time (h),solvent
contact,contact,1000,20,shop,0.85,150,both,22,8,60,0,24,flammable
white glue,wood glue,1000,15,shop,1.1,180,one,50,6,8,45,24,none`,
    "pane-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),poisson,${price},supplier,plastic,strength (MPa)
acrylic 3,2050,1520,3,1190,1.5,0.37,45,counter,acrylic,
glass 4,1600,1000,4,2500,70,0.23,30,counter,,45`,
    "strip-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),${price},supplier
batten 30,2400,30,20,460,9,3,yard`,
    "facings.csv": `name,form,length (mm),width (mm),thickness (mm),density (kg/m3),modulus (GPa),${price},supplier
thin sheet,sheet,2440,1220,0.8,1400,9,50,yard
thin roll,roll,5000,1300,0.6,1380,8,60,yard`,
  };
}

/** Names of sheets. */
export const sheetNames: readonly string[] = ["ply 9", "ply 12", "light 10"];

/** Thickness of the thickest of those sheets with laminate on both sides, mm. */
export const thickest = 14;

/** Thickness of a sheet, mm. */
export function thicknessOf(sheet: string): number {
  return sheet === "ply 9" ? 9 : sheet === "ply 12" ? 12 : 10;
}

/** Tables of measurements that a builder may have by now, by file name. */
export function measuredTables(): Readonly<Record<string, string>> {
  return {
    "cushion-curves.csv": `foam,thickness (mm),drop (mm),stress (kPa),deceleration
soft foam,50,600,1,90
soft foam,50,600,3,55
soft foam,50,600,6,50
soft foam,50,600,12,80`,
    "weights.csv": `sample,material,length (mm),width (mm),thickness (mm),mass (g)
W1,ply 9,300,200,9.1,380
W2,ply 9,310,190,9.0,372
W3,ply 9,290,210,9.1,381`,
    "timings.csv": `work,unit,tool,pieces,time (min)
set rivet,rivet,hand,20,18
set rivet,rivet,air,20,6`,
    "tilt-tests.csv": `test,what,on,rise (mm),run (mm)
T1,crate,bare ply,300,800
T2,crate,bare ply,310,800
T3,crate,bare ply,295,800`,
  };
}

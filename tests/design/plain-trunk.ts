/** A job of the fewest words: one box of one sheet, that nobody moves, feeds or earns with, and a single table. */
export const plainTrunk: Readonly<Record<string, string>> = {
  "case.yaml": `case: Plain trunk
purpose: a chest for costumes
units: metric
lengths: mm
currency: EUR
build: { sheet: ply 12, runs through: [top-bottom, front-back, left-right], edges: none }
sections:
  trunk: { inside: { width: 900, depth: 450, height: 500 } }
demands: { side pressure: 1 kPa, top pressure: 1 kPa, allowed sag: 1/180, jerk: 2, safety factor: 3, climate: dry, push: 60 N }
`,
  "sheet-stock.csv": `name,length (mm),width (mm),thickness (mm),density (kg/m3),price (EUR),supplier,veneers (mm),species
ply 12,2500,1250,12,520,40,yard,2.4+2.4+2.4+2.4+2.4,yellow birch`,
};

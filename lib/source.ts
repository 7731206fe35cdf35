/**
 * The bibliography. A formula, a table of constants and a published check cite an entry by its key and
 * say where in it. How well we know a value is said beside the value ("seen", "derived", "memory",
 * "common practice"), since most of these works were read only in part.
 */

/** One work, or the two honest non-works: our own derivation, and the rule of the trade. */
export interface Source {
  /** The title of the work. */
  readonly title: string;
  /** Who wrote or issued it. */
  readonly author?: string;
  /** The year of the edition. */
  readonly year?: number;
}

/** A place in a source. */
export interface Citation {
  /** The key of the work. */
  readonly source: SourceKey;
  /** Section, equation, table or page. */
  readonly where: string;
}

/** How a value is known: read, derived without a table, recalled, or a rule of the trade. */
export type Known = "seen" | "derived" | "memory" | "common practice";

/** The key of a work. */
export type SourceKey =
  | "sp-811"
  | "plates-shells"
  | "elastic-stability"
  | "stress-strain"
  | "anisotropic-plates"
  | "composite-mechanics"
  | "machine-design"
  | "strength-of-materials"
  | "wood-handbook"
  | "nds"
  | "en-1995"
  | "finnish-plywood"
  | "formwork"
  | "en-315"
  | "en-636"
  | "en-310"
  | "aluminum-design"
  | "asme-b1.1"
  | "iso-15981"
  | "iso-15977"
  | "niosh-lifting"
  | "hse-manual-handling"
  | "iec-62368"
  | "gum"
  | "statistical-tables"
  | "regression-datasets"
  | "steel-manual"
  | "bimetal"
  | "bonded-joints"
  | "gum-monte-carlo"
  | "random-numbers"
  | "iso-16269-6"
  | "en-14358"
  | "bin-packing"
  | "knapsack-problems"
  | "two-dimensional-bins"
  | "cutting-instances"
  | "engineering-economy"
  | "statics"
  | "geometry"
  | "finite-element-cases"
  | "finite-element-procedures"
  | "mixed-interpolated-plates"
  | "astm-f970"
  | "fmcsa-393"
  | "ista-1a"
  | "rolling-friction"
  | "en-1990"
  | "asce-7"
  | "en-1022"
  | "icwm"
  | "en-12195"
  | "ctu-code"
  | "astm-d4169"
  | "mil-std-810"
  | "mil-std-810-514"
  | "mil-std-1472"
  | "en-547"
  | "astm-f2057"
  | "cushion-design"
  | "package-handbook"
  | "astm-d395"
  | "astm-b258"
  | "nec"
  | "ashrae"
  | "iso-6946"
  | "iec-60601"
  | "iec-60335"
  | "ieee-485"
  | "cfr-183"
  | "iec-60529"
  | "iec-60598"
  | "en-338"
  | "plastic-data"
  | "hand-carts"
  | "ul-943"
  | "iec-60364"
  | "ul-1363"
  | "bs-7671"
  | "dynamics"
  | "vibration"
  | "fluid-flow"
  | "heat-transfer"
  | "electricity"
  | "common-practice";

/** Every work cited, by key. */
export const sources: Readonly<Record<SourceKey, Source>> = {
  "sp-811": {
    title: "Guide for the Use of the International System of Units (SI), NIST Special Publication 811",
    author: "A. Thompson, B. N. Taylor",
    year: 2008,
  },
  "plates-shells": {
    title: "Theory of Plates and Shells, 2nd ed.",
    author: "S. Timoshenko, S. Woinowsky-Krieger",
    year: 1959,
  },
  "elastic-stability": {
    title: "Theory of Elastic Stability, 2nd ed.",
    author: "S. Timoshenko, J. Gere",
    year: 1961,
  },
  "stress-strain": {
    title: "Roark's Formulas for Stress and Strain, 7th ed.",
    author: "W. Young, R. Budynas",
    year: 2002,
  },
  "anisotropic-plates": { title: "Anisotropic Plates", author: "S. G. Lekhnitskii", year: 1968 },
  "composite-mechanics": {
    title: "Mechanics of Composite Materials, 2nd ed.",
    author: "R. M. Jones",
    year: 1999,
  },
  "machine-design": {
    title: "Shigley's Mechanical Engineering Design, 9th ed.",
    author: "R. Budynas, K. Nisbett",
    year: 2011,
  },
  "strength-of-materials": { title: "Euler-Bernoulli beam theory, any text on strength of materials" },
  "wood-handbook": {
    title: "Wood Handbook, FPL-GTR-190 / FPL-GTR-282",
    author: "USDA Forest Products Laboratory",
    year: 2021,
  },
  nds: {
    title: "National Design Specification for Wood Construction",
    author: "American Wood Council",
    year: 2018,
  },
  "en-1995": { title: "EN 1995-1-1 Design of timber structures, with A1 and A2", author: "CEN", year: 2014 },
  "finnish-plywood": {
    title: "Handbook of Finnish Plywood",
    author: "Finnish Forest Industries Federation",
    year: 2007,
  },
  formwork: {
    title: "Formwork for Concrete Structures, 4th ed.",
    author: "R. Peurifoy, G. Oberlender",
    year: 2010,
  },
  "en-310": {
    title:
      "EN 310 Wood-based panels - Determination of modulus of elasticity in bending and of bending strength",
    author: "CEN",
    year: 1993,
  },
  "en-315": { title: "EN 315 Plywood - Tolerances for dimensions", author: "CEN", year: 2000 },
  "en-636": { title: "EN 636 Plywood - Specifications", author: "CEN", year: 2015 },
  "aluminum-design": { title: "Aluminum Design Manual", author: "The Aluminum Association", year: 2015 },
  "asme-b1.1": { title: "ASME B1.1 Unified inch screw threads", author: "ASME", year: 2003 },
  "iso-15981": { title: "ISO 15981 Open end blind rivets - AlA/AlA", author: "ISO", year: 2002 },
  "iso-15977": { title: "ISO 15977 Open end blind rivets - AlA/St", author: "ISO", year: 2002 },
  "niosh-lifting": {
    title: "Applications Manual for the Revised NIOSH Lifting Equation, Publication 94-110",
    author: "T. Waters, V. Putz-Anderson, A. Garg",
    year: 2021,
  },
  "hse-manual-handling": {
    title: "Manual handling, guidance on regulations, L23",
    author: "Health and Safety Executive",
  },
  "iec-62368": {
    title:
      "IEC 62368-1 Audio/video, information and communication technology equipment - Safety, ed. 3, clause 8.6",
    author: "IEC",
    year: 2018,
  },
  gum: {
    title: "Guide to the Expression of Uncertainty in Measurement, JCGM 100",
    author: "BIPM",
    year: 2008,
  },
  "statistical-tables": { title: "Student's t distribution, any statistical table" },
  "steel-manual": {
    title: "Steel Construction Manual",
    author: "American Institute of Steel Construction",
    year: 2017,
  },
  bimetal: { title: "Analysis of bi-metal thermostats", author: "S. Timoshenko", year: 1925 },
  "bonded-joints": {
    title: "Shear-lag analysis of bonded joints, any text on adhesives (after Volkersen, 1938)",
  },
  "regression-datasets": {
    title: "Statistical Reference Datasets, linear and nonlinear regression",
    author: "NIST",
    year: 1999,
  },
  "gum-monte-carlo": {
    title: "Propagation of distributions using a Monte Carlo method, JCGM 101",
    author: "BIPM",
    year: 2008,
  },
  "random-numbers": {
    title: "Scrambled linear pseudorandom number generators",
    author: "D. Blackman, S. Vigna",
    year: 2021,
  },
  "iso-16269-6": {
    title: "ISO 16269-6 Determination of statistical tolerance intervals",
    author: "ISO",
    year: 2014,
  },
  "en-14358": {
    title: "EN 14358 Timber structures - Calculation and verification of characteristic values",
    author: "CEN",
    year: 2016,
  },
  "bin-packing": {
    title: "The tight bound of first fit decreasing bin-packing algorithm is FFD(I) <= 11/9 OPT(I) + 6/9",
    author: "G. Dosa",
    year: 2007,
  },
  "knapsack-problems": { title: "Knapsack Problems", author: "S. Martello, P. Toth", year: 1990 },
  "two-dimensional-bins": {
    title: "Exact solution of the two-dimensional finite bin packing problem",
    author: "S. Martello, D. Vigo",
    year: 1998,
  },
  "cutting-instances": { title: "Cutting and packing instances of OR-Library and the ESICUP mirror (CC0)" },
  "engineering-economy": { title: "Present worth and annuity factors, any text on engineering economy" },
  statics: { title: "Equilibrium of forces and moments, any text on statics" },
  geometry: { title: "Plain geometry and arithmetic" },
  "finite-element-cases": {
    title:
      "Plates with openings computed with a general-purpose finite-element solver (CalculiX 2.20), three meshes, extrapolated",
  },
  "astm-f970": { title: "ASTM F970 Static load limit of resilient flooring", author: "ASTM International" },
  "ista-1a": { title: "ISTA 1A Packaged products of 150 lb or less", author: "ISTA" },
  "fmcsa-393": { title: "49 CFR 393 Protection against shifting and falling cargo", author: "US DOT" },
  "rolling-friction": { title: "Rolling friction of wheels, pages of makers of casters and drives" },
  "asce-7": {
    title: "ASCE 7 Minimum design loads for buildings, and the residential codes that repeat it",
    author: "American Society of Civil Engineers",
    year: 2016,
  },
  "en-1022": { title: "EN 1022 Furniture - Seating - Stability", author: "CEN", year: 2018 },
  icwm: {
    title: "ANSI ICWM Vocabulary, performance and testing requirements for casters and wheels",
    author: "Institute of Caster and Wheel Manufacturers",
    year: 2018,
  },
  "en-1990": { title: "EN 1990 Basis of structural design", author: "CEN", year: 2002 },
  "finite-element-procedures": { title: "Finite Element Procedures", author: "K. J. Bathe", year: 1996 },
  "en-12195": {
    title: "EN 12195-1 Load restraining on road vehicles - Calculation of securing forces",
    author: "CEN",
    year: 2010,
  },
  "ctu-code": {
    title: "Code of Practice for Packing of Cargo Transport Units, annex 7",
    author: "IMO, ILO, UNECE",
    year: 2014,
  },
  "astm-d4169": {
    title: "ASTM D4169 Performance testing of shipping containers and systems",
    author: "ASTM International",
  },
  "mil-std-810": {
    title: "MIL-STD-810 Environmental engineering considerations, method 516",
    author: "US Department of Defense",
  },
  "mil-std-810-514": {
    title: "MIL-STD-810 Environmental engineering considerations, method 514",
    author: "US Department of Defense",
  },
  "en-547": { title: "EN 547 Safety of machinery, human body measurements", author: "CEN" },
  "mil-std-1472": { title: "MIL-STD-1472 Human engineering", author: "US Department of Defense" },
  "astm-f2057": {
    title: "ASTM F2057-23 Safety specification for clothing storage units",
    author: "ASTM International",
    year: 2023,
  },
  "cushion-design": {
    title: "Simplified method of selecting and designing package cushioning materials, report 2031",
    author: "R. E. Jones, W. L. James, USDA Forest Products Laboratory",
    year: 1955,
  },
  "package-handbook": { title: "MIL-HDBK-304 Package cushioning design", author: "US Department of Defense" },
  "astm-d395": { title: "ASTM D395 Rubber property - compression set", author: "ASTM International" },
  "astm-b258": {
    title: "ASTM B258 Standard nominal diameters and areas of AWG sizes of solid round wires",
    author: "ASTM International",
  },
  nec: { title: "NFPA 70 National Electrical Code", author: "National Fire Protection Association" },
  ashrae: { title: "ASHRAE Handbook Fundamentals", author: "ASHRAE", year: 1997 },
  "iso-6946": { title: "ISO 6946 Building components - Thermal resistance and transmittance", author: "ISO" },
  "iec-60601": { title: "IEC 60601-1 Medical electrical equipment, clause 9.4", author: "IEC" },
  "iec-60335": {
    title: "IEC 60335-1 Household and similar electrical appliances - Safety, clause 20.1",
    author: "IEC",
  },
  "ieee-485": {
    title: "IEEE 485 Recommended practice for sizing lead-acid batteries for stationary applications",
    author: "IEEE",
  },
  "cfr-183": {
    title: "33 CFR 183 Boats and associated equipment, electrical systems",
    author: "US Coast Guard",
  },
  "iec-60529": { title: "IEC 60529 Degrees of protection provided by enclosures (IP code)", author: "IEC" },
  "en-338": { title: "EN 338 Structural timber - Strength classes", author: "CEN", year: 2016 },
  "plastic-data": { title: "Data sheets of clear plastic sheet" },
  "hand-carts": {
    title: "Factors affecting minimum push and pull forces of manual carts, Applied Ergonomics 30, 235-245",
    author: "K. W. Al-Eisawi and others",
    year: 1999,
  },
  "ul-943": { title: "UL 943 Ground-fault circuit-interrupters", author: "Underwriters Laboratories" },
  "iec-60364": {
    title: "IEC 60364-4-41 Low-voltage electrical installations - Protection against shock",
    author: "IEC",
  },
  "iec-60598": { title: "IEC 60598-1 Luminaires - General requirements and tests", author: "IEC" },
  "bs-7671": {
    title: "BS 7671 Requirements for electrical installations, appendix 4",
    author: "IET",
    year: 2018,
  },
  "ul-1363": { title: "UL 1363 Relocatable power taps", author: "Underwriters Laboratories" },
  dynamics: { title: "Motion, energy and inertia, any text on dynamics" },
  vibration: { title: "Natural frequency and transmissibility, any text on mechanical vibrations" },
  "fluid-flow": { title: "Drag, openings and fan curves, any text on fluid mechanics" },
  "heat-transfer": { title: "Conduction, mixing and warm-up, any text on heat transfer" },
  electricity: { title: "Circuits and batteries, any text on electricity" },
  "mixed-interpolated-plates": {
    title: "Mixed-interpolated elements for Reissner-Mindlin plates, Int. J. Numer. Methods Eng. 28",
    author: "K. J. Bathe, F. Brezzi, M. Fortin",
    year: 1989,
  },
  "common-practice": { title: "Common practice in the trade, no source" },
};

/** Points into a source. */
export function cite(source: SourceKey, where: string): Citation {
  return { source, where };
}

/** A work in few words, for a sentence: the designation of a standard, or its title up to the first comma. */
export function shortTitle(source: SourceKey): string {
  const { title } = sources[source];
  return /^(?=\D*\d)(?:[A-Z\d][A-Z\d./-]*(?: |$))+/.exec(title)?.[0].trim() ?? title.replace(/,.*/, "");
}

/** A citation as a reader sees it: author, unless the title begins with it, title, year, place. */
export function showCitation({ source, where }: Citation): string {
  const { title, author = "", year } = sources[source];
  const work = title.startsWith(author.split(" ")[0] ?? "") ? title : `${author}, ${title}`;
  return [year ? `${work} (${year})` : work, where].filter(Boolean).join(", ");
}

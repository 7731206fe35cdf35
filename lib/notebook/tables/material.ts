/** What the case is made of and glued with, and what damp, heat and time do to it. */

import { solventCautions } from "../../bonding/index.js";
import type { BarStock } from "../../design/index.js";
import { styleOf } from "../../findings/index.js";
import type { WorkedLine } from "../../formula.js";
import type { Job } from "../../job/index.js";
import {
  angleWalls,
  durationFactor,
  type ExpandingMaterial,
  equilibriumMoisture,
  expansions,
  heatGrowth,
  humidityGrowth,
  type ProfileWall,
  propertyAtMoisture,
  sheetMaterials,
  temperatureFactor,
  type WalledSection,
  walledSection,
} from "../../material/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import { adhesiveLine, facingStresses, type GluedClimate, gluePlans } from "../../plan/index.js";
import {
  Area,
  Length,
  LinearDensity,
  Money,
  Pressure,
  Ratio,
  ratio,
  SecondMoment,
  type ShowStyle,
  showNumber,
  Temperature,
  Time,
  Volume,
} from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";

/** Edge bars as their profile has them, beside what their maker says they weigh. */
export function barSectionTable({ stock, measurements }: Job): TableView {
  return tableOf(
    stock.bars.map((bar) => drawnBar(bar, measurements)),
    [
      { heading: "Bar", cell: ({ bar }) => bar.name },
      { heading: "Drawn as", cell: ({ drawn }) => drawn },
      { heading: "Area", cell: ({ section }) => Area.show(section.area, { unit: "mm2", digits: 3 }) },
      {
        heading: "Weighs, as drawn",
        cell: ({ section }) => weight(LinearDensity.si(section.area * sheetMaterials.aluminium.density)),
      },
      { heading: "Weighs, in the table", cell: ({ bar }) => weight(bar.massPerLength) },
      {
        heading: "Stiffness, I",
        cell: ({ section }) => SecondMoment.show(section.secondX, { unit: "mm4", digits: 3 }),
      },
      {
        heading: "Twist, J",
        cell: ({ section }) => SecondMoment.show(section.torsion, { unit: "mm4", digits: 3 }),
      },
    ],
    "Edge bars; one that weighs more in the table than as drawn has walls that are not drawn",
  );
}

/** A bar with the properties of its section: of the walls that were measured, or else of two legs. */
function drawnBar(
  bar: BarStock,
  { profiles }: Job["measurements"],
): { readonly bar: BarStock; readonly drawn: string; readonly section: WalledSection } {
  const own = profiles.filter((row) => row.bar === bar.name);
  const walls =
    own.length > 0
      ? own.map(({ wall, ...line }): ProfileWall => ({ ...line, thickness: wall }))
      : angleWalls(bar.leg, bar.wall);
  const drawn = own.length > 0 ? `${own.length} walls of its profile` : "two legs";
  return { bar, drawn, section: walledSection({ walls }) };
}

function weight(value: LinearDensity): string {
  return LinearDensity.show(value, { unit: "g/m", digits: 3 });
}

/** Air and heat from one state to another. */
export interface ClimateChange {
  /** Temperature of the air before. */
  readonly fromTemperature: Temperature;
  /** Temperature of the air after. */
  readonly toTemperature: Temperature;
  /** Relative humidity before. */
  readonly fromHumidity: Ratio;
  /** Relative humidity after. */
  readonly toHumidity: Ratio;
}

/** How far each material of the case moves over its longest edge when heat and humidity change. */
export function movementTable({ parts, case: description }: Job, change: ClimateChange): TableView {
  const longest = Length.si(
    Math.max(...parts.bars.map(({ length }) => length), ...parts.panels.map(({ width }) => width)),
  );
  const materials: readonly ExpandingMaterial[] = ["aluminium", "plywood", "high-pressure laminate", "ABS"];
  const heat = { from: change.fromTemperature, to: change.toTemperature };
  const humidity = { from: change.fromHumidity, to: change.toHumidity };
  return tableOf(
    materials.map((name) => ({
      name,
      heated: heatGrowth({ length: longest, expansion: expansions[name].heat.value, ...heat }),
      moistened: humidityGrowth({ length: longest, expansion: expansions[name].humidity.value, ...humidity }),
    })),
    [
      { heading: "Material", cell: ({ name }) => expansions[name].title },
      { heading: "From heat", cell: ({ heated }) => fine(heated) },
      { heading: "From humidity", cell: ({ moistened }) => fine(moistened) },
      { heading: "Together", cell: ({ heated, moistened }) => fine(Length.si(heated + moistened)) },
    ],
    `Growth of ${Length.show(longest, styleOf(description))}, each free to move`,
  );
}

function fine(length: Length): string {
  return `${showNumber(Length.in(length, "mm"), 2)} mm`;
}

/** What the movement asks of the builder. */
export function movementAnswer({ parts }: Job, { fromTemperature, toTemperature }: ClimateChange): string {
  const longest = Math.max(...parts.bars.map(({ length }) => length));
  if (!Number.isFinite(longest)) return "No edge bars, so nothing to slide along the panels.";
  const difference = expansions.aluminium.heat.value - expansions.plywood.heat.value;
  // The middle of a riveted bar stays where it is; each end slides by half.
  const slide = Math.abs(difference * (toTemperature - fromTemperature) * longest) / 2;
  const clearance = ratio(0.1);
  const words = slide * 1000 > clearance ? "more than" : "within";
  return `Each end of the longest bar slides ${showNumber(slide * 1000, 2)} mm along its panel, ${words} the ${Ratio.show(clearance)} mm of play in a rivet hole: ${slide * 1000 > clearance ? "rivet from the middle outwards, and do not glue the bar stiffly" : "nothing to do"}.`;
}

/**
 * Green wood over dry wood: bending strength 17 600 G^1.25 over 25 700 G^1.25 psi, modulus 2.36 over 2.80 million G
 * psi; seen in an older Wood Handbook's regressions over all species.
 */
const greenOverDry = { strength: 17_600 / 25_700, stiffness: 2.36 / 2.8 } as const;

/** Drying tells below this moisture in most woods: Wood Handbook, from memory, sure. */
const turningPoint = ratio(0.25);

/** Moisture that the ply comes to before and after, and what it and the warmth leave of strength and stiffness. */
export function woodClimateTable(change: ClimateChange, style: ShowStyle): TableView {
  const states = [
    { when: "before", temperature: change.fromTemperature, humidity: change.fromHumidity },
    { when: "after", temperature: change.toTemperature, humidity: change.toHumidity },
  ];
  return tableOf(
    states.map((state) => ({ ...state, moisture: equilibriumMoisture(state) })),
    [
      { heading: "Air", cell: ({ when }) => when },
      {
        heading: "Climate",
        cell: ({ temperature, humidity }) =>
          `${Temperature.show(temperature, { ...style, digits: 2 })}, ${percent(humidity)}`,
      },
      { heading: "Moisture of the ply", cell: ({ moisture }) => percent(moisture) },
      { heading: "Strength by moisture", cell: ({ moisture }) => atMoisture("strength", moisture) },
      {
        heading: "Stiffness by moisture",
        cell: ({ moisture }) => atMoisture("stiffness", moisture),
      },
      {
        heading: "Strength, kept warm",
        cell: ({ temperature }) => keptWarm("strength", temperature),
      },
      {
        heading: "Stiffness, kept warm",
        cell: ({ temperature }) => keptWarm("stiffness", temperature),
      },
    ],
    `The ply in that air: shares of its value at 12 % moisture and below ${Temperature.show(Temperature.of(38, "°C"), { ...style, digits: 2 })}, after weeks in it`,
  );
}

/** Share of the value at 12 % moisture. */
function atMoisture(property: "strength" | "stiffness", moisture: Ratio): string {
  const dry = Pressure.of(100, "MPa");
  const green = Pressure.si(dry * greenOverDry[property]);
  return withinRange(() => Ratio.si(propertyAtMoisture({ dry, green, moisture, turningPoint }) / dry));
}

function keptWarm(property: "strength" | "stiffness", temperature: Temperature): string {
  return withinRange(() => temperatureFactor({ property, temperature }));
}

/** A rule says nothing beyond its range. */
function withinRange(share: () => Ratio): string {
  try {
    return percent(share());
  } catch (error) {
    if (error instanceof Refusal) return "beyond its rule";
    throw error;
  }
}

/** How much more a brief load may be than one of ten years. */
export function durationTable(): TableView {
  const durations = ["permanent", "ten years", "two months", "seven days", "ten minutes", "impact"] as const;
  return tableOf(
    durations,
    [
      { heading: "The load stays", cell: (duration) => duration },
      { heading: "It may be", cell: (duration) => percent(durationFactor({ duration })) },
    ],
    "Allowable load on wood and its fasteners by how long it stays; never on stiffness",
  );
}

function percent(share: Ratio): string {
  return Ratio.show(share, { unit: "%", digits: 3 });
}

/** Adhesive to buy for the whole case. */
export function adhesiveTable({ review, case: description }: Job): TableView {
  const style = styleOf(description);
  return tableOf(
    review.purchases.adhesives,
    [
      { heading: "Adhesive", cell: ({ stock }) => stock.name },
      { heading: "Panel area", cell: ({ area }) => Area.show(area, { ...style, digits: 3 }) },
      {
        heading: "Needed",
        cell: ({ volume }) => Volume.show(volume, { ...style, digits: 2 }).replace("floz", "fl oz"),
      },
      { heading: "Containers", cell: ({ containers }) => containers },
      { heading: "Cost", cell: ({ cost }) => Money.show(cost) },
    ],
    "Adhesive for the case as it is drawn, both faces and waste counted",
  );
}

/** Rounds, hours, edges and heat for each adhesive of the case. */
export function gluePlanTable(job: Job): TableView {
  const style = styleOf(job.case);
  return tableOf(
    gluePlans(job),
    [
      { heading: "Adhesive", cell: ({ adhesive }) => adhesive.name },
      { heading: "Pieces", cell: ({ pieces }) => pieces },
      {
        heading: "At most a round",
        cell: ({ plan }) => Area.show(plan.value.roundArea, { ...style, digits: 2 }),
      },
      { heading: "Rounds", cell: ({ plan }) => plan.value.rounds },
      { heading: "Spreading", cell: ({ plan }) => Time.show(plan.value.spreading, { digits: 2 }) },
      {
        heading: "Ready to trim after",
        cell: ({ plan }) => Time.show(plan.value.ready, { unit: "h", digits: 2 }),
      },
      {
        heading: "Raw edges, if sealed",
        cell: ({ edges }) => `${Ratio.show(edges, { unit: "%", digits: 2 })} more`,
      },
      {
        heading: "Lets go from",
        cell: ({ heatLimit }) => Temperature.show(heatLimit, { ...style, digits: 2 }),
      },
      {
        heading: "Closed van in the sun",
        cell: ({ standsVehicle }) => (standsVehicle ? "stands it" : "may let go: shade the case"),
      },
    ],
    "Gluing as a plan: times for one person, heat limits by the sort of glue until its label says otherwise",
  );
}

/** What a change of air does to the faced panels. */
export function facingStressTable(job: Job, climate: GluedClimate): TableView {
  return tableOf(
    facingStresses(job, climate),
    [
      { heading: "Facing", cell: ({ facing }) => facing },
      { heading: "Largest panel", cell: ({ panel }) => panel },
      { heading: "Shear at the edge", cell: ({ shear }) => Pressure.show(shear, { unit: "MPa", digits: 2 }) },
      { heading: "Peel at the edge", cell: ({ peel }) => Pressure.show(peel, { unit: "MPa", digits: 2 }) },
      {
        heading: "Bow, lying free",
        cell: ({ bow }) =>
          bow === undefined ? "faced on both sides" : Length.show(bow, { unit: "mm", digits: 2 }),
      },
    ],
    "What growing unlike does: figures for a film of contact glue, far from sure; cover every edge",
  );
}

/** How much adhesive the case takes, worked out. */
export function adhesiveLines(job: Job): readonly WorkedLine[] {
  return job.review.purchases.adhesives.map(({ stock, area }) => adhesiveLine(stock, area, job));
}

/** Cautions for the adhesives of the case file. */
export function facingCautions({ parts }: Job): readonly string[] {
  const solvents = [...new Set(parts.facings.map(({ adhesive }) => adhesive.solvent))];
  return [...new Set(solvents.flatMap(solventCautions))];
}

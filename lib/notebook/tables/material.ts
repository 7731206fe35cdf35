/** Tables of what the case is made of: its edge bars as drawn, and how its materials move. */
import type { BarStock } from "../../design/index.js";
import { styleOf } from "../../findings/index.js";
import type { Job } from "../../job/index.js";
import {
  angleWalls,
  type ExpandingMaterial,
  expansions,
  heatGrowth,
  humidityGrowth,
  type ProfileWall,
  sheetMaterials,
  type WalledSection,
  walledSection,
} from "../../material/index.js";
import { type TableView, tableOf } from "../../page/index.js";
import {
  Area,
  Length,
  LinearDensity,
  Ratio,
  ratio,
  SecondMoment,
  showNumber,
  type Temperature,
} from "../../quantity/index.js";

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
  readonly fromTemperature: Temperature;
  readonly toTemperature: Temperature;
  readonly fromHumidity: Ratio;
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

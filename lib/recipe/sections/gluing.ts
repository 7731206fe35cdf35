/** Laying laminate on the panels: which, with what, how much, in what order and how long. */

import { adhesiveTraits } from "../../bonding/index.js";
import type { Adhesive, FacingPart, GluePart } from "../../design/index.js";
import { tolerance } from "../../model/index.js";
import { steps, tableOf } from "../../page/index.js";
import { Mass, Time } from "../../quantity/index.js";
import { codeOf } from "../pieces.js";
import {
  blanks,
  flowingSection,
  type GroupBlock,
  group,
  type RecipeBlock,
  type RecipeSection,
  sentence,
  when,
} from "../recipe.js";
import { type ShopStep, step, supplies, using } from "../supplies.js";
import { type Group, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on gluing; a case without laminate and without glued wood has none. */
export function gluingSection(workshop: Workshop): RecipeSection[] {
  const { facings, panels, glues } = workshop.parts;
  if (facings.length === 0 && glues.length === 0) return [];
  const oneSided = panels.some(({ facing }) => facing?.sides === "outside");
  return [
    flowingSection(
      "Gluing plan",
      ...when(facings.length > 0, () =>
        sentence(
          "Glue the laminate onto the cut panels and trim it flush. Only then cut openings and holes through both at once.",
        ),
      ),
      ...grouped(facings, ({ adhesive }) => adhesive.name).map(([, pieces]) =>
        adhesiveGroup(pieces, workshop),
      ),
      ...grouped(glues, ({ adhesive }) => adhesive.name).map(([, some]) => woodGroup(some, workshop)),
      ...when(oneSided, () =>
        sentence(
          "A panel with laminate on one side only can bow. Keep it flat under weight until it is fixed in.",
        ),
      ),
    ),
  ];
}

/** Every step of gluing. */
export function glueSteps({ parts: { facings, glues } }: Workshop): ShopStep[] {
  return [
    ...grouped(facings, ({ adhesive }) => adhesive.name).flatMap(([, pieces]) => stepsFor(pieces)),
    ...grouped(glues, ({ adhesive }) => adhesive.name).flatMap(([, [{ adhesive }]]) => woodSteps(adhesive)),
  ];
}

function woodSteps({ openTime, cureTime }: Adhesive): ShopStep[] {
  return [
    step`Fit the pieces dry and mark where they meet. Keep laminate, paint and dust off what is glued.`,
    step`Spread it thin and even, and join within the open time (${Time.show(openTime)}). Draw the joint shut with ${supplies.clamps} or its screws.`,
    using(step`Leave it for ${Time.show(cureTime)} before anything pulls at it.`, supplies.cloths),
  ];
}

/** Wood glued to wood with one adhesive. */
function woodGroup(glues: Group<GluePart>, { rule }: Workshop): GroupBlock {
  const [{ adhesive }] = glues;
  return group(
    `${adhesive.name}, wood to wood`,
    timesTable(adhesive, "both pieces"),
    steps(
      woodSteps(adhesive).map(({ text }) => text),
      "Order of work",
    ),
    tableOf(
      glues,
      [
        { heading: "What is glued", cell: ({ id }) => id },
        { heading: "Glued area", cell: ({ area }) => rule.area(area) },
      ],
      "Joints",
    ),
  );
}

/**
 * Adhesive that a piece should take out of the can, waste included: its share of what was bought for the
 * whole area.
 */
export function adhesiveFor({ adhesive, gluedArea }: FacingPart, { purchases }: Workshop): Mass | undefined {
  const need = purchases.adhesives.find(({ stock }) => stock.name === adhesive.name);
  return need && need.area > 0
    ? Mass.si((need.volume * adhesive.density * gluedArea) / need.area)
    : undefined;
}

function adhesiveGroup(facings: Group<FacingPart>, workshop: Workshop): GroupBlock {
  const [{ adhesive }] = facings;
  const inOrder = [...facings].sort((a, b) => Number(a.side === "inside") - Number(b.side === "inside"));
  return group(
    adhesive.name,
    steps(
      stepsFor(facings).map(({ text }) => text),
      "Order of work",
    ),
    ...dayPlan(facings),
    facingTable(inOrder, workshop),
  );
}

/** How long a panel takes from the first coat to the trimming, and where it lies meanwhile. */
function dayPlan(facings: Group<FacingPart>): RecipeBlock[] {
  const [{ adhesive }] = facings;
  const pressed = !adhesiveTraits[adhesive.kind].gripsOnTouch;
  const rows: readonly (readonly [string, string, string])[] = [
    ["Open time", Time.show(adhesive.openTime), "on trestles, coated face up, none on another"],
    [
      "Press",
      adhesive.pressTime > 0 ? Time.show(adhesive.pressTime) : "no clamps: rolled down hard",
      pressed ? "in one stack between cauls" : "on the bench, one at a time",
    ],
    [
      "Cure",
      Time.show(adhesive.cureTime),
      `flat on one stack of ${facings.length}, bare faces together, under a board and weights`,
    ],
  ];
  return [
    tableOf(
      rows,
      [
        { heading: "While", cell: ([what]) => what },
        { heading: "As its maker says", cell: ([, time]) => time, align: "left" },
        { heading: "Where the panels lie", cell: ([, , where]) => where },
      ],
      "Where the panels lie",
    ),
  ];
}

function timesTable(adhesive: Adhesive, bothFaces: string): RecipeBlock {
  const both = adhesive.faces === "both";
  const rows: readonly (readonly [string, string])[] = [
    ["Spread on", both ? bothFaces : "one face"],
    ["Open time", Time.show(adhesive.openTime)],
    ["Press for", adhesive.pressTime > 0 ? Time.show(adhesive.pressTime) : "no clamps: roll it down hard"],
    ["Leave to cure before trimming", Time.show(adhesive.cureTime)],
  ];
  return tableOf(rows, [
    { heading: adhesive.name, cell: ([what]) => what },
    { heading: "As its maker says", cell: ([, value]) => value, align: "left" },
  ]);
}

function stepsFor([{ adhesive }]: Group<FacingPart>): ShopStep[] {
  const { kind, faces, openTime, pressTime, cureTime } = adhesive;
  const { gripsOnTouch, sprayed } = adhesiveTraits[kind];
  const [open, cure] = [Time.show(openTime), Time.show(cureTime)];
  const press = pressTime > 0 ? ` Then press for ${Time.show(pressTime)}.` : "";
  const spread = faces === "both" ? "panel and laminate" : "the panel";
  const { alcohol, cloths, kitchenScale, jRoller, dowels, cauls, trimBit, tape, sandpaper, sealer } =
    supplies;
  return [
    step`Keep panel and laminate at room temperature for a day. Wipe both free of dust with ${cloths} and ${alcohol}. Lay out everything first.`,
    using(
      step`Weigh the can on the ${kitchenScale}. Spread ${spread} evenly to the very edge with ${sprayed ? supplies.spray : supplies.rollerCovers}. Weigh it again.`,
      supplies.respirator,
    ),
    ...(gripsOnTouch
      ? [
          step`Wait until it no longer comes off on a knuckle, and join within the open time (${open}).`,
          step`Lay the laminate on ${dowels}. Check the overhang all round before pulling the first dowel; pull from the middle.`,
          step`Roll hard with the ${jRoller} from the middle outwards, every edge twice.${press}`,
        ]
      : [
          step`Lay the laminate on within the open time (${open}). Check the overhang all round and hold it with ${tape}.`,
          step`Press it between ${cauls}, from the middle outwards.${press} Wipe off what squeezes out.`,
        ]),
    using(
      step`Leave it flat for ${cure} before trimming. Knock all over with a knuckle: a hollow sound is a blister.`,
      supplies.trestles,
      supplies.weights,
    ),
    using(
      step`Trim flush with the ${trimBit}. Break the edge with ${sandpaper}, and coat raw edges of plywood with ${sealer}.`,
      supplies.brush,
      supplies.router,
      supplies.eyes,
      supplies.mask,
    ),
  ];
}

function facingTable(facings: readonly FacingPart[], workshop: Workshop): RecipeBlock {
  const { pieces, rule } = workshop;
  return blanks(
    facings.map((facing, i) => ({ facing, turn: i + 1 })),
    [
      { heading: "Turn", cell: ({ turn }) => turn },
      { heading: "Panel", cell: ({ facing }) => `${codeOf(pieces.panels, facing.panel)} ${facing.panel}` },
      { heading: "Face", cell: ({ facing }) => facing.side },
      {
        heading: "Laminate",
        cell: ({ facing }) => codeOf(pieces.facings, `${facing.panel}, ${facing.side}`),
      },
      { heading: "Glued area", cell: ({ facing }) => rule.area(facing.gluedArea), align: "left" },
      {
        heading: `Out of the can, ±${100 * tolerance.adhesive} %`,
        cell: ({ facing }) => {
          const mass = adhesiveFor(facing, workshop);
          return mass === undefined ? "–" : rule.smallMass(mass);
        },
        align: "left",
      },
    ],
    ["Can before", "Can after"],
    ({ facing: { panel, side } }) =>
      (["can before", "can after"] as const).map((what) => ({ what, of: `${panel}, ${side}` })),
  );
}

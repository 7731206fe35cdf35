/** Laying laminate on the panels: which, with what, how much, in what order and how long. */
import { adhesiveTraits } from "../../bonding/index.js";
import type { Adhesive, FacingPart, GluePart } from "../../design/index.js";
import { cautions, steps, tableOf } from "../../page/index.js";
import { Mass, Time } from "../../quantity/index.js";
import { codeOf } from "../pieces.js";
import {
  type GroupBlock,
  group,
  type RecipeBlock,
  type RecipeSection,
  section,
  sentence,
  when,
} from "../recipe.js";
import { type Group, grouped } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on gluing; a case without laminate and without glued wood has none. */
export function gluingSection(workshop: Workshop): RecipeSection[] {
  const { facings, panels, glues } = workshop.parts;
  if (facings.length === 0 && glues.length === 0) return [];
  const oneSided = panels.some(({ facing }) => facing?.sides === "outside");
  return [
    section(
      "Gluing plan",
      ...when(facings.length > 0, () =>
        sentence(
          "Glue the laminate onto the cut panels, trim it flush, and only then cut openings and holes through both at once.",
        ),
      ),
      ...grouped(facings, ({ adhesive }) => adhesive.name).map(([, pieces]) =>
        adhesiveGroup(pieces, workshop),
      ),
      ...grouped(glues, ({ adhesive }) => adhesive.name).map(([, some]) => woodGroup(some, workshop)),
      ...(oneSided
        ? [
            cautions(
              "A panel with laminate on one side only can bow. Keep it flat under weight until it is fixed in.",
            ),
          ]
        : []),
    ),
  ];
}

/** Wood glued to wood with one adhesive. */
function woodGroup(glues: Group<GluePart>, { rule }: Workshop): GroupBlock {
  const [{ adhesive }] = glues;
  return group(
    `${adhesive.name}, wood to wood`,
    timesTable(adhesive, "both pieces"),
    steps(
      [
        "Fit the pieces dry, mark where they meet, and keep laminate, paint and dust off what is glued.",
        `Spread it thin and even, join within the open time (${Time.show(adhesive.openTime)}), and draw the joint shut with clamps or its screws.`,
        `Leave it for ${Time.show(adhesive.cureTime)} before anything pulls at it.`,
      ],
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
    timesTable(adhesive, "both faces: panel and laminate"),
    steps(stepsFor(adhesive), "Order of work"),
    facingTable(inOrder, workshop),
  );
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

function stepsFor({ kind, faces, openTime, pressTime, cureTime }: Adhesive): string[] {
  const contact = adhesiveTraits[kind].gripsOnTouch;
  const [open, cure] = [Time.show(openTime), Time.show(cureTime)];
  const press = pressTime > 0 ? `, then press for ${Time.show(pressTime)}` : "";
  const spread = faces === "both" ? "panel and laminate" : "the panel";
  return [
    "Panel and laminate at room temperature for a day; wipe both free of dust. Lay out everything first, the clock runs once you start.",
    `Weigh the can, spread ${spread} evenly to the very edge, weigh it again and write both down.`,
    ...(contact
      ? [
          `Wait until it no longer comes off on a knuckle, and join within the open time (${open}).`,
          "Lay dowels on the panel, the laminate on them with its oversize all round, and pull the dowels one by one from the middle: it grips on touch and cannot be moved.",
          `Roll hard from the middle outwards, every edge twice${press}.`,
        ]
      : [
          `Lay the laminate on within the open time (${open}) with its oversize all round, and tape it so that it cannot slip.`,
          `Clamp between flat cauls, from the middle outwards${press}; wipe off what squeezes out.`,
        ]),
    `Leave it flat for ${cure} before trimming.`,
    "Knock all over with a knuckle: a hollow sound is a blister. Then trim flush and break the sharp edge with a file.",
  ];
}

function facingTable(facings: readonly FacingPart[], workshop: Workshop): RecipeBlock {
  const { pieces, rule } = workshop;
  return tableOf(
    facings.map((facing, i) => ({ facing, turn: i + 1 })),
    [
      { heading: "Turn", cell: ({ turn }) => turn },
      { heading: "Panel", cell: ({ facing }) => `${codeOf(pieces.panels, facing.panel)} ${facing.panel}` },
      { heading: "Face", cell: ({ facing }) => facing.side },
      {
        heading: "Laminate",
        cell: ({ facing }) =>
          `${codeOf(pieces.facings, `${facing.panel}, ${facing.side}`)} ${facing.stock.name}`,
      },
      { heading: "Glued area", cell: ({ facing }) => rule.area(facing.gluedArea) },
      {
        heading: "Out of the can",
        cell: ({ facing }) => {
          const mass = adhesiveFor(facing, workshop);
          return mass === undefined ? "–" : Mass.show(mass, { unit: "g", digits: 3 });
        },
      },
    ],
    "Outside faces first, then inside faces",
  );
}

/**
 * What a random case may have on top: pairs of doors, frames, strips on shelves and doors, what is measured late, leftovers and price breaks. Drawn
 * by itself, so that the cases of known seeds stay what they are; every third seed has nothing of it.
 */

import type { CaseContent } from "./case-content.js";
import type { Block, Draws } from "./draws.js";

/** The same case with some of it. */
export function furtherOf(draws: Draws, { content, tables }: CaseContent): CaseContent {
  const latched = JSON.stringify(blockOf(content.hardware)["each turn latch"] ?? {});
  const sections = Object.fromEntries(
    Object.entries(blockOf(content.sections)).map(([name, section]) => [
      name,
      mapPanels(draws, blockOf(section), (face) => latched.includes(`"${name}.${face}"`)),
    ]),
  );
  const frames = framesOf(draws, sections);
  const own = { ...blockOf(content.stiffeners), ...frames };
  const rest = restOf(draws, { content, tables });
  const stiffeners = { ...own, ...strippedOf(draws, sections, blockOf(content.shelves)) };
  return {
    content: {
      ...content,
      sections,
      ...(Object.keys(stiffeners).length > 0 ? { stiffeners } : {}),
      ...rest.content,
    },
    tables: rest.tables,
  };
}

/** What is held, measured and sold otherwise. */
function restOf(draws: Draws, { content, tables }: CaseContent): CaseContent {
  return {
    content: {
      contents: mapBlock(content.contents, (thing) => cradled(draws, thing)),
      demands: {
        ...blockOf(content.demands),
        ...draws.some(4, { "stored under": `${draws.whole(0, 60)} kg` }),
      },
      ...measuredLate(draws, content),
    },
    tables: { ...tables, ...offersOf(draws, content) },
  };
}

/** A strip under a shelf, and one inside a door that fills its opening alone. */
function strippedOf(draws: Draws, sections: Block, shelves: Block): Block {
  const strip = { strip: "batten 30", adhesive: "white glue" };
  const under = Object.entries(shelves).flatMap(([name, shelf]) => {
    const { in: section, size } = blockOf(shelf);
    const [width = 0, depth = 0] = size as readonly number[];
    if (!draws.often(3)) return [];
    const place = { from: draws.pick(["bottom-left", "bottom-right"]), across: 0, up: depth / 4 };
    const on = `${String(section)}.shelf.${name}`;
    return [
      [`under ${name}`, { on, ...strip, ...place, length: width / 2, standing: draws.often(5) }] as const,
    ];
  });
  const inside = doorsOf(sections).flatMap(({ on, rectangle, leaf }) => {
    const [width, height] = [Number(rectangle.width), Number(rectangle.height)];
    const off = Number(rectangle["corner radius"] ?? 0) + draws.length(5);
    const length = height - 2 * Number(leaf.clearance) - 2 * off;
    if (!draws.often(4) || width < draws.length(100) + 2 * off || length < draws.length(40)) return [];
    const place = { runs: "up", from: draws.pick(["top-left", "bottom-right"]), across: off, up: off };
    return [{ on, ...strip, ...place, length }];
  });
  return Object.fromEntries([...under, ...inside.map((block, i) => [`door strip ${i + 1}`, block] as const)]);
}

/** Doors of rectangles that fill their opening alone. */
function doorsOf(
  sections: Block,
): readonly { readonly on: string; readonly rectangle: Block; readonly leaf: Block }[] {
  return Object.entries(sections).flatMap(([section, one]) =>
    Object.entries(blockOf(blockOf(one).panels)).flatMap(([face, panel]) =>
      Object.entries(blockOf(blockOf(panel).openings)).flatMap(([name, opening]) => {
        const { leaf, rectangle } = blockOf(opening);
        const on = `${section}.${face}.${name}`;
        return leaf && rectangle ? [{ on, rectangle: blockOf(rectangle), leaf: blockOf(leaf) }] : [];
      }),
    ),
  );
}

function blockOf(value: unknown): Block {
  return (value ?? {}) as Block;
}

function mapBlock(value: unknown, change: (one: Block) => Block): Block {
  return Object.fromEntries(
    Object.entries(blockOf(value)).map(([name, one]) => [name, change(blockOf(one))]),
  );
}

/** A latch in the middle of a door would lie in the gap between two. */
function mapPanels(draws: Draws, section: Block, hasLatch: (face: string) => boolean): Block {
  if (!section.panels) return section;
  const panels = Object.entries(blockOf(section.panels)).map(([face, panel]) => {
    const { openings } = blockOf(panel);
    if (!openings || hasLatch(face)) return [face, panel] as const;
    return [face, { ...blockOf(panel), openings: mapBlock(openings, (one) => shared(draws, one)) }] as const;
  });
  return { ...section, panels: Object.fromEntries(panels) };
}

/** A door becomes a pair of doors, or one in two halves; the hardware that was there stays where it was. */
function shared(draws: Draws, opening: Block): Block {
  const { leaf, ...rest } = opening;
  if (!leaf || !draws.often(4)) return opening;
  const { clearance, ...own } = blockOf(leaf);
  const across = draws.often(6);
  const other = across ? (own.hinge === "left" ? "right" : "left") : own.hinge;
  const each = [
    ["wing", { ...own, clearance, share: across ? draws.whole(1, 2) : 1 }],
    ["fellow", { hinge: other, clearance }],
  ] as const;
  const first = across && own.hinge === "right" ? [...each].reverse() : each;
  return {
    ...rest,
    rectangle: { ...blockOf(rest.rectangle), "corner radius": 0 },
    leaves: { runs: across ? "across" : "up", gap: draws.length(3), each: Object.fromEntries(first) },
  };
}

/** Frames of sheet round openings that nothing closes. */
function framesOf(draws: Draws, sections: Block): Block {
  const bare = Object.entries(sections).flatMap(([section, one]) =>
    Object.entries(blockOf(blockOf(one).panels)).flatMap(([face, panel]) =>
      Object.entries(blockOf(blockOf(panel).openings)).flatMap(([name, opening]) => {
        const { leaf, leaves, pane, notch } = blockOf(opening);
        return name.startsWith("cut") && !leaf && !leaves && !pane && !notch ? [{ section, face, name }] : [];
      }),
    ),
  );
  const framed = bare.filter(() => draws.often(3));
  return Object.fromEntries(
    framed.map(({ section, face, name }, i) => [
      `frame ${i + 1}`,
      {
        on: `${section}.${face}`,
        kind: "frame",
        sheet: "ply 9",
        round: name,
        width: draws.length(8),
        side: draws.pick(["inside", "outside"]),
        adhesive: "white glue",
      },
    ]),
  );
}

function cradled(draws: Draws, thing: Block): Block {
  const held = blockOf(thing.held);
  if (held.by !== "cradle" || held.lid !== true || !draws.often(5)) return thing;
  return { ...thing, held: { ...held, "lid rated": `${draws.whole(5, 40) * 10} N` } };
}

/** What a builder measures or reads off late: trips, a spray test, straps, the breaker outdoors. */
function measuredLate(draws: Draws, { journey, services }: Block): Block {
  const trips = { "trips per look": draws.whole(1, 30) };
  const spray = {
    "spray test": { time: `${draws.whole(2, 12)} min`, water: `${draws.pick([0, 0, 0, 30])} g` },
  };
  const { lashing, ...moved } = blockOf(journey);
  const { mains, ...served } = blockOf(services);
  const strap = draws.some(5, { "strap width": draws.length(draws.whole(25, 50)) });
  const trip = draws.some(5, { "residual current": `${draws.pick([5, 10, 30])} mA` });
  return {
    ...(journey
      ? {
          journey: {
            ...moved,
            ...draws.some(5, { ...trips, ...spray }),
            ...(lashing ? { lashing: { ...blockOf(lashing), ...strap } } : {}),
          },
        }
      : {}),
    ...(services
      ? { services: { ...served, ...(mains ? { mains: { ...blockOf(mains), ...trip } } : {}) } }
      : {}),
  };
}

/** Leftovers on the rack, price breaks, and panes and strips of which more is known. */
function offersOf(draws: Draws, { currency }: Block): Readonly<Record<string, string>> {
  const { often, whole } = draws;
  const leftovers = `name,stock,length (mm),width (mm),count
rack 1,ply 9,${whole(300, 1200)},${whole(200, 600)},${whole(1, 2)}
rack 2,angle 40,${whole(300, 1500)},,${whole(1, 4)}`;
  const breaks = `item,from,price (${String(currency)})
ply 9,${whole(2, 4)},${whole(30, 54)}
ply 12,${whole(2, 4)},${whole(40, 69)}
corner 50,${whole(2, 20)},1.5`;
  return {
    ...(often(4) ? { "leftovers.csv": leftovers } : {}),
    ...(often(4) ? { "price-breaks.csv": breaks } : {}),
  };
}

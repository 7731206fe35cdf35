/** Drawers as the case file says them: a box on slides behind an opening, with a front that fills it. */
import { Length, Mass, Name } from "../../quantity/index.js";
import { jointForm } from "./contents.js";
import { type BlockOf, block, byName, type Form, needed, optional, preset } from "./form.js";

const drawerFields = {
  section: needed("in", Name, "The section it is in."),
  opening: needed("opening", Name, 'The opening that it comes out of, with its face: "front.tool bay".'),
  slides: needed("slides", Name, "The pair of slides it runs on, a name of hardware.csv."),
  depth: needed("depth", Length, "Of its box, from the inside of the panel inwards.", { above: 0 }),
  sheet: needed("sheet", Name, "What the sides of its box are cut from, a name of sheet-stock.csv."),
  bottom: optional("bottom", Name, "What its bottom is cut from; as its sides where it is left out."),
  gap: preset("gap", Length, Length.si(0.003), "Left free round its front, in the opening.", { min: 0 }),
  joint: needed("joint", jointForm, "The fasteners that hold its box together."),
  load: preset("load", Mass, Mass.si(0), "What lies in it.", { min: 0 }),
};

/** A drawer. */
export interface Drawer extends BlockOf<typeof drawerFields> {
  /** What the drawer is called. */
  readonly name: string;
}

/** Every drawer by name. */
export const drawersForm: Form<readonly Drawer[]> = byName(block(drawerFields), '"tool drawer"');

/** The sections of the case file, as written. */
import type { z } from "zod";
import { Name } from "../../quantity/index.js";
import type { Facing, Opening, Panel, Section } from "../case.js";
import { type EdgeName, edgeNames, type Face, faces } from "../place.js";
import {
  type Build,
  buildField,
  type EdgeOverride,
  edgeField,
  facingField,
  grainField,
  type Override,
} from "./build-fields.js";
import { block, type FileUnits, field, lengthIn, named } from "./fields.js";
import { openingsField } from "./opening-field.js";

/** One section as written, before the builds are laid under it. */
export interface WrittenSection {
  readonly inside: Section["inside"];
  readonly build?: Build | undefined;
  readonly panels: Readonly<Partial<Record<Face, PanelOverride>>>;
  readonly edges: Readonly<Partial<Record<EdgeName, EdgeOverride>>>;
}

interface PanelOverride {
  readonly sheet?: string | undefined;
  readonly grain?: Panel["grain"] | undefined;
  readonly facing?: Override<Facing> | undefined;
  readonly openings?: readonly Opening[] | undefined;
}

/** The sections by name, from the ground up. */
export function sectionsField(units: FileUnits): z.ZodType<readonly (readonly [string, WrittenSection])[]> {
  const size = field(lengthIn(units), { above: 0 });
  const panel: z.ZodType<PanelOverride> = block({
    sheet: field(Name).optional(),
    grain: grainField.optional(),
    facing: facingField(units).optional(),
    openings: openingsField(units).optional(),
  });
  const panels = optionalBlock(faces, () => panel);
  const edges = optionalBlock(edgeNames, (edge) => edgeField(units, ...(edge.split("-") as [Face, Face])));
  const section: z.ZodType<WrittenSection> = block({
    inside: block({ width: size, depth: size, height: size }),
    build: buildField(units).optional(),
    panels: panels.default({}),
    edges: edges.default({}),
  });
  return named(section, '"lower"');
}

function optionalBlock<Word extends string, T>(
  words: readonly Word[],
  item: (word: Word) => z.ZodType<T>,
): z.ZodType<Partial<Record<Word, T>>> {
  const shape = Object.fromEntries(words.map((word) => [word, item(word).optional()]));
  return block(shape) as unknown as z.ZodType<Partial<Record<Word, T>>>;
}

/** The files of finite-element cases, as they come: mm, N, MPa, t/mm3, Hz, degrees. */
import { z } from "zod";

/** A place in mm. */
export type CasePlace = [number, number];

/** A rectangle in mm. */
export interface CaseBox {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** An opening; a rectangle may have a corner radius. */
export type CaseCutout =
  | (CaseBox & { readonly type: "rect"; readonly r?: number | undefined })
  | { readonly type: "circle"; readonly cx: number; readonly cy: number; readonly r: number };

/** What a sheet is made of; kG is its shear modulus through the thickness, correction included. */
export interface CaseMaterial {
  readonly E1: number;
  readonly E2: number;
  readonly nu12: number;
  readonly G12: number;
  readonly kG: number;
  readonly rho: number;
}

/** A rectangle of a panel with a use of its own: a patch of load, a strip of other thickness, a batten. */
export interface CaseRegion {
  readonly name: string;
  readonly kind?: string | undefined;
  readonly region: CaseBox;
  /** Total thickness of a strip, or height of a batten, under any of these names. */
  readonly thickness?: number | undefined;
  readonly t?: number | undefined;
  readonly height?: number | undefined;
  readonly t_extra?: number | undefined;
  readonly grain_deg?: number | undefined;
  /** What differs from the panel's own material. */
  readonly material?: { readonly [Constant in keyof CaseMaterial]?: number | undefined } | undefined;
}

/** One panel. */
export interface PanelCase {
  readonly id: string;
  readonly geometry: { readonly length: number; readonly width: number; readonly cutouts: CaseCutout[] };
  readonly thickness: number;
  readonly material: CaseMaterial;
  readonly grain_deg: number;
  readonly load:
    | { readonly type: "pressure"; readonly q: number }
    | { readonly type: "patch"; readonly F: number };
  readonly regions: CaseRegion[];
  readonly probes: Record<string, CasePlace>;
  readonly singular_points: CasePlace[];
  readonly r_exclude: number;
  /** Lines with their push along x and y, N/mm. */
  readonly buckling?: { readonly edge_loads: [[CasePlace, CasePlace], number, number][] } | undefined;
  readonly edges: { readonly segment: [CasePlace, CasePlace]; readonly type: "ss" | "clamped" }[];
  /** Numbers with their band, and plain notes such as where a maximum lies. */
  readonly expected: { readonly mindlin: Record<string, unknown> };
}

const number: z.ZodNumber = z.number();
const place: z.ZodType<CasePlace> = z.tuple([number, number]);
const sides = { x: number, y: number, w: number, h: number };
const cutout: z.ZodType<CaseCutout> = z.discriminatedUnion("type", [
  z.object({ type: z.literal("rect"), ...sides, r: number.optional() }),
  z.object({ type: z.literal("circle"), cx: number, cy: number, r: number }),
]);

const constants = { E1: number, E2: number, nu12: number, G12: number, kG: number, rho: number };

/** Reads a material. */
export const caseMaterial: z.ZodType<CaseMaterial> = z.looseObject(constants);

const region: z.ZodType<CaseRegion> = z.looseObject({
  name: z.string(),
  kind: z.string().optional(),
  region: z.looseObject({ ...sides }),
  thickness: number.optional(),
  t: number.optional(),
  height: number.optional(),
  t_extra: number.optional(),
  grain_deg: number.optional(),
  material: z.looseObject(constants).partial().optional(),
});

/** Reads one panel. */
export const panelCase: z.ZodType<PanelCase> = z.looseObject({
  id: z.string(),
  geometry: z.object({ length: number, width: number, cutouts: z.array(cutout) }),
  thickness: number,
  material: caseMaterial,
  grain_deg: number,
  load: z.discriminatedUnion("type", [
    z.looseObject({ type: z.literal("pressure"), q: number }),
    z.looseObject({ type: z.literal("patch"), F: number }),
  ]),
  regions: z.array(region),
  probes: z.record(z.string(), place),
  singular_points: z.array(place),
  r_exclude: number,
  buckling: z
    .looseObject({ edge_loads: z.array(z.tuple([z.tuple([place, place]), number, number])) })
    .optional(),
  edges: z.array(z.looseObject({ segment: z.tuple([place, place]), type: z.enum(["ss", "clamped"]) })),
  expected: z.looseObject({ mindlin: z.record(z.string(), z.unknown()) }),
});

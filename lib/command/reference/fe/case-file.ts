/** The files of finite-element cases, as they come: mm, N, MPa, t/mm3, Hz, degrees. */
import { z } from "zod";

/** A place in mm. */
export type CasePlace = [number, number];

/** A rectangle in mm. */
export interface CaseBox {
  /** Left side, mm. */
  readonly x: number;
  /** Lower side, mm. */
  readonly y: number;
  /** Width, mm. */
  readonly w: number;
  /** Height, mm. */
  readonly h: number;
}

/** An opening; a rectangle may have a corner radius. */
export type CaseCutout =
  | (CaseBox & { readonly type: "rect"; readonly r?: number | undefined })
  | { readonly type: "circle"; readonly cx: number; readonly cy: number; readonly r: number };

/** What a sheet is made of; kG is its shear modulus through the thickness, correction included. */
export interface CaseMaterial {
  /** Modulus along the grain, MPa. */
  readonly E1: number;
  /** Modulus across the grain, MPa. */
  readonly E2: number;
  /** Poisson's ratio of a pull along the grain. */
  readonly nu12: number;
  /** Shear modulus in the plane, MPa. */
  readonly G12: number;
  /** Shear modulus through the thickness times its shear factor, MPa. */
  readonly kG: number;
  /** Density, t/mm3. */
  readonly rho: number;
}

/** A rectangle of a panel with a use of its own: a patch of load, a strip of other thickness, a batten. */
export interface CaseRegion {
  /** What the file calls it. */
  readonly name: string;
  /** What it is, where the file says. */
  readonly kind?: string | undefined;
  /** Where it is. */
  readonly region: CaseBox;
  /** Total thickness of a strip, or height of a batten, under any of these names. */
  readonly thickness?: number | undefined;
  /** Thickness, mm. */
  readonly t?: number | undefined;
  /** Height over the sheet, mm. */
  readonly height?: number | undefined;
  /** Added thickness, mm. */
  readonly t_extra?: number | undefined;
  /** Direction of its grain, degrees. */
  readonly grain_deg?: number | undefined;
  /** What differs from the panel's own material. */
  readonly material?: { readonly [Constant in keyof CaseMaterial]?: number | undefined } | undefined;
}

/** One panel. */
export interface PanelCase {
  /** Names the case. */
  readonly id: string;
  /** Size of the panel, mm, and its openings. */
  readonly geometry: { readonly length: number; readonly width: number; readonly cutouts: CaseCutout[] };
  /** Of the sheet, mm. */
  readonly thickness: number;
  /** Of the sheet. */
  readonly material: CaseMaterial;
  /** Direction of the grain, degrees. */
  readonly grain_deg: number;
  /** What bears on it. */
  readonly load:
    | { readonly type: "pressure"; readonly q: number }
    | { readonly type: "patch"; readonly F: number };
  /** Places that differ from the sheet. */
  readonly regions: CaseRegion[];
  /** Places, mm, at which values are given. */
  readonly probes: Record<string, CasePlace>;
  /** Places, mm, where stress has no bound. */
  readonly singular_points: CasePlace[];
  /** How far round such a place no stress is compared, mm. */
  readonly r_exclude: number;
  /** Lines with their push along x and y, N/mm. */
  readonly buckling?: { readonly edge_loads: [[CasePlace, CasePlace], number, number][] } | undefined;
  /** How each stretch of the rim is held. */
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

/** Box cases as they come: mm, N, MPa. */
import { z } from "zod";
import { type CaseMaterial, caseMaterial } from "./case-file.js";

/** x, y, z in mm. */
export type BoxPlace = [number, number, number];

/** An opening of a face, in the face's own axes. */
type BoxCutout = { readonly face: string } & (
  | {
      readonly type: "rect";
      readonly u: number;
      readonly v: number;
      readonly w: number;
      readonly h: number;
      readonly r?: number | undefined;
    }
  | { readonly type: "circle"; readonly u: number; readonly v: number; readonly r: number }
);

/** Strips of metal bonded outside along the edges. */
interface EdgeAngle {
  /** Of each leg, mm. */
  readonly width: number;
  /** Of a leg, mm. */
  readonly thickness: number;
  /** What it is made of. */
  readonly material: CaseMaterial;
}

/** One box. */
export interface BoxCase {
  /** Names the case. */
  readonly id: string;
  /** Inside or outside sizes, as the file says, mm. */
  readonly geometry: {
    readonly L: number;
    readonly W: number;
    readonly H: number;
    readonly open_faces: string[];
    readonly cutouts: BoxCutout[];
  };
  /** Of the sheet, mm. */
  readonly thickness: number;
  /** Of the sheet. */
  readonly material: CaseMaterial;
  /** The box's axis along which each face's grain runs. */
  readonly grain: Partial<Record<string, "x" | "y" | "z">>;
  /** Side of the square patches in the bottom's corners. */
  readonly castor_patch: number;
  /** Angles along the edges; null where there are none. */
  readonly edge_angle: EdgeAngle | null;
  /** Places, mm, at which values are given. */
  readonly named_points: Record<string, BoxPlace>;
  /** Values with their band, by load case. */
  readonly expected: { readonly mindlin: Record<string, Record<string, unknown>> };
}

const number: z.ZodNumber = z.number();

/** A plain metal as E and nu, or all its constants. */
const stripMaterial: z.ZodType<CaseMaterial> = z.union([
  caseMaterial,
  z.looseObject({ E: number, nu: number, rho: number.optional() }).transform(({ E, nu, rho }) => {
    const shear = E / (2 * (1 + nu));
    return { E1: E, E2: E, nu12: nu, G12: shear, kG: shear, rho: rho ?? 2.7e-9 };
  }),
]);

const edgeAngle: z.ZodType<EdgeAngle> = z
  .looseObject({
    width: number.optional(),
    w: number.optional(),
    leg: number.optional(),
    thickness: number.optional(),
    t: number.optional(),
    material: stripMaterial.optional(),
  })
  .transform((found, context): EdgeAngle => {
    const { width = found.w ?? found.leg, thickness = found.t, material } = found;
    const own = material ?? stripMaterial.safeParse(found).data;
    if (width !== undefined && thickness !== undefined && own) return { width, thickness, material: own };
    context.addIssue("expected edge_angle with width, thickness and material");
    return z.NEVER;
  });

/** Reads one box. */
export const boxCase: z.ZodType<BoxCase> = z.looseObject({
  id: z.string(),
  geometry: z.looseObject({
    L: number,
    W: number,
    H: number,
    open_faces: z.array(z.string()),
    cutouts: z.array(
      z.discriminatedUnion("type", [
        z.looseObject({
          face: z.string(),
          type: z.literal("rect"),
          u: number,
          v: number,
          w: number,
          h: number,
          r: number.optional(),
        }),
        z.looseObject({ face: z.string(), type: z.literal("circle"), u: number, v: number, r: number }),
      ]),
    ),
  }),
  thickness: number,
  material: caseMaterial,
  grain: z.record(z.string(), z.enum(["x", "y", "z"])),
  castor_patch: number,
  edge_angle: edgeAngle.nullable(),
  named_points: z.record(z.string(), z.tuple([number, number, number])),
  expected: z.looseObject({ mindlin: z.record(z.string(), z.record(z.string(), z.unknown())) }),
});

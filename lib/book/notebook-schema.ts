/** What a notebook file may hold. */
import { z } from "zod";
import { joinTexts } from "./mime-bundle.js";
import type { Notebook } from "./notebook.js";

const multiline = z
  .union([z.string(), z.array(z.string())])
  .transform((text) => (typeof text === "string" ? text : text.join("")));
const metadata = z.record(z.string(), z.unknown());
const mimeBundle = z.record(z.string(), z.unknown()).transform(joinTexts);
const count = z.int().min(0).nullable();

const output = z.discriminatedUnion("output_type", [
  z.strictObject({ output_type: z.literal("stream"), name: z.enum(["stdout", "stderr"]), text: multiline }),
  z.strictObject({ output_type: z.literal("display_data"), data: mimeBundle, metadata }),
  z.strictObject({
    output_type: z.literal("execute_result"),
    execution_count: count,
    data: mimeBundle,
    metadata,
  }),
  z.strictObject({
    output_type: z.literal("error"),
    ename: z.string(),
    evalue: z.string(),
    traceback: z.array(z.string()),
  }),
]);

const anyCell = {
  id: z.string().regex(/^[a-zA-Z0-9-_]{1,64}$/, "expected 1 to 64 letters, digits, - or _"),
  metadata,
  source: multiline,
};
const attachments = z.record(z.string(), mimeBundle).optional();

const cell = z.discriminatedUnion("cell_type", [
  z.strictObject({
    cell_type: z.literal("code"),
    ...anyCell,
    execution_count: count,
    outputs: z.array(output),
  }),
  z.strictObject({ cell_type: z.literal("markdown"), ...anyCell, attachments }),
  z.strictObject({ cell_type: z.literal("raw"), ...anyCell, attachments }),
]);

/** A notebook file of nbformat 4.5, its texts joined. */
export const notebookSchema: z.ZodType<Notebook> = z.strictObject({
  nbformat: z.literal(4),
  nbformat_minor: z.literal(5),
  metadata,
  cells: z.array(cell).superRefine((cells, context) => {
    const ids = cells.map(({ id }) => id);
    ids.forEach((id, i) => {
      if (ids.indexOf(id) < i) {
        context.addIssue({
          code: "custom",
          path: [i, "id"],
          message: `expected an id of its own, "${id}" is taken`,
        });
      }
    });
  }),
});

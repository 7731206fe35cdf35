/** Whether wood is glued to laminate with a glue that needs wood on both sides. */
import type { Adhesive, PanelPart } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { cite } from "../../source.js";
import { type Question, question } from "../question.js";
import { each } from "../subjects.js";

/** Wood on a face of a panel that is covered with laminate. */
interface GluedOnLaminate {
  /** What is glued: a stiffener, a cleat at an edge. */
  readonly id: string;
  /** Id of the panel. */
  readonly panel: string;
  /** What glues it. */
  readonly adhesive: Adhesive;
}

function hasLaminate({ facing }: PanelPart, side: "inside" | "outside"): boolean {
  return facing !== undefined && (facing.sides === "both" || side === "outside");
}

/** Wood glue on laminate: what stands on a covered face, and cleats, blocks and glued edges inside a covered box. */
function gluedOnLaminate({ parts }: ReviewInput): readonly GluedOnLaminate[] {
  const covered = (panel: string, side: "inside" | "outside"): boolean =>
    parts.panels.some((one) => one.id === panel && hasLaminate(one, side));
  const stiffeners = parts.stiffeners.flatMap(({ id, panel, side, adhesive }) =>
    adhesive && covered(panel, side) ? [{ id, panel, adhesive }] : [],
  );
  const joints = parts.joints.flatMap(({ id, panels, adhesive }) => {
    const panel = panels.find((one) => covered(one, "inside"));
    return adhesive && panel !== undefined ? [{ id, panel, adhesive }] : [];
  });
  return [...stiffeners, ...joints].filter(({ adhesive }) => adhesive.kind === "wood glue");
}

/** Whether wood glue meets laminate anywhere, where it does not hold. */
export const gluedLaminate: Question = question({
  id: "joints.laminate",
  about: each(gluedOnLaminate, ({ id }) => id),
  ask: ({ id, panel }) => `Does the glue of ${id} hold on the laminate of ${panel}?`,
  tier: "strength",
  cautions: [
    "Wood glue on laminate holds for a day and peels later, without a sound: never trust such a joint.",
  ],
  answer: (_, __, { adhesive, panel }) => ({
    plainNo: true,
    facts: `The adhesive ${adhesive.name} holds by soaking into wood, and the laminate of ${panel} lets nothing in.`,
    remedies: [
      {
        words:
          "Glue it before the laminate goes on, cut the laminate away there, or use contact cement or epoxy with screws.",
      },
    ],
    rests: "what the table says the glue is",
    because: [],
    limit: cite("common-practice", "wood glue needs bare wood on both sides"),
  }),
});

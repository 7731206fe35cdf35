/** Words of the trade and of mechanics that the pages use, each in one plain sentence. */

/** A word and what it means. */
export interface Term {
  /** The word as the pages write it. */
  readonly name: string;
  /** What it means, in one sentence. */
  readonly meaning: string;
  /** Other forms of the same word, such as its plural. */
  readonly forms?: readonly string[];
  /** Other names of the same thing, which the pages leave to others. */
  readonly not?: readonly string[];
}

/** Every word that is explained, in the order of the alphabet. */
export const terms: readonly Term[] = [
  {
    name: "batten",
    meaning: "A batten is a strip of wood glued or screwed along a panel to stiffen it.",
    forms: ["battens"],
  },
  {
    name: "caster",
    meaning:
      "A caster is a wheel in a fork that is bolted under the case; a swivel caster turns about its axis.",
    forms: ["casters"],
    not: ["castor", "castors", "trolley wheel"],
  },
  {
    name: "centre of gravity",
    meaning: "The centre of gravity is the point at which a case would balance on a fingertip.",
    not: ["centre of mass", "center of gravity", "center of mass"],
  },
  {
    name: "characteristic strength",
    meaning: "A characteristic strength is one that 95 of 100 pieces exceed.",
    forms: ["characteristic strengths"],
  },
  {
    name: "cradle",
    meaning: "A cradle is a frame lined with foam that is cut to the shape of what lies in it.",
    forms: ["cradles"],
  },
  {
    name: "creep",
    meaning: "Creep is the further sag of a loaded part over months and years.",
  },
  {
    name: "criterion",
    meaning: "A criterion is the rule that an answer is held against, with where the rule comes from.",
    forms: ["criteria"],
  },
  {
    name: "design strength",
    meaning: "A design strength is a characteristic strength made smaller for damp, for time and for safety.",
    forms: ["design strengths"],
  },
  {
    name: "duty",
    meaning: "The duty of a load is the share of the time that it is switched on.",
  },
  {
    name: "extrusion",
    meaning: "An extrusion is a bar of one section all along, such as the aluminium angle over an edge.",
    forms: ["extrusions"],
  },
  {
    name: "facing",
    meaning: "A facing is the thin hard sheet that is glued over the plywood.",
    forms: ["facings"],
  },
  {
    name: "grain",
    meaning: "The grain is the way the wood fibres of the outer veneer run; plywood is stiffest along it.",
  },
  {
    name: "grip",
    meaning: "The grip of a rivet is the thickness of all that it holds together.",
    forms: ["grips", "grip range"],
  },
  {
    name: "ground-fault device",
    meaning:
      "A ground-fault device (GFCI, RCD) switches the mains off when current leaks to earth, before it kills.",
    forms: ["GFCI", "RCD", "residual current device"],
  },
  {
    name: "kerf",
    meaning: "The kerf is the width of material that a saw blade turns into dust.",
    forms: ["kerfs"],
  },
  {
    name: "leaf",
    meaning: "A leaf is the moving part of a door or a lid.",
    forms: ["leaves"],
  },
  {
    name: "lifting index",
    meaning:
      "The lifting index is the weight to be lifted over the weight that is recommended; above 1 it harms.",
  },
  {
    name: "margin",
    meaning: "The margin is how much of what a part may bear is left over.",
    forms: ["margins"],
  },
  {
    name: "mesh",
    meaning: "A mesh is the net of small pieces into which a panel is cut to work out how it bends.",
    forms: ["meshes"],
  },
  {
    name: "modulus",
    meaning:
      "A modulus says how stiff a material is: the pull on each unit of area for each unit of stretch.",
    forms: ["moduli"],
  },
  {
    name: "offset",
    meaning: "The offset of a swivel caster is the level distance from its swivel axis to its axle.",
    forms: ["offsets"],
    not: ["swivel lead"],
  },
  {
    name: "pilot hole",
    meaning:
      "A pilot hole is a hole thinner than the screw, so that the thread bites and the wood does not split.",
    forms: ["pilot holes"],
    not: ["lead hole", "lead holes"],
  },
  {
    name: "pitch",
    meaning: "The pitch is the distance from the middle of one fastener to the middle of the next.",
    forms: ["pitches"],
  },
  {
    name: "racking",
    meaning: "Racking is a box leaning sideways, so that its faces go out of square.",
    forms: ["racks"],
  },
  {
    name: "released",
    meaning: "A case is released when every question of safety and strength is answered with yes.",
  },
  {
    name: "safety factor",
    meaning: "A safety factor is how many times more a part holds than it is allowed to carry.",
    forms: ["safety factors"],
    not: ["factor of safety"],
  },
  {
    name: "sag",
    meaning: "Sag is how far a loaded part bends from where it was, at the place where it bends most.",
    forms: ["sags"],
  },
  {
    name: "seam",
    meaning: "A seam is an edge where two panels are fastened to each other.",
    forms: ["seams"],
  },
  {
    name: "set back",
    meaning: "The set back is the distance from the edge of a panel to the middle of its fasteners.",
    forms: ["setback"],
  },
  {
    name: "shear",
    meaning: "Shear is what a fastener or a sheet feels when two things slide past each other.",
    forms: ["sheared", "shears"],
  },
  {
    name: "stack",
    meaning: "A stack is all the layers that one fastener goes through, from its head to its tail.",
    forms: ["stacks"],
  },
  {
    name: "standard tension",
    meaning: "The standard tension (STF on its label) of a strap is the pull that its ratchet leaves in it.",
    forms: ["STF"],
  },
  {
    name: "tail",
    meaning: "The tail is the end of a rivet that swells behind the sheet when it is set.",
    forms: ["tails"],
  },
  {
    name: "tier",
    meaning:
      "The tier of a question says who or what a wrong answer harms: safety, strength, handling or feel.",
    forms: ["tiers"],
  },
  {
    name: "transmissibility",
    meaning: "Transmissibility is how much of the shaking below a mount arrives above it.",
  },
  {
    name: "veneer",
    meaning: "A veneer is one of the thin layers of wood that plywood is glued up from.",
    forms: ["veneers"],
  },
  {
    name: "washer",
    meaning: "A washer under the tail of a rivet spreads its pull over more of a soft sheet.",
    forms: ["washers"],
    not: ["backup washer", "burr washer"],
  },
];

/** What dries out of a glue. */
export type Solvent = "none" | "flammable" | "non-flammable";

const everySolvent = [
  "Read the safety data sheet of the adhesive and keep to it; where it and this differ, it is right.",
  "Air the room well, out of doors if you can: the fumes of a whole can are in the air at once.",
] as const;

/**
 * Cautions that go with gluing large faces. They do not replace the maker's safety data sheet or local
 * rules for solvents.
 */
export function solventCautions(solvent: Solvent): readonly string[] {
  if (solvent === "none") return ["Wear gloves; read the safety data sheet of the adhesive."];
  if (solvent === "flammable") {
    return [
      ...everySolvent,
      "No flame, no pilot light, no switch, no sparking tool in the room or the next one until it is aired: the vapour is heavier than air and travels.",
      "Shut rags and rollers in a metal can with a lid, out of doors.",
    ];
  }
  return [
    ...everySolvent,
    "Wear a mask for organic vapours: these solvents are hard on the lungs and nerves.",
  ];
}

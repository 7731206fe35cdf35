import type { ReviewInput } from "../../model/index.js";
import type { Finding } from "../finding.js";
import { airFindings } from "./air-findings.js";
import { cableFindings } from "./cable-findings.js";
import { clearanceFindings } from "./clearance-findings.js";
import { heatFindings } from "./heat-findings.js";
import { holdFindings } from "./hold-findings.js";
import { mountFindings } from "./mount-findings.js";
import { passThroughFindings } from "./pass-through-findings.js";
import { powerFindings } from "./power-findings.js";
import { rattleFindings } from "./rattle-findings.js";
import { screenFindings } from "./screen-findings.js";
import { shelfRideFindings } from "./shelf-ride-findings.js";
import { sunFindings } from "./sun-findings.js";

/** Every question about what rides inside: held, quiet, cool, powered. */
export function fitOutFindings(input: ReviewInput): readonly Finding[] {
  return [
    ...holdFindings(input),
    ...shelfRideFindings(input),
    ...rattleFindings(input),
    ...mountFindings(input),
    ...clearanceFindings(input),
    ...screenFindings(input),
    ...cableFindings(input),
    ...passThroughFindings(input),
    ...heatFindings(input),
    ...sunFindings(input),
    ...airFindings(input),
    ...powerFindings(input),
  ];
}

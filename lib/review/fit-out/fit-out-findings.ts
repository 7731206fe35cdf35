import type { Finding } from "../finding.js";
import type { ReviewInput } from "../review-input.js";
import { cableFindings } from "./cable-findings.js";
import { heatFindings } from "./heat-findings.js";
import { holdFindings } from "./hold-findings.js";
import { powerFindings } from "./power-findings.js";
import { rattleFindings } from "./rattle-findings.js";
import { screenFindings } from "./screen-findings.js";
import { shelfRideFindings } from "./shelf-ride-findings.js";

/** Every question about what rides inside: held, quiet, cool, powered. */
export function fitOutFindings(input: ReviewInput): readonly Finding[] {
  return [
    ...holdFindings(input),
    ...shelfRideFindings(input),
    ...rattleFindings(input),
    ...screenFindings(input),
    ...cableFindings(input),
    ...heatFindings(input),
    ...powerFindings(input),
  ];
}

import type { ReviewInput } from "../../model/index.js";
import type { Finding } from "../finding.js";
import { balanceFindings } from "./balance-findings.js";
import { casterFinding } from "./caster-finding.js";
import { dropEdgeFindings } from "./drop-edge-findings.js";
import { dropFindings } from "./drop-findings.js";
import { gripFindings } from "./grip-findings.js";
import { groundFindings } from "./ground-findings.js";
import { handholdFindings } from "./handhold-findings.js";
import { hangFindings } from "./hang-findings.js";
import { lashingFindings } from "./lashing-findings.js";
import { liftFindings } from "./lift-findings.js";
import { pushFindings } from "./push-findings.js";
import { rampFindings } from "./ramp-findings.js";
import { rollFinding } from "./roll-finding.js";
import { shelfRoadFindings } from "./shelf-road-findings.js";
import { stairsFindings } from "./stairs-findings.js";
import { child, push, slope, tip, wind } from "./standing.js";
import { teamFindings } from "./team-findings.js";

/** Every question about moving a case: lifted, carried, rolled, stood, driven, dropped. */
export function travelFindings(input: ReviewInput): readonly Finding[] {
  return [
    ...balanceFindings(input),
    ...liftFindings(input),
    ...teamFindings(input),
    ...gripFindings(input),
    ...handholdFindings(input),
    ...hangFindings(input),
    ...stairsFindings(input),
    rollFinding(input),
    ...pushFindings(input),
    ...rampFindings(input),
    ...groundFindings(input),
    ...tip(input),
    ...push(input),
    casterFinding(input),
    ...child(input),
    ...wind(input),
    ...slope(input),
    ...lashingFindings(input),
    ...shelfRoadFindings(input),
    ...dropFindings(input),
    ...dropEdgeFindings(input),
  ];
}

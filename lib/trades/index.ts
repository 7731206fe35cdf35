/** Every formula under its trade, as a notebook names it. A formula that stands in no file named here has no trade. */

import * as adhesive from "../bonding/adhesive.js";
import * as edgeStress from "../bonding/edge-stress.js";
import * as finishedFace from "../bonding/finished-face.js";
import * as workPlan from "../bonding/work-plan.js";
import * as barBound from "../cutting/bar-bound.js";
import * as barPacking from "../cutting/bar-packing.js";
import * as sawLosses from "../cutting/saw-losses.js";
import * as sheetBound from "../cutting/sheet-bound.js";
import * as bearing from "../fastening/bearing.js";
import * as dowelShear from "../fastening/dowel-shear.js";
import * as group from "../fastening/group.js";
import * as groupCentre from "../fastening/group-centre.js";
import * as insertJoint from "../fastening/insert-joint.js";
import * as joint from "../fastening/joint.js";
import * as machineScrew from "../fastening/machine-screw.js";
import * as rivetFormulas from "../fastening/rivet.js";
import * as seamFormulas from "../fastening/seam.js";
import * as spacing from "../fastening/spacing.js";
import * as withdrawal from "../fastening/withdrawal.js";
import * as panelFormula from "../fem/panel-formula.js";
import * as panelMoments from "../fem/panel-moments.js";
import * as air from "../inside/air.js";
import * as cable from "../inside/cable.js";
import * as hold from "../inside/hold.js";
import * as power from "../inside/power.js";
import * as rain from "../inside/rain.js";
import * as rattle from "../inside/rattle.js";
import * as screen from "../inside/screen.js";
import * as steadyWarmth from "../inside/steady-warmth.js";
import * as sun from "../inside/sun.js";
import * as warmUp from "../inside/warm-up.js";
import * as clearPlastic from "../material/clear-plastic.js";
import * as compositeBeam from "../material/composite-beam.js";
import * as laminate from "../material/laminate.js";
import * as moisture from "../material/moisture.js";
import * as plateStiffness from "../material/plate-stiffness.js";
import * as plywood from "../material/plywood.js";
import * as plywoodStrength from "../material/plywood-strength.js";
import * as sectionOutline from "../material/section-outline.js";
import * as sectionTorsion from "../material/section-torsion.js";
import * as sectionWalls from "../material/section-walls.js";
import * as sheetMaterial from "../material/sheet-material.js";
import * as slippingLayer from "../material/slipping-layer.js";
import * as species from "../material/species.js";
import * as timberStrength from "../material/timber-strength.js";
import * as woodFactors from "../material/wood-factors.js";
import * as bendModulus from "../measure/bend-modulus.js";
import * as distributions from "../measure/distributions.js";
import * as lineFit from "../measure/line-fit.js";
import * as linearRegression from "../measure/linear-regression.js";
import * as mean from "../measure/mean.js";
import * as propagate from "../measure/propagate.js";
import * as strength from "../measure/strength.js";
import * as trials from "../measure/trials.js";
import * as twistTest from "../measure/twist-test.js";
import * as beamCases from "../mechanics/beam/beam-cases.js";
import * as sag from "../mechanics/beam/sag.js";
import * as section from "../mechanics/beam/section.js";
import * as hingedPlate from "../mechanics/plate/hinged-plate.js";
import * as lineBuckling from "../mechanics/plate/line-buckling.js";
import * as openPlate from "../mechanics/plate/open-plate.js";
import * as plateStress from "../mechanics/plate/plate-stress.js";
import * as solidPlate from "../mechanics/plate/solid-plate.js";
import * as stripBuckling from "../mechanics/plate/strip-buckling.js";
import * as bill from "../money/bill.js";
import * as makeOrBuy from "../money/make-or-buy.js";
import * as packs from "../money/packs.js";
import * as payback from "../money/payback.js";
import * as balance from "../moving/balance.js";
import * as ballast from "../moving/ballast.js";
import * as casters from "../moving/casters.js";
import * as cushionCurve from "../moving/cushion-curve.js";
import * as cushionPad from "../moving/cushion-pad.js";
import * as dropFormulas from "../moving/drop.js";
import * as handles from "../moving/handles.js";
import * as impact from "../moving/impact.js";
import * as inertia from "../moving/inertia.js";
import * as lashing from "../moving/lashing.js";
import * as lid from "../moving/lid.js";
import * as liftFormulas from "../moving/lift.js";
import * as liftLimit from "../moving/lift-limit.js";
import * as person from "../moving/person.js";
import * as rideFormulas from "../moving/ride.js";
import * as rolling from "../moving/rolling.js";
import * as strapEdge from "../moving/strap-edge.js";
import * as team from "../moving/team.js";
import * as tipAngle from "../moving/tip-angle.js";
import * as tipPush from "../moving/tip-push.js";
import * as tippingEdges from "../moving/tipping-edges.js";
import { type TradeOf, trade } from "./trade.js";

/** Panels as plates: how far they bend, and the stresses in them. */
export const plate: TradeOf<
  typeof stripBuckling &
    typeof lineBuckling &
    typeof clearPlastic &
    typeof hingedPlate &
    typeof openPlate &
    typeof plateStress &
    typeof solidPlate &
    typeof plateStiffness &
    typeof laminate &
    typeof panelFormula &
    typeof panelMoments
> = trade(
  stripBuckling,
  lineBuckling,
  clearPlastic,
  hingedPlate,
  openPlate,
  plateStress,
  solidPlate,
  plateStiffness,
  laminate,
  panelFormula,
  panelMoments,
);

/** Strips, battens and shelves as beams: how far they bend, and the stresses in them. */
export const beam: TradeOf<
  typeof beamCases & typeof sag & typeof section & typeof compositeBeam & typeof slippingLayer
> = trade(beamCases, sag, section, compositeBeam, slippingLayer);

/** Edge bars: their sections, their twist, and how to cut them from stock. */
export const bars: TradeOf<
  typeof sectionOutline & typeof sectionTorsion & typeof sectionWalls & typeof barBound & typeof barPacking
> = trade(sectionOutline, sectionTorsion, sectionWalls, barBound, barPacking);

/** Plywood and solid wood: stiffness, strength, moisture, movement. */
export const wood: TradeOf<
  typeof timberStrength &
    typeof moisture &
    typeof plywood &
    typeof plywoodStrength &
    typeof species &
    typeof woodFactors &
    typeof sheetMaterial
> = trade(timberStrength, moisture, plywood, plywoodStrength, species, woodFactors, sheetMaterial);

/** Rivets and what they close: length, hole, spacing, what the joint holds. */
export const rivet: TradeOf<typeof rivetFormulas & typeof joint & typeof bearing & typeof spacing> = trade(
  rivetFormulas,
  joint,
  bearing,
  spacing,
);

/** Screws, nails, bolts, dowels and inserts: what they hold. */
export const screw: TradeOf<
  typeof withdrawal & typeof dowelShear & typeof machineScrew & typeof insertJoint
> = trade(withdrawal, dowelShear, machineScrew, insertJoint);

/** Groups and rows of fasteners: how they share a load. */
export const seam: TradeOf<typeof group & typeof groupCentre & typeof seamFormulas> = trade(
  group,
  groupCentre,
  seamFormulas,
);

/** Adhesive and laminate: how much, how long, what a finished face costs and weighs. */
export const glue: TradeOf<typeof adhesive & typeof edgeStress & typeof finishedFace & typeof workPlan> =
  trade(adhesive, edgeStress, finishedFace, workPlan);

/** Sawing: what is lost in kerfs, and the fewest sheets that can do. */
export const cut: TradeOf<typeof sawLosses & typeof sheetBound> = trade(sawLosses, sheetBound);

/** Lifting and carrying: who bears how much, what is recommended, where it balances. */
export const lift: TradeOf<
  typeof liftFormulas &
    typeof liftLimit &
    typeof team &
    typeof handles &
    typeof balance &
    typeof inertia &
    typeof person
> = trade(liftFormulas, liftLimit, team, handles, balance, inertia, person);

/** Standing and tipping: lean, push, wind, ballast, lids. */
export const tip: TradeOf<
  typeof tipAngle & typeof tipPush & typeof tippingEdges & typeof ballast & typeof lid
> = trade(tipAngle, tipPush, tippingEdges, ballast, lid);

/** Rolling: casters, thresholds, ramps, floors. */
export const roll: TradeOf<typeof rolling & typeof casters> = trade(rolling, casters);

/** The road: straps, jolts, what is held inside, what rattles, glass. */
export const ride: TradeOf<
  typeof strapEdge & typeof rideFormulas & typeof lashing & typeof hold & typeof rattle & typeof screen
> = trade(strapEdge, rideFormulas, lashing, hold, rattle, screen);

/** Falls: height, energy, foam, what a thing inside feels. */
export const drop: TradeOf<typeof dropFormulas & typeof impact & typeof cushionCurve & typeof cushionPad> =
  trade(dropFormulas, impact, cushionCurve, cushionPad);

/** Warmth: walls, vents, fans, sun, how a closed case warms up. */
export const heat: TradeOf<typeof rain & typeof air & typeof steadyWarmth & typeof sun & typeof warmUp> =
  trade(rain, air, steadyWarmth, sun, warmUp);

/** Power: batteries, currents, wires, cables and their room. */
export const wire: TradeOf<typeof power & typeof cable> = trade(power, cable);

/** Money: bills, packs, price breaks, make or buy, payback. */
export const cost: TradeOf<typeof bill & typeof makeOrBuy & typeof packs & typeof payback> = trade(
  bill,
  makeOrBuy,
  packs,
  payback,
);

/** Tests in the shop: bends, twists, pulls, weighings, and what their scatter leaves open. */
export const trial: TradeOf<
  typeof bendModulus &
    typeof lineFit &
    typeof linearRegression &
    typeof mean &
    typeof propagate &
    typeof distributions &
    typeof strength &
    typeof trials &
    typeof twistTest
> = trade(
  bendModulus,
  lineFit,
  linearRegression,
  mean,
  propagate,
  distributions,
  strength,
  trials,
  twistTest,
);

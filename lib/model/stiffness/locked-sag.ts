/** A panel's sag while its neighbours in the box hold its edges. */
import type { Face, PanelPart } from "../../design/index.js";
import {
  boxFreedoms,
  frames,
  meshChange,
  movedJoined,
  overPatch,
  sagBetweenCorners,
} from "../../fem/index.js";
import { Length, type Pressure, type Ratio } from "../../quantity/index.js";
import { boxFaces } from "../box/box-faces.js";
import type { CaseRun, CaseRuns } from "../box/case-box.js";
import { subsystem } from "../box/case-system.js";

/** Sag of a panel that its neighbours hold. */
export interface LockedSag {
  readonly sag: Length;
  /** Change from a rougher mesh. */
  readonly meshError: Ratio;
}

/**
 * Sag of a face under a pressure on its material, measured from its own corners, its section standing on its four
 * lower corners.
 *
 * @param runs of the case
 * @param panel one of its sections' faces
 * @param pressure on what is left of it
 */
export function lockedSag({ fine, rough }: CaseRuns, panel: PanelPart, pressure: Pressure): LockedSag {
  const [sag, rougher] = [fine, rough].map((run) => sagOn(run, panel, pressure)) as [number, number];
  return { sag: Length.si(sag), meshError: meshChange(sag, rougher) };
}

const everywhere = { left: -1, bottom: -1, width: 1e3, height: 1e3 };

function sagOn({ system }: CaseRun, panel: PanelPart, pressure: Pressure): number {
  const [name] = boxFaces[panel.face as Face];
  const number = system.model.bodies.findIndex((body) => body.name === panel.section);
  const section = subsystem(system, [number], ({ kind }) => kind === "stand");
  const { structure } = section.parts[0]!;
  const force = pressure * (panel.clearWidth * panel.clearHeight - (panel.grossArea - panel.netArea));
  const load = new Float64Array(boxFreedoms * structure.nodes.length);
  const { nodes, shares } = overPatch(structure, name, everywhere);
  nodes.forEach((node, i) => {
    load[boxFreedoms * node + frames[name].axes[2]]! += force * shares[i]!;
  });
  const [displacement] = movedJoined(section, [load]).displacements;
  return sagBetweenCorners({ structure, displacement: displacement! }, name);
}

/** Cautions that more than one question tells, each in one wording, so that a reader meets it once. */

/** Of casters: loaded, struck by a kerb, over a hole. */
export const casterCaution =
  "A caster that breaks or is torn out drops a corner without warning. Lift the case over kerbs and holes, and keep hands and feet from under it. Look at wheels and bolts before every trip.";

/** Of handles: alone, on both ends, in every load case. */
export const handleCaution =
  "A handle that lets go drops a corner on a foot: look at its fasteners before every lift, and replace a loose one.";

/** Of sections joined by latches. */
export const joinedCaution = "Lift the sections apart where you can; never stand under a joined case.";

/** Of doors on their hinges. */
export const doorCaution =
  "Somebody will lean on an open door: give it a stay, and look at the fasteners of its hinges before every trip.";

/** Of shelves: their joints, their board, the road. */
export const shelfCaution =
  "A shelf that comes down drops what it carries on hands and feet. Look at its screws before every trip, and set a stop or a strap in front of what is heavy.";

/** Of drops and of setting down. */
export const dropCaution =
  "A dropped case breaks feet before it breaks instruments. Test with sandbags, from a low height first, and keep everybody further away than the case is tall.";

/** Of what rides inside, on springs or not. */
export const looseCaution =
  "What tears loose in a van flies forward at the speed of the van. Hold every content three ways, on springs too, and put heavy things low and against the wall that is in front on the road.";

/** Of ramps, both ways, and of brakes on any slope. */
export const rampCaution =
  "Let nobody stand below a case on a ramp, going up or down. Once it runs nobody holds it, and brakes hold it on the level only. Pull it up and let it down straight, from above, with a winch or a line round something that holds. Chock it at every stop, or carry it empty.";

/** Of what is stacked on a case that is put away. */
export const storageCaution =
  "A stack on casters rolls and topples. Store cases locked or on blocks, with the heaviest lowest and nothing higher than your chest.";

/** Of straps tightened as their label allows. */
export const strapCaution =
  "A ratchet pulls harder than most casters and edges are made for. Stand a strapped case on blocks under its lower edges. Lead straps over the upright panels with protectors at their edges, never over an opening, a window or a latch.";

/** The picture of the case, turned by dragging, arrow keys and buttons. */
import { html } from "../../page/html.js";
import { type MarkRequest, pictureOf, pictureSvg, usualLook } from "../../page/picture/index.js";
import { betweenSizes } from "../messages.js";
import { openAnswers } from "./render.js";
import type { State } from "./state.js";

/** Where the eye stands. */
const sight = { around: 33, above: 20 };

const sides: Readonly<Record<string, { readonly around: number; readonly above: number }>> = {
  Corner: { around: 33, above: 20 },
  Front: { around: 0, above: 0 },
  Right: { around: 90, above: 0 },
  Back: { around: 180, above: 0 },
  Left: { around: 270, above: 0 },
  Top: { around: 0, above: 90 },
};

/** Signs of what does not hold, on the parts that it is about; the numbers are those of the list. */
function marksOf(state: State): readonly MarkRequest[] {
  const parts = [...new Set(state.solids.map(({ part }) => part))];
  const taken = new Map<string, MarkRequest>();
  for (const [i, { answer }] of openAnswers(state).entries()) {
    const named = parts.filter((part) => answer.id.endsWith(`.${part.replace(/ \d+$/, "")}`));
    const [part] = named.sort((a, b) => b.length - a.length);
    if (part === undefined || taken.has(part)) continue;
    taken.set(part, { part, verdict: answer.verdict, text: String(i + 1) });
  }
  return [...taken.values()];
}

/** Draws the picture as the case stands now. */
export function drawPicture(place: HTMLElement, state: State, withInside: boolean): void {
  if (state.solids.length === 0) return;
  const marks = marksOf(state);
  const failing = new Set(marks.filter(({ verdict }) => verdict === "fails").map(({ part }) => part));
  const { totals } = state;
  const [width, depth, height] = totals?.size.split(betweenSizes) ?? [];
  const sizes = (
    [
      ["x", width],
      ["y", depth],
      ["z", height],
    ] as const
  ).flatMap(([along, text]) => (text === undefined ? [] : [{ along, text }]));
  const picture = pictureOf(state.solids, {
    description: `${state.view?.name ?? "The case"}, ${Math.round(sight.around)} degrees around from its front, ${Math.round(sight.above)} above. ${marks.length} signs stand on parts that do not hold or are not known.`,
    from: sight,
    look: (solid) => {
      if (solid.kind === "content") return withInside ? "broken line" : undefined;
      const look = usualLook(solid);
      return look && failing.has(solid.part) ? "fails" : look;
    },
    marks,
    sizes,
  });
  place.innerHTML = String(pictureSvg(picture));
}

/** Lets the picture be turned; `draw` is called after every turn. */
export function letTurn(place: HTMLElement, buttons: HTMLElement, draw: () => void): void {
  const look = (around: number, above: number): void => {
    sight.around = (around + 360) % 360;
    sight.above = Math.max(-20, Math.min(90, above));
    draw();
  };
  buttons.innerHTML = String(
    html`${Object.keys(sides).map((side) => html`<button type="button" data-side="${side}">${side}</button>`)}`,
  );
  buttons.addEventListener("click", ({ target }) => {
    const side = target instanceof HTMLElement ? sides[target.dataset.side ?? ""] : undefined;
    if (side) look(side.around, side.above);
  });
  const keys: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-15, 0],
    ArrowRight: [15, 0],
    ArrowUp: [0, 15],
    ArrowDown: [0, -15],
  };
  place.addEventListener("keydown", (event) => {
    const turn = keys[event.key];
    if (!turn) return;
    event.preventDefault();
    look(sight.around + turn[0], sight.above + turn[1]);
  });
  let last: { x: number; y: number } | undefined;
  place.addEventListener("pointerdown", ({ clientX, clientY, pointerId }) => {
    last = { x: clientX, y: clientY };
    place.setPointerCapture(pointerId);
  });
  place.addEventListener("pointermove", ({ clientX, clientY }) => {
    if (!last) return;
    const [right, down] = [clientX - last.x, clientY - last.y];
    if (Math.abs(right) + Math.abs(down) < 4) return;
    last = { x: clientX, y: clientY };
    look(sight.around - right / 2, sight.above + down / 2);
  });
  for (const end of ["pointerup", "pointercancel"] as const) {
    place.addEventListener(end, () => {
      last = undefined;
    });
  }
}

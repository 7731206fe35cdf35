/**
 * The order in which prisms are painted, from the farthest to the nearest. Two that stand apart are parted by a plane: what
 * is on the eye's side of it comes later. Where that goes round in a circle, one of the circle is cut at such a plane.
 */
import { crossProduct, scalarProduct, type Vector3 } from "../../algebra/matrix3.js";
import type { Solid } from "../../assembly/index.js";
import { cutBy, type OrientedBox, type Prism, reach, reachAlong } from "./prism.js";

/** What is painted of a prism at once: all of it, or the walls of its holes and then the rest. */
export interface Coat<S extends Solid> {
  /** The prism. */
  readonly prism: Prism<S>;
  /** Which of its surfaces. */
  readonly part: "all" | "holes" | "outside";
}

/** Surfaces closer than this touch, m. */
const touching = 2e-4;
/** What stands in a hole may be as much larger than it, m: a flush fit. */
const flush = 1e-3;
/** So many cuts at most; a circle that is still left is broken somewhere. */
const mostCuts = 300;

/** A plane. */
interface Plane {
  /** Its unit normal. */
  readonly normal: Vector3;
  /** Its distance from the origin along the normal. */
  readonly at: number;
}

/** How one prism lies before another as the eye sees them. */
interface Order {
  /** Whether the first of the two is painted first. */
  readonly firstIsFarther: boolean;
  /** What parts them. */
  readonly plane: Plane;
}

/**
 * Prisms in the order in which they are painted, some of them cut.
 *
 * @param toEye unit direction from the prisms to the eye
 */
export function paintingOrder<S extends Solid>(
  prisms: readonly Prism<S>[],
  toEye: Vector3,
): readonly Coat<S>[] {
  const graph = new PaintGraph<S>(toEye);
  for (const prism of prisms) graph.add(prism);
  for (let cuts = 0; ; cuts++) {
    const { order, circle } = graph.sorted();
    if (circle.length === 0) return order;
    if (cuts >= mostCuts || !graph.cut(circle)) graph.breakAt(circle);
  }
}

/** One coat with what must come after it. */
interface Node<S extends Solid> extends Coat<S> {
  /** The coats that cover it, each with the plane between. */
  readonly before: Map<Node<S>, Plane | undefined>;
  /** The coats that it covers. */
  readonly after: Set<Node<S>>;
  /** How far its prism reaches on the page. */
  readonly page: readonly [readonly [number, number], readonly [number, number]];
}

class PaintGraph<S extends Solid> {
  readonly #toEye: Vector3;
  readonly #pageAxes: readonly [Vector3, Vector3];
  /** The coats of each prism. */
  readonly #nodes = new Map<Prism<S>, readonly Node<S>[]>();

  constructor(toEye: Vector3) {
    this.#toEye = toEye;
    const aside: Vector3 = Math.abs(toEye[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
    const right = crossProduct(aside, toEye);
    this.#pageAxes = [right, crossProduct(toEye, right)];
  }

  add(prism: Prism<S>): void {
    const [first, second] = this.#pageAxes;
    const page = [reachAlong(prism.box, first), reachAlong(prism.box, second)] as const;
    const node = (part: Coat<S>["part"]): Node<S> => ({
      prism,
      part,
      page,
      before: new Map(),
      after: new Set(),
    });
    const own = prism.rings.length > 1 ? [node("holes"), node("outside")] : [node("all")];
    const [holes, outside] = own;
    if (holes && outside) join(holes, outside);
    for (const others of this.#nodes.values()) this.#relate(own, others);
    this.#nodes.set(prism, own);
  }

  #relate(own: readonly Node<S>[], others: readonly Node<S>[]): void {
    const [one, other] = [own[0], others[0]];
    if (!one || !other || !overlaps(one, other)) return;
    for (const [around, inside] of [
      [own, others],
      [others, own],
    ] as const) {
      const sticksOut = standsInHole(inside[0]?.prism, around[0]?.prism, this.#toEye);
      if (sticksOut === undefined) continue;
      threaded(around, inside, sticksOut);
      return;
    }
    const order = orderOf(one.prism.box, other.prism.box, this.#toEye);
    if (!order) return;
    const [far, near] = order.firstIsFarther ? [own, others] : [others, own];
    for (const a of far) for (const b of near) join(a, b, order.plane);
  }

  #remove(prism: Prism<S>): void {
    for (const node of this.#nodes.get(prism) ?? []) {
      for (const later of node.before.keys()) later.after.delete(node);
      for (const earlier of node.after) earlier.before.delete(node);
    }
    this.#nodes.delete(prism);
  }

  /** The coats in order; or a circle of them where there is one. */
  sorted(): { readonly order: readonly Node<S>[]; readonly circle: readonly Node<S>[] } {
    const all = [...this.#nodes.values()].flat();
    const waits = new Map(all.map((node) => [node, node.after.size]));
    const order = all.filter(({ after }) => after.size === 0);
    for (const node of order)
      for (const later of node.before.keys()) {
        const left = (waits.get(later) ?? 0) - 1;
        waits.set(later, left);
        if (left === 0) order.push(later);
      }
    const stuck = all.find((node) => (waits.get(node) ?? 0) > 0);
    return { order, circle: stuck ? circleFrom(stuck, waits) : [] };
  }

  /** Cuts one prism of a circle at a plane between two others; whether there was one to cut. */
  cut(circle: readonly Node<S>[]): boolean {
    for (const [i, node] of circle.entries()) {
      const plane = node.before.get(circle[(i + 1) % circle.length] as Node<S>);
      if (!plane) continue;
      for (const { prism } of circle) {
        const pieces = cutBy(prism, plane);
        if (!pieces) continue;
        this.#remove(prism);
        for (const piece of pieces) this.add(piece);
        return true;
      }
    }
    return false;
  }

  /** Forgets one order of a circle. */
  breakAt([first, second]: readonly Node<S>[]): void {
    if (!first || !second) return;
    first.before.delete(second);
    second.after.delete(first);
  }
}

function join<S extends Solid>(far: Node<S>, near: Node<S>, plane?: Plane): void {
  far.before.set(near, plane);
  near.after.add(far);
}

/** What stands in a hole is painted after the hole's walls, and after all of the prism where it sticks out. */
function threaded<S extends Solid>(
  around: readonly Node<S>[],
  inside: readonly Node<S>[],
  sticksOut: boolean,
): void {
  const [holes, outside] = around;
  if (!holes || !outside) return;
  for (const node of inside) {
    join(holes, node);
    if (sticksOut) join(outside, node);
    else join(node, outside);
  }
}

/** A circle of coats that wait for each other, each before the next. */
function circleFrom<S extends Solid>(
  stuck: Node<S>,
  waits: ReadonlyMap<Node<S>, number>,
): readonly Node<S>[] {
  const path: Node<S>[] = [];
  let node: Node<S> | undefined = stuck;
  while (node && !path.includes(node)) {
    path.push(node);
    node = [...node.after].find((earlier) => (waits.get(earlier) ?? 0) > 0);
  }
  return node ? path.slice(path.indexOf(node)).reverse() : [];
}

/** Whether the boxes of two prisms overlap on the page. */
function overlaps<S extends Solid>(one: Node<S>, other: Node<S>): boolean {
  return one.page.every(([low, high], i) => {
    const [otherLow, otherHigh] = other.page[i] as readonly [number, number];
    return low < otherHigh - touching && otherLow < high - touching;
  });
}

/** Which of two boxes is farther from the eye; undefined where neither covers the other. */
function orderOf(one: OrientedBox, other: OrientedBox, toEye: Vector3): Order | undefined {
  let parted: Order | undefined;
  let least: (Order & { readonly gap: number }) | undefined;
  for (const normal of normalsOf(one, other)) {
    const [low, high] = reachAlong(one, normal);
    const [otherLow, otherHigh] = reachAlong(other, normal);
    const gap = Math.max(low - otherHigh, otherLow - high);
    const facing = scalarProduct(normal, toEye);
    const level = Math.abs(facing) < 1e-9;
    if (level && gap > -touching) return undefined;
    if (level) continue;
    const beyond = low - otherHigh > otherLow - high;
    const at = beyond ? (low + otherHigh) / 2 : (otherLow + high) / 2;
    const order = { firstIsFarther: beyond === facing < 0, plane: { normal, at } };
    if (gap > -touching) {
      if (parted && parted.firstIsFarther !== order.firstIsFarther) return undefined;
      parted = order;
    } else if (!least || gap > least.gap) least = { ...order, gap };
  }
  if (!parted && !least) return undefined;
  return apartOnPage(one, other, toEye) ? undefined : (parted ?? least);
}

/** The directions of two boxes, those that both have once. */
function normalsOf({ axes }: OrientedBox, other: OrientedBox): readonly Vector3[] {
  const further = other.axes.filter((axis) =>
    axes.every((own) => Math.abs(scalarProduct(own, axis)) < 1 - 1e-9),
  );
  return [...axes, ...further];
}

/** Whether a straight line on the page parts two boxes. */
function apartOnPage(one: OrientedBox, other: OrientedBox, toEye: Vector3): boolean {
  return normalsOf(one, other).some((axis) => {
    const across = crossProduct(axis, toEye);
    if (Math.hypot(...across) < 1e-9) return false;
    const [low, high] = reachAlong(one, across);
    const [otherLow, otherHigh] = reachAlong(other, across);
    return low > otherHigh - touching || otherLow > high - touching;
  });
}

/** Whether a prism that stands in a hole of another sticks out towards the eye; undefined where it stands in none. */
function standsInHole(
  inside: Prism | undefined,
  around: Prism | undefined,
  toEye: Vector3,
): boolean | undefined {
  if (!inside || !around || around.rings.length < 2) return undefined;
  const { origin } = around.solid.place;
  const [x, y, normal] = around.box.axes;
  const from = (axis: Vector3): readonly [number, number] => {
    const [low, high] = reachAlong(inside.box, axis);
    const start = scalarProduct(origin, axis);
    return [low - start, high - start];
  };
  const [low, high] = from(normal);
  if (high < around.from + touching || low > around.to - touching) return undefined;
  const [[left, right], [bottom, top]] = [from(x), from(y)];
  const held = around.rings.slice(1).some(({ points }) => {
    const hole = reach(points);
    return (
      left > hole.left - flush &&
      right < hole.right + flush &&
      bottom > hole.bottom - flush &&
      top < hole.top + flush
    );
  });
  if (!held) return undefined;
  return scalarProduct(normal, toEye) > 0 ? high > around.to + flush : low < around.from - flush;
}

/** Hands out the thing with the largest rank first. */
export class Heap<Thing> {
  private readonly things: Thing[] = [];

  constructor(private readonly rank: (thing: Thing) => number) {}

  /** Puts a thing in. */
  push(thing: Thing): void {
    let at = this.things.push(thing) - 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (this.rank(this.things[above] as Thing) >= this.rank(thing)) break;
      this.things[at] = this.things[above] as Thing;
      at = above;
    }
    this.things[at] = thing;
  }

  /** Takes out the thing with the largest rank. */
  pop(): Thing | undefined {
    const top = this.things[0];
    const last = this.things.pop();
    if (last !== undefined && this.things.length > 0) this.sink(last);
    return top;
  }

  private sink(thing: Thing): void {
    let at = 0;
    for (;;) {
      const left = 2 * at + 1;
      if (left >= this.things.length) break;
      const right = left + 1;
      const larger =
        right < this.things.length &&
        this.rank(this.things[right] as Thing) > this.rank(this.things[left] as Thing)
          ? right
          : left;
      if (this.rank(this.things[larger] as Thing) <= this.rank(thing)) break;
      this.things[at] = this.things[larger] as Thing;
      at = larger;
    }
    this.things[at] = thing;
  }
}

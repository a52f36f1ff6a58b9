/** Points joined without resistance: wires, a cord's conductors, a building's neutral-to-earth link. */
export class Wires {
  readonly #parent = new Map<string, string>();
  readonly #reference: string;

  /** @param reference point whose name wins wherever it is joined to another */
  constructor(reference: string) {
    this.#reference = reference;
  }

  /** Joins two points; they go by the first one's name. */
  join(a: string, b: string): void {
    const [first, second] = [this.find(a), this.find(b)];
    if (first === second) return;
    if (second === this.#reference) this.#parent.set(first, second);
    else this.#parent.set(second, first);
  }

  /** The name under which the network knows a point. */
  find(point: string): string {
    let name = point;
    for (let parent = this.#parent.get(name); parent !== undefined; parent = this.#parent.get(name)) name = parent;
    return name;
  }
}

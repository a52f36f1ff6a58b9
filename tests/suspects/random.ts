/** Numbers that are the same in every run: a 32-bit generator (public domain, "mulberry32") with a seed made from words. */
export class Random {
  private state: number;
  constructor(...words: (string | number)[]) {
    // FNV-1a, 32 bits.
    let hash = 0x811c9dc5;
    for (const character of words.join("|")) hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193);
    this.state = hash >>> 0;
  }

  /** From 0 up to, not including, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Even on a logarithmic scale. */
  logBetween(low: number, high: number): number {
    return low * (high / low) ** this.next();
  }

  /** Standard normal (Box and Muller, Ann. Math. Stat. 29, 1958). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.next())) * Math.cos(2 * Math.PI * this.next());
  }

  pick<T>(items: readonly T[]): T {
    const item = items[Math.floor(this.next() * items.length)];
    if (item === undefined) throw new Error("nothing to pick from");
    return item;
  }

  shuffle<T>(items: readonly T[]): T[] {
    const keyed = items.map((item) => ({ item, key: this.next() }));
    return keyed.sort((a, b) => a.key - b.key).map(({ item }) => item);
  }
}

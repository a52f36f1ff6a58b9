/** A sparse matrix that entries are added to. */
export class SparseSum {
  private readonly entries: Map<number, number>;
  private static readonly WIDTH = 65536;

  constructor(entries?: ReadonlyMap<number, number>) {
    this.entries = new Map(entries);
  }

  copy(): SparseSum {
    return new SparseSum(this.entries);
  }

  add(row: number, column: number, value: number): void {
    if (row < 0 || column < 0) return;
    const key = row * SparseSum.WIDTH + column;
    this.entries.set(key, (this.entries.get(key) ?? 0) + value);
  }

  /** Adds a conductance from a pair of rows to a pair of rows: the current of one port per volt of another. */
  addBetween(plus: number, minus: number, otherPlus: number, otherMinus: number, siemens: number): void {
    this.add(plus, otherPlus, siemens);
    this.add(minus, otherMinus, siemens);
    this.add(plus, otherMinus, -siemens);
    this.add(minus, otherPlus, -siemens);
  }

  forEach(visit: (row: number, column: number, value: number) => void): void {
    for (const [key, value] of this.entries) if (value !== 0) visit(Math.floor(key / SparseSum.WIDTH), key % SparseSum.WIDTH, value);
  }
}

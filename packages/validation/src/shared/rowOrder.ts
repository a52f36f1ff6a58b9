import type { PlacedColumn } from "./describedTable.ts";

/** Where rows break the order of their key. */
export interface OrderFault {
  row: number;
  /** Cell of the key that is out of order. */
  column: PlacedColumn;
  kind: "repeated" | "falls" | "apart";
}

/** Rows as texts. Numbers and choices rise; texts and sources stand together. */
export function orderFaults(key: readonly PlacedColumn[], rows: readonly (readonly string[])[]): OrderFault[] {
  const faults: OrderFault[] = [];
  const seen = new Set<string>();
  const [first] = key;
  if (first === undefined) return faults;
  for (const [place, row] of rows.entries()) {
    const before = rows[place - 1];
    const level = before === undefined ? 0 : key.findIndex(({ at }) => before[at] !== row[at]);
    if (level === -1) {
      faults.push({ row: place, column: first, kind: "repeated" });
      continue;
    }
    const column = key[level]!;
    if (before !== undefined && !rises(column, before[column.at] ?? "", row[column.at] ?? "")) {
      faults.push({ row: place, column, kind: "falls" });
      for (let depth = level; depth < key.length; depth++) seen.add(group(key, row, depth));
      continue;
    }
    // A group that was left must not come back.
    for (let depth = level; depth < key.length; depth++) {
      const name = group(key, row, depth);
      if (seen.has(name)) {
        faults.push({ row: place, column: key[depth]!, kind: depth === key.length - 1 ? "repeated" : "apart" });
        break;
      }
      seen.add(name);
    }
  }
  return faults;
}

/** Row numbers in the order that the key asks for; rows that it does not tell apart stay as they are. */
export function sortedRows(key: readonly PlacedColumn[], rows: readonly (readonly string[])[]): number[] {
  // Texts stand in the order in which they first come, within their group.
  const firsts = key.map((_, depth) => {
    const places = new Map<string, number>();
    for (const row of rows) {
      const name = group(key, row, depth);
      if (!places.has(name)) places.set(name, places.size);
    }
    return places;
  });
  return rows
    .map((_, index) => index)
    .sort((a, b) => {
      for (const [depth, column] of key.entries()) {
        const [one, other] = [rows[a]![column.at] ?? "", rows[b]![column.at] ?? ""];
        if (one === other) continue;
        return (
          rank(column, one) - rank(column, other) ||
          (firsts[depth]?.get(group(key, rows[a]!, depth)) ?? 0) - (firsts[depth]?.get(group(key, rows[b]!, depth)) ?? 0)
        );
      }
      return a - b;
    });
}

function rank({ column, among }: PlacedColumn, text: string): number {
  if (column.type === "choice") return among.indexOf(text);
  if (column.type === "text" || column.type === "source") return 0;
  return text === "" ? Number.MIN_SAFE_INTEGER : Number(text);
}

function group(key: readonly PlacedColumn[], row: readonly string[], depth: number): string {
  return key
    .slice(0, depth + 1)
    .map(({ at }) => row[at])
    .join("\u0000");
}

function rises(column: PlacedColumn, before: string, after: string): boolean {
  if (column.column.type === "text" || column.column.type === "source") return true;
  return rank(column, before) < rank(column, after);
}

import type { Report } from "@underchassis/dataset";
import type { Finding } from "../model/index.ts";

type OrderLine = Report["order"][number];

/** What to order, like things together. Two findings that ask for the same thing for the same part count once. */
export function orderLines(findings: readonly Finding[]): OrderLine[] {
  const lines = new Map<string, OrderLine>();
  const counted = new Set<string>();
  for (const finding of findings) {
    for (const item of finding.order ?? []) {
      const line = lines.get(item.what) ?? { what: item.what, quantity: 0, for: [], why: [] };
      lines.set(item.what, line);
      if (!line.why.includes(item.why)) line.why.push(item.why);
      if (counted.has(`${item.what}\u0000${item.for}`)) continue;
      counted.add(`${item.what}\u0000${item.for}`);
      line.quantity += item.quantity;
      if (!line.for.includes(item.for)) line.for.push(item.for);
    }
  }
  return [...lines.values()].sort((a, b) => (a.what < b.what ? -1 : a.what > b.what ? 1 : 0));
}

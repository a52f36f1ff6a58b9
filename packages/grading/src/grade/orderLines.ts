import type { Report } from "@underchassis/dataset";
import type { Finding } from "../model/index.ts";

type OrderLine = Report["order"][number];

/**
 * What to order, like things together. Findings come worst first, so where several ask for another capacitor (resistor, fuse …) for one
 * part, the first says which; the others add their reason.
 */
export function orderLines(findings: readonly Finding[]): OrderLine[] {
  const lines = new Map<string, OrderLine>();
  const chosen = new Map<string, OrderLine>();
  for (const finding of findings) {
    for (const item of finding.order ?? []) {
      const need = `${kindOf(item.what)} for ${item.for}`;
      const already = chosen.get(need);
      const line = already ?? lines.get(item.what) ?? { what: item.what, quantity: 0, for: [], why: [] };
      if (!line.why.includes(item.why)) line.why.push(item.why);
      if (already !== undefined) continue;
      lines.set(item.what, line);
      chosen.set(need, line);
      line.quantity += item.quantity;
      line.for.push(item.for);
    }
  }
  return [...lines.values()].sort((a, b) => (a.what < b.what ? -1 : a.what > b.what ? 1 : 0));
}

/** The kind of thing that an order names: capacitor, resistor, fuse … */
function kindOf(what: string): string {
  return /capacitor|resistor|fuse|switch|cord|tube|diode|rectifier|choke|thermistor|limiter/i.exec(what)?.[0].toLowerCase() ?? what;
}

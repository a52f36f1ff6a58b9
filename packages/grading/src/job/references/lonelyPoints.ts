import { fold } from "@underchassis/source-text";
import { isDoubtful, type ReferenceContext, report } from "./context.ts";
import { listedPoints, touchedPoints } from "./pointIndex.ts";

/** So many names that differ by one letter are a series. */
const SERIES = 12;

/**
 * Warns of a point that only one lead touches and whose name is one slip of the pen away from another's. Names that differ in a
 * number, a sign or a single letter standing alone (V1 plate and V2 plate, heater a and heater b) are different on purpose.
 */
export function warnLonelyPoints(context: ReferenceContext): void {
  if (listedPoints(context) !== undefined) return;
  const touched = touchedPoints(context.survey);
  const byVariant = new Map<string, string[]>();
  for (const point of touched.keys()) {
    for (const variant of variantsOf(fold(point))) {
      const sharing = byVariant.get(variant);
      // Names in a long series are apart by a letter on purpose.
      if (sharing && sharing.length < SERIES) sharing.push(point);
      else if (!sharing) byVariant.set(variant, [point]);
    }
  }
  for (const part of context.survey.parts) {
    for (const { point, path } of part.leads) {
      if (path === undefined || touched.get(point) !== 1 || isDoubtful(context, point)) continue;
      const near = closeTo(point, byVariant, touched);
      if (near === undefined) continue;
      report(context, path, {
        code: "point-lonely",
        severity: "warning",
        message: `only one lead touches the point "${point}", and there is a "${near}"`,
        received: point,
        nearest: near,
        help: "if they are one point, write one name; if not, nothing need be done",
      });
    }
  }
}

/** The name and all that is left of it when one letter is dropped: two names that share a variant are one slip apart. */
function variantsOf(name: string): Set<string> {
  const variants = new Set([name]);
  for (let index = 0; index < Math.min(name.length, 60); index++) variants.add(name.slice(0, index) + name.slice(index + 1));
  return variants;
}

function closeTo(
  point: string,
  byVariant: ReadonlyMap<string, readonly string[]>,
  touched: ReadonlyMap<string, number>,
): string | undefined {
  let best: string | undefined;
  for (const variant of variantsOf(fold(point))) {
    for (const other of byVariant.get(variant) ?? []) {
      if (other === point || purposeOf(other) !== purposeOf(point)) continue;
      if (best === undefined || touched.get(other)! > touched.get(best)!) best = other;
    }
  }
  return best;
}

/** What tells names apart on purpose: their numbers, signs and letters that stand alone. */
function purposeOf(name: string): string {
  const lower = name.toLowerCase();
  return [
    ...(lower.match(/\d+/g) ?? []),
    ...(lower.match(/[+-](?=\s|$)/g) ?? []),
    ...(lower.match(/(?<![\p{L}\d])\p{L}(?![\p{L}\d])/gu) ?? []),
  ].join(" ");
}

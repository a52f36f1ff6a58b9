import type { LineSupply } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";

/** Nominal voltage and range of today's supplies by frequency. ANSI C84.1 service range A (60 Hz); IEC 60038 (50 Hz). */
const TODAY: Record<number, { nominal: number; low: number; high: number; source: string }> = {
  60: { nominal: 120, low: 0.95, high: 1.05, source: "ansi-c84-1" },
  50: { nominal: 230, low: 0.9, high: 1.1, source: "iec-60038" },
};

/**
 * The line: what the set was made for, what the outlet gives, how far it may go. Volts RMS.
 *
 * The highest and lowest line default to the supply standard's range about today's nominal voltage where the set's design
 * voltage belongs to that system (100 to 130 V at 60 Hz, 200 to 260 V at 50 Hz), else to the same range about the actual voltage.
 */
export function resolveLine(context: ResolveContext): LineSupply | undefined {
  const { line } = context.job.job.chassis;
  const at = (key: string) => ["chassis", "line", key] as const;
  const designVolts = context.quantity(line.designVolts, "voltage", at("designVolts"));
  const actual = line.actualVolts === undefined ? undefined : context.quantity(line.actualVolts, "voltage", at("actualVolts"));
  if (designVolts === undefined) return undefined;
  const today = TODAY[line.hertz];
  const fitsToday = today !== undefined && Math.abs(designVolts / today.nominal - 1) <= 0.17;
  const nominal = fitsToday ? today.nominal : (actual ?? designVolts);
  const range = today ?? { low: 0.95, high: 1.05, source: "common-practice" };
  const low = line.lowVolts === undefined ? nominal * range.low : context.quantity(line.lowVolts, "voltage", at("lowVolts"));
  const high = line.highVolts === undefined ? nominal * range.high : context.quantity(line.highVolts, "voltage", at("highVolts"));
  if (low === undefined || high === undefined) return undefined;
  // Within the stated limits, where there are any: what the outlet gives is known to keep them.
  const actualVolts =
    actual ?? Math.max(line.lowVolts === undefined ? 0 : low, Math.min(line.highVolts === undefined ? 1e9 : high, nominal));
  const outOfRange = Object.entries({ designVolts, actualVolts, lowVolts: low, highVolts: high }).filter(
    ([key, volts]) => line[key as "designVolts"] !== undefined && !(volts >= 5 && volts <= 500),
  );
  for (const [key] of outOfRange) {
    context.problem(at(key), "value-out-of-range", "line voltage out of range", {
      received: String(line[key as "designVolts"]),
      expected: "5 to 500 V",
    });
  }
  if (outOfRange.length > 0) return undefined;
  if (line.lowVolts !== undefined && line.highVolts !== undefined && low > high)
    misordered(context, "lowVolts", "the lowest line voltage is above the highest", `at most ${high} V, or a higher "highVolts"`);
  else if (line.lowVolts !== undefined && actual !== undefined && low > actual)
    misordered(context, "lowVolts", "the lowest line voltage is above the actual one", `at most ${actual} V`);
  else if (line.highVolts !== undefined && actual !== undefined && high < actual)
    misordered(context, "highVolts", "the highest line voltage is below the actual one", `at least ${actual} V`);
  return {
    designVolts,
    hertz: line.hertz,
    actualVolts,
    lowVolts: Math.min(low, actualVolts),
    highVolts: Math.max(high, actualVolts),
    hot: line.hot ?? "line hot",
    neutral: line.neutral ?? "line neutral",
    earth: line.earth ?? "earth",
    source: range.source,
  };
}

function misordered(context: ResolveContext, key: "lowVolts" | "highVolts", message: string, expected: string): void {
  const received = String(context.job.job.chassis.line[key]);
  context.problem(["chassis", "line", key], "line-volts-order", message, { received, expected });
}

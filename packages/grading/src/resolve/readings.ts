import { type Meter, READING_DIMENSION, type Reading } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { DEFAULT_METER } from "./defaults.ts";

const OPEN = /^(open|ol|o\.l\.|infinite|infinity|inf|∞)$/i;

/** What meters showed, in SI, with the meter's loading worked out. An open circuit reads Infinity ohms. */
export function resolveReadings(context: ResolveContext, meters: ReadonlyMap<string, Meter>, reference: string): Reading[] {
  const readings: Reading[] = [];
  for (const [index, written] of (context.job.job.readings ?? []).entries()) {
    const path = (key: string) => ["readings", index, key];
    const dimension = READING_DIMENSION[written.quantity];
    const isOpen = written.quantity === "ohms" && OPEN.test(String(written.value).trim());
    const value = isOpen ? Number.POSITIVE_INFINITY : context.quantity(written.value, dimension, path("value"));
    const meter = meters.get(written.meter ?? "") ?? meters.get("");
    const range = written.range === undefined ? undefined : context.quantity(written.range, dimension, path("range"));
    const lineVolts = written.lineVolts === undefined ? undefined : context.quantity(written.lineVolts, "voltage", path("lineVolts"));
    const published = written.published === undefined ? undefined : context.span(written.published, dimension, path("published"));
    if (value === undefined || meter === undefined) continue;
    readings.push({
      index,
      at: written.at,
      to: written.to ?? reference,
      quantity: written.quantity,
      condition: written.condition ?? (written.quantity === "ohms" ? "cold" : "operating"),
      life: written.life ?? "found",
      value,
      asWritten: String(written.value),
      meter,
      loadOhms: written.quantity.endsWith("volts")
        ? loadOf(context, meter, range, path("meter"))
        : (meter.inputOhms ?? DEFAULT_METER.inputOhms),
      ...(lineVolts === undefined ? {} : { lineVolts }),
      ...(published === undefined ? {} : { published: { low: published.low, high: published.high, asWritten: String(written.published) } }),
      ...(written.note === undefined ? {} : { note: written.note }),
      location: context.job.locate(["readings", index]),
    });
  }
  return readings;
}

function loadOf(context: ResolveContext, meter: Meter, range: number | undefined, path: readonly (string | number)[]): number {
  if (meter.ohmsPerVolt !== undefined) {
    if (range !== undefined) return meter.ohmsPerVolt * Math.abs(range);
    context.problem(path, "meter-range-missing", `an ohms-per-volt meter loads by its range, and this reading gives none`, {
      received: meter.id,
      expected: 'a "range" beside the reading, such as "250 V"',
    });
  }
  return meter.inputOhms ?? DEFAULT_METER.inputOhms;
}

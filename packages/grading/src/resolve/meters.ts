import type { Path } from "../job/loadedJob.ts";
import type { Meter } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { DEFAULT_METER } from "./defaults.ts";

const OHMS_PER_VOLT = /(?:\/|\s+per\s+)\s*v(?:olts?)?$/i;

/** Meters by id; the id "" is the meter of readings that name none. */
export function resolveMeters(context: ResolveContext): Map<string, Meter> {
  const meters = new Map<string, Meter>();
  meters.set("", { id: "", title: "digital multimeter, 10 Mohm (assumed)", ...DEFAULT_METER, source: "common-practice" });
  for (const [id, written] of Object.entries(context.job.job.meters ?? {})) {
    const meter: Meter = {
      id,
      title: written.title ?? id,
      accuracy: DEFAULT_METER.accuracy,
      testVolts: DEFAULT_METER.testVolts,
      source: "job",
    };
    if (written.input !== undefined) {
      const text = String(written.input);
      const path = ["meters", id, "input"];
      if (OHMS_PER_VOLT.test(text)) {
        const ohmsPerVolt = context.quantity(text.replace(OHMS_PER_VOLT, "").trim(), "resistance", path);
        if (ohmsPerVolt !== undefined && isInput(context, ohmsPerVolt, text, path)) meter.ohmsPerVolt = ohmsPerVolt;
      } else {
        const inputOhms = context.quantity(text, "resistance", path);
        if (inputOhms !== undefined && isInput(context, inputOhms, text, path)) meter.inputOhms = inputOhms;
      }
    } else meter.inputOhms = DEFAULT_METER.inputOhms;
    if (written.accuracy !== undefined) {
      const tolerance = context.tolerance(written.accuracy, ["meters", id, "accuracy"]);
      if (tolerance !== undefined) meter.accuracy = Math.max(tolerance.minus, tolerance.plus);
    }
    if (written.testVolts !== undefined) {
      const volts = context.quantity(written.testVolts, "voltage", ["meters", id, "testVolts"]);
      if (volts !== undefined) meter.testVolts = volts;
    }
    meters.set(id, meter);
  }
  return meters;
}

/** A meter that shorts its leads shows nothing. */
function isInput(context: ResolveContext, ohms: number, text: string, path: Path): boolean {
  if (ohms > 0) return true;
  context.problem(path, "value-out-of-range", "a meter's input resistance is above zero", {
    received: text,
    expected: '"10 Mohm", or "20 kohm/V"',
  });
  return false;
}

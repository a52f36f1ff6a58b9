import type { Dimension } from "@underchassis/calc";
import type { JobMeasured } from "@underchassis/dataset";
import type { Path } from "../job/loadedJob.ts";
import type { Measured, Meter, PartKind } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { DEFAULT_MEASUREMENT_ERROR } from "./defaults.ts";

const MAIN_DIMENSION: Partial<Record<PartKind, Dimension>> = {
  resistor: "resistance",
  potentiometer: "resistance",
  capacitor: "capacitance",
  inductor: "inductance",
  thermistor: "resistance",
  lamp: "resistance",
  fuse: "resistance",
  switch: "resistance",
  wire: "resistance",
  cord: "resistance",
  load: "resistance",
  transformer: "resistance",
  zener: "voltage",
  battery: "voltage",
};

/** Emission is relative to a new tube. Testers read somewhat above it for a strong tube, never twice over. common-practice. */
const MOST_EMISSION = 2;

/**
 * What was measured on a part, in SI. A leakage written as a resistance is turned into one at the voltage it was read at.
 *
 * @param electrolytic the part is an electrolytic: a capacitance without unit is microfarads
 */
export function resolveMeasured(
  context: ResolveContext,
  kind: PartKind,
  written: JobMeasured,
  path: Path,
  meters: ReadonlyMap<string, Meter>,
  electrolytic = false,
): Measured {
  const take = (key: "value" | "esr" | "dcr" | "atVolts", dimension: Dimension) => {
    const text = written[key];
    return text === undefined ? undefined : context.quantity(text, dimension, [...path, key], electrolytic ? { electrolytic } : {});
  };
  const dimension = MAIN_DIMENSION[kind];
  const value = dimension === undefined ? undefined : take("value", dimension);
  const esrOhms = take("esr", "resistance");
  const dcrOhms = take("dcr", "resistance");
  const atVolts = take("atVolts", "voltage");
  const leak = written.leakage === undefined ? {} : resolveLeak(context, written.leakage, [...path, "leakage"]);
  const emission = written.emission === undefined ? undefined : readEmission(context, written.emission, [...path, "emission"]);
  return {
    ...(value === undefined ? {} : { value }),
    circuit: written.circuit ?? "out",
    ...leak,
    ...(atVolts === undefined ? {} : { atVolts }),
    ...(esrOhms === undefined ? {} : { esrOhms }),
    ...(dcrOhms === undefined ? {} : { dcrOhms }),
    ...(emission === undefined ? {} : { emission }),
    ...(written.condition === undefined ? {} : { condition: written.condition }),
    accuracy: (written.meter === undefined ? undefined : meters.get(written.meter)?.accuracy) ?? DEFAULT_MEASUREMENT_ERROR,
    asWritten: summary(written),
    location: context.job.locate(path),
  };
}

function resolveLeak(context: ResolveContext, text: string | number, path: Path): { leakOhms?: number; leakAmps?: number } {
  const isResistance = /ohm|[kKmMgG](?:eg)?\s*$|[ΩΩ]/.test(String(text)) && !/a(?:mp(?:ere)?s?)?\s*$/i.test(String(text));
  const value = context.quantity(text, isResistance ? "resistance" : "current", path);
  if (value === undefined) return {};
  return isResistance ? { leakOhms: value } : { leakAmps: value };
}

/** Emission as a share of a new tube's: "80 %", 80 or 0.8. */
function readEmission(context: ResolveContext, text: string | number, path: Path): number | undefined {
  const value = context.quantity(text, "ratio", path);
  if (value === undefined) return undefined;
  const share = /%/.test(String(text)) || value <= MOST_EMISSION ? value : value / 100;
  if (share >= 0 && share <= MOST_EMISSION) return share;
  context.problem(path, "value-out-of-range", share < 0 ? "emission is negative" : "emission is more than any tube gives", {
    received: String(text),
    expected: `0 to ${MOST_EMISSION * 100} % of a new tube's`,
  });
  return undefined;
}

function summary(written: JobMeasured): string {
  const pieces: string[] = [];
  if (written.value !== undefined) pieces.push(String(written.value) + (written.circuit === "in" ? " in circuit" : ""));
  if (written.leakage !== undefined)
    pieces.push(`leakage ${written.leakage}${written.atVolts === undefined ? "" : ` at ${written.atVolts}`}`);
  if (written.esr !== undefined) pieces.push(`ESR ${written.esr}`);
  if (written.dcr !== undefined) pieces.push(`DCR ${written.dcr}`);
  if (written.emission !== undefined) pieces.push(`emission ${written.emission}`);
  if (written.condition !== undefined) pieces.push(written.condition);
  return pieces.join(", ");
}

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

/** What was measured on a part, in SI. A leakage written as a resistance is turned into one at the voltage it was read at. */
export function resolveMeasured(
  context: ResolveContext,
  kind: PartKind,
  written: JobMeasured,
  path: Path,
  meters: ReadonlyMap<string, Meter>,
): Measured {
  const take = (key: "value" | "esr" | "dcr" | "atVolts", dimension: Dimension) => {
    const text = written[key];
    return text === undefined ? undefined : context.quantity(text, dimension, [...path, key]);
  };
  const dimension = MAIN_DIMENSION[kind];
  const value = dimension === undefined ? undefined : take("value", dimension);
  const esrOhms = take("esr", "resistance");
  const dcrOhms = take("dcr", "resistance");
  const atVolts = take("atVolts", "voltage");
  const leak = written.leakage === undefined ? {} : resolveLeak(context, written.leakage, [...path, "leakage"]);
  const emission = written.emission === undefined ? undefined : readShare(context, written.emission, [...path, "emission"]);
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

function readShare(context: ResolveContext, text: string | number, path: Path): number | undefined {
  const value = context.quantity(text, "ratio", path);
  if (value === undefined) return undefined;
  return /%/.test(String(text)) || value <= 2 ? value : value / 100;
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

import type { Job } from "@underchassis/dataset";

type Part = NonNullable<Job["parts"]>[number];

/** What is planned for the supply. */
export interface Plan {
  /** A thermistor in the line, as it is marked. */
  limiter?: string;
  /** Filters of 68 uF in place of 40 uF, and 5 kohm 5 W across the standby switch. */
  filters?: boolean;
}

/**
 * A generic transmitter of the trade's account: 700 to 740 V and 300 to 310 V at full output, silicon rectifiers in a bridge, B+ from the
 * winding's tap, filters without chokes. Loads are what such a set delivers, from memory: two finals at 100 mA, modulator, driver
 * and screens at 80 mA, heaters of 6.3 V 6 A.
 */
export function capacitorTransmitter({ limiter, filters = false }: Plan = {}): Job {
  const rectifier = (name: string, anode: string, cathode: string): Part => ({
    name,
    kind: "rectifier",
    type: "silicon 1000 V 1 A",
    pins: { "plate-1": anode, cathode },
  });
  const raised = filters ? { fitted: { marked: "68 uF 500 V electrolytic", planned: true, why: "More filter." } } : {};
  const filter = (name: string, from: string, to: string): Part => ({
    name,
    kind: "capacitor",
    between: [from, to],
    marked: "40 uF 450 V electrolytic",
    ...raised,
  });
  const resistor = (name: string, from: string, to: string, marked: string): Part => ({
    name,
    kind: "resistor",
    between: [from, to],
    marked,
  });
  const load = (name: string, from: string, to: string, marked: string): Part => ({ name, kind: "load", between: [from, to], marked });
  return {
    format: 1,
    title: "Transmitter supply without chokes",
    chassis: { era: 1960, assembly: "kit", line: { designVolts: "120 V", hertz: 60, actualVolts: "120 V" } },
    parts: [
      { name: "F1", kind: "fuse", between: ["line hot", "after fuse"], marked: "3 A 250 V slow" },
      { name: "S1", kind: "switch", between: ["after fuse", "after switch"], marked: "3 A 250 V" },
      limiter === undefined
        ? { name: "W1", kind: "wire", between: ["after switch", "T1 pri"] }
        : { name: "RT1", kind: "thermistor", between: ["after switch", "T1 pri"], marked: limiter },
      {
        name: "T1",
        kind: "transformer",
        windings: {
          primary: { between: ["T1 pri", "line neutral"], marked: "120 V 2 A", measured: "1.2 ohm" },
          hv: { between: ["HV 1", "HV tap", "HV 2"], marked: "285-0-285 V", measured: "50 ohm" },
          heater: { between: ["chassis", "heater"], marked: "6.3 V 7 A", measured: "0.03 ohm" },
        },
      },
      rectifier("D1", "HV 1", "HV in"),
      rectifier("D2", "HV 2", "HV in"),
      rectifier("D3", "chassis", "HV 1"),
      rectifier("D4", "chassis", "HV 2"),
      filter("C1", "HV in", "HV mid"),
      filter("C2", "HV mid", "chassis"),
      resistor("R1", "HV in", "HV mid", "100 kohm 5 W"),
      resistor("R2", "HV mid", "chassis", "100 kohm 5 W"),
      { name: "S2", kind: "switch", between: ["HV in", "HV"], marked: "3 A 125 V", positions: { standby: "open" } },
      ...(filters
        ? [
            {
              name: "R3",
              kind: "resistor",
              between: ["HV in", "HV"],
              fitted: { marked: "5 kohm 5 W", planned: true, why: "Standby." },
            } as Part,
          ]
        : []),
      filter("C3", "HV tap", "chassis"),
      resistor("R4", "HV tap", "chassis", "47 kohm 5 W"),
      resistor("R5", "HV tap", "B+", "560 ohm 10 W"),
      filter("C4", "B+", "chassis"),
      load("LOAD1", "HV", "chassis", "100 mA at 720 V"),
      load("LOAD2", "B+", "chassis", "80 mA at 310 V"),
      { ...load("LOAD3", "heater", "chassis", "6 A at 6.3 V"), presentIn: ["operating", "standby"] },
    ],
    conditions: { standby: { lineVolts: "120 V" } },
  };
}

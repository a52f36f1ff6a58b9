import type { Job } from "@underchassis/dataset";

type Readings = NonNullable<Job["readings"]>;

/**
 * A generic transmitter supply: one winding with its centre tap, a bridge of vacuum diodes, high voltage from the bridge and B+ from the
 * tap, a choke in each. Without tubes only bleeders and a screen divider load it, so that both outputs soar towards the crest.
 */
export function chokeTransmitter(readings: Readings, assembly: "kit" | "unknown" = "kit"): Job {
  const diode = (name: string, a: string, b: string) => ({
    name,
    kind: "rectifier" as const,
    type: "5R4GY",
    pins: { "plate-1": a, cathode: b },
  });
  const resistor = (name: string, a: string, b: string, marked: string) => ({
    name,
    kind: "resistor" as const,
    between: [a, b] as [string, string],
    marked,
  });
  const capacitor = (name: string, a: string, marked: string) => ({
    name,
    kind: "capacitor" as const,
    between: [a, "chassis"] as [string, string],
    marked,
  });
  return {
    format: 1,
    title: "Transmitter supply, high voltage and B+ from one winding",
    chassis: { era: 1958, assembly, line: { designVolts: "117 V", hertz: 60, actualVolts: "117 V" } },
    parts: [
      {
        name: "T1",
        kind: "transformer",
        windings: {
          primary: { between: ["line hot", "line neutral"], marked: "117 V", measured: "0.8 ohm" },
          hv: { between: ["HV 1", "HV tap", "HV 2"], marked: "288-0-288 V", measured: "200 ohm" },
        },
      },
      diode("V1", "HV 1", "raw"),
      diode("V2", "HV 2", "raw"),
      diode("V3", "chassis", "HV 1"),
      diode("V4", "chassis", "HV 2"),
      { name: "L1", kind: "inductor", between: ["raw", "HV"], marked: "8 H 200 mA 150 ohm" },
      capacitor("C1", "HV", "20 uF 1000 V film 10 %"),
      resistor("R1", "HV", "chassis", "220 kohm 10 W 5 %"),
      { name: "L2", kind: "inductor", between: ["HV tap", "B+"], marked: "6 H 150 mA 130 ohm" },
      capacitor("C2", "B+", "20 uF 500 V film 10 %"),
      resistor("R2", "B+", "chassis", "82 kohm 5 W 5 %"),
      resistor("R3", "B+", "screen tap", "22 kohm 10 W 5 %"),
      resistor("R4", "screen tap", "chassis", "3.3 kohm 60 W 5 %"),
      resistor("R5", "screen tap", "screen", "1 kohm 2 W 5 %"),
      capacitor("C3", "screen", "0.01 uF 1000 V film 10 %"),
      resistor("R6", "HV", "meter", "1 Mohm 2 W 5 %"),
      resistor("R7", "meter", "chassis", "10 kohm 1 W 5 %"),
    ],
    meters: { rough: { title: "moving-coil meter of unknown calibration", input: "10 Mohm", accuracy: "8 %" } },
    readings,
  };
}

/** Every rectifier circuit x input filter x vacuum or silicon x light or heavy load. */
import type { Element } from "@underchassis/calc";
import { type CircuitCase, STOPPING_CHOKE } from "../oracle/case.ts";
import { acSource, CHASSIS, capacitor, inputChoke, LINE_HERTZ, lineTransformer, network, resistor, silicon, vacuum } from "./parts.ts";

type Device = "vacuum" | "silicon";
type Load = "light" | "heavy";

/** Reverse leak of a silicon rectifier; it decides where a floating winding rests while nothing conducts. */
const REVERSE_OHMS = 20e6;

/** Open-circuit winding volts (RMS), load resistances, and what each rectifier circuit is made of. */
interface Topology {
  rmsVolts: number;
  ohms: Record<Load, number>;
  devices: readonly Device[];
  /** Parts up to the points `rect` (unfiltered) and `chassis`. */
  parts(device: Device): Element[];
  /** Pulses a cycle; ohms of winding and reflected primary; ohms of the rectifier tube or tubes in their pulses. */
  pulses: 1 | 2;
  sourceOhms: number;
  tubeOhms: number;
}

const diode = (device: Device, id: string, anode: string, cathode: string, type: "5Y3GT" | "6X4" | "35W4" = "5Y3GT"): Element =>
  device === "vacuum" ? vacuum(id, anode, cathode, type) : silicon(id, anode, cathode, REVERSE_OHMS);

/**
 * Hand estimate of a capacitor-input supply: the peak, divided over the load and an internal resistance. That is 1/(2 f C) of
 * half the ripple (half of it again for full wave), and the source resistance times the ratio of pulse to mean current, taken as 6
 * for one pulse a cycle and 4 for two; common-practice, good to about a tenth.
 */
function byHand(peakVolts: number, sagOhms: number, sourceOhms: number, pulses: 1 | 2, loadOhms: number): number {
  return peakVolts / (1 + (sagOhms + sourceOhms * (pulses === 1 ? 6 : 4)) / loadOhms);
}

/** Half the ripple for each ampere: 1 / (2 f C). */
const sag = (microfarads: number, hertz = LINE_HERTZ): number => 1e6 / (2 * hertz * microfarads);

/** Rough resistance of a vacuum rectifier in its pulses (table of published drops). */
const tubeOhms = (device: Device, ohms: number): number => (device === "vacuum" ? ohms : 0);

/** Insulation of a floating winding, which fixes its rest level. */
const insulation = [resistor("Rins1", "sec-a", CHASSIS, 20e6), resistor("Rins2", "sec-b", CHASSIS, 20e6)];

const TOPOLOGIES: Record<string, Topology> = {
  "half-wave": {
    rmsVolts: 250,
    ohms: { light: 47e3, heavy: 6.8e3 },
    devices: ["vacuum", "silicon"],
    pulses: 1,
    sourceOhms: 143,
    tubeOhms: 130,
    parts: (device) => [
      ...lineTransformer([{ id: "hv", nodes: ["sec-a", CHASSIS], volts: 250, ohms: 120 }]),
      diode(device, "V1", "sec-a", "rect", "6X4"),
    ],
  },
  "full-wave": {
    rmsVolts: 350,
    ohms: { light: 22e3, heavy: 3.6e3 },
    devices: ["vacuum", "silicon"],
    pulses: 2,
    sourceOhms: 160,
    tubeOhms: 230,
    parts: (device) => [
      ...lineTransformer([
        { id: "hv1", nodes: ["sec-a", CHASSIS], volts: 350, ohms: 110 },
        { id: "hv2", nodes: [CHASSIS, "sec-b"], volts: 350, ohms: 120 },
      ]),
      diode(device, "V1a", "sec-a", "rect"),
      diode(device, "V1b", "sec-b", "rect"),
    ],
  },
  bridge: {
    rmsVolts: 300,
    ohms: { light: 33e3, heavy: 4.7e3 },
    devices: ["vacuum", "silicon"],
    pulses: 2,
    sourceOhms: 133,
    tubeOhms: 260,
    parts: (device) => [
      ...lineTransformer([{ id: "hv", nodes: ["sec-a", "sec-b"], volts: 300, ohms: 100 }]),
      ...insulation,
      diode(device, "D1", "sec-a", "rect", "6X4"),
      diode(device, "D2", "sec-b", "rect", "6X4"),
      diode(device, "D3", CHASSIS, "sec-a", "6X4"),
      diode(device, "D4", CHASSIS, "sec-b", "6X4"),
    ],
  },
};

function inputFilter(kind: "capacitor" | "choke"): Element[] {
  return kind === "capacitor"
    ? [capacitor("C1", "rect", CHASSIS, 20), resistor("R1", "rect", "B+", 470), capacitor("C2", "B+", CHASSIS, 20)]
    : [...inputChoke("L1", "rect", "B+", 10, 200), capacitor("C1", "B+", CHASSIS, 40)];
}

function supply(name: string, topology: Topology, filter: "capacitor" | "choke", device: Device, load: Load): CircuitCase {
  const ohms = topology.ohms[load];
  const { rmsVolts, pulses } = topology;
  const source = topology.sourceOhms + tubeOhms(device, topology.tubeOhms);
  const plausible =
    filter === "capacitor"
      ? {
          point: "rect",
          volts: byHand(rmsVolts * Math.SQRT2, sag(20, pulses * LINE_HERTZ), source, pulses, ohms + 470),
          within: 0.1,
          formula: "1.41 x RMS volts less sag and pulse drop",
        }
      : load === "heavy"
        ? {
            point: "B+",
            volts: (0.9 * rmsVolts) / (1 + (source + 200) / ohms),
            within: 0.1,
            formula: "0.9 x RMS volts less I R (choke input)",
          }
        : undefined;
  return {
    name: `${name}-${filter}-${device}-${load}`,
    network: network(topology.parts(device), inputFilter(filter), resistor("Rload", "B+", CHASSIS, ohms)),
    analysis: { kind: "steady", hertz: LINE_HERTZ },
    ...(plausible === undefined ? {} : { plausible }),
    ...(filter === "choke" && load === "light" ? { tolerance: STOPPING_CHOKE } : {}),
  };
}

/** 117 V doublers without a transformer: full-wave (two stacked capacitors) and cascade (common line and chassis). */
function doubler(kind: "full-wave" | "cascade", device: Device, load: Load): CircuitCase {
  const ohms = { light: 22e3, heavy: 2.7e3 }[load];
  const parts =
    kind === "full-wave"
      ? [
          acSource("line", "line", "mid", 117),
          resistor("Rs", "line", "a", 15),
          diode(device, "D1", "a", "B+", "35W4"),
          diode(device, "D2", CHASSIS, "a", "35W4"),
          capacitor("C1", "B+", "mid", 40),
          capacitor("C2", "mid", CHASSIS, 40),
        ]
      : [
          acSource("line", "line", CHASSIS, 117),
          resistor("Rs", "line", "a", 15),
          capacitor("C1", "mid", "a", 60),
          diode(device, "D1", CHASSIS, "mid", "35W4"),
          diode(device, "D2", "mid", "B+", "35W4"),
          capacitor("C2", "B+", CHASSIS, 40),
        ];
  return {
    name: `doubler-${kind}-${device}-${load}`,
    network: network(parts, resistor("Rload", "B+", CHASSIS, ohms)),
    analysis: { kind: "steady", hertz: LINE_HERTZ },
    plausible: {
      point: "B+",
      volts: byHand(
        2 * 117 * Math.SQRT2,
        kind === "full-wave" ? 2 * sag(40) : 2 * sag(60) + sag(40),
        2 * (15 + tubeOhms(device, 40)),
        1,
        ohms,
      ),
      within: 0.1,
      formula: "2 x 1.41 x 117 V less sag and pulse drop",
    },
  };
}

function transformerless(device: Device, load: Load): CircuitCase {
  const [first, second] = [{ light: 12e3, heavy: 2.4e3 }[load], { light: 47e3, heavy: 8.2e3 }[load]];
  const total = 1 / (1 / first + 1 / (second + 1000));
  return {
    name: `transformerless-half-wave-${device}-${load}`,
    network: network(
      acSource("line", "line", CHASSIS, 117),
      resistor("Rsurge", "line", "a", 33),
      diode(device, "V1", "a", "rect", "35W4"),
      capacitor("C1", "rect", CHASSIS, 50),
      resistor("R1", "rect", "B+", 1000),
      capacitor("C2", "B+", CHASSIS, 30),
      resistor("Rload1", "rect", CHASSIS, first),
      resistor("Rload2", "B+", CHASSIS, second),
    ),
    analysis: { kind: "steady", hertz: LINE_HERTZ },
    plausible: {
      point: "rect",
      volts: byHand(117 * Math.SQRT2, sag(50), 33 + tubeOhms(device, 40), 1, total),
      within: 0.1,
      formula: "1.41 x 117 V less sag and pulse drop",
    },
  };
}

const LOADS = ["light", "heavy"] as const;
const DEVICES = ["vacuum", "silicon"] as const;

export const rectifiers: readonly CircuitCase[] = [
  ...Object.entries(TOPOLOGIES).flatMap(([name, topology]) =>
    topology.devices.flatMap((device) =>
      LOADS.flatMap((load) => [
        supply(name, topology, "capacitor", device, load),
        ...(name === "half-wave" ? [] : [supply(name, topology, "choke", device, load)]),
      ]),
    ),
  ),
  ...DEVICES.flatMap((device) =>
    LOADS.flatMap((load) => [doubler("full-wave", device, load), doubler("cascade", device, load), transformerless(device, load)]),
  ),
];

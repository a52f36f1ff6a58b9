/** Networks of a given size: for timing, and larger ones for the cross-check. */
import type { Element, Network } from "@underchassis/calc";
import type { CircuitCase } from "../oracle/case.ts";
import { CHASSIS, capacitor, choke, LINE_HERTZ, lineTransformer, network, resistor, triode, vacuum } from "./parts.ts";

const transformerAndRectifier: readonly Element[] = [
  ...lineTransformer([
    { id: "hv1", nodes: ["sec-a", CHASSIS], volts: 325, ohms: 130 },
    { id: "hv2", nodes: [CHASSIS, "sec-b"], volts: 325, ohms: 140 },
  ]),
  vacuum("V1a", "sec-a", "rect", "5Y3GT"),
  vacuum("V1b", "sec-b", "rect", "5Y3GT"),
];

/** Line, transformer, rectifier, two filter sections and a bleeder: 12 parts. */
export function supplyOfTwelveParts(): Network {
  return network(
    transformerAndRectifier,
    capacitor("C1", "rect", CHASSIS, 16),
    choke("L1", "rect", "B1", 8, 250),
    capacitor("C2", "B1", CHASSIS, 20),
    resistor("R1", "B1", "B2", 10e3),
    capacitor("C3", "B2", CHASSIS, 20),
    resistor("Rbleed", "B1", CHASSIS, 100e3),
    resistor("Rload1", "B1", CHASSIS, 6200),
    resistor("Rload2", "B2", CHASSIS, 82e3),
  );
}

/** A supply of 5 points, and `stages` decoupled triode stages of 4 points each, coupled in pairs. */
export function supplyWithStages(stages: number): Network {
  const parts: Element[] = [capacitor("C1", "rect", CHASSIS, 40), resistor("R1", "rect", "B0", 470), capacitor("C2", "B0", CHASSIS, 20)];
  for (let k = 1; k <= stages; k += 1) {
    const [supply, plate, grid, cathode] = [`B${k}`, `plate${k}`, `grid${k}`, `cathode${k}`];
    parts.push(
      resistor(`Rd${k}`, "B0", supply, 10e3),
      capacitor(`Cd${k}`, supply, CHASSIS, 10),
      resistor(`Rp${k}`, supply, plate, 100e3),
      resistor(`Rk${k}`, cathode, CHASSIS, 1500),
      capacitor(`Ck${k}`, cathode, CHASSIS, 25),
      resistor(`Rg${k}`, grid, CHASSIS, 470e3),
      triode(`V${k + 1}`, "12AX7", { plate, grid, cathode }),
    );
    if (k % 2 === 0) parts.push(capacitor(`Cc${k}`, `plate${k - 1}`, grid, 0.022));
  }
  return network(transformerAndRectifier, parts, resistor("Rload", "B0", CHASSIS, 6800));
}

/** Whole small chassis; the counts of stages where a solver may lose its way. */
export const chassis: readonly CircuitCase[] = [1, 3, 8].map((stages) => ({
  name: `chassis-of-${stages}-triode-stages`,
  network: supplyWithStages(stages),
  analysis: { kind: "steady", hertz: LINE_HERTZ, settlePeriods: 30 },
}));

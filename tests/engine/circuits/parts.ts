/**
 * Shorthand for the parts of the cross-check circuits. Values are typical of the trade (common-practice); tube constants:
 * vacuum rectifiers by the quoted drop of the published sheet, I / V^1.5; triodes and pentodes sets fitted to published sheets.
 */
import type { Element, Network, Pair, Pentode, PentodeParameters, Triode, TriodeParameters } from "@underchassis/calc";

export const CHASSIS = "chassis";
export const LINE_HERTZ = 60;

export const network = (...elements: readonly (Element | readonly Element[])[]): Network => ({
  elements: elements.flat(),
  reference: CHASSIS,
});

export const resistor = (id: string, a: string, b: string, ohms: number): Element => ({ kind: "resistor", id, nodes: [a, b], ohms });

export const capacitor = (
  id: string,
  a: string,
  b: string,
  microfarads: number,
  imperfections: { esrOhms?: number; leakOhms?: number } = {},
): Element => ({ kind: "capacitor", id, nodes: [a, b], farads: microfarads / 1e6, ...imperfections });

export const choke = (id: string, a: string, b: string, henries: number, dcrOhms: number): Element => ({
  kind: "inductor",
  id,
  nodes: [a, b],
  henries,
  dcrOhms,
});

/**
 * A choke behind a rectifier without a capacitor, with the loss of its iron across it (470 k, common-practice in size): without it
 * the voltage at the rectifier is not defined by anything while nothing conducts.
 */
export const inputChoke = (id: string, a: string, b: string, henries: number, dcrOhms: number): Element[] => [
  choke(id, a, b, henries, dcrOhms),
  resistor(`${id}iron`, a, b, 470e3),
];

/** A 1 A silicon rectifier; constants from-memory, of the usual size for the type. */
export const silicon = (id: string, anode: string, cathode: string, reverseOhms?: number): Element => ({
  kind: "diode",
  id,
  nodes: [anode, cathode],
  saturationAmps: 7e-9,
  emission: 1.8,
  ohms: 0.04,
  ...(reverseOhms === undefined ? {} : { reverseOhms }),
});

/** 5Y3GT: 50 V at 125 mA. 6X4: 22 V at 70 mA. 35W4: 18 V at 200 mA. 5AR4: 17 V at 225 mA. */
export const PERVEANCE = { "5Y3GT": 3.536e-4, "6X4": 6.784e-4, "35W4": 2.619e-3, "5AR4": 3.21e-3, "6AL5": 1.897e-3 } as const;

export const vacuum = (id: string, anode: string, cathode: string, type: keyof typeof PERVEANCE): Element => ({
  kind: "vacuum-diode",
  id,
  nodes: [anode, cathode],
  perveance: PERVEANCE[type],
});

export const dcSource = (id: string, a: string, b: string, dcVolts: number): Element => ({
  kind: "voltage-source",
  id,
  nodes: [a, b],
  dcVolts,
});

export const acSource = (id: string, a: string, b: string, rmsVolts: number, hertz = LINE_HERTZ, phaseRadians = 0): Element => ({
  kind: "voltage-source",
  id,
  nodes: [a, b],
  rmsVolts,
  hertz,
  phaseRadians,
});

/** A power transformer on the 117 V line, and the line itself; each secondary's open-circuit volts and winding resistance. */
export function lineTransformer(
  secondaries: readonly { id: string; nodes: Pair; volts: number; ohms: number }[],
  options: { primaryOhms?: number; magnetizingHenries?: number } = {},
): Element[] {
  const { primaryOhms = 5, magnetizingHenries = 5 } = options;
  const windings = [
    { id: "primary", nodes: ["line", CHASSIS] as Pair, turns: 117, ohms: primaryOhms },
    ...secondaries.map(({ id, nodes, volts, ohms }) => ({ id, nodes, turns: volts, ohms })),
  ];
  return [acSource("line", "line", CHASSIS, 117), { kind: "transformer", id: "T1", windings, magnetizingHenries }];
}

const TRIODES = {
  "12AX7": { mu: 100.26, ex: 1.394, kg1: 1651.8, kp: 17950.8, kvb: 524.4, vct: 0.5 },
  "12AU7": { mu: 20.21, ex: 1.23, kg1: 1108.7, kp: 84.96, kvb: 551.3 },
  "6SN7": { mu: 21.54, ex: 1.316, kg1: 1261.1, kp: 156.78, kvb: 296.4 },
  "6SL7": { mu: 75.89, ex: 1.233, kg1: 1735.2, kp: 1725.27, kvb: 7, vct: 0.5 },
} satisfies Record<string, TriodeParameters>;

const PENTODES = {
  "6V6": { mu: 12.67, ex: 1.198, kg1: 915, kg2: 4500, kp: 38.07, kvb: 30.2 },
  "6AU6": { mu: 36.65, ex: 1.376, kg1: 1129.4, kg2: 1059, kp: 215.42, kvb: 15 },
  EF86: { mu: 34.9, ex: 1.35, kg1: 2648.1, kg2: 4627, kp: 222.06, kvb: 4.7 },
  EL34: { mu: 11, ex: 1.35, kg1: 650, kg2: 4200, kp: 60, kvb: 24 },
  "6L6GC": { mu: 8.7, ex: 1.35, kg1: 1460, kg2: 4500, kp: 48, kvb: 12 },
} satisfies Record<string, PentodeParameters>;

export const triode = (id: string, type: keyof typeof TRIODES, nodes: Triode["nodes"], emission?: number): Element => ({
  kind: "triode",
  id,
  nodes,
  parameters: TRIODES[type],
  ...(emission === undefined ? {} : { emission }),
});

export const pentode = (id: string, type: keyof typeof PENTODES, nodes: Pentode["nodes"]): Element => ({
  kind: "pentode",
  id,
  nodes,
  parameters: PENTODES[type],
});

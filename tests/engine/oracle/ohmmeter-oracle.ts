/** What an ohmmeter shows in the simulator: the unplugged circuit, a battery behind the meter's resistance, volts over amps. */
import type { Element, Network } from "@underchassis/calc";
import type { OhmmeterAnalysis } from "./case.ts";
import { exportNetwork } from "./export-network.ts";
import { simulate } from "./simulator.ts";
import { ampsOf, voltsBetween } from "./trace-figures.ts";

/** Above this the simulator's own shunt of 1e12 ohm is all there is. */
const OPEN_OHMS = 1e10;
/** Below this test voltage a silicon junction carries nothing worth counting. */
const SILICON_VOLTS = 0.5;

/** Wires, leaks and (when the meter can turn them on) junctions; no sources, no tubes, no coupling between windings. */
function unplugged(element: Element, testVolts: number): Element[] {
  const wire = (id: string, nodes: readonly [string, string], ohms: number): Element => ({ kind: "resistor", id, nodes, ohms });
  switch (element.kind) {
    case "resistor":
    case "voltmeter":
      return [wire(element.id, element.nodes, element.ohms)];
    case "switch":
      return [element];
    case "inductor":
      return [wire(element.id, element.nodes, element.dcrOhms ?? 1e-4)];
    case "transformer":
      return element.windings.map(({ id, nodes, ohms }) => wire(`${element.id} ${id}`, nodes, ohms));
    case "capacitor":
      return element.leakOhms === undefined ? [] : [wire(element.id, element.nodes, element.leakOhms + (element.esrOhms ?? 0))];
    case "filament":
      return [wire(element.id, element.nodes, element.coldOhms)];
    case "diode":
      if (testVolts > SILICON_VOLTS) return [element];
      return element.reverseOhms === undefined ? [] : [wire(element.id, element.nodes, element.reverseOhms)];
    default:
      return [];
  }
}

/** Ohms between each pair of points; null where there is no path. */
export async function readOhms(network: Network, analysis: OhmmeterAnalysis): Promise<(number | null)[]> {
  const { testVolts, maxAmps, pairs } = analysis;
  const rest = network.elements.flatMap((element) => unplugged(element, testVolts));
  const ohms: (number | null)[] = [];
  for (const [from, to] of pairs) {
    const meter: Element[] = [
      { kind: "voltage-source", id: "battery", nodes: ["probe", to], dcVolts: testVolts },
      { kind: "resistor", id: "meter", nodes: ["probe", from], ohms: testVolts / maxAmps },
    ];
    const exported = exportNetwork({ elements: [...rest, ...meter], reference: to });
    const trace = await simulate(exported.lines, exported.saved, ".op");
    const reading = exported.readings.get("meter");
    if (reading === undefined) throw new Error("the meter was lost");
    const amps = ampsOf(trace, reading.current)[0] ?? Number.NaN;
    const volts = voltsBetween(trace, exported.node(from), "0")[0] ?? Number.NaN;
    ohms.push(volts / amps > OPEN_OHMS ? null : volts / amps);
  }
  return ohms;
}

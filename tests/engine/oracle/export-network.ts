/** Our network as lines of a netlist for the general-purpose simulator. For these tests only. */
import type { Element, Network } from "@underchassis/calc";
import {
  capacitorLines,
  currentSourceLines,
  filamentLines,
  inductorLines,
  resistorLines,
  thermistorLines,
  transformerLines,
  voltageSourceLines,
} from "./linear-lines.ts";
import { NetlistWriter } from "./netlist-writer.ts";
import { diodeLines, gasDiodeLines, gasRegulatorLines, seleniumLines, zenerLines } from "./semiconductor-lines.ts";
import { pentodeLines, triodeLines, vacuumDiodeLines } from "./tube-lines.ts";

export interface ExportOptions {
  /** Starting capacitor volts and coil amps by element id; zero for the others. */
  initial?: ReadonlyMap<string, number>;
  /** Which gas regulator tubes are lit. */
  lit?: Readonly<Record<string, boolean>>;
  /** The source that carries the small-signal drive. */
  input?: string;
}

function writeElement(writer: NetlistWriter, element: Element, options: ExportOptions): void {
  switch (element.kind) {
    case "resistor":
    case "voltmeter":
      resistorLines(writer, element.id, element.nodes, element.ohms);
      break;
    case "switch":
      if (!element.closed) break;
      if (element.contactOhms === undefined) throw new Error(`${element.id}: give the contact resistance`);
      resistorLines(writer, element.id, element.nodes, element.contactOhms);
      break;
    case "capacitor":
      capacitorLines(writer, element);
      break;
    case "inductor":
      inductorLines(writer, element);
      break;
    case "transformer":
      transformerLines(writer, element);
      break;
    case "voltage-source":
      voltageSourceLines(writer, element, element.id === options.input);
      break;
    case "current-source":
      currentSourceLines(writer, element);
      break;
    case "filament":
      filamentLines(writer, element);
      break;
    case "thermistor":
      thermistorLines(writer, element);
      break;
    case "diode":
      diodeLines(writer, element);
      break;
    case "selenium":
      seleniumLines(writer, element);
      break;
    case "gas-diode":
      gasDiodeLines(writer, element);
      break;
    case "gas-regulator": {
      const lit = options.lit?.[element.id];
      if (lit === undefined) throw new Error(`${element.id}: say whether it is lit`);
      gasRegulatorLines(writer, element, lit);
      break;
    }
    case "zener":
      zenerLines(writer, element);
      break;
    case "vacuum-diode":
      vacuumDiodeLines(writer, element);
      break;
    case "triode":
      triodeLines(writer, element);
      break;
    case "pentode":
      pentodeLines(writer, element);
      break;
  }
}

/** Lines of all elements, and where each figure is read. */
export function exportNetwork(network: Network, options: ExportOptions = {}): NetlistWriter {
  const writer = new NetlistWriter(network.reference, options.initial ?? new Map());
  for (const element of network.elements) writeElement(writer, element, options);
  return writer;
}

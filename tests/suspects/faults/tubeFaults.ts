/** What fails in a tube. */
import type { Element, Network, Pair } from "@underchassis/calc";
import { scaled } from "../cases/perturb.ts";
import type { SeededFault } from "./seededFault.ts";

const wire = (id: string, nodes: Pair, ohms: number): Element => ({ kind: "resistor", id, nodes, ohms });

/** The heater's live end, where the network has one. */
export function heaterPoint(network: Network, part: string): string | undefined {
  const bulb = /^([A-Za-z]+\d+)[A-Za-z]$/.exec(part)?.[1] ?? part;
  const heater = network.elements.find(({ id }) => id === `${bulb}/heater`);
  return heater?.kind === "resistor" ? heater.nodes.find((point) => point !== network.reference) : undefined;
}

/** The edited element and what the fault adds; undefined: as before. */
export function tubeFault(element: Element, fault: SeededFault, network: Network): Element[] | undefined {
  const { kind, factor = 1, ohms = 0, lead } = fault;
  if (kind === "dead") return [];
  if (element.kind === "vacuum-diode")
    return kind === "weak" && (lead === undefined || element.id.endsWith(`/${lead}`)) ? [scaled(element, "perveance", factor)] : undefined;
  if (element.kind !== "triode" && element.kind !== "pentode") return undefined;
  const { grid, cathode, plate } = element.nodes;
  if (kind === "weak") return [scaled(element, "emission", factor)];
  // Ions that the plate current makes flow to the grid: a current out of the positive electrode.
  if (kind === "gassy") return [element, wire(`${element.id} gas`, [plate, grid], ohms)];
  if (kind !== "electrode-short") return undefined;
  if (lead === "grid-cathode") return [element, wire(`${element.id} short`, [grid, cathode], ohms)];
  const heater = heaterPoint(network, element.id);
  return heater === undefined ? undefined : [element, wire(`${element.id} short`, [heater, cathode], ohms)];
}

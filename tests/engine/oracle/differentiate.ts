/** Sensitivities of the simulator's figures by central differences: each parameter up and down by two percent. */
import type { Element, Network, ParameterRef, Probe } from "@underchassis/calc";
import type { CircuitCase, SensitivityAnalysis } from "./case.ts";
import type { OracleRecord } from "./record.ts";

/** Large against the simulator's noise of some 1e-6, small enough that the curvature costs a tenth of a percent or so. */
const STEP = 0.02;

function scaleElement(element: Element, parameter: string, factor: number): Element {
  const [winding, field] = parameter.split(".");
  if (element.kind === "transformer" && field !== undefined) {
    const scaled = element.windings.map((w) =>
      w.id !== winding ? w : field === "turns" ? { ...w, turns: w.turns * factor } : { ...w, ohms: w.ohms * factor },
    );
    return { ...element, windings: scaled };
  }
  const value: unknown = Object.entries(element).find(([key]) => key === parameter)?.[1];
  if (typeof value !== "number") throw new Error(`${element.id} has no ${parameter}`);
  return { ...element, [parameter]: value * factor };
}

function scaleNetwork(network: Network, { element, parameter }: ParameterRef, factor: number): Network {
  return { ...network, elements: network.elements.map((held) => (held.id === element ? scaleElement(held, parameter, factor) : held)) };
}

/** Points are given against the reference, so `to` is not needed. */
function probed(record: OracleRecord, probe: Probe): number {
  if (!("from" in probe)) {
    const amps = record.elements?.[probe.element]?.amps;
    if (amps === undefined) throw new Error(`${probe.element} was not measured`);
    return probe.quantity === "dc-amps" ? amps.mean : amps.rms;
  }
  const point = record.points?.[probe.from];
  if (point === undefined) throw new Error(`${probe.from} was not measured`);
  switch (probe.quantity) {
    case "dc-volts":
      return point.mean;
    case "ripple-volts":
      return point.max - point.min;
    case "max-volts":
      return point.max;
    case "ac-volts":
      return Math.sqrt(Math.max(0, point.rms ** 2 - point.mean ** 2));
  }
}

/** Rows of probes, columns of parameters: d(probe) / d(ln parameter). */
export async function differentiate(
  circuit: CircuitCase,
  analysis: SensitivityAnalysis,
  measure: (circuit: CircuitCase) => Promise<OracleRecord>,
): Promise<number[][]> {
  const rows: number[][] = analysis.probes.map(() => []);
  for (const parameter of analysis.parameters) {
    const at = (factor: number) =>
      measure({ ...circuit, network: scaleNetwork(circuit.network, parameter, factor), analysis: analysis.of });
    const [up, down] = [await at(1 + STEP), await at(1 - STEP)];
    const logStep = Math.log((1 + STEP) / (1 - STEP));
    analysis.probes.forEach((probe, row) => {
      rows[row]?.push((probed(up, probe) - probed(down, probe)) / logStep);
    });
  }
  return rows;
}

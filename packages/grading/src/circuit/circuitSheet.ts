import type { Element } from "@underchassis/calc";
import type { ChassisModel, Life } from "../model/index.ts";

/** The network that was simulated and what it gave: enough to run it again in any other simulator. SI units. */
export interface CircuitSheet {
  title: string;
  life: Life;
  condition: string;
  lineVolts: number;
  hertz: number;
  /** The point that counts as 0 V. */
  reference: string;
  elements: readonly Element[];
  notes: readonly string[];
  points: readonly { point: string; meanVolts: number; acRmsVolts: number; maxVolts: number; minVolts: number; rippleVolts: number }[];
  currents: readonly { element: string; meanAmps: number; rmsAmps: number; peakAmps: number; watts: number }[];
  /** Largest sum of currents left over at any point, as a share of the largest current there. */
  currentResidual: number;
}

/** @throws Error naming the points and parts when the network has no steady state */
export function circuitSheet(model: ChassisModel, life: Life, condition: string): CircuitSheet {
  const solved = model.solve({ life, condition, line: "actual" });
  if (!solved.ok) throw new Error(solved.message);
  const { compiled, steady } = solved;
  const source = compiled.network.elements.find((element) => element.kind === "voltage-source" && (element.rmsVolts ?? 0) > 0);
  return {
    title: model.title,
    life,
    condition,
    lineVolts: source?.kind === "voltage-source" ? (source.rmsVolts ?? 0) : 0,
    hertz: steady.hertz,
    reference: compiled.network.reference,
    elements: compiled.network.elements,
    notes: compiled.notes,
    points: [...steady.points].map(([point, f]) => ({
      point,
      meanVolts: f.meanVolts,
      acRmsVolts: f.acRmsVolts,
      maxVolts: f.maxVolts,
      minVolts: f.minVolts,
      rippleVolts: f.maxVolts - f.minVolts,
    })),
    currents: [...steady.elements].map(([element, f]) => ({
      element,
      meanAmps: f.meanAmps,
      rmsAmps: f.rmsAmps,
      peakAmps: Math.max(Math.abs(f.maxAmps), Math.abs(f.minAmps)),
      watts: f.watts,
    })),
    currentResidual: steady.currentResidual,
  };
}

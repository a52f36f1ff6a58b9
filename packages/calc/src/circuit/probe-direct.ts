import { type Disturbance, elementOf, type Injection } from "./injection.ts";
import type { Probe } from "./solution.ts";
import type { Waves } from "./waves.ts";

/**
 * The part of a current probe's change that is written in the element's own law: at fixed voltages a resistor's current
 * falls as its resistance rises. Weighted by the probe's gain; nothing for other probes and parameters.
 */
export function directShare(waves: Waves, probe: Probe, reference: Disturbance, injection: Injection, gain: Float64Array): number {
  if (!("element" in probe) || "into" in reference) return 0;
  const id = elementOf(reference);
  if (probe.element !== id) return 0;
  const { circuit, trajectory } = waves;
  if (circuit.branchRows.has(id)) return 0;
  const weighted = (wave: Float64Array): number => wave.reduce((sum, value, stage) => sum + gain[stage]! * value, 0);
  const port = waves.currentPort(id);
  if (port !== undefined) return 0;
  const element = circuit.elements.get(id);
  const parameter = "hotOhms" in reference ? "ohms" : reference.parameter;
  if (element === undefined) return 0;
  if (element.kind === "current-source") return parameter === "amps" ? weighted(waves.amps(id)) : 0;
  if (element.kind === "capacitor") {
    if (circuit.innerRows.has(id)) return parameter === "esrOhms" ? -weighted(waves.amps(id)) : 0;
    const stored = waves.storedVolts(id);
    if (parameter === "leakOhms") return element.leakOhms === undefined ? 0 : -weighted(stored) / element.leakOhms;
    if (parameter !== "farads") return 0;
    const slot = circuit.stateIndex.get(id)!;
    const { perSecond } = waves.reductions[0]!;
    return weighted(
      stored.map((volts, stage) => element.farads * perSecond * (volts - trajectory.histories[stage * trajectory.states + slot]!)),
    );
  }
  return injection.resistanceShare === 0 ? 0 : -injection.resistanceShare * weighted(waves.amps(id));
}

import type { Circuit } from "./circuit.ts";
import { PortNewton } from "./port-newton.ts";
import { type Reduction, reduceCircuit, sourceBasis, sourceCount } from "./reduction.ts";
import { CircuitError } from "./solution.ts";

/** A constant operating point: the stores and ports in it. */
export interface ConstantState {
  reduction: Reduction;
  newton: PortNewton;
  /** Capacitor voltages and coil currents, then fluxes of swinging chokes. */
  state: Float64Array;
  basis: Float64Array;
}

/** Names the loads that draw constant current, for a network that cannot feed them. */
export function constantLoads(circuit: Circuit): string[] {
  return [...circuit.elements.values()].filter((element) => element.kind === "current-source").map((element) => element.id);
}

/**
 * Solves a compiled circuit at DC: capacitors open, coils short but for their wire, sine sources at zero.
 *
 * @param startVolts port voltages to start from; zeros otherwise
 * @throws CircuitError `singular`, `no-convergence`
 */
export function solveConstant(circuit: Circuit, startVolts?: ArrayLike<number>): ConstantState {
  const reduction = reduceCircuit(circuit, 0);
  const newton = new PortNewton(circuit);
  const basis = new Float64Array(sourceCount(circuit));
  sourceBasis(circuit, 0, basis, 0, false);
  const { ports: p, sources: s, states: n } = reduction;
  const openVolts = new Float64Array(p);
  for (let k = 0; k < p; k++) openVolts[k] = reduction.portSource[k * s]!;
  if (startVolts !== undefined) newton.scratch.volts.set(startVolts);
  if (!newton.solve(reduction.portPort, openVolts)) {
    const loads = constantLoads(circuit);
    const names = [...loads, ...circuit.devices.map((device) => device.id)];
    const hint = loads.length > 0 ? ` (the network may be unable to feed ${loads.join(", ")})` : "";
    throw new CircuitError("no-convergence", `no operating point found for ${names.join(", ")}${hint}`, [], names);
  }
  const state = new Float64Array(n + circuit.fluxPorts.length);
  for (let k = 0; k < n; k++) {
    let sum = reduction.stateSource[k * s]!;
    for (let j = 0; j < p; j++) sum -= reduction.statePort[k * p + j]! * newton.netAmps[j]!;
    state[k] = sum;
  }
  circuit.fluxPorts.forEach(({ port, device }, k) => {
    const amps = newton.netAmps[port]! + circuit.ports[port]!.lent * newton.scratch.volts[port]!;
    state[n + k] = device.flux.fluxAt(amps);
  });
  return { reduction, newton, state, basis };
}

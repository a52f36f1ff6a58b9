import type { Circuit } from "./circuit.ts";
import { factorize, type LuFactors, solveFactored } from "./lu.ts";
import { CircuitError } from "./solution.ts";

/**
 * The linear part of a circuit at one companion coefficient, reduced to what a time step needs. With x the stores at the
 * start of the stage, j the device currents less those of the lent conductances, and s the source basis (1, sin, cos ...):
 *   all unknowns y = responses * [x; -j; s],
 *   port voltages v = portState x - portPort j + portSource s,
 *   stores X = stateState x - statePort j + stateSource s.
 */
export interface StageReduction {
  /** 1/(stage step) in 1/seconds; 0 at DC. */
  perSecond: number;
  states: number;
  ports: number;
  sources: number;
  portState: Float64Array;
  portPort: Float64Array;
  portSource: Float64Array;
  stateState: Float64Array;
  statePort: Float64Array;
  stateSource: Float64Array;
}

/** A reduction that also tells every unknown: `responses` is [unknown][store, port, source], `width` its row length. */
export interface Reduction extends StageReduction {
  width: number;
  responses: Float64Array;
  lu: LuFactors;
}

/** Number of entries of the source basis: the constant, then sine and cosine of each harmonic. */
export function sourceCount(circuit: Circuit): number {
  return 1 + 2 * circuit.harmonics.length;
}

/** Value of the source basis at a time in seconds; without `alternating` only the constant part. */
export function sourceBasis(circuit: Circuit, seconds: number, out: Float64Array, at: number, alternating = true): void {
  out[at] = 1;
  for (let k = 0; k < circuit.harmonics.length; k++) {
    const angle = 2 * Math.PI * circuit.hertz * circuit.harmonics[k]!.order * seconds;
    out[at + 1 + 2 * k] = alternating ? Math.sin(angle) : 0;
    out[at + 2 + 2 * k] = alternating ? Math.cos(angle) : 0;
  }
}

/** The matrix of the linear network with each store replaced by its companion at `perSecond`. */
function companionMatrix(circuit: Circuit, perSecond: number): Float64Array {
  const { size, stamps, states } = circuit;
  const matrix = new Float64Array(size * size);
  for (let k = 0; k < stamps.values.length; k++) {
    const place = stamps.rows[k]! * size + stamps.columns[k]!;
    matrix[place] = matrix[place]! + stamps.values[k]!;
  }
  for (const { plus, minus, coefficient } of states) {
    const value = coefficient * perSecond;
    if (plus >= 0) matrix[plus * size + plus] = matrix[plus * size + plus]! + value;
    if (minus >= 0) matrix[minus * size + minus] = matrix[minus * size + minus]! + value;
    if (plus >= 0 && minus >= 0) {
      matrix[plus * size + minus] = matrix[plus * size + minus]! - value;
      matrix[minus * size + plus] = matrix[minus * size + plus]! - value;
    }
  }
  return matrix;
}

/** @throws CircuitError `singular`, naming the unknown that the rest does not determine */
function refuseSingular(circuit: Circuit, lu: LuFactors): void {
  if (lu.singularColumn < 0) return;
  const name = circuit.rowNames[lu.singularColumn]!;
  const point = [...circuit.pointRows].find(([, row]) => row === lu.singularColumn)?.[0];
  const element = [...circuit.branchRows].find(([, row]) => row === lu.singularColumn)?.[0];
  throw new CircuitError(
    "singular",
    `the network does not determine the ${name}`,
    point === undefined ? [] : [point],
    element === undefined ? [] : [element],
  );
}

/**
 * Eliminates the linear network down to its stores and ports.
 *
 * @param perSecond companion coefficient 1/(stage step) in 1/seconds; 0 opens capacitors and shorts coils
 * @throws CircuitError `singular`
 */
export function reduceCircuit(circuit: Circuit, perSecond: number): Reduction {
  const { size, states, ports } = circuit;
  const lu = factorize(size, companionMatrix(circuit, perSecond));
  refuseSingular(circuit, lu);
  const n = states.length;
  const p = ports.length;
  const s = sourceCount(circuit);
  const width = n + p + s;
  const responses = new Float64Array(size * width);
  const rightSide = new Float64Array(size);
  const column = new Float64Array(size);
  const place = (index: number): void => {
    solveFactored(lu, rightSide, column);
    for (let row = 0; row < size; row++) responses[row * width + index] = column[row]!;
  };
  const pair = (slot: { plus: number; minus: number }, value: number, index: number): void => {
    rightSide.fill(0);
    if (slot.plus >= 0) rightSide[slot.plus] = value;
    if (slot.minus >= 0) rightSide[slot.minus] = -value;
    place(index);
  };
  if (perSecond > 0) for (const [k, slot] of states.entries()) pair(slot, slot.coefficient * perSecond, k);
  for (const [k, slot] of ports.entries()) pair(slot, 1, n + k);
  rightSide.set(circuit.constant);
  place(n + p);
  circuit.harmonics.forEach((harmonic, k) => {
    rightSide.set(harmonic.sine);
    place(n + p + 1 + 2 * k);
    rightSide.set(harmonic.cosine);
    place(n + p + 2 + 2 * k);
  });
  const extract = (slots: readonly { plus: number; minus: number }[], from: number, count: number): Float64Array => {
    const out = new Float64Array(slots.length * count);
    slots.forEach(({ plus, minus }, row) => {
      for (let k = 0; k < count; k++) {
        const high = plus >= 0 ? responses[plus * width + from + k]! : 0;
        const low = minus >= 0 ? responses[minus * width + from + k]! : 0;
        out[row * count + k] = high - low;
      }
    });
    return out;
  };
  return {
    perSecond,
    states: n,
    ports: p,
    sources: s,
    width,
    responses,
    portState: extract(ports, 0, n),
    portPort: extract(ports, n, p),
    portSource: extract(ports, n + p, s),
    stateState: extract(states, 0, n),
    statePort: extract(states, n, p),
    stateSource: extract(states, n + p, s),
    lu,
  };
}

import type { BorrowedInverse } from "./borrowed-inverse.ts";
import type { Circuit } from "./circuit.ts";
import { compileNetwork } from "./compile.ts";
import { evenPlan, Marcher, type Plan, type Trajectory } from "./march.ts";
import type { Filament, Network, Thermistor } from "./network.ts";
import { constantLoads, solveConstant } from "./operating-point.ts";
import { quietStart } from "./quiet-start.ts";
import { SelfHeating } from "./self-heating.ts";
import { shoot } from "./shooting.ts";
import { CircuitError, type SteadyState } from "./solution.ts";
import { type SteadyInternals, SteadySolution } from "./steady-solution.ts";
import { isStranded } from "./stranded.ts";
import { floatingIslands, refuseFloating, refuseSourceLoops } from "./topology.ts";
import { validateNetwork } from "./validate-network.ts";
import { waveFigures } from "./wave-figures.ts";

/** How a steady state is looked for. */
export interface SteadyOptions {
  /** Fundamental frequency in hertz, when it is lower than the sources themselves tell. */
  hertz?: number;
  /** Steps of the final march through one period. */
  stepsPerPeriod?: number;
  /** A solution of the same or a similar network to start from. */
  warmStart?: SteadyState;
  /** Largest relative correction of a capacitor voltage or coil current at which the periodic state counts as found. */
  tolerance?: number;
  /** Most periods to march. */
  maxIterations?: number;
  /** Points without a path to the reference: an error, or tied to it by 1 gigohm of insulation. */
  islands?: "refuse" | "tie";
}

const COARSE_STEPS = 24;
const FINE_STEPS = 192;
/** Steps that the highest harmonic among the sources gets at least, in one of its own cycles. */
const COARSE_STEPS_PER_CYCLE = 8;
const FINE_STEPS_PER_CYCLE = 64;
const COARSE_TOLERANCE = 1e-3;
const FINE_TOLERANCE = 2e-6;
const PERIODS = 120;
/** Largest relative change of a hot resistance that is left unheeded. */
const HEAT_TOLERANCE = 1e-5;
/** The same with few steps, as a multiple. */
const COARSE_HEAT = 10;
const OUTER_PASSES = 60;
const RESIDUAL_LIMIT = 1e-4;

/** What one solve hands to the next as a first guess, by name, so that the networks may differ. */
interface Guess {
  states: Map<string, number>;
  ports: Map<string, number>;
  /** Transition matrix of a period, with the stores that it belongs to. */
  transition?: { stores: string; matrix: Float64Array; inverse?: BorrowedInverse };
}

/** Names the stores of a circuit in order, so that a transition matrix is only lent to a circuit with the same ones. */
function storesOf(circuit: Circuit): string {
  return [...circuit.states.map((slot) => slot.id), ...circuit.fluxPorts.map(({ device }) => device.id)].join("\u0000");
}

function guessFrom(internals: SteadyInternals): Guess {
  const { circuit } = internals;
  const states = new Map<string, number>();
  for (const [id, index] of circuit.stateIndex) states.set(id, internals.state[index]!);
  const ports = new Map<string, number>();
  for (const device of circuit.devices) {
    const at = circuit.portIndex.get(device.id)!;
    device.ports.forEach((_, k) => {
      ports.set(`${device.id}/${k}`, internals.portVolts[at + k]!);
    });
  }
  const { transition, inverse } = internals;
  if (transition === undefined) return { states, ports };
  const lent = { stores: storesOf(circuit), matrix: transition, ...(inverse === undefined ? {} : { inverse }) };
  return { states, ports, transition: lent };
}

/**
 * First guess with many steps: the solution with few, moved by what the finer steps made of a neighbour. The neighbour's own
 * transition matrix serves, since it was found with those steps.
 */
function refinedGuess(coarse: SteadyInternals, neighbour: SteadyInternals | undefined): Guess {
  const guess = guessFrom(coarse);
  if (neighbour?.coarse === undefined) return guess;
  const before = guessFrom(neighbour.coarse);
  const after = guessFrom(neighbour);
  for (const [id, value] of guess.states) {
    const [from, to] = [before.states.get(id), after.states.get(id)];
    if (from !== undefined && to !== undefined) guess.states.set(id, value + to - from);
  }
  if (after.transition !== undefined && after.transition.stores === guess.transition?.stores) guess.transition = after.transition;
  return guess;
}

function portsFrom(circuit: Circuit, guess: Guess | undefined): Float64Array {
  const volts = new Float64Array(circuit.ports.length);
  if (guess === undefined) return volts;
  for (const device of circuit.devices) {
    const at = circuit.portIndex.get(device.id)!;
    device.ports.forEach((_, k) => {
      volts[at + k] = guess.ports.get(`${device.id}/${k}`) ?? 0;
    });
  }
  return volts;
}

function constantSolution(circuit: Circuit, guess: Guess | undefined): SteadySolution {
  const { reduction, newton, state, basis } = solveConstant(circuit, portsFrom(circuit, guess));
  const trajectory: Trajectory = {
    stages: 1,
    states: state.length,
    weights: Float64Array.of(1),
    times: Float64Array.of(0),
    levels: new Uint8Array(1),
    histories: state,
    results: state,
    netAmps: newton.netAmps,
    portVolts: newton.scratch.volts,
    basis,
  };
  return new SteadySolution({ circuit, reductions: [reduction], trajectory, state, portVolts: newton.scratch.volts, iterations: 1 });
}

/** Stores to start from when nothing is known: the operating point of the constant sources, if there is a sane one. */
function firstState(circuit: Circuit): Float64Array {
  const zero = new Float64Array(circuit.states.length + circuit.fluxPorts.length);
  const powered = [...circuit.elements.values()].some((element) => element.kind === "voltage-source" && (element.dcVolts ?? 0) !== 0);
  if (!powered) return zero;
  try {
    const { state } = solveConstant(circuit);
    return state.every((value) => Math.abs(value) < 1e5) ? state : zero;
  } catch (error) {
    if (error instanceof CircuitError) return zero;
    throw error;
  }
}

function periodicSolution(
  circuit: Circuit,
  guess: Guess | undefined,
  plan: Plan,
  tolerance: number,
  maxIterations: number,
): SteadySolution {
  const marcher = new Marcher(circuit);
  let state: Float64Array;
  if (guess === undefined) state = firstState(circuit);
  else {
    state = new Float64Array(marcher.states);
    for (const [id, index] of circuit.stateIndex) state[index] = guess.states.get(id) ?? 0;
  }
  marcher.newton.scratch.volts.set(portsFrom(circuit, guess));
  const trajectory = marcher.emptyTrajectory(plan);
  const lent = guess?.transition;
  const inverse = lent?.inverse === undefined ? {} : { inverse: lent.inverse.copy() };
  const chord = lent !== undefined && lent.stores === storesOf(circuit) ? { chord: lent.matrix, ...inverse } : {};
  const start = quietStart(marcher, plan, state, tolerance, trajectory, chord) ?? chord;
  const {
    iterations,
    transition,
    inverse: mended,
  } = shoot(marcher, plan, state, { tolerance, maxIterations, record: trajectory, ...start });
  const reductions = plan.stepSeconds.map((step) => marcher.reduction(step));
  return new SteadySolution({
    circuit,
    reductions,
    trajectory,
    state,
    portVolts: marcher.newton.scratch.volts,
    plan,
    transition,
    ...(mended === undefined ? {} : { inverse: mended }),
    iterations,
  });
}

/** Steps of a period: the usual number, or more when a source has a high harmonic. */
function stepsFor(circuit: Circuit, usual: number, perCycle: number): number {
  const highest = circuit.harmonics.reduce((most, { order }) => Math.max(most, order), 1);
  return Math.max(usual, perCycle * highest);
}

/** The dark regulator tube furthest above its striking voltage, if any. */
function tubeToStrike(solution: SteadySolution): string | undefined {
  let worst = 1;
  let found: string | undefined;
  const { circuit } = solution.internals;
  for (const element of circuit.elements.values()) {
    if (element.kind !== "gas-regulator" || circuit.conditions.lit.has(element.id)) continue;
    const { waves } = solution;
    const { max } = waveFigures(waves.between(element.nodes[0], element.nodes[1]), waves.trajectory.weights, waves.stagesPerStep);
    if (max / element.strikeVolts <= worst) continue;
    worst = max / element.strikeVolts;
    found = element.id;
  }
  return found;
}

function solve(network: Network, options: SteadyOptions, ignoreSines: boolean): SteadySolution {
  validateNetwork(network);
  const islands = floatingIslands(network);
  if (options.islands !== "tie") refuseFloating(network, islands);
  const ties = islands.map((island) => island[0]!);
  const warm = options.warmStart instanceof SteadySolution ? options.warmStart.internals : undefined;
  const heated = network.elements.filter(
    (element): element is Filament | Thermistor => element.kind === "filament" || element.kind === "thermistor",
  );
  const warmCoarse = warm?.coarse;
  const heating = new SelfHeating(heated, (warmCoarse ?? warm)?.circuit.conditions.ohms);
  const heatTolerance = Math.max(HEAT_TOLERANCE, options.tolerance ?? 0);
  const lit = new Set<string>();
  let guess = warm === undefined ? undefined : guessFrom(warmCoarse ?? warm);
  let fine = warm !== undefined && warmCoarse === undefined;
  let coarse: SteadyInternals | undefined;
  let iterations = 0;
  for (let pass = 0; pass < OUTER_PASSES; pass++) {
    const circuit = compileNetwork(network, { ohms: new Map(heating.ohms), lit: new Set(lit) }, ties, options.hertz);
    const constant = ignoreSines || circuit.hertz === 0;
    if (pass === 0) refuseSourceLoops(network, constant);
    let solution: SteadySolution;
    if (constant) {
      fine = true;
      solution = constantSolution(circuit, guess);
    } else {
      const plan = evenPlan(
        circuit.hertz,
        fine
          ? (options.stepsPerPeriod ?? stepsFor(circuit, FINE_STEPS, FINE_STEPS_PER_CYCLE))
          : stepsFor(circuit, COARSE_STEPS, COARSE_STEPS_PER_CYCLE),
      );
      solution = periodicSolution(
        circuit,
        guess,
        plan,
        fine ? (options.tolerance ?? FINE_TOLERANCE) : COARSE_TOLERANCE,
        options.maxIterations ?? PERIODS,
      );
    }
    iterations += solution.iterations;
    guess = guessFrom(solution.internals);
    const strikes = tubeToStrike(solution);
    if (strikes !== undefined) {
      lit.add(strikes);
      continue;
    }
    const { waves } = solution;
    const change = heating.update(circuit, (id) => waveFigures(waves.amps(id), waves.trajectory.weights, waves.stagesPerStep).rms);
    if (change > (fine ? heatTolerance : COARSE_HEAT * heatTolerance)) continue;
    if (fine) return new SteadySolution({ ...solution.internals, iterations, ...(coarse === undefined ? {} : { coarse }) });
    fine = true;
    coarse = solution.internals;
    guess = refinedGuess(coarse, warm);
    heating.replan();
    for (const [id, ohms] of heating.ohms) {
      const [from, to] = [warmCoarse?.circuit.conditions.ohms.get(id), warm?.circuit.conditions.ohms.get(id)];
      if (from !== undefined && to !== undefined) heating.ohms.set(id, (ohms * to) / from);
    }
  }
  const names = heated.map((element) => element.id);
  throw new CircuitError("no-convergence", `the temperatures of ${names.join(", ")} do not settle`, [], names);
}

/**
 * A constant-current load must not be fed by driving its voltage backwards. It counts as unfed when its voltage is
 * reversed with the load and forward without it.
 */
function refuseUnfedLoads(network: Network, options: SteadyOptions, ignoreSines: boolean, solution: SteadySolution): void {
  for (const id of constantLoads(solution.internals.circuit)) {
    const load = solution.internals.circuit.elements.get(id)!;
    if (load.kind !== "current-source" || load.amps === 0) continue;
    const forward = (state: SteadySolution): { mean: number; min: number } => {
      const { waves } = state;
      const [from, to] = load.amps > 0 ? load.nodes : [load.nodes[1], load.nodes[0]];
      return waveFigures(waves.between(from, to), waves.trajectory.weights, waves.stagesPerStep);
    };
    const { mean, min } = forward(solution);
    if (mean >= 0 && min > -Math.max(5, mean)) continue;
    const { warmStart: _, ...cold } = options;
    const without = { ...network, elements: network.elements.map((element) => (element.id === id ? { ...load, amps: 0 } : element)) };
    const unloaded = forward(solve(without, cold, ignoreSines)).mean;
    if (unloaded <= 1e-6 || Math.min(mean, min) > -1e-3 * unloaded) continue;
    throw new CircuitError(
      "no-convergence",
      `the network cannot feed ${id} with ${load.amps} A: its voltage would have to reverse to ${Math.min(mean, min).toPrecision(3)} V`,
      load.nodes,
      [id],
    );
  }
}

function checked(network: Network, options: SteadyOptions, ignoreSines: boolean): SteadySolution {
  let solution = solve(network, options, ignoreSines);
  if (options.warmStart !== undefined && solution.hertz > 0 && isStranded(solution)) {
    const { warmStart: _, ...cold } = options;
    solution = solve(network, cold, ignoreSines);
  }
  refuseUnfedLoads(network, options, ignoreSines, solution);
  if (!(solution.currentResidual < RESIDUAL_LIMIT)) {
    throw new CircuitError(
      "no-convergence",
      `currents do not balance: ${solution.currentResidual.toPrecision(2)} of the largest is left over`,
    );
  }
  return solution;
}

/**
 * Steady state of a network: the constant operating point when it has no sine source, else the periodic state at the
 * fundamental of its sources, found by shooting. Filaments and thermistors take the resistance that goes with their RMS
 * current; gas regulators are taken as dark until their voltage passes the striking voltage.
 *
 * @throws CircuitError `bad-value`, `floating-point`, `source-loop`, `singular`, `no-convergence`
 */
export function solveSteady(network: Network, options: SteadyOptions = {}): SteadyState {
  return checked(network, options, false);
}

/**
 * Operating point at DC: sine sources at zero, capacitors open (their leakage kept), coils and windings short but for
 * their wire. It converges from nothing by ramping the sources.
 *
 * @throws CircuitError as `solveSteady`
 */
export function operatingPoint(network: Network, options: Pick<SteadyOptions, "warmStart" | "islands"> = {}): SteadyState {
  return checked(network, options, true);
}

import type { Circuit } from "./circuit.ts";
import { compileNetwork } from "./compile.ts";
import { Marcher, type Plan } from "./march.ts";
import type { Element, Filament, GasRegulator, Network, Thermistor } from "./network.ts";
import { thermistorOhms } from "./self-heating.ts";
import { CircuitError } from "./solution.ts";
import { floatingIslands, refuseFloating, refuseSourceLoops } from "./topology.ts";
import { TransientRecorder, type TransientResult } from "./transient-recorder.ts";
import { validateNetwork } from "./validate-network.ts";
import { Waves } from "./waves.ts";

export interface TransientOptions {
  durationSeconds: number;
  /** 1/512 of the line period unless given, or 1/2000 of the duration without a sine source. */
  stepSeconds?: number;
  /** Capacitor voltages at the start by element; absent ones, and all coil currents, are zero. */
  initial?: "discharged" | ReadonlyMap<string, number>;
  /** Phase of the fundamental at the instant of switching on, in radians. */
  phaseRadians?: number;
  /** Points and elements whose waveforms are kept; everything when absent. Figures are kept of every element. */
  record?: { points?: readonly string[]; elements?: readonly string[] };
  islands?: "refuse" | "tie";
}

const STEPS_PER_PERIOD = 512;
const STEPS_WITHOUT_SINE = 2000;
/** Steps between looks at what changes slowly: thermistors' temperatures, and whether a regulator tube strikes or goes out. */
const STEPS_PER_LOOK = 32;
const STEPS_PER_BLOCK = 2048;
/** The first step is graded, so that the current of the very first instant is not missed: shares of a step. */
const FIRST_STEPS = [1 / 64, 1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2];
const MOST_STEPS = 5e6;

/** What changes between blocks of steps. */
class SlowState {
  readonly lit = new Set<string>();
  readonly kelvin = new Map<string, number>();
  private readonly thermistors: Thermistor[];
  private readonly regulators: GasRegulator[];
  private readonly ohms = new Map<string, number>();

  constructor(network: Network) {
    this.thermistors = network.elements.filter((element): element is Thermistor => element.kind === "thermistor");
    this.regulators = network.elements.filter((element): element is GasRegulator => element.kind === "gas-regulator");
    for (const element of this.thermistors) this.kelvin.set(element.id, element.ambientKelvin ?? 298.15);
    for (const element of network.elements.filter((one): one is Filament => one.kind === "filament"))
      this.ohms.set(element.id, element.coldOhms);
  }

  get changes(): boolean {
    return this.thermistors.length + this.regulators.length > 0;
  }

  conditions(): Circuit["conditions"] {
    for (const element of this.thermistors) this.ohms.set(element.id, thermistorOhms(element, this.kelvin.get(element.id)!));
    return { ohms: new Map(this.ohms), lit: new Set(this.lit) };
  }

  /** Follows a block of steps that took `seconds`. */
  follow(waves: Waves, seconds: number): void {
    const { weights, stages } = waves.trajectory;
    for (const element of this.thermistors) {
      const amps = waves.amps(element.id);
      let square = 0;
      for (let stage = 0; stage < stages; stage++) square += weights[stage]! * amps[stage]! ** 2;
      const watts = square * waves.circuit.resistances.get(element.id)!;
      const ambient = element.ambientKelvin ?? 298.15;
      // Exact for constant heat over the block: it falls exponentially towards the balance of heating and cooling.
      const balance = ambient + watts / element.deltaWattsPerKelvin;
      const kelvin = balance + (this.kelvin.get(element.id)! - balance) * Math.exp(-seconds / element.tauSeconds);
      this.kelvin.set(element.id, kelvin);
    }
    for (const element of this.regulators) {
      if (this.lit.has(element.id)) {
        const amps = waves.amps(element.id);
        if (amps[stages - 1]! < element.extinguishAmps) this.lit.delete(element.id);
      } else {
        const volts = waves.between(element.nodes[0], element.nodes[1]);
        if (Math.max(...volts) > element.strikeVolts) this.lit.add(element.id);
      }
    }
  }
}

function startState(circuit: Circuit, initial: TransientOptions["initial"]): Float64Array {
  const state = new Float64Array(circuit.states.length + circuit.fluxPorts.length);
  if (initial === undefined || initial === "discharged") return state;
  for (const [id, volts] of initial) {
    const index = circuit.stateIndex.get(id);
    if (index === undefined || circuit.states[index]?.kind !== "volts") {
      throw new CircuitError("bad-value", `there is no capacitor ${id} to be charged`, [], [id]);
    }
    state[index] = volts;
  }
  return state;
}

/**
 * Follows a network from an instant of switching on. Thermistors warm up with their heat; gas regulators strike and go
 * out; filaments keep their cold resistance, since their warming is not part of their description.
 *
 * @returns waveforms at the ends of the steps, and figures of every element over the whole time
 * @throws CircuitError `bad-value`, `floating-point`, `source-loop`, `singular`, `no-convergence`
 */
export function transient(network: Network, options: TransientOptions): TransientResult {
  validateNetwork(network);
  refuseSourceLoops(network, false);
  const islands = floatingIslands(network);
  if (options.islands !== "tie") refuseFloating(network, islands);
  const ties = islands.map((island) => island[0]!);
  const slow = new SlowState(network);
  let circuit = compileNetwork(network, slow.conditions(), ties);
  const { durationSeconds } = options;
  const stepSeconds =
    options.stepSeconds ?? (circuit.hertz > 0 ? 1 / circuit.hertz / STEPS_PER_PERIOD : durationSeconds / STEPS_WITHOUT_SINE);
  if (!(durationSeconds > 0) || !(stepSeconds > 0)) throw new CircuitError("bad-value", "duration and step must be above zero");
  const steps = Math.max(1, Math.ceil(durationSeconds / stepSeconds - 1e-9));
  if (steps > MOST_STEPS) throw new CircuitError("bad-value", `${steps} steps of ${stepSeconds} s are too many; take a longer step`);
  const offset = circuit.hertz > 0 ? (options.phaseRadians ?? 0) / (2 * Math.PI * circuit.hertz) : 0;
  const state = startState(circuit, options.initial);
  const recorder = new TransientRecorder(circuit, steps - 1 + FIRST_STEPS.length, offset, options.record);
  let marcher = new Marcher(circuit);
  for (let done = 0; done < steps; ) {
    const count = done === 0 ? 1 : Math.min(slow.changes ? STEPS_PER_LOOK : STEPS_PER_BLOCK, steps - done);
    const plan: Plan =
      done === 0
        ? { stepSeconds: FIRST_STEPS.map((share) => share * stepSeconds), levels: Uint8Array.from(FIRST_STEPS.keys()) }
        : { stepSeconds: [stepSeconds], levels: new Uint8Array(count) };
    const trajectory = marcher.emptyTrajectory(plan);
    marcher.march(plan, state, offset + done * stepSeconds, undefined, trajectory);
    const waves = new Waves(
      circuit,
      plan.stepSeconds.map((step) => marcher.reduction(step)),
      trajectory,
      2,
    );
    recorder.add(waves, count * stepSeconds, slow.kelvin);
    done += count;
    if (!slow.changes) continue;
    slow.follow(waves, count * stepSeconds);
    circuit = compileNetwork(network, slow.conditions(), ties);
    const held = marcher.newton.scratch.volts;
    marcher = new Marcher(circuit);
    marcher.newton.scratch.volts.set(held);
  }
  return recorder.result();
}

/** Figures of one element at the worst instant of switching on. */
export interface Surge {
  /** Largest current in amperes, either way, and the phase of the fundamental (radians) at which it came. */
  maxAmps: number;
  maxAmpsPhase: number;
  /** Largest integral of the squared current in ampere-squared seconds over the time looked at, with its phase. */
  i2t: number;
  i2tPhase: number;
}

/**
 * Switch-on surges from discharged, over evenly spread phases of the fundamental.
 *
 * @param options `phases` to try (24), `durationSeconds` to follow (3 periods), and those of `transient`
 * @returns the worst of each element and winding
 * @throws CircuitError as `transient`, and `bad-value` without a sine source
 */
export function switchOnSurge(
  network: Network,
  options: { phases?: number; durationSeconds?: number; stepSeconds?: number; islands?: "refuse" | "tie" } = {},
): ReadonlyMap<string, Surge> {
  const sine = network.elements.find((element: Element) => element.kind === "voltage-source" && (element.rmsVolts ?? 0) > 0);
  if (sine === undefined || sine.kind !== "voltage-source") throw new CircuitError("bad-value", "there is no sine source to switch on");
  const phases = options.phases ?? 24;
  const durationSeconds = options.durationSeconds ?? 3 / sine.hertz!;
  const worst = new Map<string, Surge>();
  for (let k = 0; k < phases; k++) {
    const phaseRadians = (2 * Math.PI * k) / phases;
    const { islands, stepSeconds } = options;
    const run = transient(network, {
      durationSeconds,
      phaseRadians,
      record: { points: [], elements: [] },
      ...(islands === undefined ? {} : { islands }),
      ...(stepSeconds === undefined ? {} : { stepSeconds }),
    });
    for (const [id, figures] of run.elements) {
      const size = Math.max(figures.maxAmps, -figures.minAmps);
      const surge = worst.get(id) ?? { maxAmps: -1, maxAmpsPhase: 0, i2t: -1, i2tPhase: 0 };
      worst.set(id, surge);
      if (size > surge.maxAmps) {
        surge.maxAmps = size;
        surge.maxAmpsPhase = phaseRadians;
      }
      if (figures.i2t > surge.i2t) {
        surge.i2t = figures.i2t;
        surge.i2tPhase = phaseRadians;
      }
    }
  }
  return worst;
}

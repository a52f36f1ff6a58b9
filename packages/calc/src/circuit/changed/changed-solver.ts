import { BRANCH_OHMS } from "../constants.ts";
import type { Element, Filament, Network, Thermistor } from "../network.ts";
import { SelfHeating } from "../self-heating.ts";
import type { SteadyState } from "../solution.ts";
import { type SteadyOptions, solveSteady } from "../steady.ts";
import type { SteadySolution } from "../steady-solution.ts";
import { floatingIslands, refuseFloating, refuseSourceLoops } from "../topology.ts";
import { validateNetwork } from "../validate-network.ts";
import { waveFigures } from "../wave-figures.ts";
import { ChangedSteady } from "./changed-steady.ts";
import { Fourier } from "./fourier.ts";
import { LinearResponse } from "./linear-response.ts";
import { type NetworkChange, networkChange } from "./network-change.ts";
import { addFold, type FoldedDevice, Plant, tangent } from "./plant.ts";
import { PortSolver, type PortVolts } from "./port-solver.ts";
import { MARCH_SCHEME, RADAU_SCHEME } from "./stage-symbol.ts";
import { stillTubes, stirTubes } from "./tube-stir.ts";
import type { Unknowns } from "./unknowns.ts";

/** How changed networks are solved. */
export interface ChangedOptions extends Pick<SteadyOptions, "hertz" | "islands" | "warmStart"> {
  /** Steps of a period, raised to the next power of two or three times one; 48 unless it is said, 16 where the answer is to be coarse. */
  stepsPerPeriod?: number;
  /**
   * Fewer steps, for a first look at many changes: means within about 1 % of a point's RMS volts, or 0.1 % of the highest
   * in the network, and RMS ripple within about 10 % of a full solution; highest
   * and lowest values of a point within about a quarter of its swing. Figures of elements and waveforms are found by a march of their own.
   */
  coarse?: boolean;
}

/** A solved network, and a solver for networks that differ from it in a few elements. */
export interface ChangedSolver {
  base: SteadyState;
  /**
   * Steady state of a changed network. Elements that are the same object as in the base count as untouched; others may have been
   * replaced, added, taken out or moved, to new points as well.
   *
   * @throws CircuitError as `solveSteady`
   */
  solve(changed: Network): SteadyState;
  /** The same, where the base helps; undefined where only `solveSteady` would do. */
  near(changed: Network): SteadyState | undefined;
  /** How many changed networks were solved from the base, and how many by `solveSteady` for want of likeness. */
  readonly counts: { quick: number; whole: number };
}

const FINE_STEPS = 48;
const COARSE_STEPS = 16;
/** Steps of a coarse answer that has to be marched. */
const FALLBACK_STEPS = 32;
const FINE_TOLERANCE = 1e-5;
const COARSE_TOLERANCE = 5e-4;
const BASE_TOLERANCE = 2e-6;
const HEAT_TOLERANCE = 1e-5;
const OUTER_PASSES = 40;
const FOLD_UPDATES = 4;
/** Share of a tube's alternating current that may be left wrong. */
const STIR_SHARE = { fine: 1e-3, coarse: 0.03 };
const STIR_ROUNDS = 12;
/** The same for a first look at a network whose tubes do not come to rest. */
const UNRESTED_SHARE = 0.2;

/** Steps of a period for sources of one frequency, or more when one is a harmonic of another. */
function stepsFor(base: Network, least: number): number {
  let [lowest, highest] = [Number.POSITIVE_INFINITY, 0];
  for (const element of base.elements) {
    if (element.kind !== "voltage-source" || !((element.rmsVolts ?? 0) > 0)) continue;
    lowest = Math.min(lowest, element.hertz!);
    highest = Math.max(highest, element.hertz!);
  }
  const ratio = highest > lowest ? Math.ceil(highest / lowest) : 1;
  const wanted = least * ratio;
  const binary = 2 ** Math.ceil(Math.log2(wanted));
  // A transform takes a power of two, or three times one.
  return 0.75 * binary >= wanted ? 0.75 * binary : binary;
}

/**
 * Solves a network, and then networks that differ from it in one or a few elements, at a small share of what `solveSteady` takes.
 * The linear network is inverted once at the frequencies of its period; a change is a small correction of that inverse (Woodbury), and
 * the rectifiers' currents at all times of the period are then found together, from those of the base. Tubes and regulators are
 * taken as linear about their means, whose values are found with their whole curves. A change for which this does not serve is solved
 * by `solveSteady`.
 *
 * @param base its elements are compared with those of the changed networks by identity
 * @throws CircuitError as `solveSteady`, for the base
 */
export function changedSolver(base: Network, options: ChangedOptions = {}): ChangedSolver {
  return new Family(base, options);
}

class Family implements ChangedSolver {
  readonly base: SteadyState;
  private readonly marched: SteadySolution;
  readonly counts = { quick: 0, whole: 0 };
  private readonly options: ChangedOptions;
  private readonly steady: SteadyOptions;
  private readonly plant: Plant | undefined;
  private readonly elements: ReadonlyMap<string, Element>;
  private readonly ties: readonly string[];
  private readonly fourier: Fourier;
  private readonly weights: Float64Array;

  constructor(base: Network, options: ChangedOptions) {
    const { coarse, stepsPerPeriod, ...plain } = options;
    const scheme = coarse === true ? RADAU_SCHEME : MARCH_SCHEME;
    const steps = stepsFor(base, stepsPerPeriod ?? (coarse === true ? COARSE_STEPS : FINE_STEPS));
    this.options = options;
    this.steady = { ...plain, stepsPerPeriod: steps, tolerance: coarse === true ? COARSE_TOLERANCE : BASE_TOLERANCE };
    this.marched = solveSteady(base, this.steady) as SteadySolution;
    this.elements = new Map(base.elements.map((element) => [element.id, element]));
    this.ties = options.islands === "tie" ? floatingIslands(base).map((island) => island[0]!) : [];
    this.plant = Plant.of(this.marched.internals, scheme);
    this.fourier = new Fourier(steps);
    this.weights = Float64Array.from({ length: 2 * steps }, (_, stage) => scheme.weights[stage & 1]! / steps);
    // Coarse figures are compared with coarse ones.
    this.base = (coarse === true ? this.quick(base) : undefined) ?? this.marched;
  }

  near(changed: Network): SteadyState | undefined {
    const quick = this.quick(changed);
    if (quick !== undefined) this.counts.quick++;
    return quick;
  }

  solve(changed: Network): SteadyState {
    const quick = this.near(changed);
    if (quick !== undefined) return quick;
    this.counts.whole++;
    return this.march(
      changed,
      this.options.coarse === true ? { ...this.steady, stepsPerPeriod: stepsFor(changed, FALLBACK_STEPS) } : this.steady,
    );
  }

  /** Solves a network by marching; its fine figures take the steps that a fine family has. */
  private march(changed: Network, options: SteadyOptions): SteadySolution {
    return solveSteady(changed, { ...options, warmStart: this.marched }) as SteadySolution;
  }

  private quick(changed: Network): SteadyState | undefined {
    const { plant } = this;
    if (plant === undefined) return undefined;
    validateNetwork({ reference: changed.reference, elements: changed.elements.filter((el) => this.elements.get(el.id) !== el) });
    const lit = new Set<string>();
    const hot = [...changed.elements].filter(
      (element): element is Filament | Thermistor => element.kind === "filament" || element.kind === "thermistor",
    );
    const heating = new SelfHeating(hot, plant.circuit.conditions.ohms);
    const heatTolerance = Math.max(HEAT_TOLERANCE, this.steady.tolerance ?? 0);
    let ties = this.ties;
    let change = networkChange(plant, this.elements, changed, lit, { now: ties, before: this.ties }, this.options.hertz);
    if (change === undefined) return undefined;
    if (change.reshaped) {
      const islands = floatingIslands(changed);
      if (this.options.islands !== "tie") refuseFloating(changed, islands);
      refuseSourceLoops(changed, false);
      ties = islands.map((island) => island[0]!);
      if (ties.length > 0 || this.ties.length > 0) {
        change = networkChange(plant, this.elements, changed, lit, { now: ties, before: this.ties }, this.options.hertz);
        if (change === undefined) return undefined;
      }
    }
    const folds = new Map<string, Float64Array>();
    let volts: PortVolts | undefined;
    let updates = 0;
    let passes = 0;
    for (let outer = 0; outer < OUTER_PASSES; outer++) {
      const linear = this.linear(plant, change, folds, heating.ohms);
      if (linear === undefined) return undefined;
      volts ??= startVolts(plant, linear);
      const settled = this.settle(linear, volts, folds);
      if (settled === undefined) return undefined;
      passes += settled.passes;
      if (settled.refolded && ++updates <= FOLD_UPDATES) continue;
      // A first look takes a tube that nearly comes to rest as it is; a fine one is marched.
      if (settled.refolded && !(this.options.coarse === true && settled.moved < UNRESTED_SHARE)) return undefined;
      const { unknowns } = settled;
      const strikes = this.tubeToStrike(change, unknowns, lit);
      if (strikes !== undefined) {
        lit.add(strikes);
        change = networkChange(plant, this.elements, changed, lit, { now: ties, before: this.ties }, this.options.hertz);
        if (change === undefined) return undefined;
        volts = undefined;
        continue;
      }
      const { elements } = change;
      const { pointRow } = change;
      const rise = heating.update(change, (id) => {
        const element = elements.get(id) as Filament;
        const wave = unknowns.wave(pointRow(element.nodes[0])!, pointRow(element.nodes[1])!);
        return waveFigures(wave, this.weights, 2).rms / heating.ohms.get(id)!;
      });
      if (rise > heatTolerance) continue;
      return this.accept(plant, change, unknowns, { ohms: new Map(heating.ohms), lit }, ties, passes);
    }
    return undefined;
  }

  private linear(
    plant: Plant,
    change: NetworkChange,
    folds: ReadonlyMap<string, Float64Array>,
    ohms: ReadonlyMap<string, number>,
  ): LinearResponse | undefined {
    const conductances = change.conductances.copy();
    const gone = new Set(change.gone);
    for (const device of change.gone) addFold(conductances, device, device.fold, -1);
    const inPlace = new Map(plant.devices.filter((device) => !gone.has(device)).map((device) => [device.id, device]));
    const devices = change.devices.map((device): FoldedDevice => {
      const fold = folds.get(device.id) ?? device.fold;
      const before = inPlace.get(device.id);
      if (before === undefined) addFold(conductances, device, fold, 1);
      else if (before.fold !== fold) {
        addFold(conductances, device, before.fold, -1);
        addFold(conductances, device, fold, 1);
      }
      return fold === device.fold ? device : { ...device, fold };
    });
    for (const [id, now] of ohms) {
      const before = change.resistances.get(id) ?? plant.circuit.resistances.get(id);
      const element = change.elements.get(id);
      if (before === undefined || element === undefined) continue;
      if (before < BRANCH_OHMS || now < BRANCH_OHMS) return undefined;
      const [from, to] = (element as Filament).nodes;
      const [plus, minus] = [change.pointRow(from)!, change.pointRow(to)!];
      if (before !== now) conductances.addBetween(plus, minus, plus, minus, 1 / now - 1 / before);
    }
    const linear = new LinearResponse(plant, { ...change, devices }, conductances, this.fourier);
    return linear.update.regular ? linear : undefined;
  }

  /** The dark regulator tube furthest above its striking voltage, if any. */
  private tubeToStrike(change: NetworkChange, unknowns: Unknowns, lit: ReadonlySet<string>): string | undefined {
    let worst = 1;
    let found: string | undefined;
    for (const element of change.elements.values()) {
      if (element.kind !== "gas-regulator" || lit.has(element.id)) continue;
      const wave = unknowns.wave(change.pointRow(element.nodes[0])!, change.pointRow(element.nodes[1])!);
      const { max } = waveFigures(wave, this.weights, 2);
      if (max / element.strikeVolts <= worst) continue;
      worst = max / element.strikeVolts;
      found = element.id;
    }
    return found;
  }

  /**
   * Port currents and all unknowns for a linear network. Where the tubes hang too little on their folded-in slopes, these are put right
   * in `folds`, and the linear network has to be made anew.
   */
  private settle(
    linear: LinearResponse,
    volts: PortVolts,
    folds: Map<string, Float64Array>,
  ): { unknowns: Unknowns; passes: number; refolded: boolean; moved: number } | undefined {
    const coarse = this.options.coarse === true;
    const solver = new PortSolver(linear);
    let stir = stillTubes(linear);
    let passes = 0;
    for (let round = 0; round < STIR_ROUNDS; round++) {
      const found = solver.solve(volts, linear.stirredOpen(stir.ports), stir.excess, coarse ? COARSE_TOLERANCE : FINE_TOLERANCE);
      if (found === undefined) return undefined;
      passes += found.passes;
      const unknowns = linear.settle(found.active, found.quiet, stir.ports);
      const next = stirTubes(linear, unknowns, volts.quiet, stir, coarse ? STIR_SHARE.coarse : STIR_SHARE.fine);
      if (next.moved <= (coarse ? STIR_SHARE.coarse : STIR_SHARE.fine)) return { unknowns, passes, refolded: false, moved: next.moved };
      if (round > 0 && next.moved > 0.5 * stir.moved) {
        linear.quiet.forEach(({ device, index }, at) => {
          if (index !== 0 || !next.restless.has(device.id)) return;
          folds.set(device.id, Float64Array.from(tangent(device, volts.quiet.slice(at, at + device.plus.length)).slopes));
        });
        if (next.restless.size > 0) return { unknowns, passes, refolded: true, moved: next.moved };
        return coarse && next.moved < UNRESTED_SHARE ? { unknowns, passes, refolded: false, moved: next.moved } : undefined;
      }
      stir = next;
    }
    return undefined;
  }

  private accept(
    plant: Plant,
    change: NetworkChange,
    unknowns: Unknowns,
    conditions: { ohms: Map<string, number>; lit: Set<string> },
    ties: readonly string[],
    iterations: number,
  ): SteadyState | undefined {
    for (const element of change.elements.values()) {
      if (element.kind !== "current-source" || element.amps === 0) continue;
      const wave = unknowns.wave(change.pointRow(element.nodes[0])!, change.pointRow(element.nodes[1])!);
      // A load whose voltage is reversed may be unfed: `solveSteady` looks into it.
      const { mean, min, max } = waveFigures(wave, this.weights, 2);
      if (mean * element.amps <= 0 || min * max <= 0) return undefined;
    }
    const { resistances } = change;
    return new ChangedSteady({
      plant,
      change,
      unknowns,
      conditions,
      ties,
      weights: this.weights,
      iterations,
      ...(this.options.coarse === true
        ? { march: () => this.march(change.network, { ...this.steady, stepsPerPeriod: stepsFor(change.network, FINE_STEPS) }) }
        : {}),
      ohmsOf: (id) => conditions.ohms.get(id) ?? resistances.get(id) ?? plant.circuit.resistances.get(id),
    });
  }
}

/** Port voltages of the base, as far as the changed network has the same ports; a new one's from its two points' means. */
function startVolts(plant: Plant, linear: LinearResponse): PortVolts {
  const stages = 2 * plant.symbol.steps;
  const active = new Float64Array(linear.active.length * stages);
  linear.active.forEach(({ device, index }, p) => {
    const wave = plant.stageVolts.get(device.id)?.[index];
    if (wave !== undefined) active.set(wave, p * stages);
  });
  const quiet = Float64Array.from(linear.quiet, ({ device, index }) => plant.meanVolts.get(device.id)?.[index] ?? 0);
  return { active, quiet };
}

/** Makes the readings of one chassis, healthy or with faults in it. */
import { type Network, solveSteady } from "@underchassis/calc";
import type { Dataset } from "@underchassis/dataset";
import type { ChassisModel, CompiledNetwork } from "../../../packages/grading/src/model/index.ts";
import { exportNetwork } from "../../engine/oracle/export-network.ts";
import { digestOf } from "../../engine/oracle/record.ts";
import { modelOfJob, type Play, readChassis } from "../chassisFiles.ts";
import { applySeededFault } from "../faults/applySeededFault.ts";
import { describeFault, type SeededFault } from "../faults/seededFault.ts";
import { coldOhms } from "../oracle/coldOhms.ts";
import { directIslands, pointsOf, prepare } from "../oracle/prepare.ts";
import type { Start } from "../oracle/shooting.ts";
import { type SteadyReadings, steadyReadings } from "../oracle/steadyReadings.ts";
import type { PoweredReadings, StoredReadings } from "./caseFile.ts";
import { METER_INPUT_OHMS } from "./meterError.ts";
import { perturb } from "./perturb.ts";

export type PoweredCondition = "operating" | "tubes-out";

/** A fuse has opened, or a part has burnt, long before anybody reads a meter: as multiples of the healthy line current and of the rated watts. */
const FUSE_SHARE = 4;
const BURN_SHARE = 15;
const UNRATED_WATTS = 1;

/** Above this nothing but insulation holds a point. */
const INSULATION_OHMS = 1e8;
/** Simulator and engine agree within this share of the volts; alternating volts count a fiftieth, and everything as two volts at least. */
const AGREES = 0.005;

/** A chassis that does not live long enough to be measured. */
export class Overload extends Error {}

export class CaseMaker {
  readonly model: ChassisModel;
  readonly play: Play;
  readonly conditions: readonly PoweredCondition[];
  readonly compiled: ReadonlyMap<PoweredCondition | "cold", CompiledNetwork>;
  readonly points: readonly string[];
  readonly pairs: readonly [string, string][];
  readonly netlist: string;
  private readonly starts = new Map<PoweredCondition, Start>();
  readonly disagreements: string[] = [];
  private lineAmps = Number.POSITIVE_INFINITY;

  constructor(id: string, dataset: Dataset) {
    const { job, play } = readChassis(id);
    this.play = play;
    this.model = modelOfJob(job, dataset);
    this.conditions = (["operating", "tubes-out"] as const).filter((condition) => this.model.conditions.get(condition)?.powered);
    const all = [...this.conditions, "cold" as const];
    this.compiled = new Map(all.map((condition) => [condition, this.model.compile({ life: "restored", condition, line: "actual" })]));
    const { network } = this.compiledFor("operating");
    this.points = reachable(network);
    const known = new Set(network.elements.flatMap(pointsOf));
    const ends = [...this.model.parts.values()].flatMap(({ lives }): [string, string][] => {
      const { a, b } = lives.restored.pins;
      const [from, to] = [a, b].map((point) => (point === undefined ? undefined : this.compiledFor("operating").pointOf(point)));
      return from === undefined || to === undefined || from === to || !known.has(from) || !known.has(to) ? [] : [[from, to]];
    });
    const toReference = this.points.map((point): [string, string] => [point, network.reference]);
    const seen = new Set(toReference.map((pair) => [...pair].sort().join("|")));
    this.pairs = [
      ...toReference,
      ...ends.filter((pair) => {
        const key = [...pair].sort().join("|");
        if (seen.has(key)) return false;
        seen.add(key);
        return true;
      }),
    ];
    const lit = Object.fromEntries(network.elements.filter(({ kind }) => kind === "gas-regulator").map(({ id: tube }) => [tube, true]));
    this.netlist = digestOf(exportNetwork(prepare(network, this.hertz), { lit }).lines, this.pairs);
  }

  get hertz(): number {
    return this.model.line.hertz;
  }

  private compiledFor(condition: PoweredCondition | "cold"): CompiledNetwork {
    const found = this.compiled.get(condition);
    if (found === undefined) throw new Error(`no ${condition}`);
    return found;
  }

  /** The network with its values drawn and its faults in it. */
  networkOf(condition: PoweredCondition | "cold", seed: string, faults: readonly SeededFault[]): Network {
    const compiled = this.compiledFor(condition);
    return faults.reduce(applySeededFault, seed === "" ? compiled.network : perturb(compiled, seed));
  }

  /** Settles the chassis with its nominal values: what all others start from. Our engine lends a first guess, which the simulator has to confirm. */
  async nominal(): Promise<StoredReadings> {
    for (const condition of this.conditions) {
      const { network } = this.compiledFor(condition);
      this.starts.set(condition, (await steadyReadings(network, this.hertz, guessOf(network))).start);
    }
    const readings = await this.readings("", []);
    return readings;
  }

  /**
   * @param seed draws the values; empty: nominal
   * @throws Overload, FloatingGrid, or an Error when the chassis at work finds no steady state
   */
  async readings(seed: string, faults: readonly SeededFault[]): Promise<StoredReadings> {
    const powered = new Map<PoweredCondition, PoweredReadings | null>();
    for (const condition of this.conditions) {
      const network = this.networkOf(condition, seed, faults);
      const start = this.starts.get(condition);
      if (start === undefined) throw new Error("settle the nominal chassis first");
      try {
        const found = await this.confirmed(network, start, [seed, condition, ...faults.map(describeFault)].join(", "));
        if (condition === "operating") this.checkLoad(found, seed === "" && faults.length === 0);
        powered.set(condition, this.table(await this.metered(network, found)));
      } catch (error) {
        if (condition === "operating" || error instanceof Overload) throw error;
        powered.set(condition, null);
      }
    }
    const operating = powered.get("operating");
    if (operating === undefined || operating === null) throw new Error("not read at work");
    const cold = await coldOhms(this.networkOf("cold", seed, faults), this.pairs);
    const tubesOut = powered.get("tubes-out");
    return { seed, cold, operating, ...(tubesOut === undefined ? {} : { "tubes-out": tubesOut }) };
  }

  /**
   * What the simulator finds. Where our engine finds something else, the simulator is asked again with care, and what it then says
   * stands: the engine decides no figure, only where to look twice.
   */
  private async confirmed(network: Network, start: Start, what: string): Promise<SteadyReadings> {
    const found = await steadyReadings(network, this.hertz, start);
    if (differenceFromEngine(network, found) < AGREES) return found;
    const again = await steadyReadings(network, this.hertz, start, true);
    const difference = differenceFromEngine(network, again);
    if (difference >= AGREES) this.disagreements.push(`${what}: ${(100 * difference).toFixed(1)} %`);
    return again;
  }

  /** Points that only insulation holds, with a meter on each in turn. */
  private async metered(network: Network, found: SteadyReadings): Promise<SteadyReadings> {
    const points = new Map(found.points);
    for (const [point, reading] of found.points) {
      if (reading.ohms < INSULATION_OHMS || !this.points.includes(point)) continue;
      const meter = { kind: "voltmeter", id: "meter", nodes: [point, network.reference], ohms: METER_INPUT_OHMS } as const;
      const shown = await steadyReadings({ ...network, elements: [...network.elements, meter] }, this.hertz, found.start);
      const volts = shown.points.get(point)?.volts ?? 0;
      points.set(point, { ...reading, volts, ohms: 0 });
    }
    return { ...found, points };
  }

  private checkLoad(found: SteadyReadings, isNominal: boolean): void {
    if (isNominal) this.lineAmps = found.lineAmps;
    if (found.lineAmps > FUSE_SHARE * this.lineAmps) throw new Overload("the fuse opens");
    for (const [id, watts] of found.watts) {
      const rated = this.model.parts.get(id)?.lives.restored.ratedWatts;
      if (this.model.parts.get(id)?.kind === "resistor" && watts > BURN_SHARE * (rated ?? UNRATED_WATTS))
        throw new Overload("a part burns");
    }
  }

  private table({ points }: SteadyReadings): PoweredReadings {
    const of = (key: "volts" | "ripple" | "ohms"): number[] => this.points.map((point) => points.get(point)?.[key] ?? 0);
    return { volts: of("volts"), ripple: of("ripple"), sourceOhms: of("ohms").map((value) => Math.min(value, 1e9)) };
  }
}

function differenceFromEngine(network: Network, { points }: SteadyReadings): number {
  try {
    const solution = solveSteady(network, { islands: "tie" });
    const differences = [...points].map(([point, { volts, ripple, ohms }]) => {
      const engine = solution.points.get(point)?.meanVolts;
      return engine === undefined || ohms >= INSULATION_OHMS / 10
        ? 0
        : Math.abs(engine - volts) / Math.max(2, Math.abs(volts), 0.02 * ripple);
    });
    return Math.max(0, ...differences);
  } catch {
    // Nothing to compare with.
    return 0;
  }
}

/** Points that something but the insulation of a transformer joins to the reference. */
function reachable(network: Network): string[] {
  const real = network.elements.filter(({ id }) => !id.startsWith("tie "));
  const islands = directIslands(real);
  const home = islands.get(network.reference);
  const joined = new Set([...islands].flatMap(([point, island]) => (island === home ? [point] : [])));
  // What capacitors alone hold counts too.
  for (const element of real)
    if (element.kind === "capacitor" && element.nodes.some((point) => joined.has(point)))
      for (const point of element.nodes) joined.add(point);
  joined.delete(network.reference);
  return [...joined].sort();
}

function guessOf(network: Network): Start {
  const solution = solveSteady(network);
  const values = new Map<string, number>();
  const volts = (point: string): number => solution.points.get(point)?.meanVolts ?? 0;
  for (const element of network.elements) {
    if (element.kind === "capacitor") values.set(element.id, volts(element.nodes[0]) - volts(element.nodes[1]));
    if (element.kind === "inductor") values.set(element.id, solution.elements.get(element.id)?.meanAmps ?? 0);
  }
  const points = new Map(
    [...solution.points].map(([point, { meanVolts }]) => [point, solution.waveforms?.volts.get(point)?.[0] ?? meanVolts]),
  );
  return { values, points };
}

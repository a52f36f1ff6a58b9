import { CircuitError, type MeanResponse, meanResponse, type Network, type ParameterRef, scaleParameter } from "@underchassis/calc";
import { applyFault } from "./applyFault.ts";
import { atRest } from "./atRest.ts";
import { coldTransfer, ohmsOf, pointIndex } from "./coldTransfer.ts";
import type { Fault } from "./fault.ts";
import { type Ground, parameterKey, probeOf, type Situation, stretchOf } from "./ground.ts";
import { scaled } from "./observable.ts";

/**
 * A first look at faults that are resistances or tubes put in, taken out, changed or moved. With the power off it is exact; with power
 * rectifiers follow their tangents, so that it picks what deserves a simulation and decides nothing.
 */
export class Screen {
  readonly #ground: Ground;
  readonly #powered: ReadonlyMap<Situation, MeanResponse | undefined>;

  constructor(ground: Ground) {
    this.#ground = ground;
    this.#powered = new Map(
      ground.situations.flatMap((situation) => (situation.steady === undefined ? [] : [[situation, responseOf(situation)] as const])),
    );
  }

  /** Scaled readings under a fault; NaN where only a simulation tells. Undefined when it tells nothing of a fault with power on. */
  predict(fault: Fault): Float64Array | undefined {
    const out = new Float64Array(this.#ground.observables.length).fill(Number.NaN);
    for (const situation of this.#ground.situations) {
      const network = applyFault(situation.network, fault);
      if (network !== undefined) {
        if (!this.#read(situation, network, out)) return undefined;
        continue;
      }
      // The part is not there in this condition, so that the fault does not show.
      for (const index of situation.indices) out[index] = this.#ground.nominal[index]!;
    }
    return out;
  }

  /**
   * Slopes of the readings about a fault, for one standard deviation of each value as in `Ground`: a tube that draws nothing hands on nothing
   * of its own spread. What the first look does not tell is the healthy chassis's, stretched as the reading is.
   *
   * @param predicted scaled readings under the fault
   */
  slopes(fault: Fault, predicted: Float64Array): Float64Array {
    const { observables, parameters, situations, nominal, slopes, volts } = this.#ground;
    const width = parameters.length;
    const out = Float64Array.from(slopes, (slope, k) => {
      const index = Math.floor(k / width);
      return slope * stretchOf(observables[index]!.quantity, predicted[index]!, nominal[index]!, volts);
    });
    const columns = new Map(parameters.map(({ key }, column) => [key, column]));
    const [base, moved] = [new Float64Array(observables.length), new Float64Array(observables.length)];
    for (const situation of situations) {
      const network = applyFault(situation.network, fault);
      base.fill(Number.NaN);
      if (network === undefined || !this.#read(situation, network, base)) continue;
      for (const { ref, part } of situation.compiled.uncertain) {
        const column = columns.get(parameterKey(ref, part === "line" ? situation.key : ""));
        const changed = column === undefined ? undefined : scaledBy(network, ref, 1 + STEP);
        moved.fill(Number.NaN);
        if (column === undefined || changed === undefined || !this.#read(situation, changed, moved)) continue;
        for (const index of situation.indices) {
          const slope = (moved[index]! - base[index]!) / STEP;
          if (!Number.isNaN(slope)) out[index * width + column] = slope * parameters[column]!.deviation;
        }
      }
    }
    return out;
  }

  /** Writes what is known of a changed network's readings; false when nothing is. */
  #read(situation: Situation, network: Network, out: Float64Array): boolean {
    const { observables, loading } = this.#ground;
    if (situation.steady === undefined) {
      const resting = atRest(network);
      const index = pointIndex(resting);
      const transfer = coldTransfer(resting, index);
      for (const k of situation.indices) {
        const { at, to } = observables[k]!;
        const [from, other] = [situation.compiled.pointOf(at), situation.compiled.pointOf(to)];
        if (from !== undefined && other !== undefined) out[k] = scaled("ohms", ohmsOf(resting, index, transfer, from, other));
      }
      return true;
    }
    const response = this.#powered.get(situation);
    const volts = response?.changed(network);
    if (response === undefined || volts === undefined) return false;
    for (const index of situation.indices) {
      const probe = probeOf(situation.compiled, observables[index]!);
      if (probe?.quantity !== "dc-volts") continue;
      const [a, b] = [response.points.get(probe.from), response.points.get(probe.to)];
      out[index] = ((a === undefined ? 0 : volts[a]!) - (b === undefined ? 0 : volts[b]!)) * loading[index]!;
    }
    return true;
  }
}

/** Relative step by which a value is moved for a slope: small beside any tolerance, large beside what the tubes are solved to. */
const STEP = 0.03;

/** The network with one value multiplied; undefined where a fault has taken the element, or the value. */
function scaledBy(network: Network, ref: ParameterRef, factor: number): Network | undefined {
  const index = network.elements.findIndex(({ id }) => id === ref.element);
  const element = network.elements[index];
  if (element === undefined) return undefined;
  try {
    return { ...network, elements: network.elements.with(index, scaleParameter(element, ref, factor)) };
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

function responseOf({ network, steady }: Situation): MeanResponse | undefined {
  if (steady === undefined) return undefined;
  try {
    return meanResponse(network, steady);
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

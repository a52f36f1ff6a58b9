import { CircuitError, type MeanResponse, meanResponse } from "@underchassis/calc";
import { applyFault } from "./applyFault.ts";
import { atRest } from "./atRest.ts";
import { coldTransfer, ohmsOf, pointIndex } from "./coldTransfer.ts";
import type { Fault } from "./fault.ts";
import { type Ground, probeOf, type Situation } from "./ground.ts";
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
    const { observables, nominal, loading, situations } = this.#ground;
    const out = new Float64Array(observables.length).fill(Number.NaN);
    for (const situation of situations) {
      const network = applyFault(situation.network, fault);
      if (network === undefined) {
        // The part is not there in this condition, so that the fault does not show.
        for (const index of situation.indices) out[index] = nominal[index]!;
      } else if (situation.steady === undefined) {
        const resting = atRest(network);
        const index = pointIndex(resting);
        const transfer = coldTransfer(resting, index);
        for (const k of situation.indices) {
          const { at, to } = observables[k]!;
          const [from, other] = [situation.compiled.pointOf(at), situation.compiled.pointOf(to)];
          if (from !== undefined && other !== undefined) out[k] = scaled("ohms", ohmsOf(resting, index, transfer, from, other));
        }
      } else {
        const response = this.#powered.get(situation);
        const volts = response?.changed(network);
        if (response === undefined || volts === undefined) return undefined;
        for (const index of situation.indices) {
          const probe = probeOf(situation.compiled, observables[index]!);
          if (probe?.quantity !== "dc-volts") continue;
          const [a, b] = [response.points.get(probe.from), response.points.get(probe.to)];
          out[index] = ((a === undefined ? 0 : volts[a]!) - (b === undefined ? 0 : volts[b]!)) * loading[index]!;
        }
      }
    }
    return out;
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

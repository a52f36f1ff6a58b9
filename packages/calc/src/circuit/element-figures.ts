import type { Element, Pair } from "./network.ts";
import type { ElementFigures } from "./solution.ts";
import { meanProduct, waveFigures } from "./wave-figures.ts";
import type { Waves } from "./waves.ts";

function figuresOf(waves: Waves, pair: Pair, current: string, watts?: (rmsAmps: number) => number): ElementFigures {
  const { weights } = waves.trajectory;
  const volts = waves.between(pair[0], pair[1]);
  const amps = waves.amps(current);
  const v = waveFigures(volts, weights, waves.stagesPerStep);
  const i = waveFigures(amps, weights, waves.stagesPerStep);
  return {
    meanVolts: v.mean,
    rmsVolts: v.rms,
    maxVolts: v.max,
    minVolts: v.min,
    meanAmps: i.mean,
    rmsAmps: i.rms,
    maxAmps: i.max,
    minAmps: i.min,
    watts: watts === undefined ? meanProduct(volts, amps, weights) : watts(i.rms),
  };
}

function tubeFigures(waves: Waves, element: Element & { kind: "triode" | "pentode" }): ElementFigures {
  const { plate, cathode, grid } = element.nodes;
  const figures = figuresOf(waves, [plate, cathode], element.id);
  const further: [string, string][] = [["grid", grid]];
  if (element.kind === "pentode") further.unshift(["screen", element.nodes.screen]);
  const electrodes: NonNullable<ElementFigures["electrodes"]> = {};
  for (const [name, point] of further) {
    const own = figuresOf(waves, [point, cathode], `${element.id}.${name}`);
    electrodes[name] = { meanAmps: own.meanAmps, watts: own.watts };
    figures.watts += own.watts;
  }
  figures.electrodes = electrodes;
  return figures;
}

/** Temperature in kelvins at which a thermistor has a resistance in ohms. */
export function thermistorKelvin(element: { r25Ohms: number; betaKelvin: number }, ohms: number): number {
  return 1 / (1 / 298.15 + Math.log(ohms / element.r25Ohms) / element.betaKelvin);
}

/** Figures of one element; of each winding for a transformer, under `element.winding`. */
export function elementFigures(waves: Waves, element: Element): [id: string, figures: ElementFigures][] {
  const { circuit } = waves;
  const ohms = circuit.resistances.get(element.id);
  switch (element.kind) {
    case "transformer":
      return element.windings.map((winding) => {
        const id = `${element.id}.${winding.id}`;
        return [id, figuresOf(waves, winding.nodes, id, (rms) => rms * rms * winding.ohms)];
      });
    case "triode":
    case "pentode":
      return [[element.id, tubeFigures(waves, element)]];
    case "inductor":
      return [[element.id, figuresOf(waves, element.nodes, element.id, (rms) => rms * rms * (element.dcrOhms ?? 0))]];
    case "capacitor": {
      const stored = waveFigures(waves.storedVolts(element.id), waves.trajectory.weights, waves.stagesPerStep).rms;
      const leak = element.leakOhms === undefined ? 0 : (stored * stored) / element.leakOhms;
      return [[element.id, figuresOf(waves, element.nodes, element.id, (rms) => rms * rms * (element.esrOhms ?? 0) + leak)]];
    }
    case "gas-regulator":
      return [[element.id, { ...figuresOf(waves, element.nodes, element.id), state: { lit: circuit.conditions.lit.has(element.id) } }]];
    case "thermistor":
      return [
        [element.id, { ...figuresOf(waves, element.nodes, element.id), state: { ohms: ohms!, kelvin: thermistorKelvin(element, ohms!) } }],
      ];
    case "filament":
      return [[element.id, { ...figuresOf(waves, element.nodes, element.id), state: { ohms: ohms! } }]];
    default:
      return [[element.id, figuresOf(waves, element.nodes, element.id)]];
  }
}

import { CircuitError, type Element, type ElementFigures, solveSteady } from "@underchassis/calc";
import { LINE } from "../../compile/compile.ts";
import { isIn } from "../../compile/presence.ts";
import type { ChassisModel, CompiledNetwork, Life } from "../../model/index.ts";
import { poweredConditions } from "./stress.ts";

/** Resistance that stands for an empty capacitor at the instant of switching on; small beside any winding. */
const EMPTY_OHMS = 0.01;
/** Capacitors below this are charged in no time. */
const LEAST_FARADS = 1e-6;
/** from-memory: a cold heater has about a sixth of its hot resistance. */
const COLD_HEATER_SHARE = 1 / 6;

/** The first instant after switching on, at the crest of the highest line. SI. */
export interface SwitchOn {
  condition: string;
  linePeakAmps: number;
  /** Bound of the integral of i^2 in the line until the filters are full. */
  lineAmpsSquaredSeconds: number;
  /** Energy that the filters hold when full; as much again turns to heat on the way. */
  filterJoules: number;
  /** Largest current in each element, by element id. */
  elements: ReadonlyMap<string, ElementFigures>;
  compiled: CompiledNetwork;
}

interface Options {
  /** True: switched on again with the cathodes still hot and the filters empty. False: cold tubes, cold heaters. */
  hot: boolean;
  /** Parts bridged for comparison: what an inrush limiter changes. */
  bridged?: ReadonlySet<string>;
}

const kept = new WeakMap<ChassisModel, Map<string, SwitchOn | undefined>>();

/**
 * Surge at switch-on, from one steady solution in which every filter capacitor is empty (a short) and every inrush limiter cold
 * (its 25 degC resistance): the peak of that alternating current is the peak of the first half cycle when the switch closes at
 * the crest. The integral of i^2 is at most E / R with E the energy that the filters take up and R = crest volts / peak amperes,
 * since charging through a resistance turns as much into heat as it stores, and charging in steps less.
 * The core's own magnetising surge is not in it.
 */
export function switchOn(model: ChassisModel, life: Life, options: Options): SwitchOn | undefined {
  const key = `${life} ${options.hot} ${[...(options.bridged ?? [])].join()}`;
  const perModel = kept.get(model) ?? new Map<string, SwitchOn | undefined>();
  kept.set(model, perModel);
  if (!perModel.has(key)) perModel.set(key, solveSwitchOn(model, life, options));
  return perModel.get(key);
}

function solveSwitchOn(model: ChassisModel, life: Life, { hot, bridged }: Options): SwitchOn | undefined {
  const condition = poweredConditions(model).find(({ id }) => id === "operating") ?? poweredConditions(model)[0];
  if (condition === undefined) return undefined;
  const solved = model.solve({ life, condition: condition.id, line: "high" });
  if (!solved.ok || solved.steady.elements.get(LINE) === undefined) return undefined;
  const { compiled } = solved;
  const cold = new Set(
    [...model.parts.values()]
      .filter((part) => part.kind === "rectifier" && part.lives[life].heater !== undefined && isIn(part, part.lives[life], condition))
      .map(({ id }) => id),
  );
  let filterJoules = 0;
  const elements = compiled.network.elements.flatMap((element): Element[] => {
    const origin = compiled.origins.get(element.id);
    if (element.kind === "capacitor") {
      const figures = solved.steady.elements.get(element.id);
      const crest = figures === undefined ? 0 : Math.max(Math.abs(figures.maxVolts), Math.abs(figures.minVolts));
      if (element.farads < LEAST_FARADS) return [element];
      if (Math.abs(figures?.meanVolts ?? 0) > 0.5 * crest) filterJoules += 0.5 * element.farads * crest ** 2;
      return [{ kind: "resistor", id: element.id, nodes: element.nodes, ohms: Math.max(EMPTY_OHMS, element.esrOhms ?? 0) }];
    }
    if (element.kind === "thermistor")
      return [
        { kind: "resistor", id: element.id, nodes: element.nodes, ohms: bridged?.has(element.id) === true ? EMPTY_OHMS : element.r25Ohms },
      ];
    if (!hot && origin !== undefined && cold.has(origin.part) && origin.aspect !== "heater") return [];
    if (!hot && element.kind === "resistor" && origin?.aspect === "heater") return [{ ...element, ohms: element.ohms * COLD_HEATER_SHARE }];
    // Amplifier tubes and constant loads draw nothing from empty filters.
    if (element.kind === "triode" || element.kind === "pentode" || element.kind === "current-source" || element.kind === "gas-regulator")
      return [];
    return [element];
  });
  try {
    const steady = solveSteady({ ...compiled.network, elements }, { hertz: model.line.hertz, islands: "tie" });
    const line = steady.elements.get(LINE);
    if (line === undefined) return undefined;
    const linePeakAmps = Math.max(Math.abs(line.maxAmps), Math.abs(line.minAmps));
    const crestVolts = Math.max(Math.abs(line.maxVolts), Math.abs(line.minVolts));
    const charged = hot || cold.size === 0;
    return {
      condition: condition.id,
      linePeakAmps,
      lineAmpsSquaredSeconds: charged && linePeakAmps > 0 ? (filterJoules * linePeakAmps) / crestVolts : 0,
      filterJoules: charged ? filterJoules : 0,
      elements: steady.elements,
      compiled,
    };
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

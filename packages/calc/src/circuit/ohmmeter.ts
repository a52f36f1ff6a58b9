import { CONTACT_OHMS, THERMAL_VOLTS } from "./constants.ts";
import { directPaths, isPresent } from "./element-points.ts";
import type { Diode, Element, GasDiode, Network, Pair, Selenium, Zener } from "./network.ts";
import { CircuitError } from "./solution.ts";
import { operatingPoint } from "./steady.ts";
import { validateNetwork } from "./validate-network.ts";

/** Open-circuit volts of the meter unless it is said: too few to turn silicon on (common-practice). */
export const DEFAULT_TEST_VOLTS = 0.3;

/** How the meter tests. */
export interface OhmmeterOptions {
  /** Open-circuit voltage of the meter in volts. 0.3 V turns no silicon on, 2 V does. */
  testVolts?: number;
  /** Short-circuit current of the meter in amperes. */
  maxAmps?: number;
  /** 1: the positive lead lies on the first point; -1: the leads are exchanged. */
  polarity?: 1 | -1;
}

export interface OhmmeterReading {
  /** What the meter shows, in ohms; Infinity for no path. */
  ohms: number;
  /** Rectifiers and other junctions that the test voltage turns on, by element. */
  junctionsOn: string[];
}

/** A reading with how it hangs on the resistances that make it. */
export interface OhmmeterSlopes extends OhmmeterReading {
  /**
   * Change of the reading in ohms per relative change of each resistance that the current passes: an element's, or a
   * winding's (`T1.primary`). It is the resistance times the square of its share of the current (Cohn, Proc. IRE 38, 1950),
   * exact while no junction conducts.
   */
  slopes: () => ReadonlyMap<string, number>;
}

const NO_SLOPES = (): ReadonlyMap<string, number> => new Map();

type Junction = Diode | Selenium | GasDiode | Zener;

/** Resistance in ohms by which blocked junctions share a voltage; it is not part of the reading. */
const BLOCKED_OHMS = 1e10;
/** Current in amperes above which a junction counts as turned on. */
const ON_AMPS = 1e-5;

/** The voltage in volts at which a cold element begins to conduct forwards and backwards; undefined for what has no junction. */
export function thresholds(element: Element): { forward: number; backward: number } | undefined {
  switch (element.kind) {
    case "diode":
      return {
        forward: element.emission * THERMAL_VOLTS * Math.log1p(ON_AMPS / element.saturationAmps),
        backward: Number.POSITIVE_INFINITY,
      };
    case "selenium":
      return { forward: element.plates * element.kneeVoltsPerPlate, backward: Number.POSITIVE_INFINITY };
    case "gas-diode":
      return { forward: element.dropVolts, backward: Number.POSITIVE_INFINITY };
    case "zener":
      return { forward: 0.45, backward: element.zenerVolts };
    default:
      return undefined;
  }
}

/** Wire of less than this many ohms is taken as this: less than any meter shows. */
const LEAST_OHMS = 1e-4;

/**
 * What is left of an element with the power off and the tubes cold: resistances between pairs of points, in ohms. A winding has the
 * id `T1.primary`, the reverse leakage of a diode `D1 reverse`. What junctions conduct forwards is not among it.
 */
export function resting(element: Element): { id: string; nodes: Pair; ohms: number }[] {
  switch (element.kind) {
    case "resistor":
    case "voltmeter":
      return [{ id: element.id, nodes: element.nodes, ohms: Math.max(element.ohms, LEAST_OHMS) }];
    case "inductor":
      return [{ id: element.id, nodes: element.nodes, ohms: Math.max(element.dcrOhms ?? 0, LEAST_OHMS) }];
    case "switch":
      return element.closed
        ? [{ id: element.id, nodes: element.nodes, ohms: Math.max(element.contactOhms ?? CONTACT_OHMS, LEAST_OHMS) }]
        : [];
    case "filament":
      return [{ id: element.id, nodes: element.nodes, ohms: element.coldOhms }];
    case "thermistor": {
      const kelvin = element.ambientKelvin ?? 298.15;
      return [{ id: element.id, nodes: element.nodes, ohms: element.r25Ohms * Math.exp(element.betaKelvin * (1 / kelvin - 1 / 298.15)) }];
    }
    case "transformer":
      return element.windings.map((winding) => ({
        id: `${element.id}.${winding.id}`,
        nodes: winding.nodes,
        ohms: Math.max(winding.ohms, LEAST_OHMS),
      }));
    case "capacitor":
      return element.leakOhms === undefined
        ? []
        : [{ id: element.id, nodes: element.nodes, ohms: element.leakOhms + (element.esrOhms ?? 0) }];
    case "diode":
    case "selenium":
      return element.reverseOhms === undefined ? [] : [{ id: `${element.id} reverse`, nodes: element.nodes, ohms: element.reverseOhms }];
    default:
      return [];
  }
}

/** The elements that steady current can reach from a point. */
function reachable(elements: readonly Element[], from: string): { elements: Element[]; points: Set<string> } {
  const points = new Set([from]);
  const taken = new Set<Element>();
  for (let grew = true; grew; ) {
    grew = false;
    for (const element of elements) {
      if (taken.has(element)) continue;
      const [a, b] = directPaths(element)[0]!;
      if (!points.has(a) && !points.has(b)) continue;
      taken.add(element);
      points.add(a);
      points.add(b);
      grew = true;
    }
  }
  return { elements: [...taken], points };
}

/**
 * What an ohmmeter shows between two points with the equipment unplugged: sources and batteries are out of the circuit,
 * capacitors are open but for their leakage, coils and windings are their wire, tubes are cold. A rectifier counts only
 * when the meter's voltage reaches its knee; then it conducts along its own curve, as it does in a real meter.
 *
 * @returns ohms, `Infinity` where there is no path
 * @throws CircuitError `unknown-point`, `bad-value`
 */
export function ohmmeter(network: Network, from: string, to: string, options: OhmmeterOptions = {}): OhmmeterReading {
  const { ohms, junctionsOn } = ohmmeterSlopes(network, from, to, options);
  return { ohms, junctionsOn };
}

/**
 * The same with the slopes of the reading over every resistance, which cost hardly more than the reading.
 *
 * @throws CircuitError as `ohmmeter`
 */
export function ohmmeterSlopes(network: Network, from: string, to: string, options: OhmmeterOptions = {}): OhmmeterSlopes {
  validateNetwork(network);
  const { testVolts = DEFAULT_TEST_VOLTS, maxAmps = 1e-3, polarity = 1 } = options;
  if (!(testVolts > 0) || !(maxAmps > 0)) throw new CircuitError("bad-value", "the meter needs a test voltage and a current above zero");
  const known = new Set(
    network.elements.flatMap((element) => ("nodes" in element ? Object.values(element.nodes) : element.windings.flatMap((w) => w.nodes))),
  );
  for (const point of [from, to]) {
    if (!known.has(point) && point !== network.reference)
      throw new CircuitError("unknown-point", `no element touches the point ${point}`, [point]);
  }
  if (from === to) return { ohms: 0, junctionsOn: [], slopes: NO_SLOPES };
  const wires = network.elements
    .filter(isPresent)
    .flatMap((element) => resting(element).map((part): Element => ({ kind: "resistor", ...part })));
  const junctions = network.elements.filter((element): element is Junction => thresholds(element) !== undefined);
  const [high, low] = polarity === 1 ? [from, to] : [to, from];
  const meter: Element[] = [
    { kind: "voltage-source", id: METER, nodes: [PROBE, low], dcVolts: testVolts },
    { kind: "resistor", id: `${METER} resistance`, nodes: [PROBE, high], ohms: testVolts / maxAmps },
  ];
  const { on, volts } = junctionsTurnedOn(wires, junctions, meter, low);
  const conducting: Element[] = [
    ...wires,
    ...junctions.filter((junction) => on.has(junction.id) || leaks(junction, volts.get(junction.id) ?? 0)).map(bare),
  ];
  if (!reachable(conducting, low).points.has(high)) return { ohms: Number.POSITIVE_INFINITY, junctionsOn: [], slopes: NO_SLOPES };
  const state = operatingPoint({ reference: low, elements: reachable([...conducting, ...meter], low).elements });
  const amps = -state.read({ quantity: "dc-amps", element: METER });
  const carries = (id: string): boolean =>
    state.elements.has(id) && Math.abs(state.read({ quantity: "dc-amps", element: id })) > ON_AMPS / 10;
  return {
    ohms: amps > 0 ? Math.max(0, state.read({ quantity: "dc-volts", from: high, to: low }) / amps) : Number.POSITIVE_INFINITY,
    junctionsOn: [...on].filter(carries),
    slopes: () => {
      const slopes = new Map<string, number>();
      for (const wire of wires) {
        if (wire.kind !== "resistor" || !state.elements.has(wire.id)) continue;
        const share = state.read({ quantity: "dc-amps", element: wire.id }) / amps;
        slopes.set(wire.id, wire.ohms * share * share);
      }
      return slopes;
    },
  };
}

/** A junction whose reverse leakage is part of the network also shows its reverse current. */
function leaks(junction: Junction, volts: number): boolean {
  return volts < 0 && (junction.kind === "diode" || junction.kind === "selenium") && junction.reverseOhms !== undefined;
}

/** The junction without its reverse leakage, which stands among the wires whether it conducts or not. */
function bare(junction: Junction): Element {
  if (junction.kind !== "diode" && junction.kind !== "selenium") return junction;
  const { reverseOhms: _, ...rest } = junction;
  return rest;
}

const METER = "(ohmmeter)";
const PROBE = "(ohmmeter probe)";

/**
 * Which junctions the meter turns on: from all blocked, every one whose voltage reaches its knee is let conduct, until
 * none is left. Blocked ones share the voltage through a very high resistance.
 */
function junctionsTurnedOn(
  wires: readonly Element[],
  junctions: readonly Junction[],
  meter: readonly Element[],
  low: string,
): { on: Set<string>; volts: Map<string, number> } {
  const on = new Set<string>();
  const across = new Map<string, number>();
  for (;;) {
    const present = junctions.map(
      (junction): Element =>
        on.has(junction.id)
          ? bare(junction)
          : { kind: "resistor", id: `blocked ${junction.id}`, nodes: junction.nodes, ohms: BLOCKED_OHMS },
    );
    const { elements, points } = reachable([...wires, ...present, ...meter], low);
    const state = operatingPoint({ reference: low, elements });
    let added = false;
    for (const junction of junctions) {
      if (on.has(junction.id) || !points.has(junction.nodes[0])) continue;
      const volts = state.read({ quantity: "dc-volts", from: junction.nodes[0], to: junction.nodes[1] });
      across.set(junction.id, volts);
      const { forward, backward } = thresholds(junction)!;
      if (volts < forward && volts > -backward) continue;
      on.add(junction.id);
      added = true;
    }
    if (!added) return { on, volts: across };
  }
}

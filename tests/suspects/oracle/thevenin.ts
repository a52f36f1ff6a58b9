/**
 * The resistance that a meter sees at each point of a network at work: every element straightened at its mean voltage. A rectifier that conducts
 * counts as RECTIFIER_OHMS, sources as shorts. It serves to correct a reading for the meter's input resistance, which is a few per cent where it
 * counts at all, so a tenth is close enough.
 */
import type { Element, Network, Pentode, Triode } from "@underchassis/calc";
import { solveDense } from "./matrix.ts";

/** Mean slope of a rectifier supply: source resistance times the ratio of pulse to mean current. common-practice. */
const RECTIFIER_OHMS = 1000;
const SHORT = 1e-3;
const INSULATION = 1e12;

type Means = ReadonlyMap<string, number>;

const softplus = (x: number): number => Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)));

/** Plate and screen current (Koren, Glass Audio 8(5), 1996). */
function tubeAmps(element: Triode | Pentode, vp: number, vg: number, vs: number): [number, number] {
  const { mu, ex, kg1, kp, kvb, vct = 0 } = element.parameters;
  const emission = element.emission ?? 1;
  const plate = Math.max(vp, 0);
  if (element.kind === "triode") {
    const e1 = (plate / kp) * softplus(kp * (1 / mu + (vg + vct) / Math.sqrt(kvb + plate * plate)));
    return [((2 * emission) / kg1) * e1 ** ex, 0];
  }
  const screen = Math.max(vs, 1e-6);
  const e1 = (screen / kp) * softplus(kp * (1 / mu + (vg + vct) / screen));
  const screenAmps = (emission / element.parameters.kg2) * Math.max(vg + vct + screen / mu, 0) ** 1.5;
  return [((2 * emission) / kg1) * e1 ** ex * Math.atan(plate / kvb), screenAmps];
}

export function theveninOhms(
  network: Network,
  means: Means,
  carries: (id: string) => boolean,
  lit: Readonly<Record<string, boolean>>,
): Map<string, number> {
  const points = [...means.keys()].filter((point) => point !== network.reference);
  const index = new Map(points.map((point, i) => [point, i]));
  const n = points.length;
  const matrix = points.map(() => new Float64Array(n));
  const add = (row: string, column: string, siemens: number): void => {
    const [i, j] = [index.get(row), index.get(column)];
    const target = i === undefined ? undefined : matrix[i];
    if (target !== undefined && j !== undefined) target[j] = (target[j] ?? 0) + siemens;
  };
  const conduct = (a: string, b: string, ohms: number): void => {
    add(a, a, 1 / ohms);
    add(b, b, 1 / ohms);
    add(a, b, -1 / ohms);
    add(b, a, -1 / ohms);
  };
  const at = (point: string): number => means.get(point) ?? 0;
  for (const point of points) add(point, point, 1 / INSULATION);
  for (const element of network.elements) straighten(element, { add, conduct, at, carries, lit });
  const unit = points.map((_, i) => {
    const row = new Float64Array(n);
    row[i] = 1;
    return row;
  });
  const inverse = solveDense(matrix, unit);
  return new Map(points.map((point, i) => [point, Math.max(0, inverse[i]?.[i] ?? 0)]));
}

interface Stamp {
  add(row: string, column: string, siemens: number): void;
  conduct(a: string, b: string, ohms: number): void;
  at(point: string): number;
  carries(id: string): boolean;
  lit: Readonly<Record<string, boolean>>;
}

function straighten(element: Element, { add, conduct, at, carries, lit }: Stamp): void {
  switch (element.kind) {
    case "resistor":
    case "voltmeter":
      conduct(...element.nodes, element.ohms);
      break;
    case "capacitor":
      if (element.leakOhms !== undefined) conduct(...element.nodes, element.leakOhms + (element.esrOhms ?? 0));
      break;
    case "inductor":
      conduct(...element.nodes, element.dcrOhms || SHORT);
      break;
    case "transformer":
      for (const { nodes, ohms } of element.windings) if (nodes[0] !== nodes[1]) conduct(...nodes, ohms || SHORT);
      break;
    case "voltage-source":
      conduct(...element.nodes, SHORT);
      break;
    case "filament":
      conduct(...element.nodes, element.ratedOhms);
      break;
    case "diode":
    case "selenium":
    case "vacuum-diode":
    case "gas-diode":
      if (carries(element.id)) conduct(...element.nodes, element.id.endsWith(" grid current") ? 2000 : RECTIFIER_OHMS);
      break;
    case "gas-regulator":
      if (lit[element.id]) conduct(...element.nodes, element.slopeOhms);
      break;
    case "triode":
    case "pentode": {
      const { plate, grid, cathode } = element.nodes;
      const screen = element.kind === "pentode" ? element.nodes.screen : plate;
      const volts = [at(plate), at(grid), at(screen)].map((value) => value - at(cathode));
      const current = ([vp = 0, vg = 0, vs = 0]: number[]): [number, number] => tubeAmps(element, vp, vg, vs);
      const here = current(volts);
      for (const [k, electrode] of [plate, grid, screen].entries()) {
        if (element.kind === "triode" && k === 2) continue;
        const moved = current(volts.map((value, i) => (i === k ? value + 1e-3 : value)));
        for (const [m, out] of [plate, screen].entries()) {
          const slope = ((moved[m] ?? 0) - (here[m] ?? 0)) / 1e-3;
          add(out, electrode, slope);
          add(out, cathode, -slope);
          add(cathode, electrode, -slope);
          add(cathode, cathode, slope);
        }
      }
      break;
    }
    default:
      break;
  }
}

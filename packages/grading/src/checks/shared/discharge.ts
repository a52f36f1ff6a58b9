import type { ChassisModel, CompiledNetwork, Life } from "../../model/index.ts";
import { coldCondition, ohmsWithout } from "./coldOhms.ts";
import { endsOf } from "./layout.ts";
import { stresses, worst } from "./stress.ts";

/** IEC 60950-1: direct voltage up to which a circuit is extra-low voltage. */
export const LOW_VOLTS = 60;

/** A capacitor that keeps a charge when the power goes off, and how it loses it. SI. */
export interface Stored {
  part: string;
  /** Condition in which it is charged highest, at the highest line. */
  condition: string;
  volts: number;
  farads: number;
  joules: number;
  /** Resistance that the capacitor discharges through; Infinity when nothing lies across it. */
  ohms: number;
  /** Time constant with what else discharges through the same path. */
  tau: number;
  /** Time to fall to LOW_VOLTS; Infinity when nothing discharges it. */
  seconds: number;
  /** Parts that the discharge hangs on: without any one of them it takes at least twice as long. Worked out when asked. */
  through(): readonly string[];
}

/** A capacitor of less than this is not leaky but shorted. */
const SHORTED_OHMS = 1;

interface Port {
  part: string;
  a: string;
  b: string;
  volts: number;
  farads: number;
  condition: string;
}

/**
 * What every capacitor above LOW_VOLTS holds when the plug is pulled, tubes cold: the resistive rest of the chassis is all that
 * discharges it (its own leakage does not count). The time constant of capacitor k is sum(R_kj C_j V_j) / V_k over all capacitors j
 * with the transfer resistances R_kj: exact for the integral of its voltage, and for the time where one time constant rules,
 * as when filters hang together through a choke.
 *
 * @param leastJoules charges below this are left out
 */
export function storedCharges(model: ChassisModel, life: Life, leastJoules = 0): Stored[] {
  const condition = coldCondition(model);
  if (condition === undefined) return [];
  const compiled = atRest(model.compile({ life, condition, line: "actual" }));
  const ports = charged(model, life, compiled).filter(({ farads, volts }) => 0.5 * farads * volts ** 2 >= leastJoules);
  const between = resistances(compiled);
  return ports.map((port) => {
    const own = between(port.a, port.b);
    const tau = Number.isFinite(own)
      ? ports.reduce(
          (sum, other) => sum + (other === port ? own : transfer(between, port, other)) * other.farads * (other.volts / port.volts),
          0,
        )
      : own;
    const stored = {
      part: port.part,
      condition: port.condition,
      volts: port.volts,
      farads: port.farads,
      joules: 0.5 * port.farads * port.volts ** 2,
    };
    return {
      ...stored,
      ohms: own,
      tau,
      seconds: Number.isFinite(tau) ? tau * Math.log(port.volts / LOW_VOLTS) : tau,
      through: () => pathOf(compiled, port, own),
    };
  });
}

const RESISTIVE: ReadonlySet<string> = new Set([
  "resistor",
  "inductor",
  "transformer",
  "switch",
  "filament",
  "thermistor",
  "zener",
  "diode",
  "selenium",
]);

/** What of a network still carries current at rest. The leakage of capacitors is left out: no one relies on that. */
function atRest(compiled: CompiledNetwork): CompiledNetwork {
  const elements = compiled.network.elements.filter(
    (element) =>
      RESISTIVE.has(element.kind) || (element.kind === "capacitor" && element.leakOhms !== undefined && element.leakOhms < SHORTED_OHMS),
  );
  return { ...compiled, network: { ...compiled.network, elements } };
}

function charged(model: ChassisModel, life: Life, compiled: CompiledNetwork): Port[] {
  const loads = stresses(model, life);
  return [...model.parts.values()].flatMap((part): Port[] => {
    const state = part.lives[life];
    const ends = endsOf(state);
    // What a capacitor holds on direct current; on alternating current it may be left at any point of the wave.
    const direct = (loads.get(part.id) ?? []).filter(({ meanVolts, acVolts }) => Math.abs(meanVolts) > acVolts);
    const load = part.kind === "capacitor" && state.present ? worst(direct, "maxVolts") : undefined;
    if (load === undefined || ends === undefined || state.main === undefined) return [];
    const [a, b] = ends.map((point) => compiled.pointOf(point));
    const volts = load.maxVolts;
    return volts > LOW_VOLTS && a !== undefined && b !== undefined && a !== b
      ? [{ part: part.id, a, b, volts, farads: state.main.value, condition: load.condition }]
      : [];
  });
}

const NOTHING: ReadonlySet<string> = new Set();

type Between = (a: string, b: string) => number;

/** Resistance between any two points, each worked out once. */
function resistances(compiled: CompiledNetwork): Between {
  const known = new Map<string, number>();
  return (a, b) => {
    if (a === b) return 0;
    const key = a < b ? `${a}\u0000${b}` : `${b}\u0000${a}`;
    const value = known.get(key) ?? ohmsWithout(compiled, a, b, NOTHING);
    known.set(key, value);
    return value;
  };
}

/** Transfer resistance between two ports of a resistive network, from the four resistances between their ends; 0 when they are apart. */
function transfer(between: Between, one: Port, other: Port): number {
  const [ab, ba, aa, bb] = [between(one.a, other.b), between(one.b, other.a), between(one.a, other.a), between(one.b, other.b)];
  if (![ab, ba, aa, bb].every(Number.isFinite)) return 0;
  return Math.max(0, (ab + ba - aa - bb) / 2);
}

function pathOf(compiled: CompiledNetwork, port: Port, own: number): string[] {
  if (!Number.isFinite(own)) return [];
  const parts = new Map<string, Set<string>>();
  for (const { id, kind } of compiled.network.elements) {
    const origin = compiled.origins.get(id);
    if (origin === undefined || (kind !== "resistor" && kind !== "inductor")) continue;
    parts.set(origin.part, (parts.get(origin.part) ?? new Set()).add(id));
  }
  return [...parts].filter(([, ids]) => ohmsWithout(compiled, port.a, port.b, ids) >= 2 * own).map(([part]) => part);
}

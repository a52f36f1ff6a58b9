import { CircuitError, type Element, solveSteady } from "@underchassis/calc";
import type { ChassisModel, Check, Figure, Finding, Reading } from "../../model/index.ts";
import { coldOhms } from "../shared/coldOhms.ts";
import { atMost, figure } from "../shared/figure.ts";
import { type GridPath, gridPaths } from "../shared/gridPaths.ts";
import { inPlace } from "../shared/inPlace.ts";
import { latestReading, standingReadings } from "../shared/readings.ts";
import { good, report } from "../shared/report.ts";
import { isPowerTube, workOf } from "../shared/tubes.ts";
import { amps, ohms, percent, volts, watts } from "../shared/words.ts";

/** common-practice: what a leaky coupling capacitor may lift a grid by: a tenth of a volt, or 2 % of a power tube's bias. */
const SMALL_SIGNAL_VOLTS = 0.1;
const BIAS_SHARE = 0.02;
/** A grid that stands at less than this without any leak counts as one at zero. */
const OWN_VOLTS = 0.05;
/** Below this the far side has nothing to leak. */
const LEAST_SOURCE_VOLTS = 20;

/** Direct current through coupling capacitors: from a positive voltage read at a grid, or from a measured leakage. */
export const couplingCapacitorLeakage: Check = {
  id: "coupling-capacitor-leakage",
  area: "audio",
  title: "Coupling capacitor leakage",
  question: "Does any coupling capacitor lift the grid behind it?",
  needs: "DC volts read at the grid, or the capacitor's leakage measured at its working voltage",
  sources: ["common-practice", "leakage-text"],
  cautions: ["high-voltage-stored-charge", "one-hand-rule"],
  run(model) {
    const tight: string[] = [];
    const findings = gridPaths(model, "restored").flatMap((path): Finding[] => {
      const leak = leakOf(model, path);
      if (leak === undefined) return [];
      if (leak.shift > leak.limit) return [leaky(this, model, path, leak)];
      tight.push(path.capacitor.name);
      return [];
    });
    if (tight.length === 0) return findings;
    const summary = good(this, "restored", undefined, {
      title: `${tight.join(", ")}: no leakage that moves a grid`,
      found: "grid within its limit",
      shouldBe: "grid lifted by less than 0.1 V, or 2 % of a power tube's bias",
      why: "Judged from readings at the grid or the measured leakage.",
    });
    return [...findings, summary];
  },
};

interface Leak {
  condition: string;
  /** Leakage resistance; Infinity when none shows. */
  leakOhms: number;
  gridOhms: number;
  sourceVolts: number;
  /** What it lifts the grid by without a meter. */
  shift: number;
  limit: number;
  bias: number;
  reading: Reading | undefined;
  how: string;
}

function leakOf(model: ChassisModel, path: GridPath): Leak | undefined {
  const condition = [...model.conditions.values()].find(({ powered, like }) => powered && like === "operating")?.id;
  const gridOhms = coldOhms(model, "restored", path.gridSide, model.reference);
  if (condition === undefined || !Number.isFinite(gridOhms) || gridOhms <= 0) return undefined;
  const sourceVolts =
    latestReading(model, path.source, model.reference, "dc-volts", condition)?.value ??
    model.predict({ life: "restored", condition, line: "actual" }, { quantity: "dc-volts", at: path.source, to: model.reference })?.nominal;
  if (sourceVolts === undefined || sourceVolts < LEAST_SOURCE_VOLTS) return undefined;
  const work =
    path.tube === undefined ? undefined : workOf(model, "restored", path.tube, "actual").find((entry) => entry.condition === condition);
  const power = path.tube !== undefined && isPowerTube(model, path.tube.state);
  const bias = Math.abs(work?.gridVolts ?? 0);
  const common = {
    condition,
    gridOhms,
    sourceVolts,
    bias,
    limit: power ? Math.max(SMALL_SIGNAL_VOLTS, BIAS_SHARE * bias) : SMALL_SIGNAL_VOLTS,
  };
  const reading = standingReadings(model)
    .map(({ reading: taken }) => taken)
    .find(
      ({ at, to, quantity, condition: own, life }) =>
        path.gridPoints.has(at) && to === model.reference && quantity === "dc-volts" && own === condition && stillThere(path, life),
    );
  if (reading !== undefined) {
    const loaded = 1 / (1 / gridOhms + 1 / reading.loadOhms);
    const { volts: own, spread } = withoutLeak(model, path, condition, reading);
    const lifted = reading.value - own;
    const leakOhms = lifted <= Math.max(spread, 0) ? Number.POSITIVE_INFINITY : (loaded * (sourceVolts - reading.value)) / lifted;
    const how = `${ohms(loaded)} (grid leak with the meter) * (${volts(sourceVolts)} - ${volts(reading.value)}) / ${volts(lifted)}${Math.abs(own) < OWN_VOLTS ? "" : `; ${volts(own)} is the grid's own`}`;
    return { ...common, leakOhms, shift: shiftOf(sourceVolts - own, gridOhms, leakOhms), reading, how };
  }
  const measured = path.capacitorState.leak?.value;
  if (measured === undefined) return undefined;
  return {
    ...common,
    leakOhms: measured,
    shift: shiftOf(sourceVolts, gridOhms, measured),
    reading: undefined,
    how: "measured on the capacitor",
  };
}

/**
 * What the grid stands at on this meter without any leak, and how far tolerances may put it above: zero for most, but tens of volts where
 * the grid leak ends at a divider or at a high cathode.
 */
function withoutLeak(model: ChassisModel, path: GridPath, condition: string, reading: Reading): { volts: number; spread: number } {
  const situation = { life: "restored", condition, line: "actual" } as const;
  const { network, pointOf } = model.compile(situation);
  const grid = pointOf(path.gridSide);
  const none = { volts: 0, spread: 0 };
  if (grid === undefined) return none;
  const elements = network.elements.map((element) => (element.id === path.capacitor.id ? tight(element) : element));
  const meter: Element = { kind: "resistor", id: "meter", nodes: [grid, network.reference], ohms: reading.loadOhms };
  try {
    const own = solveSteady({ ...network, elements: [...elements, meter] }, { hertz: model.line.hertz }).points.get(grid)?.meanVolts ?? 0;
    if (Math.abs(own) < OWN_VOLTS) return none;
    const window = model.predict(situation, { quantity: "dc-volts", at: path.gridSide, to: model.reference });
    return { volts: own, spread: window === undefined ? 0 : window.high - window.nominal };
  } catch (error) {
    if (error instanceof CircuitError) return none;
    throw error;
  }
}

/** The same capacitor without leakage. */
function tight(element: Element): Element {
  if (element.kind !== "capacitor") return element;
  const { leakOhms: _leak, ...rest } = element;
  return rest;
}

/** A reading taken before the work says nothing of a capacitor fitted since. */
const stillThere = (path: GridPath, life: "found" | "restored"): boolean =>
  life === "restored" || inPlace(path.capacitor, "restored")?.fitted === false;

const shiftOf = (sourceVolts: number, gridOhms: number, leakOhms: number): number =>
  Number.isFinite(leakOhms) ? (sourceVolts * gridOhms) / (leakOhms + gridOhms) : 0;

function leaky(check: Check, model: ChassisModel, path: GridPath, leak: Leak): Finding {
  const { capacitor, capacitorState, tube } = path;
  const power = tube !== undefined && isPowerTube(model, tube.state);
  const name = tube?.part.name ?? `the tube behind ${path.gridSide}`;
  const effect = withLeak(model, path, leak);
  const limitWatts = tube?.state.limits?.plateWatts;
  const burns = effect !== undefined && limitWatts !== undefined && effect.plateWatts > limitWatts;
  const needed = leak.gridOhms * (leak.sourceVolts / leak.limit - 1);
  const farads = capacitorState.marking?.value ?? capacitorState.main?.value;
  const figures: Figure[] = [
    atMost(leak.shift, leak.limit, {
      label: `grid of ${name} lifted by`,
      unit: "V",
      how: `${volts(leak.sourceVolts)} * ${ohms(leak.gridOhms)} / (${ohms(leak.leakOhms)} + ${ohms(leak.gridOhms)}), no meter${power ? `; limit 2 % of the bias of ${volts(leak.bias)}, at least 0.1 V` : ""}`,
      source: "common-practice",
    }),
    {
      ...figure(`leakage resistance of ${capacitor.name}`, leak.leakOhms, "ohm", leak.how),
      limit: needed,
      limitKind: "minimum" as const,
      margin: leak.leakOhms / needed - 1,
    },
    ...(effect === undefined
      ? []
      : [
          figure(`plate current of ${name} without the leak`, effect.before, "A", "simulation"),
          figure(`plate current of ${name} with it`, effect.after, "A", "simulation with this leak in place"),
        ]),
    ...(effect === undefined || limitWatts === undefined
      ? []
      : [
          atMost(effect.plateWatts, limitWatts, {
            label: `plate dissipation of ${name} with it`,
            unit: "W",
            how: "simulation with this leak in place",
            source: tube?.state.limits?.source ?? "from-memory",
          }),
        ]),
  ];
  return report(check, "restored", capacitor, {
    severity: burns ? "danger" : "replace",
    condition: leak.condition,
    title: `${capacitor.name} leaks: it lifts the grid of ${name} by ${volts(leak.shift)}`,
    found:
      leak.reading === undefined
        ? `${ohms(leak.leakOhms)} measured`
        : `${volts(leak.reading.value)} read at ${leak.reading.at}: ${ohms(leak.leakOhms)} if it is the capacitor`,
    shouldBe: `at least ${ohms(needed)}, grid within ${volts(leak.limit)}`,
    figures,
    why:
      effect === undefined
        ? "Bias is lost and the tube draws more than it should."
        : `Plate current goes from ${amps(effect.before)} to ${amps(effect.after)}${limitWatts === undefined ? "" : ` and plate dissipation to ${watts(effect.plateWatts)} of ${watts(limitWatts)} (${percent(effect.plateWatts / limitWatts)})`}.`,
    action: `${leak.reading === undefined ? "" : `Pull ${name} (or lift the grid end of ${capacitor.name}) and read again: if the voltage stays with the tube out it is the capacitor; if it goes, it is gas or grid emission in the tube. `}Replace ${capacitor.name} with film${capacitorState.ratedVolts === undefined ? "" : ` of at least ${volts(Math.max(400, capacitorState.ratedVolts))}`}.`,
    holds: power ? "full-line" : "service",
    ...(farads === undefined
      ? {}
      : {
          order: [
            {
              what: `film capacitor ${Number((farads * 1e6).toPrecision(3))} uF ${Math.max(400, capacitorState.ratedVolts ?? 0)} V`,
              quantity: 1,
              for: capacitor.name,
              why: "leaks",
            },
          ],
        }),
  });
}

/** Plate current without any leak and with this one, and the plate's heat with it. */
function withLeak(
  model: ChassisModel,
  { capacitor, tube }: GridPath,
  { condition, leakOhms }: Leak,
): { before: number; after: number; plateWatts: number } | undefined {
  if (tube === undefined) return undefined;
  const standing = model.solve({ life: "restored", condition, line: "actual" });
  const { network } = model.compile({ life: "restored", condition, line: "actual" });
  const options = { hertz: model.line.hertz, ...(standing.ok ? { warmStart: standing.steady } : {}) };
  const solve = (leak: number | undefined) => {
    const elements = network.elements.map((element) => {
      if (element.kind !== "capacitor" || element.id !== capacitor.id) return element;
      const { leakOhms: _old, ...rest } = element;
      return leak === undefined ? rest : { ...rest, leakOhms: leak };
    });
    return solveSteady({ ...network, elements }, options).elements.get(tube.part.id);
  };
  try {
    const [before, after] = [solve(undefined), solve(leakOhms)];
    if (before === undefined || after === undefined) return undefined;
    const others = Object.values(after.electrodes ?? {}).reduce((sum, { watts: heat }) => sum + heat, 0);
    return { before: before.meanAmps, after: after.meanAmps, plateWatts: after.watts - others };
  } catch (error) {
    if (error instanceof CircuitError) return undefined;
    throw error;
  }
}

import type { Element, Pair } from "@underchassis/calc";
import type { Solved, WindingSpec } from "../../model/index.ts";

/** Windings up to this feed heaters and dial lamps, whatever hangs on them. common-practice. */
const HEATER_VOLTS = 30;
/** A reservoir or a coupling capacitor from here on, a surge resistor up to there: a rectifier behind them still belongs to the winding. */
const LEAST_FARADS = 0.5e-6;
const SURGE_OHMS = 150;
/** Below this share of the other direction's current a rectifier is a bias tap, not the other half of a bridge. */
const BRIDGE_SHARE = 0.2;
/** RMS over rectified mean: 1 to 1.11 behind a choke, 1.4 and more into a capacitor. circuit-theory. */
const CAPACITOR_FORM = 1.25;
/**
 * RMS over direct current of a bridge with capacitor input: its winding is rated in RMS and gives the less direct current.
 * from-memory: 1.6 to 1.8.
 */
export const BRIDGE_FORM = 1.6;

/** What a winding carries and how that is held against its rating. SI. */
export interface WindingCurrent {
  /** `direct`: the direct current that its rectifiers deliver; `rms`: its own RMS current; `past-rectifiers`: RMS beyond what rectifiers explain. */
  kind: "direct" | "rms" | "past-rectifiers";
  amps: number;
  /** RMS current of the whole winding, of the fuller half when it is tapped. */
  rmsAmps: number;
  /** What the rating is divided by before it is compared. */
  derating: number;
  /** Heat in the wire, I^2 R. */
  watts: number;
  /** Voltage at its ends over what its turns give at the primary's voltage; undefined without either. Loads pull it down a little, a short to nothing. */
  held?: number;
}

type Ok = Extract<Solved, { ok: true }>;

/**
 * Current of one winding in a solved chassis. A high-voltage winding that feeds rectifiers is taken by direct current, since that
 * is what its marking means: the sum over both sides of a tapped winding; for a bridge or a doubler the mean of the current's
 * magnitude, the direct current and twice that. Others, and one that feeds no rectifier, go by RMS.
 *
 * @returns undefined when the winding carries nothing in this condition
 */
export function windingCurrent(solved: Ok, transformer: string, spec: WindingSpec): WindingCurrent | undefined {
  const { steady } = solved;
  const ids = spec.points.length > 2 ? [`${spec.id}-1`, `${spec.id}-2`] : [spec.id];
  const halves = ids.flatMap((id) => steady.elements.get(`${transformer}.${id}`) ?? []);
  const rmsAmps = Math.max(0, ...halves.map((half) => half.rmsAmps));
  if (rmsAmps === 0) return undefined;
  const watts = halves.reduce((sum, half) => sum + half.watts, 0);
  const held = heldShare(solved, transformer, ids);
  const common = { rmsAmps, watts, ...(held === undefined ? {} : { held }) };
  const heats = /primary|heat|fil/i.test(spec.id) || spec.ratedVolts <= HEATER_VOLTS;
  const fed = heats ? undefined : rectified(solved, spec, rmsAmps);
  return fed === undefined ? { kind: "rms", amps: rmsAmps, derating: 1, ...common } : { kind: "direct", ...fed, ...common };
}

function rectified(solved: Ok, spec: WindingSpec, rmsAmps: number): { amps: number; derating: number } | undefined {
  const { compiled } = solved;
  const tapped = spec.points.length > 2;
  const points = spec.points.map((point) => compiled.pointOf(point));
  const ends = [points[0], points.at(-1)];
  const sides = ends.flatMap((end) =>
    end === undefined || end === compiled.network.reference
      ? []
      : [throughRectifiers(solved, end, new Set(points.filter((point) => point !== end)))],
  );
  const outs = sides.reduce((sum, side) => sum + side.out, 0);
  const ins = sides.reduce((sum, side) => sum + side.in, 0);
  if (outs + ins <= 0) return undefined;
  const bridge = sides.some((side) => Math.min(side.out, side.in) > BRIDGE_SHARE * Math.max(side.out, side.in));
  if (!bridge) return { amps: tapped ? outs + ins : Math.max(...sides.map((side) => side.out + side.in)), derating: 1 };
  const amps = tapped ? (outs + ins) / 2 : Math.max(...sides.map((side) => side.out + side.in));
  return { amps, derating: rmsAmps > CAPACITOR_FORM * amps ? BRIDGE_FORM : 1 };
}

const RECTIFIERS: ReadonlySet<string> = new Set(["diode", "vacuum-diode", "gas-diode", "selenium"]);
const LINKS: ReadonlySet<string> = new Set(["switch", "thermistor", "filament"]);

/** True for what may lie between a winding and its rectifiers. */
function passes(element: Element): boolean {
  if (element.kind === "resistor") return element.ohms <= SURGE_OHMS;
  if (element.kind === "capacitor") return element.farads >= LEAST_FARADS;
  return LINKS.has(element.kind);
}

/** Mean currents that leave and enter an end of a winding through rectifiers. */
function throughRectifiers({ compiled, steady }: Ok, end: string, others: ReadonlySet<string | undefined>): { out: number; in: number } {
  const { reference } = compiled.network;
  const pairs = compiled.network.elements.flatMap((element) =>
    "nodes" in element && Array.isArray(element.nodes) && compiled.origins.get(element.id)?.aspect !== "heater"
      ? [{ element, nodes: element.nodes as Pair }]
      : [],
  );
  const seen = new Set([end]);
  const queue = [end];
  for (let point = queue.shift(); point !== undefined; point = queue.shift()) {
    for (const { element, nodes } of pairs) {
      const next = nodes[0] === point ? nodes[1] : nodes[1] === point ? nodes[0] : undefined;
      if (next === undefined || !passes(element) || next === reference || others.has(next) || seen.has(next)) continue;
      seen.add(next);
      queue.push(next);
    }
  }
  const sums = { out: 0, in: 0 };
  for (const { element, nodes } of pairs) {
    if (!RECTIFIERS.has(element.kind)) continue;
    const [plate, cathode] = nodes.map((point) => seen.has(point));
    const mean = Math.max(0, steady.elements.get(element.id)?.meanAmps ?? 0);
    if (plate && !cathode) sums.out += mean;
    if (cathode && !plate) sums.in += mean;
  }
  return sums;
}

/** Voltage at a winding's ends over turns ratio times primary voltage; the worse half of a tapped one. */
function heldShare({ compiled, steady }: Ok, transformer: string, ids: readonly string[]): number | undefined {
  const element = compiled.network.elements.find(({ id }) => id === transformer);
  const primary = element?.kind === "transformer" ? element.windings[0] : undefined;
  const across = primary === undefined ? undefined : steady.elements.get(`${transformer}.${primary.id}`)?.rmsVolts;
  if (element?.kind !== "transformer" || primary === undefined || across === undefined || across === 0) return undefined;
  const shares = element.windings.flatMap(({ id, turns }) => {
    const own = ids.includes(id) ? steady.elements.get(`${transformer}.${id}`)?.rmsVolts : undefined;
    return own === undefined ? [] : [own / Math.abs((turns / primary.turns) * across)];
  });
  return shares.length === 0 ? undefined : Math.min(...shares);
}

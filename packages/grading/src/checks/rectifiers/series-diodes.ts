import { CircuitError, nearestPreferred, solveSteady } from "@underchassis/calc";
import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { endsOf, joinedIn, livesTouching, type Placed } from "../shared/layout.ts";
import { good, report } from "../shared/report.ts";
import { poweredConditions } from "../shared/stress.ts";
import { farads, ohms, volts } from "../shared/words.ts";

/** from-memory, old practice: 500 ohm per volt of inverse rating and 10 nF across each diode of a string. */
const OHMS_PER_VOLT = 500;
const SHARE_FARADS = 10e-9;
/** from-memory: without equalising, one diode of a string may bear most of the voltage; three quarters is taken. */
const UNEQUAL_SHARE = 0.75;
/** Reverse leakage of a silicon diode as a resistance: microamperes at hundreds of volts. silicon-diode-sheets. */
const LEAKAGE_OHMS = 1e8;

/** Silicon diodes in series: whether the inverse voltage is shared out. */
export const seriesDiodes: Check = {
  id: "series-diodes",
  area: "rectifiers",
  title: "Diodes in series",
  question: "Do diodes in series share the inverse voltage?",
  needs: "each diode as a part of its own, and the resistors and capacitors across them",
  sources: ["from-memory", "silicon-diode-sheets"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return livesTouching(model, "rectifier", "resistor", "capacitor").flatMap((life) =>
      strings(model, life).flatMap((string) => judge(model, life, string)),
    );
  },
};

/** Chains of silicon diodes, each one's cathode on the next one's anode and nothing else there but what equalises them. */
function strings(model: ChassisModel, life: Life): Placed[][] {
  const all = joinedIn(model, life);
  const diodes = all.filter(
    ({ part, state }) => part.kind === "rectifier" && state.device?.kind === "silicon" && endsOf(state) !== undefined,
  );
  const bare = (point: string, pair: readonly Placed[]) =>
    all.every(
      (placed) =>
        pair.includes(placed) || pair.some(({ part }) => part === placed.part) || !touches(placed, point) || isAcross(placed, pair),
    );
  const next = new Map<Placed, Placed>();
  for (const diode of diodes) {
    const end = endsOf(diode.state)?.[1] ?? "";
    const after = diodes.filter((other) => endsOf(other.state)?.[0] === end);
    const [only] = after;
    if (only !== undefined && after.length === 1 && bare(end, [diode, only])) next.set(diode, only);
  }
  const followers = new Set(next.values());
  return diodes
    .filter((diode) => next.has(diode) && !followers.has(diode))
    .map((first) => {
      const chain = [first];
      for (let one = next.get(first); one !== undefined && !chain.includes(one); one = next.get(one)) chain.push(one);
      return chain;
    });
}

const touches = ({ state }: Placed, point: string) =>
  Object.values(state.pins).includes(point) || (state.windings ?? []).some(({ points }) => points.includes(point));

const samePair = (a: readonly string[] | undefined, b: readonly string[] | undefined) =>
  a !== undefined && b !== undefined && a.every((point) => b.includes(point));

function isAcross(placed: Placed, diodes: readonly Placed[]): boolean {
  return (
    (placed.part.kind === "resistor" || placed.part.kind === "capacitor") &&
    diodes.some(({ state }) => samePair(endsOf(placed.state), endsOf(state)))
  );
}

function judge(model: ChassisModel, life: Life, string: readonly Placed[]): Finding[] {
  const [first, last] = [string[0], string.at(-1)];
  if (first === undefined || last === undefined) return [];
  const total = stringInverse(model, life, string);
  const rated = Math.min(...string.map(({ state }) => state.limits?.peakInverseVolts ?? Number.POSITIVE_INFINITY));
  const names = string.map(({ part }) => part.name).join(", ");
  const equalised =
    string.filter((diode) => joinedIn(model, life, "resistor").some((placed) => isAcross(placed, [diode]))).length === string.length;
  const buffered =
    string.filter((diode) => joinedIn(model, life, "capacitor").some((placed) => isAcross(placed, [diode]))).length === string.length;
  const share = equalised ? 1.1 / string.length : Math.max(UNEQUAL_SHARE, 1 / string.length);
  const figures =
    total === undefined || !Number.isFinite(rated)
      ? []
      : [
          atMost(share * total, rated, {
            label: "inverse voltage of the worst diode",
            unit: "V",
            how: `${share.toFixed(2)} of ${volts(total)} across the string at the highest line${equalised ? ", resistors equal within 10 %" : ", nothing that shares it out"}`,
            source: "from-memory",
          }),
        ];
  const resistor = Number.isFinite(rated) ? nearestPreferred(OHMS_PER_VOLT * rated, "E12", "down") : 470e3;
  const base = {
    found: `${names} in series, ${equalised ? "a resistor across each" : "no resistor across each"}, ${buffered ? "a capacitor across each" : "no capacitor across each"}`,
    shouldBe: `about ${ohms(resistor)} and ${farads(SHARE_FARADS)} across each, or avalanche types of one batch`,
    figures,
  };
  const over = (figures[0]?.margin ?? 0) < 0;
  if (!over && equalised)
    return [
      good(seriesDiodes, life, first.part, {
        ...base,
        title: `${names} share the inverse voltage`,
        why: "Resistors make the shares equal.",
      }),
    ];
  return [
    report(seriesDiodes, life, first.part, {
      ...base,
      severity: over ? "replace" : "watch",
      title: over ? `One of ${names} may bear more than its rating` : `${names} have nothing that shares the voltage out`,
      why: "The diode that leaks least bears most; when it shorts, the others follow.",
      action: `Fit ${ohms(resistor)} across each (rated for its voltage: two in series above 350 V) and ${farads(SHARE_FARADS)} of ${volts(Number.isFinite(rated) ? rated : 1000)}, or use avalanche-rated diodes.`,
      ...(over ? { holds: "full-line" as const } : {}),
      order: [
        { what: `resistor ${ohms(resistor)} 0.5 W, high-voltage type`, quantity: string.length, for: names, why: "equalising" },
        {
          what: `ceramic capacitor ${farads(SHARE_FARADS)} ${volts(Number.isFinite(rated) ? rated : 1000)}`,
          quantity: string.length,
          for: names,
          why: "equalising",
        },
      ],
    }),
  ];
}

/**
 * Largest reverse voltage over the whole string at the highest line, in any powered condition: it does not depend on how the
 * diodes divide it. A leakage across each diode gives the points between them a voltage at all.
 */
function stringInverse(model: ChassisModel, life: Life, string: readonly Placed[]): number | undefined {
  const [start, end] = [string[0]?.state.pins.a, string.at(-1)?.state.pins.b];
  if (start === undefined || end === undefined) return undefined;
  const readings = poweredConditions(model).flatMap((condition) => {
    const compiled = model.compile({ life, condition: condition.id, line: "high" });
    const [from, to] = [compiled.pointOf(end), compiled.pointOf(start)];
    if (from === undefined || to === undefined) return [];
    const elements = compiled.network.elements.map((element) =>
      element.kind === "diode" ? { ...element, reverseOhms: LEAKAGE_OHMS } : element,
    );
    try {
      return [solveSteady({ ...compiled.network, elements }, { hertz: model.line.hertz }).read({ quantity: "max-volts", from, to })];
    } catch (error) {
      if (error instanceof CircuitError) return [];
      throw error;
    }
  });
  return readings.length === 0 ? undefined : Math.max(...readings);
}

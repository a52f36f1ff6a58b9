import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { allIn, endsOf, livesTouching, type Placed } from "../shared/layout.ts";
import { outputPoints, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { allSolved } from "../shared/solved.ts";
import { solveAll, stresses, worst } from "../shared/stress.ts";
import { amps, ohms, volts, watts } from "../shared/words.ts";

/** Chokes below this are RF chokes. common-practice. */
const LEAST_HENRIES = 0.5;

/** Filter chokes: direct current, drop, and for choke input the least inductance at the lightest load. */
export const filterChoke: Check = {
  id: "filter-choke",
  area: "filters",
  title: "Filter choke",
  question: "Does the choke carry its current, and does a choke-input filter stay one at light load?",
  needs: "henries, milliamperes and resistance of the choke (10 H 100 mA 300 ohm)",
  sources: ["choke-input-text", "common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return livesTouching(model, "inductor", "capacitor", "resistor", "rectifier").flatMap((life) =>
      allIn(model, life, "inductor")
        .filter(
          ({ part, state }) =>
            (state.main?.value ?? 0) >= LEAST_HENRIES && (life !== "planned" || part.change === "planned" || isFirst(model, life, state)),
        )
        .flatMap((placed) => [...current(model, life, placed), ...critical(model, life, placed)]),
    );
  },
};

function current(model: ChassisModel, life: Life, { part, state }: Placed): Finding[] {
  const load = allSolved(model, life) ? worst(stresses(model, life).get(part.id), "meanAmps") : undefined;
  if (load === undefined || Math.abs(load.meanAmps) < 1e-6) return [];
  const flows = Math.abs(load.meanAmps);
  const resistance = state.dcr?.value ?? 0;
  const figures: Figure[] = [
    figure(
      `drop across ${part.name}`,
      flows * resistance,
      "V",
      `direct current times ${ohms(resistance)}${state.dcr?.from === "default" ? " (guessed from its henries)" : ""}`,
      state.dcr?.from === "default" ? "from-memory" : "computed",
    ),
    figure("heat in it", flows * flows * resistance, "W", "I^2 R"),
  ];
  const found = `${amps(flows)} DC, ${volts(flows * resistance)} drop, ${watts(flows * flows * resistance)}`;
  if (state.ratedAmps === undefined) {
    return [
      report(filterChoke, life, part, {
        severity: "unmeasured",
        condition: load.condition,
        title: `Current rating of ${part.name} not known`,
        found,
        shouldBe: "a rating above that",
        figures,
        why: "Beyond its rating the iron saturates and hum rises; the wire heats.",
        action: "Look up its milliamperes; feel it after an hour, switched off and discharged.",
        cautions: [],
      }),
    ];
  }
  figures.unshift(
    atMost(flows, state.ratedAmps, {
      label: `direct current of ${part.name}`,
      unit: "A",
      how: `mean, ${load.condition}, highest line`,
      source: "marking",
    }),
  );
  const base = { condition: load.condition, found, shouldBe: `at most ${amps(state.ratedAmps)}`, figures };
  if (flows <= state.ratedAmps)
    return [good(filterChoke, life, part, { ...base, title: `${part.name} carries its current`, why: "Within its rating." })];
  return [
    report(filterChoke, life, part, {
      ...base,
      severity: flows > 1.3 * state.ratedAmps ? "replace" : "watch",
      title: `${part.name} carries more than its rating`,
      why: "The iron saturates, hum rises, the wire heats.",
      action: `Find what draws too much; else fit a choke for ${amps(1.2 * flows)}.`,
      ...(flows > 1.3 * state.ratedAmps ? { holds: "full-line" as const } : {}),
    }),
  ];
}

/** True when the choke comes straight after a rectifier, with no capacitor before it. */
function isFirst(model: ChassisModel, life: Life, state: Placed["state"]): boolean {
  const ends = endsOf(state) ?? [];
  return allIn(model, life, "rectifier").some(({ state: rectifier }) => {
    const output = outputPoints(model, life, rectifier);
    return ends.some((point) => output.has(point)) && reservoirs(model, life, rectifier).length === 0;
  });
}

/** F13: L >= R / (6 pi f) keeps current flowing all through the cycle (full wave): R/1131 at 60 Hz, R/942 at 50 Hz. */
function critical(model: ChassisModel, life: Life, { part, state }: Placed): Finding[] {
  const henries = state.main?.value;
  if (henries === undefined || !isFirst(model, life, state)) return [];
  const ends = endsOf(state);
  let lightest: { condition: string; ohms: number; volts: number; amps: number } | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const { condition, solved } of solveAll(model, life, "high")) {
    const figures = solved.ok ? solved.steady.elements.get(part.id) : undefined;
    if (!solved.ok || figures === undefined || ends === undefined) continue;
    const level = Math.max(
      ...ends.map((point) => Math.abs(solved.steady.points.get(solved.compiled.pointOf(point) ?? "")?.meanVolts ?? 0)),
    );
    const flows = Math.abs(figures.meanAmps);
    least = Math.min(least, level);
    if (flows > 1e-9 && (lightest === undefined || level / flows > lightest.ohms))
      lightest = { condition: condition.id, ohms: level / flows, volts: level, amps: flows };
  }
  if (lightest === undefined) return [];
  const needed = lightest.ohms / (6 * Math.PI * model.line.hertz);
  const figures = [
    atLeast(henries, needed, {
      label: `inductance of ${part.name}`,
      unit: "H",
      how: `load resistance over 6 pi f: ${volts(lightest.volts)} / ${amps(lightest.amps)} in ${lightest.condition}, ${model.line.hertz} Hz full wave`,
      source: "choke-input-text",
    }),
    figure("voltage at the lightest load", lightest.volts, "V", `mean, ${lightest.condition}, highest line`),
    figure("voltage at the heaviest load", least, "V", "mean, the lowest of the powered conditions"),
  ];
  const base = {
    condition: lightest.condition,
    found: `${henries} H at ${amps(lightest.amps)}`,
    shouldBe: `at least ${needed.toPrecision(2)} H at that load`,
    figures,
  };
  if (henries >= needed)
    return [
      good(filterChoke, life, part, {
        ...base,
        title: `${part.name} is large enough for choke input`,
        why: "Current flows all through the cycle, so the voltage holds.",
      }),
    ];
  const bleed = lightest.volts / (henries * 6 * Math.PI * model.line.hertz);
  return [
    report(filterChoke, life, part, {
      ...base,
      severity: "adjust",
      title: `At light load ${volts(lightest.volts)} behind ${part.name}`,
      why: "Below the critical inductance the filter acts as capacitor input, and the voltage soars towards the crest of the winding.",
      action: `Draw at least ${amps(bleed)} in every condition: a bleeder of ${ohms(lightest.volts / bleed)}, ${watts(2 * lightest.volts * bleed)} or more. Check the capacitors behind it against ${volts(lightest.volts)}.`,
      holds: "service",
    }),
  ];
}

import { nearestPreferred } from "@underchassis/calc";
import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { allIn, livesTouching, type Placed } from "../shared/layout.ts";
import { lineDuty, lineSide } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { numberIn, rowsOf } from "../shared/tables.ts";
import { amps, farads } from "../shared/words.ts";

/** Current through a body from which muscles no longer let go lies near this; from-memory, IEC 62368-1 ES2 limit. */
const SINGLE_FAULT_AMPS = 5e-3;

interface Limit {
  amps: number;
  text: string;
  source: string;
}

/** Alternating current that flows from the line through capacitors and resistors into whoever touches the chassis. */
export const lineCapacitorLeakage: Check = {
  id: "line-capacitor-leakage",
  area: "line",
  title: "Touch current through line capacitors",
  question: "How much current can the parts between line and chassis drive through somebody who touches the metal?",
  needs: "the capacitors and resistors between the line and the chassis, and the cord",
  sources: ["ul-c101", "iec-60335-1", "common-practice"],
  cautions: ["hot-chassis-test", "line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "capacitor", "resistor", "cord").flatMap((life): Finding[] => {
      const side = lineSide(model, life);
      const bridges = allIn(model, life, "capacitor", "resistor").filter(
        (placed) => lineDuty(placed, side) === "line-to-chassis" && placed.state.main !== undefined,
      );
      if (bridges.length === 0) return [];
      const earthed = allIn(model, life, "cord").some(
        ({ state }) => state.earthed === true && side.frame.has(state.pins["earth-out"] ?? ""),
      );
      return [judge(model, life, bridges, earthed)];
    });
  },
};

function judge(model: ChassisModel, life: Life, bridges: readonly Placed[], earthed: boolean): Finding {
  const { highVolts, hertz } = model.line;
  const omega = 2 * Math.PI * hertz;
  let [susceptance, conductance] = [0, 0];
  for (const { part, state } of bridges) {
    const main = state.main;
    if (main === undefined) continue;
    if (part.kind === "capacitor") susceptance += omega * main.value * (1 + main.tolerance.plus);
    else conductance += 1 / (main.value * (1 - main.tolerance.minus));
    if (part.kind === "capacitor" && state.leak !== undefined) conductance += 1 / state.leak.value;
  }
  const current = highVolts * Math.hypot(susceptance, conductance);
  const limit = limitOf(model, earthed);
  const names = bridges.map(({ part }) => part.name).join(", ");
  const largest = limit.amps / (omega * highVolts);
  const figures = [
    atMost(current, limit.amps, {
      label: "touch current",
      unit: "A",
      how: `V sqrt((2 pi f C)^2 + (1/R)^2), ${names} together at the upper end of their tolerance, highest line, ${hertz} Hz; with the switch open and the plug the other way round all of them hang on the hot conductor`,
      source: limit.source,
    }),
  ];
  const only = bridges.length === 1 ? bridges[0]?.part : undefined;
  const base = { found: `${amps(current)} RMS through ${names}`, shouldBe: `at most ${amps(limit.amps)} (${limit.text})`, figures };
  if (current <= limit.amps) {
    const rule = ruleOf(model, "bench rule")?.amps;
    if (!earthed && rule !== undefined && current > rule) {
      return report(lineCapacitorLeakage, life, only, {
        ...base,
        severity: "watch",
        title: `A tingle from the chassis: ${amps(current)}`,
        why: "Within the limit for a two-wire set, above what benches aim for.",
        action: `Aim for ${amps(rule)}: ${farads((largest * rule) / limit.amps)} in all, or a three-wire cord.`,
      });
    }
    return good(lineCapacitorLeakage, life, only, {
      ...base,
      title: `Touch current ${amps(current)}`,
      why: "Below the limit at the highest line.",
    });
  }
  const grave = !earthed && current > SINGLE_FAULT_AMPS;
  const fit = nearestPreferred(largest / 1.2, "E6", "down");
  return report(lineCapacitorLeakage, life, only, {
    ...base,
    severity: grave ? "danger" : "replace",
    title: `${names}: touch current ${amps(current)}`,
    why: earthed
      ? "When the earth conductor breaks, whoever touches the chassis takes it all."
      : "Whoever touches the chassis and anything grounded takes it all.",
    action: `Keep the sum below ${farads(largest)}: one class Y capacitor of ${farads(fit)} from the neutral side, or none. Then measure: AC volts across 1.5 kohm in parallel with 0.15 uF from chassis to earth, both ways of the plug, at most 0.75 V.`,
    holds: grave ? "full-line" : "service",
    order: [{ what: `capacitor ${farads(fit)} class Y2 (or Y1) 250 V AC`, quantity: 1, for: names, why: "touch current above the limit" }],
  });
}

function limitOf(model: ChassisModel, earthed: boolean): Limit {
  const two = ruleOf(model, "ANSI C101", "two-wire") ?? { amps: 0.5e-3, text: "two-wire set", source: "ul-c101" };
  return earthed
    ? (ruleOf(model, "IEC 60335-1", "portable") ?? { ...two, amps: 0.75e-3, text: "three-wire set", source: "iec-60335-1" })
    : two;
}

function ruleOf(model: ChassisModel, standard: string, word = ""): Limit | undefined {
  const row = rowsOf(model, "touch-current-limits").find(
    (candidate) => candidate.standard === standard && (candidate.condition ?? "").includes(word),
  );
  const milliamps = row === undefined ? undefined : numberIn(row, "rmsMilliamps");
  return row === undefined || milliamps === undefined
    ? undefined
    : { amps: milliamps / 1000, text: `${standard}, ${row.condition ?? ""}`, source: row.source ?? "common-practice" };
}

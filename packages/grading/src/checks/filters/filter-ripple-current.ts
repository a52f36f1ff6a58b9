import type { Check, Finding } from "../../model/index.ts";
import { isElectrolytic } from "../shared/electrolytics.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { allSolved } from "../shared/solved.ts";
import { stresses, worst } from "../shared/stress.ts";
import { amps, farads } from "../shared/words.ts";

/**
 * Guide to the RMS ripple current that a general-purpose part of 105 degC stands at twice the line frequency: amperes per root of
 * microfarads, above 100 V, and up to it. from-memory, drawn through catalogue values (10 uF 0.15 A, 47 uF 0.35 A, 100 uF 0.5 A at 450 V).
 */
const HIGH_VOLTAGE_GUIDE = 0.05;
const LOW_VOLTAGE_GUIDE = 0.03;
/** from-memory: makers' frequency factor at 50 to 60 Hz against 100 to 120 Hz. */
const LOW_FREQUENCY_SHARE = 0.8;
/** Below this there is nothing to judge. */
const LEAST_AMPS = 5e-3;

/** Alternating current in every electrolytic, against a guide value by size. */
export const filterRippleCurrent: Check = {
  id: "filter-ripple-current",
  area: "filters",
  title: "Filter ripple current",
  question: "Does the charging current heat any electrolytic more than a part of its size stands?",
  needs: "value and voltage of the capacitors and a network that can be simulated",
  sources: ["from-memory", "electrolytic-text"],
  cautions: ["electrolytic-burst"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "capacitor").flatMap(({ part, state }): Finding[] => {
        const load = allSolved(model, life) ? worst(stresses(model, life).get(part.id), "rmsAmps") : undefined;
        if (!isElectrolytic(part, state) || load === undefined || load.rmsAmps < LEAST_AMPS || state.main === undefined) return [];
        const guide = ((state.ratedVolts ?? 450) > 100 ? HIGH_VOLTAGE_GUIDE : LOW_VOLTAGE_GUIDE) * Math.sqrt(state.main.value * 1e6);
        const limit = model.isolation === "transformerless" ? LOW_FREQUENCY_SHARE * guide : guide;
        const figures = [
          atMost(load.rmsAmps, limit, {
            label: `ripple current of ${part.name}`,
            unit: "A",
            how: `RMS, ${load.condition}, highest line; guide by size, not a maker's figure`,
            source: "from-memory",
          }),
        ];
        const base = {
          condition: load.condition,
          found: `${amps(load.rmsAmps)} RMS in ${farads(state.main.value)}`,
          shouldBe: `about ${amps(limit)} at most for a part of this size`,
          figures,
        };
        if (load.rmsAmps <= limit)
          return [
            good(filterRippleCurrent, life, part, {
              ...base,
              title: `${part.name} stands its ripple current`,
              why: "Below what parts of its size are made for.",
            }),
          ];
        const wide = load.rmsAmps > 2 * limit;
        return [
          report(filterRippleCurrent, life, part, {
            ...base,
            severity: wide ? "adjust" : "watch",
            title: `${part.name} carries much ripple current`,
            why: "Ripple current heats the part; every ten degrees halve its life.",
            action: `Fit a part whose sheet gives at least ${amps(load.rmsAmps)} RMS at ${model.isolation === "transformerless" ? model.line.hertz : 2 * model.line.hertz} Hz; an old can that gets warm is out.`,
            order: [
              {
                what: `capacitor ${farads(state.main.value)} 105 C, ripple current at least ${amps(1.25 * load.rmsAmps)}`,
                quantity: 1,
                for: part.name,
                why: "ripple current",
              },
            ],
          }),
        ];
      }),
    );
  },
};

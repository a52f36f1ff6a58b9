import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { rectifiersIn } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { allSolved } from "../shared/solved.ts";
import { stresses, worst } from "../shared/stress.ts";
import { amps } from "../shared/words.ts";

/** Repetitive peak current of every plate, once the supply has settled. */
export const rectifierPeakCurrent: Check = {
  id: "rectifier-peak-current",
  area: "rectifiers",
  title: "Rectifier peak current",
  question: "Do the charging pulses stay within what the rectifier stands cycle after cycle?",
  needs: "the rectifier's type, the first filter capacitor and the winding's resistance",
  sources: ["rc-30", "from-memory"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      rectifiersIn(model, life).flatMap(({ part, state }): Finding[] => {
        const load = allSolved(model, life) ? worst(stresses(model, life).get(part.id), "peakAmps") : undefined;
        const limit = state.limits?.peakAmps;
        if (load === undefined || limit === undefined) return [];
        const figures = [
          atMost(load.peakAmps, limit, {
            label: `peak current of a plate of ${part.name}`,
            unit: "A",
            how: `largest current over a period, ${load.condition}, highest line`,
            source: state.limits?.source ?? "marking",
          }),
        ];
        const base = {
          condition: load.condition,
          found: `pulses of ${amps(load.peakAmps)}`,
          shouldBe: `at most ${amps(limit)} a plate`,
          figures,
        };
        if (load.peakAmps > limit) {
          return [
            report(rectifierPeakCurrent, life, part, {
              ...base,
              severity: "replace",
              title: `Charging pulses of ${part.name} are too large`,
              why: "The pulses tear the coating off the cathode; sparks inside the tube short the winding.",
              action: "Bring the first capacitor back to its original value, or add resistance in each plate lead until the pulses fit.",
              holds: "full-line",
            }),
          ];
        }
        return [
          good(rectifierPeakCurrent, life, part, {
            ...base,
            title: `Charging pulses of ${part.name} are within its rating`,
            why: "First capacitor and winding resistance suit the tube.",
          }),
        ];
      }),
    );
  },
};

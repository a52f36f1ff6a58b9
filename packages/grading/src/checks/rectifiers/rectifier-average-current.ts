import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { isTube, outputAmps, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { amps, percent } from "../shared/words.ts";

/** silicon-diode-sheets: into a capacitor the average current is derated by a fifth. */
const CAPACITOR_SHARE = 0.8;
/** Beyond this multiple of the rating it feeds a short. common-practice. */
const SHORT_LOAD = 5;

/** Direct current of every rectifier against its rating. */
export const rectifierAverageCurrent: Check = {
  id: "rectifier-average-current",
  area: "rectifiers",
  title: "Rectifier direct current",
  question: "Does the set draw more direct current than its rectifier may give?",
  needs: "the rectifier's type or ratings, and the loads",
  sources: ["rc-30", "silicon-diode-sheets"],
  cautions: ["hot-surfaces"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "rectifier").flatMap(({ part, state }): Finding[] => {
        const load = outputAmps(model, life, part);
        const rated = state.limits?.dcAmps;
        if (load === undefined || load.amps === 0) return [];
        if (rated === undefined) {
          return [
            report(rectifierAverageCurrent, life, part, {
              severity: "unmeasured",
              condition: load.condition,
              title: `Current rating of ${part.name} not known`,
              found: `${amps(load.amps)} DC`,
              shouldBe: "a rectifier rated for that and a fifth more",
              why: "An overloaded rectifier overheats slowly.",
              action: "Look up its direct current and enter it with the type.",
              cautions: [],
            }),
          ];
        }
        const derated = !isTube(state) && reservoirs(model, life, state).length > 0;
        const limit = derated ? CAPACITOR_SHARE * rated : rated;
        const figures = [
          atMost(load.amps, limit, {
            label: `direct current of ${part.name}`,
            unit: "A",
            how: `mean over a period, all its plates together, ${load.condition}, highest line${derated ? `; limit ${percent(CAPACITOR_SHARE)} of the rating into a capacitor` : ""}`,
            source: state.limits?.source ?? "marking",
          }),
        ];
        const base = { condition: load.condition, found: `${amps(load.amps)} DC`, shouldBe: `at most ${amps(limit)}`, figures };
        if (load.amps > SHORT_LOAD * rated) {
          return [
            report(rectifierAverageCurrent, life, part, {
              ...base,
              severity: "danger",
              title: `${part.name} feeds a short`,
              why: "Rectifier and high-voltage winding burn within seconds, and the line fuse may hold.",
              action: `Do not energise. Measure from the output of ${part.name} to the chassis with the power off: look for a wire, a shorted filter capacitor, a reversed one.`,
              cautions: ["high-voltage-stored-charge", "hot-surfaces"],
              holds: "current-limited",
            }),
          ];
        }
        if (load.amps > limit) {
          return [
            report(rectifierAverageCurrent, life, part, {
              ...base,
              severity: "replace",
              title: `${part.name} gives more than its rated current`,
              why: isTube(state)
                ? "Plates overheat and the cathode wears out; one day it arcs and shorts the winding."
                : "The junction overheats and shorts.",
              action:
                "Look for a leaky filter capacitor or a stage that draws too much; if the circuit asks for it, fit a larger rectifier.",
              holds: "full-line",
            }),
          ];
        }
        return [
          good(rectifierAverageCurrent, life, part, {
            ...base,
            title: `${part.name} carries its current`,
            why: "Within its rating at the highest line.",
          }),
        ];
      }),
    );
  },
};

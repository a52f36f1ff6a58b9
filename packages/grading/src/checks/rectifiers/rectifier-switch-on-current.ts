import type { Check, Finding, PartState } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { isTube, rectifiersIn } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { switchOn } from "../shared/switchOn.ts";
import { amps } from "../shared/words.ts";

/** Surge rating of a silicon part whose own is not known: the 1 A class of the diode table. silicon-diode-sheets. */
const SILICON_SURGE_AMPS = 30;

/** First charging pulse: cold silicon at switch-on, hot cathodes after a short interruption. */
export const rectifierSwitchOnCurrent: Check = {
  id: "rectifier-switch-on-current",
  area: "rectifiers",
  title: "Rectifier switch-on current",
  question: "Does every rectifier stand the pulse that fills the empty filters?",
  needs: "the rectifier's type, the filters and the resistance in the way",
  sources: ["silicon-diode-sheets", "maker-sheet-6x4", "from-memory"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      rectifiersIn(model, life).flatMap(({ part, state }): Finding[] => {
        const tube = isTube(state);
        const surge = switchOn(model, life, { hot: tube });
        if (surge === undefined) return [];
        const peak = Math.max(0, ...model.elementsOf(surge.compiled, part.id).map((id) => surge.elements.get(id)?.maxAmps ?? 0));
        if (peak === 0) return [];
        const limit = tube ? state.limits?.hotSwitchAmps : surgeLimit(state);
        const what = tube ? "switched on again with the cathode hot" : "at switch-on";
        const how = "filters empty, crest of the highest line, every resistance in the way";
        if (limit === undefined) {
          return tube
            ? [
                good(rectifierSwitchOnCurrent, life, part, {
                  title: `${part.name} starts cold`,
                  found: `up to ${amps(peak)} ${what}`,
                  shouldBe: "no published limit",
                  figures: [figure("peak with the cathode hot", peak, "A", how)],
                  why: "A cold cathode lets the filters fill slowly; only a short interruption makes a pulse.",
                  action: "After switching off wait until the tube has cooled before switching on again.",
                }),
              ]
            : [];
        }
        const figures = [
          atMost(peak, limit, { label: `peak ${what}`, unit: "A", how, source: state.limits?.source ?? "silicon-diode-sheets" }),
        ];
        const base = { found: `${amps(peak)} ${what}`, shouldBe: `at most ${amps(limit)}`, figures };
        if (peak > limit) {
          const ohms = Math.SQRT2 * model.line.highVolts * (1 / limit - 1 / peak);
          return [
            report(rectifierSwitchOnCurrent, life, part, {
              ...base,
              severity: tube ? "watch" : "replace",
              title: `The first pulse is too large for ${part.name}`,
              why: tube
                ? "A pulse on a hot cathode may arc inside the tube."
                : "Silicon that is surged beyond its rating shorts, and with it the winding or the line.",
              action: tube
                ? "After switching off wait until the tube has cooled; add resistance in the plate leads."
                : `Add a series resistor or an inrush limiter; without a transformer about ${ohms.toPrecision(2)} ohm does it.`,
              ...(tube ? {} : { holds: "full-line" as const }),
            }),
          ];
        }
        return [
          good(rectifierSwitchOnCurrent, life, part, {
            ...base,
            title: `${part.name} stands the first pulse`,
            why: "Resistance in the way is enough.",
          }),
        ];
      }),
    );
  },
};

/** Surge rating of silicon: its own, else that of the 1 A class. Selenium is not judged. */
function surgeLimit(state: PartState): number | undefined {
  return state.device?.kind === "silicon" ? (state.limits?.surgeAmps ?? SILICON_SURGE_AMPS) : undefined;
}

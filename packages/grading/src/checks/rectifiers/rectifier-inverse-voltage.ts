import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { isTube } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { volts } from "../shared/words.ts";

/** common-practice: silicon is chosen for 1.5 times the inverse voltage on a clean line, twice with transients. */
const SILICON_MARGIN = 1.5;
/** common-practice: below this the line's ordinary spikes reach the rating; between the two a set as built is left alone. */
const LEAST_MARGIN = 1.2;

/** Peak inverse voltage of every rectifier in its worst condition at the highest line. */
export const rectifierInverseVoltage: Check = {
  id: "rectifier-inverse-voltage",
  area: "rectifiers",
  title: "Rectifier inverse voltage",
  question: "Does every rectifier stand the voltage across it while it is not conducting?",
  needs: "the rectifier's type or ratings, and a network that can be simulated",
  sources: ["silicon-diode-sheets", "rc-30", "common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "rectifier").flatMap(({ part, state }): Finding[] => {
        const load = worst(stresses(model, life).get(part.id), "inverseVolts");
        if (load === undefined || load.inverseVolts < 1) return [];
        const limit = state.limits?.peakInverseVolts;
        if (limit === undefined) {
          return [
            report(rectifierInverseVoltage, life, part, {
              severity: "unmeasured",
              condition: load.condition,
              title: `Inverse voltage rating of ${part.name} not known`,
              found: `${volts(load.inverseVolts)} across it in reverse`,
              shouldBe: `rated for at least ${volts(SILICON_MARGIN * load.inverseVolts)}`,
              why: "A rectifier that breaks down shorts the winding.",
              action: "Look up its peak inverse voltage and enter it with the type.",
              cautions: [],
              holds: "full-line",
            }),
          ];
        }
        const semiconductor = !isTube(state) && state.device?.kind === "silicon";
        const figures = [
          atMost(load.inverseVolts, limit, {
            label: `inverse voltage of ${part.name}`,
            unit: "V",
            how: `largest reverse voltage over a period, ${load.condition}, line ${volts(load.lineVolts)}`,
            source: state.limits?.source ?? "marking",
          }),
        ];
        const base = {
          condition: load.condition,
          found: `${volts(load.inverseVolts)} in reverse; ${part.name} stands ${volts(limit)}`,
          shouldBe: semiconductor ? `rated for ${SILICON_MARGIN} to 2 times that` : `at most ${volts(limit)}`,
          figures,
        };
        const order = semiconductor
          ? [
              {
                what: `silicon diode, at least ${volts(2 * load.inverseVolts)} peak inverse`,
                quantity: 1,
                for: part.name,
                why: "inverse voltage",
              },
            ]
          : [];
        if (load.inverseVolts > limit) {
          return [
            report(rectifierInverseVoltage, life, part, {
              ...base,
              severity: "danger",
              title: `${part.name} breaks down in reverse`,
              why: "It flashes over or shorts, and the winding and the filters go with it.",
              action: semiconductor
                ? "Fit a part of higher inverse voltage, or several in series with equalising resistors."
                : "Check the winding voltage and the line; fit a type with a higher inverse rating.",
              order,
              holds: "full-line",
            }),
          ];
        }
        if (semiconductor && limit < SILICON_MARGIN * load.inverseVolts) {
          return [
            report(rectifierInverseVoltage, life, part, {
              ...base,
              ...(limit < LEAST_MARGIN * load.inverseVolts
                ? {
                    severity: "adjust" as const,
                    action: `Fit one of at least ${volts(2 * load.inverseVolts)}.`,
                    order,
                    holds: "service" as const,
                  }
                : { severity: "watch" as const, action: `Fit one of at least ${volts(2 * load.inverseVolts)} when it is changed next.` }),
              title: `${part.name} has little inverse margin`,
              why: "Silicon dies of the first spike beyond its rating; lines have spikes.",
            }),
          ];
        }
        return [
          good(rectifierInverseVoltage, life, part, {
            ...base,
            title: `${part.name} stands its inverse voltage`,
            why: "Within its rating at the highest line.",
          }),
        ];
      }),
    );
  },
};

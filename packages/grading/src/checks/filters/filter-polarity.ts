import type { Check, Finding } from "../../model/index.ts";
import { isElectrolytic } from "../shared/electrolytics.ts";
import { atMost } from "../shared/figure.ts";
import { endsOf } from "../shared/layout.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { stresses } from "../shared/stress.ts";
import { volts } from "../shared/words.ts";

/** common-practice: an aluminium electrolytic stands about a volt the wrong way. */
const REVERSE_VOLTS = 1;

/** Polarised capacitors that stand, or are fitted, the wrong way round. */
export const filterPolarity: Check = {
  id: "filter-polarity",
  area: "filters",
  title: "Capacitor polarity",
  question: "Does any polarised capacitor see voltage the wrong way?",
  needs: "the points of each electrolytic, positive side first",
  sources: ["electrolytic-text", "common-practice"],
  cautions: ["electrolytic-burst", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "capacitor").flatMap(({ part, state }): Finding[] => {
        if (!isElectrolytic(part, state)) return [];
        const loads = stresses(model, life).get(part.id) ?? [];
        const load = loads.reduce<(typeof loads)[number] | undefined>(
          (best, one) => (best === undefined || one.meanVolts < best.meanVolts ? one : best),
          undefined,
        );
        const [now, made] = [endsOf(state), endsOf(part.lives.designed)];
        const turned = part.lives.designed.present && now !== undefined && made !== undefined && now[0] === made[1] && now[1] === made[0];
        if (load === undefined && !turned) return [];
        const reverse = Math.max(0, -(load?.meanVolts ?? 0));
        const figures =
          load === undefined
            ? []
            : [
                atMost(reverse, REVERSE_VOLTS, {
                  label: `reverse voltage on ${part.name}`,
                  unit: "V",
                  how: `mean against its polarity, worst condition ${load.condition}, line ${volts(load.lineVolts)}`,
                  source: "common-practice",
                }),
              ];
        const base = {
          found: `plus on ${now?.[0] ?? "?"}, minus on ${now?.[1] ?? "?"}${load === undefined ? "" : `, ${volts(load.meanVolts)} between them`}`,
          shouldBe: "the plus on the more positive point",
          figures,
        };
        if (reverse > REVERSE_VOLTS || (turned && reverse >= 0 && (load === undefined || load.meanVolts <= 0))) {
          return [
            report(filterPolarity, life, part, {
              ...base,
              severity: "danger",
              title: `${part.name} is the wrong way round`,
              why: "Reversed, the oxide goes, the part heats and bursts within seconds to hours, and takes the rectifier with it.",
              action:
                "Do not power it. Turn it, and fit a new part: one that has been reversed is spent. In bias supplies the plus goes to the chassis.",
              holds: "current-limited",
            }),
          ];
        }
        if (load === undefined || load.meanVolts < 0.1) return [];
        return [
          good(filterPolarity, life, part, {
            ...base,
            title: `${part.name} stands the right way round`,
            why: "Its plus is the more positive side in every condition.",
          }),
        ];
      }),
    );
  },
};

import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { isTube, rectifiersIn, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { farads } from "../shared/words.ts";

/** common-practice: 22 uF stands for 20 uF and 47 uF for 40 uF among today's values. */
const NEXT_VALUE = 1.2;

/** Value of the first filter capacitor against the largest that the rectifier tube is published for. */
export const rectifierInputCapacitor: Check = {
  id: "rectifier-input-capacitor",
  area: "rectifiers",
  title: "First filter capacitor",
  question: "Is the first capacitor after a rectifier tube no larger than the tube may have?",
  needs: "the tube type and the value of the first filter capacitor",
  sources: ["rc-30", "common-practice"],
  cautions: ["high-voltage-stored-charge", "electrolytic-burst"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      rectifiersIn(model, life).flatMap(({ part, state }): Finding[] => {
        const limit = state.limits?.maxInputFarads;
        const first = reservoirs(model, life, state);
        if (!isTube(state) || limit === undefined || first.length === 0) return [];
        const total = first.reduce((sum, placed) => sum + (placed.state.marking?.value ?? placed.state.main?.value ?? 0), 0);
        const names = first.map((placed) => placed.part.name).join(" and ");
        const figures = [
          atMost(total, limit, {
            label: `first filter capacitor behind ${part.name}`,
            unit: "F",
            how: `${names}: every capacitor that the cathode charges without a choke between`,
            source: state.limits?.source ?? "rc-30",
          }),
        ];
        const base = {
          found: `${farads(total)} (${names}) behind a ${state.type ?? "rectifier tube"}`,
          shouldBe: `at most ${farads(limit)}`,
          figures,
        };
        if (total <= limit) {
          return [
            good(rectifierInputCapacitor, life, first[0]?.part, {
              ...base,
              title: `${names} ${first.length === 1 ? "suits" : "suit"} ${part.name}`,
              why: "Within the published value; later capacitors may be larger.",
            }),
          ];
        }
        if (total <= NEXT_VALUE * limit) {
          return [
            report(rectifierInputCapacitor, life, first[0]?.part, {
              ...base,
              severity: "watch",
              title: `${names} ${first.length === 1 ? "is" : "together are"} the next standard value above what ${part.name} may have`,
              why: "The old values ran to half as much again by their tolerance; the pulses through the tube decide.",
              action: `Leave it if the charging pulses are within the tube's peak rating; go no higher than ${farads(limit)} when it is changed next.`,
            }),
          ];
        }
        return [
          report(rectifierInputCapacitor, life, first[0]?.part, {
            ...base,
            severity: "replace",
            title: `${names} ${first.length === 1 ? "is" : "together are"} too large for ${part.name}`,
            why: "The larger the first capacitor, the shorter and higher the pulses through the tube, at every cycle and at switch-on.",
            action: `Fit ${farads(limit)} or the original value here; put more capacitance behind the choke or resistor, where it does more good.`,
            holds: "full-line",
            order: [
              {
                what: `capacitor ${farads(limit)} at most, ${first[0]?.state.ratedVolts ?? 450} V or more, 105 C`,
                quantity: 1,
                for: names,
                why: "beyond the rectifier's limit",
              },
            ],
          }),
        ];
      }),
    );
  },
};

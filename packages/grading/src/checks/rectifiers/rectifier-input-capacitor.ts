import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { isTube, rectifiersIn, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { farads } from "../shared/words.ts";

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
        const total = first.reduce((sum, placed) => sum + (placed.state.main?.value ?? 0), 0);
        const names = first.map((placed) => placed.part.name).join(" and ");
        const figures = [atMost(total, limit, { label: `first filter capacitor behind ${part.name}`, unit: "F", how: `${names}: every capacitor that the cathode charges without a choke between`, source: state.limits?.source ?? "rc-30" })];
        const base = { found: `${farads(total)} (${names}) behind a ${state.type ?? "rectifier tube"}`, shouldBe: `at most ${farads(limit)}`, figures };
        // A value measured within its tolerance is no change of the circuit.
        const tolerance = Math.max(0, ...first.map((placed) => (placed.state.main?.from === "measurement" ? 0.2 : 0)));
        if (total <= limit * (1 + tolerance)) return [good(rectifierInputCapacitor, life, first[0]?.part, { ...base, title: `${names} suits ${part.name}`, why: "Within the published value; later capacitors may be larger." })];
        return [
          report(rectifierInputCapacitor, life, first[0]?.part, {
            ...base,
            severity: "replace",
            title: `${names} is too large for ${part.name}`,
            why: "The larger the first capacitor, the shorter and higher the pulses through the tube, at every cycle and at switch-on.",
            action: `Fit ${farads(limit)} or the original value here; put more capacitance behind the choke or resistor, where it does more good.`,
            holds: "full-line",
            order: [{ what: `capacitor ${farads(limit)} at most, ${first[0]?.state.ratedVolts ?? 450} V or more, 105 C`, quantity: 1, for: names, why: "beyond the rectifier's limit" }],
          }),
        ];
      }),
    );
  },
};

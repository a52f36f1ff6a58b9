import { formatQuantity } from "@underchassis/calc";
import type { Check, Finding } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives, partsIn, subject } from "../shared/lives.ts";
import { stresses, worst } from "../shared/stress.ts";

/** common-practice: a resistor in a closed chassis is run at no more than half its rating. */
const COMFORTABLE_SHARE = 0.5;

/** Duties whose heat has a check of its own. */
const OWN_CHECK: ReadonlySet<string> = new Set(["bleeder", "standby-bypass"]);

/** Heat in every resistor, in the worst powered condition at the highest line, against its rating. */
export const resistorDissipation: Check = {
  id: "resistor-dissipation",
  area: "resistors",
  title: "Resistor dissipation",
  question: "Does every resistor stand the heat that it has to bear in the worst condition?",
  needs: "the wattage marked on the resistor",
  sources: ["common-practice"],
  cautions: ["hot-surfaces"],
  run(model) {
    const findings: Finding[] = [];
    for (const life of judgedLives(model)) {
      const loads = stresses(model, life);
      for (const { part, state } of partsIn(model, life, "resistor", "potentiometer")) {
        const load = worst(loads.get(part.id), "watts");
        if (load === undefined || state.ratedWatts === undefined || OWN_CHECK.has(part.duty ?? "")) continue;
        const share = load.watts / state.ratedWatts;
        const figures = [
          atMost(load.watts, state.ratedWatts, {
            label: `dissipation of ${part.name}`,
            unit: "W",
            how: `mean of v * i over a period, ${load.condition}, line ${formatQuantity(load.lineVolts, "voltage")}`,
            source: state.ratingsFrom === "typical" ? "typical" : "marking",
          }),
        ];
        const base = {
          check: this.id,
          life,
          ...subject(part),
          condition: load.condition,
          found: `${formatQuantity(load.watts, "power")} in a ${formatQuantity(state.ratedWatts, "power")} part`,
          shouldBe: `at most ${formatQuantity(state.ratedWatts, "power")}, better half of that`,
          figures,
          sources: this.sources,
        };
        if (share <= COMFORTABLE_SHARE) {
          findings.push({
            ...base,
            severity: "good",
            title: `${part.name} stays cool enough`,
            why: "Half the rating or less leaves room for a closed chassis.",
            action: "Nothing to do.",
            cautions: [],
          });
          continue;
        }
        const over = share > 1;
        findings.push({
          ...base,
          severity: over ? (share > 2 ? "danger" : "replace") : "watch",
          title: over ? `${part.name} is overloaded` : `${part.name} runs above half its rating`,
          why: over
            ? "Beyond its rating a resistor drifts, chars and opens, and what it feeds or protects goes with it."
            : "Above half its rating a part under a hot chassis ages fast.",
          action: over
            ? `Find out why it carries so much; fit at least ${formatQuantity(2 * load.watts, "power")} if this is what the circuit asks for.`
            : `Fit at least ${formatQuantity(2 * load.watts, "power")} when it is changed next.`,
          cautions: this.cautions,
          ...(over ? { holds: "full-line" as const } : {}),
          ...(over && state.main !== undefined
            ? {
                order: [
                  {
                    what: `resistor ${formatQuantity(state.main.value, "resistance")}, at least ${formatQuantity(2 * load.watts, "power")}`,
                    quantity: 1,
                    for: part.name,
                    why: "overloaded",
                  },
                ],
              }
            : {}),
        });
      }
    }
    return findings;
  },
};

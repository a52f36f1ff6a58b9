import type { ChassisModel, Check, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { type Stress, stresses, worst } from "../shared/stress.ts";
import { amps, bleeder, nextRating, ohms, percent, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** common-practice: bleeders are always on and often out of the air; half their rating, as for every resistor. */
const COMFORTABLE_SHARE = 0.5;

/** Heat and current of every bleeder, loaded and unloaded. */
export const bleederRating: Check = {
  id: "bleeder-rating",
  area: "resistors",
  title: "Bleeder rating",
  question: "Does the bleeder stand the voltage that comes when nothing else draws, and what share does it take?",
  needs: "the wattage marked on the bleeder",
  sources: ["common-practice", "neets-module-1"],
  cautions: ["hot-surfaces", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "resistor")
        .filter(({ part }) => part.duty === "bleeder")
        .flatMap(({ part, state }) => judge(this, model, life, part, state)),
    );
  },
};

function judge(check: Check, model: ChassisModel, life: Life, part: Part, state: PartState): Finding[] {
  const entries = stresses(model, life).get(part.id);
  const hottest = worst(entries, "watts");
  if (hottest === undefined || state.main === undefined) return [];
  const share = currentShare(model, life, entries ?? []);
  const wanted = nextRating(2 * hottest.watts, RESISTOR_WATTS);
  const base = {
    condition: hottest.condition,
    found: `${watts(hottest.watts)} at ${volts(Math.abs(hottest.meanVolts))} in ${hottest.condition}${state.ratedWatts === undefined ? "" : `, rated ${watts(state.ratedWatts)}`}`,
    shouldBe: `rated at least ${watts(2 * hottest.watts)}`,
    figures: [
      state.ratedWatts === undefined
        ? figure(`dissipation of ${part.name}`, hottest.watts, "W", how(hottest))
        : atMost(hottest.watts, state.ratedWatts, {
            label: `dissipation of ${part.name}`,
            unit: "W",
            how: how(hottest),
            source: state.ratingsFrom === "typical" ? "typical" : "marking",
          }),
      ...(share === undefined
        ? []
        : [
            figure(
              "share of the supply's current",
              share.share,
              "",
              `${amps(share.bleeder)} of ${amps(share.total)} through the rectifiers, ${share.condition}`,
            ),
          ]),
    ],
  };
  if (state.ratedWatts === undefined) {
    return [
      report(check, life, part, {
        ...base,
        severity: "unmeasured",
        title: `Wattage of ${part.name} is not known`,
        why: "A bleeder that burns open leaves the filters charged, and nobody sees it.",
        action: `Read or estimate its size; it needs ${watts(2 * hottest.watts)} or more.`,
        cautions: [],
      }),
    ];
  }
  if (hottest.watts <= COMFORTABLE_SHARE * state.ratedWatts) {
    return [
      good(check, life, part, {
        ...base,
        title: `${part.name} stands the whole voltage`,
        why:
          share === undefined
            ? "Half its rating or less in every condition."
            : `Half its rating or less in every condition; it takes ${percent(share.share)} of the supply's current.`,
      }),
    ];
  }
  const over = hottest.watts > state.ratedWatts;
  return [
    report(check, life, part, {
      ...base,
      severity: over ? "replace" : "watch",
      title: over ? `${part.name} is overloaded` : `${part.name} runs above half its rating`,
      why: "A bleeder drifts up or burns open unseen, and then the filters stay charged with the plug out.",
      action: `Fit ${ohms(state.marking?.value ?? state.main.value)} ${wanted} W, clear of capacitors and wiring.`,
      order: [
        {
          what: bleeder(state.marking?.value ?? state.main.value, wanted),
          quantity: 1,
          for: part.name,
          why: over ? "overloaded" : "runs hot",
        },
      ],
      ...(over ? { holds: "full-line" as const } : {}),
    }),
  ];
}

const how = (stress: Stress): string => `mean of v * i, ${stress.condition}, line ${volts(stress.lineVolts)}`;

/** Share of what the rectifiers deliver, where the load is on. */
function currentShare(
  model: ChassisModel,
  life: Life,
  entries: readonly Stress[],
): { share: number; bleeder: number; total: number; condition: string } | undefined {
  const loaded = entries.find(({ condition }) => model.conditions.get(condition)?.like === "operating");
  if (loaded === undefined) return undefined;
  const loads = stresses(model, life);
  const total = partsIn(model, life === "planned" ? "restored" : life, "rectifier").reduce(
    (sum, { part }) =>
      sum +
      (loads.get(part.id) ?? [])
        .filter(({ condition }) => condition === loaded.condition)
        .reduce((own, { meanAmps }) => own + Math.abs(meanAmps), 0),
    0,
  );
  const bleeder = Math.abs(loaded.meanAmps);
  return total > 0 ? { share: bleeder / total, bleeder, total, condition: loaded.condition } : undefined;
}

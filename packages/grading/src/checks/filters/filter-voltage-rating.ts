import { nearestPreferred } from "@underchassis/calc";
import type { Check, Finding, OrderItem } from "../../model/index.ts";
import { filtersIn, isOriginal } from "../shared/electrolytics.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { CAPACITOR_VOLTS, farads, nextRating, volts } from "../shared/words.ts";

/** electrolytic-text and common-practice: a tenth to a fifth of the rating stays free. */
const COMFORTABLE = 1 / 1.1;

/** Working voltage of every filter capacitor against the highest voltage that it meets, no load included. */
export const filterVoltageRating: Check = {
  id: "filter-voltage-rating",
  area: "filters",
  title: "Filter capacitor voltage",
  question: "Does every filter capacitor stand the highest voltage it meets, before the tubes draw and at the highest line?",
  needs: "rated volts of the capacitors and a network that can be simulated",
  sources: ["electrolytic-text", "common-practice"],
  cautions: ["electrolytic-burst", "high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      filtersIn(model, life).flatMap(({ part, state }): Finding[] => {
        const load = worst(stresses(model, life).get(part.id), "maxVolts");
        if (load === undefined || load.maxVolts < 1) return [];
        const { wanted, order } = replacement(part.name, state.marking?.value ?? state.main?.value, load.maxVolts);
        const { ratedVolts } = state;
        if (ratedVolts === undefined) {
          const original = isOriginal(part, life);
          return [
            report(filterVoltageRating, life, part, {
              severity: "unmeasured",
              condition: load.condition,
              title: `Voltage rating of ${part.name} not known`,
              found: `${volts(load.maxVolts)} at most (${load.condition})`,
              shouldBe: `rated for at least ${volts(load.maxVolts / COMFORTABLE)}`,
              why: "Beyond its working voltage an electrolytic leaks, heats and bursts.",
              action: `Read the can or the papers; when in doubt fit ${wanted}.`,
              ...(original ? { holds: "full-line" as const, order } : {}),
            }),
          ];
        }
        const figures = [
          atMost(load.maxVolts, ratedVolts, {
            label: `voltage on ${part.name}`,
            unit: "V",
            how: `largest over a period, ${load.condition}, line ${volts(load.lineVolts)}; the worst of all powered conditions`,
            source: state.ratingsFrom === "typical" ? "typical" : "marking",
          }),
        ];
        const surge = state.marking?.surgeVolts;
        const base = {
          condition: load.condition,
          found: `${volts(load.maxVolts)} on a ${volts(ratedVolts)} capacitor${surge === undefined ? "" : ` (surge ${volts(surge)})`}`,
          shouldBe: `at most ${volts(ratedVolts)}, better ${volts(COMFORTABLE * ratedVolts)}`,
          figures,
        };
        if (load.maxVolts > ratedVolts) {
          return [
            report(filterVoltageRating, life, part, {
              ...base,
              severity: load.maxVolts > (surge ?? 1.1 * ratedVolts) ? "danger" : "replace",
              title: `${part.name} is over its working voltage`,
              why: `It leaks, heats and bursts.${surge === undefined ? "" : " The surge rating is for half a minute, not for working."}`,
              action: `Fit ${wanted}.`,
              order,
              holds: "full-line",
            }),
          ];
        }
        if (load.maxVolts > COMFORTABLE * ratedVolts) {
          return [
            report(filterVoltageRating, life, part, {
              ...base,
              severity: "watch",
              title: `${part.name} has little voltage margin`,
              why: "At the highest line it works close to its limit.",
              action: `Fit ${wanted} when it is changed next.`,
              order,
            }),
          ];
        }
        return [
          good(filterVoltageRating, life, part, {
            ...base,
            title: `${part.name} stands its voltage`,
            why: "The rating is at least a tenth above the highest voltage of any condition.",
          }),
        ];
      }),
    );
  },
};

/** What to fit for a voltage: one part, or, beyond what the trade makes, two of twice the value in series. */
function replacement(name: string, value: number | undefined, most: number): { wanted: string; order: OrderItem[] } {
  const highest = CAPACITOR_VOLTS.at(-1) ?? 500;
  const size = (factor: number) => (value === undefined ? "" : `${farads(factor === 1 ? value : nearestPreferred(factor * value, "E6"))} `);
  if (most <= highest) {
    const rating = Math.min(highest, nextRating(most / COMFORTABLE, CAPACITOR_VOLTS));
    return {
      wanted: `${volts(rating)} or more`,
      order: [{ what: `capacitor ${size(1)}${volts(rating)} 105 C`, quantity: 1, for: name, why: "voltage rating" }],
    };
  }
  const half = nextRating((0.6 * most) / COMFORTABLE, CAPACITOR_VOLTS);
  return {
    wanted: `two of ${size(2)}${volts(half)} in series, each with a balancing resistor`,
    order: [{ what: `capacitor ${size(2)}${volts(half)} 105 C`, quantity: 2, for: name, why: "voltage rating: two in series" }],
  };
}

import type { Check, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { type Stress, stresses, worst } from "../shared/stress.ts";
import { nextRating, ohms, percent, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** common-practice: a resistor in a closed chassis is run at no more than half its rating. */
const COMFORTABLE_SHARE = 0.5;
/** Beyond this share it chars within minutes. from-memory. */
const CHARRING_SHARE = 2;

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
    return judgedLives(model).flatMap((life) => {
      const loads = stresses(model, life);
      const cool: { name: string; share: number }[] = [];
      const findings = partsIn(model, life, "resistor", "potentiometer").flatMap(({ part, state }): Finding[] => {
        const load = worst(loads.get(part.id), "watts");
        if (load === undefined || state.ratedWatts === undefined || OWN_CHECK.has(part.duty ?? "")) return [];
        // A control is simulated in two halves; each half of the track bears half of the rating.
        const rated = part.kind === "potentiometer" && state.pins.wiper !== undefined ? state.ratedWatts / 2 : state.ratedWatts;
        if (load.watts > COMFORTABLE_SHARE * rated) return [hot(this, life, part, state, load, rated)];
        cool.push({ name: part.name, share: load.watts / rated });
        return [];
      });
      return cool.length === 0 ? findings : [...findings, allCool(this, life, cool)];
    });
  },
};

function allCool(check: Check, life: Life, cool: readonly { name: string; share: number }[]): Finding {
  const hottest = cool.reduce((most, entry) => (entry.share > most.share ? entry : most));
  return good(check, life, undefined, {
    title: `${cool.length} ${cool.length === 1 ? "resistor bears" : "resistors bear"} at most half of the rating`,
    found: `hottest ${hottest.name}, ${percent(hottest.share)} of its rating; ${cool.map(({ name }) => name).join(", ")}`,
    shouldBe: `at most ${percent(COMFORTABLE_SHARE)} of the rating`,
    why: "Half the rating or less leaves room for a closed chassis.",
  });
}

function hot(check: Check, life: Life, part: Part, state: PartState, load: Stress, rated: number): Finding {
  const share = load.watts / rated;
  const over = share > 1;
  const wanted = nextRating(2 * load.watts, RESISTOR_WATTS);
  const value = state.marking?.value ?? state.main?.value;
  return report(check, life, part, {
    severity: over ? (share > CHARRING_SHARE ? "danger" : "replace") : "watch",
    condition: load.condition,
    title: over ? `${part.name} is overloaded` : `${part.name} runs above half its rating`,
    found: `${watts(load.watts)} in a ${watts(rated)} part`,
    shouldBe: `at most ${watts(rated)}, better half of that`,
    figures: [
      atMost(load.watts, rated, {
        label: `dissipation of ${part.name}`,
        unit: "W",
        how: `mean of v * i over a period, ${load.condition}, line ${volts(load.lineVolts)}`,
        source: state.ratingsFrom === "typical" ? "typical" : "marking",
      }),
    ],
    why: over
      ? "Beyond its rating a resistor drifts, chars and opens, and what it feeds or protects goes with it."
      : "Above half its rating a part under a hot chassis ages fast.",
    action: over
      ? `Find out why it carries so much; fit ${wanted} W or more if this is what the circuit asks for.`
      : `Fit ${wanted} W when it is changed next.`,
    ...(over ? { holds: "full-line" as const } : {}),
    ...(over && value !== undefined
      ? { order: [{ what: `resistor ${ohms(value)} ${wanted} W`, quantity: 1, for: part.name, why: "overloaded" }] }
      : {}),
  });
}

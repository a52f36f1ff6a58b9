import type { ChassisModel, Check, Finding, Life, Part, PartState, Reading } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { allIn, endsOf } from "../shared/layout.ts";
import { standingReadings } from "../shared/readings.ts";
import { good, report } from "../shared/report.ts";
import { amps, ohms, volts, watts } from "../shared/words.ts";

/** What readings at both ends of a resistor say of its current and heat. */
export const readingsConsistency: Check = {
  id: "readings-consistency",
  area: "readings",
  title: "Current and heat from the readings",
  question: "Do the readings at both ends of a resistor mean more heat than it is made for?",
  needs: "DC volts at both ends in the same condition, and the resistor's value and wattage",
  sources: ["common-practice"],
  cautions: ["hot-surfaces"],
  run(model) {
    const cool: string[] = [];
    const findings = allIn(model, "restored", "resistor").flatMap(({ part }): Finding[] => {
      const pair = readingsAcross(model, part);
      if (pair === undefined) return [];
      const { life, drop, condition, state } = pair;
      const resistance = state.main?.value;
      if (resistance === undefined || state.ratedWatts === undefined) return [];
      const heat = drop ** 2 / resistance;
      if (heat <= state.ratedWatts) {
        cool.push(`${part.name} ${amps(Math.abs(drop) / resistance)} ${watts(heat)}`);
        return [];
      }
      return [overloaded(this, life, part, state, drop, resistance, heat, condition)];
    });
    if (cool.length === 0) return findings;
    const summary = good(this, "restored", undefined, {
      title: "Resistors that were read at both ends are within their rating",
      found: cool.join("; "),
      shouldBe: "at most the rating",
      why: "Ohm's law on what was measured, whatever the simulation says.",
    });
    return [...findings, summary];
  },
};

interface Across {
  life: Life;
  condition: string;
  drop: number;
  state: PartState;
}

function readingsAcross(model: ChassisModel, part: Part): Across | undefined {
  const direct = standingReadings(model).flatMap(({ reading }) =>
    reading.quantity === "dc-volts" && Number.isFinite(reading.value) ? [reading] : [],
  );
  for (const { condition, life } of direct) {
    const state = part.lives[life];
    const ends = state.present ? endsOf(state) : undefined;
    if (ends === undefined) continue;
    const same = (reading: Reading) => reading.condition === condition && reading.life === life;
    const straight = direct.find(
      (reading) => same(reading) && ends.includes(reading.at) && ends.includes(reading.to) && reading.at !== reading.to,
    );
    if (straight !== undefined) return { life, condition, drop: straight.value, state };
    const at = (point: string) =>
      point === model.reference
        ? 0
        : direct.find((reading) => same(reading) && reading.at === point && reading.to === model.reference)?.value;
    const [a, b] = [at(ends[0]), at(ends[1])];
    if (a !== undefined && b !== undefined) return { life, condition, drop: a - b, state };
  }
  return undefined;
}

function overloaded(
  check: Check,
  life: Life,
  part: Part,
  state: PartState,
  drop: number,
  resistance: number,
  heat: number,
  condition: string,
): Finding {
  return report(check, life, part, {
    severity: "adjust",
    condition,
    title: `The readings mean ${watts(heat)} in ${part.name}, a ${watts(state.ratedWatts ?? 0)} part`,
    found: `${volts(Math.abs(drop))} across ${ohms(resistance)}: ${amps(Math.abs(drop) / resistance)}`,
    shouldBe: `at most ${volts(Math.sqrt((state.ratedWatts ?? 0) * resistance))} across it`,
    figures: [
      atMost(heat, state.ratedWatts ?? 0, {
        label: `dissipation of ${part.name} from the readings`,
        unit: "W",
        how: `(${volts(Math.abs(drop))})^2 / ${ohms(resistance)}`,
        source: state.ratingsFrom === "typical" ? "typical" : "marking",
      }),
      figure(`current through ${part.name} from the readings`, Math.abs(drop) / resistance, "A", "voltage across it over its resistance"),
    ],
    why: "Either more flows here than should, or the resistor is not what it is marked: a high one shows a large drop with little current.",
    action: `Power off, lift one lead, measure ${part.name}; if it is right, find what draws ${amps(Math.abs(drop) / resistance)} through it.`,
    holds: "full-line",
  });
}

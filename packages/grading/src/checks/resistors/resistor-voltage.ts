import type { ChassisModel, Check, Finding, Life, Part, PartState } from "../../model/index.ts";
import { atMost } from "../shared/figure.ts";
import { inPlace } from "../shared/inPlace.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { type Stress, stresses } from "../shared/stress.ts";
import { numberIn, rowsOf } from "../shared/tables.ts";
import { ohms, percent, volts } from "../shared/words.ts";

interface Bodies {
  /** What every likely body of this wattage stands, and what the best of them stands. */
  least: number;
  most: number;
  source: string;
}

/** Voltage across every resistor against what its body stands, whatever its wattage allows. */
export const resistorVoltage: Check = {
  id: "resistor-voltage",
  area: "resistors",
  title: "Resistor working voltage",
  question: "Does every resistor stand the voltage across it, apart from its heat?",
  needs: "the wattage of the resistor, and what it is made of where that is known",
  sources: ["composition-resistor-sheets", "film-resistor-sheets"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) => {
      const loads = stresses(model, life);
      const passed: number[] = [];
      const findings = partsIn(model, life, "resistor").flatMap(({ part, state }): Finding[] => {
        const bodies = bodiesOf(model, part, state, life);
        const load = highest(loads.get(part.id));
        if (bodies === undefined || load === undefined) return [];
        if (load.rms <= bodies.least) {
          passed.push(load.rms / bodies.least);
          return [];
        }
        return [over(this, life, part, state, load, bodies)];
      });
      if (passed.length === 0) return findings;
      const summary = good(this, life, undefined, {
        title: `${passed.length} resistors are within the voltage of their bodies`,
        found: `at most ${percent(Math.max(...passed))} of the limit`,
        shouldBe: "at most the limiting voltage of the body",
        why: "Above it a film arcs from turn to turn, weeks later, whatever its wattage.",
      });
      return [...findings, summary];
    });
  },
};

/** Limits are for direct or RMS voltage: the RMS of the whole waveform is held against them. */
function highest(entries: readonly Stress[] | undefined): { rms: number; stress: Stress } | undefined {
  const all = (entries ?? []).map((stress) => ({ rms: Math.hypot(stress.meanVolts, stress.acVolts), stress }));
  return all.reduce<(typeof all)[number] | undefined>(
    (best, entry) => (best === undefined || entry.rms > best.rms ? entry : best),
    undefined,
  );
}

/** Rows of the table that fit what is known of the body. Wirewound parts are limited by their heat alone and have no row. */
function bodiesOf(model: ChassisModel, part: Part, state: PartState, life: Life): Bodies | undefined {
  const { ratedWatts, marking } = state;
  if (ratedWatts === undefined || state.main === undefined) return undefined;
  const fitted = inPlace(part, life)?.fitted ?? false;
  const written = marking?.composition;
  if (written === "wirewound" || (written === undefined && ratedWatts >= 5)) return undefined;
  const old = !fitted && (model.era ?? 1950) < 1970;
  const likely =
    written !== undefined
      ? [written === "metal-oxide" ? "metal-film" : written]
      : old
        ? ["carbon-composition"]
        : ["carbon-film", "metal-film"];
  const rows = rowsOf(model, "resistor-bodies").filter(
    (row) => likely.includes(row.composition ?? "") && numberIn(row, "ratedWatts") === ratedWatts,
  );
  const limits = rows.flatMap((row) => numberIn(row, "maxVolts") ?? []);
  if (limits.length === 0) return undefined;
  return { least: Math.min(...limits), most: Math.max(...limits), source: rows[0]?.source ?? "common-practice" };
}

function over(
  check: Check,
  life: Life,
  part: Part,
  state: PartState,
  { rms, stress }: { rms: number; stress: Stress },
  bodies: Bodies,
): Finding {
  const value = state.main?.value ?? 0;
  const beyondAll = rms > bodies.most;
  const pieces = Math.ceil(rms / (0.8 * bodies.least));
  return report(check, life, part, {
    severity: beyondAll ? "replace" : "watch",
    condition: stress.condition,
    title: beyondAll
      ? `${part.name} has more voltage across it than its body stands`
      : `${part.name} may have more voltage across it than its body stands`,
    found: `${volts(rms)} across ${ohms(value)}, ${state.ratedWatts} W`,
    shouldBe:
      bodies.least === bodies.most ? `at most ${volts(bodies.least)}` : `at most ${volts(bodies.least)} to ${volts(bodies.most)}, by make`,
    figures: [
      atMost(rms, bodies.most, {
        label: `voltage across ${part.name}`,
        unit: "V",
        how: `RMS of the whole, ${stress.condition}, line ${volts(stress.lineVolts)}; limit of the body for direct or RMS voltage`,
        source: bodies.source,
      }),
    ],
    why: "The limit of the body holds whatever the heat: above it a film arcs and opens, and composition tracks.",
    action: beyondAll
      ? `Fit ${pieces} equal resistors in series of ${ohms(value / pieces)} each, or one high-voltage type.`
      : `Look up the limiting voltage of this make; below ${volts(rms)}, fit ${pieces} in series of ${ohms(value / pieces)} each.`,
    ...(beyondAll
      ? {
          holds: "service" as const,
          order: [
            {
              what: `resistor ${ohms(value / pieces)} ${state.ratedWatts} W`,
              quantity: pieces,
              for: part.name,
              why: "voltage across the body",
            },
          ],
        }
      : {}),
  });
}

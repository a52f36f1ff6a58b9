import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { atMost, figure } from "../shared/figure.ts";
import { livesTouching, type Placed } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { lineSide } from "../shared/lineSide.ts";
import { good, report, type Said } from "../shared/report.ts";
import { switchOn } from "../shared/switchOn.ts";
import { amps, joules, ohms, volts } from "../shared/words.ts";

/** common-practice: below about a third of its rating a limiter stays so cool that it keeps volts from the set. */
const LEAST_SHARE = 0.3;

/** Inrush limiters in the line: steady current, heat, drop, energy and what they really do to the surge. */
export const inrushLimiter: Check = {
  id: "inrush-limiter",
  area: "line",
  title: "Inrush limiter",
  question: "Does the inrush limiter carry the set, take up the switch-on energy, and lower the surge as hoped?",
  needs: "cold ohms, amperes and joules of the limiter (50 ohm 2 A 20 J)",
  sources: ["inrush-limiter-sheets", "from-memory"],
  cautions: ["thermistor-hot", "line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "thermistor", "capacitor", "rectifier").flatMap((life) => {
      const side = lineSide(model, life);
      return [...side.hotParts, ...side.neutralParts]
        .filter(({ part }) => part.kind === "thermistor")
        .flatMap((placed) => judge(model, life, placed));
    });
  },
};

function judge(model: ChassisModel, life: Life, { part, state }: Placed): Finding[] {
  const current = lineCurrent(model, life);
  const surge = switchOn(model, life, { hot: true });
  const bare = switchOn(model, life, { hot: true, bridged: new Set([part.id]) });
  if (current === undefined || surge === undefined || bare === undefined || state.main === undefined) return [];
  const { ratedAmps, joules: ratedJoules } = state;
  const solved = model.solve({ life, condition: current.condition, line: "high" });
  const running = solved.ok ? solved.steady.elements.get(part.id) : undefined;
  const found = `${part.asWritten.fitted ?? part.asWritten.marked ?? "limiter"}; ${amps(current.rmsAmps)} steady, ${joules(surge.filterJoules)} at switch-on`;
  const figures: Figure[] = [
    figure(
      "peak at switch-on with the limiter cold",
      surge.linePeakAmps,
      "A",
      "filters empty, crest of the highest line, limiter at its 25 degC resistance",
      "computed",
    ),
    figure(
      "peak at switch-on without it",
      bare.linePeakAmps,
      "A",
      "the same with the limiter bridged (hot, on a quick restart, it is nearly so)",
      "computed",
    ),
  ];
  if (running !== undefined) {
    figures.push(
      figure("resistance when warm", running.state?.ohms ?? null, "ohm", "heat balance of the disc at the steady current", "from-memory"),
    );
    figures.push(figure("voltage across it when warm", running.rmsVolts, "V", "RMS, highest line", "from-memory"));
    figures.push(figure("heat in it", running.watts, "W", "mean of v * i", "from-memory"));
  }
  const truth = `Its ${ratedAmps === undefined ? "ampere" : amps(ratedAmps)} rating is what it carries for good; it does not hold the surge at that. Cold it lets ${amps(surge.linePeakAmps)} through instead of ${amps(bare.linePeakAmps)}.`;
  if (ratedAmps === undefined || ratedJoules === undefined) {
    return [
      report(inrushLimiter, life, part, {
        severity: "unmeasured",
        title: `Ratings of ${part.name} not complete`,
        found,
        shouldBe: `at least ${amps(current.rmsAmps)} steady and ${joules(surge.filterJoules)}`,
        figures,
        why: truth,
        action: "Look up its steady current and its energy (joules, or the largest capacitance at a stated voltage).",
      }),
    ];
  }
  figures.unshift(
    atMost(current.rmsAmps, ratedAmps, {
      label: `steady current of ${part.name}`,
      unit: "A",
      how: `RMS in the line, ${current.condition}, highest line`,
      source: "inrush-limiter-sheets",
    }),
    atMost(surge.filterJoules, ratedJoules, {
      label: "energy at switch-on",
      unit: "J",
      how: "sum of C V^2 / 2 of the filter capacitors at the highest line",
      source: "inrush-limiter-sheets",
    }),
  );
  const shouldBe = `at most ${amps(ratedAmps)} and ${joules(ratedJoules)}`;
  const order = [
    {
      what: `inrush limiter ${ohms(state.main.value)} cold, at least ${amps(1.2 * current.rmsAmps)} steady, ${joules(1.5 * surge.filterJoules)}`,
      quantity: 1,
      for: part.name,
      why: "ratings exceeded",
    },
  ];
  const say = (said: Pick<Said, "severity" | "title" | "action"> & Partial<Said>) => [
    report(inrushLimiter, life, part, { found, shouldBe, figures, why: truth, ...said }),
  ];
  if (current.rmsAmps > ratedAmps)
    return say({
      severity: "replace",
      title: `${part.name} carries more than its rating`,
      action: "Fit one for at least 1.2 times the steady current, clear of wax, wire and cabinet by 10 mm or more.",
      order,
      holds: "full-line",
    });
  if (surge.filterJoules > ratedJoules)
    return say({
      severity: "replace",
      title: `${part.name} cannot take the switch-on energy`,
      action: `Fit one for at least ${joules(1.5 * surge.filterJoules)}; the disc may shatter.`,
      order,
      holds: "full-line",
    });
  if (current.rmsAmps < LEAST_SHARE * ratedAmps) {
    const drop = running === undefined ? "some volts" : volts(running.rmsVolts);
    return say({
      severity: "watch",
      title: `${part.name} is large for this set`,
      why: `At ${amps(current.rmsAmps)} it stays half warm and keeps ${drop} from the set. ${truth}`,
      action: "Measure the heater voltage; if it is low, fit one rated nearer the steady current.",
    });
  }
  return [
    good(inrushLimiter, life, part, {
      title: `${part.name} is within its ratings`,
      found,
      shouldBe,
      figures,
      why: truth,
      action: "After switching off wait a minute or two before switching on again: hot, it protects nothing.",
      cautions: ["thermistor-hot"],
    }),
  ];
}

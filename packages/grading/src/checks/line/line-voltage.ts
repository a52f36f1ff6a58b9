import type { ChassisModel, Check, Figure } from "../../model/index.ts";
import { atLeast, atMost, figure } from "../shared/figure.ts";
import { allIn } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { good, report } from "../shared/report.ts";
import { amps, nextRating, ohms, percent, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** Heaters: limit of receiving tubes, and what long life asks for. maker-sheet-6x4 and common-practice. */
const HEATER_LIMIT = 0.1;
const HEATER_TARGET = 0.05;
/** Secondary volts of small transformers in the trade, for bucking the line. common-practice. */
const BUCKING_VOLTS = [5, 6.3, 9, 12.6, 18, 24] as const;

/** Today's line against the one that the set was made for: heaters, B+ and what to do about it. */
export const lineVoltage: Check = {
  id: "line-voltage",
  area: "line",
  title: "Line voltage",
  question: "Is today's line higher than the set was made for, and what does that do to heaters and B+?",
  needs: "the design voltage of the set; windings and tubes for the heater volts",
  sources: ["maker-sheet-6x4", "ansi-c84-1", "iec-60038", "common-practice"],
  cautions: ["line-wiring-licensed", "hot-surfaces"],
  run(model) {
    if (!model.points.has(model.line.hot)) return [];
    const { designVolts, actualVolts, highVolts } = model.line;
    const now = heaterRatio(model, "actual") ?? actualVolts / designVolts;
    const highest = heaterRatio(model, "high") ?? highVolts / designVolts;
    const figures: Figure[] = [
      atMost(now, 1 + HEATER_LIMIT, {
        label: "heater voltage over its rating, today's line",
        unit: "",
        how: "highest of the simulated heaters, or line over design voltage",
        source: "maker-sheet-6x4",
      }),
      atMost(highest, 1 + HEATER_LIMIT, {
        label: "the same at the highest line",
        unit: "",
        how: `line ${volts(highVolts)}`,
        source: "maker-sheet-6x4",
      }),
      figure("line over design voltage", actualVolts / designVolts, "", `${volts(actualVolts)} over ${volts(designVolts)}`),
    ];
    const base = {
      found: `${volts(actualVolts)} (up to ${volts(highVolts)}) on a set made for ${volts(designVolts)}; heaters at ${percent(now)} of their rating`,
      shouldBe: `heaters within ${percent(HEATER_LIMIT)} of their rating, better ${percent(HEATER_TARGET)}`,
    };
    if (now >= 1 - HEATER_LIMIT && now <= 1 + HEATER_TARGET && highest <= 1 + HEATER_LIMIT) {
      return [
        good(lineVoltage, "restored", undefined, {
          ...base,
          figures,
          title: "The line fits the set",
          why: "Heaters stay within their limits.",
        }),
      ];
    }
    figures.push(...supplyFigures(model));
    if (now < 1 - HEATER_LIMIT) {
      const low = [
        atLeast(now, 1 - HEATER_LIMIT, {
          label: "heater voltage over its rating, today's line",
          unit: "",
          how: "highest of the simulated heaters, or line over design voltage",
          source: "maker-sheet-6x4",
        }),
        ...figures.slice(1),
      ];
      return [
        report(lineVoltage, "restored", undefined, {
          ...base,
          figures: low,
          severity: "adjust",
          title: "Heaters run below their limit",
          why: "Starved cathodes lose emission; rectifiers and power tubes suffer first.",
          action:
            "Measure the heaters at the sockets; set the voltage tap to the line; look for a limiter or a bad contact that drops volts.",
          holds: "service",
        }),
      ];
    }
    if (now > 1 + HEATER_LIMIT) {
      return [
        report(lineVoltage, "restored", undefined, {
          ...base,
          figures,
          severity: "adjust",
          title: `Today's line is too high for this set: heaters at ${percent(now)}`,
          why: "Cathodes evaporate, the transformer runs hot, and B+ and plate heat rise with it.",
          action: remedy(model),
          holds: "service",
        }),
      ];
    }
    return [
      report(lineVoltage, "restored", undefined, {
        ...base,
        figures,
        severity: "watch",
        title: `The line is on the high side: heaters at ${percent(now)}`,
        why: "Within what tubes stand, above what gives them a long life.",
        action: remedy(model),
      }),
    ];
  },
};

/** Largest ratio of a heater's voltage to its rating; of a series string: line over the sum of its heaters, when they nearly fill it. */
function heaterRatio(model: ChassisModel, line: "actual" | "high"): number | undefined {
  const solved = model.solve({ life: "restored", condition: "operating", line });
  if (!solved.ok) return undefined;
  const ratios = [...solved.compiled.origins].flatMap(([id, origin]) => {
    const heater = origin.aspect === "heater" ? model.parts.get(origin.part)?.lives.restored.heater : undefined;
    const across = solved.steady.elements.get(id)?.rmsVolts;
    if (heater === undefined || across === undefined) return [];
    // A tapped heater runs in series or with its halves in parallel: the nearer of the two is how it is wired.
    const [whole, half] = [across / heater.volts, across / (heater.parallel?.volts ?? heater.volts)];
    return [Math.abs(Math.log(whole)) <= Math.abs(Math.log(half)) ? whole : half];
  });
  if (ratios.length > 0) return Math.max(...ratios);
  if (model.isolation !== "transformerless") return undefined;
  const string = allIn(model, "restored", "load").find(({ part }) => part.role === "heaterString")?.state.ratedVolts;
  const sum = string ?? allIn(model, "restored").reduce((total, { state }) => total + (state.heater?.volts ?? 0), 0);
  const ratio = (line === "high" ? model.line.highVolts : model.line.actualVolts) / sum;
  return ratio > 0.8 && ratio < 1.25 ? ratio : undefined;
}

/** The highest supply point at design and at today's line. */
function supplyFigures(model: ChassisModel): Figure[] {
  const [design, actual] = (["design", "actual"] as const).map((line) => model.solve({ life: "restored", condition: "operating", line }));
  if (design?.ok !== true || actual?.ok !== true) return [];
  const [point, before] = [...design.steady.points].reduce(
    (best, [name, { meanVolts }]) => (meanVolts > best[1] ? [name, meanVolts] : best),
    ["", 0] as [string, number],
  );
  const after = actual.steady.points.get(point)?.meanVolts;
  if (before < 20 || after === undefined) return [];
  return [
    figure(`${point} at the design voltage`, before, "V", "mean, operating"),
    figure(`${point} at today's line`, after, "V", "mean, operating"),
  ];
}

function remedy(model: ChassisModel): string {
  const { designVolts, actualVolts, highVolts } = model.line;
  const current = lineCurrent(model, "restored", "actual");
  const excess = Math.max(actualVolts, (actualVolts + highVolts) / 2) - designVolts;
  if (excess <= 0)
    return "Measure the heaters at the sockets, and look for the wrong voltage tap or a transformer that is not the original.";
  const bucking = BUCKING_VOLTS.reduce((best, rating) => (Math.abs(rating - excess) < Math.abs(best - excess) ? rating : best));
  const secondary = current === undefined ? "" : ` at ${amps(1.25 * current.rmsAmps)} or more`;
  const dropped = actualVolts - designVolts;
  const series =
    current === undefined || dropped <= 0
      ? ""
      : ` A series resistor would be ${ohms(dropped / current.rmsAmps)}, bearing ${watts(dropped * current.rmsAmps)} (fit ${watts(nextRating(2 * dropped * current.rmsAmps, RESISTOR_WATTS))}), with worse regulation.`;
  return `Set the voltage tap higher where there is one; else buck the line with a transformer secondary of ${volts(bucking)}${secondary}, in opposition: the output must read less.${series}`;
}

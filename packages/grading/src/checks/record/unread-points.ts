import { READING_UNIT } from "@underchassis/dataset";
import type { ChassisModel, Check, Condition, Figure, Finding, Stage } from "../../model/index.ts";
import { figure } from "../shared/figure.ts";
import { asReading } from "../shared/readings.ts";
import { report } from "../shared/report.ts";

/** Order in which conditions are met at the bench. */
const BENCH_ORDER: readonly Condition["like"][] = ["cold", "tubes-out", "standby", "operating"];
/** A point of less than this is not worth a reading. */
const LEAST_VOLTS = 0.02;

/** What the templates say should be read and nobody has read since the work, with the value to expect. */
export const unreadPoints: Check = {
  id: "unread-points",
  area: "record",
  title: "Readings still to be taken",
  question: "Which readings that its templates ask for has nobody taken on the chassis as it stands?",
  needs: "stages with templates",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge", "one-hand-rule", "meter-ratings"],
  run(model): Finding[] {
    const conditions = [...model.conditions.values()].sort((a, b) => BENCH_ORDER.indexOf(a.like) - BENCH_ORDER.indexOf(b.like));
    return conditions.flatMap((condition) => {
      const figures = wanted(model, condition);
      return figures.length === 0 ? [] : [toTake(this, condition, figures)];
    });
  },
};

function toTake(check: Check, condition: Condition, figures: readonly Figure[]): Finding {
  return report(check, "restored", undefined, {
    severity: "unmeasured",
    condition: condition.id,
    title: `${figures.length} ${figures.length === 1 ? "reading" : "readings"} still to take: ${condition.title}`,
    found: "not read since the work",
    shouldBe: figures
      .map(
        ({ label, value, low, high, unit }) =>
          `${label} ${value === null ? "open" : text(value, unit)}${low === undefined || high === undefined ? "" : ` (${text(low, unit)} to ${text(high, unit)})`}`,
      )
      .join("; "),
    figures,
    why: "Where these agree no large fault is left; where one does not, it names the place.",
    action: `Read them in this order${condition.powered ? ", meter's common clipped on with the power off, one hand" : ", plug out, capacitors discharged"}, and note the line voltage.`,
    ...(condition.powered ? { holds: "service" as const } : {}),
  });
}

const text = (value: number, unit: string): string => asReading(value, unit === "ohm" ? "ohms" : unit === "A" ? "dc-amps" : "dc-volts");

/** Readings of the templates' lists for one condition, each once, with what the chassis as it stands should give. */
function wanted(model: ChassisModel, condition: Condition): Figure[] {
  const seen = new Set<string>();
  const compiled = model.compile({ life: "restored", condition: condition.id, line: "actual" });
  // Points joined by a wire are one point to a meter.
  const pointOf = (point: string) => compiled.pointOf(point) ?? point;
  const taken = new Set(
    model.readings
      .filter((reading) => reading.life === "restored" && reading.condition === condition.id)
      .map((reading) => `${pointOf(reading.at)} ${pointOf(reading.to)} ${reading.quantity}`),
  );
  return model.stages.flatMap((stage) =>
    stage.template.expected.flatMap((expected): Figure[] => {
      // Nobody opens a circuit for a direct current that the voltages on both sides tell.
      if (expected.condition !== condition.id || expected.quantity === "dc-amps") return [];
      const place = placeIn(model, stage, expected);
      const key = place === undefined ? "" : `${pointOf(place.at)} ${pointOf(place.to)} ${expected.quantity}`;
      if (place === undefined || seen.has(key)) return [];
      seen.add(key);
      if (taken.has(key)) return [];
      const prediction = model.predict(
        { life: "restored", condition: condition.id, line: "actual" },
        { quantity: expected.quantity, ...place },
      );
      if (
        prediction === undefined ||
        (expected.quantity.endsWith("volts") && Math.abs(prediction.high) < LEAST_VOLTS && Math.abs(prediction.low) < LEAST_VOLTS)
      )
        return [];
      const where = place.to === model.reference || expected.quantity.endsWith("amps") ? place.at : `${place.at} to ${place.to}`;
      const basics = figure(
        `${where} (${stage.title}, ${expected.quantity})`,
        Number.isFinite(prediction.nominal) ? prediction.nominal : null,
        READING_UNIT[expected.quantity],
        `simulation as it stands, ${condition.id}, line of today, meter of no load`,
      );
      return [
        Number.isFinite(prediction.high) && prediction.sigma > 0 ? { ...basics, low: prediction.low, high: prediction.high } : basics,
      ];
    }),
  );
}

function placeIn(
  model: ChassisModel,
  stage: Stage,
  expected: Stage["template"]["expected"][number],
): { at: string; to: string } | undefined {
  const to = expected.to === undefined ? model.reference : stage.points[expected.to];
  const at = expected.part === undefined ? (expected.at === undefined ? undefined : stage.points[expected.at]) : stage.parts[expected.part];
  return at === undefined || to === undefined || at === to ? undefined : { at, to };
}

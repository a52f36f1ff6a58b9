import { READING_UNIT } from "@underchassis/dataset";
import type { ChassisModel, Check, Finding } from "../../model/index.ts";
import { figure } from "../shared/figure.ts";
import { asReading, type JudgedReading, placeOf, standingReadings } from "../shared/readings.ts";
import { report } from "../shared/report.ts";
import { ohms, percent } from "../shared/words.ts";

/** From here on a meter's own load is worth saying. common-practice. */
const WORTH_SHARE = 0.05;

/** Readings that the meter itself pulls down, and what the point stands at without it. */
export const readingMeterLoading: Check = {
  id: "reading-meter-loading",
  area: "readings",
  title: "Meter loading",
  question: "Which readings does the meter itself pull down?",
  needs: "the meter's input resistance, or ohms per volt and range",
  sources: ["common-practice"],
  cautions: [],
  run(model) {
    return standingReadings(model).flatMap((judged) => judge(this, model, judged));
  },
};

function judge(check: Check, model: ChassisModel, { reading, prediction }: JudgedReading): Finding[] {
  if (prediction === undefined || !reading.quantity.endsWith("volts")) return [];
  const unloaded = model.predict({ life: reading.life, condition: reading.condition, line: reading.lineVolts ?? "actual" }, reading);
  if (unloaded === undefined || unloaded.nominal === 0) return [];
  const pulled = 1 - prediction.nominal / unloaded.nominal;
  if (pulled <= WORTH_SHARE || Math.abs(unloaded.nominal) < 0.1) return [];
  const without = reading.value / (1 - pulled);
  const unit = READING_UNIT[reading.quantity];
  return [
    report(check, reading.life, undefined, {
      severity: "watch",
      point: reading.at,
      condition: reading.condition,
      title: `The meter pulls ${placeOf(model, reading)} down by ${percent(pulled)}`,
      found: `${asReading(reading.value, reading.quantity)} with ${ohms(reading.loadOhms)} of meter across it`,
      shouldBe: `about ${asReading(without, reading.quantity)} without the meter`,
      figures: [
        figure("computed with the meter", prediction.nominal, unit, `${reading.meter.title}: ${ohms(reading.loadOhms)}`),
        figure("computed without", unloaded.nominal, unit, "same network, no meter"),
        figure("reading corrected", without, unit, "reading times computed without over computed with"),
      ],
      why: "The comparison with the computed value counts the meter in; a comparison with papers must count theirs in.",
      action: "Nothing to repair. For the point's own voltage use a meter of higher input resistance.",
      location: reading.location,
    }),
  ];
}

import { READING_UNIT } from "@underchassis/dataset";
import type { ChassisModel, Check, Finding } from "../../model/index.ts";
import { figure } from "../shared/figure.ts";
import { PAPER_SHARE, paperWindow } from "../shared/paperWindow.ts";
import { asReading, type JudgedReading, placeOf, standingReadings } from "../shared/readings.ts";
import { good, report } from "../shared/report.ts";
import { percent } from "../shared/words.ts";

/** Readings against what the maker's papers say. */
export const readingAgainstPublished: Check = {
  id: "reading-against-published",
  area: "readings",
  title: "Readings against the papers",
  question: "Does every reading lie where the maker's papers say?",
  needs: "the published value beside the reading",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    const within: string[] = [];
    const findings = standingReadings(model).flatMap((judged): Finding[] => {
      const { published } = judged.reading;
      if (published === undefined) return [];
      const window = paperWindow(published);
      if (judged.reading.value >= window.low && judged.reading.value <= window.high) {
        within.push(placeOf(model, judged.reading));
        return [];
      }
      return [outside(this, model, judged, window)];
    });
    if (within.length === 0) return findings;
    const summary = good(this, "restored", undefined, {
      title: `${within.length} ${within.length === 1 ? "reading lies" : "readings lie"} where the papers say`,
      found: within.join("; "),
      shouldBe: "within the published range",
      why: "The maker's own figures hold.",
    });
    return [...findings, summary];
  },
};

function outside(
  check: Check,
  model: ChassisModel,
  { reading, prediction, verdict }: JudgedReading,
  window: ReturnType<typeof paperWindow>,
): Finding {
  const { value, quantity, published } = reading;
  const limit = value < window.low ? window.low : window.high;
  const off = limit === 0 ? Number.POSITIVE_INFINITY : Math.abs(value - limit) / Math.abs(limit);
  const explained = verdict === "within";
  return report(check, reading.life, undefined, {
    severity: explained || off <= PAPER_SHARE ? "watch" : "adjust",
    point: reading.at,
    condition: reading.condition,
    title: `${placeOf(model, reading)}: ${asReading(value, quantity)}, the papers say ${published?.asWritten ?? ""}`,
    found: asReading(value, quantity),
    shouldBe: `${asReading(window.low, quantity)} to ${asReading(window.high, quantity)}`,
    figures: [
      {
        ...figure(
          "reading",
          Number.isFinite(value) ? value : null,
          READING_UNIT[quantity],
          `published ${published?.asWritten ?? ""}${window.widened ? `, ${percent(PAPER_SHARE)} either way since the papers give one figure` : ""}`,
          "job",
        ),
        ...(Number.isFinite(window.low) ? { low: window.low } : {}),
        ...(Number.isFinite(window.high) ? { high: window.high } : {}),
      },
      ...(prediction !== undefined && Number.isFinite(prediction.nominal)
        ? [
            {
              ...figure(
                "computed",
                prediction.nominal,
                READING_UNIT[quantity],
                "simulation with the parts as recorded, this meter, this line voltage",
              ),
              low: prediction.low,
              high: prediction.high,
            },
          ]
        : []),
    ],
    why: explained
      ? "The recorded parts explain this reading: the difference to the papers comes from the parts, the line voltage or the meter, not from an unknown fault."
      : "Neither the papers nor the recorded parts explain it.",
    action: explained
      ? "Compare the line voltage and the meter that the papers used, then the parts that were changed from the list."
      : "Start with the reading's stage: parts against the list, then its resistances with the power off.",
    location: reading.location,
  });
}

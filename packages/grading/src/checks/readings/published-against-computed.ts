import { READING_UNIT } from "@underchassis/dataset";
import type { ChassisModel, Check, Finding, Prediction, Reading } from "../../model/index.ts";
import { figure } from "../shared/figure.ts";
import { paperWindow } from "../shared/paperWindow.ts";
import { joined } from "../shared/phrases.ts";
import { asReading, keyOf, placeOf } from "../shared/readings.ts";
import { report } from "../shared/report.ts";
import { percent, volts } from "../shared/words.ts";

/** Ohms per volt of the meters that old papers were taken with, and their usual ranges. common-practice. */
const OLD_METERS = [1000, 5000, 20_000] as const;
const OLD_RANGES = [10, 50, 250, 500, 1000] as const;

interface Explanation {
  text: string;
  prediction: Prediction;
}

/** The maker's papers against the chassis as designed: where they disagree one of them is wrong, or they mean different things. */
export const publishedAgainstComputed: Check = {
  id: "published-against-computed",
  area: "readings",
  title: "Papers against the computed design",
  question: "Do the maker's published figures agree with the maker's own parts?",
  needs: "published values beside readings",
  sources: ["common-practice"],
  cautions: [],
  run(model) {
    const seen = new Set<string>();
    return model.readings.flatMap((reading) => {
      const key = `${keyOf(reading)} ${reading.published?.asWritten ?? ""}`;
      if (reading.published === undefined || seen.has(key)) return [];
      seen.add(key);
      if (plainlyAgrees(model, reading)) return [];
      const computed = designed(model, reading, "design");
      if (computed === undefined || !Number.isFinite(computed.nominal)) return [];
      return overlaps(reading, computed) ? [] : [disagreement(this, model, reading, computed)];
    });
  },
};

/**
 * The design on the design line or today's, without a meter: nobody knows which one the papers were read with. `ohms` puts one
 * in: nominal and window go down together.
 */
function designed(model: ChassisModel, reading: Reading, line: "design" | "actual", ohms?: number): Prediction | undefined {
  const situation = { life: "designed", condition: reading.condition, line } as const;
  const bare = model.predict(situation, reading);
  if (bare === undefined || ohms === undefined || bare.nominal === 0) return bare;
  const solved = model.solve({ ...situation, meter: { from: reading.at, to: reading.to, ohms } });
  const [from, to] = solved.ok ? [solved.compiled.pointOf(reading.at), solved.compiled.pointOf(reading.to)] : [];
  if (!solved.ok || from === undefined || to === undefined) return undefined;
  const nominal = solved.steady.read({ quantity: "dc-volts", from, to });
  const scale = nominal / bare.nominal;
  const ends = [bare.low * scale, bare.high * scale];
  return { ...bare, nominal, low: Math.min(...ends), high: Math.max(...ends) };
}

/** The computed value itself lies in the published range: no window is needed to see that they agree. */
function plainlyAgrees(model: ChassisModel, reading: Reading): boolean {
  if (reading.published === undefined || reading.quantity === "ohms" || reading.quantity.endsWith("amps")) return false;
  const solved = model.solve({ life: "designed", condition: reading.condition, line: "design" });
  const [from, to] = solved.ok ? [solved.compiled.pointOf(reading.at), solved.compiled.pointOf(reading.to)] : [];
  if (!solved.ok || from === undefined || to === undefined) return false;
  const quantity = reading.quantity as "dc-volts" | "ac-volts" | "ripple-volts";
  const value = solved.steady.read({ quantity, from, to });
  const window = paperWindow(reading.published);
  return value >= window.low && value <= window.high;
}

function overlaps(reading: Reading, { low, high }: Prediction): boolean {
  if (reading.published === undefined) return true;
  const window = paperWindow(reading.published);
  return low <= window.high && high >= window.low;
}

function disagreement(check: Check, model: ChassisModel, reading: Reading, computed: Prediction): Finding {
  const { quantity, published } = reading;
  const window = paperWindow(published ?? { low: 0, high: 0 });
  const above = computed.nominal > window.high;
  const explanations = explain(model, reading);
  const middle = (window.low + window.high) / 2;
  const ratio = computed.nominal / middle;
  const doubts = quantity.endsWith("volts") && reading.condition !== "cold" ? windingsIn(model) : [];
  return report(check, "designed", undefined, {
    severity: "watch",
    point: reading.at,
    condition: reading.condition,
    title: `${placeOf(model, reading)}: papers say ${published?.asWritten ?? ""}, the maker's own parts give ${asReading(computed.nominal, quantity)}`,
    found: `${asReading(computed.low, quantity)} to ${asReading(computed.high, quantity)} computed as designed`,
    shouldBe: `${asReading(window.low, quantity)} to ${asReading(window.high, quantity)} by the papers`,
    figures: [
      {
        ...figure(
          "computed as designed",
          computed.nominal,
          READING_UNIT[quantity],
          `simulation with the marked values on ${volts(model.line.designVolts)}, no meter`,
        ),
        low: computed.low,
        high: computed.high,
      },
      ...(middle === 0 ? [] : [figure("computed over published", ratio, "", "nominal over the middle of the published range")]),
      ...explanations.map(({ text, prediction }) =>
        figure(`computed ${text}`, prediction.nominal, READING_UNIT[quantity], "simulation as designed"),
      ),
    ],
    why:
      explanations.length > 0
        ? `The papers fit when it is computed ${joined(explanations.map(({ text }) => text))}.`
        : `Neither today's line voltage nor an old meter explains ${middle === 0 ? "it" : percent(Math.abs(ratio - 1))}: ${above ? "a winding voltage or a load in the record" : "a winding voltage, a tube or a resistor in the record"} is likelier wrong than the maker's table, but tables have misprints too.`,
    action: `Check${doubts.length === 0 ? "" : ` the winding voltages of ${joined(doubts)} (measured unloaded at a known line voltage),`} the tube types and the loads that the papers count, and on which line voltage and meter their figures were taken. Until then trust neither figure alone.`,
    location: reading.location,
  });
}

/** What the papers may have meant: today's line instead of the design line, or a meter that pulls the point down. */
function explain(model: ChassisModel, reading: Reading): Explanation[] {
  const found: Explanation[] = [];
  const today = designed(model, reading, "actual");
  if (today !== undefined && overlaps(reading, today)) found.push({ text: `on ${volts(model.line.actualVolts)} line`, prediction: today });
  if (reading.quantity !== "dc-volts" || reading.published === undefined) return found;
  const range = OLD_RANGES.find((full) => full >= Math.abs(reading.published?.high ?? 0)) ?? 1000;
  for (const ohmsPerVolt of OLD_METERS) {
    const old = designed(model, reading, "design", ohmsPerVolt * range);
    if (old !== undefined && overlaps(reading, old)) {
      found.push({ text: `with a meter of ${ohmsPerVolt / 1000} kohm/V on its ${range} V range`, prediction: old });
      break;
    }
  }
  return found;
}

function windingsIn(model: ChassisModel): string[] {
  return [...model.parts.values()].filter(({ kind }) => kind === "transformer").map(({ name }) => name);
}

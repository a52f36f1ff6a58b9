import { READING_UNIT } from "@underchassis/dataset";
import type { ChassisModel, Check, Finding, Prediction, Reading } from "../../model/index.ts";
import { predictCold } from "../shared/coldOhms.ts";
import { figure } from "../shared/figure.ts";
import { joined } from "../shared/phrases.ts";
import { asReading, isSupplyPoint, type JudgedReading, placeOf, stagesAt, standingReadings } from "../shared/readings.ts";
import { good, report } from "../shared/report.ts";
import { ohms, percent } from "../shared/words.ts";

/** A supply line below this share of its lowest expected value is being pulled down by something that is not in the record. */
const OVERLOADED_SHARE = 0.75;
/** A supply line of less than this share of its lowest expected cold resistance is as good as shorted. */
const SHORTED_SHARE = 0.25;

/** Every reading against what the parts as recorded should give on that meter at that line voltage. */
export const readingAgainstComputed: Check = {
  id: "reading-against-computed",
  area: "readings",
  title: "Readings against the computed chassis",
  question: "Does every reading agree with what the parts as recorded should give?",
  needs: "readings with their condition, and the parts around them",
  sources: ["common-practice"],
  cautions: ["high-voltage-stored-charge", "one-hand-rule"],
  run(model) {
    const standing = standingReadings(model);
    const findings = standing.flatMap((judged) => judge(this, model, judged));
    for (const life of ["found", "restored"] as const) {
      const within = standing.filter(({ reading, verdict }) => reading.life === life && verdict === "within");
      if (within.length === 0) continue;
      findings.push(
        good(this, life, undefined, {
          title: `${within.length} ${within.length === 1 ? "reading agrees" : "readings agree"} with the computed chassis`,
          found: within.map(({ reading }) => placeOf(model, reading)).join("; "),
          shouldBe: "within the window of part tolerances, line and meter",
          why: "Readings in their windows mean that no large fault hides behind these points.",
        }),
      );
    }
    return findings;
  },
};

function judge(check: Check, model: ChassisModel, { reading, prediction, verdict }: JudgedReading): Finding[] {
  if (prediction === undefined || verdict === "within" || verdict === "not-computed") return [];
  const { value, quantity } = reading;
  const far = verdict === "far-outside";
  const low = value < prediction.nominal;
  const unit = READING_UNIT[quantity];
  const supply = isSupplyPoint(model, reading.life, reading.at) && (quantity === "dc-volts" || quantity === "ohms");
  const dragged = far && supply && low && value < (quantity === "ohms" ? SHORTED_SHARE : OVERLOADED_SHARE) * prediction.low;
  const severity = dragged ? "danger" : far ? "adjust" : "watch";
  const cold = coldCheck(model, reading);
  const changed = reading.life === "found" && changedNear(model, reading);
  return [
    report(check, reading.life, undefined, {
      severity,
      point: reading.at,
      condition: reading.condition,
      title: `${placeOf(model, reading)}: ${asReading(value, quantity)}, ${far ? "far " : ""}${low ? "below" : "above"} what the parts as recorded give`,
      found: asReading(value, quantity),
      shouldBe: `${asReading(prediction.low, quantity)} to ${asReading(prediction.high, quantity)}`,
      figures: [
        {
          ...figure(
            "reading",
            Number.isFinite(value) ? value : null,
            unit,
            `${reading.meter.title}, as written ${reading.asWritten}`,
            "job",
          ),
          low: prediction.low,
          high: prediction.high,
        },
        figure(
          "expected",
          Number.isFinite(prediction.nominal) ? prediction.nominal : null,
          unit,
          `simulation of the chassis as ${reading.life}, meter of ${ohms(reading.loadOhms)} included, line ${reading.lineVolts ?? "as in this condition"}`,
        ),
        ...(Number.isFinite(prediction.sigma) && prediction.sigma > 0
          ? [
              figure(
                "deviation in standard deviations",
                (value - prediction.nominal) / prediction.sigma,
                "",
                "(reading - expected) / sigma of tolerances, line and meter",
              ),
            ]
          : []),
        ...(cold === undefined ? [] : [cold.figure]),
      ],
      why: whyOf(model, reading, prediction, far, low, dragged),
      action: `${changed ? "Parts have been changed here since: read it again first. " : ""}${cold === undefined ? "Read it again with the meter's leads at the point itself." : cold.text}`,
      ...(dragged || (far && supply && !changed) ? { holds: "full-line" as const } : {}),
      ...stageAndPlace(model, reading),
    }),
  ];
}

/** Whether work has been done since at this point or in its stage, so that a reading of before may be out of date. */
function changedNear(model: ChassisModel, { at }: Reading): boolean {
  const stages = new Set(stagesAt(model, at).map(({ id }) => id));
  const near = new Set(model.points.get(at) ?? []);
  return [...model.parts.values()].some(
    (part) =>
      part.change !== "none" && part.change !== "planned" && (near.has(part.id) || (part.stage !== undefined && stages.has(part.stage))),
  );
}

function stageAndPlace(model: ChassisModel, reading: Reading): Pick<Finding, "location"> & { stage?: string } {
  const stage = stagesAt(model, reading.at)[0];
  return { location: reading.location, ...(stage === undefined ? {} : { stage: stage.id }) };
}

function whyOf(model: ChassisModel, reading: Reading, prediction: Prediction, far: boolean, low: boolean, dragged: boolean): string {
  const spread = prediction.contributors.slice(0, 2).map(({ part, share }) => `${part} (${percent(share)})`);
  const pieces = [
    dragged
      ? "Something draws far more than the record accounts for, or is wired elsewhere than recorded."
      : far
        ? "No tolerance of the recorded parts explains it: a value, a connection or a tube is not what the record says, or the reading is not."
        : "Outside the usual spread, though the worst case of all tolerances may still reach it.",
    spread.length === 0 ? "" : `The window's width comes mostly from ${joined(spread)}.`,
    likely(model, reading, low),
  ];
  return pieces.filter((piece) => piece !== "").join(" ");
}

const FREQUENCY = ["very-common", "common", "occasional", "rare"];

/** Faults of the stages at this point whose known symptom goes the same way, commonest first. */
function likely(model: ChassisModel, { at, quantity }: Reading, low: boolean): string {
  const direction = low ? "low" : "high";
  const ids = new Set(stagesAt(model, at).flatMap((stage) => stage.template.failureNotes ?? []));
  const notes = [...ids].flatMap((id) => {
    const note = model.dataset.failureNotes.get(id);
    return note !== undefined &&
      note.symptom.direction === direction &&
      (note.symptom.quantity === undefined || note.symptom.quantity === quantity)
      ? [note]
      : [];
  });
  notes.sort((a, b) => FREQUENCY.indexOf(a.frequency ?? "rare") - FREQUENCY.indexOf(b.frequency ?? "rare"));
  return notes.length === 0
    ? ""
    : `Known to go this way here: ${joined(notes.slice(0, 3).map(({ title }) => title.charAt(0).toLowerCase() + title.slice(1)))}.`;
}

/** The same two points with the power off: what the ohmmeter should show if everything is as recorded. */
function coldCheck(model: ChassisModel, reading: Reading): { text: string; figure: Finding["figures"][number] } | undefined {
  if (!reading.quantity.endsWith("volts")) return undefined;
  const window = predictCold(model, "restored", reading.at, reading.to);
  if (window === undefined) return undefined;
  const [expected, low, high] = [window.nominal, window.low, window.high].map((value) => asReading(value, "ohms"));
  return {
    text: `Plug out, capacitors discharged and metered: ${reading.at} to ${reading.to} should read ${expected}${Number.isFinite(window.nominal) ? ` (${low} to ${high})` : ""}. If it does, look at what only happens under voltage (leakage, tubes, gas); if not, follow the resistances point by point.`,
    figure: {
      ...figure(
        "cold resistance to expect",
        Number.isFinite(window.nominal) ? window.nominal : null,
        "ohm",
        `${reading.at} to ${reading.to}, power off, tubes cold, parts as they stand now`,
      ),
      ...(Number.isFinite(window.high) ? { low: window.low, high: window.high } : {}),
    },
  };
}

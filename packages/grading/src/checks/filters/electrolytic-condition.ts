import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { filtersIn, isElectrolytic, isOriginal, leakageLimit, typicalEsr } from "../shared/electrolytics.ts";
import { atLeast, atMost } from "../shared/figure.ts";
import type { Placed } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { amps, CAPACITOR_VOLTS, farads, nextRating, ohms, percent, volts } from "../shared/words.ts";

/** Originals made before this are older than thirty years. */
const OLD_BEFORE = 1995;
/** common-practice: capacitance below this share of the marking is out. */
const LEAST_SHARE = 0.8;
/** Bypass capacitors up to this rating neither burst violently nor burn a rectifier when they fail. common-practice. */
const LOW_VOLTS = 100;
/** esr-guide: reject above two to three times the typical value. */
const ESR_FACTOR = 3;
/** Reforming current that most hold to. capacitor-maker-notes and restorer-posts: 2 to 10 mA. */
const REFORM_AMPS = 5e-3;

/** Electrolytics: age, leakage, series resistance, capacitance, and how to reform. */
export const electrolyticCondition: Check = {
  id: "electrolytic-condition",
  area: "filters",
  title: "Condition of electrolytics",
  question: "Are the electrolytics sound, by what was measured on them?",
  needs: "leakage at working voltage, capacitance and ESR, out of circuit",
  sources: ["jan-c-62", "esr-guide", "capacitor-maker-notes", "common-practice"],
  cautions: ["electrolytic-burst", "high-voltage-stored-charge", "meter-ratings"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      filtersIn(model, life).flatMap((placed) => (isElectrolytic(placed.part, placed.state) ? judge(model, life, placed) : [])),
    );
  },
};

function judge(model: ChassisModel, life: Life, placed: Placed): Finding[] {
  const { part, state } = placed;
  const original = isOriginal(part, life);
  const measured = original ? part.measured : part.fittedMeasured;
  const most = worst(stresses(model, life).get(part.id), "maxVolts")?.maxVolts ?? 0;
  const marked = original ? part.lives.designed.main?.value : (state.marking?.value ?? state.main?.value);
  const wanted = nextRating(Math.max(state.ratedVolts ?? 0, most / 0.9), CAPACITOR_VOLTS);
  const order = [
    {
      what: `capacitor ${marked === undefined ? "" : farads(marked)} ${volts(wanted)} 105 C`,
      quantity: 1,
      for: part.name,
      why: "electrolytic out of order",
    },
  ];
  if (measured?.condition === "shorted") {
    return [
      report(electrolyticCondition, life, part, {
        severity: "danger",
        title: `${part.name} is shorted`,
        found: measured.asWritten,
        shouldBe: "no short",
        why: "The rectifier, the winding or the line feeds it until something burns.",
        action: "Replace it, and every section in the same can, before any power.",
        order,
        holds: "current-limited",
      }),
    ];
  }
  const figures = measuredFigures(model, placed, original, marked);
  const bad = figures.filter(({ margin }) => margin !== undefined && margin < 0);
  if (bad.length > 0) {
    const leaky = bad.some(({ unit }) => unit === "A");
    const percentLeft = bad.map((one) => one.label).join(", ");
    return [
      report(electrolyticCondition, life, part, {
        severity: "replace",
        title: `${part.name} is out of order: ${percentLeft}`,
        found: measured?.asWritten ?? "",
        shouldBe: "within the limits shown",
        figures,
        why: leaky
          ? "A leaky electrolytic heats itself until it bursts, and overloads the rectifier."
          : "A dried-out electrolytic filters no longer: hum, coupling between stages, hot rectifier.",
        action: leaky
          ? `Replace it; or reform it once: ${reforming(state.ratedVolts)} Then measure again.`
          : "Replace it, and with it every section in the same can.",
        order,
        holds: "full-line",
      }),
    ];
  }
  const knowsLeak = measured?.leakAmps !== undefined || measured?.leakOhms !== undefined;
  if (original && !knowsLeak && (model.era ?? OLD_BEFORE) < OLD_BEFORE) {
    return [
      report(electrolyticCondition, life, part, {
        severity: "replace",
        title: `${part.name} is an original whose leakage nobody has measured`,
        found: `electrolytic of about ${model.era}${measured === undefined ? ", not measured" : `, ${measured.asWritten}`}`,
        shouldBe: leakText(model, marked, state.ratedVolts),
        figures,
        why: "Its oxide thins in storage; put on full voltage at once it may short or burst.",
        action: `Replace it; or take it out of circuit and reform it: ${reforming(state.ratedVolts)} Enter the leakage that is left.`,
        order,
        holds: (state.ratedVolts ?? Number.POSITIVE_INFINITY) <= LOW_VOLTS ? "service" : "full-line",
      }),
    ];
  }
  if (figures.length === 0) return [];
  return [
    good(electrolyticCondition, life, part, {
      title: `${part.name} measures well`,
      found: measured?.asWritten ?? "",
      shouldBe: "within the limits shown",
      figures,
      why: "Leakage, resistance and capacitance as measured are within their limits.",
    }),
  ];
}

function measuredFigures(model: ChassisModel, { part, state }: Placed, original: boolean, marked: number | undefined): Figure[] {
  const measured = original ? part.measured : part.fittedMeasured;
  const rated = state.ratedVolts;
  if (measured === undefined) return [];
  const figures: Figure[] = [];
  const leak =
    measured.leakAmps ??
    (measured.leakOhms === undefined || rated === undefined ? undefined : (measured.atVolts ?? rated) / measured.leakOhms);
  const limit = marked === undefined || rated === undefined ? undefined : leakageLimit(model, marked, rated);
  if (leak !== undefined && limit !== undefined) {
    figures.push(
      atMost(leak, limit, {
        label: "leakage",
        unit: "A",
        how: `measured${measured.atVolts === undefined ? "" : ` at ${volts(measured.atVolts)}`}; limit k C + 0.3 mA for ${farads(marked ?? 0)} ${volts(rated ?? 0)}`,
        source: "jan-c-62",
      }),
    );
  }
  const esr = marked === undefined || rated === undefined ? undefined : typicalEsr(model, marked, rated);
  if (measured.esrOhms !== undefined && esr !== undefined) {
    figures.push(
      atMost(measured.esrOhms, ESR_FACTOR * esr, {
        label: "series resistance",
        unit: "ohm",
        how: `measured; limit ${ESR_FACTOR} times the typical ${ohms(esr)} of a new part of this size`,
        source: "esr-guide",
      }),
    );
  }
  if (measured.value !== undefined && measured.circuit === "out" && marked !== undefined) {
    figures.push(
      // 16 uF is 80 % of 20 uF, whatever binary fractions make of it.
      atLeast(measured.value, Number((LEAST_SHARE * marked).toPrecision(9)), {
        label: "capacitance",
        unit: "F",
        how: `measured; limit ${percent(LEAST_SHARE)} of ${farads(marked)}`,
        source: "common-practice",
      }),
    );
  }
  return figures;
}

function leakText(model: ChassisModel, marked: number | undefined, rated: number | undefined): string {
  const limit = marked === undefined || rated === undefined ? undefined : leakageLimit(model, marked, rated);
  return limit === undefined ? "leakage within the limit of its size" : `at most ${amps(limit)} leakage at ${volts(rated ?? 0)}`;
}

/** R = V / 5 mA, so that a short loads it with no more. */
function reforming(rated: number | undefined): string {
  if (rated === undefined)
    return "from a bench supply through a resistor of volts / 5 mA, in steps, until the leakage is within its limit; stop when it no longer falls or the can warms.";
  return `feed ${volts(rated)} through ${ohms(rated / REFORM_AMPS)} (5 mA into a short), in steps, until the leakage is within its limit; stop after two hours without a fall, or when the can warms. Discharge it afterwards.`;
}

import type { ChassisModel, Check, Figure, Finding, Life, Part } from "../../model/index.ts";
import { isOriginal } from "../shared/electrolytics.ts";
import { atLeast, atMost } from "../shared/figure.ts";
import { allIn, endsOf, type Placed } from "../shared/layout.ts";
import { lineDuty, lineSide } from "../shared/lineSide.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { farads, nextRating, ohms, volts } from "../shared/words.ts";

/** F10, common-practice: shift of the next grid that leakage may cause. */
const GRID_SHIFT_VOLTS = 0.1;
/** common-practice: grid resistor taken where none is found. */
const USUAL_GRID_OHMS = 470e3;
/** from-memory (bathtub and bypass sections): out below the first, suspect below the second. */
const BYPASS_OUT_OHMS = 20e6;
const BYPASS_SUSPECT_OHMS = 100e6;
/** Film ratings in the trade. common-practice. */
const FILM_VOLTS = [100, 250, 400, 630, 1000, 1600] as const;

type Use = "coupling" | "bypass";

/** Paper capacitors left in place: which must go unseen, which may stay by their leakage. */
export const paperCapacitorCondition: Check = {
  id: "paper-capacitor-condition",
  area: "filters",
  title: "Condition of paper capacitors",
  question: "Are paper capacitors left where a leak does harm?",
  needs: "leakage at working voltage, one lead lifted",
  sources: ["leakage-text", "common-practice", "from-memory"],
  cautions: ["high-voltage-stored-charge", "meter-ratings"],
  run(model) {
    return judgedLives(model).flatMap((life) => {
      const side = lineSide(model, life);
      return partsIn(model, life, "capacitor").flatMap((placed): Finding[] => {
        const { part, state } = placed;
        if ((state.dielectric !== "paper" && state.dielectric !== "oil") || !isOriginal(part, life)) return [];
        // What lies in the line is judged by its safety class, whatever it is made of.
        if (lineDuty(placed, side) !== undefined) return [];
        return [judge(model, life, placed, part.duty === "coupling" ? "coupling" : "bypass")];
      });
    });
  },
};

function judge(model: ChassisModel, life: Life, placed: Placed, use: Use): Finding {
  const { part, state } = placed;
  const most = worst(stresses(model, life).get(part.id), "maxVolts")?.maxVolts ?? state.ratedVolts ?? 400;
  const wanted = nextRating(Math.max(state.ratedVolts ?? 0, 1.25 * most), FILM_VOLTS);
  const value = state.marking?.value ?? state.main?.value ?? 0;
  const replacement = `film, ${farads(value)} ${volts(wanted)}`;
  const order = [
    {
      what: `film capacitor ${farads(value)} ${volts(wanted)}`,
      quantity: 1,
      for: part.name,
      why: "paper",
    },
  ];
  const leak = state.leak?.value ?? (part.measured?.leakOhms === undefined ? undefined : part.measured.leakOhms);
  const figures = leak === undefined ? [] : leakFigures(model, life, placed, use, leak, most);
  const found = `paper capacitor of about ${model.era ?? "unknown age"}${leak === undefined ? ", leakage not measured" : `, ${ohms(leak)}`}`;
  const bad = figures.some(({ margin }) => (margin ?? 0) < 0);
  if (use === "coupling") {
    const why =
      "A leak here lifts the next grid: the tube draws too much, and burns its cathode resistor, the output transformer and the rectifier.";
    return report(paperCapacitorCondition, life, part, {
      severity: "replace",
      title: `${part.name} is paper in a coupling position: replace on sight`,
      found,
      shouldBe: replacement,
      figures,
      why: `${why} A test with a few volts passes parts that leak at working voltage.`,
      action: `Fit ${replacement}, whatever this one measures.`,
      order,
      holds: "full-line",
    });
  }
  if (leak === undefined) {
    return report(paperCapacitorCondition, life, part, {
      severity: "unmeasured",
      title: `Leakage of ${part.name} not measured`,
      found,
      shouldBe: `above ${ohms(BYPASS_SUSPECT_OHMS)} at working voltage`,
      why: "Leaky bypasses load and burn the resistors that feed them.",
      action: `Lift one lead and measure at ${volts(Math.max(50, most))}, after two minutes; or fit ${replacement}.`,
      order,
    });
  }
  if (bad)
    return report(paperCapacitorCondition, life, part, {
      severity: "replace",
      title: `${part.name} leaks: ${ohms(leak)}`,
      found,
      shouldBe: replacement,
      figures,
      why: "It loads and burns the resistor that feeds it.",
      action: `Fit ${replacement}, then measure the resistor that feeds it.`,
      order,
      holds: "service",
    });
  if (leak < BYPASS_SUSPECT_OHMS)
    return report(paperCapacitorCondition, life, part, {
      severity: "watch",
      title: `${part.name} leaks a little`,
      found,
      shouldBe: `above ${ohms(BYPASS_SUSPECT_OHMS)}`,
      figures,
      why: "Leakage grows with warmth and years.",
      action: `Fit ${replacement} when the set is open next.`,
      order,
    });
  return good(paperCapacitorCondition, life, part, {
    title: `${part.name} holds`,
    found,
    shouldBe: `above ${ohms(BYPASS_SUSPECT_OHMS)}`,
    figures,
    why: "Leakage at working voltage is small.",
  });
}

/** Coupling: dV = V Rg / (Rleak + Rg) at the next grid. Elsewhere: leakage resistance against the usual limit. */
function leakFigures(model: ChassisModel, life: Life, { part, state }: Placed, use: Use, leak: number, most: number): Figure[] {
  if (use !== "coupling")
    return [
      atLeast(leak, BYPASS_OUT_OHMS, {
        label: `leakage resistance of ${part.name}`,
        unit: "ohm",
        how: "measured, one lead lifted",
        source: "from-memory",
      }),
    ];
  const grid = gridOhms(model, life, part, state);
  return [
    atMost((most * grid) / (leak + grid), GRID_SHIFT_VOLTS, {
      label: "shift of the next grid",
      unit: "V",
      how: `V Rg / (Rleak + Rg) with ${volts(most)}, ${ohms(grid)}, ${ohms(leak)}`,
      source: "common-practice",
    }),
  ];
}

function gridOhms(model: ChassisModel, life: Life, part: Part, state: Placed["state"]): number {
  const ends: readonly string[] = endsOf(state) ?? [];
  const leaks = allIn(model, life, "resistor").filter(
    (placed) =>
      placed.part !== part && placed.part.duty === "grid-leak" && endsOf(placed.state)?.some((point) => ends.includes(point)) === true,
  );
  return leaks[0]?.state.main?.value ?? USUAL_GRID_OHMS;
}

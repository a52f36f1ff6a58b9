import type { ChassisModel, Life, Part, PartState } from "../../model/index.ts";
import type { Placed } from "./layout.ts";
import { partsIn } from "./lives.ts";
import { numberIn, rowsOf } from "./tables.ts";

/** Polarised capacitors, and whatever does a filter's duty. */
export function isFilter(part: Part, state: PartState): boolean {
  return part.kind === "capacitor" && (isElectrolytic(part, state) || /^(filter|decoupling)/.test(part.duty ?? ""));
}

/** Whether a capacitor is polarised in the life that is judged. */
export function isElectrolytic(part: Part, state: PartState): boolean {
  return state.dielectric === "electrolytic" || state.dielectric === "tantalum" || (part.polarised && state.dielectric === undefined);
}

/** Filter capacitors to judge in a life; of a plan, those that it touches. */
export function filtersIn(model: ChassisModel, life: Life): Placed[] {
  return partsIn(model, life, "capacitor").filter(({ part, state }) => isFilter(part, state));
}

/** True when the part is still the maker's: nothing fitted in its place in this life. */
export function isOriginal(part: Part, life: Life): boolean {
  return (
    part.lives.designed.present && (part.change === "none" || (part.change === "planned" && life !== "planned") || part.change === "moved")
  );
}

/**
 * Largest leakage current in amperes of an electrolytic in order: k C + 0.3 mA with C in microfarads and k by rated voltage (JAN-C-62).
 *
 * @returns undefined when the rating lies outside the table
 */
export function leakageLimit(model: ChassisModel, farads: number, ratedVolts: number): number | undefined {
  const row = rowsOf(model, "electrolytic-leakage").find(
    (candidate) =>
      ratedVolts > (numberIn(candidate, "aboveVolts") ?? Number.POSITIVE_INFINITY) && ratedVolts <= (numberIn(candidate, "toVolts") ?? 0),
  );
  const [k, plus] = row === undefined ? [] : [numberIn(row, "milliampsPerMicrofarad"), numberIn(row, "plusMilliamps")];
  return k === undefined || plus === undefined ? undefined : (k * farads * 1e6 + plus) / 1000;
}

/** Typical equivalent series resistance of a new part, from the nearest row by capacitance and voltage; undefined far from any. */
export function typicalEsr(model: ChassisModel, farads: number, ratedVolts: number): number | undefined {
  const distance = (microfarads: number, volts: number) =>
    Math.abs(Math.log((farads * 1e6) / microfarads)) + 0.3 * Math.abs(Math.log(ratedVolts / volts));
  let best: { ohms: number; off: number } | undefined;
  for (const row of rowsOf(model, "electrolytic-esr")) {
    const [microfarads, volts, typical] = [numberIn(row, "microfarads"), numberIn(row, "ratedVolts"), numberIn(row, "typicalOhms")];
    if (microfarads === undefined || volts === undefined || typical === undefined) continue;
    const off = distance(microfarads, volts);
    // ESR goes with 1 / C: carry the row over to this capacitance.
    if (best === undefined || off < best.off) best = { ohms: (typical * microfarads) / (farads * 1e6), off };
  }
  return best === undefined || best.off > 1 ? undefined : best.ohms;
}

import { nearestPreferred } from "@underchassis/calc";
import { primaryOf } from "../../compile/elements.ts";
import type { ChassisModel, Check, Finding, Life, PartState } from "../../model/index.ts";
import { WINDING_GUESS } from "../../resolve/defaults.ts";
import { atLeast } from "../shared/figure.ts";
import { endsOf, joinedIn, pointNames } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { isTube, rectifierPoints, rectifiersIn, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { nextRating, ohms, RESISTOR_WATTS, watts } from "../shared/words.ts";

interface SupplyResistance {
  ohms: number;
  how: string;
  measured: boolean;
  /** RMS volts a plate, for limits that depend on it. */
  plateVolts: number;
}

/** Effective resistance in each plate's supply against the least that a rectifier tube is published for. */
export const rectifierSupplyResistance: Check = {
  id: "rectifier-supply-resistance",
  area: "rectifiers",
  title: "Rectifier plate supply resistance",
  question: "Is there enough resistance in each plate's supply to keep the pulses down?",
  needs: "measured wire resistance of the primary and the high-voltage winding",
  sources: ["rc-30", "from-memory"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      rectifiersIn(model, life).flatMap(({ part, state }): Finding[] => {
        if (!isTube(state) || reservoirs(model, life, state).length === 0) return [];
        const plates = rectifierPoints(state).plates.flatMap((plate) => resistanceAt(model, life, plate) ?? []);
        const supply = plates.reduce<SupplyResistance | undefined>(
          (least, one) => (least === undefined || one.ohms < least.ohms ? one : least),
          undefined,
        );
        const limit = supply === undefined ? undefined : limitOf(model, state, supply.plateVolts);
        if (supply === undefined || limit === undefined) return [];
        const figures = [
          atLeast(supply.ohms, limit, {
            label: `supply resistance of each plate of ${part.name}`,
            unit: "ohm",
            how: supply.how,
            source: state.limits?.source ?? "rc-30",
            ...(supply.measured ? {} : { low: supply.ohms * (1 - WINDING_GUESS.minus), high: supply.ohms * (1 + WINDING_GUESS.plus) }),
          }),
        ];
        const base = {
          found: `${ohms(supply.ohms)} a plate${supply.measured ? "" : " (windings not measured)"}`,
          shouldBe: `at least ${ohms(limit)}`,
          figures,
        };
        const guessed =
          !supply.measured && supply.ohms * (1 + WINDING_GUESS.plus) >= limit && supply.ohms * (1 - WINDING_GUESS.minus) < limit;
        if (guessed)
          return [
            report(rectifierSupplyResistance, life, part, {
              ...base,
              severity: "unmeasured",
              title: `Supply resistance of ${part.name} rests on a guess`,
              why: "The guess is too rough to tell which side of the limit it lies on.",
              action: "Measure the primary and the high-voltage winding, unplugged and discharged, end to end.",
              cautions: [],
            }),
          ];
        if (supply.ohms >= limit)
          return [
            good(rectifierSupplyResistance, life, part, {
              ...base,
              title: `Supply resistance suits ${part.name}`,
              why: "Winding and primary together keep the pulses down.",
            }),
          ];
        const add = nearestPreferred(limit - supply.ohms, "E12", "up");
        const rms = worst(stresses(model, life).get(part.id), "rmsAmps")?.rmsAmps ?? 0;
        const heat = nextRating(Math.max(1, 2 * rms * rms * add), RESISTOR_WATTS);
        return [
          report(rectifierSupplyResistance, life, part, {
            ...base,
            severity: "adjust",
            title: `Too little resistance ahead of ${part.name}`,
            why: "Pulses into the first capacitor exceed what the tube is published for.",
            action: `Add ${ohms(add)}, ${watts(heat)}, in each plate lead, or lower the first capacitor.`,
            holds: "service",
            order: [
              {
                what: `wirewound resistor ${ohms(add)} ${watts(heat)}`,
                quantity: rectifierPoints(state).plates.length,
                for: part.name,
                why: "plate supply resistance",
              },
            ],
          }),
        ];
      }),
    );
  },
};

/** R = half of the winding + n^2 times the primary + what lies in the plate lead; without a transformer, what lies in the lead. */
function resistanceAt(model: ChassisModel, life: Life, pin: string): SupplyResistance | undefined {
  const plate = pointNames(model, life)(pin);
  const direct = windingAt(model, life, plate);
  if (direct !== undefined) return direct;
  for (const { part, state } of joinedIn(model, life, "resistor", "thermistor")) {
    const ends = endsOf(state);
    const value = state.main?.value;
    const other = ends?.[0] === plate ? ends[1] : ends?.[1] === plate ? ends[0] : undefined;
    if (other === undefined || value === undefined || value > 10e3 || part.kind === "thermistor") continue;
    const behind = windingAt(model, life, other);
    if (behind !== undefined) return { ...behind, ohms: behind.ohms + value, how: `${behind.how} + ${part.name}` };
    if (model.isolation === "transformerless")
      return { ohms: value, how: `${part.name} in the plate lead`, measured: true, plateVolts: model.line.designVolts };
  }
  return undefined;
}

function windingAt(model: ChassisModel, life: Life, point: string): SupplyResistance | undefined {
  for (const { state } of joinedIn(model, life, "transformer")) {
    const primary = primaryOf(state.windings ?? []);
    const winding = state.windings?.find((candidate) => candidate !== primary && candidate.points.includes(point));
    if (primary === undefined || winding === undefined) continue;
    const ratio = winding.ratedVolts / primary.ratedVolts;
    const side = winding.centerTapped ? winding.ohms / 2 : winding.ohms;
    const measured = [winding, primary].every(({ ohmsFrom }) => ohmsFrom === "measurement" || ohmsFrom === "marking");
    return {
      ohms: side + ratio * ratio * primary.ohms,
      how: `${winding.centerTapped ? "half the winding" : "winding"} ${ohms(side)} + (${ratio.toFixed(2)})^2 x primary ${ohms(primary.ohms)}`,
      measured,
      plateVolts: winding.ratedVolts,
    };
  }
  return undefined;
}

/** The published least resistance: at the plate voltage where the tube's sheet gives several, else the single figure. */
function limitOf(model: ChassisModel, state: PartState, plateVolts: number): number | undefined {
  const limits = model.dataset.tubes.get((state.type ?? "").toUpperCase())?.limits;
  const steps = limits?.minSupplyOhmsAt === undefined ? [] : [...limits.minSupplyOhmsAt].sort((a, b) => a.rmsVolts - b.rmsVolts);
  return steps.find(({ rmsVolts }) => plateVolts <= rmsVolts)?.ohms ?? steps.at(-1)?.ohms ?? state.limits?.minSupplyOhms;
}

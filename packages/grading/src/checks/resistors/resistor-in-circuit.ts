import type { ChassisModel, Check, Finding, Life, Part, Prediction } from "../../model/index.ts";
import { coldCondition, ohmsWithout, predictCold } from "../shared/coldOhms.ts";
import { driftLimit } from "../shared/driftLimit.ts";
import { figure } from "../shared/figure.ts";
import { type InPlace, inPlace } from "../shared/inPlace.ts";
import { endsOf } from "../shared/layout.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { joined } from "../shared/phrases.ts";
import { good, report } from "../shared/report.ts";
import { ohms, percent } from "../shared/words.ts";

/** Resistors measured without lifting a lead, against what the whole network should show there. */
export const resistorInCircuit: Check = {
  id: "resistor-in-circuit",
  area: "resistors",
  title: "Resistance read in circuit",
  question: "Does each resistor that was read in circuit agree with everything that lies across it?",
  needs: "resistance measured in circuit, power off, capacitors discharged",
  sources: ["common-practice", "restorer-posts"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "resistor").flatMap(({ part }) => {
        const place = inPlace(part, life);
        return place === undefined ? [] : judge(this, model, life, part, place);
      }),
    );
  },
};

function judge(check: Check, model: ChassisModel, life: Life, part: Part, place: InPlace): Finding[] {
  const { measured, state, markedValue, tolerance } = place;
  const ends = endsOf(state);
  const condition = coldCondition(model);
  if (
    measured?.circuit !== "in" ||
    measured.value === undefined ||
    ends === undefined ||
    markedValue === undefined ||
    condition === undefined
  )
    return [];
  const window = predictCold(model, life, ends[0], ends[1], measured.accuracy);
  if (window === undefined) return [];
  const compiled = model.compile({ life, condition, line: "actual" });
  const across = ohmsWithout(compiled, ends[0], ends[1], new Set(model.elementsOf(compiled, part.id)));
  const value = measured.value;
  const common = {
    found: `${ohms(value)} in circuit, marked ${ohms(markedValue)}`,
    shouldBe: `${ohms(window.low)} to ${ohms(window.high)} with what lies across it`,
    figures: [
      { ...figure("reading in circuit", value, "ohm", "measured, power off", "job"), low: window.low, high: window.high },
      figure(
        "expected in circuit",
        window.nominal,
        "ohm",
        `${ohms(markedValue)} with ${Number.isFinite(across) ? `${ohms(across)} of other paths across it` : "no other path across it"}, tubes cold, junctions off`,
      ),
    ],
  };
  if (value > window.high) return [high(check, life, part, place, common, across)];
  if (value < window.low) return [low(check, model, life, part, window, common, across, ends)];
  const alone = across > markedValue;
  return [
    good(check, life, part, {
      ...common,
      title: `${part.name} reads in circuit what it should`,
      why: alone
        ? "The other paths are higher than the part, so the reading says much about it."
        : `The other paths (${ohms(across)}) carry most of the reading: it says little about ${part.name} itself; lift a lead to know it to ${percent(tolerance.plus)}.`,
    }),
  ];
}

type Common = Pick<Finding, "found" | "shouldBe" | "figures">;

/** Other paths only ever pull a reading down: a high one proves the part. */
function high(
  check: Check,
  life: Life,
  part: Part,
  { measured, markedValue = 0, tolerance, state }: InPlace,
  common: Common,
  across: number,
): Finding {
  const value = measured?.value ?? 0;
  // Conductance of the reading less that of the other paths; where nothing is left the part is open.
  const left = 1 / value - (Number.isFinite(across) ? 1 / across : 0);
  const itself = left > 0 ? 1 / left : Number.POSITIVE_INFINITY;
  const limit = driftLimit(part, tolerance.plus);
  const gone = itself > markedValue * (1 + limit);
  return report(check, life, part, {
    ...common,
    severity: gone ? "replace" : "watch",
    title: gone ? `${part.name} has gone high: the reading in circuit proves it` : `${part.name} reads a little high in circuit`,
    figures: [
      ...common.figures,
      {
        ...figure(`${part.name} by itself`, Number.isFinite(itself) ? itself : null, "ohm", "1 / (1/reading - 1/other paths)"),
        limit: markedValue * (1 + limit),
        limitKind: "maximum" as const,
        ...(Number.isFinite(itself) ? { margin: 1 - itself / (markedValue * (1 + limit)) } : {}),
      },
    ],
    why: "Parallel paths can only lower a reading; one above the window comes from the part itself.",
    action: gone
      ? `Lift one lead to confirm about ${ohms(itself)}, then fit ${ohms(markedValue)}.`
      : "Lift one lead and measure it by itself.",
    ...(gone
      ? {
          holds: "service" as const,
          order: [
            {
              what: `resistor ${ohms(markedValue)}${state.ratedWatts === undefined ? "" : ` ${state.ratedWatts} W`}`,
              quantity: 1,
              for: part.name,
              why: "drifted high",
            },
          ],
        }
      : {}),
  });
}

function low(
  check: Check,
  model: ChassisModel,
  life: Life,
  part: Part,
  window: Prediction,
  common: Common,
  across: number,
  ends: readonly [string, string],
): Finding {
  const beside = [...new Set(ends.flatMap((point) => model.points.get(point) ?? []))].filter(
    (id) => id !== part.id && model.parts.get(id)?.lives[life].present === true,
  );
  const names = beside.map((id) => model.parts.get(id)?.name ?? id);
  const suspects = beside.flatMap((id) => {
    const other = model.parts.get(id);
    return other?.kind === "capacitor" &&
      other.measured?.leakOhms === undefined &&
      other.measured?.leakAmps === undefined &&
      other.change === "none"
      ? [other.name]
      : [];
  });
  return report(check, life, part, {
    ...common,
    severity: "watch",
    title: `${part.name} reads low in circuit: the part or a path across it is low`,
    why: Number.isFinite(across)
      ? `Known paths across it amount to ${ohms(across)} and are already counted; the reading lies below ${ohms(window.low)} all the same.`
      : "No known path lies across it, yet something carries the meter's current.",
    action: `Lift one lead of ${part.name} and measure both halves: the part, and what is left between ${ends[0]} and ${ends[1]}${names.length === 0 ? "" : ` (${joined(names)} touch these points)`}.${suspects.length === 0 ? "" : ` ${joined(suspects)} never had leakage measured.`} Exchange the meter's leads: a junction or an electrolytic shows itself by a different reading.`,
    holds: "full-line",
  });
}

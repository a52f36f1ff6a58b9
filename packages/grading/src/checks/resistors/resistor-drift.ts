import type { ChassisModel, Check, Finding, Life, Part } from "../../model/index.ts";
import { driftLimit } from "../shared/driftLimit.ts";
import { figure } from "../shared/figure.ts";
import { type InPlace, inPlace } from "../shared/inPlace.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { good, report } from "../shared/report.ts";
import { ohms, percent } from "../shared/words.ts";

/** from-memory: age moves composition resistors up; a tenth or more down is charred binder. */
const BURNT_SHARE = 0.1;

/** Resistors measured out of circuit, against their marking and what their duty allows. */
export const resistorDrift: Check = {
  id: "resistor-drift",
  area: "resistors",
  title: "Resistor drift",
  question: "Is every resistor that was measured still what it is marked?",
  needs: "resistance measured with one lead lifted",
  sources: ["restorer-posts", "common-practice"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) => {
      const right: string[] = [];
      const findings = candidates(model, life).flatMap(({ part, place }) => {
        const finding = judge(this, life, part, place);
        if (finding === undefined) right.push(part.name);
        return finding ?? [];
      });
      if (right.length === 0) return findings;
      const summary = good(this, life, undefined, {
        title: `${right.length} measured ${right.length === 1 ? "resistor is" : "resistors are"} within tolerance`,
        found: right.join(", "),
        shouldBe: "within the marked tolerance, the meter's error allowed for",
        why: "What is in tolerance needs no change.",
      });
      return [...findings, summary];
    });
  },
};

function candidates(model: ChassisModel, life: Life): { part: Part; place: InPlace }[] {
  const open = [...model.parts.values()].filter((part) => part.kind === "resistor" && part.lives[life].open === true && life !== "planned");
  return [...partsIn(model, life, "resistor").map(({ part }) => part), ...open].flatMap((part) => {
    const place = inPlace(part, life);
    const { measured } = place ?? {};
    const usable =
      measured !== undefined && ((measured.circuit === "out" && measured.value !== undefined) || measured.condition === "open");
    return place !== undefined && usable ? [{ part, place }] : [];
  });
}

function judge(check: Check, life: Life, part: Part, { fitted, state, markedValue, tolerance, measured }: InPlace): Finding | undefined {
  if (measured === undefined || markedValue === undefined) return undefined;
  const order = [
    {
      what: `resistor ${ohms(markedValue)}${state.ratedWatts === undefined ? "" : ` ${state.ratedWatts} W`}`,
      quantity: 1,
      for: part.name,
      why: "drifted, open or burnt",
    },
  ];
  if (measured.condition === "open" || measured.value === undefined || !Number.isFinite(measured.value)) {
    return report(check, life, part, {
      severity: "replace",
      title: `${part.name} is open`,
      found: `open, marked ${ohms(markedValue)}`,
      shouldBe: ohms(markedValue),
      why: "What it feeds or biases is dead or runs away; what opened it may still be there.",
      action: "Find out what burnt it (shorted tube, leaky capacitor after it), then replace it.",
      holds: "full-line",
      order,
    });
  }
  const deviation = measured.value / markedValue - 1;
  const limit = driftLimit(part, deviation > 0 ? tolerance.plus : tolerance.minus);
  const size = Math.max(0, Math.abs(deviation) - measured.accuracy);
  if (size <= (deviation > 0 ? tolerance.plus : tolerance.minus)) return undefined;
  const source = part.advice?.replace?.source ?? "restorer-posts";
  const magnitude = Math.abs(deviation);
  const said = {
    found: `${ohms(measured.value)}, ${percent(magnitude)} ${deviation > 0 ? "high" : "low"}; marked ${ohms(markedValue)}`,
    shouldBe: `within ${percent(limit)} of ${ohms(markedValue)}`,
    figures: [
      {
        ...figure("measured resistance", measured.value, "ohm", "measured out of circuit", "job"),
        low: markedValue * (1 - tolerance.minus),
        high: markedValue * (1 + tolerance.plus),
      },
      {
        ...figure(
          "deviation from the marking",
          magnitude,
          "",
          `|${ohms(measured.value)} / ${ohms(markedValue)} - 1|, meter error ${percent(measured.accuracy)} allowed`,
          source,
        ),
        limit,
        limitKind: "maximum" as const,
        margin: (limit - magnitude) / limit,
      },
    ],
    sources: [source],
  };
  if (fitted) {
    return report(check, life, part, {
      ...said,
      severity: "adjust",
      title: `The new ${part.name} does not measure what it is marked`,
      why: "New parts are rarely off: a band misread, or a part from the wrong bag.",
      action: `Measure it again out of circuit; fit ${ohms(markedValue)}.`,
      holds: "full-line",
    });
  }
  if (deviation < 0 && size > Math.max(BURNT_SHARE, tolerance.minus)) {
    return report(check, life, part, {
      ...said,
      severity: "replace",
      title: `${part.name} reads low: overheated or not the part that is marked`,
      why: "Age alone moves resistors up. A low one has been cooked, and whatever overloaded it may still be there.",
      action: "Look for the overload behind it before fitting a new one; replace it.",
      holds: "full-line",
      sources: [source, "from-memory"],
      order,
    });
  }
  if (size > limit) {
    return report(check, life, part, {
      ...said,
      severity: "replace",
      title: `${part.name} has drifted ${percent(magnitude)} high`,
      why: "Voltages after it fall and bias moves; a resistor that has begun to rise goes on rising.",
      action: `Fit ${ohms(markedValue)}, rated for its heat and its voltage.`,
      holds: "service",
      order,
    });
  }
  return report(check, life, part, {
    ...said,
    severity: "watch",
    title: `${part.name} has left its marked tolerance`,
    why: "Still within what its duty bears, but on its way.",
    action: "Note the value; change it when the stage is open anyway.",
  });
}

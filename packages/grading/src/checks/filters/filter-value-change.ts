import type { SteadyState } from "@underchassis/calc";
import type { ChassisModel, Check, Figure, Finding, Life, Solved } from "../../model/index.ts";
import { altered } from "../shared/altered.ts";
import { isFilter } from "../shared/electrolytics.ts";
import { atMost, figure } from "../shared/figure.ts";
import { endsOf, type Placed } from "../shared/layout.ts";
import { judgedLives, partsIn } from "../shared/lives.ts";
import { rectifiersIn, reservoirs } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { farads, percent, volts } from "../shared/words.ts";

/** common-practice (R1, R2): the next standard value up or the nearest below is no change. */
const SAME = { lowest: 0.8, highest: 1.25 } as const;
/** common-practice: what filters stand without a word from the template. */
const CUSTOMARY = { lowest: 0.8, highest: 2 } as const;

/** A rectifier whose pulses change by less than this share does not feed the capacitor. */
const UNTOUCHED = 1e-3;

type Done = Extract<Solved, { ok: true }>;

/** Filter and decoupling capacitors fitted with another value than marked: ripple and rectifier pulses before and after. */
export const filterValueChange: Check = {
  id: "filter-value-change",
  area: "filters",
  title: "Changed filter values",
  question: "What does a filter capacitor of another value do to ripple and to the rectifier?",
  needs: "the marked and the fitted value",
  sources: ["common-practice", "electrolytic-text"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      partsIn(model, life, "capacitor").flatMap((placed) => {
        const { part, state } = placed;
        const [was, is] = [part.lives.designed.main?.value, state.main?.value];
        const replaced = part.change === "replaced" || (part.change === "planned" && life === "planned");
        if (!part.lives.designed.present || !replaced || was === undefined || is === undefined || !isFilter(part, state)) return [];
        return [judge(model, life, placed, was, is)];
      }),
    );
  },
};

function judge(model: ChassisModel, life: Life, { part, state }: Placed, was: number, is: number): Finding {
  const ratio = is / was;
  const limits = {
    lowest: part.advice?.substitute?.lowest ?? CUSTOMARY.lowest,
    highest: part.advice?.substitute?.highest ?? CUSTOMARY.highest,
  };
  const source = part.advice?.substitute?.source ?? "common-practice";
  const base = {
    found: `${farads(is)} in place of ${farads(was)}`,
    shouldBe: `${farads(limits.lowest * was)} to ${farads(limits.highest * was)}`,
  };
  if (ratio >= SAME.lowest && ratio <= SAME.highest) {
    return good(filterValueChange, life, part, {
      ...base,
      title: `${part.name} is of its marked value`,
      why: "Within what the original's own tolerance covered.",
    });
  }
  const after = model.solve({ life, condition: "operating", line: "high" });
  const before = after.ok
    ? altered(model, after, (element, owner) => [owner === part.id && element.kind === "capacitor" ? { ...element, farads: was } : element])
    : undefined;
  const pulses = after.ok && before !== undefined ? pulseFigures(model, life, part.id, after, before) : [];
  const figures: Figure[] = [
    atMost(ratio, limits.highest, { label: "fitted over marked value", unit: "", how: `${farads(is)} over ${farads(was)}`, source }),
    ...(after.ok && before !== undefined ? rippleFigures(after, before, state) : []),
    ...pulses,
  ];
  const exceeded = pulses.find((one) => (one.margin ?? 0) < 0);
  if (exceeded !== undefined) {
    return report(filterValueChange, life, part, {
      ...base,
      figures,
      severity: "replace",
      title: `${part.name} makes the rectifier's pulses too large`,
      why: "A larger capacitor fills in shorter, higher pulses than the rectifier is made for.",
      action: `Go back to ${farads(was)}, or add resistance ahead of it.`,
      holds: "full-line",
      order: [
        {
          what: `capacitor ${farads(was)} ${state.ratedVolts === undefined ? "" : volts(state.ratedVolts)} 105 C`,
          quantity: 1,
          for: part.name,
          why: "rectifier pulses",
        },
      ],
    });
  }
  if (ratio > limits.highest || ratio < limits.lowest) {
    return report(filterValueChange, life, part, {
      ...base,
      figures,
      severity: "adjust",
      title:
        ratio > 1
          ? `${part.name} is ${ratio.toFixed(1)} times its marked value`
          : `${part.name} is only ${percent(ratio)} of its marked value`,
      why:
        ratio > 1
          ? "More charge at switch-on and at the next hand's shock, and the next repair doubles it again."
          : "Ripple and coupling between stages rise.",
      action: `Fit ${farads(was)} or the next standard value.`,
      order: [
        {
          what: `capacitor ${farads(was)} ${state.ratedVolts === undefined ? "" : volts(state.ratedVolts)} 105 C`,
          quantity: 1,
          for: part.name,
          why: "value",
        },
      ],
    });
  }
  return good(filterValueChange, life, part, {
    ...base,
    figures,
    title: `${part.name} may have this value`,
    why: "Ripple and rectifier pulses stay within their limits.",
  });
}

function rippleFigures(after: Done, before: SteadyState, state: Placed["state"]): Figure[] {
  const ends = endsOf(state);
  const [from, to] = ends === undefined ? [] : [after.compiled.pointOf(ends[0]), after.compiled.pointOf(ends[1])];
  if (from === undefined || to === undefined) return [];
  const read = (steady: SteadyState) => steady.read({ quantity: "ripple-volts", from, to });
  return [
    figure("ripple with the marked value", read(before), "V", "peak to peak, operating, highest line"),
    figure("ripple with this value", read(after.steady), "V", "peak to peak, operating, highest line"),
  ];
}

function pulseFigures(model: ChassisModel, life: Life, capacitor: string, after: Done, before: SteadyState): Figure[] {
  return rectifiersIn(model, life).flatMap(({ part, state }): Figure[] => {
    const peak = (steady: SteadyState) =>
      Math.max(0, ...model.elementsOf(after.compiled, part.id).map((id) => steady.elements.get(id)?.maxAmps ?? 0));
    const [was, is] = [peak(before), peak(after.steady)];
    const feeds = reservoirs(model, life, state).some((placed) => placed.part.id === capacitor);
    if (is < 1e-6 || (!feeds && Math.abs(is / was - 1) < UNTOUCHED)) return [];
    const basics = {
      label: `pulses of ${part.name} with this value`,
      unit: "A",
      how: "largest plate current over a period, operating, highest line",
      source: state.limits?.source ?? "computed",
    };
    const limit = state.limits?.peakAmps;
    return [
      figure(`pulses of ${part.name} with the marked value`, was, "A", basics.how),
      limit === undefined ? figure(basics.label, is, "A", basics.how) : atMost(is, limit, basics),
    ];
  });
}

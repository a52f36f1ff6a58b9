import type { Element } from "@underchassis/calc";
import { nearestPreferred } from "@underchassis/calc";
import type { ChassisModel, Check, Figure, Finding, Life, Part, PartState, Solved } from "../../model/index.ts";
import { altered } from "../shared/altered.ts";
import { atMost, figure } from "../shared/figure.ts";
import { allIn } from "../shared/layout.ts";
import { judgedLives } from "../shared/lives.ts";
import { isTube, outputAmps, rectifierPoints } from "../shared/rectifierSide.ts";
import { good, report } from "../shared/report.ts";
import { stresses, worst } from "../shared/stress.ts";
import { amps, nextRating, ohms, percent, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** common-practice: B+ within 5 % of what the original rectifier gave needs no correction. */
const CLOSE = 0.05;
const SHOWN_POINTS = 6;
/** Simulations spent on finding the series resistor. */
const TRIES = 4;
/** Share of the voltage within which the search ends. */
const NEAR = 0.004;
/** The resistor comes out near two fifths of volts over direct current, since the pulses are that much larger. */
const FIRST_GUESS = 0.4;

/** A rectifier replaced by another kind: every voltage behind it before and after, and the resistor that restores them. */
export const rectifierSubstitution: Check = {
  id: "rectifier-substitution",
  area: "rectifiers",
  title: "Rectifier substitution",
  question: "What does the rectifier in place of the original do to every voltage behind it?",
  needs: "the original type and the fitted one",
  sources: ["common-practice", "selenium-text", "electrolytic-text"],
  cautions: ["high-voltage-stored-charge", "electrolytic-burst"],
  run(model) {
    return judgedLives(model).flatMap((life) =>
      allIn(model, life, "rectifier").flatMap(({ part, state }) => {
        const original = part.lives.designed;
        const changed = original.present && (original.type !== state.type || original.device?.kind !== state.device?.kind);
        return changed && (life !== "planned" || part.change === "planned") ? judge(model, life, part, original, state) : [];
      }),
    );
  },
};

function judge(model: ChassisModel, life: Life, part: Part, original: PartState, state: PartState): Finding[] {
  const after = model.solve({ life, condition: "operating", line: "actual" });
  if (!after.ok) return [];
  const before = altered(model, after, (element, owner) => (owner === part.id ? asOriginal(element, original) : [element]));
  if (before === undefined) return [];
  const names = `${original.type ?? "original"} replaced by ${state.type ?? "another rectifier"}`;
  const points = [...after.steady.points]
    .map(([name, { meanVolts }]) => ({ name, before: before.points.get(name)?.meanVolts ?? 0, after: meanVolts }))
    .filter((point) => Math.abs(point.before) > 20 || Math.abs(point.after) > 20)
    .sort((a, b) => Math.abs(b.after - b.before) - Math.abs(a.after - a.before));
  const cathode = rectifierPoints(state).cathode;
  const output = points.find(({ name }) => name === after.compiled.pointOf(cathode ?? "")) ?? points[0];
  if (output === undefined) return [];
  const share = output.after / output.before - 1;
  const figures: Figure[] = points
    .slice(0, SHOWN_POINTS)
    .map((point) =>
      figure(
        `${point.name}, before ${volts(point.before)}`,
        point.after,
        "V",
        "mean, operating, today's line; the same network with either rectifier",
      ),
    );
  const over = overRated(model, life);
  for (const { name, most, rated } of over)
    figures.push(
      atMost(most, rated, {
        label: `voltage on ${name}`,
        unit: "V",
        how: "largest in any powered condition, highest line",
        source: "marking",
      }),
    );
  const sudden = isTube(original) && !isTube(state) ? " Full voltage comes at once, before the other tubes draw." : "";
  const base = {
    found: `${names}: ${output.name} ${volts(output.after)} instead of ${volts(output.before)} (${percent(share)})`,
    shouldBe: `within ${percent(CLOSE)} of ${volts(output.before)}`,
    figures,
  };
  const heater = heaterChange(original, state);
  const tail =
    heater === undefined ? [] : [report(rectifierSubstitution, life, part, { ...heater, figures: [], cautions: ["hot-surfaces"] })];
  if (over.length === 0 && Math.abs(share) <= CLOSE)
    return [
      good(rectifierSubstitution, life, part, {
        ...base,
        title: `${part.name}: ${names} changes little`,
        why: `Voltages stay within ${percent(CLOSE)}.${sudden}`,
      }),
      ...tail,
    ];
  const fix = share > CLOSE ? seriesResistor(model, life, after, part, output) : undefined;
  return [
    report(rectifierSubstitution, life, part, {
      ...base,
      severity: over.length > 0 ? "replace" : "adjust",
      title:
        over.length > 0
          ? `${part.name}: ${names} takes ${over.map(({ name }) => name).join(", ")} beyond the rating`
          : `${part.name}: ${names} moves B+ by ${percent(share)}`,
      why:
        share > 0
          ? `Capacitors, tubes and resistors behind it bear more than they were chosen for.${sudden}`
          : "Stages behind it lose voltage.",
      action: `${fix === undefined ? "Go back to the original type, or correct the supply." : fix.text}${over.length > 0 ? ` Fit capacitors rated above the figures shown.` : ""}`,
      ...(fix === undefined ? {} : { order: [{ what: fix.what, quantity: 1, for: part.name, why: "original B+" }] }),
      holds: over.length > 0 ? "full-line" : "service",
    }),
    ...tail,
  ];
}

/** The element that the original rectifier would be between the same two points. */
function asOriginal(element: Element, { device, emission }: PartState): Element[] {
  if (device === undefined || element.kind === "transformer" || !Array.isArray(element.nodes)) return [element];
  const [from, to] = element.nodes as readonly string[];
  if (from === undefined || to === undefined || element.kind === "resistor") return [element];
  const base = { id: element.id, nodes: [from, to] as const };
  switch (device.kind) {
    case "vacuum-diode":
      return [{ ...base, kind: "vacuum-diode", perveance: device.perveance * (emission ?? 1) }];
    case "gas-diode":
      return [{ ...base, kind: "gas-diode", dropVolts: device.dropVolts, ohms: device.ohms }];
    case "selenium":
      return [
        {
          ...base,
          kind: "selenium",
          plates: device.plates,
          kneeVoltsPerPlate: device.kneeVoltsPerPlate,
          ohmsPerPlate: device.ohmsPerPlate,
        },
      ];
    case "silicon":
      return [{ ...base, kind: "diode", saturationAmps: device.saturationAmps, emission: device.emission, ohms: device.ohms }];
    default:
      return [element];
  }
}

function overRated(model: ChassisModel, life: Life): { name: string; most: number; rated: number }[] {
  const loads = stresses(model, life);
  return allIn(model, life, "capacitor").flatMap(({ part, state }) => {
    const most = worst(loads.get(part.id), "maxVolts")?.maxVolts ?? 0;
    return state.ratedVolts !== undefined && state.ratedVoltsKind !== "ac" && most > state.ratedVolts
      ? [{ name: part.name, most, rated: state.ratedVolts }]
      : [];
  });
}

/**
 * Resistance that brings the output back, found by trying: the charging pulses make it drop far more than its ohms times the
 * direct current. It stands in series with each diode here, which is the same as one between the rectifier and the first capacitor.
 */
function seriesResistor(
  model: ChassisModel,
  life: Life,
  solved: Extract<Solved, { ok: true }>,
  part: Part,
  output: { name: string; before: number; after: number },
): { text: string; what: string } | undefined {
  const current = outputAmps(model, life, part)?.amps ?? 0;
  if (current <= 0 || part.lives[life].device?.kind !== "silicon") return undefined;
  const withOhms = (extra: number) =>
    altered(model, solved, (element, owner) => [
      owner === part.id && element.kind === "diode" ? { ...element, ohms: element.ohms + extra } : element,
    ]);
  const near = (reached: number) => Math.abs(reached - output.before) < NEAR * Math.abs(output.before);
  let [low, high] = [
    { ohms: 0, volts: output.after },
    { ohms: (FIRST_GUESS * (output.after - output.before)) / current, volts: Number.NaN },
  ];
  for (let turn = 0; turn < TRIES && !near(low.volts) && !near(high.volts); turn++) {
    const trial = turn === 0 ? high.ohms : low.ohms + ((high.ohms - low.ohms) * (low.volts - output.before)) / (low.volts - high.volts);
    const reached = withOhms(trial)?.points.get(output.name)?.meanVolts;
    if (reached === undefined || !Number.isFinite(reached)) return undefined;
    if (turn === 0 || reached <= output.before) high = { ohms: trial, volts: reached };
    else low = { ohms: trial, volts: reached };
  }
  const value = nearestPreferred(
    Math.max(1, Math.abs(low.volts - output.before) < Math.abs(high.volts - output.before) ? low.ohms : high.ohms),
    "E12",
  );
  const steady = withOhms(value);
  const heat =
    value * model.elementsOf(solved.compiled, part.id).reduce((sum, id) => sum + (steady?.elements.get(id)?.rmsAmps ?? 0) ** 2, 0);
  const rating = nextRating(2 * heat, RESISTOR_WATTS);
  const where = `${ohms(value)}, ${watts(rating)} (it bears ${watts(heat)} RMS)`;
  return {
    text: `${where}, between the rectifier and the first capacitor brings ${output.name} back to ${volts(steady?.points.get(output.name)?.meanVolts ?? output.before)} at ${amps(current)}; trim it under load.`,
    what: `wirewound resistor ${ohms(value)} ${watts(rating)}, flameproof`,
  };
}

function heaterChange(
  original: PartState,
  state: PartState,
): Pick<Finding, "severity" | "title" | "found" | "shouldBe" | "why" | "action" | "holds"> | undefined {
  const [was, is] = [original.heater, state.heater];
  if (was === undefined || is === undefined || (is.volts === was.volts && is.amps <= 1.1 * was.amps)) return undefined;
  return {
    severity: "adjust",
    title: "The other tube's heater asks more of the winding",
    found: `${volts(is.volts)} ${amps(is.amps)} instead of ${volts(was.volts)} ${amps(was.amps)}`,
    shouldBe: `${volts(was.volts)}, at most ${amps(was.amps)}`,
    why: "The filament winding was wound for the original tube; overloaded it cooks the transformer.",
    action: "Check the winding's rating and measure the filament voltage at the socket; go back to the original type when in doubt.",
    holds: "service",
  };
}

import { CircuitError, nearestPreferred, solveSteady } from "@underchassis/calc";
import type { ChassisModel, Check, Figure, Finding, Life } from "../../model/index.ts";
import { isElectrolytic, leakageLimit } from "../shared/electrolytics.ts";
import { atMost, figure } from "../shared/figure.ts";
import { endsOf, joinedIn, livesTouching, type Placed, pointNames } from "../shared/layout.ts";
import { good, report } from "../shared/report.ts";
import { poweredConditions } from "../shared/stress.ts";
import { amps, nextRating, ohms, RESISTOR_WATTS, volts, watts } from "../shared/words.ts";

/** common-practice: of two parts in order one may leak a tenth of what the other does. */
const LEAST_LEAK_SHARE = 0.1;

/** Two electrolytics in series: the share of each when they leak unequally, with and without balancing resistors. */
export const seriesFilterBalance: Check = {
  id: "series-filter-balance",
  area: "filters",
  title: "Filter capacitors in series",
  question: "Does either of two capacitors in series ever bear more than its rating?",
  needs: "both capacitors, their ratings, and the balancing resistors",
  sources: ["jan-c-62", "capacitor-maker-notes", "common-practice"],
  cautions: ["series-capacitors-floating-cans", "electrolytic-burst", "high-voltage-stored-charge"],
  run(model) {
    return livesTouching(model, "capacitor", "resistor").flatMap((life) =>
      pairs(model, life).flatMap(([upper, lower]) => judge(model, life, upper, lower)),
    );
  },
};

/** Upper's minus on lower's plus, and nothing that drives the point between: no rectifier, no winding, no tube. */
function pairs(model: ChassisModel, life: Life): [Placed, Placed][] {
  const all = joinedIn(model, life);
  const reference = pointNames(model, life)(model.reference);
  const electrolytics = all.filter(
    ({ part, state }) => part.kind === "capacitor" && isElectrolytic(part, state) && endsOf(state) !== undefined,
  );
  return electrolytics.flatMap((upper) => {
    const middle = endsOf(upper.state)?.[1] ?? "";
    const lower = electrolytics.find((other) => other !== upper && endsOf(other.state)?.[0] === middle);
    const driven = all.some(
      ({ part, state }) =>
        part.kind !== "resistor" &&
        part.kind !== "capacitor" &&
        (Object.values(state.pins).includes(middle) || (state.windings ?? []).some(({ points }) => points.includes(middle))),
    );
    return lower === undefined || driven || middle === reference ? [] : [[upper, lower] as [Placed, Placed]];
  });
}

function across(
  model: ChassisModel,
  life: Life,
  { state }: Placed,
): { part: Placed["part"]; ohms: number; watts: number | undefined } | undefined {
  const ends = endsOf(state);
  for (const { part, state: own } of joinedIn(model, life, "resistor")) {
    const other = endsOf(own);
    if (ends !== undefined && other !== undefined && own.main !== undefined && ends.every((point) => other.includes(point)))
      return { part, ohms: own.main.value, watts: own.ratedWatts };
  }
  return undefined;
}

/**
 * Largest voltage between two points in any powered condition at the highest line. The point between capacitors without
 * resistors or measured leakage has no voltage of its own: such points are tied, which leaves the sum as it is.
 */
function voltsAcross(model: ChassisModel, life: Life, top: string, bottom: string): number {
  const readings = poweredConditions(model).flatMap((condition) => {
    const compiled = model.compile({ life, condition: condition.id, line: "high" });
    const [from, to] = [compiled.pointOf(top), compiled.pointOf(bottom)];
    if (from === undefined || to === undefined) return [];
    try {
      return [solveSteady(compiled.network, { hertz: model.line.hertz, islands: "tie" }).read({ quantity: "max-volts", from, to })];
    } catch (error) {
      if (error instanceof CircuitError) return [];
      throw error;
    }
  });
  return Math.max(0, ...readings);
}

function judge(model: ChassisModel, life: Life, upper: Placed, lower: Placed): Finding[] {
  const [top, bottom] = [endsOf(upper.state)?.[0] ?? "", endsOf(lower.state)?.[1] ?? ""];
  const total = voltsAcross(model, life, top, bottom);
  const sides = [upper, lower].map((placed) => ({ ...placed, rated: placed.state.ratedVolts, resistor: across(model, life, placed) }));
  const names = sides.map(({ part }) => part.name).join(" and ");
  const rated = Math.min(...sides.map((side) => side.rated ?? Number.POSITIVE_INFINITY));
  if (total < 1 || !Number.isFinite(rated)) {
    return total < 1
      ? []
      : [
          report(seriesFilterBalance, life, upper.part, {
            severity: "unmeasured",
            title: `Ratings of ${names} not known`,
            found: `${volts(total)} across the pair`,
            shouldBe: `each rated for at least ${volts(0.6 * total)}`,
            why: "Shares cannot be judged.",
            action: "Read the cans.",
            holds: "full-line",
          }),
        ];
  }
  const leaks = sides.map(({ state, rated: own }) => {
    const limit = leakageLimit(model, state.main?.value ?? 0, own ?? rated) ?? 0;
    const measured = state.leak === undefined ? undefined : (own ?? rated) / state.leak.value;
    return { most: measured ?? limit, least: measured ?? LEAST_LEAK_SHARE * limit };
  });
  const shares = sides.map((_, index) =>
    worstShare(
      total,
      rated,
      sides.map(({ resistor }) => resistor?.ohms),
      leaks,
      index,
    ),
  );
  const [worstIndex] = shares[0] !== undefined && shares[1] !== undefined && shares[0] >= shares[1] ? [0] : [1];
  const most = shares[worstIndex] ?? total;
  const balanced = sides.every(({ resistor }) => resistor !== undefined);
  const spread = Math.max(...leaks.map((leak) => leak.most)) - Math.min(...leaks.map((leak) => leak.least));
  // capacitor-maker-notes: R <= (N V_R - V) / dI.
  const largest = 2 * rated > total && spread > 0 ? (2 * rated - total) / spread : undefined;
  const fit = largest === undefined ? undefined : nearestPreferred(Math.min(largest, 470e3), "E12", "down");
  const figures: Figure[] = [
    atMost(most, rated, {
      label: `largest voltage on ${sides[worstIndex]?.part.name ?? ""}`,
      unit: "V",
      how: `${volts(total)} across both; the other leaks ${amps(leaks[1 - worstIndex]?.most ?? 0)} at its rating (JAN-C-62 limit or measured), this one ${amps(leaks[worstIndex]?.least ?? 0)}`,
      source: "jan-c-62",
    }),
    ...(largest === undefined
      ? []
      : [
          figure(
            "largest balancing resistor",
            largest,
            "ohm",
            "(2 x rated volts - volts across both) / difference of leakage",
            "capacitor-maker-notes",
          ),
        ]),
  ];
  const heat = sides.flatMap(({ resistor }) => (resistor === undefined ? [] : [{ ...resistor, heat: most ** 2 / resistor.ohms }]));
  for (const one of heat)
    if (one.watts !== undefined)
      figures.push(
        atMost(one.heat, one.watts, {
          label: `heat in ${one.part.name}`,
          unit: "W",
          how: "V^2 / R at the largest share",
          source: "marking",
        }),
      );
  const hot = heat.find((one) => one.watts !== undefined && one.heat > one.watts);
  const base = {
    found: `${names} in series on ${volts(total)}, ${balanced ? sides.map(({ resistor }) => ohms(resistor?.ohms ?? 0)).join(" and ") : "no balancing resistors"}; up to ${volts(most)} on one`,
    shouldBe: `at most ${volts(rated)} on each`,
    figures,
  };
  if (most <= rated && balanced && hot === undefined)
    return [
      good(seriesFilterBalance, life, upper.part, {
        ...base,
        title: `${names} share the voltage`,
        why: "Balancing resistors carry more than the leakages differ.",
      }),
    ];
  const power = fit === undefined ? 2 : nextRating(Math.max(1, (2 * rated ** 2) / fit), RESISTOR_WATTS);
  const remedy =
    fit === undefined
      ? "Fit parts of a higher rating: even equal shares are too much."
      : `Fit ${ohms(fit)}, ${watts(power)}, rated for ${volts(rated)}, across each capacitor (they bleed the charge, too).`;
  return [
    report(seriesFilterBalance, life, upper.part, {
      ...base,
      severity: most > rated ? "replace" : "watch",
      title:
        hot !== undefined
          ? `Balancing resistor ${hot.part.name} is overloaded`
          : most > rated
            ? `${names}: one may bear ${volts(most)}`
            : `${names} have no balancing resistors`,
      why: "The capacitor that leaks less takes the larger share, until it breaks down and hands everything to the other.",
      action: `${remedy} The can of the upper one is at half the supply: insulate it.`,
      ...(most > rated ? { holds: "full-line" as const } : {}),
      ...(fit === undefined
        ? {}
        : { order: [{ what: `resistor ${ohms(fit)} ${watts(power)}`, quantity: 2, for: names, why: "balancing" }] }),
    }),
  ];
}

/**
 * Largest voltage on one of two: the other leaks its most, this one its least. With balancing resistors the leakages are
 * currents (the limits at rated volts); without any they are all there is, so the voltages go as the inverse leakage.
 */
function worstShare(
  total: number,
  rated: number,
  resistors: readonly (number | undefined)[],
  leaks: readonly { most: number; least: number }[],
  index: number,
): number {
  const [own, other] = [leaks[index]?.least ?? 0, leaks[1 - index]?.most ?? 0];
  const conductances = [index, 1 - index].map((side) => (resistors[side] === undefined ? 0 : 1 / (resistors[side] ?? 1)));
  const [mine, theirs] = [(conductances[0] ?? 0) + own / rated, (conductances[1] ?? 0) + other / rated];
  return mine + theirs === 0 ? total : (total * theirs) / (mine + theirs);
}

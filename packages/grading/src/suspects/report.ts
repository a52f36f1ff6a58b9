import type { ChassisModel, Reading } from "../model/index.ts";
import { confirmOf, measurementCautions } from "./confirm.ts";
import type { Ground } from "./ground.ts";
import { deviationOf, type Group } from "./groups.ts";
import { forbiddenPoints, hazardOf } from "./hazards.ts";
import type { Judged } from "./judged.ts";
import type { Fit } from "./likelihood.ts";
import { nextMeasurement } from "./nextMeasurement.ts";
import { unscaled } from "./observable.ts";
import type { Suspect, SuspectNext, SuspectReading, SuspectReport } from "./suspectReport.ts";
import { titleOf } from "./titles.ts";

export interface Belief {
  judged: Judged;
  posterior: number;
}

export interface Found {
  life: "found" | "restored";
  readings: readonly Reading[];
  usable: readonly { index: number; value: number }[];
  ground: Ground;
  healthy: { fit: Fit; posterior: number };
  noneOfThese: number;
  groups: readonly Group[];
  priorScale: number;
  top: number;
  hypotheses: number;
  spared: number;
  simulations: number;
  complete: boolean;
  seconds: number;
}

/** A suspect with less belief than this keeps nobody from applying power. */
const NOTICEABLE = 0.01;
/** A reading further off than this is not explained. */
const EXPLAINED = 3.3;
/** One suspect with this much belief stands. */
const STANDS = 0.98;
/** A suspect shows that changes some reading by this share of its standard deviation. */
const SHOWS = 0.5;

/** Turns beliefs into what a restorer reads. */
export function reportOf(model: ChassisModel, found: Found): SuspectReport {
  const { ground, groups, healthy, noneOfThese, life } = found;
  const best = groups[0];
  const verdict =
    best === undefined || healthy.posterior >= Math.max(best.posterior, noneOfThese)
      ? "nothing-off"
      : noneOfThese > best.posterior
        ? "none-of-these"
        : "suspects";
  const forbidden = forbiddenPoints(model, life);
  const suspects =
    verdict === "nothing-off" ? [] : groups.slice(0, found.top).map((group, index) => suspectOf(model, found, group, index + 1, forbidden));
  const risky = groups.find(
    ({ posterior, members }) => posterior > NOTICEABLE && hazardOf(ground, forbidden, members[0]!.judged.predicted) !== undefined,
  );
  const hazard = risky === undefined ? undefined : hazardOf(ground, forbidden, risky.members[0]!.judged.predicted);
  const stands = Math.max(best?.posterior ?? 0, healthy.posterior) >= STANDS;
  const next = stands ? undefined : nextOf(model, found, hazard !== undefined);
  return {
    verdict,
    healthy: healthy.posterior,
    noneOfThese,
    suspects,
    unexplained: (suspects[0]?.readings ?? []).filter(({ deviation }) => Math.abs(deviation) > EXPLAINED),
    ...(next === undefined ? {} : { next }),
    ...(hazard === undefined || verdict === "nothing-off"
      ? {}
      : { coldOnly: { title: titleOf(model, risky!.members[0]!.judged.fault), at: hazard.point, volts: hazard.volts } }),
    life,
    hypotheses: found.hypotheses,
    spared: found.spared,
    simulations: found.simulations,
    complete: found.complete,
    seconds: found.seconds,
  };
}

function suspectOf(model: ChassisModel, found: Found, group: Group, rank: number, forbidden: ReadonlySet<string>): Suspect {
  const { judged } = group.members[0]!;
  const hazard = hazardOf(found.ground, forbidden, judged.predicted);
  return {
    rank,
    posterior: group.posterior,
    prior: judged.prior * found.priorScale,
    title: titleOf(model, judged.fault),
    fault: judged.fault,
    ...(judged.second === undefined ? {} : { second: { title: titleOf(model, judged.second), fault: judged.second } }),
    ...(judged.low === undefined ? {} : { low: judged.low }),
    ...(judged.high === undefined ? {} : { high: judged.high }),
    readings: found.usable.map(({ index, value }, k) => readingOf(found, judged, index, value, k)),
    group: group.members.slice(1).map(({ judged: { fault }, posterior }) => ({ title: titleOf(model, fault), fault, posterior })),
    confirm: confirmOf(judged.fault),
    cautions: ["high-voltage-stored-charge"],
    ...(hazard === undefined ? {} : { hazard: { at: hazard.point, volts: hazard.volts, healthy: hazard.healthy } }),
  };
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

function readingOf(found: Found, judged: Judged, index: number, value: number, k: number): SuspectReading {
  const { at, to, quantity, condition } = found.ground.observables[index]!;
  return {
    at,
    to,
    quantity,
    condition,
    read: finite(value),
    predicted: finite(unscaled(quantity, judged.predicted[index]!)),
    healthy: finite(unscaled(quantity, found.ground.nominal[index]!)),
    deviation: judged.fit.deviations[k]!,
    ...(judged.fit.slip === k ? { slip: true } : {}),
  };
}

/** Whether a suspect changes any reading by more than a share of its spread. */
const shows = ({ ground, usable }: Found, { predicted }: Judged): boolean =>
  usable.some(
    ({ index }) => Math.abs(predicted[index]! - ground.nominal[index]!) > SHOWS * deviationOf(ground, index, ground.nominal[index]!),
  );

function nextOf(model: ChassisModel, found: Found, coldOnly: boolean): SuspectNext | undefined {
  const { ground, groups, healthy } = found;
  const candidates = ground.observables.map((_, index) => index).slice(found.readings.length);
  // What shows in no reading was no reason to search, and is not looked for.
  const seen = groups.filter(({ members: [speaker] }) => speaker !== undefined && shows(found, speaker.judged));
  const leaders = seen.map((group) => ({
    title: titleOf(model, group.members[0]!.judged.fault),
    predicted: group.members[0]!.judged.predicted,
    weight: group.posterior,
  }));
  const beliefs = [...leaders, { title: "nothing but tolerances", predicted: ground.nominal, weight: healthy.posterior }].filter(
    ({ weight }) => weight > 1e-4,
  );
  const next = nextMeasurement(ground, beliefs, candidates, coldOnly);
  if (next === undefined) return undefined;
  const { index, observable, bits } = next;
  const { at, to, quantity, condition } = observable;
  const powered = quantity !== "ohms";
  return {
    at,
    to,
    quantity,
    condition,
    bits,
    predictions: beliefs.slice(0, 5).map(({ title, predicted }) => {
      const value = unscaled(quantity, predicted[index]!);
      const deviation = deviationOf(ground, index, predicted[index]!);
      return { title, value: finite(value), spread: 2 * deviation * (quantity === "ohms" && Number.isFinite(value) ? value : 1) };
    }),
    cautions: measurementCautions(powered),
    why: powered
      ? "it tells the leading suspects apart best"
      : "it is made with the plug out and the filters discharged, and tells the leading suspects apart",
  };
}

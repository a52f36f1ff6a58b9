import type { ChassisModel, Check, Finding, Life } from "../../model/index.ts";
import { LOW_VOLTS, type Stored, storedCharges } from "../shared/discharge.ts";
import { atMost, figure } from "../shared/figure.ts";
import { judgedLives } from "../shared/lives.ts";
import { joined } from "../shared/phrases.ts";
import { good, report } from "../shared/report.ts";
import { bleeder, farads, joules, nextRating, ohms, RESISTOR_WATTS, seconds, volts, watts } from "../shared/words.ts";

/** from-memory: bleeders are laid out for 60 V within a minute. */
const LIMIT_SECONDS = 60;
/** capacitor-discharge-sheet: above this, discharge before work; above 10 J it may kill; 0.25 J above 400 V is a violent shock. */
const WORTH_JOULES = 0.1;
const LETHAL_JOULES = 10;
const SHOCK_JOULES = 0.25;
const SHOCK_VOLTS = 400;

/** How long every charged capacitor stays dangerous after switching off, with what is there to discharge it. */
export const dischargeTime: Check = {
  id: "discharge-time",
  area: "resistors",
  title: "Discharge after switching off",
  question: "Does everything that is charged fall below 60 V by itself, and how soon?",
  needs: "values of the capacitors and of what lies across them",
  sources: ["capacitor-discharge-sheet", "lab-hazard-thresholds", "iec-60950-1"],
  cautions: ["high-voltage-stored-charge"],
  run(model) {
    return judgedLives(model).flatMap((life) => judge(this, model, life));
  },
};

function judge(check: Check, model: ChassisModel, life: Life): Finding[] {
  const stored = changedBy(model, life, storedCharges(model, life, WORTH_JOULES));
  if (stored.length === 0) return [];
  const slow = stored.filter((entry) => entry.seconds > LIMIT_SECONDS);
  if (slow.length > 0) return slow.map((entry) => late(check, model, life, entry, stored));
  const last = stored.reduce((slowest, entry) => (entry.seconds > slowest.seconds ? entry : slowest));
  const total = stored.reduce((sum, entry) => sum + entry.joules, 0);
  return [
    good(check, life, undefined, {
      title: `Everything falls below ${LOW_VOLTS} V within ${seconds(last.seconds)}`,
      found: `${joules(total)} in ${stored.length} capacitors; slowest ${nameOf(model, last)}, ${volts(last.volts)} through ${ohms(last.ohms)}`,
      shouldBe: `below ${LOW_VOLTS} V within ${LIMIT_SECONDS} s`,
      figures: [
        timeFigure(model, last),
        figure("energy stored in all", total, "J", "sum of C V^2 / 2, highest voltage of any condition at the highest line"),
      ],
      why: `It hangs on ${last.through().length === 0 ? "several paths" : joined(last.through().map((id) => model.parts.get(id)?.name ?? id))}; it is no reason to leave out the meter.`,
    }),
  ];
}

const nameOf = (model: ChassisModel, { part }: Stored): string => model.parts.get(part)?.name ?? part;

/** Under a plan only the charges that it makes larger, smaller, slower or faster. */
function changedBy(model: ChassisModel, life: Life, stored: readonly Stored[]): readonly Stored[] {
  if (life !== "planned") return stored;
  const before = new Map(storedCharges(model, "restored", WORTH_JOULES).map((entry) => [entry.part, entry]));
  const differs = (a: number, b: number | undefined) => b === undefined || (a !== b && !(Math.abs(a - b) < 0.02 * Math.abs(b)));
  return stored.filter(
    (entry) => differs(entry.joules, before.get(entry.part)?.joules) || differs(entry.seconds, before.get(entry.part)?.seconds),
  );
}

function timeFigure(model: ChassisModel, entry: Stored) {
  const how = `${farads(entry.farads)} and what hangs with it through ${ohms(entry.ohms)}: tau ${seconds(entry.tau)}, t = tau ln(${volts(entry.volts)} / ${LOW_VOLTS} V), tubes cold`;
  return Number.isFinite(entry.seconds)
    ? atMost(entry.seconds, LIMIT_SECONDS, {
        label: `time of ${nameOf(model, entry)} to ${LOW_VOLTS} V`,
        unit: "s",
        how,
        source: "from-memory",
      })
    : figure(`time of ${nameOf(model, entry)} to ${LOW_VOLTS} V`, null, "s", "no resistance lies across it with the tubes cold");
}

function late(check: Check, model: ChassisModel, life: Life, entry: Stored, all: readonly Stored[]): Finding {
  const name = nameOf(model, entry);
  const path = entry.through();
  const never = !Number.isFinite(entry.seconds);
  // What hangs together is discharged together; the shock is that of all of it.
  const together = all.filter(
    (other) =>
      other === entry || (Number.isFinite(entry.ohms) && Number.isFinite(other.ohms) && other.through().some((id) => path.includes(id))),
  );
  const energy = together.reduce((sum, other) => sum + other.joules, 0);
  // Sets were made without a bleeder, and warm tubes discharge them: below what may kill it is a matter of care, not of the next step.
  const dangerous = energy >= LETHAL_JOULES;
  const shocking = entry.volts > SHOCK_VOLTS && energy >= SHOCK_JOULES;
  // t = R C ln(V / 60 V) within half the limit; the resistor's heat at the highest voltage, doubled.
  const total = together.reduce((sum, other) => sum + other.farads, 0);
  const wanted = roundDown(LIMIT_SECONDS / 2 / (total * Math.log(entry.volts / LOW_VOLTS)));
  const rating = nextRating(2 * (entry.volts ** 2 / wanted), RESISTOR_WATTS);
  return report(check, life, model.parts.get(entry.part), {
    severity: dangerous ? "danger" : "watch",
    condition: entry.condition,
    title: never
      ? `Nothing discharges ${name}: ${volts(entry.volts)} stays on it`
      : `${name} keeps a dangerous voltage for ${seconds(entry.seconds)}`,
    found: `${joules(energy)} at ${volts(entry.volts)}, ${never ? "no path" : `through ${ohms(entry.ohms)}${path.length === 0 ? "" : ` (${joined(path.map((id) => model.parts.get(id)?.name ?? id))})`}`}`,
    shouldBe: `below ${LOW_VOLTS} V within ${LIMIT_SECONDS} s`,
    figures: [
      timeFigure(model, entry),
      figure(
        "stored energy",
        energy,
        "J",
        `C V^2 / 2 of ${joined(together.map((other) => nameOf(model, other)))}, ${entry.condition}, highest line`,
      ),
    ],
    why: dangerous
      ? "That charge can kill, with the plug out, long after switching off."
      : shocking
        ? "A violent shock waits there, with the plug out, whenever the tubes were cold or out."
        : "The charge is small but makes a hand jump into something worse.",
    action: `Treat it as live: discharge it through 10 kohm 10 W on insulated clips, meter it, then short it. Fit about ${ohms(wanted)} ${watts(rating)} across ${name}${path.length > 0 ? "" : " (with the tubes in and warm it discharges faster; do not count on that)"}.`,
    ...(dangerous ? { holds: "full-line" as const } : {}),
    order: [{ what: bleeder(wanted, rating), quantity: 1, for: name, why: "bleeder" }],
  });
}

/** Down to one significant figure of the E6 series, so that the bleeder ordered is one that exists. */
function roundDown(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = [6.8, 4.7, 3.3, 2.2, 1.5, 1].find((mantissa) => mantissa * decade <= value) ?? 1;
  return step * decade;
}

import type { SuspectReading, SuspectReport } from "@underchassis/grading";
import { formatValue } from "../view/formatValue.ts";
import { quantityUnit } from "../view/words.ts";

const QUANTITY: Readonly<Record<SuspectReading["quantity"], string>> = {
  "dc-volts": "DC",
  "ac-volts": "AC",
  "ripple-volts": "ripple p-p",
  ohms: "ohms",
  "dc-amps": "DC",
  "ac-amps": "AC",
};

/** A value in the unit of its quantity; null is an open circuit. */
export const valueWords = (quantity: SuspectReading["quantity"], value: number | null, digits = 3): string =>
  value === null ? "open" : formatValue(value, quantityUnit(quantity), digits);

/** Where, what and when: `B+ DC, tubes-out`. */
export function placeWords(
  { at, to, quantity, condition }: Pick<SuspectReading, "at" | "to" | "quantity" | "condition">,
  reference: string,
): string {
  const amps = quantity.endsWith("amps");
  return `${at}${to === reference || amps ? "" : ` to ${to}`} ${QUANTITY[quantity]}${quantity === "ohms" ? "" : `, ${condition}`}`;
}

/** A belief as percent; nothing is ever certain. */
export function beliefWords(posterior: number): string {
  if (posterior > 0.995) return "over 99 %";
  if (posterior < 0.005) return "under 1 %";
  return `${Math.round(100 * posterior)} %`;
}

/** What the search comes to, in one or two sentences. */
export function verdictWords(report: SuspectReport): string {
  const { verdict, hypotheses, spared, complete } = report;
  const left =
    spared === 0 || verdict === "nothing-off"
      ? ""
      : ` (${spared} of them, wires at points that carry AC, were not simulated, since something else explains the readings)`;
  const looked = `${hypotheses} faults weighed${left}${complete ? "" : "; time ran out before the rest"}.`;
  switch (verdict) {
    case "no-readings":
      return "No reading of this job can be compared with a simulation, so there is nothing to search with.";
    case "nothing-off":
      return hypotheses === 0
        ? "Every reading lies where tolerances and meters put it: no suspect."
        : `Tolerances and meters explain the readings better than any fault: no suspect. ${looked}`;
    case "none-of-these":
      return `No single fault that the search knows explains these readings. ${looked} What follows comes nearest.`;
    case "suspects":
      return `${looked} How likely each is before the readings is judgement: failure notes, and memory where they are silent.`;
  }
}

/** A belief before the readings; most are small. */
export const priorWords = (prior: number): string => (prior < 0.001 ? "under 0.1 %" : `${(100 * prior).toPrecision(2)} %`);

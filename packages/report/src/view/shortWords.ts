import { windowText } from "./figureParts.ts";
import { formatValue } from "./formatValue.ts";

const shortQuantities: Readonly<Record<string, string>> = {
  "dc-volts": "DC",
  "ac-volts": "AC",
  "ripple-volts": "ripple",
  ohms: "",
  "dc-amps": "DC",
  "ac-amps": "AC",
};

/** Condition and quantity for a narrow column: "operating DC"; the unit of the value beside it says volts or amperes. */
export function shortCircumstance(condition: string, quantity: string): string {
  const word = Object.hasOwn(shortQuantities, quantity) ? shortQuantities[quantity] : quantity;
  return [condition, word].filter(Boolean).join(" ");
}

/** "472 to 506 V", kept on one line, where both bounds are written in the same unit, else as `windowText`. */
export function shortWindow(low: number | null | undefined, high: number | null | undefined, unit: string, digits?: number): string {
  const whole = windowText(low, high, unit, digits);
  if (typeof low !== "number" || typeof high !== "number" || !whole.includes(" to ")) return whole;
  const [first = "", second = ""] = whole.split(" to ");
  const suffix = /\u00a0\S+$/.exec(second)?.[0] ?? "";
  return (suffix && first.endsWith(suffix) ? `${first.slice(0, -suffix.length)} to ${second}` : whole).replaceAll(" ", "\u00a0");
}

/** The point that most readings are taken against: it need not be named in every row. "" without any. */
export function commonReturn(points: readonly { to: string }[]): string {
  const counts = new Map<string, number>();
  for (const { to } of points) counts.set(to, (counts.get(to) ?? 0) + 1);
  return [...counts].sort(([, one], [, other]) => other - one)[0]?.[0] ?? "";
}

/** A value for a narrow column; "" when it is not there. */
export const shortValue = (value: number | undefined, unit: string, digits: number): string =>
  value === undefined ? "" : formatValue(value, unit, digits);

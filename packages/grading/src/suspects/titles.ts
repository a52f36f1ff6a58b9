import { type Dimension, formatQuantity } from "@underchassis/calc";
import type { ChassisModel } from "../model/index.ts";
import type { Fault } from "./fault.ts";

const DIMENSION: Readonly<Record<NonNullable<Fault["parameter"]>, Dimension>> = {
  ohms: "resistance",
  farads: "capacitance",
  leakOhms: "resistance",
  esrOhms: "resistance",
  emission: "ratio",
  turns: "ratio",
  rmsVolts: "voltage",
  gridOhms: "resistance",
};

const LEADS: Readonly<Record<string, string>> = {
  "0": "first lead",
  "1": "second lead",
  plate: "plate lead",
  grid: "grid lead",
  cathode: "cathode lead",
  screen: "screen lead",
};

/** Two digits are all that such an estimate is worth. */
function about(value: number, dimension: Dimension): string {
  return dimension === "ratio" ? `${formatQuantity(100 * value, "ratio", 2)} %` : formatQuantity(value, dimension, 2);
}

/** One line: what the suspect is, in trade terms. */
export function titleOf(model: ChassisModel, fault: Fault): string {
  const name = nameOf(model, fault);
  const dimension = fault.parameter === undefined ? "ratio" : DIMENSION[fault.parameter];
  const [value, nominal] = [fault.value, fault.nominal].map((number, index) =>
    number === undefined || !Number.isFinite(number)
      ? undefined
      : index === 0
        ? about(number, dimension)
        : formatQuantity(number, dimension),
  );
  switch (fault.kind) {
    case "open":
      return `${name} is open`;
    case "short":
      return `${name} is shorted`;
    case "drift-high":
      return nominal === undefined || dimension !== "resistance"
        ? `${name} has risen`
        : `${name} has risen to about ${value} from ${nominal}`;
    case "drift-low":
      return `${name} has fallen to about ${value} from ${nominal}`;
    case "wrong-value":
      return `${name} is ${value} where ${nominal} belongs`;
    case "leaky":
      return `${name} leaks, about ${value}`;
    case "lost-capacity":
      return `${name} has about ${value} left of ${nominal}`;
    case "high-esr":
      return `${name} has a series resistance of about ${value}`;
    case "reversed":
      return `${name} is the wrong way round`;
    case "exchanged":
      return `${name} and ${fault.with} are in each other's place`;
    case "moved-lead":
      return `${name}: the ${LEADS[fault.lead ?? ""] ?? fault.lead} that belongs on ${fault.from} lies on ${fault.to}`;
    case "bridge":
      return (fault.value ?? 0) < 10
        ? `${fault.part} and ${fault.to} are joined: solder, or a wire's end`
        : `a path of about ${value} between ${fault.part} and ${fault.to}: dirt, or charred board`;
    case "dead":
      return `${name} draws no current: dead, or not lit`;
    case "weak":
      return `${name} is weak: about ${value} of new`;
    case "gassy":
      return `${name} is gassy: grid current as through ${value} from its plate`;
    case "electrode-short":
      return `${name}: short between ${(fault.lead ?? "").replace("-", " and ")}${value === undefined ? "" : `, about ${value}`}`;
    case "shorted-turns":
      return `${name}: shorted turns, about ${value} of the winding`;
    case "line-voltage":
      return `the line gives about ${value}, not ${nominal}`;
  }
}

function nameOf(model: ChassisModel, { part, element, also }: Fault): string {
  const known = model.parts.get(part);
  if (known === undefined) return part;
  if (also !== undefined) return known.name;
  const rest = element.startsWith(known.id) ? element.slice(known.id.length).replace(/^[./]/, "") : "";
  return rest === "" ? known.name : `${known.name} ${rest}`;
}

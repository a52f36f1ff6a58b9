import { type Candidate, formatQuantity, type Rating, type Rule, type Substitution } from "@underchassis/calc";
import { labelled } from "./labelled.ts";
import { deviationWords, toleranceWords } from "./words.ts";

const units: Readonly<Record<Rating["quantity"], "voltage" | "power">> = {
  "dc volts": "voltage",
  "ac volts": "voltage",
  "body volts": "voltage",
  watts: "power",
};
const ratingNames: Readonly<Record<Rating["quantity"], string>> = {
  "dc volts": "DC",
  "ac volts": "AC",
  "body volts": "across the body",
  watts: "",
};

const cited = ({ text, source }: Rule): string => `${text} [${source}]`;

function oldPart({ part, cornerHertz }: Substitution, dimension: "resistance" | "capacitance"): string {
  return [
    formatQuantity(part.value ?? 0, dimension, 4),
    ...(part.tolerance ? [`${toleranceWords(part.tolerance)}${part.toleranceWritten ? "" : " (not written)"}`] : []),
    ...(part.ratedWatts === undefined ? [] : [formatQuantity(part.ratedWatts, "power")]),
    ...(part.ratedVolts === undefined ? [] : [formatQuantity(part.ratedVolts, "voltage")]),
    ...(part.dielectric ? [part.dielectric] : []),
    ...(cornerHertz === undefined ? [] : [`corner ${formatQuantity(cornerHertz, "frequency")}`]),
  ].join(", ");
}

function candidate({ value, deviation, series, cornerHertz }: Candidate, dimension: "resistance" | "capacitance"): string {
  const corner = cornerHertz === undefined ? "" : `, corner ${formatQuantity(cornerHertz, "frequency")}`;
  return `${formatQuantity(value, dimension, 4)}  (${deviationWords(deviation)}, ${series}${corner})`;
}

function rating({ quantity, least, standard, most, rule }: Rating): string {
  const show = (value: number): string => `${formatQuantity(value, units[quantity])} ${ratingNames[quantity]}`.trim();
  const limit = most === undefined ? `at least ${show(least)}` : `exactly ${show(least)}`;
  const made = standard === undefined ? `no single part is made for ${show(least)}` : show(standard);
  return `${made}, ${limit}: ${cited(rule)}`;
}

/** What may replace one part, for people. */
export function renderSubstitution(sheet: Substitution, columns?: number): string {
  const dimension = sheet.part.kind === "resistor" ? "resistance" : "capacitance";
  const { limits } = sheet;
  const range = `${formatQuantity(limits.lowest, dimension)} to ${formatQuantity(limits.highest, dimension)}: ${cited(limits.rule)}`;
  const values = sheet.candidates.map((one) => candidate(one, dimension));
  return [
    ...labelled("old", [oldPart(sheet, dimension)], columns),
    ...labelled("fit", values.length > 0 ? values : ["no value that is made lies within the limits"], columns),
    ...labelled("limits", [range], columns),
    ...labelled("rating", sheet.ratings.map(rating), columns),
    ...labelled("make", sheet.make, columns),
    ...labelled("why", sheet.rules.map(cited), columns),
    ...labelled("not known", sheet.missing, columns),
    ...labelled("caution", sheet.cautions, columns),
  ].join("\n");
}

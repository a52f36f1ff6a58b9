import { type Decoded, type DecodedReading, formatQuantity } from "@underchassis/calc";
import { labelled } from "./labelled.ts";
import { toleranceWords } from "./words.ts";

function ratings(reading: DecodedReading): string[] {
  const { ratedVolts, ratedVoltsKind, ratedWatts, safetyClass, dielectric, composition, characteristic, failureRatePercent } = reading;
  const coefficient = reading.temperatureCoefficientPpm;
  return [
    ...(ratedWatts === undefined ? [] : [formatQuantity(ratedWatts, "power")]),
    ...(ratedVolts === undefined ? [] : [`${formatQuantity(ratedVolts, "voltage")} ${ratedVoltsKind?.toUpperCase() ?? ""}`.trim()]),
    ...(safetyClass ? [`class ${safetyClass}`] : []),
    ...(dielectric ? [dielectric] : []),
    ...(composition ? [composition.replace("-", " ")] : []),
    ...(characteristic ? [`characteristic ${characteristic}`] : []),
    ...(coefficient ? [`${coefficient[0] === coefficient[1] ? coefficient[0] : coefficient.join(" to ")} ppm/K`] : []),
    ...(failureRatePercent === undefined ? [] : [`${failureRatePercent} % failures in 1000 h`]),
  ];
}

function lines(reading: DecodedReading, number: string, columns: number | undefined): string[] {
  const { written, tolerance, toleranceWritten, section } = reading;
  const share = `${toleranceWords(tolerance)}${toleranceWritten ? "" : " (not written)"}`;
  const which = section === undefined ? reading.kind : `${reading.kind}, section ${section}`;
  const spellings = [written.letters, written.figures, written.bands?.join(" ")].filter((one) => one !== undefined);
  const rated = ratings(reading);
  return [
    `${number}${written.plain} ${share}  ${which}`,
    ...labelled("  rated", rated.length > 0 ? [rated.join(", ")] : [], columns),
    ...labelled("  why", [reading.because], columns),
    ...labelled("  write", [spellings.join(" | ")], columns),
    ...labelled("  note", reading.notes, columns),
    ...labelled("  source", [reading.source], columns),
  ];
}

/** A decoded marking for people: every reading with why, ratings and today's spellings. */
export function renderDecoded(decoded: Decoded, columns?: number): string {
  const { readings, ambiguous, asWritten } = decoded;
  const heading = ambiguous ? `${asWritten}: can be read in more than one way, most likely first` : asWritten;
  const numbered = readings.length > 1;
  const blocks = readings.map((reading, place) => lines(reading, numbered ? `${place + 1}. ` : "", columns).join("\n"));
  return `${[heading, ...blocks].join("\n\n")}\n`;
}

import type { Suspect, SuspectNext } from "@underchassis/grading";
import type { WordTable } from "../view/wordTable.ts";
import { suspectBar } from "./suspectBar.ts";
import { placeWords, valueWords } from "./suspectWords.ts";

/** A suspect's readings: what was read, what it predicts, what a sound chassis shows, and a bar. */
export function suspectTable({ readings }: Pick<Suspect, "readings">, reference: string): WordTable {
  return {
    head: ["reading", "read", "if so", "if sound", "read against", "remark"],
    rows: readings.map((reading) => [
      placeWords(reading, reference),
      valueWords(reading.quantity, reading.read),
      valueWords(reading.quantity, reading.predicted),
      valueWords(reading.quantity, reading.healthy),
      suspectBar(reading.deviation),
      reading.slip === true ? "taken for a slip" : "",
    ]),
  };
}

/** What the next measurement will show, by suspect. */
export function nextTable({ quantity, predictions }: Pick<SuspectNext, "quantity" | "predictions">): WordTable {
  return {
    head: ["shows", "about", "if"],
    rows: predictions.map(({ title, value, spread }) => [
      valueWords(quantity, value),
      value === null ? "" : `± ${valueWords(quantity, spread, 2)}`,
      title,
    ]),
  };
}

/** Other members of a group that are named; JSON has them all. */
const NAMED = 4;

/** What no reading tells from a suspect; empty when it stands alone. */
export function groupWords(group: Suspect["group"]): string {
  const more = group.length > NAMED ? `; ${group.length - NAMED} more` : "";
  return `${group
    .slice(0, NAMED)
    .map(({ title }) => title)
    .join("; ")}${more}`;
}

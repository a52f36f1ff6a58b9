import type { MarkedKind, Marking, MarkingContext, Result } from "../quantities/types.ts";
import { parseMarking } from "./parseMarking.ts";
import { unreadable, workpiece } from "./workpiece.ts";

const number = "(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?![\\d.])";
const between = "\\s*[-+x\u00d7\u2010-\u2014\u2212]\\s*";
const list = `${number}(?:${between}${number})+`;
const values = new RegExp(
  `^\\s*(${list})\\s*([uU\u00b5\u03bc]F?|n[fF]|p[fF]|[mM][mM]?[fF][dD]?s?\\.?)?(?![A-Za-z])\\s*(?:[/@,]|at)?\\s*(.*)$`,
);
const voltsFirst = new RegExp(`^(${number}(?:${between}${number})*)\\s*((?:[A-Za-z]\\.?)*)(.*)$`);
/** "2 x 20 uF"; from five on the first number is a capacitance too: 8 x 8. */
const times = /^\s*([2-4])\s*[x\u00d7*]\s*(\d.*|\.\d.*)$/i;
const apart = /\s*[+;&]\s*(?![-\d.]*\s*%)|,\s+(?=[\d.])/;

const split = (text: string): string[] => text.split(new RegExp(between)).map((part) => part.trim());

/**
 * Every section of a capacitor, in the order written: "20-20/450 V", "40-20-20 mfd 450-450-25 V", "2 x 20 uF 450 V",
 * "40/450 + 20/25". One voltage serves all sections; otherwise there must be as many voltages as sections. A marking of one section, or
 * of another kind, gives one result. Which lug is which section no marking says.
 */
export function parseSections(text: string, kind: MarkedKind, context: MarkingContext = {}): Result<Marking>[] {
  const whole = parseMarking(text, kind, context);
  if (kind !== "capacitor" || whole.ok) return [whole];
  const repeated = times.exec(text);
  if (repeated)
    return numbered(
      text,
      Array.from({ length: Number(repeated[1]) }, () => repeated[2] ?? ""),
      context,
    );
  const found = values.exec(text);
  if (!found) return written(text, context) ?? [whole];
  const capacitances = split(found[1] ?? "");
  const behind = voltsFirst.exec(found[3] ?? "");
  const voltages = behind ? split(behind[1] ?? "") : [];
  if (voltages.length > 1 && voltages.length !== capacitances.length) {
    const piece = workpiece(text, kind);
    if (!piece.ok) return [piece];
    return [unreadable(piece.value, `gives ${capacitances.length} capacitances and ${voltages.length} voltages`)];
  }
  // A can of several sections in whole numbers without unit is an electrolytic: nobody put 20 pF in a can.
  const unit = found[2] ?? "uF";
  const rest = behind ? (behind[3] ?? "") : (found[3] ?? "");
  const pieces = capacitances.map((value, place) => {
    const volts = voltages[place] ?? voltages[0];
    return `${value} ${unit} ${volts === undefined ? "" : `${volts} ${behind?.[2] || "V"}`} ${rest}`.trim();
  });
  return numbered(text, pieces, context);
}

/** Sections each written out: "40/450 + 20/25". Those without a voltage take the last one's. Undefined when there is but one. */
function written(text: string, context: MarkingContext): Result<Marking>[] | undefined {
  const parts = text.split(apart);
  if (parts.length < 2 || parts.some((part) => part.trim() === "")) return undefined;
  const readings = parts.map((part) => parseMarking(part, "capacitor", context));
  // A comma may also stand between a section's own figures: then only sections that all can be read count.
  if (/,\s/.test(text) && readings.some((reading) => !reading.ok)) return undefined;
  const last = readings.at(-1);
  const volts = last?.ok ? last.value.ratedVolts : undefined;
  const complete = parts.map((part, place) => {
    const reading = readings[place];
    return volts !== undefined && reading?.ok && reading.value.ratedVolts === undefined ? `${part} ${volts} V` : part;
  });
  return numbered(text, complete, context);
}

function numbered(text: string, pieces: readonly string[], context: MarkingContext): Result<Marking>[] {
  return pieces.map((piece, place): Result<Marking> => {
    const result = parseMarking(piece.trim(), "capacitor", context);
    if (!result.ok) {
      return {
        ok: false,
        problem: { ...result.problem, message: `section ${place + 1}: ${result.problem.message}`, offset: 0, length: text.length },
      };
    }
    const notes = [`section ${place + 1} of ${pieces.length}: ${piece.trim()}`, ...result.value.notes];
    return { ok: true, value: { ...result.value, asWritten: text, notes } };
  });
}

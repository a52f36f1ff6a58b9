import { type CapacitorFamily, type Dimension, decode, decodeBodyEndDot, decodeCapacitorColours, parseQuantity } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { numberOf, rowsOf } from "./describedTables.ts";

/** The first reading of marks in a declared family. */
function first(marks: string, family: CapacitorFamily) {
  const result = decodeCapacitorColours(marks.split(" "), family);
  if (!result.ok) throw new Error(`${marks}: ${result.problem.message}`);
  const [reading] = result.value;
  if (!reading) throw new Error(`${marks}: no reading`);
  return reading;
}

const meaning = (table: string, what: string) => rowsOf(table).filter((row) => row.meaning === what);

describe("every historic row decodes to its value", () => {
  it.each(rowsOf("body-end-dot"))("body-end-dot: $place $colour", ({ place, colour = "", ...row }) => {
    const result = decodeBodyEndDot({
      body: place === "body" ? colour : "brown",
      end: place === "end" ? colour : "black",
      dot: place === "dot" ? colour : "black",
      ...(place === "other end" ? { otherEnd: colour } : {}),
    });
    if (!result.ok) throw new Error(result.problem.message);
    const { value, tolerance } = result.value;
    if (place === "body") expect(value).toBe(10 * numberOf(row, "figure"));
    else if (place === "end") expect(value).toBe(10 + numberOf(row, "figure"));
    else if (place === "dot") expect(value).toBe(Number(`10e${numberOf(row, "exponent")}`));
    else expect(tolerance.plus).toBe(numberOf(row, "plusMinusPercent") / 100);
  });

  it.each(meaning("mica-rma", "rated volts"))("RMA five dots: $colour volts", ({ colour, ...row }) => {
    expect(first(`red green brown ${colour} silver`, "mica-rma-5")).toMatchObject({
      ratedVolts: numberOf(row, "value"),
      tolerance: { plus: 0.1 },
    });
  });

  it.each(meaning("mica-rma", "tolerance"))("RMA five dots: $colour tolerance", ({ colour, ...row }) => {
    expect(first(`red green brown green ${colour}`, "mica-rma-5")).toMatchObject({
      ratedVolts: 500,
      tolerance: { plus: numberOf(row, "value") / 100 },
    });
  });

  it.each(rowsOf("mica-types"))("six dots: first dot $colour", ({ colour, dielectric }) => {
    const result = decode(`${colour} green brown red yellow black`, { family: "mica-aws-6" });
    // 51 pF is the printed example of the code (mica-code-lessons).
    expect(result).toMatchObject({ ok: true, value: { readings: [{ dielectric, value: 51e-12, characteristic: "C" }] } });
  });

  it.each(rowsOf("mica-characteristics"))("six dots: characteristic $letter", ({ colour, letter, ...row }) => {
    const reading = first(`black green brown ${colour} silver brown`, "mica-aws-6");
    expect(reading).toMatchObject({
      value: 510e-12,
      characteristic: letter,
      temperatureCoefficientPpm: [numberOf(row, "lowPpmPerKelvin"), numberOf(row, "highPpmPerKelvin")],
    });
  });

  it.each(meaning("mica-joint", "power of ten"))("six dots: power of ten $colour", ({ colour, ...row }) => {
    expect(first(`black green brown red silver ${colour}`, "mica-aws-6").value).toBe(Number(`51e${numberOf(row, "value") - 12}`));
  });

  it.each(meaning("paper-bands", "hundreds of volts").filter(({ value }) => value !== "0"))(
    "moulded paper: $colour hundred volts",
    ({ colour, ...row }) => {
      expect(first(`yellow violet orange black ${colour}`, "paper-bands")).toMatchObject({
        value: 47e-9,
        ratedVolts: 100 * numberOf(row, "value"),
      });
      expect(first(`yellow violet orange black brown ${colour}`, "paper-bands")).toMatchObject({
        ratedVolts: 1000 + 100 * numberOf(row, "value"),
      });
    },
  );

  it.each(meaning("ceramic-marks", "older temperature coefficient"))("ceramic, five marks: $colour coefficient", ({ colour, ...row }) => {
    const reading = first(`${colour} yellow violet brown green`, "ceramic-5");
    expect(reading.value).toBe(470e-12);
    const span = reading.temperatureCoefficientPpm;
    if (span) expect(span).toContain(numberOf(row, "value"));
    else expect(reading.notes.join(" ")).toContain(`${row.value} ppm/K`);
  });

  it.each(meaning("ceramic-marks", "tolerance up to 10 pF"))("ceramic: $colour below 10 pF", ({ colour, ...row }) => {
    expect(first(`black yellow violet white ${colour}`, "ceramic-5").tolerance.plus).toBeCloseTo(numberOf(row, "value") / 4.7, 5);
  });

  it.each(meaning("polyester-bands", "rated volts"))("polyester: $colour volts", ({ colour, ...row }) => {
    expect(first(`brown black yellow white ${colour}`, "polyester-bands")).toMatchObject({
      value: 100e-9,
      ratedVolts: numberOf(row, "value"),
    });
  });

  it.each(rowsOf("letter-codes"))("letter $letter of $dimension", ({ letter, dimension, ...row }) => {
    const read = parseQuantity(`4${letter}7`, dimension as Dimension);
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.value.value).toBe(Number(`4.7e${numberOf(row, "exponent")}`));
  });

  it.each(rowsOf("old-units"))("unit $written of $dimension", ({ written, dimension, ...row }) => {
    const read = parseQuantity(`2 ${written}`, dimension as Dimension);
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.value.value / (2 * numberOf(row, "factor"))).toBeCloseTo(1, 4);
  });
});

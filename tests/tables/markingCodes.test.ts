import { capacitanceTolerance, eiaFarads } from "@underchassis/calc";
import { describe, expect, it } from "vitest";
import { picofaradLetters, voltageCodes } from "../../packages/calc/src/markings/capacitanceCode.ts";
import {
  ceramicCoefficients,
  ceramicExponents,
  coefficientFigures,
  coefficientMultipliers,
  percentsAbove10,
  picofaradsUpTo10,
} from "../../packages/calc/src/markings/ceramicMarks.ts";
import {
  colourDigits,
  colourExponents,
  colourNamed,
  temperatureCoefficients,
  tolerancePercents,
} from "../../packages/calc/src/markings/colours.ts";
import { familyFacts } from "../../packages/calc/src/markings/decode/markingFamily.ts";
import { failureRates, tolerancePercent } from "../../packages/calc/src/markings/decodeBands.ts";
import { endPercents } from "../../packages/calc/src/markings/decodeBodyEndDot.ts";
import {
  awsPercents,
  awsPowers,
  micaCharacteristics,
  micaTypes,
  rmaPercents,
  rmaVolts,
} from "../../packages/calc/src/markings/micaDots.ts";
import { paperPercents, polyesterPercents, polyesterVolts } from "../../packages/calc/src/markings/paperBands.ts";
import { toleranceLetters } from "../../packages/calc/src/quantities/parseTolerance.ts";
import { codeLetters } from "../../packages/calc/src/quantities/scanLetterCode.ts";
import { electrolyticVolts, filmVolts, micaVolts } from "../../packages/calc/src/substitutes/ratings.ts";
import { compositionBodies, metalFilmBodies } from "../../packages/calc/src/substitutes/resistorRating.ts";
import { numberOf, rowsOf } from "./describedTables.ts";

type Row = Record<string, string>;
const figures = (rows: readonly Row[], key: string, value: string): Record<string, number> =>
  Object.fromEntries(rows.filter((row) => row[value] !== "").map((row) => [row[key] ?? "", numberOf(row, value)]));
const meaning = (table: string, what: string): Record<string, number> =>
  figures(
    rowsOf(table).filter((row) => row.meaning === what),
    "colour",
    "value",
  );

describe("what the code reads is what the tables say", () => {
  it("figures and powers of ten", () => {
    expect(colourDigits).toEqual(figures(rowsOf("colour-figures"), "colour", "figure"));
    expect(colourExponents).toEqual(figures(rowsOf("colour-figures"), "colour", "exponent"));
  });

  it("resistor tolerances of every year a row speaks of, and no other colour", () => {
    const rows = rowsOf("resistor-tolerance");
    expect(new Set(rows.map((row) => row.colour))).toEqual(new Set(Object.keys(tolerancePercents)));
    for (const row of rows) {
      const colour = colourNamed(row.colour ?? "");
      if (!colour) throw new Error(`${row.colour} is no colour`);
      const from = row.fromYear === "" ? 1930 : numberOf(row, "fromYear");
      const last = row.beforeYear === "" ? 2030 : numberOf(row, "beforeYear") - 1;
      for (const era of [from, last])
        expect([colour, era, tolerancePercent(colour, era)]).toEqual([colour, era, numberOf(row, "plusMinusPercent")]);
    }
  });

  it("temperature coefficients, failure rates, body-end-dot tolerances", () => {
    expect(temperatureCoefficients).toEqual(figures(rowsOf("resistor-temperature"), "colour", "plusMinusPpmPerKelvin"));
    expect(failureRates).toEqual(figures(rowsOf("resistor-fifth-band"), "colour", "percentPerThousandHours"));
    expect(endPercents).toEqual(figures(rowsOf("body-end-dot"), "colour", "plusMinusPercent"));
  });

  it("letters", () => {
    const rows = rowsOf("letter-codes");
    for (const dimension of ["resistance", "capacitance"] as const) {
      const listed = figures(
        rows.filter((row) => row.dimension === dimension),
        "letter",
        "exponent",
      );
      // The code also reads the other case of some letters.
      for (const [letter, exponent] of Object.entries(codeLetters[dimension] ?? {})) {
        const same =
          Object.keys(listed).find((one) => one === letter) ??
          Object.keys(listed).find((one) => one.toLowerCase() === letter.toLowerCase());
        expect([letter, listed[same ?? ""]]).toEqual([letter, exponent]);
      }
      expect(codeLetters[dimension]).toMatchObject(listed);
    }
    const iec = rowsOf("tolerance-letters").filter((row) => row.usedBy === "IEC 60062");
    expect(toleranceLetters).toEqual(
      Object.fromEntries(iec.map((row) => [row.letter, [numberOf(row, "minusPercent"), numberOf(row, "plusPercent")]])),
    );
    expect(picofaradLetters).toEqual(figures(rowsOf("tolerance-letters-small"), "letter", "plusMinusPicofarads"));
    expect(voltageCodes).toEqual(figures(rowsOf("voltage-codes"), "code", "ratedVolts"));
  });

  it("the third figure of a capacitor code, and the letter below 10 pF", () => {
    for (const row of rowsOf("three-figure-code"))
      expect(eiaFarads(`47${row.thirdFigure}`)).toBe(Number(`47e${numberOf(row, "exponent") - 12}`));
    expect(rowsOf("three-figure-code")).toHaveLength(10);
    // 0.5 pF of 5 pF is a tenth (S19).
    expect(capacitanceTolerance("D", 5e-12)).toEqual({ minus: 0.1, plus: 0.1 });
  });

  it("mica", () => {
    expect(rmaVolts).toEqual(meaning("mica-rma", "rated volts"));
    expect(rmaPercents).toEqual(meaning("mica-rma", "tolerance"));
    expect(awsPercents).toEqual(meaning("mica-joint", "tolerance"));
    const powers = meaning("mica-joint", "power of ten");
    expect([...awsPowers].toSorted()).toEqual(Object.keys(powers).toSorted());
    expect(colourExponents).toMatchObject(powers);
    expect(Object.keys(micaTypes).toSorted()).toEqual(
      rowsOf("mica-types")
        .map((row) => row.colour)
        .toSorted(),
    );
    const characteristics = rowsOf("mica-characteristics").map((row) => [
      row.colour,
      [row.letter, numberOf(row, "lowPpmPerKelvin"), numberOf(row, "highPpmPerKelvin")],
    ]);
    expect(micaCharacteristics).toEqual(Object.fromEntries(characteristics));
  });

  it("paper and polyester", () => {
    expect(paperPercents).toEqual(meaning("paper-bands", "tolerance"));
    expect(colourDigits).toEqual(meaning("paper-bands", "hundreds of volts"));
    expect(polyesterPercents).toEqual(meaning("polyester-bands", "tolerance"));
    expect(polyesterVolts).toEqual(meaning("polyester-bands", "rated volts"));
  });

  it("ceramic", () => {
    expect(ceramicExponents).toEqual(meaning("ceramic-marks", "power of ten"));
    expect(percentsAbove10).toEqual(meaning("ceramic-marks", "tolerance above 10 pF"));
    expect(picofaradsUpTo10).toEqual(meaning("ceramic-marks", "tolerance up to 10 pF"));
    expect(coefficientFigures).toEqual(meaning("ceramic-marks", "coefficient figure of six marks"));
    expect(coefficientMultipliers).toEqual(meaning("ceramic-marks", "coefficient multiplier of six marks"));
    const older = meaning("ceramic-marks", "older temperature coefficient");
    const later = meaning("ceramic-marks", "later temperature coefficient");
    expect(ceramicCoefficients).toEqual(
      Object.fromEntries(Object.entries(older).map(([colour, ppm]) => [colour, [ppm, later[colour] ?? null]])),
    );
  });

  it("families, their years and sources", () => {
    const rows = rowsOf("code-families");
    const { printed: _printed, ...coloured } = familyFacts;
    expect(new Set(rows.map((row) => row.family))).toEqual(new Set(Object.keys(coloured)));
    for (const [family, { from, until }] of Object.entries(coloured)) {
      const own = rows.filter((row) => row.family === family);
      expect([family, Math.min(...own.map((row) => numberOf(row, "fromYear")))]).toEqual([family, from]);
      for (const row of own) expect([family, row.toYear]).toEqual([family, until === undefined ? "" : String(until)]);
    }
  });

  it("ratings that substitutes are chosen from", () => {
    const made = rowsOf("capacitor-rated-volts");
    const volts = (make: string): number[] => made.filter((row) => row.make === make).map((row) => numberOf(row, "ratedVolts"));
    expect([volts("electrolytic"), volts("film"), volts("mica")]).toEqual([[...electrolyticVolts], [...filmVolts], [...micaVolts]]);
    const bodies = (composition: string): number[][] =>
      rowsOf("resistor-bodies")
        .filter((row) => row.composition === composition)
        .map((row) => [numberOf(row, "ratedWatts"), numberOf(row, "maxVolts")]);
    expect(compositionBodies).toEqual(bodies("carbon-composition"));
    expect(metalFilmBodies).toEqual(bodies("metal-film"));
  });
});

describe("rows that follow from other rows", () => {
  it("class I trade names follow from their three characters", () => {
    const places = rowsOf("ceramic-class-1");
    const value = (place: string, character: string | undefined): number => {
      const row = places.find((one) => one.place === place && one.character === character);
      if (!row) throw new Error(`${place} ${character} is missing`);
      return numberOf(row, "value");
    };
    for (const row of rowsOf("ceramic-trade-names")) {
      const [figure, multiplier, tolerance] = row.code ?? "";
      expect([row.code, value("figure", figure) * value("multiplier", multiplier) || 0]).toEqual([
        row.code,
        expect.closeTo(numberOf(row, "ppmPerKelvin"), 9),
      ]);
      expect(value("tolerance ppm/K", tolerance)).toBe(numberOf(row, "plusMinusPpmPerKelvin"));
      const sign = row.tradeName?.startsWith("N") && row.tradeName !== "NP0" ? -1 : 1;
      if (row.tradeName !== "NP0") expect(sign * Number(row.tradeName?.slice(1))).toBe(numberOf(row, "ppmPerKelvin"));
    }
  });

  // Reference section 4.6 (S19): worked there in words.
  it.each([
    ["Z5U", 10, 85, -56, 22],
    ["Y5V", -30, 85, -82, 22],
    ["X7R", -55, 125, -15, 15],
    ["Y5P", -30, 85, -10, 10],
  ])("class II %s", (code, low, high, down, up) => {
    const of = (place: string, at: number): Row =>
      rowsOf("ceramic-class-2").find((row) => row.place === place && row.character === code[at]) ?? {};
    expect(numberOf(of("lowest degC", 0), "low")).toBe(low);
    expect(numberOf(of("highest degC", 1), "high")).toBe(high);
    expect([numberOf(of("change percent", 2), "low"), numberOf(of("change percent", 2), "high")]).toEqual([down, up]);
  });

  it("wire diameters follow the gauge's own formula, and resistance the diameter (wire-tables, computed)", () => {
    for (const row of rowsOf("wire-gauges")) {
      const inches = 0.005 * 92 ** ((36 - numberOf(row, "gauge")) / 39);
      expect(numberOf(row, "inches") / inches).toBeCloseTo(1, 2);
      expect(numberOf(row, "millimetres") / (25.4 * inches)).toBeCloseTo(1, 2);
      // Annealed copper at 20 degC, 1.724e-8 ohm metre (from-memory).
      const ohms = (1.724e-8 * 304.8) / ((Math.PI / 4) * (0.0254 * inches) ** 2);
      expect(numberOf(row, "ohmsPerThousandFeet") / ohms).toBeCloseTo(1, 2);
    }
  });

  it("a critical resistance of composition bodies near 250 kohm, as the reference prints (section 3.4)", () => {
    const critical = compositionBodies.map(([watts, volts]) => Math.round(volts ** 2 / watts / 1000));
    expect(critical).toEqual([180, 250, 245, 250, 281]);
    expect(rowsOf("composition-sizes").map((row) => numberOf(row, "ratedWatts"))).toEqual(compositionBodies.map(([watts]) => watts));
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { preferredSeries } from "../../quantities/preferred/series.ts";
import { colours } from "../colours.ts";
import { encodeBands } from "../encodeBands.ts";
import { decode } from "./decode.ts";
import type { DecodeContext } from "./decoded.ts";
import { markingFamilies } from "./markingFamily.ts";

function read(text: string, context: DecodeContext = {}) {
  const result = decode(text, context);
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

const problemOf = (text: string, context: DecodeContext = {}) => {
  const result = decode(text, context);
  if (result.ok) throw new Error(`${text} was read as ${result.value.readings[0]?.written.plain}`);
  return result.problem;
};

describe("decode: the likeliest reading", () => {
  it.each([
    // IEC 60062 (iec-60062-2016), worked by hand.
    ["yellow violet orange silver", {}, { kind: "resistor", value: 47e3, tolerance: { plus: 0.1 }, family: "resistor-bands" }],
    ["yellow violet orange silver 1W", {}, { value: 47e3, ratedWatts: 1 }],
    ["4k7", {}, { kind: "resistor", value: 4700 }],
    ["R47", {}, { kind: "resistor", value: 0.47 }],
    ["4n7", {}, { kind: "capacitor", value: 4.7e-9 }],
    ["473J 100V", {}, { kind: "capacitor", value: 47e-9, tolerance: { plus: 0.05 }, ratedVolts: 100 }],
    ["104K", {}, { kind: "capacitor", value: 100e-9, tolerance: { plus: 0.1 } }],
    ["470K", {}, { kind: "resistor", value: 470e3 }],
    // Old spellings (common-practice).
    [".05 600V", {}, { kind: "capacitor", value: 50e-9, ratedVolts: 600, ratedVoltsKind: "dc", dielectric: "paper" }],
    ["250 mmf mica", {}, { kind: "capacitor", value: 250e-12, dielectric: "mica" }],
    ["40 mfd 450V", {}, { kind: "capacitor", value: 40e-6, dielectric: "electrolytic" }],
    ["500M", { era: 1930, kind: "resistor" }, { value: 500e3 }],
    // RMA body-end-dot (rma-resistor-code).
    ["body red, end green, dot orange, other end silver", {}, { value: 25e3, tolerance: { plus: 0.1 }, family: "body-end-dot" }],
    ["red green orange", { family: "body-end-dot" }, { value: 25e3, tolerance: { plus: 0.2 } }],
    // The printed example of the six-dot code (mica-code-lessons): 51 pF, characteristic C.
    ["black green brown red yellow black", {}, { kind: "capacitor", value: 51e-12, characteristic: "C", family: "mica-aws-6" }],
    ["red green brown mica", {}, { kind: "capacitor", value: 250e-12, ratedVolts: 500, dielectric: "mica" }],
  ] as const)("%s %o", (text, context, wanted) => {
    expect(read(text, context).readings[0]).toMatchObject(wanted);
  });

  it("gives each section of a can, in the order written, and calls that no ambiguity", () => {
    const { readings, ambiguous } = read("40-20 mfd 450-25 V");
    expect(readings.map(({ section, value, ratedVolts }) => [section, value, ratedVolts])).toEqual([
      [1, 40e-6, 450],
      [2, 20e-6, 25],
    ]);
    expect(ambiguous).toBe(false);
  });
});

describe("decode: the other readings", () => {
  it("keeps both kinds when nothing tells them apart", () => {
    const { readings, ambiguous } = read("472");
    expect(readings.map(({ kind, value }) => [kind, value])).toEqual(
      expect.arrayContaining([
        ["resistor", 4700],
        ["capacitor", 4.7e-9],
      ]),
    );
    expect(ambiguous).toBe(true);
    expect(read("472", { kind: "capacitor" }).readings.every(({ kind }) => kind === "capacitor")).toBe(true);
  });

  it("keeps the other direction and the other codes of three colours", () => {
    const found = read("red green brown").readings.map(({ family, value }) => [family, value]);
    expect(found).toEqual(
      expect.arrayContaining([
        ["resistor-bands", 250],
        ["resistor-bands", 1500],
        ["mica-rma-3", 250e-12],
      ]),
    );
  });

  it("gives the literal reading of older British ceramics (british-ceramic-codes)", () => {
    expect(read("471K", { kind: "capacitor" }).readings.map(({ value }) => value)).toEqual([470e-12, 471e-12]);
  });

  it("leaves out codes of another time, and says so where nothing else is left", () => {
    const families = (era?: number) =>
      read("red green brown green red", { kind: "capacitor", ...(era && { era }) }).readings.map(({ family }) => family);
    expect(families()).toContain("mica-rma-5");
    expect(families(1965)).not.toContain("mica-rma-5");
    expect(families(1965)).toContain("paper-bands");
    expect(families(1936)).toEqual(["mica-rma-5", "mica-rma-5"]);
    const [late] = read("red green orange", { family: "body-end-dot", era: 1975 }).readings;
    expect(late?.notes[0]).toMatch(/roughly 1930 to 1950, not in 1975/);
  });

  it("reads orange and yellow as 3 and 4 % on early resistors (reference section 2.1, from-memory)", () => {
    expect(read("brown black red orange", { era: 1948 }).readings[0]?.tolerance.plus).toBe(0.03);
    expect(read("brown black red yellow", { era: 1948 }).readings[0]?.tolerance.plus).toBe(0.04);
  });

  it("has one reading only of what is said once", () => {
    const { readings } = read("yellow violet orange silver");
    expect(readings).toHaveLength(1);
  });
});

describe("decode: round trips", () => {
  it("reads back every E24 and E96 value from its bands and from its own spellings", () => {
    const cases = [
      ...preferredSeries.E24.map((value) => [value * 10, 0.05] as const),
      ...preferredSeries.E96.map((value) => [value, 0.01] as const),
    ];
    for (const [figures, tolerance] of cases) {
      for (const power of [-1, 0, 1, 2, 3, 4]) {
        const ohms = Number(`${figures}e${power}`);
        const bands = encodeBands(ohms, tolerance);
        if (!bands.ok) throw new Error(bands.problem.message);
        const [reading] = read(bands.value.join(" "), { kind: "resistor", composition: "metal-film" }).readings;
        expect([reading?.value, reading?.tolerance.plus, reading?.written.bands], bands.value.join(" ")).toEqual([
          ohms,
          tolerance,
          bands.value,
        ]);
        for (const text of [reading?.written.letters ?? "", reading?.written.plain ?? ""])
          expect(read(text, { kind: "resistor" }).readings[0]?.value, text).toBe(ohms);
      }
    }
  });

  it("reads back every E24 capacitor from its letters and its three figures", () => {
    for (const figures of preferredSeries.E24) {
      for (const power of [-12, -11, -10, -9, -8, -7]) {
        const farads = Number(`${figures}e${power}`);
        const [reading] = read(`${figures * 10 ** (power + 12)} pF 10%`).readings;
        expect(reading?.value).toBe(farads);
        const { letters = "", figures: code = "" } = reading?.written ?? {};
        expect(read(letters, { kind: "capacitor" }).readings[0]?.value, letters).toBe(farads);
        expect(read(code, { kind: "capacitor" }).readings[0], code).toMatchObject({ value: farads, tolerance: { plus: 0.1 } });
      }
    }
  });
});

describe("decode: what cannot be read", () => {
  it("names the misspelt colour and puts the nearest in its place", () => {
    expect(problemOf("yelow violet orange")).toMatchObject({ offset: 0, length: 5, nearest: "yellow violet orange" });
    expect(problemOf("yellow violet ornge silver")).toMatchObject({ offset: 14, length: 5, nearest: "yellow violet orange silver" });
    expect(problemOf("red tartan red").message).toContain("tartan");
  });

  it.each([
    ["", /nothing is written/],
    ["hello", /gives no/],
    ["red", /1 band/],
    ["black black black", /fits no/],
    ["gold gold gold gold", /fits no/],
    ["red red red red red red red", /7 bands/],
    ["body gold, end red, dot red", /gold body/],
  ])("%s", (text, message) => {
    const { message: said, expected } = problemOf(text, { kind: "resistor" });
    expect(said).toMatch(message);
    expect(expected).not.toBe("");
  });

  it("says that a colour code needs colours", () => {
    expect(problemOf("4k7", { family: "mica-rma-3" })).toMatchObject({
      message: '"4k7" names no colours',
      nearest: "yellow violet orange",
    });
  });

  it("never throws, and every reading has a value, a reason and a source", () => {
    const words = fc.array(
      fc.oneof(fc.constantFrom(...colours, "mica", "dots", "600V", "1W", "104K", "4k7", ".05", "body", "end"), fc.string({ maxLength: 6 })),
      { maxLength: 7 },
    );
    fc.assert(
      fc.property(
        words,
        fc.option(fc.constantFrom(...markingFamilies)),
        fc.option(fc.integer({ min: 1900, max: 2030 })),
        (list, family, era) => {
          const result = decode(list.join(" "), { ...(family && { family }), ...(era && { era }) });
          if (!result.ok) return result.problem.message !== "" && result.problem.expected !== "";
          return result.value.readings.every(
            (one) => one.value >= 0 && Number.isFinite(one.value) && one.because !== "" && one.source !== "" && one.written.plain !== "",
          );
        },
      ),
      { numRuns: 3000 },
    );
  }, 30_000);
});

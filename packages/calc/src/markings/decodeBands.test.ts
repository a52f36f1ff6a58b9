import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { preferredSeries } from "../quantities/preferred/series.ts";
import { decodeBands } from "./decodeBands.ts";
import { encodeBands } from "./encodeBands.ts";

const first = (bands: string, context = {}) => {
  const result = decodeBands(bands.split(" "), context);
  if (!result.ok) throw new Error(result.problem.message);
  const [reading, ...others] = result.value;
  if (!reading) throw new Error("no reading");
  return { reading, others };
};

describe("decodeBands", () => {
  // IEC 60062 colours (S4), worked by hand.
  it.each([
    ["yellow violet orange silver", 47e3, 0.1],
    ["brown black green", 1e6, 0.2],
    ["red violet yellow gold", 270e3, 0.05],
    ["yellow violet gold gold", 4.7, 0.05],
    ["brown black silver gold", 0.1, 0.05],
    ["brown red black black brown", 120, 0.01],
    ["orange orange white brown brown", 3390, 0.01],
    ["brown green black orange blue", 150e3, 0.0025],
    ["YE VT OG SR", 47e3, 0.1],
    ["brown gray red gold", 1800, 0.05],
    ["yellow violet purple none", 470e6, 0.2],
  ])("reads %s", (bands, ohms, tolerance) => {
    const { reading } = first(bands);
    expect(reading.value).toBe(ohms);
    expect(reading.tolerance).toEqual({ minus: tolerance, plus: tolerance });
  });

  it("reads the fifth band of a composition part as a failure rate, and keeps the film reading beside it", () => {
    // Reference section 2.2: gold in position 4 of 5 is ambiguous; yellow is level S, 0.001 % per 1000 h (S7).
    const { reading, others } = first("red red brown gold yellow", { composition: "carbon-composition" });
    expect(reading).toMatchObject({ value: 220, tolerance: { plus: 0.05 }, failureRatePercent: 0.001 });
    expect(others.map((other) => other.value)).toContain(22.1);
    expect(first("red red brown gold brown", { composition: "metal-film", era: 1990 }).reading.value).toBe(22.1);
  });

  it("turns a part round when only that direction can be read", () => {
    expect(first("silver orange violet yellow").reading).toMatchObject({ value: 47e3 });
    expect(first("gold yellow violet red").reading).toMatchObject({ value: 27e4 });
  });

  it("gives the temperature coefficient of a sixth band (S4)", () => {
    expect(first("brown black black red brown red").reading).toMatchObject({ value: 10e3, temperatureCoefficientPpm: [-50, 50] });
  });

  it("reads grey as a tolerance by the edition of its year (S4, S5)", () => {
    const { reading } = first("brown black black brown grey", { era: 1990 });
    expect(reading.tolerance.plus).toBe(0.0005);
    expect(first("brown black black brown grey", { era: 2020 }).reading.tolerance.plus).toBe(0.0001);
  });

  it("reads a single black band as a link and refuses what no code has", () => {
    expect(first("black").reading.value).toBe(0);
    for (const bands of ["red", "red red", "pink pink pink", "red tartan red", "black black black", "red red red red red red red"]) {
      expect(decodeBands(bands.split(" ")).ok).toBe(false);
    }
    expect(decodeBands(["red", "tartan", "red"])).toMatchObject({ problem: { offset: 4, length: 6 } });
    expect(decodeBands([]).ok).toBe(false);
  });
});

describe("encodeBands", () => {
  it("paints every E24 value from 1 ohm to 9.1 Mohm so that it reads back", () => {
    for (const member of preferredSeries.E24) {
      for (let power = -1; power <= 5; power += 1) {
        for (const tolerance of [0.05, 0.1, 0.2]) {
          const ohms = Number(`${member}e${power}`);
          const bands = encodeBands(ohms, tolerance);
          if (!bands.ok) throw new Error(bands.problem.message);
          const { reading } = first(bands.value.join(" "));
          expect([reading.value, reading.tolerance.plus], bands.value.join(" ")).toEqual([ohms, tolerance]);
        }
      }
    }
  });

  it("paints every E96 and E24 value at 1 % from 1 ohm to 9.76 Mohm so that it reads back", () => {
    const members = [...preferredSeries.E96, ...preferredSeries.E24.map((member) => member * 10)];
    for (const member of members) {
      for (let power = -2; power <= 4; power += 1) {
        const ohms = Number(`${member}e${power}`);
        const bands = encodeBands(ohms, 0.01);
        if (!bands.ok) throw new Error(bands.problem.message);
        // Below 100 ohm the fourth band is gold or silver: only a declared film part settles it (reference section 2.2).
        for (const context of power < 0 ? [{ composition: "metal-film" }] : [{}, { era: 1975 }]) {
          const { reading } = first(bands.value.join(" "), context);
          expect([reading.value, reading.tolerance.plus], bands.value.join(" ")).toEqual([ohms, 0.01]);
        }
      }
    }
  });

  it("paints three figures at 2 %", () => {
    expect(encodeBands(4750, 0.02)).toEqual({ ok: true, value: ["yellow", "violet", "green", "brown", "red"] });
  });

  it("refuses what bands cannot carry, with the nearest that they can", () => {
    expect(encodeBands(4750, 0.05)).toMatchObject({ ok: false, problem: { nearest: "4800 ohm" } });
    expect(encodeBands(470, 0.07).ok).toBe(false);
    for (const ohms of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e15]) expect(encodeBands(ohms, 0.05).ok).toBe(false);
  });

  it("is undone by decodeBands among its readings for any two figures", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 99 }),
        fc.integer({ min: -2, max: 7 }),
        fc.constantFrom(0.05, 0.1, 0.2),
        (figures, power, tolerance) => {
          const ohms = Number(`${figures}e${power}`);
          const bands = encodeBands(ohms, tolerance);
          if (!bands.ok) throw new Error(bands.problem.message);
          const { reading, others } = first(bands.value.join(" "));
          expect([reading, ...others].map((one) => one.value)).toContain(ohms);
        },
      ),
    );
  });
});

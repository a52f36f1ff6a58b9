import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseQuantity } from "./parseQuantity.ts";
import type { Dimension } from "./types.ts";
import { dimensions } from "./units.ts";

// Expected values: the meaning of the units in SI; old spellings from reference section 1.4 (S58), else common-practice.
const good: readonly (readonly [string, Dimension, number])[] = [
  ["0.05 mfd", "capacitance", 5e-8],
  [".05", "capacitance", 5e-8],
  ["250", "capacitance", 250e-12],
  ["1", "capacitance", 1e-12],
  ["250 mmf", "capacitance", 250e-12],
  ["250 µµf", "capacitance", 250e-12],
  ["40uF", "capacitance", 40e-6],
  ["40 µF", "capacitance", 40e-6],
  ["40 μF", "capacitance", 40e-6],
  ["40 MF", "capacitance", 40e-6],
  ["8 mfd.", "capacitance", 8e-6],
  ["4n7", "capacitance", 4.7e-9],
  ["p33", "capacitance", 0.33e-12],
  ["u47", "capacitance", 0.47e-6],
  ["35 cm", "capacitance", 38.941e-12], // 1 cm = 1.1126 pF
  ["9 jar", "capacitance", 0.01e-6], // 1 jar = 1/900 uF
  ["4R7", "resistance", 4.7],
  ["R47", "resistance", 0.47],
  ["4k7", "resistance", 4700],
  ["47K3", "resistance", 47300],
  ["4M7", "resistance", 4.7e6],
  ["1.2 Meg", "resistance", 1.2e6],
  ["470K", "resistance", 470e3],
  ["470 K ohm", "resistance", 470e3],
  ["1,500 ohms", "resistance", 1500],
  ["5 Ω", "resistance", 5], // Greek capital omega
  ["5 Ω", "resistance", 5], // ohm sign
  ["5 ω", "resistance", 5], // small omega on old drawings
  ["5 ohm", "resistance", 5],
  ["2.2e3", "resistance", 2200],
  ["1 megohm", "resistance", 1e6],
  ["455 kc", "frequency", 455e3],
  ["7.1 Mc", "frequency", 7.1e6],
  ["60 cps", "frequency", 60],
  ["60 c/s", "frequency", 60],
  ["117 V", "voltage", 117],
  ["117 vac", "voltage", 117],
  ["285", "voltage", 285],
  ["-55 V", "voltage", -55],
  ["−55 V", "voltage", -55],
  ["475 W.V.D.C.", "voltage", 475],
  ["1.5 kV", "voltage", 1500],
  ["12 mA", "current", 0.012],
  ["12 MA", "current", 0.012],
  ["3/4 A", "current", 0.75],
  ["1 1/2 A", "current", 1.5],
  ["1-1/2 A", "current", 1.5],
  ["1½ A", "current", 1.5],
  ["1/2 W", "power", 0.5],
  ["½ W", "power", 0.5],
  ["0.5W", "power", 0.5],
  ["8 hy", "inductance", 8],
  ["2.5 mh", "inductance", 2.5e-3],
  ["20 J", "energy", 20],
  ["5200 umhos", "conductance", 5.2e-3],
  ["25 degC", "temperature", 298.15],
  ["77 °F", "temperature", 298.15],
  ["2 min", "time", 120],
  ["10 %", "ratio", 0.1],
  ["1/4 in", "length", 6.35e-3],
];

const bad: readonly (readonly [string, Dimension, RegExp, string | undefined])[] = [
  ["", "voltage", /nothing is written/, undefined],
  ["   ", "voltage", /nothing is written/, undefined],
  ["47 kV", "capacitance", /unit of voltage, not of capacitance/, "47 uF"],
  ["47 k", "capacitance", /not of capacitance/, "47 uF"],
  ["12 mA", "voltage", /unit of current/, "12 mV"],
  ["40 mgd", "capacitance", /not a unit/, "40 mfd"],
  ["7.5", "capacitance", /microfarad or picofarad/, "7.5 uF"],
  ["10/450", "capacitance", /not a unit/, "10 uF"],
  ["10/8 W", "power", /not a unit/, "10 W"],
  ["4,7 k", "resistance", /comma/, "4.7 k"],
  ["0,047 uF", "capacitance", /comma/, "0.047 uF"],
  ["2.2 m", "resistance", /milliohm or Meg/, "2.2 Meg"],
  ["-5 ohm", "resistance", /negative/, "5 ohm"],
  ["-1 uF", "capacitance", /negative/, "1 uF"],
  ["-300 degC", "temperature", /absolute zero/, undefined],
  ["25", "temperature", /no unit/, "25 degC"],
  ["NaN", "voltage", /does not begin with a number/, undefined],
  ["Infinity", "voltage", /does not begin with a number/, undefined],
  ["1e16 V", "voltage", /too large/, undefined],
  ["1e400", "voltage", /too large/, undefined],
  ["1e-19 F", "capacitance", /too small/, undefined],
  ["1.2.3 V", "voltage", /not one number/, undefined],
  ["12\u0007V", "voltage", /U\+0007/, "12 V"],
  ["12\u200bV", "voltage", /U\+200B/, "12 V"],
  ["ohm", "resistance", /does not begin/, undefined],
  ["9".repeat(300), "voltage", /300 characters/, undefined],
];

describe("parseQuantity", () => {
  it.each(good)("reads %j as %s %d", (text, dimension, value) => {
    const result = parseQuantity(text, dimension);
    if (!result.ok) throw new Error(result.problem.message);
    expect(Math.abs(result.value.value - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
    expect(result.value.asWritten).toBe(text);
  });

  it.each(bad)("refuses %j as %s", (text, dimension, message, nearest) => {
    const result = parseQuantity(text, dimension);
    if (result.ok) throw new Error(`read as ${result.value.value}`);
    expect(result.problem.message).toMatch(message);
    expect(result.problem.nearest).toBe(nearest);
    expect(result.problem.expected).not.toBe("");
  });

  it("says where the wrong part stands", () => {
    const result = parseQuantity("  47 kV ", "capacitance");
    expect(result).toMatchObject({ ok: false, problem: { offset: 5, length: 2 } });
  });

  it("notes what the trade rule decided, and follows the context", () => {
    expect(parseQuantity(".05", "capacitance")).toMatchObject({ value: { notes: [expect.stringContaining("below 1")] } });
    expect(parseQuantity("40", "capacitance", { electrolytic: true })).toMatchObject({ value: { value: 40e-6 } });
    expect(parseQuantity("40 uF", "capacitance")).not.toHaveProperty("value.notes");
  });

  it("reads an open circuit as an infinite resistance only", () => {
    expect(parseQuantity("open", "resistance")).toMatchObject({ value: { value: Number.POSITIVE_INFINITY } });
    expect(parseQuantity("open", "voltage").ok).toBe(false);
  });

  it("never throws, and gives finite numbers or a problem inside the text", () => {
    const pieces = fc.array(fc.constantFrom(..."0123456789.,/-+eEkKmMuµΩVAFRpn %x½ \u0000".split(""), "mfd", "ohm", "Meg", "1/2"), {
      maxLength: 12,
    });
    const texts = fc.oneof(
      fc.string(),
      fc.string({ unit: "binary" }),
      pieces.map((list) => list.join("")),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(...dimensions), (text, dimension) => {
        const result = parseQuantity(text, dimension);
        if (result.ok) return Number.isFinite(result.value.value);
        const { offset, length } = result.problem;
        return offset >= 0 && length >= 0 && offset + length <= text.length;
      }),
      { numRuns: 1500 },
    );
  }, 30_000);
});

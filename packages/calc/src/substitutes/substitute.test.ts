import { describe, expect, it } from "vitest";
import { parseMarking } from "../markings/parseMarking.ts";
import { roles } from "./roles.ts";
import { substitute, substituteMarking } from "./substitute.ts";
import type { Rating, SubstituteContext, Substitution } from "./substitution.ts";

function only(text: string, role: string, context: SubstituteContext = {}): Substitution {
  const [result, ...others] = substituteMarking(text, role, context);
  if (!result?.ok) throw new Error(result?.problem.message);
  expect(others).toEqual([]);
  return result.value;
}

const values = (text: string, role: string, context: SubstituteContext = {}): number[] =>
  only(text, role, context).candidates.map(({ value }) => value);
const rating = (sheet: Substitution, quantity: Rating["quantity"]) => sheet.ratings.find((one) => one.quantity === quantity);

/** Largest input capacitor of the type, recalled (from-memory). */
const rectifier = { type: "5Y3GT", maxInputFarads: 20e-6, source: "from-memory" };

describe("resistors: historic values and their nearest (reference section 1.3)", () => {
  it.each([
    ["25k", 24e3],
    ["35k", 36e3],
    ["40k", 39e3],
    ["50k", 51e3],
    ["60k", 62e3],
    ["250k", 240e3],
    ["500k", 510e3],
    ["75k", 75e3],
  ])("%s becomes %d ohm", (old, ohms) => {
    expect(values(old, "general")[0]).toBe(ohms);
  });

  it("stays within the old part's tolerance", () => {
    expect(only("50k 5%", "general").limits).toMatchObject({ lowest: 47500, highest: 52500 });
    expect(values("50k 5%", "general")).toEqual([51e3]);
  });

  it("asks 10 % at most where the value sets a voltage (rule R6, common-practice)", () => {
    expect(only("50k", "bias").limits).toMatchObject({ lowest: 45e3, highest: 55e3 });
    expect(only("50k 2%", "bias").limits).toMatchObject({ lowest: 49e3, highest: 51e3 });
  });

  it("doubles the watts, but never in a B+ isolation resistor, which is a fuse (rule R7)", () => {
    expect(rating(only("10k 1W", "general"), "watts")).toMatchObject({ least: 2, standard: 2 });
    expect(rating(only("10k 1W", "isolation"), "watts")).toMatchObject({ least: 1, standard: 1, most: 1 });
  });

  it("looks at the body's volts: a film body stands less than a composition one of the same watts (section 8.2)", () => {
    // 1 Mohm, 1/2 W: its power would let 707 V stand, its body 350 V; the first normal metal film body with 350 V is 1 W.
    expect(rating(only("1M 1/2W", "general"), "body volts")).toMatchObject({ least: 350, standard: 350 });
    // 10 kohm, 1/2 W: sqrt(0.5 * 10000) = 70.7 V.
    expect(rating(only("10k 1/2W", "general"), "body volts")?.least).toBeCloseTo(70.711, 3);
    const high = only("1M 1/2W", "general", { workingVolts: 600 });
    expect(rating(high, "body volts")).not.toHaveProperty("standard");
    expect(rating(high, "body volts")?.rule.text).toContain("in series");
  });

  it("keeps ordinary film out of surge places, and keeps a control's value", () => {
    expect(
      only("33 5W", "surge")
        .rules.map(({ text }) => text)
        .join(),
    ).toMatch(/film opens/);
    expect(values("500k", "control")).toEqual([500e3, 470e3]);
    expect(values("250k", "control")[0]).toBe(250e3);
  });
});

describe("filter capacitors", () => {
  it.each([
    // Reference section 1.3: E6 value not below the old one.
    ["2 450V", 2.2e-6],
    ["4 450V", 4.7e-6],
    ["8 450V", 10e-6],
    ["12 450V", 15e-6],
    ["16 450V", 22e-6],
    ["20 450V", 22e-6],
    ["25 25V", 33e-6],
    ["40 450V", 47e-6],
    ["80 450V", 100e-6],
    ["100 450V", 100e-6],
    ["125 350V", 150e-6],
  ])("later filter %s becomes %d F", (old, farads) => {
    const sheet = only(old, "filter");
    expect(sheet.candidates[0]?.value).toBe(farads);
    expect(sheet.limits.highest / sheet.limits.lowest).toBeCloseTo(2, 9);
  });

  it("a reservoir goes up only as far as its rectifier allows (section 10.5, rule R1)", () => {
    expect(values("16/450", "reservoir", { rectifier })).toEqual([15e-6]);
    expect(values("16/450", "reservoir", { rectifier: { ...rectifier, maxInputFarads: 40e-6 } })).toEqual([15e-6, 22e-6, 33e-6]);
    expect(values("8/450", "reservoir", { rectifier })).toEqual([10e-6, 15e-6, 6.8e-6]);
    expect(only("8/450", "reservoir", { rectifier }).limits.rule).toMatchObject({
      source: "from-memory",
      text: expect.stringContaining("5Y3GT"),
    });
  });

  it("an original above the limit is not repeated, and it says so", () => {
    const sheet = only("40/450", "reservoir", { rectifier });
    expect(sheet.candidates.map(({ value }) => value)).toEqual([18e-6]);
    expect(sheet.candidates[0]?.deviation).toBe(-0.55);
    expect(sheet.rules.map(({ text }) => text)).toContain("the old part was already above what the rectifier allows");
  });

  it("without a rectifier the next size up is the end, and the type is asked for", () => {
    const sheet = only("8/450", "reservoir");
    expect(sheet.limits.highest).toBe(10e-6);
    expect(sheet.missing).toContain("the rectifier's type");
  });

  it("volts: the old rating and 1.25 times the worst case (rule R4)", () => {
    expect(rating(only("8/450", "filter"), "dc volts")).toMatchObject({ least: 450, standard: 450 });
    expect(rating(only("8/450", "filter", { workingVolts: 390 }), "dc volts")).toMatchObject({ least: 487.5, standard: 500 });
    expect(rating(only("8/450", "filter", { workingVolts: 420 }), "dc volts")).not.toHaveProperty("standard");
  });

  it("gives one answer a section", () => {
    const results = substituteMarking("40-20 mfd 450-25 V", "filter");
    expect(results.map((one) => one.ok && [one.value.candidates[0]?.value, rating(one.value, "dc volts")?.standard])).toEqual([
      [47e-6, 450],
      [22e-6, 25],
    ]);
  });
});

describe("paper and mica", () => {
  it.each([
    // Reference section 1.3 and rule R5.
    [".05 600V", 0.047e-6],
    [".02 400V", 0.022e-6],
    [".005 600V", 0.0047e-6],
    [".25 400V", 0.27e-6],
    [".1 400V", 0.1e-6],
  ])("coupling %s becomes %d F", (old, farads) => {
    expect(values(old, "coupling")[0]).toBe(farads);
  });

  it("says what the corner was and what it becomes: 1/(2 pi R C)", () => {
    const sheet = only(".05 600V paper", "coupling", { gridLeakOhms: 470e3 });
    // 1 / (2 pi * 470e3 * 50e-9) = 6.773 Hz; with 47 nF 7.205 Hz.
    expect(sheet.cornerHertz).toBeCloseTo(6.773, 3);
    expect(sheet.candidates[0]?.cornerHertz).toBeCloseTo(7.205, 3);
    expect(only(".05 600V paper", "coupling").missing.join()).toContain("grid resistor");
    expect(only("25 25V", "cathode-bypass", { cathodeOhms: 1500 }).cornerHertz).toBeCloseTo(4.244, 3);
  });

  it("film volts: 600 V paper becomes 630 V; 1.25 times the worst case rules where it is more (section 9.8)", () => {
    expect(rating(only(".05 600V", "coupling"), "dc volts")).toMatchObject({ least: 600, standard: 630 });
    expect(rating(only(".05 200V", "coupling", { workingVolts: 330 }), "dc volts")).toMatchObject({ least: 412.5, standard: 630 });
  });

  it("a tuned circuit's value does not move: the exact sum first, then the old tolerance", () => {
    const sheet = only("250 mmf mica 5%", "tuned");
    expect(sheet.candidates.map(({ value }) => value)).toEqual([250e-12, 240e-12]);
    expect(sheet.candidates[0]?.series).toBe("E12, 150 pF and 100 pF in parallel");
    expect(sheet.limits).toMatchObject({ lowest: 237.5e-12, highest: 262.5e-12 });
    expect(sheet.make.join()).toContain("coefficient of temperature");
    expect(values("270 mmf mica 5%", "tuned")[0]).toBe(270e-12);
  });

  it("a time constant keeps the old tolerance", () => {
    expect(only(".01 400V 10%", "timing").limits).toMatchObject({ lowest: 9e-9, highest: 11e-9 });
  });

  it("a vibrator's buffer keeps its value and has 1.6 kV at least (rule R30)", () => {
    const sheet = only(".0075 1200V", "buffer");
    expect(sheet.candidates[0]).toMatchObject({ value: 7.5e-9, deviation: 0 });
    expect(rating(sheet, "dc volts")).toMatchObject({ least: 1600, standard: 1600 });
  });
});

describe("on the line", () => {
  it("line to chassis: class Y, and no more than the touch current allows (section 6.3)", () => {
    const sheet = only(".05 400V", "line-to-chassis");
    // 0.25 mA at 132 V, 60 Hz is 5.02 nF, printed in the reference; a part may be 20 % above its mark.
    expect(sheet.limits.highest * 1.2).toBeCloseTo(5.02e-9, 11);
    expect(sheet.candidates[0]?.value).toBe(3.3e-9);
    expect(sheet.make.join()).toMatch(/class Y1 or Y2; class X never/);
    // 0.25 mA at 253 V, 50 Hz is 3.15 nF; 0.75 mA three times that.
    const european = { lineVolts: 230, lineHertz: 50 };
    expect(only(".05 400V", "line-to-chassis", european).limits.highest * 1.2).toBeCloseTo(3.15e-9, 11);
    expect(only(".05 400V", "line-to-chassis", { ...european, earthed: true }).limits.highest * 1.2).toBeCloseTo(9.44e-9, 11);
    expect(rating(only(".05 400V", "line-to-chassis", european), "ac volts")).toMatchObject({ least: 253, standard: 275 });
  });

  it("does not make a small one larger than it was", () => {
    expect(only(".001 1kV", "line-to-chassis", { earthed: true }).limits.highest).toBeCloseTo(1.25e-9, 12);
  });

  it("across the line: class X or Y, with a discharge path above 0.1 uF (section 6.4)", () => {
    expect(only(".1 400V", "across-line").make.join()).toContain("class X1 or X2");
    const discharge = (text: string, context: SubstituteContext = {}) =>
      only(text, "across-line", context).rules.find(({ text: said }) => said.includes("discharge"));
    expect(discharge(".1 400V")).toBeUndefined();
    // 0.22 uF at 253 V to 34 V in 1 s: 1.93 Mohm, printed in the reference.
    expect(discharge(".22 400V", { lineVolts: 230 })?.text).toContain("1.93 Mohm");
  });

  it("puts the local code first", () => {
    for (const role of ["across-line", "line-to-chassis"]) expect(only(".05 400V", role).cautions.join()).toContain("local code");
  });
});

describe("what cannot be answered", () => {
  it("names the nearest role, the wrong kind, the unreadable marking", () => {
    expect(substituteMarking(".05", "couplng")[0]).toMatchObject({ ok: false, problem: { nearest: "coupling" } });
    expect(substituteMarking("47k", "coupling")[0]).toMatchObject({ ok: false });
    const resistor = parseMarking("47k", "resistor");
    if (!resistor.ok) throw new Error(resistor.problem.message);
    expect(substitute(resistor.value, "coupling")).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("wants a capacitor") },
    });
    expect(substituteMarking("0 ohm", "general")[0]).toMatchObject({ ok: false });
  });

  it("gives every role limits around its values, a source for each rule, a caution, and never the word it may not use", () => {
    expect(new Set(roles.map(({ id }) => id)).size).toBe(roles.length);
    for (const { id, kind } of roles) {
      for (const text of kind === "resistor" ? ["47k 1W", "250", "2M 1/2W"] : ["8/450", ".05 600V", "250 mmf mica", "25 25V"]) {
        const sheet = only(text, id, { gridLeakOhms: 1e6, workingVolts: 100 });
        expect(sheet.limits.lowest).toBeLessThanOrEqual(sheet.limits.highest);
        for (const { value } of sheet.candidates) {
          expect(value).toBeGreaterThanOrEqual(sheet.limits.lowest * (1 - 1e-6));
          expect(value).toBeLessThanOrEqual(sheet.limits.highest * (1 + 1e-6));
        }
        const rules = [sheet.limits.rule, ...sheet.rules, ...sheet.ratings.map(({ rule }) => rule)];
        expect(rules.every(({ text: said, source }) => said !== "" && /^[a-z0-9-]+$/.test(source))).toBe(true);
        expect(sheet.cautions[0]).toContain("discharge every filter capacitor");
        expect(JSON.stringify(sheet)).not.toMatch(/\bsafe\b/i);
      }
    }
  });
});

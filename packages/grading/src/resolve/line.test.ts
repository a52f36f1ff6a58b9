import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../testing/model.ts";

type Line = NonNullable<NonNullable<TestJob["chassis"]>["line"]>;
const lineOf = (line: Line) => modelOf({ chassis: { line } }).line;

describe("the line", () => {
  // ANSI C84.1 range A: 120 V +-5 %. IEC 60038: 230 V +-10 %.
  it.each([
    [
      { designVolts: "117 V", hertz: 60 },
      { designVolts: 117, actualVolts: 120, lowVolts: 114, highVolts: 126, source: "ansi-c84-1" },
    ],
    [
      { designVolts: "105 V", hertz: 60 },
      { designVolts: 105, actualVolts: 120, lowVolts: 114, highVolts: 126, source: "ansi-c84-1" },
    ],
    [
      { designVolts: "240 V", hertz: 50 },
      { designVolts: 240, actualVolts: 230, lowVolts: 207, highVolts: 253, source: "iec-60038" },
    ],
    [
      { designVolts: "220 V", hertz: 50 },
      { designVolts: 220, actualVolts: 230, lowVolts: 207, highVolts: 253, source: "iec-60038" },
    ],
  ] as const)("of %o is today's system's", (line, expected) => {
    const { designVolts, actualVolts, lowVolts, highVolts, source } = lineOf(line);
    expect({ designVolts, actualVolts, source }).toEqual({
      designVolts: expected.designVolts,
      actualVolts: expected.actualVolts,
      source: expected.source,
    });
    expect(lowVolts).toBeCloseTo(expected.lowVolts, 9);
    expect(highVolts).toBeCloseTo(expected.highVolts, 9);
  });

  it("of another voltage than today's spreads about what the outlet gives, else about the design", () => {
    const own = lineOf({ designVolts: "110 V", hertz: 50, actualVolts: "112 V" });
    expect([own.actualVolts, own.lowVolts, own.highVolts]).toEqual([112, 112 * 0.9, 112 * 1.1]);
    const ship = lineOf({ designVolts: "80 V", hertz: 400 });
    expect([ship.actualVolts, ship.lowVolts, ship.highVolts, ship.source]).toEqual([80, 76, 84, "common-practice"]);
  });

  it("takes what the job says, and never ends inside what the outlet gives", () => {
    const line = lineOf({ designVolts: "117 V", hertz: 60, actualVolts: "121 V", lowVolts: "110 V", highVolts: "125 V" });
    expect([line.actualVolts, line.lowVolts, line.highVolts]).toEqual([121, 110, 125]);
    expect(lineOf({ designVolts: "117 V", hertz: 60, actualVolts: "128 V" }).highVolts).toBe(128);
    expect(lineOf({ designVolts: "117 V", hertz: 60, actualVolts: "101 V" }).lowVolts).toBe(101);
  });

  it("has the usual points, or the job's", () => {
    expect(lineOf({ designVolts: "117 V", hertz: 60 })).toMatchObject({ hot: "line hot", neutral: "line neutral", earth: "earth" });
    expect(lineOf({ designVolts: "117 V", hertz: 60, hot: "L", neutral: "N", earth: "PE" })).toMatchObject({
      hot: "L",
      neutral: "N",
      earth: "PE",
    });
  });

  it.each([
    { designVolts: "4 V", hertz: 60 },
    { designVolts: "1170 V", hertz: 60 },
    { designVolts: "117 V", hertz: 60, actualVolts: "-120 V" },
    { designVolts: "117 V", hertz: 60, actualVolts: "0 V" },
    { designVolts: "117 V", hertz: 60, highVolts: "12 kV" },
  ] as const)("of %o is refused", (line) => {
    expect(() => lineOf(line)).toThrow("value-out-of-range");
  });
});

describe("limits of the line", () => {
  it.each([
    [{ lowVolts: "125 V", highVolts: "110 V" }, "lowest line voltage is above the highest (125 V)"],
    [{ lowVolts: "118 V", actualVolts: "115 V" }, "lowest line voltage is above the actual one (118 V)"],
    [{ highVolts: "118 V", actualVolts: "121 V" }, "highest line voltage is below the actual one (118 V)"],
  ])("that contradict what is written beside them are refused: %o", (limits, told) => {
    expect(() => lineOf({ designVolts: "117 V", hertz: 60, ...limits })).toThrow(`line-volts-order: the ${told}`);
  });

  it("hold the assumed actual voltage where none is written", () => {
    expect(lineOf({ designVolts: "117 V", hertz: 60, highVolts: "118 V" })).toMatchObject({ actualVolts: 118, highVolts: 118 });
    expect(lineOf({ designVolts: "117 V", hertz: 60, lowVolts: "122 V", highVolts: "128 V" })).toMatchObject({
      actualVolts: 122,
      lowVolts: 122,
      highVolts: 128,
    });
  });

  it("may equal the actual voltage", () => {
    const level = { designVolts: "117 V", actualVolts: "117 V", lowVolts: "117 V", highVolts: "117 V", hertz: 60 } as const;
    expect(lineOf(level)).toMatchObject({ lowVolts: 117, actualVolts: 117, highVolts: 117 });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatQuantity } from "../quantities/formatQuantity.ts";
import type { MarkedKind, Marking, MarkingContext } from "../quantities/types.ts";
import { parseMarking } from "./parseMarking.ts";
import { markingExpected } from "./workpiece.ts";

const even = (share: number) => ({ minus: share, plus: share });
type Row = readonly [text: string, wanted: Partial<Marking>, context?: MarkingContext];

// Meanings: IEC 60062 and reference sections 1.4, 2.3, 4.7, 7, 9.1; defaults of tolerance: common-practice.
const good: Readonly<Record<MarkedKind, readonly Row[]>> = {
  resistor: [
    ["yellow violet orange silver", { value: 47e3, tolerance: even(0.1), toleranceWritten: true }],
    ["yellow violet orange silver 1W", { value: 47e3, ratedWatts: 1 }],
    ["brown black green", { value: 1e6, tolerance: even(0.2), toleranceWritten: false }],
    ["brown black yellow no band", { value: 100e3, tolerance: even(0.2), toleranceWritten: false }],
    ["body red, end green, dot orange", { value: 25e3, tolerance: even(0.2) }], // S6
    ["green body black end yellow dot silver other end 1/2 W", { value: 500e3, tolerance: even(0.1), ratedWatts: 0.5 }],
    ["4R7 5W", { value: 4.7, ratedWatts: 5 }],
    ["47k 1W 10%", { value: 47e3, ratedWatts: 1, tolerance: even(0.1), toleranceWritten: true }],
    ["470 ohm 2 watts wirewound", { value: 470, ratedWatts: 2, composition: "wirewound" }],
    ["100K", { value: 100e3, tolerance: even(0.2), toleranceWritten: false }, { era: 1948 }],
    ["100K", { value: 100e3, tolerance: even(0.1), toleranceWritten: false }, { era: 1965 }],
    ["2.2 meg 1/2w", { value: 2.2e6, ratedWatts: 0.5 }],
    ["10 1/2W", { value: 10, ratedWatts: 0.5 }],
    ["4K7J", { value: 4700, tolerance: even(0.05) }],
    ["473J", { value: 47e3, tolerance: even(0.05) }],
    ["4702F", { value: 47e3, tolerance: even(0.01) }],
    ["1000K", { value: 1e6 }], // thousand kilohm, not 100 ohm at 10 %
    ["50M", { value: 50e3 }, { era: 1930 }], // S58: above 20 M a lone M is thousand
    ["2M", { value: 2e6 }, { era: 1935 }],
    ["220,000 ohm 1/2 W", { value: 220e3, ratedWatts: 0.5 }],
  ],
  capacitor: [
    ["40 mfd 450V", { value: 40e-6, ratedVolts: 450, ratedVoltsKind: "dc", tolerance: { minus: 0.1, plus: 0.5 }, toleranceWritten: false }],
    ["25 mfd 25 V", { value: 25e-6, ratedVolts: 25, tolerance: { minus: 0.1, plus: 1 } }],
    ["47 uF 450V", { value: 47e-6, tolerance: even(0.2), dielectric: "electrolytic", dielectricWritten: false }, { era: 2015 }],
    [".05/600", { value: 0.05e-6, ratedVolts: 600, dielectric: "paper", tolerance: even(0.2) }],
    [".05 600V", { value: 0.05e-6, ratedVolts: 600 }],
    ["250 mmf mica", { value: 250e-12, dielectric: "mica", dielectricWritten: true, tolerance: even(0.1) }],
    ["0.1 uF 275 VAC X2", { value: 0.1e-6, ratedVolts: 275, ratedVoltsKind: "ac", safetyClass: "X2" }],
    ["4700 pF Y2 250 V~", { value: 4.7e-9, ratedVolts: 250, ratedVoltsKind: "ac", safetyClass: "Y2" }],
    ["4700 pF X1/Y2 250VAC", { safetyClass: "Y2" }],
    ["104K", { value: 0.1e-6, tolerance: even(0.1), toleranceWritten: true }],
    ["472M 1kV", { value: 4.7e-9, ratedVolts: 1000, tolerance: even(0.2) }],
    ["479D", { value: 4.7e-12, tolerance: even(0.106383) }], // 47 x 0.1 pF, 0.5 of 4.7 pF
    ["2A104J", { value: 0.1e-6, ratedVolts: 100, tolerance: even(0.05) }],
    ["0.1K250", { value: 0.1e-6, ratedVolts: 250, tolerance: even(0.1), dielectric: "film" }],
    ["10/450", { value: 10e-6, ratedVolts: 450 }],
    ["10/16", { value: 10e-6, ratedVolts: 16 }],
    ["250/500", { value: 250e-12, ratedVolts: 500 }],
    ["100/500", { value: 100e-12, ratedVolts: 500 }, { dielectric: "mica" }],
    ["1/4 mfd 400V", { value: 0.25e-6, ratedVolts: 400 }],
    ["8 mfd. 475 W.V.D.C.", { value: 8e-6, ratedVolts: 475, ratedVoltsKind: "dc" }],
    ["40 mfd 450/525", { value: 40e-6, ratedVolts: 450, surgeVolts: 525 }],
    ["40 uF 450 V 525 V surge", { ratedVolts: 450, surgeVolts: 525 }],
    ["500 pF 20 kV ceramic", { value: 500e-12, ratedVolts: 20e3, dielectric: "ceramic" }],
    ["0.01 disc GMV", { value: 0.01e-6, tolerance: { minus: 0, plus: 1 } }],
    ["100 pF NP0 5%", { value: 100e-12, dielectric: "ceramic", tolerance: even(0.05) }],
    ["red green brown mica", { value: 250e-12, ratedVolts: 500, dielectric: "mica", tolerance: even(0.2), toleranceWritten: false }], // S14
    ["black green brown red yellow black mica", { value: 51e-12 }], // the printed example of S16
    ["yellow violet orange black blue", { value: 47e-9, ratedVolts: 600 }, { dielectric: "paper" }], // S18
    ["222M 250~ X1Y1", { value: 2.2e-9, ratedVolts: 250, ratedVoltsKind: "ac", safetyClass: "Y1" }],
    ["33n 1000V", { value: 33e-9, dielectric: "film" }],
    ["½ 400 V", { value: 0.5e-6, ratedVolts: 400 }],
    ["1,000 mica", { value: 1000e-12 }],
    ["3-30 mmf", { value: 30e-12 }],
    ["20", { value: 20e-6 }, { electrolytic: true }],
  ],
  inductor: [
    ["8 H 150 mA 200 ohm", { value: 8, ratedAmps: 0.15, ohms: 200 }],
    ["5/25 H 175 mA swinging", { value: 5, ratedAmps: 0.175 }],
    ["10 hy 65 ma", { value: 10, ratedAmps: 0.065 }],
    ["2.5 mH", { value: 2.5e-3 }],
  ],
  fuse: [
    ["2 A slow", { value: 2, speed: "T" }],
    ["T1.6A", { value: 1.6, speed: "T" }],
    ["T3,15A", { value: 3.15, speed: "T" }],
    ["T1.6AL250V", { value: 1.6, speed: "T", ratedVolts: 250 }],
    ["3AG 1 1/2 A fast", { value: 1.5, speed: "F", type: "3AG" }],
    ["F 500 mA L 250 V", { value: 0.5, speed: "F", ratedVolts: 250 }],
    ["FF 1 A", { value: 1, speed: "FF" }],
    ["1/4 A", { value: 0.25 }],
  ],
  "transformer-winding": [
    ["325-0-325 V 120 mA", { value: 325, centerTapped: true, ratedAmps: 0.12 }],
    ["650 V CT 120 mA", { value: 325, centerTapped: true }],
    ["6.3 V 3.5 A", { value: 6.3, ratedAmps: 3.5 }],
    ["5 V 2 A", { value: 5, ratedAmps: 2 }],
    ["117 V", { value: 117 }],
    ["2.5 V 10 A CT", { value: 1.25, centerTapped: true, ratedAmps: 10 }],
    ["120 V 60 Hz", { value: 120 }],
    ["0-6.3 V", { value: 6.3 }],
  ],
  rectifier: [
    ["5Y3GT", { type: "5Y3GT" }],
    ["80", { type: "80" }],
    ["GZ34/5AR4", { type: "GZ34/5AR4" }],
    ["5U4-GB", { type: "5U4GB" }],
    ["6087", { type: "6087" }],
    ["35Z5GT/G", { type: "35Z5GT/G" }],
    ["1N4007", { type: "1N4007" }],
    ["silicon 1000 V 1 A", { type: "SILICON", ratedVolts: 1000, ratedAmps: 1, ratedVoltsKind: "dc" }],
    ["silicon 1000 PIV 1A", { ratedVolts: 1000, ratedAmps: 1 }],
    ["selenium 130 V 100 mA", { type: "SELENIUM", ratedVolts: 130, ratedVoltsKind: "ac", ratedAmps: 0.1 }],
  ],
  thermistor: [["50 ohm 2 A 20 J", { value: 50, ohms: 50, ratedAmps: 2, joules: 20 }]],
  load: [
    ["60 mA", { value: 0.06, dimension: "current" }],
    ["5 kohm", { value: 5000, dimension: "resistance", ohms: 5000 }],
    ["60 mA at 250 V", { value: 0.06, ratedVolts: 250 }],
    ["15 W at 250 V", { value: 0.06, ratedWatts: 15 }],
  ],
  lamp: [
    ["6.3 V 0.15 A", { ratedVolts: 6.3, ratedAmps: 0.15 }],
    ["60 W 120 V", { ratedVolts: 120, ratedWatts: 60, ratedAmps: 0.5 }],
    ["#47", { type: "47" }],
  ],
};
const rows = Object.entries(good).flatMap(([kind, list]) =>
  list.map(([text, wanted, context]) => [kind as MarkedKind, text, wanted, context] as const),
);

const bad: readonly (readonly [MarkedKind, string, RegExp, (string | undefined)?])[] = [
  ["resistor", "", /nothing/],
  ["resistor", "47 kV", /no resistance/],
  ["resistor", "2.2m", /not a unit/, "2.2 M"],
  ["resistor", "47k 100k", /second resistance/],
  ["resistor", "red red", /2 bands/],
  ["resistor", "47k +-450", /tolerance/],
  ["resistor", "hello", /no resistance/],
  ["resistor", "__proto__", /no resistance/],
  ["resistor", "constructor constructor constructor", /no resistance/],
  ["capacitor", "40 mgd 450V", /not a unit/, "40 mfd"],
  ["capacitor", "47k", /not a unit/],
  ["capacitor", "20-20", /several sections/],
  ["capacitor", "20-20/450 V", /several sections/],
  ["capacitor", "16+16 uF 350 V", /several sections/],
  ["capacitor", "red red", /2 marks/],
  ["resistor", "body gold, end red, dot red", /body-end-dot/],
  ["capacitor", "450V", /no capacitance/],
  ["capacitor", "40 uF 450 V 25 V", /rated and a surge/],
  ["capacitor", "40 uF 25 V 450 V", /rated and a surge/],
  ["capacitor", "4R7 pF", /not a unit/],
  ["capacitor", "20 F 450 V", /more than any part/],
  ["inductor", "8", /no unit/],
  ["inductor", "200 ohm", /no inductance/],
  ["fuse", "slow", /no current/],
  ["fuse", "500 A", /no equipment fuse/, "500 mA"],
  ["transformer-winding", "300-0-325 V", /unequal/, "300-0-300 V"],
  ["transformer-winding", "117/234 V", /number without unit/],
  ["rectifier", "1000 V 1 A", /no rectifier type/],
  ["rectifier", "400 V 1 A", /no rectifier type/],
  ["capacitor", "40 uF 0 V", /voltage of nothing/],
  ["lamp", "60W", /no voltage/],
  ["load", "250 V", /neither/],
  ["load", "60 mA 5 k", /both/],
  ["lamp", "6.3 V", /neither/],
  // A small k is no code letter of IEC 60062, whose K, M and G behind the figures are tolerances: 4K7M is read, 4k7M is not.
  ["resistor", "4k7M", /two letters/, "4k7 20%"],
  ["resistor", "4k7K 1W", /two letters/, "4k7 10%"],
  ["resistor", "10k -1 W", /"-1 W" is negative/, "10k 1 W"],
  ["capacitor", "10 mfd 450 mV", /less than any capacitor/, "10 mfd 450 V"],
  ["capacitor", ".05 uF 0.5 V", /less than any capacitor/],
  ["inductor", "8 H 0 mA", /current of nothing/],
  ["inductor", "8 H -50 mA", /"-50 mA" is negative/, "8 H 50 mA"],
  ["load", "-60 mA", /negative/, "60 mA"],
  ["load", "60 mA at -250 V", /negative/, "60 mA at 250 V"],
  ["transformer-winding", "6.3 V -3 A", /negative/, "6.3 V 3 A"],
];

describe("parseMarking", () => {
  it.each(rows)("%s: reads %j", (kind, text, wanted, context) => {
    const result = parseMarking(text, kind, context);
    if (!result.ok) throw new Error(result.problem.message);
    expect(result.value).toMatchObject({ kind, asWritten: text });
    for (const [field, value] of Object.entries(wanted)) {
      const found = result.value[field as keyof Marking];
      if (typeof value === "number") expect(Math.abs(Number(found) - value), field).toBeLessThanOrEqual(1e-12 * value);
      else expect(found, field).toEqual(value);
    }
  });

  it.each(bad.map(([kind, text, message, nearest]) => ({ kind, text, message, nearest })))(
    "$kind: refuses $text",
    ({ kind, text, message, nearest }) => {
      const result = parseMarking(text, kind);
      if (result.ok) throw new Error(`read as ${JSON.stringify(result.value)}`);
      expect(result.problem.message).toMatch(message);
      if (nearest !== undefined) expect(result.problem.nearest).toBe(nearest);
      expect(result.problem.expected).not.toBe("");
    },
  );

  it("lists what else a marking could mean", () => {
    expect(parseMarking("10/450", "capacitor")).toMatchObject({ value: { alternatives: [{ value: 10e-12 }] } });
    expect(parseMarking("103", "capacitor")).toMatchObject({ value: { value: 10e-9, alternatives: [{ value: 103e-12 }] } });
    // The same dots are three figures to old RMA and type, two figures to EIA (reference section 4.2).
    expect(parseMarking("white red green brown gold brown mica", "capacitor")).toMatchObject({
      value: { value: 250e-12, alternatives: [{ value: 9.25e-9 }] },
    });
    expect(parseMarking("brown black red black blue mica", "capacitor")).toMatchObject({ value: { value: 1000e-12, alternatives: [] } });
    expect(parseMarking("red green brown", "capacitor")).not.toHaveProperty("value.ratedVolts");
    expect(parseMarking("473", "resistor")).toMatchObject({ value: { value: 47e3, alternatives: [{ value: 473 }] } });
  });

  it("says which words it did not read", () => {
    expect(parseMarking("Example .05 600V", "capacitor")).toMatchObject({
      value: { notes: expect.arrayContaining(["not read: Example"]) },
    });
  });

  it("reads back a part written in modern units", () => {
    const figures = fc.integer({ min: 10, max: 99 });
    const close = (found: number | undefined, wanted: number) =>
      expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(1e-9 * wanted);
    const value = (text: string, kind: MarkedKind) => {
      const result = parseMarking(text, kind);
      if (!result.ok) throw new Error(`${text}: ${result.problem.message}`);
      return result.value;
    };
    fc.assert(
      fc.property(figures, fc.integer({ min: -1, max: 5 }), figures, fc.integer({ min: 1, max: 20 }), (two, power, rating, percent) => {
        const ohms = Number(`${two}e${power}`);
        const resistor = value(`${formatQuantity(ohms, "resistance")} ${formatQuantity(rating / 10, "power")} ${percent} %`, "resistor");
        close(resistor.value, ohms);
        close(resistor.ratedWatts, rating / 10);
        close(resistor.tolerance?.plus, percent / 100);
        const farads = Number(`${two}e${power - 10}`);
        const capacitor = value(`${formatQuantity(farads, "capacitance")} ${rating * 10} V +-${percent} %`, "capacitor");
        close(capacitor.value, farads);
        close(capacitor.ratedVolts, rating * 10);
        const choke = value(`${formatQuantity(two / 10, "inductance")} ${rating} mA ${ohms} ohm`, "inductor");
        close(choke.value, two / 10);
        close(choke.ratedAmps, rating / 1000);
        close(choke.ohms, ohms);
        const winding = value(`${two}-0-${two} V ${formatQuantity(rating / 100, "current")}`, "transformer-winding");
        close(winding.value, two);
        close(winding.ratedAmps, rating / 100);
        close(value(`T${formatQuantity(two / 100, "current")} ${rating} V`, "fuse").value, two / 100);
      }),
    );
  });

  it("never throws; values are finite and not negative, problems lie inside the text", () => {
    const kinds = Object.keys(markingExpected) as MarkedKind[];
    const words = [
      "10",
      ".05",
      "450",
      "V",
      "mfd",
      "uF",
      " ",
      " ",
      "/",
      "-",
      "K",
      "J",
      "1/2",
      "W",
      "red",
      "black",
      "%",
      "+-",
      "A",
      "slow",
      "X2",
      "~",
      "ohm",
      "M",
      "x",
      "H",
      ",",
      "CT",
      "0",
      "104",
      "\u00b5",
    ];
    const texts = fc.array(fc.constantFrom(...words), { maxLength: 10 }).map((list) => list.join(""));
    fc.assert(
      fc.property(fc.oneof(texts, fc.string(), fc.string({ unit: "binary" })), fc.constantFrom(...kinds), (text, kind) => {
        const result = parseMarking(text, kind);
        if (!result.ok) {
          const { offset, length } = result.problem;
          return offset >= 0 && length >= 0 && offset + length <= text.length;
        }
        const numbers = Object.values(result.value).filter((value) => typeof value === "number");
        return numbers.every((value) => Number.isFinite(value) && value >= 0);
      }),
      { numRuns: 2000 },
    );
  }, 30_000);
});

it.each([
  ["-10 ohm", "resistor", "10 ohm"],
  ["\u221210 uF 50V", "capacitor", "10 uF 50V"],
  ["- 8 H", "inductor", "8 H"],
] as const)("refuses %s, which no part can be, and says what would work", (text, kind, nearest) => {
  expect(parseMarking(text, kind)).toMatchObject({ ok: false, problem: { offset: 0, nearest } });
});

import type { ReportFigure } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { figureParts, figureSentence, windowText } from "./figureParts.ts";

const figure = (more: Partial<ReportFigure>): ReportFigure => ({
  label: "voltage",
  value: 349.6,
  unit: "V",
  how: "computed",
  source: "S1",
  ...more,
});
const sentence = (more: Partial<ReportFigure>): string => figureSentence(figureParts(figure(more))).replaceAll("\u00a0", " ");

describe("figureSentence", () => {
  it.each([
    [{}, "350 V"],
    [{ limit: 350, limitKind: "maximum", margin: 0.00114 }, "349.6 V; at most 350 V, 0.11 % in hand"],
    [{ value: 378, limit: 350, limitKind: "maximum", margin: -0.08 }, "378 V; at most 350 V, over by 8 %"],
    [{ value: 40, limit: 50, limitKind: "minimum", margin: -0.2 }, "40 V; at least 50 V, short by 20 %"],
    [{ value: 40, low: 30, high: 60 }, "40 V; window 30 V to 60 V"],
    // 14.2 V is 142 times 0.1 V; 5000 V is 250 times 20 V; below ten times the limit a share says more.
    [{ value: 14.2, limit: 0.1, limitKind: "maximum", margin: -141 }, "14.2 V; at most 100 mV, 142 times the limit"],
    [{ value: 5000, limit: 20, limitKind: "minimum", margin: 249 }, "5 kV; at least 20 V, 250 times the limit"],
    [{ value: 40, limit: 10, limitKind: "maximum", margin: -3 }, "40 V; at most 10 V, over by 300 %"],
    // What rounding leaves between 16 and 80 % of 20 is no shortage.
    [{ value: 16, limit: 16, limitKind: "minimum", margin: -2.1e-16 }, "16 V; at least 16 V, just at the limit"],
    [{ value: null, limit: 5 }, "not known; limit 5 V"],
  ] satisfies [Partial<ReportFigure>, string][])("%o", (more, text) => {
    expect(sentence(more)).toBe(text);
  });
});

describe("windowText", () => {
  it("says one bound as a bound and none as nothing", () => {
    expect(windowText(5, null, "V")).toBe("at least 5\u00a0V");
    expect(windowText(undefined, 5, "V")).toBe("at most 5\u00a0V");
    expect(windowText(null, undefined, "V")).toBe("");
    expect(windowText(5, 5, "V")).toBe("5\u00a0V");
    expect(windowText(0, Number.POSITIVE_INFINITY, "V")).toBe("at least 0\u00a0V");
  });
});

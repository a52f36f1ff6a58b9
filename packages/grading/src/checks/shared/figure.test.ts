import { describe, expect, it } from "vitest";
import { atLeast, atMost, figure } from "./figure.ts";

const basics = { label: "voltage", unit: "V", how: "read", source: "common-practice" };

describe("figures", () => {
  it("leave a fifth of the limit: (450 - 360) / 450", () =>
    expect(atMost(360, 450, basics)).toEqual({ ...basics, value: 360, limit: 450, limitKind: "maximum", margin: 0.2 }));
  it("exceed by a tenth: (450 - 495) / 450", () => expect(atMost(495, 450, basics).margin).toBeCloseTo(-0.1, 12));
  it("have the sign of the excess whatever the limit's sign", () => expect(atMost(-60, -50, basics).margin).toBeCloseTo(0.2, 12));
  it("meet a limit of nothing only with nothing", () => {
    expect(atMost(0, 0, basics).margin).toBe(0);
    expect(atMost(1, 0, basics).margin).toBe(-1);
  });
  it("reach a minimum with a fifth to spare: (60 - 50) / 50", () =>
    expect(atLeast(60, 50, basics)).toEqual({ ...basics, value: 60, limit: 50, limitKind: "minimum", margin: 0.2 }));
  it("miss it by half", () => expect(atLeast(25, 50, basics).margin).toBe(-0.5));
  it("stand without a limit", () =>
    expect(figure("x", null, "ohm", "not known")).toEqual({ label: "x", value: null, unit: "ohm", how: "not known", source: "computed" }));
});

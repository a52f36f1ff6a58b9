import { describe, expect, it } from "vitest";
import { type NumberExpression, parseFormula, unitOf } from "./index.ts";

const unit = (text: string) => unitOf(parseFormula(text).expression as NumberExpression);

describe("unitOf", () => {
  it.each([
    ['2 * volts("hv-in")^2 / bypass.ohms', "W"],
    ["1 / (2 * pi * coupling.farads * gridLeak.ohms)", "Hz"],
    ["drop.meanAmps * drop.ohms + 5", "V"],
    ['volts("b-plus") / (choke.meanAmps * 6 * pi * lineHertz)', "H"],
    ["min(a.ratedVolts, b.maxVolts)", "V"],
    ["sqrt(r.ratedWatts * r.ohms)", "V"],
    ["0.5 * c.farads * c.maxVolts^2", "J"],
    ["40000", ""],
    ["(4 * pi * lineHertz)^2 * l.henries * c.farads", ""],
    ["sqrt(rfWatts * lineOhms * swr) * 2 * pi * bandLowHertz * padder.farads", "A"],
    ["gridLeak.ohms * shaping.farads + riseSeconds", "s"],
    ["tubeSiemens * load.ohms", ""],
    ["(i.meanAmps / 0.0007778)^(2/3)", ""],
  ])("%s is in %s", (text, expected) => expect(unit(text)).toBe(expected));

  it("knows unlike things", () => {
    expect(unit("r.ohms + r.ratedWatts")).toBeUndefined();
    expect(unit("exp(r.ohms)")).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { inPlace } from "./inPlace.ts";

function resistor(record: object) {
  const part = modelOf({
    parts: [
      { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "9 V" },
      { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "100k 1W 10%", ...record },
    ],
  }).parts.get("R1");
  if (part === undefined) throw new Error("no R1");
  return part;
}

describe("inPlace", () => {
  it("keeps the marking of a part that was measured", () => {
    const place = inPlace(resistor({ measured: { value: "128k" } }), "restored");
    expect(place).toMatchObject({ fitted: false, markedValue: 100e3, tolerance: { minus: 0.1, plus: 0.1 } });
    expect(place?.state.main?.value).toBe(128e3);
    expect(place?.measured?.value).toBe(128e3);
  });
  it("gives the new part its own marking and measurement, and keeps the old one for the life before", () => {
    const part = resistor({ measured: { value: "128k" }, fitted: { marked: "91 kohm 5% 2 W", measured: { value: "90k" } } });
    expect(inPlace(part, "restored")).toMatchObject({ fitted: true, markedValue: 91e3, measured: { value: 90e3 } });
    expect(inPlace(part, "found")).toMatchObject({ fitted: false, markedValue: 100e3 });
  });
  it("takes a planned part only for the plan", () => {
    const part = resistor({ fitted: { marked: "91 kohm", planned: true } });
    expect(inPlace(part, "restored")?.fitted).toBe(false);
    expect(inPlace(part, "planned")).toMatchObject({ fitted: true, markedValue: 91e3 });
  });
  it("reads what an earlier hand put there instead", () =>
    expect(inPlace(resistor({ foundMarked: "10 kohm 1 W" }), "restored")?.markedValue).toBe(10e3));
  it("is nothing once a part has been taken out, but still there when it is burnt open", () => {
    expect(inPlace(resistor({ removed: true }), "restored")).toBeUndefined();
    expect(inPlace(resistor({ measured: { condition: "open" } }), "restored")?.state.open).toBe(true);
  });
});
